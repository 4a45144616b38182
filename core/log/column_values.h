#pragma once
#include <optional>
#include <string_view>
#include <vector>

#include "core/log/header.h"
#include "core/log/table.h"

namespace ovenwright::log {

/// The values without NaN and infinities.
std::vector<double> finite(const std::vector<double>& values);
/// NaN without numbers.
double smallest(const std::vector<double>& values);
/// Numbers that go up from the first row to the last, nearly all of them.
bool rising(const ColumnProfile& column);
/// Goes up by one from row to row (in the sample by whole numbers).
bool counting(const ColumnProfile& column);

bool is_temperature(const std::optional<UnitText>& unit);
bool has_digit(std::string_view text);
/// "Max", "Avg temp", "Delta T": no channel of its own. "TC1 max" may be one.
bool only_statistic(const TableHeader::Column& column);

/// "09.14.22" in every row: the same numbers could be dates, but they change like a clock.
bool clock_with_full_stops(const ColumnProfile& column);
/// Whole numbers that are all times of day written without signs: 91422 is 09:14:22.
bool packed_clock(const ColumnProfile& column);

/// "±", "+/-": between a reading and how sure it is.
bool is_tolerance_sign(std::string_view text);

/// Share of steps between sampled values that go up; 0 with fewer than two values.
double share_rising(const std::vector<double>& values);
/// Without what stands for 'no reading': one number, far outside of all others, that comes again and again, or that is
/// nearly all there is and no reading of anything (9999, 32767, 1e38).
std::vector<double> without_sentinels(const std::vector<double>& values);

/// A value that few others exceed, and one near the start: what a sentinel or a spike does not move. NaN without
/// numbers.
double robust_peak(const std::vector<double>& values);
double robust_start(const std::vector<double>& values);

}  // namespace ovenwright::log
