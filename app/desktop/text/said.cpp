#include "app/desktop/text/said.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include "app/desktop/text/model_text.h"
#include "core/units/phrase.h"

namespace ovenwright::desktop {
namespace {

QString translated(const char* context, const QString& text) {
  return QCoreApplication::translate(context, text.toUtf8().constData());
}

/// "217 °C" in the unit that was chosen, "12.4 min" as the locale writes it; empty where it is no number.
QString numberText(const QString& text, const Format& format) {
  static const QRegularExpression number(QStringLiteral("^([-\u2212]?)(\\d+)(?:\\.(\\d+))?( (?:s|min|h|mm|°C))?$"));
  const auto match = number.match(text);
  if (!match.hasMatch()) return {};
  const QString unit = match.captured(4);
  const int digits = int(match.capturedLength(3));
  if (unit == u" °C") {
    const double sign = match.captured(1).isEmpty() ? 1 : -1;
    const double value_C = sign * (match.captured(2) + u'.' + match.captured(3)).toDouble();
    const auto quantity = Format::Quantity::kTemperature;
    return (digits == 0 ? format.limit(value_C, quantity) : format.temperature(value_C, digits)) + u' ' +
           format.unit(quantity);
  }
  if (digits == 0) return text;
  return match.captured(1) + match.captured(2) + format.locale().decimalPoint() + match.captured(3) + unit;
}

/// "\"top\", \"bottom\" or \"both\"", as files name what is allowed.
QString listText(const QString& text) {
  static const QRegularExpression list(QStringLiteral("^(\"[^\"]*\"(, \"[^\"]*\")*) or (\"[^\"]*\")$"));
  const auto match = list.match(text);
  return match.hasMatch() ? match.captured(1) + translated("phrase", QStringLiteral(" or ")) + match.captured(3)
                          : QString();
}

/// What stands in a place of a pattern: another phrase, a number, a list, the name of a requirement, what the model
/// says, else what stood in the log or the file.
QString argumentText(const std::string& argument, const Format& format) {
  const QString text = QString::fromStdString(argument);
  if (const QString word = translated("phrase", text); word != text) return word;
  if (QString number = numberText(text, format); !number.isEmpty()) return number;
  if (QString list = listText(text); !list.isEmpty()) return list;
  if (said(argument)) return inWords(argument, format);
  if (const QString name = translated("requirement", text); name != text) return name;
  return modelInWords(argument);
}

}  // namespace

QString inWords(const std::string& english, const Format& format) {
  const auto found = said(english);
  if (!found) return QString::fromStdString(english);
  const QString pattern = QCoreApplication::translate("phrase", std::string(found->pattern).c_str());
  // In one pass: an argument may hold what looks like a place.
  QString text;
  for (qsizetype i = 0; i < pattern.size(); ++i) {
    const int place = pattern[i] == u'{' && i + 2 < pattern.size() ? pattern[i + 1].digitValue() : -1;
    if (place < 0 || place >= int(found->arguments.size())) {
      text += pattern[i];
      continue;
    }
    text += argumentText(found->arguments[std::size_t(place)], format);
    i += 2;
  }
  return text;
}

QString inWords(const std::string& english, const QLocale& locale) { return inWords(english, Format({}, {}, locale)); }

}  // namespace ovenwright::desktop
