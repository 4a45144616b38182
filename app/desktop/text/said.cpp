#include "app/desktop/text/said.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include "core/units/phrase.h"

namespace ovenwright::desktop {
namespace {

/// "12.4", "12.4 min", "dmy": a number as the locale writes it, a word of the catalogue, else what stood in the log.
QString argumentText(const std::string& argument, const QLocale& locale) {
  static const QRegularExpression number(QStringLiteral("^-?\\d+\\.\\d+(?= (s|min|h)$|$)"));
  QString text = QCoreApplication::translate("phrase", argument.c_str());
  if (const auto match = number.match(text); match.hasMatch())
    text.replace(text.indexOf(u'.'), 1, QString(locale.decimalPoint()));
  return text;
}

}  // namespace

QString inWords(const std::string& english, const QLocale& locale) {
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
    text += argumentText(found->arguments[std::size_t(place)], locale);
    i += 2;
  }
  return text;
}

}  // namespace ovenwright::desktop
