#include "app/archive/moment.h"

#include <QDate>
#include <QDateTime>
#include <QString>
#include <QTime>

namespace ovenwright::archive {

Moment now() { return std::chrono::time_point_cast<std::chrono::milliseconds>(std::chrono::system_clock::now()); }

std::string momentText(Moment moment) {
  return QDateTime::fromMSecsSinceEpoch(moment.time_since_epoch().count(), Qt::UTC)
      .toString(Qt::ISODateWithMs)
      .toStdString();
}

Result<Moment> parseMoment(const std::string& text, DateEdge edge) {
  const auto given = QString::fromStdString(text).trimmed();
  QDateTime moment;
  if (const auto date = QDate::fromString(given, Qt::ISODate); date.isValid() && given.size() == 10) {
    moment = QDateTime(edge == DateEdge::kEnd ? date.addDays(1) : date, QTime(0, 0), Qt::UTC);
  } else {
    moment = QDateTime::fromString(given, Qt::ISODateWithMs);
    if (moment.timeSpec() == Qt::LocalTime) moment.setTimeSpec(Qt::UTC);
  }
  if (!moment.isValid()) {
    const std::string expected = "a date or a time as 2026-03-14 or 2026-03-14T08:15:00Z";
    return Error{ErrorCode::kBadArgument, "found \"" + text + "\", expected " + expected, {}, text, expected};
  }
  return Moment{std::chrono::milliseconds{moment.toMSecsSinceEpoch()}};
}

}  // namespace ovenwright::archive
