#pragma once
#include <optional>
#include <string>
#include <string_view>

namespace ovenwright::log {

/// How a spreadsheet's number format shows a number.
enum class NumberKind {
  kNumber,
  kDate,
  kDateTime,
  kTime,  ///< hours, minutes, seconds
};

/// The kind that a format code of Office Open XML stands for ("yyyy-mm-dd hh:mm:ss.000", "[h]:mm", "0.00"): its first
/// section without quoted text, escapes, colours and locales is looked through for y, d (a day) and h, m, s.
NumberKind number_kind(std::string_view format_code);
/// The same for a built-in format number, ECMA-376 part 1, 18.8.30.
NumberKind builtin_number_kind(int format_id);

/// A number as the shortest decimal text that reads back the same, without exponent where that is short; what is no
/// number stays as it is.
std::string number_as_text(std::string_view number);

/// A serial day number as text: a date as "2031-03-12", one with a time, shown or not, as "2031-03-12T09:14:22.5"; a
/// time of day or duration up to a year as "9:14:22.5", hours not wrapped at 24 (below one day whatever the kind).
/// Rounded to 10 µs with a date and 1 µs without, the grain of a serial day number. The number itself where it lies
/// outside the calendar.
/// @param from_1904  the workbook counts days from 1904-01-01, else from 1900 with its day 60 that never was
std::string serial_as_text(double serial, NumberKind kind, bool from_1904);

/// "2031-03-12T09:14:22.500000000" with the zeros behind the fraction gone.
std::string trim_fraction(std::string_view iso);

/// An ISO 8601 duration of days and less ("PT09H14M22.5S") as "9:14:22.5"; what is none stays as it is.
std::string duration_as_text(std::string_view duration);

}  // namespace ovenwright::log
