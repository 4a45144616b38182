#include "app/desktop/import/reading_choices.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>

namespace ovenwright::desktop {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(ReadingChoices)
};

Choices timeKinds() {
  return {{QStringLiteral("seconds"), Words::tr("seconds")},
          {QStringLiteral("milliseconds"), Words::tr("milliseconds")},
          {QStringLiteral("minutes"), Words::tr("minutes")},
          {QStringLiteral("clock m:s"), Words::tr("clock m:s")},
          {QStringLiteral("clock h:m:s"), Words::tr("clock h:m:s")},
          {QStringLiteral("date and time"), Words::tr("date and time")},
          {QStringLiteral("serial days"), Words::tr("serial days")},
          {QStringLiteral("seconds since 1970"), Words::tr("seconds since 1970")},
          {QStringLiteral("index"), Words::tr("number of the row")}};
}

QString columnsText(const std::vector<int>& columns) {
  QStringList numbers;
  for (const int column : columns) numbers << QString::number(column);
  return numbers.join(u'+');
}

}  // namespace

Choices encodingChoices() {
  Choices choices;
  for (const char* name : {"UTF-8", "UTF-16LE", "UTF-16BE", "windows-1252", "ISO-8859-15", "windows-1250",
                           "windows-1251", "GB18030", "Big5", "Shift_JIS", "EUC-JP", "EUC-KR"}) {
    choices.emplace_back(QLatin1String(name), QLatin1String(name));
  }
  return choices;
}

Choices delimiterChoices() {
  return {{QStringLiteral(","), Words::tr("Comma")},
          {QStringLiteral(";"), Words::tr("Semicolon")},
          {QStringLiteral("\t"), Words::tr("Tab")},
          {QStringLiteral("|"), Words::tr("Bar")},
          {QStringLiteral(" "), Words::tr("Blanks")}};
}

Choices decimalChoices() {
  return {{QStringLiteral("."), Words::tr("Point")}, {QStringLiteral(","), Words::tr("Comma")}};
}

Choices unitChoices() {
  return {{QStringLiteral("degC"), QStringLiteral("°C")},
          {QStringLiteral("degF"), QStringLiteral("°F")},
          {QStringLiteral("K"), QStringLiteral("K")},
          {QStringLiteral("mV"), Words::tr("mV")}};
}

Choices dateOrderChoices() {
  return {{QStringLiteral("dmy"), Words::tr("Day, month, year")},
          {QStringLiteral("mdy"), Words::tr("Month, day, year")},
          {QStringLiteral("ymd"), Words::tr("Year, month, day")}};
}

Choices headerChoices(const log::Reading& reading) {
  Choices choices{{QStringLiteral("0"), Words::tr("None")}};
  constexpr std::size_t kMostLines = 40;
  for (const auto& line : reading.shown) {
    if (line.line > kMostLines && int(line.line) != reading.layout.header_line.value_or(0)) continue;
    choices.emplace_back(QString::number(line.line), Words::tr("Line %1").arg(line.line));
  }
  return choices;
}

QString headerValue(const log::Layout& layout) { return QString::number(layout.header_line.value_or(0)); }

QString timeValue(const log::Layout& layout) {
  return QString::fromStdString(layout.time.kind.value_or("index")) + u'@' + columnsText(layout.time.columns);
}

Choices timeChoices(const log::Reading& reading) {
  Choices choices;
  const QString columns = columnsText(reading.layout.time.columns);
  for (const auto& [kind, text] : timeKinds()) {
    if (columns.isEmpty() && kind != u"index") continue;
    const bool index = kind == u"index";
    const QString where =
        columns.contains(u'+') ? Words::tr("Columns %1").arg(columns) : Words::tr("Column %1").arg(columns);
    choices.emplace_back(kind + u'@' + columns,
                         index || columns.isEmpty() ? text : Words::tr("%1, %2").arg(where, text));
  }
  return choices;
}

void applyChoice(log::Layout& layout, const QString& about, const QString& value) {
  const auto text = value.isEmpty() ? std::nullopt : std::optional(value.toStdString());
  if (about == u"encoding") layout.encoding = text;
  if (about == u"delimiter") layout.delimiter = text;
  if (about == u"decimal") layout.decimal = text;
  if (about == u"header_line") layout.header_line = value.isEmpty() ? std::nullopt : std::optional(value.toInt());
  if (about == u"unit") layout.unit = text;
  if (about == u"date_order") layout.date_order = text;
  if (about != u"time") return;
  if (value.isEmpty()) {
    layout.time = {};
    return;
  }
  const QStringList parts = value.split(u'@');
  layout.time.kind = parts[0].toStdString();
  layout.time.columns.clear();
  for (const QString& column : parts.value(1).split(u'+', Qt::SkipEmptyParts))
    layout.time.columns.push_back(column.toInt());
  if (parts[0] != u"index") layout.time.interval_s.reset();
}

}  // namespace ovenwright::desktop
