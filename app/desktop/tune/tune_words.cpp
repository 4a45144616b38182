#include "app/desktop/tune/tune_words.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "app/desktop/text/paragraph.h"
#include "app/desktop/tune/field_format.h"
#include "app/desktop/widgets/wording.h"
#include "core/judge/decide.h"

namespace ovenwright::desktop {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Tune)
};

using widgets::Wording;

constexpr RecipeField kSetpoint{RecipeField::Kind::kTop, 0}, kSpeed{RecipeField::Kind::kSpeed, 0};

QString moved(const FieldFormat& format, const RecipeField& field, double from, double to) {
  return format.number(field, from) + QStringLiteral(" → ") + format.number(field, to);
}

/// A difference of measured values with its unit: "2.7 °C".
QString differenceText(double value, Unit unit, const Format& format) {
  using Quantity = Format::Quantity;
  Quantity quantity = Quantity::kDifference;
  if (unit == Unit::kSecond) quantity = Quantity::kTime;
  if (unit == Unit::kCelsiusPerSecond) quantity = Quantity::kRate;
  if (unit == Unit::kCelsiusSecond) quantity = Quantity::kArea;
  if (unit == Unit::kCount) quantity = Quantity::kCount;
  return format.distance(value, quantity, quantity == Quantity::kRate ? 2 : 1) + u' ' + format.unit(quantity);
}

/// A zone's changes; both sides that move alike are one.
struct ZoneChange {
  std::string zone;
  bool sides = false;  ///< one side alone, or both differently
  const tune::Change *top = nullptr, *bottom = nullptr;
};

std::vector<ZoneChange> byZone(const std::vector<tune::Change>& changes) {
  std::vector<ZoneChange> zones;
  for (const auto& change : changes) {
    if (!change.side) continue;  // the speed, a cooling zone
    if (zones.empty() || zones.back().zone != change.zone) zones.push_back({change.zone});
    (change.side == board::Side::kBottom ? zones.back().bottom : zones.back().top) = &change;
  }
  for (auto& zone : zones)
    zone.sides = !zone.top || !zone.bottom || zone.top->from != zone.bottom->from || zone.top->to != zone.bottom->to;
  return zones;
}

constexpr QChar kHard(0x00A0);  // a change, or a number and its unit, is not broken over two lines

/// Neither a unit nor a range is broken over two lines, nor a word of ideographs, which else break anywhere.
QString unbroken(QString text) {
  constexpr QChar kJoiner(0x2060), kFirstIdeograph(0x2E80);
  text.replace(u'/', QString(kJoiner) + u'/' + kJoiner);
  text.replace(u'–', QString(kJoiner) + u'–' + kJoiner);
  for (qsizetype i = text.size() - 1; i > 0; --i)
    if (text[i] >= kFirstIdeograph && text[i - 1] >= kFirstIdeograph) text.insert(i, kJoiner);
  return text;
}

QString probability(double chance, const Format& format) {
  QString text = chance > 0.99   ? Words::tr("over 99 %")
                 : chance < 0.01 ? Words::tr("under 1 %")
                                 : format.percent(chance);
  return text.replace(QStringLiteral(" %"), QString(kHard) + u'%');
}

/// Where a guarded rule asks for more than to stay inside the limits, the chance of that; empty where it reads alike.
QString insideChance(const tune::Forecast& forecast, const Format& format) {
  if (!forecast.inside_probability) return {};
  const QString inside = probability(*forecast.inside_probability, format);
  return inside == probability(*forecast.pass_probability, format) ? QString() : inside;
}

QString unknownChance(const tune::Forecast& forecast) {
  return forecast.fall_unseen ? Words::tr("chance unknown: the log ends hot") : QString();
}

}  // namespace

QString aimTitle(tune::Aim aim) {
  switch (aim) {
    case tune::Aim::kLeastChange:
      return Words::tr("Least change");
    case tune::Aim::kMostMargin:
      return Words::tr("Most margin");
    case tune::Aim::kFastest:
      return Words::tr("Fastest");
    case tune::Aim::kCoolest:
      return Words::tr("Coolest");
  }
  return {};
}

QString aimTitle(const tune::Suggestion& suggestion) {
  QString title = aimTitle(suggestion.aim);
  for (const tune::Aim aim : suggestion.also)
    title = Words::tr("%1, %2", "two aims that come to one recipe").arg(title, aimTitle(aim));
  return title;
}

