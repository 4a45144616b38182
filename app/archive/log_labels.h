#pragma once
#include <QDateTime>
#include <QString>
#include <optional>

#include "app/archive/moment.h"
#include "core/log/reading.h"

namespace ovenwright::archive {

/// What a log says of its own run, as a proposal for what is kept of it.
struct LogLabels {
  QString lot, serial;  ///< empty: the log does not say
  QDateTime
      startedAt;  ///< of the log's zero, in local time unless the log names its zone; invalid: no date stands in it
};

/// Lot and serial number from lines such as "Lot;QM-2291" before the table, the lot else from the file's name where it
/// begins with letters, digits and an end ("QM-2291_run3.csv"); the moment from the first row's own date, or from its
/// time of day and a date before the table that can only be read in one way.
LogLabels labelsOf(const log::Reading& reading);

/// When a pass of the log began by the log's own clock, to the second, which is what such a clock is good for; absent
/// where no date stands in it.
/// @param from_s  the pass's start on the log's clock
std::optional<Moment> startOf(const LogLabels& labels, double from_s);

}  // namespace ovenwright::archive
