#include "app/archive/log_labels.h"

#include <QFileInfo>
#include <QRegularExpression>
#include <QTimeZone>
#include <algorithm>
#include <cmath>

#include "core/log/cell.h"
#include "core/log/text.h"

namespace ovenwright::archive {
namespace {

constexpr qint64 kDay_ms = 86'400'000;
constexpr double kSerialDayOf1970 = 25569;  // 1970-01-01 in the serial days of workbooks, which count from 1899-12-30

/// The value behind one of the words.
/// @param alone  words that count only where a cell holds nothing else: they mean other things in a sentence
QString valueOf(const std::vector<log::ShownLine>& lines, int headerLine, const QString& words,
                const QString& alone = {}) {
  // "Lot;QM-2291", "Lot no.: QM-2291", "# Line 2, lot QM-2291, Tern"; the word stands alone.
  const QString names = alone.isEmpty() ? words : words + u'|' + alone;
  const QRegularExpression label(
      QStringLiteral("^[#;/ ]*(?:%1)(?:[ .]*(?:no|nr|number|nummer|id))?[. ]*[:=]?$").arg(names),
      QRegularExpression::CaseInsensitiveOption);
  const QRegularExpression both(
      QStringLiteral("(?:^|[,;#(] *)(?:%1)(?:[ .]*(?:no|nr|number|nummer|id))?[. ]*[:= ] *([^,;:=()]*[0-9][^,;:=()]*)")
          .arg(words),
      QRegularExpression::CaseInsensitiveOption);
  for (const auto& line : lines) {
    if (headerLine > 0 && line.line >= std::size_t(headerLine)) break;
    for (std::size_t i = 0; i < line.cells.size(); ++i) {
      const QString cell = QString::fromStdString(line.cells[i]).trimmed();
      if (i + 1 < line.cells.size() && label.match(cell).hasMatch())
        return QString::fromStdString(line.cells[i + 1]).trimmed();
      if (const auto found = both.match(cell); found.hasMatch()) return found.captured(1).trimmed();
    }
  }
  return {};
}

QString lotOfFileName(const std::string& path) {
  const QString name = QFileInfo(QString::fromStdString(path)).completeBaseName();
  static const QRegularExpression lot(QStringLiteral("^([A-Za-z]{1,6}-?[0-9]{3,8})(?=[_. -]|$)"));
  return lot.match(name).captured(1);
}

std::optional<log::DateOrder> orderOf(const std::optional<std::string>& name) {
  if (name == "dmy") return log::DateOrder::kDayMonthYear;
  if (name == "mdy") return log::DateOrder::kMonthDayYear;
  if (name == "ymd") return log::DateOrder::kYearMonthDay;
  return std::nullopt;
}

/// Days since 1970 of a date that can be read in one way only, or in the way that the log was read.
std::optional<double> dayOf(const log::TimeText& date, const std::optional<std::string>& order) {
  if (!date.has_date) return std::nullopt;
  auto known = date.order ? date.order : orderOf(order);
  if (!known) {
    int possible = 0;
    for (const auto each :
         {log::DateOrder::kDayMonthYear, log::DateOrder::kMonthDayYear, log::DateOrder::kYearMonthDay}) {
      if (!log::valid_date(date, each)) continue;
      known = each;
      ++possible;
    }
    if (possible != 1) return std::nullopt;
  }
  if (!log::valid_date(date, *known)) return std::nullopt;
  return log::days_since_1970(date, *known);
}

/// A moment of a day by the calendar, in the zone that the log names, else in this computer's.
QDateTime moment(double day, double second, std::optional<double> offset_s) {
  const qint64 at_ms = qint64(day) * kDay_ms + std::llround(second * 1000);
  if (offset_s) return QDateTime::fromMSecsSinceEpoch(at_ms - std::llround(*offset_s * 1000), Qt::UTC);
  const QDateTime calendar = QDateTime::fromMSecsSinceEpoch(at_ms, Qt::UTC);
  return QDateTime(calendar.date(), calendar.time(), Qt::LocalTime);
}

/// The date that stands before the table.
std::optional<double> dayBefore(const log::Reading& reading) {
  const auto value = valueOf(reading.shown, reading.layout.header_line.value_or(0),
                             QStringLiteral("date|datum|fecha|日期|測試日期|测试日期"));
  const auto cell = log::read_cell(log::plain_forms(value.toStdString()), '.');
  return cell.kind == log::CellKind::kTime ? dayOf(cell.time, reading.layout.date_order) : std::nullopt;
}

/// The moment that a row of the table names; invalid where it names none.
QDateTime momentOf(const log::ShownLine& line, const log::Reading& reading) {
  const auto& layout = reading.layout;
  const std::string kind = layout.time.kind.value_or("");
  const char decimal = reading.read_as.decimal == "," ? ',' : '.';
  std::optional<double> day, second, offset_s;
  int half = 0;
  for (const int column : layout.time.columns) {
    if (column < 1 || std::size_t(column) > line.cells.size()) return {};
    const std::string text = log::plain_forms(line.cells[std::size_t(column - 1)]);
    const auto cell = log::read_cell(log::trim(text), decimal);
    if (cell.kind == log::CellKind::kTime) {
      if (const auto date = dayOf(cell.time, layout.date_order)) day = date;
      if (cell.time.has_clock)
        second = kind == "clock h:m" && cell.time.parts == 2 ? cell.time.clock_s * 60 : cell.time.clock_s;
      if (cell.time.offset_s) offset_s = cell.time.offset_s;
    } else if (cell.number() && kind == "serial days") {
      day = std::floor(cell.value - kSerialDayOf1970);
      second = (cell.value - std::floor(cell.value)) * 86400;
    } else if (cell.number() && kind.ends_with("since 1970")) {
      const double perSecond = kind.starts_with("milli")   ? 1e3
                               : kind.starts_with("micro") ? 1e6
                               : kind.starts_with("nano")  ? 1e9
                                                           : 1;
      return QDateTime::fromMSecsSinceEpoch(std::llround(cell.value / perSecond * 1000), Qt::UTC);
    } else if (const int found = log::half_of_day(text)) {
      half = found;
    }
  }
  if (!second) return {};
  if (half) second = log::with_half_of_day(*second, half);
  if (!day && kind == "clock h:m:s") day = dayBefore(reading);
  return day ? moment(*day, *second, offset_s) : QDateTime();
}

}  // namespace

LogLabels labelsOf(const log::Reading& reading) {
  const int header = reading.layout.header_line.value_or(0);
  LogLabels labels;
  labels.lot = valueOf(reading.shown, header, QStringLiteral("lot|lote|批號|批号|批次"), QStringLiteral("los|charge"));
  if (labels.lot.isEmpty()) labels.lot = lotOfFileName(reading.file.file);
  labels.serial =
      valueOf(reading.shown, header,
              QStringLiteral("serial|s/n|sn|board serial|seriennummer|número de serie|序號|序号|序列號|序列号"));
  if (reading.layout.form == log::Form::kRows) return labels;  // times stand in a row there
  for (const auto& line : reading.shown) {
    if (line.line <= std::size_t(std::max(0, header))) continue;
    labels.startedAt = momentOf(line, reading);
    if (labels.startedAt.isValid()) break;
  }
  return labels;
}

std::optional<Moment> startOf(const LogLabels& labels, double from_s) {
  if (!labels.startedAt.isValid()) return std::nullopt;
  return Moment{std::chrono::milliseconds{labels.startedAt.addSecs(std::llround(from_s)).toMSecsSinceEpoch()}};
}

}  // namespace ovenwright::archive
