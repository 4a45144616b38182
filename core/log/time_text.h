#pragma once
#include <optional>
#include <string_view>

namespace ovenwright::log {

enum class DateOrder { kDayMonthYear, kMonthDayYear, kYearMonthDay };

/// A date, a time of day (or duration), or both, as written in a cell.
struct TimeText {
  bool has_date = false, has_clock = false;
  int first = 0, second = 0, third = 0;  ///< the date's numbers in the order in which they stand
  int year_digits = 0;                   ///< of the number that can only be a year: 4; 0 where all three have two
  char separator = 0;                    ///< between the date's numbers
  std::optional<DateOrder> order;        ///< where the text itself settles it: four digits first, a month's name
  int parts = 0;                         ///< of the clock: 2 or 3
  int lead = 0;                          ///< the clock's first number
  bool twelve_hours = false;             ///< AM or PM stood there; `clock_s` has it in
  double clock_s = 0;                    ///< h:m:s in seconds; of two parts as m:s (h:m is 60 times that)
  int fraction_digits = 0;               ///< of the second
  bool full_stops = false;               ///< three numbers that may also be h.m.s
  bool packed = false;                   ///< figures without a sign: as well a number
  std::optional<double> offset_s;        ///< from UTC, where it is stated
};

/// @param text  trimmed, in plain_forms; any case. Words of months and halves of the day in English, German, Spanish,
///              French, Chinese and Japanese.
/// Nothing where something else stands in the cell, or a field is out of its range in every reading.
std::optional<TimeText> read_time_text(std::string_view text);

/// "20310312095840", "20310312095840500", "310312095840", "310312 095840.5": nothing but figures, years first.
std::optional<TimeText> packed_moment(std::string_view text);

/// Whether the date's numbers are a date in that order.
bool valid_date(const TimeText& time, DateOrder order);
/// Days since 1970-01-01 (proleptic Gregorian). Two-digit years: 70 to 99 are 1970 to 1999, the rest 2000 to 2069.
/// @param time  a valid date in that order
double days_since_1970(const TimeText& time, DateOrder order);

/// A word that stands alone and says which half of the day: "PM", "下午". 0: none, 1: before noon, 2: after.
int half_of_day(std::string_view text);
/// Hours 1 to 12 and the half of the day in seconds of the day.
double with_half_of_day(double clock_s, int half);

}  // namespace ovenwright::log
