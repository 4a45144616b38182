#include "core/log/clock_text.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>

#include "core/log/text.h"

namespace ovenwright::log {
namespace {

constexpr std::array<std::string_view, 12> kBefore{"a.m.", "a. m.", "am",   "a.m",   "上午", "午前",
                                                   "凌晨", "早上",  "오전", "vorm.", "vorm", "a"};
constexpr std::array<std::string_view, 12> kAfter{"p.m.", "p. m.", "pm",   "p.m",    "下午",  "午後",
                                                  "晚上", "中午",  "오후", "nachm.", "nachm", "p"};

/// Digits behind a decimal sign as a fraction.
double fraction(Scanner& scan, int& digits) {
  double value = 0, power = 1;
  digits = 0;
  for (; is_digit(scan.peek()); ++digits) {
    if (digits < 15) {
      value = value * 10 + (scan.peek() - '0');
      power *= 10;
    }
    scan.take(scan.peek());
  }
  return value / power;
}

int half_at(Scanner& scan) {
  const auto start = scan.mark();
  scan.blanks();
  if (!is_letter(scan.peek())) {
    scan.back(start);
    return 0;
  }
  for (const auto word : kAfter) {
    if (scan.take_word(word)) return 2;
  }
  for (const auto word : kBefore) {
    if (scan.take_word(word)) return 1;
  }
  scan.back(start);
  return 0;
}

/// "9h14m22.5s", "5 min 12 s", "9时14分22秒", "5'12\"": every number is followed by the sign of its unit.
bool clock_with_units(Scanner& scan, TimeText& time) {
  struct Sign {
    std::string_view text;
    double seconds;
  };
  static constexpr std::array kSigns{Sign{"days", 86400}, Sign{"day", 86400},  Sign{"d", 86400},   Sign{"天", 86400},
                                     Sign{"hours", 3600}, Sign{"hour", 3600},  Sign{"hrs", 3600},  Sign{"hr", 3600},
                                     Sign{"std", 3600},   Sign{"h", 3600},     Sign{"小时", 3600}, Sign{"小時", 3600},
                                     Sign{"時間", 3600},  Sign{"时", 3600},    Sign{"時", 3600},   Sign{"点", 3600},
                                     Sign{"點", 3600},    Sign{"minutes", 60}, Sign{"minute", 60}, Sign{"mins", 60},
                                     Sign{"min", 60},     Sign{"m", 60},       Sign{"分钟", 60},   Sign{"分鐘", 60},
                                     Sign{"分", 60},      Sign{"''", 1},       Sign{"'", 60},      Sign{"seconds", 1},
                                     Sign{"second", 1},   Sign{"secs", 1},     Sign{"sec", 1},     Sign{"sek", 1},
                                     Sign{"seg", 1},      Sign{"s", 1},        Sign{"秒", 1},      Sign{"\"", 1}};
  const auto start = scan.mark();
  double last = 1e9, total = 0;
  int parts = 0, lead = 0, digits = 0;
  while (is_digit(scan.peek())) {
    const auto part_start = scan.mark();
    double value = scan.number(digits);
    int fraction_digits = 0;
    if (digits == 0 || scan.peek() == ':') break;
    if (scan.peek() == '.' || scan.peek() == ',') {
      scan.take(scan.peek());
      value += fraction(scan, fraction_digits);
    }
    scan.blanks();
    const auto sign = std::find_if(kSigns.begin(), kSigns.end(), [&scan](const Sign& s) { return scan.take(s.text); });
    if (sign == kSigns.end() && parts > 0 && last == 3600 && digits == 2) {  // "9h14"
      total += value * 60;
      ++parts;
      break;
    }
    if (sign == kSigns.end() || sign->seconds >= last) {
      scan.back(part_start);
      break;
    }
    if (parts == 0) lead = static_cast<int>(value);
    last = sign->seconds;
    total += value * sign->seconds;
    time.fraction_digits = fraction_digits;
    ++parts;
    scan.blanks();
  }
  if (parts < 2) {
    scan.back(start);
    time.fraction_digits = 0;
    return false;
  }
  time.has_clock = true;
  time.parts = 3;
  time.lead = lead;
  time.clock_s = total;
  return true;
}

/// "1.02:03:04", "1 day, 2:03:04", "0 days 00:00:05", "0 00:00:05": whole days before a clock; 0, and nothing taken,
/// without them.
double days_before_clock(Scanner& scan) {
  const auto start = scan.mark();
  int digits = 0;
  const int days = scan.number(digits);
  bool stated = digits > 0 && digits < 5 && scan.take('.');
  if (digits > 0 && digits < 5 && !stated) {
    scan.blanks();
    stated = !scan.done() && is_digit(scan.peek());
    for (const std::string_view word : {"days", "day", "d", "tage", "tag", "jours", "jour", "días", "día", "天", "日"})
      stated = stated || scan.take_word(word);
    scan.take(',');
    scan.blanks();
  }
  const bool clock = is_digit(scan.peek()) && (scan.peek(1) == ':' || (is_digit(scan.peek(1)) && scan.peek(2) == ':'));
  if (stated && clock) return days;
  scan.back(start);
  return 0;
}

}  // namespace

bool take_clock(Scanner& scan, TimeText& time) {
  const auto start = scan.mark();
  const auto fail = [&] {
    scan.back(start);
    return false;
  };
  const int half_before = half_at(scan);
  scan.blanks();
  if (clock_with_units(scan, time)) {
    if (half_before > 0) time.clock_s = with_half_of_day(time.clock_s, half_before);
    return true;
  }
  const bool negative = scan.take('-');
  if (!negative) scan.take('+');
  int digits = 0, count = 0;
  std::array<int, 4> part{};
  std::array<int, 4> width{};
  const double days = days_before_clock(scan);
  while (count < 4) {
    part[count] = scan.number(digits);
    width[count] = digits;
    if (digits == 0 || digits > 6) return fail();
    ++count;
    // Full stops stand between the parts of a clock behind a date: "12.03.2031 09.14.22".
    const char separator = scan.peek();
    const bool stop = separator == '.' && time.has_date && count < 3 && width[count - 1] == 2 &&
                      is_digit(scan.peek(1)) && is_digit(scan.peek(2)) && !is_digit(scan.peek(3)) &&
                      (count == 2 || scan.peek(3) == '.');
    if ((separator != ':' && !stop) || !is_digit(scan.peek(1))) break;
    scan.take(separator);
  }
  if (count == 1) {
    // "t091422", "091422" behind a date.
    if (!time.has_date || (width[0] != 6 && width[0] != 4)) return fail();
    const int packed = width[0] == 6 ? part[0] : part[0] * 100;
    part = {packed / 10000, packed / 100 % 100, packed % 100, 0};
    count = 3;
  }
  double seconds_fraction = 0;
  if (count == 4) {  // hundredths, milliseconds or the like
    seconds_fraction = part[3] / std::pow(10.0, width[3]);
    time.fraction_digits = width[3];
    count = 3;
  } else if ((scan.peek() == '.' || scan.peek() == ',') && is_digit(scan.peek(1))) {
    scan.take(scan.peek());
    seconds_fraction = fraction(scan, time.fraction_digits);
  }
  for (int i = 1; i < count; ++i) {
    if (part[static_cast<std::size_t>(i)] > 60 || width[static_cast<std::size_t>(i)] > 2) return fail();
  }
  time.has_clock = true;
  time.parts = count;
  time.lead = part[0];
  time.clock_s =
      (count == 3 ? part[0] * 3600.0 + part[1] * 60.0 + part[2] : part[0] * 60.0 + part[1]) + seconds_fraction;
  time.clock_s += days * 86400;
  if (negative) time.clock_s = -time.clock_s;
  const int half = half_before > 0 ? half_before : half_at(scan);
  if (half > 0) {
    if (part[0] > 12) return fail();
    if (count == 2) time.clock_s *= 60;
    time.parts = 3;
    time.clock_s = with_half_of_day(time.clock_s, half);
    time.twelve_hours = true;
  }
  const auto behind = scan.mark();
  scan.blanks();
  if (!scan.take_word("uhr")) scan.back(behind);
  return true;
}

void take_offset(Scanner& scan, TimeText& time) {
  const auto start = scan.mark();
  scan.blanks();
  bool named = scan.take_word("utc") || scan.take_word("gmt") || scan.take_word("z");
  if (named) time.offset_s = 0;
  if (!named) {
    // The name of a zone: which one matters not to times that count from the first row.
    static constexpr std::array<std::string_view, 22> kZones{"cest", "cet", "mesz", "mez", "west", "wet", "eest", "eet",
                                                             "bst",  "ist", "est",  "edt", "cst",  "cdt", "mst",  "mdt",
                                                             "pst",  "pdt", "jst",  "kst", "hkt",  "sgt"};
    named = std::any_of(kZones.begin(), kZones.end(), [&scan](std::string_view zone) { return scan.take_word(zone); });
  }
  const auto behind_name = scan.mark();
  const bool plus = scan.take('+');
  if (plus || scan.take('-')) {
    int digits = 0, more = 0;
    int hours = scan.number(digits), minutes = 0;
    if (digits == 4) {
      minutes = hours % 100;
      hours /= 100;
    } else if ((digits == 1 || digits == 2) && scan.take(':')) {
      minutes = scan.number(more);
    }
    if (digits == 0 || digits > 4 || hours > 14 || minutes > 59) return scan.back(named ? behind_name : start);
    time.offset_s = (plus ? 1 : -1) * (hours * 3600.0 + minutes * 60.0);
    return;
  }
  if (!named) scan.back(start);
}

std::optional<TimeText> dotted_clock(std::string_view text) {
  const auto two = [text](std::size_t at) {
    return is_digit(text[at]) && is_digit(text[at + 1]) ? (text[at] - '0') * 10 + (text[at + 1] - '0') : 99;
  };
  if (text.size() < 8 || text[2] != '.' || text[5] != '.' || (text.size() > 8 && text[8] != '.' && text[8] != ','))
    return std::nullopt;
  TimeText time;
  time.lead = two(0);
  if (time.lead > 23 || two(3) > 59 || two(6) > 59) return std::nullopt;
  time.clock_s = time.lead * 3600.0 + two(3) * 60.0 + two(6);
  time.parts = 3;
  time.full_stops = true;
  if (text.size() > 8) {
    Scanner rest{text.substr(9)};
    time.clock_s += fraction(rest, time.fraction_digits);
    if (time.fraction_digits == 0 || !rest.done()) return std::nullopt;
  }
  return time;
}

int half_of_day(std::string_view original) {
  const std::string text = lower(trim(original));
  if (std::find(kAfter.begin(), kAfter.end(), text) != kAfter.end()) return 2;
  return std::find(kBefore.begin(), kBefore.end(), text) != kBefore.end() ? 1 : 0;
}

double with_half_of_day(double clock_s, int half) {
  constexpr double kNoon = 12 * 3600.0;
  if (half == 1) return clock_s >= kNoon && clock_s < kNoon + 3600 ? clock_s - kNoon : clock_s;
  return clock_s < kNoon ? clock_s + kNoon : clock_s;
}

}  // namespace ovenwright::log