QStringList changeTexts(const oven::Oven& oven, const oven::Recipe& from, const oven::Recipe& to,
                        const Format& format) {
  const FieldFormat number(format);
  const auto changes = tune::changes(oven, from, to);
  QStringList texts;
  const auto setpoint = [&](const tune::Change& change) { return moved(number, kSetpoint, change.from, change.to); };
  for (const auto& zone : byZone(changes)) {
    const QString name = QString::fromStdString(zone.zone);
    if (!zone.sides) {
      texts << Words::tr("Zone %1  %2").arg(name, setpoint(*zone.top));
      continue;
    }
    if (zone.top) texts << Words::tr("Zone %1 top  %2").arg(name, setpoint(*zone.top));
    if (zone.bottom) texts << Words::tr("Zone %1 bottom  %2").arg(name, setpoint(*zone.bottom));
  }
  for (const auto& change : changes) {
    if (change.side) continue;
    texts << (change.zone.empty()
                  ? Words::tr("Speed  %1 %2", "from and to, unit")
                        .arg(moved(number, kSpeed, change.from, change.to), number.unit(kSpeed))
                  : Words::tr("Zone %1  %2").arg(QString::fromStdString(change.zone), setpoint(change)));
  }
  return texts;
}

QString changesOnCard(const oven::Oven& oven, const oven::Recipe& from, const oven::Recipe& to, const Format& format) {
  constexpr std::size_t kMostEach = 3;
  const QString gap = QStringLiteral("   ");
  const auto changes = tune::changes(oven, from, to);
  const auto zones = byZone(changes);
  const bool sides = std::ranges::any_of(zones, &ZoneChange::sides);
  if (zones.size() <= kMostEach || sides || from.cooling_C != to.cooling_C) {
    QStringList texts = changeTexts(oven, from, to, format);
    for (QString& text : texts) text.replace(u' ', kHard);
    return unbroken(texts.join(gap));
  }
  const FieldFormat number(format);
  // Runs of neighbours that change.
  struct Stretch {
    std::size_t first, last;
    QStringList setpoints;
  };
  std::vector<Stretch> stretches;
  std::vector<QString> names;
  for (const auto& zone : oven.zones)
    if (zone.kind == oven::ZoneKind::kHeat) names.push_back(QString::fromStdString(zone.name));
  for (std::size_t z = 0; z < names.size(); ++z) {
    if (from.top_C[z] == to.top_C[z]) continue;
    if (stretches.empty() || stretches.back().last + 1 != z) stretches.push_back({z, z, {}});
    stretches.back().last = z;
    stretches.back().setpoints << number.number(kSetpoint, to.top_C[z]);
  }
  QStringList texts;
  for (const auto& stretch : stretches) {
    const QString setpoints = stretch.setpoints.join(u' ');
    const bool one = stretch.first == stretch.last;
    QString text = one ? Words::tr("Zone %1  %2").arg(names[stretch.first], setpoints)
                       : Words::tr("Zones %1–%2  %3").arg(names[stretch.first], names[stretch.last], setpoints);
    // Lines break between setpoints of a stretch, never between a zone and its name.
    const auto blank = text.indexOf(u' ');
    if (one)
      text.replace(u' ', kHard);
    else if (blank >= 0)
      text[blank] = kHard;
    texts << text;
  }
  if (from.speed_mm_per_min != to.speed_mm_per_min)
    texts << Words::tr("Speed  %1 %2", "from and to, unit")
                 .arg(moved(number, kSpeed, from.speed_mm_per_min, to.speed_mm_per_min), number.unit(kSpeed))
                 .replace(u' ', kHard);
  return unbroken(texts.join(gap));
}

QString changesInShort(const oven::Oven& oven, const oven::Recipe& from, const oven::Recipe& to, const Format& format) {
  const FieldFormat number(format);
  constexpr std::size_t kMostZones = 3;
  const auto changes = tune::changes(oven, from, to);
  const auto zones = byZone(changes);
  QStringList texts;
  if (zones.size() > kMostZones) {
    texts << Words::tr("%n zones", nullptr, int(zones.size()));
  } else {
    for (const auto& zone : zones) {
      const auto by = [](const tune::Change* change) { return change ? change->to - change->from : 0.0; };
      QString difference = number.difference(kSetpoint, by(zone.top));
      if (by(zone.top) != by(zone.bottom))  // top / bottom, as in the strip
        difference += QStringLiteral(" / ") + number.difference(kSetpoint, by(zone.bottom));
      texts << Words::tr("zone %1 %2").arg(QString::fromStdString(zone.zone), difference);
    }
  }
  for (const auto& change : changes)
    if (change.zone.empty()) texts << Words::tr("speed %1").arg(number.difference(kSpeed, change.to - change.from));
  if (texts.isEmpty() && from.cooling_C != to.cooling_C) texts << Words::tr("cooling");
  return texts.isEmpty() ? Words::tr("as it was run") : enumerated(texts);
}

