#include "core/log/time_text.h"

#include <cmath>
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

/// So many figures as a number; nothing where others stand there.
std::optional<int> figures(std::string_view text, std::size_t from, std::size_t count) {
  int value = 0;
  for (std::size_t i = from; i < from + count; ++i) {
    if (i >= text.size() || !is_digit(text[i])) return std::nullopt;
    value = value * 10 + (text[i] - '0');
  }
  return value;
}

/// "22.03. 09:58:40", "22/03 09:58:40": a date without a year says no more than the clock behind it does. What is left.
std::string_view without_day(std::string_view text) {
  std::size_t at = 0;
  const auto number = [&] {
    const std::size_t from = at;
    while (at < text.size() && is_digit(text[at])) ++at;
    return at > from && at - from <= 2;
  };
  if (!number() || at >= text.size() || std::string_view{"./-"}.find(text[at]) == std::string_view::npos) return text;
  ++at;
  if (!number()) return text;
  if (at < text.size() && text[at] == '.') ++at;
  if (at >= text.size() || text[at] != ' ') return text;
  const auto rest = text.substr(at + 1);
  const auto first = rest.find(':');
  const bool clock =
      first != std::string_view::npos && first <= 2 && first > 0 && rest.find(':', first + 1) == first + 3;
  return clock ? rest : text;
}

/// "2031_03_22_09_58_40", "2031-03-22-09-58-40.5": one sign throughout, made one that is known.
std::string with_usual_signs(std::string_view text) {
  constexpr std::size_t kShortest = 19;
  if (text.size() < kShortest || (text[4] != '_' && text[4] != '-')) return std::string{text};
  for (const std::size_t at : {7U, 10U, 13U, 16U}) {
    if (text[at] != text[4]) return std::string{text};
  }
  std::string usual{text};
  usual[4] = usual[7] = '-';
  usual[10] = ' ';
  usual[13] = usual[16] = ':';
  return usual;
}

}  // namespace

std::optional<TimeText> packed_moment(std::string_view text) {
  const bool short_year = text.size() >= 12 && text.size() <= 17 && figures(text, 0, 6) && !figures(text, 6, 1);
  const std::size_t years = short_year || text.size() == 12 ? 2 : 4;
  if (!short_year && text.size() != 12 && text.size() != 14 && text.size() != 17) return std::nullopt;
  if (short_year && std::string_view{" _-T"}.find(text[6]) == std::string_view::npos) return std::nullopt;
  const std::size_t clock = years + 4 + (short_year ? 1 : 0);
  const auto year = figures(text, 0, years), month = figures(text, years, 2), day = figures(text, years + 2, 2);
  const auto hour = figures(text, clock, 2), minute = figures(text, clock + 2, 2), second = figures(text, clock + 4, 2);
  if (!year || !month || !day || !hour || !minute || !second) return std::nullopt;
  if (*hour > 23 || *minute > 59 || *second > 59 || (years == 2 && (*year < 10 || *year > 69))) return std::nullopt;
  TimeText time;
  time.has_date = time.has_clock = true;
  time.first = years == 2 ? 2000 + *year : *year;
  time.second = *month;
  time.third = *day;
  time.year_digits = 4;
  time.order = DateOrder::kYearMonthDay;
  if (!valid_date(time, DateOrder::kYearMonthDay)) return std::nullopt;
  time.parts = 3;
  time.lead = *hour;
  time.clock_s = *hour * 3600.0 + *minute * 60.0 + *second;
  std::size_t at = clock + 6;
  if (short_year && at < text.size()) {
    if (text[at] != '.' && text[at] != ',') return std::nullopt;
    ++at;
  }
  if (at == text.size()) return time;
  const auto part = figures(text, at, text.size() - at);
  if (!part) return std::nullopt;
  time.fraction_digits = static_cast<int>(text.size() - at);
  time.clock_s += *part / std::pow(10.0, time.fraction_digits);
  return time;
}

std::optional<TimeText> read_time_text(std::string_view original) {
  if (original.empty() || original.size() > 64) return std::nullopt;
  if (auto packed = packed_moment(original)) return packed;
  if (original.front() == 'P') {  // "PT6M22.5S"
    const std::string duration = duration_as_text(original);
    return duration == original ? std::nullopt : read_time_text(duration);
  }
  if (!may_be_time(original)) return std::nullopt;
  const std::string text = lower(with_usual_signs(without_day(original)));
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
