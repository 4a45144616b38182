#include "core/log/time_text.h"

#include <string>

#include "core/log/cell_text.h"
#include "core/log/clock_text.h"
#include "core/log/date_text.h"
#include "core/log/text.h"

namespace ovenwright::log {
namespace {

/// What is surely none, at a glance: no digit, signs that no time has, or nothing that separates hours, days and so on.
bool may_be_time(std::string_view text) {
  bool digit = false, separates = false;
  for (const char c : text) {
    if (std::string_view{";|=<>{}[]#*?!@$&\\%"}.find(c) != std::string_view::npos) return false;
    digit = digit || is_digit(c);
    separates = separates || (!is_digit(c) && c != ',' && c != ' ');
  }
  return digit && (separates || text.size() >= 13);  // "20310312 091422"
}

}  // namespace

std::optional<TimeText> read_time_text(std::string_view original) {
  if (original.empty() || original.size() > 64) return std::nullopt;
  if (original.front() == 'P') {  // "PT6M22.5S"
    const std::string duration = duration_as_text(original);
    return duration == original ? std::nullopt : read_time_text(duration);
  }
  if (!may_be_time(original)) return std::nullopt;
  const std::string text = lower(original);
  if (auto clock_only = dotted_clock(text)) {
    // Whether it is a date the whole column tells.
    Scanner as_date{text};
    TimeText time;
    if (date_of_numbers(as_date, time) && as_date.done()) {
      time.clock_s = clock_only->clock_s;
      time.parts = 3;
      time.full_stops = true;
      return time;
    }
    clock_only->has_clock = true;
    return clock_only;
  }
  Scanner scan{text};
  TimeText time;
  bool year_to_come = false;
  skip_weekday(scan);
  if (take_date(scan, time, year_to_come)) {
    const auto behind = scan.mark();
    while (scan.peek() == ',' || scan.peek() == ' ' || scan.peek() == ';') scan.take(scan.peek());
    if (scan.peek() == 't' || scan.peek() == '_' || scan.peek() == ':' || scan.peek() == '-') {
      if (is_digit(scan.peek(1))) scan.take(scan.peek());
    }
    if (!scan.done() && (is_letter(scan.peek()) || is_digit(scan.peek()))) {
      const auto before = scan.mark();
      skip_weekday(scan);
      if (!take_clock(scan, time)) scan.back(before);
      if (year_to_come && !year_at_last(scan, time)) return std::nullopt;
    } else if (!scan.done()) {
      scan.back(behind);
    }
  } else if (take_clock(scan, time)) {
    const auto behind = scan.mark();
    while (scan.peek() == ',' || scan.peek() == ' ') scan.take(scan.peek());
    if (!scan.done() && (!take_date(scan, time, year_to_come) || year_to_come)) scan.back(behind);
  } else {
    return std::nullopt;
  }
  if (time.has_clock) take_offset(scan, time);
  scan.blanks();
  if (!scan.done()) return std::nullopt;
  return time;
}

}  // namespace ovenwright::log
