#include "core/log/date_text.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>

namespace ovenwright::log {
namespace {

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

bool date_of_numbers(Scanner& scan, TimeText& time) {
  const auto start = scan.mark();
  const auto fail = [&] {
    scan.back(start);
    return false;
  };
  int d1 = 0, d2 = 0, d3 = 0;
  int first = scan.number(d1);
  // "120/03/12": years counted from 1911, three digits since 2011.
  const bool minguo =
      d1 == 3 && first >= 100 && first < 200 && (scan.peek() == '/' || scan.peek() == '-' || scan.peek() == '.');
  if (minguo) {
    first += 1911;
    d1 = 4;
  }
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

bool take_date(Scanner& scan, TimeText& time, bool& year_to_come) {
  if (is_digit(scan.peek()) && date_of_numbers(scan, time)) return true;
  return date_with_month_name(scan, time, year_to_come);
}

bool year_at_last(Scanner& scan, TimeText& time) {
  int digits = 0;
  scan.blanks();
  time.third = scan.number(digits);
  return digits == 4 && year_of(time.third, digits);
}

bool valid_date(const TimeText& time, DateOrder order) {
  static constexpr std::array<int, 12> kDays{31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  const Calendar date = in_order(time, order);
  if (date.month < 1 || date.month > 12 || date.day < 1 || date.year < 1899 || date.year > 2999) return false;
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

}  // namespace ovenwright::log
