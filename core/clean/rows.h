#pragma once
#include <cstddef>
#include <functional>
#include <memory>
#include <optional>
#include <span>
#include <vector>

#include "core/run/fault.h"
#include "core/run/trace.h"

namespace ovenwright::clean {

/// The rows of one clock in an order in which time runs forward.
struct OrderedRows {
  std::shared_ptr<const run::Clock> clock;       ///< empty where no row has a usable time
  std::optional<std::vector<std::size_t>> kept;  ///< rows of the log on the clock; absent: all of them
  std::vector<run::Fault> faults;                ///< time going back
};

/// Orders the rows of a log: rows that repeat the time of the row before are left out, and of rows that run backwards
/// the fewest that let the rest run forward (the longest increasing subsequence stays, so one mad time costs one row).
/// Rows without a time are left out too. Cost: O(n) where time runs forward, and the clock then shares the times; else
/// O(n log n).
OrderedRows order_rows(const std::shared_ptr<const std::vector<double>>& time_s);

/// Rows at which a log starts again from an earlier time and goes on from there: with at least 20 rows each before it
/// and behind it that run forward. The first row of each part; {0} where the clock never starts again.
std::vector<std::size_t> restarts(std::span<const double> time_s);

/// Times behind a clock that was set back, moved on by as much, so that the rows go on at the usual interval; until the
/// clock leaps forward by as much again.
struct MovedOn {
  std::vector<double> time_s;
  std::vector<run::Fault> faults;  ///< time going back, flagged: from the row before to the first one moved
};
/// @param goes_on  whether the curve goes on from the row before to this one; asked only where a clock starts again
/// Absent where nothing is moved. Cost: O(n), and O(n log n) where a clock starts again.
std::optional<MovedOn> moved_on(std::span<const double> time_s, const std::function<bool(std::size_t)>& goes_on);

/// Intervals above five times the median and above 2 s, among rows first..last of a clock.
std::vector<run::Fault> clock_gaps(const run::Clock& clock, std::size_t first, std::size_t last);

}  // namespace ovenwright::clean
