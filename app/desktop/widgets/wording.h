#pragma once
#include <QCoreApplication>
#include <QString>

#include "app/desktop/text/format.h"
#include "core/judge/judgement.h"

namespace ovenwright::widgets {

/// Values, limits, margins and verdicts as text for people: translated, in the locale and the units of a Format.
class Wording {
  Q_DECLARE_TR_FUNCTIONS(Wording)
 public:
  using Format = desktop::Format;
  explicit Wording(const Format& format = Format::inDefaultLocale()) : m_format(format) {}

  const Format& format() const { return m_format; }
  /// So many digits that a value does not read as a limit that it is not on.
  static int digits(const judge::Outcome& outcome);
  QString number(double value, int digits) const { return m_format.number(value, digits); }
  /// A setpoint or another temperature, as short as it was written: 217.
  QString limit(double temperature_C) const { return m_format.limit(temperature_C, Format::Quantity::kTemperature); }
  /// One of the outcome's limits, or its target, as short as it was written in the window: 235, 2.5.
  QString limit(double value, const judge::Outcome& outcome) const;
  QString percent(double fraction) const { return m_format.percent(fraction); }  ///< "−39 %"
  QString unit(const judge::Outcome& outcome) const;                             ///< "°C"; empty for counts

  /// "232.1", "≥ 91.4"; "not reached", "undetermined" without a value. Never reads as a limit that it is not on.
  QString value(const judge::Outcome& outcome) const;
  /// A number of a measure with its usual digits, or as many as keep it on its side of the limits.
  QString result(double value, measure::Measure measure, std::optional<double> lower,
                 std::optional<double> upper) const;
  /// "2.1", empty without one.
  QString uncertainty(const judge::Outcome& outcome) const;
  /// "232.1 ± 2.1 °C"
  QString valueWithUnit(const judge::Outcome& outcome) const;
  /// "−39 %", "at most −6 %"; empty without one.
  QString margin(const judge::Outcome& outcome) const;
  QString margin(double fraction, judge::MarginBound bound) const;
  /// "2.9 short", "0.23 too steep": how far outside in words; empty where it is not outside.
  QString distance(const judge::Outcome& outcome) const;
  static QString verdict(judge::Verdict verdict);
  static QString verdictTitle(judge::Verdict verdict);  ///< at the start of a line: "Conditional pass"

  /// A requirement's name in the user's language where it is one that windows usually have, else as the window has it.
  static QString requirement(const std::string& name);
  /// The same as a heading: "Steepest rise".
  static QString title(const std::string& requirement);
  /// What tells the requirement from others of its measure: "over 5 s", "150–200 °C"; empty where the name says it.
  QString parameterNote(const judge::Outcome& outcome) const;

  /// "Peak, U12 centre: 232.1 ± 2.1 °C, 2.9 short, margin −39 %, fail"
  QString tip(const judge::Outcome& outcome, const QString& place) const;
  /// A tool tip as Qt shows it: names from logs and files are never markup.
  static QString asHtml(const QString& tip) { return tip.toHtmlEscaped().replace(u'\n', QStringLiteral("<br>")); }
  /// "Peak, U12 centre, 232.1 plus or minus 2.1 °C, limits 235 to 250, margin minus 39 percent, fail"
  QString spoken(const judge::Outcome& outcome, const QString& place) const;
  /// "limits 235 to 250", "limit at most 2.5"
  QString spokenLimits(const judge::Outcome& outcome) const;

 private:
  QString spokenNumber(const QString& text) const;
  Format m_format;
};

}  // namespace ovenwright::widgets
