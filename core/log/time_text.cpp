#include "core/log/time_text.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>

#include "core/log/text.h"

namespace ovenwright::log {
namespace {

bool is_digit(char c) { return c >= '0' && c <= '9'; }
bool is_letter(char c) { return (c >= 'a' && c <= 'z') || static_cast<unsigned char>(c) >= 0x80; }

struct Month {
  std::string_view start;
  int number;
};
/// By their first letters; longer starts stand before the shorter ones that they contain.
constexpr std::array kMonths{Month{"jan", 1},  Month{"ene", 1},  Month{"jän", 1},  Month{"feb", 2},  Month{"fév", 2},
                             Month{"fev", 2},  Month{"mar", 3},  Month{"mär", 3},  Month{"mrz", 3},  Month{"apr", 4},
                             Month{"avr", 4},  Month{"abr", 4},  Month{"may", 5},  Month{"mai", 5},  Month{"juin", 6},
                             Month{"juil", 7}, Month{"jun", 6},  Month{"jul", 7},  Month{"aug", 8},  Month{"ago", 8},
                             Month{"aoû", 8},  Month{"aou", 8},  Month{"sep", 9},  Month{"oct", 10}, Month{"okt", 10},
                             Month{"nov", 11}, Month{"dec", 12}, Month{"dez", 12}, Month{"dic", 12}, Month{"déc", 12}};

constexpr std::array<std::string_view, 28> kWeekdays{
    "mon", "tue", "wed", "thu", "fri", "sat", "sun", "mo",  "di",  "mi",  "do",  "fr",  "sa",  "so",
    "lun", "mar", "mer", "jeu", "ven", "sam", "dim", "mié", "jue", "vie", "sáb", "dom", "die", "don"};

constexpr std::array<std::string_view, 10> kBefore{"a.m.", "a. m.", "am",   "a.m",   "上午",
                                                   "午前", "凌晨",  "早上", "vorm.", "a"};
constexpr std::array<std::string_view, 10> kAfter{"p.m.", "p. m.", "pm",     "p.m",  "下午",
                                                  "午後", "晚上",  "nachm.", "中午", "p"};

/// Walks over a lower-case text.
class Scanner {
 public:
  explicit Scanner(std::string_view text) : text_(text) {}

  bool done() const { return at_ >= text_.size(); }
  std::size_t mark() const { return at_; }
  void back(std::size_t mark) { at_ = mark; }
  char peek(std::size_t ahead = 0) const { return at_ + ahead < text_.size() ? text_[at_ + ahead] : '\0'; }
  void blanks() {
    while (peek() == ' ' || peek() == '\t') ++at_;
  }
  bool take(char c) {
    if (peek() != c || done()) return false;
    ++at_;
    return true;
  }
  bool take(std::string_view word) {
    if (!text_.substr(at_).starts_with(word)) return false;
    at_ += word.size();
    return true;
  }
  /// A word that no letter goes on.
  bool take_word(std::string_view word) {
    const auto start = at_;
    if (!take(word)) return false;
    if (is_letter(peek()) && is_letter(word.back()) && static_cast<unsigned char>(word.back()) < 0x80) {
      at_ = start;
      return false;
    }
    return true;
  }
  /// Up to nine digits; `digits` takes their number, 0 where none stand here.
  int number(int& digits) {
    digits = 0;
    int value = 0;
    while (is_digit(peek()) && digits < 9) {
      value = value * 10 + (peek() - '0');
      ++digits;
      ++at_;
    }
    if (is_digit(peek())) digits = 0;
    return value;
  }
  std::string_view letters() {
    const auto start = at_;
    while (is_letter(peek())) ++at_;
    return text_.substr(start, at_ - start);
  }

