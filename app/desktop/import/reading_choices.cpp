#include "app/desktop/import/reading_choices.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>

namespace ovenwright::desktop {
namespace {

Choices timeKinds() {
  return {{QStringLiteral("seconds"), QCoreApplication::translate("ReadingChoices", "seconds")},
          {QStringLiteral("milliseconds"), QCoreApplication::translate("ReadingChoices", "milliseconds")},
          {QStringLiteral("minutes"), QCoreApplication::translate("ReadingChoices", "minutes")},
          {QStringLiteral("clock m:s"), QCoreApplication::translate("ReadingChoices", "clock m:s")},
          {QStringLiteral("clock h:m:s"), QCoreApplication::translate("ReadingChoices", "clock h:m:s")},
          {QStringLiteral("date and time"), QCoreApplication::translate("ReadingChoices", "date and time")},
          {QStringLiteral("serial days"), QCoreApplication::translate("ReadingChoices", "serial days")},
          {QStringLiteral("seconds since 1970"), QCoreApplication::translate("ReadingChoices", "seconds since 1970")},
          {QStringLiteral("index"), QCoreApplication::translate("ReadingChoices", "number of the row")}};
}

QString columnsText(const std::vector<int>& columns) {
  QStringList numbers;
  for (const int column : columns) numbers << QString::number(column);
  return numbers.join(u'+');
}

}  // namespace

Choices tableChoices(const std::vector<log::ListedTable>& tables, const QLocale& locale) {
  Choices choices;
  for (const auto& table : tables) {
    QStringList parts;
    if (!table.member.empty()) parts << QString::fromStdString(table.member);
    const QString sheet = QString::fromStdString(table.sheet);
    bool number = false;
    static_cast<void>(sheet.toInt(&number));
    if (!sheet.isEmpty())
      parts << (number ? QCoreApplication::translate("ReadingChoices", "Table %1").arg(sheet) : sheet);
    if (table.header_line > 0) parts << QCoreApplication::translate("ReadingChoices", "Line %1").arg(table.header_line);
    QString text = parts.join(QStringLiteral(" / "));
    if (table.rows > 0)
      text = QCoreApplication::translate("ReadingChoices", "%1, %2 rows")
                 .arg(text, locale.toString(qulonglong(table.rows)));
    choices.emplace_back(QString::number(choices.size() + 1), text);
  }
  return choices;
}

QString tableValue(const std::vector<log::ListedTable>& tables) {
  const auto read = std::ranges::find(tables, true, &log::ListedTable::read);
  return read == tables.end() ? QString() : QString::number(read - tables.begin() + 1);
}

void applyTable(log::Layout& layout, const log::ListedTable& table) {
  log::Layout fresh;
  fresh.leave_empty = layout.leave_empty;
  if (!table.member.empty()) fresh.member = table.member;
  if (!table.sheet.empty()) fresh.sheet = table.sheet;
  if (table.header_line > 0) fresh.header_line = table.header_line;
  layout = std::move(fresh);
}

Choices encodingChoices() {
  Choices choices;
  for (const char* name : {"UTF-8", "UTF-16LE", "UTF-16BE", "windows-1252", "ISO-8859-15", "windows-1250",
                           "windows-1251", "GB18030", "Big5", "Shift_JIS", "EUC-JP", "EUC-KR"}) {
    choices.emplace_back(QLatin1String(name), QLatin1String(name));
  }
  return choices;
}

Choices delimiterChoices() {
  return {{QStringLiteral(","), QCoreApplication::translate("ReadingChoices", "Comma")},
          {QStringLiteral(";"), QCoreApplication::translate("ReadingChoices", "Semicolon")},
          {QStringLiteral("\t"), QCoreApplication::translate("ReadingChoices", "Tab")},
          {QStringLiteral("|"), QCoreApplication::translate("ReadingChoices", "Bar")},
          {QStringLiteral(" "), QCoreApplication::translate("ReadingChoices", "Blanks")}};
}

Choices decimalChoices() {
  return {{QStringLiteral("."), QCoreApplication::translate("ReadingChoices", "Point")},
          {QStringLiteral(","), QCoreApplication::translate("ReadingChoices", "Comma")}};
}

Choices unitChoices() {
  return {{QStringLiteral("degC"), QStringLiteral("°C")},
          {QStringLiteral("degF"), QStringLiteral("°F")},
          {QStringLiteral("K"), QStringLiteral("K")},
          {QStringLiteral("mV"), QCoreApplication::translate("ReadingChoices", "mV")}};
}

Choices dateOrderChoices() {
  return {{QStringLiteral("dmy"), QCoreApplication::translate("ReadingChoices", "Day, month, year")},
          {QStringLiteral("mdy"), QCoreApplication::translate("ReadingChoices", "Month, day, year")},
          {QStringLiteral("ymd"), QCoreApplication::translate("ReadingChoices", "Year, month, day")}};
}

Choices scaleChoices() {
  return {{QStringLiteral("1"), QCoreApplication::translate("ReadingChoices", "As they stand")},
          {QStringLiteral("0.1"), QCoreApplication::translate("ReadingChoices", "Tenths")},
          {QStringLiteral("0.01"), QCoreApplication::translate("ReadingChoices", "Hundredths")}};
}

Choices thermocoupleChoices() {
  Choices choices;
  for (const char* type : {"K", "J", "T", "E", "N", "R", "S", "B"})
    choices.emplace_back(QLatin1String(type),
                         QCoreApplication::translate("ReadingChoices", "Type %1").arg(QLatin1String(type)));
  return choices;
}

Choices coldJunctionChoices(const Format& format, const log::Layout& layout) {
  Choices choices;
  std::vector<double> usual_C{0, 20, 23, 25, 30};
  if (layout.cold_junction_C && std::ranges::find(usual_C, *layout.cold_junction_C) == usual_C.end())
    usual_C.push_back(*layout.cold_junction_C);
  std::ranges::sort(usual_C);
  for (const double at_C : usual_C) choices.emplace_back(QString::number(at_C), format.temperatureWithUnit(at_C));
  const bool in_log = layout.cold_junction_column.has_value();
  choices.insert(
      choices.begin(),
      {QString(), in_log ? QCoreApplication::translate("ReadingChoices", "Column %1").arg(*layout.cold_junction_column)
                         : QCoreApplication::translate("ReadingChoices", "Found")});
  return choices;
}

Choices headerChoices(const log::Reading& reading) {
  Choices choices{{QStringLiteral("0"), QCoreApplication::translate("ReadingChoices", "None")}};
  constexpr std::size_t kMostLines = 40;
  for (const auto& line : reading.shown) {
    if (line.line > kMostLines && int(line.line) != reading.layout.header_line.value_or(0)) continue;
    choices.emplace_back(QString::number(line.line),
                         QCoreApplication::translate("ReadingChoices", "Line %1").arg(line.line));
  }
  for (const auto& assumption : reading.read_as.assumed) {
    const QString other = QString::fromStdString(assumption.other);
    const bool there = std::ranges::any_of(choices, [&](const auto& choice) { return choice.first == other; });
    if (assumption.about == "header" && !there)
      choices.emplace_back(other, QCoreApplication::translate("ReadingChoices", "Line %1").arg(other));
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
    const QString where = columns.contains(u'+')
                              ? QCoreApplication::translate("ReadingChoices", "Columns %1").arg(columns)
                              : QCoreApplication::translate("ReadingChoices", "Column %1").arg(columns);
    choices.emplace_back(
        kind + u'@' + columns,
        index || columns.isEmpty() ? text : QCoreApplication::translate("ReadingChoices", "%1, %2").arg(where, text));
  }
  return choices;
}

QString scaleValue(const log::Layout& layout) { return QString::number(layout.scale.value_or(1)); }

void applyChoice(log::Layout& layout, const QString& about, const QString& value) {
  const auto text = value.isEmpty() ? std::nullopt : std::optional(value.toStdString());
  if (about == u"encoding") layout.encoding = text;
  if (about == u"delimiter") layout.delimiter = text;
  if (about == u"decimal") layout.decimal = text;
  if (about == u"header_line") layout.header_line = value.isEmpty() ? std::nullopt : std::optional(value.toInt());
  if (about == u"unit") layout.unit = text;
  if (about == u"date_order") layout.date_order = text;
  if (about == u"scale") layout.scale = value.toDouble();
  if (about == u"thermocouple_type") layout.thermocouple_type = text;
  if (about == u"cold_junction")
    layout.cold_junction_C = value.isEmpty() ? std::nullopt : std::optional(value.toDouble());
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