QString throughputText(const oven::Recipe& from, const oven::Recipe& to, const Format& format) {
  const double more = to.speed_mm_per_min / from.speed_mm_per_min - 1;
  if (std::abs(more) < 0.005) return {};
  return more > 0 ? Words::tr("%1 more boards an hour").arg(format.percent(more))
                  : Words::tr("%1 fewer boards an hour").arg(format.percent(-more));
}

QString coolerText(const oven::Recipe& from, const oven::Recipe& to, const Format& format) {
  double by_C = 0;
  for (std::size_t z = 0; z < from.top_C.size(); ++z)
    by_C += from.top_C[z] - to.top_C[z] + from.bottom_C[z] - to.bottom_C[z];
  by_C /= 2.0 * double(std::max<std::size_t>(from.top_C.size(), 1));
  if (by_C < 0.5) return {};
  const auto quantity = Format::Quantity::kDifference;
  return Words::tr("zones %1 cooler on average")
      .arg(format.number(format.shown(by_C, quantity), 0) + kHard + format.unit(quantity));
}

QString tightestText(const judge::Judgement& judgement, const Format& format) {
  struct Tight {
    const judge::Outcome* outcome;
    bool upper;
  };
  std::vector<Tight> all;
  for (std::size_t i = 0; i < judgement.all_size(); ++i) {
    const auto& outcome = judgement.all(i);
    if (!outcome.required || !outcome.value.value || !outcome.margin) continue;
    const double v = *outcome.value.value;
    const bool upper = !outcome.lower || (outcome.upper && *outcome.upper - v < v - *outcome.lower);
    all.push_back({&outcome, upper});
  }
  std::ranges::stable_sort(all, {}, [](const Tight& tight) { return *tight.outcome->margin; });
  QStringList texts;
  const auto add = [&](const Tight& tight) {
    const auto& outcome = *tight.outcome;
    const widgets::Wording wording(format);
    const QString name = widgets::Wording::requirement(outcome.requirement_name);
    QString value = wording.value(outcome);
    if (const QString unit = wording.unit(outcome); !unit.isEmpty()) value += kHard + unit;
    texts << (outcome.channel ? Words::tr("%1 %2 %3", "placement, requirement, value")
                                    .arg(QString::fromStdString(outcome.placement), name, value)
                              : Words::tr("%1 %2", "requirement of the board, value").arg(name, value));
  };
  // The tightest, and the tightest of those that stand against it.
  if (all.empty()) return {};
  add(all.front());
  const auto against = std::ranges::find_if(all, [&](const Tight& tight) { return tight.upper != all.front().upper; });
  if (against != all.end()) add(*against);
  return enumerated(texts);
}

QString marginText(const judge::Judgement& judgement, const tune::Forecast& forecast, const Format& format) {
  if (!judgement.margin) return {};
  QString margin = format.percent(*judgement.margin);
  if (!forecast.margin_uncertainty) return margin;
  margin.remove(u'%');  // one sign for both: "5 ± 3 %"
  return margin.trimmed() + QStringLiteral(" ± ") + format.percent(*forecast.margin_uncertainty);
}

QString chanceText(const tune::Forecast& forecast, const Format& format) {
  if (!forecast.pass_probability) return unknownChance(forecast);
  const QString pass = probability(*forecast.pass_probability, format), inside = insideChance(forecast, format);
  return inside.isEmpty() ? Words::tr("chance of passing %1").arg(pass)
                          : Words::tr("chance of passing %1, of staying inside the limits %2").arg(pass, inside);
}

QString shortChanceText(const tune::Forecast& forecast, const Format& format) {
  if (!forecast.pass_probability) return unknownChance(forecast);
  const QString pass = probability(*forecast.pass_probability, format), inside = insideChance(forecast, format);
  return inside.isEmpty() ? Words::tr("chance %1").arg(pass)
                          : Words::tr("chance %1, inside limits %2").arg(pass, inside);
}