 private:
  std::string_view text_;
  std::size_t at_ = 0;
};

int month_named(std::string_view word) {
  for (const Month& month : kMonths) {
    if (word.starts_with(month.start)) return month.number;
  }
  return 0;
}

bool year_of(int value, int digits) { return (digits == 4 && value >= 1900 && value <= 2999) || digits == 2; }

/// "12-mar-2031", "12. märz 2031", "mar 12, 2031", "12 de marzo de 2031".
bool date_with_month_name(Scanner& scan, TimeText& time, bool& year_to_come) {
  const auto start = scan.mark();
  int digits = 0, year_digits = 0;
  int day = 0, month = 0, year = 0;
  const auto link = [&scan] {
    while (scan.peek() == ' ' || scan.peek() == '-' || scan.peek() == '.' || scan.peek() == '/' || scan.peek() == ',')
      scan.take(scan.peek());
    if (scan.take_word("de ")) scan.blanks();
  };
  if (is_digit(scan.peek())) {
    day = scan.number(digits);
    link();
    month = month_named(scan.letters());
    link();
    year = scan.number(year_digits);
  } else {
    month = month_named(scan.letters());
    link();
    day = scan.number(digits);
    link();
    const auto before_year = scan.mark();
    year = scan.number(year_digits);
    if (scan.peek() == ':') {  // "mar 12 09:14:22 2031"
      scan.back(before_year);
      year_to_come = true;
      year = 1970;
      year_digits = 4;
    }
  }
  if (month == 0 || digits == 0 || digits > 2 || day < 1 || day > 31 || !year_of(year, year_digits)) {
    scan.back(start);
    return false;
  }
  time.has_date = true;
  time.first = day;
  time.second = month;
  time.third = year;
  time.year_digits = year_digits == 4 ? 4 : 0;
  time.separator = ' ';
  time.order = DateOrder::kDayMonthYear;
  return true;
}

/// "2031-03-12", "12.03.2031", "3/12/31", "2031年3月12日", "20310312".
bool date_of_numbers(Scanner& scan, TimeText& time) {
  const auto start = scan.mark();
  const auto fail = [&] {
    scan.back(start);
    return false;
  };
  int d1 = 0, d2 = 0, d3 = 0;
  const int first = scan.number(d1);
  if (d1 == 8) {
    const int year = first / 10000, month = first / 100 % 100, day = first % 100;
    if (year < 1900 || year > 2999 || month < 1 || month > 12 || day < 1 || day > 31) return fail();
    time.has_date = true;
    time.first = year;
    time.second = month;
    time.third = day;
    time.year_digits = 4;
    time.order = DateOrder::kYearMonthDay;
    return true;
  }
  if (d1 == 0 || d1 > 4) return fail();
  char separator = scan.peek();
  const bool signs = scan.take("年") || scan.take("년");
  if (signs) {
    separator = 'Y';
  } else if (separator == '-' || separator == '/' || separator == '.') {
    scan.take(separator);
  } else {
    return fail();
  }
  scan.blanks();
  const int second = scan.number(d2);
  if (d2 == 0 || d2 > 2) return fail();
  if (signs ? !scan.take("月") : !scan.take(separator)) return fail();
  scan.blanks();
  const int third = scan.number(d3);
  if (d3 == 0 || d3 > 4 || d3 == 3) return fail();
  if (signs && !scan.take("日")) return fail();
  if (separator == '.') scan.take('.');
  time.has_date = true;
  time.first = first;
  time.second = second;
  time.third = third;
  time.separator = separator;
  time.year_digits = d1 == 4 || d3 == 4 ? 4 : 0;
  if (d1 == 4 || signs) {
    if (d1 == 3 || d3 > 2) return fail();
    time.order = DateOrder::kYearMonthDay;
  } else if (d1 == 3) {
    return fail();
  }
  return valid_date(time, DateOrder::kDayMonthYear) || valid_date(time, DateOrder::kMonthDayYear) ||
                 valid_date(time, DateOrder::kYearMonthDay)
             ? true
             : fail();
}

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

/// "1.02:03:04", "1 day, 2:03:04", "0 days 00:00:05": whole days before a clock; 0, and nothing taken, without them.
double days_before_clock(Scanner& scan) {
  const auto start = scan.mark();
  int digits = 0;
  const int days = scan.number(digits);
  bool stated = digits > 0 && digits < 5 && scan.take('.');
  if (digits > 0 && digits < 5 && !stated) {
    scan.blanks();
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

bool clock(Scanner& scan, TimeText& time) {
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

/// "z", "utc", "+08:00", "gmt+8", "-0530".
void offset(Scanner& scan, TimeText& time) {
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

void skip_weekday(Scanner& scan) {
  const auto start = scan.mark();
  if (scan.take("星期") || scan.take("周")) {
    scan.letters();
    return scan.blanks();
  }
  const auto word = scan.letters();
  const bool weekday =
      word.size() >= 2 && std::any_of(kWeekdays.begin(), kWeekdays.end(), [word](std::string_view day) {
        return word == day || (day.size() >= 3 && word.starts_with(day));
      });
  // "mar" is a day in Spanish and French and a month elsewhere: a day is followed by no number of a day alone.
  if (!weekday || month_named(word) > 0) return scan.back(start);
  while (scan.peek() == '.' || scan.peek() == ',' || scan.peek() == ' ') scan.take(scan.peek());
}

bool date(Scanner& scan, TimeText& time, bool& year_to_come) {
  if (is_digit(scan.peek()) && date_of_numbers(scan, time)) return true;
  return date_with_month_name(scan, time, year_to_come);
}

bool year_at_last(Scanner& scan, TimeText& time) {
  int digits = 0;
  scan.blanks();
  time.third = scan.number(digits);
  return digits == 4 && year_of(time.third, digits);
}

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

/// "09.14.22" as a clock.
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

}  // namespace

std::optional<TimeText> read_time_text(std::string_view original) {
  if (original.empty() || original.size() > 64) return std::nullopt;
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
  if (date(scan, time, year_to_come)) {
    const auto behind = scan.mark();
    while (scan.peek() == ',' || scan.peek() == ' ' || scan.peek() == ';') scan.take(scan.peek());
    if (scan.peek() == 't' || scan.peek() == '_' || scan.peek() == ':' || scan.peek() == '-') {
      if (is_digit(scan.peek(1))) scan.take(scan.peek());
    }
    if (!scan.done() && (is_letter(scan.peek()) || is_digit(scan.peek()))) {
      const auto before = scan.mark();
      skip_weekday(scan);
      if (!clock(scan, time)) scan.back(before);
      if (year_to_come && !year_at_last(scan, time)) return std::nullopt;
    } else if (!scan.done()) {
      scan.back(behind);
    }
  } else if (clock(scan, time)) {
    const auto behind = scan.mark();
    while (scan.peek() == ',' || scan.peek() == ' ') scan.take(scan.peek());
    if (!scan.done() && (!date(scan, time, year_to_come) || year_to_come)) scan.back(behind);
  } else {
    return std::nullopt;
  }
  if (time.has_clock) offset(scan, time);
  scan.blanks();
  if (!scan.done()) return std::nullopt;
  return time;
}

namespace {

struct Calendar {
  int year, month, day;
};

Calendar in_order(const TimeText& time, DateOrder order) {
  Calendar date{};
  switch (time.order.value_or(order)) {
    case DateOrder::kDayMonthYear:
      date = {time.third, time.second, time.first};
      break;
    case DateOrder::kMonthDayYear:
      date = {time.third, time.first, time.second};
      break;
    case DateOrder::kYearMonthDay:
      date = {time.first, time.second, time.third};
      break;
  }
  if (date.year < 100) date.year += date.year < 70 ? 2000 : 1900;
  return date;
}

}  // namespace

bool valid_date(const TimeText& time, DateOrder order) {
  static constexpr std::array<int, 12> kDays{31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  const Calendar date = in_order(time, order);
  if (date.month < 1 || date.month > 12 || date.day < 1 || date.year < 1900 || date.year > 2999) return false;
  const bool leap = (date.year % 4 == 0 && date.year % 100 != 0) || date.year % 400 == 0;
  const int days = date.month == 2 && !leap ? 28 : kDays[static_cast<std::size_t>(date.month - 1)];
  return date.day <= days;
}

double days_since_1970(const TimeText& time, DateOrder order) {
  // H. Hinnant, chrono-compatible low-level date algorithms, days_from_civil.
  const Calendar date = in_order(time, order);
  const int year = date.year - (date.month <= 2 ? 1 : 0);
  const int era = (year >= 0 ? year : year - 399) / 400;
  const int year_of_era = year - era * 400;
  const int day_of_year = (153 * (date.month + (date.month > 2 ? -3 : 9)) + 2) / 5 + date.day - 1;
  const int day_of_era = year_of_era * 365 + year_of_era / 4 - year_of_era / 100 + day_of_year;
  return static_cast<double>(era) * 146097 + day_of_era - 719468;
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
