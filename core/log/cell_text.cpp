#include "core/log/cell_text.h"

#include <fmt/format.h>

#include <charconv>
#include <chrono>
#include <cmath>
#include <cstdint>

namespace ovenwright::log {
namespace {

char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c; }

std::optional<double> whole_number(std::string_view text) {
  double value = 0;
  if (text.starts_with('+')) text.remove_prefix(1);
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (error != std::errc{} || end != text.data() + text.size() || !std::isfinite(value)) return std::nullopt;
  return value;
}

/// A fraction of a second in millionths as ".5"; empty for none.
std::string fraction(std::int64_t microseconds) {
  if (microseconds == 0) return {};
  auto text = fmt::format(".{:06}", microseconds);
  while (text.ends_with('0')) text.pop_back();
  return text;
}

constexpr std::int64_t kSecond = 1'000'000, kMinute = 60 * kSecond, kHour = 60 * kMinute, kDay = 24 * kHour;

std::string hours_text(std::int64_t microseconds) {
  return fmt::format("{}:{:02}:{:02}{}", microseconds / kHour, microseconds % kHour / kMinute,
                     microseconds % kMinute / kSecond, fraction(microseconds % kSecond));
}

}  // namespace

NumberKind number_kind(std::string_view format_code) {
  bool day = false, time = false;
  for (std::size_t i = 0; i < format_code.size(); ++i) {
    const char c = lower(format_code[i]);
    if (c == ';') break;  // sections for negative numbers, zero and text
    if (c == '"') {
      i = format_code.find('"', i + 1);
      if (i == std::string_view::npos) break;
    } else if (c == '\\' || c == '_' || c == '*') {
      ++i;
    } else if (c == '[') {
      const auto close = format_code.find(']', i);
      if (close == std::string_view::npos) break;
      const char first = i + 1 < close ? lower(format_code[i + 1]) : ' ';
      const bool elapsed =
          format_code.substr(i + 1, close - i - 1).find_first_not_of("hHmMsS") == std::string_view::npos;
      time |= elapsed && (first == 'h' || first == 'm' || first == 's');
      i = close;
    } else if (c == 'y' || c == 'd') {
      day = true;
    } else if (c == 'h' || c == 's') {
      time = true;
    } else if (c == 'm') {
      // A month beside a day, minutes beside hours or seconds; alone ("mmm", "mm") a month.
      const auto rest = format_code.substr(i);
      if (!time && rest.find_first_of("hHsS") == std::string_view::npos) day = true;
    }
  }
  if (day) return time ? NumberKind::kDateTime : NumberKind::kDate;
  return time ? NumberKind::kTime : NumberKind::kNumber;
}

NumberKind builtin_number_kind(int format_id) {
  if ((format_id >= 18 && format_id <= 21) || (format_id >= 45 && format_id <= 47)) return NumberKind::kTime;
  if ((format_id >= 32 && format_id <= 35) || format_id == 55 || format_id == 56) return NumberKind::kTime;
  if (format_id == 22) return NumberKind::kDateTime;
  if ((format_id >= 14 && format_id <= 22) || (format_id >= 27 && format_id <= 36) ||
      (format_id >= 50 && format_id <= 58)) {
    return NumberKind::kDate;
  }
  return NumberKind::kNumber;
}

std::string number_as_text(std::string_view number) {
  const auto value = whole_number(number);
  if (!value) return std::string{number};
  char text[64];
  const double size = std::abs(*value);
  const bool plain = size == 0 || (size >= 1e-6 && size < 1e15);
  const auto result = plain ? std::to_chars(text, text + sizeof text, *value, std::chars_format::fixed)
                            : std::to_chars(text, text + sizeof text, *value);
  return {text, result.ptr};
}

std::string serial_as_text(double serial, NumberKind kind, bool from_1904) {
  constexpr double kMostDays = 2'958'466;  // 9999-12-31 and its hours
  constexpr double kLongestDuration = 366;
  const auto as_number = [serial] {
    char text[64];
    return std::string{text, std::to_chars(text, text + sizeof text, serial).ptr};
  };
  if (!(serial >= 0 && serial < kMostDays) || kind == NumberKind::kNumber) return as_number();
  if (serial < 1 || (kind == NumberKind::kTime && serial < kLongestDuration)) {
    return hours_text(std::llround(serial * static_cast<double>(kDay)));
  }
  const std::int64_t moment = std::llround(serial * static_cast<double>(kDay) / 10) * 10;
  const auto whole_days = moment / kDay;
  std::chrono::sys_days origin = std::chrono::year{1904} / 1 / 1;
  if (!from_1904) {
    origin = std::chrono::year{1899} / 12 / 30;
    if (whole_days < 60) origin += std::chrono::days{1};  // the 29th of February 1900 is counted and was none
  }
  const std::chrono::year_month_day date{origin + std::chrono::days{whole_days}};
  auto text = fmt::format("{:04}-{:02}-{:02}", static_cast<int>(date.year()), static_cast<unsigned>(date.month()),
                          static_cast<unsigned>(date.day()));
  const auto rest = moment % kDay;
  if (rest != 0 || kind != NumberKind::kDate) {
    text += fmt::format("T{:02}:{:02}:{:02}{}", rest / kHour, rest % kHour / kMinute, rest % kMinute / kSecond,
                        fraction(rest % kSecond));
  }
  return text;
}

std::string trim_fraction(std::string_view iso) {
  const auto point = iso.find('.');
  if (point == std::string_view::npos || iso.find_first_not_of("0123456789", point + 1) != std::string_view::npos) {
    return std::string{iso};
  }
  const auto last = iso.find_last_not_of('0');
  return std::string{iso.substr(0, last == point ? point : last + 1)};
}

std::string duration_as_text(std::string_view duration) {
  std::string_view rest = duration;
  if (!rest.starts_with('P')) return std::string{duration};
  rest.remove_prefix(1);
  double days = 0;
  bool in_time = false, any = false;
  while (!rest.empty()) {
    if (rest.front() == 'T') {
      in_time = true;
      rest.remove_prefix(1);
      continue;
    }
    double amount = 0;
    const auto [end, error] = std::from_chars(rest.data(), rest.data() + rest.size(), amount, std::chars_format::fixed);
    if (error != std::errc{} || end == rest.data() + rest.size() || !(amount >= 0)) return std::string{duration};
    const char unit = *end;
    rest.remove_prefix(static_cast<std::size_t>(end - rest.data()) + 1);
    if (!in_time && unit == 'D') {
      days += amount;
    } else if (in_time && (unit == 'H' || unit == 'M' || unit == 'S')) {
      days += amount / (unit == 'H' ? 24.0 : unit == 'M' ? 1440.0 : 86400.0);
    } else {
      return std::string{duration};
    }
    any = true;
  }
  constexpr double kLongest = 1e6;
  if (!any || !(days < kLongest)) return std::string{duration};
  return hours_text(std::llround(days * static_cast<double>(kDay)));
}

}  // namespace ovenwright::log