QString doubtText(const tune::Report& report) {
  return paragraph({Words::tr("It is not sure to pass: of those found it is the likeliest."),
                    report.next_run ? Words::tr("The next run worth making stands below.") : QString()});
}

QString cautionText() {
  return Words::tr(
      "A qualified person confirms it with an instrumented run before production, inside the ratings of the paste, "
      "the parts, the board and the oven.");
}

QStringList cautionsInFull() {
  return {
      Words::tr("Suggested setpoints are predictions: a qualified person confirms them with an instrumented run before "
                "production, inside the ratings of the paste, the parts, the board and the oven."),
      Words::tr("Hot surfaces, moving conveyor, flux fumes: site safety rules, local codes and the makers’ data sheets "
                "stand above anything shown here."),
      Words::tr("Windows shipped with the program are general; the paste’s own data sheet is the authority."),
      Words::tr("The errors of one board’s traces are mostly one error: if one reads high, all may.")};
}

QString infeasibleText(const tune::Infeasible& infeasible, const Format& format) {
  const QString text =
      (infeasible.ruled_out
           ? Words::tr(
                 "No recipe of this oven holds every requirement: the best margin that the model finds is %1, and "
                 "its error leaves no room for a pass.")
           : Words::tr("No recipe of this oven is predicted to hold every requirement: the best margin that the model "
                       "finds is %1, and its error does not rule a pass out."))
          .arg(format.percent(infeasible.best_margin));
  // Two placements whose peaks lie further apart than the window leaves room.
  const auto& conflicts = infeasible.conflicts;
  const auto peak = [&](bool upper) {
    return std::ranges::find_if(conflicts,
                                [upper](const auto& c) { return c.peak && c.upper == upper && c.value.has_value(); });
  };
  const auto low = peak(false), high = peak(true);
  if (!infeasible.ruled_out || low == conflicts.end() || high == conflicts.end() || low->trace == high->trace)
    return text;
  const double apart_C = *high->value - *low->value, room_C = high->limit - low->limit;
  if (apart_C <= room_C) return text;
  return paragraph(
      {text,
       Words::tr("The peaks of %1 and %2 are %3 apart at the best recipe, and the window leaves %4: that is more "
                 "than setpoints and speed can bring together.")
           .arg(QString::fromStdString(low->trace), QString::fromStdString(high->trace),
                differenceText(apart_C, Unit::kCelsius, format), differenceText(room_C, Unit::kCelsius, format))});
}

QStringList conflictTexts(const tune::Infeasible& infeasible, const Format& format) {
  QStringList texts;
  for (const auto& conflict : infeasible.conflicts) {
    const QString name = Wording::requirement(conflict.requirement);
    const QString where = conflict.trace.empty() ? Words::tr("the board") : QString::fromStdString(conflict.trace);
    const QString give = differenceText(conflict.give, conflict.unit, format);
    texts << (conflict.upper
                  ? Words::tr("%1 at %2: its upper limit alone would have to give %3").arg(name, where, give)
                  : Words::tr("%1 at %2: its lower limit alone would have to give %3").arg(name, where, give));
  }
  return texts;
}

QString nextRunText(const tune::NextRun& next, const Format& format) {
  const FieldFormat number(format);
  const QString name = Wording::requirement(next.requirement);
  const QString what =
      next.trace.empty()
          ? name
          : Words::tr("%1 at %2", "requirement, placement").arg(name, QString::fromStdString(next.trace));
  QStringList moves;
  for (const auto& change : next.changes) {
    const double by = change.to - change.from;
    if (change.zone.empty()) {
      moves << Words::tr("speed %1").arg(number.difference(kSpeed, by) + u' ' + number.unit(kSpeed));
    } else if (change.side != board::Side::kBottom) {
      moves << Words::tr("zone %1 %2")
                   .arg(QString::fromStdString(change.zone),
                        number.difference(kSetpoint, by) + u' ' + number.unit(kSetpoint));
    }
  }
  const QString doubt = differenceText(next.half_width, next.unit, format);
  const QString then = differenceText(next.half_width_then, next.unit, format);
  if (moves.isEmpty())
    return Words::tr("Another run of this recipe is expected to narrow the doubt about %1 from ± %2 to ± %3.")
        .arg(what, doubt, then);
  return Words::tr("A run with %1 is expected to narrow the doubt about %2 from ± %3 to ± %4.")
      .arg(enumerated(moves), what, doubt, then);
}

}  // namespace ovenwright::desktop
