#include "app/desktop/widgets/wording.h"

#include <QRegularExpression>
#include <algorithm>
#include <cmath>

#include "core/judge/decide.h"
#include "core/measure/definition.h"

namespace ovenwright::widgets {
namespace {

using desktop::Format;
const QChar kMinus(0x2212);
const QChar kFirmSpace(0x00A0);

Format::Quantity quantityOf(const judge::Outcome& outcome) { return Format::quantity(outcome.measure.measure); }

/// What being outside is called depends on what is measured.
enum class Family { kTemperature, kPeak, kTime, kRate, kSpread, kArea, kCount };

Family family(measure::Measure measure) {
  using measure::Measure;
  switch (measure) {
    case Measure::kPeak:
      return Family::kPeak;
    case Measure::kPeakTime:
    case Measure::kTimeAbove:
    case Measure::kTimeBetweenOnRise:
    case Measure::kTimeNearPeak:
    case Measure::kLag:
    case Measure::kWaveContactTime:
    case Measure::kWaveLongestContact:
      return Family::kTime;
    case Measure::kSteepestRise:
    case Measure::kMeanRise:
    case Measure::kSteepestFall:
    case Measure::kMeanFall:
      return Family::kRate;
    case Measure::kSpreadOfPeaks:
    case Measure::kSpreadWhenHottestReaches:
    case Measure::kLargestSpread:
    case Measure::kWaveStep:
      return Family::kSpread;
    case Measure::kAreaAbove:
      return Family::kArea;
    case Measure::kExcursionsAbove:
      return Family::kCount;
    case Measure::kTemperatureAt:
    case Measure::kExitTemperature:
    case Measure::kWavePreheatTemperature:
      return Family::kTemperature;
  }
  return Family::kTemperature;
}

/// Whether a requirement's name has every number of its note: "time above 217" needs no "217 °C" beside it.
bool saysAllNumbers(const QString& name, const QString& note) {
  static const QRegularExpression number(QStringLiteral("[0-9]+([.,][0-9]+)?"));
  const auto numbers = [](const QString& text) {
    QStringList found;
    for (auto it = number.globalMatch(text); it.hasNext();) found << it.next().captured();
    return found;
  };
  const QStringList said = numbers(name), wanted = numbers(note);
  return !wanted.isEmpty() && std::ranges::all_of(wanted, [&](const QString& one) { return said.contains(one); });
}

}  // namespace

int Wording::digits(const judge::Outcome& outcome) {
  const int usual = judge::usual_digits(outcome.measure.measure);
  if (!outcome.value.value) return usual;
  return judge::digits_needed(*outcome.value.value, usual, outcome.lower, outcome.upper);
}

QString Wording::limit(double value, const judge::Outcome& outcome) const {
  return m_format.limit(value, quantityOf(outcome));
}

QString Wording::unit(const judge::Outcome& outcome) const { return m_format.unit(quantityOf(outcome)); }

QString Wording::value(const judge::Outcome& outcome) const {
  if (!outcome.value.value)
    return outcome.value.no_value == measure::NoValue::kNotReached ? tr("not reached") : tr("undetermined");
  const QString text = number(m_format.shown(*outcome.value.value, quantityOf(outcome)), digits(outcome));
  return outcome.value.at_least ? QStringLiteral("≥") + kFirmSpace + text : text;
}

QString Wording::result(double value, measure::Measure measure, std::optional<double> lower,
                        std::optional<double> upper) const {
  return number(m_format.shown(value, Format::quantity(measure)),
                judge::digits_needed(value, judge::usual_digits(measure), lower, upper));
}

QString Wording::uncertainty(const judge::Outcome& outcome) const {
  if (!outcome.value.value || !outcome.value.expanded_uncertainty) return {};
  return m_format.distance(*outcome.value.expanded_uncertainty, Format::difference(quantityOf(outcome)),
                           judge::usual_digits(outcome.measure.measure));
}

QString Wording::valueWithUnit(const judge::Outcome& outcome) const {
  QString text = value(outcome);
  if (!outcome.value.value) return text;
  if (const QString half = uncertainty(outcome); !half.isEmpty())
    text += kFirmSpace + QStringLiteral("±") + kFirmSpace + half;
  if (const QString unit = this->unit(outcome); !unit.isEmpty()) text += kFirmSpace + unit;
  return text;
}

QString Wording::margin(const judge::Outcome& outcome) const {
  return outcome.margin ? margin(*outcome.margin, outcome.margin_bound) : QString();
}

QString Wording::margin(double fraction, judge::MarginBound bound) const {
  const QString text = percent(fraction);
  switch (bound) {
    case judge::MarginBound::kNone:
      return text;
    case judge::MarginBound::kAtMost:
      return tr("at most %1").arg(text);
    case judge::MarginBound::kAtLeast:
      return tr("at least %1").arg(text);
  }
  return text;
}

QString Wording::distance(const judge::Outcome& outcome) const {
  if (!outcome.value.value) return {};
  const double value = *outcome.value.value;
  const bool below = outcome.lower && value < *outcome.lower;
  const bool above = outcome.upper && value > *outcome.upper;
  if (!below && !above) return {};
  const double far = below ? *outcome.lower - value : value - *outcome.upper;
  const QString by = m_format.distance(far, Format::difference(quantityOf(outcome)), digits(outcome));
  switch (family(outcome.measure.measure)) {
    case Family::kPeak:
      return below ? tr("%1 short").arg(by) : tr("%1 too hot").arg(by);
    case Family::kTemperature:
      return below ? tr("%1 too cold").arg(by) : tr("%1 too hot").arg(by);
    case Family::kTime:
      return below ? tr("%1 short").arg(by) : tr("%1 too long").arg(by);
    case Family::kRate:
      return below ? tr("%1 too slow").arg(by) : tr("%1 too steep").arg(by);
    case Family::kSpread:
      return below ? tr("%1 too small").arg(by) : tr("%1 too large").arg(by);
    case Family::kArea:
      return below ? tr("%1 short").arg(by) : tr("%1 too much").arg(by);
    case Family::kCount:
      return below ? tr("%1 too few").arg(by) : tr("%1 too many").arg(by);
  }
  return {};
}

QString Wording::verdict(judge::Verdict verdict) {
  switch (verdict) {
    case judge::Verdict::kPass:
      return tr("pass");
    case judge::Verdict::kConditionalPass:
      return tr("conditional pass");
    case judge::Verdict::kUndetermined:
      return tr("undetermined");
    case judge::Verdict::kConditionalFail:
      return tr("conditional fail");
    case judge::Verdict::kFail:
      return tr("fail");
  }
  return {};
}

QString Wording::verdictTitle(judge::Verdict verdict) {
  switch (verdict) {
    case judge::Verdict::kPass:
      return tr("Pass");
    case judge::Verdict::kConditionalPass:
      return tr("Conditional pass");
    case judge::Verdict::kUndetermined:
      return tr("Undetermined");
    case judge::Verdict::kConditionalFail:
      return tr("Conditional fail");
    case judge::Verdict::kFail:
      return tr("Fail");
  }
  return {};
}

QString Wording::requirement(const std::string& name) {
  return QCoreApplication::translate("requirement", name.c_str());
}

QString Wording::title(const std::string& requirement) {
  QString title = Wording::requirement(requirement);
  if (!title.isEmpty()) title[0] = title.at(0).toUpper();
  return title;
}

QString Wording::parameterNote(const judge::Outcome& outcome) const {
  using measure::Measure;
  constexpr auto kTemperature = Format::Quantity::kTemperature;
  const measure::Parameters& given = outcome.measure.parameters;
  const auto degrees = [this](double temperature_C) { return m_format.limit(temperature_C, kTemperature); };
  const QString unit = m_format.unit(kTemperature);
  const auto level = [&](const std::optional<measure::Level>& l) -> QString {
    if (!l) return {};
    if (const auto* number = std::get_if<double>(&*l)) return degrees(*number);
    if (std::holds_alternative<measure::OwnPeak>(*l)) return tr("peak");
    const double offset = std::get<measure::TcReference>(*l).offset_C;
    if (offset == 0) return tr("Tc");
    return tr("Tc") + (offset < 0 ? kMinus : u'+') + m_format.limit(std::abs(offset), Format::Quantity::kDifference);
  };
  const auto span = [&](const QString& from, const QString& to) {
    return tr("%1–%2 %3", "a span of temperatures").arg(from, to, unit);
  };
  const auto within = [&](double offset_C) {
    return m_format.limit(offset_C, Format::Quantity::kDifference) + kFirmSpace + unit;
  };
  QString note;
  switch (outcome.measure.measure) {
    case Measure::kTimeAbove:
    case Measure::kExcursionsAbove:
    case Measure::kAreaAbove:
    case Measure::kWaveContactTime:
    case Measure::kWaveLongestContact:
    case Measure::kLag:
    case Measure::kSpreadWhenHottestReaches:
      if (given.level) note = m_format.temperatureWithUnit(*given.level);
      break;
    case Measure::kPeakTime:
      if (given.level) note = tr("from %1", "a temperature").arg(m_format.temperatureWithUnit(*given.level));
      break;
    case Measure::kTimeBetweenOnRise:
    case Measure::kMeanRise:
    case Measure::kMeanFall:
      if (given.T1 && given.T2) note = span(level(given.T1), level(given.T2));
      break;
    case Measure::kTimeNearPeak:
      if (given.reference && !std::holds_alternative<measure::OwnPeak>(*given.reference) && given.offset)
        note = tr("within %1 of %2").arg(within(*given.offset), level(given.reference));
      else if (given.offset)
        note = tr("within %1").arg(within(*given.offset));
      break;
    case Measure::kSteepestRise:
    case Measure::kSteepestFall:
      if (given.over) note = tr("over %1 s").arg(m_format.limit(*given.over, Format::Quantity::kTime));
      if (given.from && given.to) note += QStringLiteral(", ") + span(degrees(*given.from), degrees(*given.to));
      break;
    case Measure::kLargestSpread:
      if (given.from && given.to) note = span(degrees(*given.from), degrees(*given.to));
      break;
    case Measure::kTemperatureAt:
      if (given.time) note = tr("at %1 s").arg(m_format.limit(*given.time, Format::Quantity::kTime));
      if (given.position_mm) note = tr("at %1 mm").arg(m_format.limit(*given.position_mm, Format::Quantity::kTime));
      if (given.zone) note = tr("end of zone %1").arg(QString::fromStdString(*given.zone));
      break;
    case Measure::kPeak:
    case Measure::kExitTemperature:
    case Measure::kSpreadOfPeaks:
    case Measure::kWavePreheatTemperature:
    case Measure::kWaveStep:
      break;
  }
  return saysAllNumbers(QString::fromStdString(outcome.requirement_name), note) ? QString() : note;
}

QString Wording::tip(const judge::Outcome& outcome, const QString& place) const {
  QString text = tr("%1, %2: %3", "requirement, placement: value")
                     .arg(title(outcome.requirement_name), place, valueWithUnit(outcome));
  if (const QString by = distance(outcome); !by.isEmpty()) text += QStringLiteral(", ") + by;
  if (const QString share = margin(outcome); !share.isEmpty())
    text += QStringLiteral(", ") + tr("margin %1").arg(share);
  return text + QStringLiteral(", ") + verdict(outcome.verdict);
}

QString Wording::spokenNumber(const QString& text) const {
  QString spoken = text;
  if (spoken.startsWith(kMinus)) spoken.replace(0, 1, tr("minus ", "read aloud before a number"));
  return spoken;
}

QString Wording::spokenLimits(const judge::Outcome& outcome) const {
  if (outcome.lower && outcome.upper)
    return tr("limits %1 to %2")
        .arg(spokenNumber(limit(*outcome.lower, outcome)), spokenNumber(limit(*outcome.upper, outcome)));
  if (outcome.lower) return tr("at least %1 allowed").arg(spokenNumber(limit(*outcome.lower, outcome)));
  if (outcome.upper) return tr("at most %1 allowed").arg(spokenNumber(limit(*outcome.upper, outcome)));
  return tr("no limit");
}

QString Wording::spoken(const judge::Outcome& outcome, const QString& place) const {
  QString value;
  if (!outcome.value.value) {
    value = this->value(outcome);
  } else {
    value = spokenNumber(number(m_format.shown(*outcome.value.value, quantityOf(outcome)), digits(outcome)));
    if (outcome.value.at_least) value = tr("at least %1").arg(value);
    if (const QString half = uncertainty(outcome); !half.isEmpty()) value = tr("%1 plus or minus %2").arg(value, half);
    if (const QString unit = this->unit(outcome); !unit.isEmpty()) value += u' ' + unit;
  }
  QStringList parts{title(outcome.requirement_name), place, value, spokenLimits(outcome)};
  if (outcome.margin) {
    QString percent = tr("%1 percent").arg(spokenNumber(number(*outcome.margin * 100, 0)));
    if (outcome.margin_bound == judge::MarginBound::kAtMost) percent = tr("at most %1").arg(percent);
    if (outcome.margin_bound == judge::MarginBound::kAtLeast) percent = tr("at least %1").arg(percent);
    parts << tr("margin %1").arg(percent);
  }
  parts << verdict(outcome.verdict);
  return parts.join(QStringLiteral(", "));
}

}  // namespace ovenwright::widgets
