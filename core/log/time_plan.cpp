#include "core/log/time_plan.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>
#include <limits>

#include "core/log/column_values.h"
#include "core/log/text.h"
#include "core/units/phrase.h"

namespace ovenwright::log {
namespace {

using Holds = ColumnProfile::Holds;

constexpr double kDay = 86400;

const std::array kOrders{DateOrder::kDayMonthYear, DateOrder::kMonthDayYear, DateOrder::kYearMonthDay};

bool chinese_or_japanese(std::string_view text) {
  while (!text.empty()) {
    std::size_t length = 1;
    const char32_t c = decode_character(text, length);
    if (c >= 0x3040 && c <= 0x9FFF) return true;
    text.remove_prefix(length);
  }
  return false;
}

class Planner {
 public:
  Planner(const Table& table, const TableHeader& header, const Columns& columns, const Facts& facts,
          const Layout& layout, std::optional<double> interval_s, char decimal)
      : table_(table),
        header_(header),
        columns_(columns),
        facts_(facts),
        layout_(layout),
        interval_s_(interval_s),
        decimal_(decimal) {}

  Result<TimePlanning> run(int time_column) {
    auto& plan = planning_.plan;
    if (time_column < 0) return index();
    plan.column = time_column;
    const auto& profile = table_.profile[static_cast<std::size_t>(time_column)];
    plan.decimals = std::max(0, profile.most_decimals);
    const std::string forced = layout_.time.kind.value_or("");
    if (parts_in_columns()) return std::move(planning_);
    if (!forced.empty() && forced != "index") {
      if (auto error = apply(forced, profile)) return *error;
    } else if (profile.holds() == Holds::kTimes) {
      clock(profile);
    } else if (profile.holds() == Holds::kNothing || profile.holds() == Holds::kText) {
      return Error{ErrorCode::kParse, fmt::format("found no times in column {}", time_column + 1), {}, "", "times"};
    } else if (has_date_column() && packed_clock(profile)) {
      plan.kind = TimeKind::kMoment;
    } else {
      number(profile);
    }
    if (plan.kind == TimeKind::kNumber) plan.seconds_per_unit *= factor();
    companions();
    for (const TimeText& t : profile.time_texts) plan.decimals = std::max(plan.decimals, t.fraction_digits);
    if (plan.milliseconds >= 0) plan.decimals = 3;
    if (plan.kind == TimeKind::kMoment || plan.date >= 0) moment();
    return std::move(planning_);
  }

 private:
  void assume(std::string about, std::string text, std::string chosen, std::string other) {
    planning_.assumed.push_back({std::move(about), std::move(text), std::move(chosen), std::move(other)});
  }

  Result<TimePlanning> index() {
    auto& plan = planning_.plan;
    plan.kind = TimeKind::kIndex;
    plan.name = "index";
    std::optional<StatedInterval> of_header;
    for (std::size_t i = 0; i < table_.columns; ++i) {
      if (columns_.roles[i] != Role::kIndex) continue;
      plan.column = static_cast<int>(i);
      if (auto stated = interval_in(header_.columns[i].texts, false)) of_header = stated;
    }
    if (layout_.time.interval_s) {
      plan.interval_s = *layout_.time.interval_s;
    } else if (interval_s_) {
      plan.interval_s = *interval_s_;
    } else if (of_header || facts_.interval) {
      const StatedInterval& stated = of_header ? *of_header : *facts_.interval;
      plan.interval_s = stated.seconds;
      const std::string apart_s = fmt::format("{}", plan.interval_s);
      planning_.notes.push_back(say(Phrase::kRowsApart, {apart_s, stated.text}));
      if (!stated.unit_stated) {
        assume("time", say(Phrase::kIntervalUnit, {apart_s}), apart_s + " s", "");
      }
    } else if (const auto step = facts_.span ? step_of_span(facts_.span->seconds, table_.rows) : std::nullopt) {
      plan.interval_s = *step;
      const std::string apart_s = fmt::format("{:g}", *step);
      assume("time", say(Phrase::kRowsApart, {apart_s, facts_.span->text}), apart_s + " s", "");
    } else {
      return Error{
          ErrorCode::kParse,
          "found no column of times and no stated interval, expected times, or an interval in seconds between rows",
          {},
          "",
          "a column of times, or an interval"};
    }
    if (!(plan.interval_s > 0))
      return Error{ErrorCode::kParse, "the interval between rows is not above 0", {}, "", "seconds above 0"};
    return std::move(planning_);
  }

  std::optional<Error> apply(const std::string& kind, const ColumnProfile& profile) {
    auto& plan = planning_.plan;
    plan.name = kind;
    struct Known {
      std::string_view name;
      TimeKind kind;
      double factor;
    };
    static constexpr std::array kKnown{Known{"seconds", TimeKind::kNumber, 1},
                                       Known{"tenths of a second", TimeKind::kNumber, 0.1},
                                       Known{"hundredths of a second", TimeKind::kNumber, 0.01},
                                       Known{"milliseconds", TimeKind::kNumber, 1e-3},
                                       Known{"microseconds", TimeKind::kNumber, 1e-6},
                                       Known{"minutes", TimeKind::kNumber, 60},
                                       Known{"hours", TimeKind::kNumber, 3600},
                                       Known{"days", TimeKind::kNumber, kDay},
                                       Known{"clock m:s", TimeKind::kClock, 1},
                                       Known{"clock h:m:s", TimeKind::kClock, 1},
                                       Known{"clock h:m", TimeKind::kClock, 1},
                                       Known{"date and time", TimeKind::kMoment, 1},
                                       Known{"serial days", TimeKind::kSerialDays, kDay},
                                       Known{"seconds since 1970", TimeKind::kEpoch, 1},
                                       Known{"milliseconds since 1970", TimeKind::kEpoch, 1e-3},
                                       Known{"microseconds since 1970", TimeKind::kEpoch, 1e-6},
                                       Known{"nanoseconds since 1970", TimeKind::kEpoch, 1e-9}};
    const auto known = std::find_if(kKnown.begin(), kKnown.end(), [&kind](const Known& k) { return k.name == kind; });
    if (known == kKnown.end())
      return Error{ErrorCode::kBadArgument,
                   "found the kind of time \"" + kind + "\", expected a known one",
                   {},
                   kind,
                   "a kind of time"};
    plan.kind = known->kind;
    plan.seconds_per_unit = known->factor;
    plan.hours_and_minutes = kind == "clock h:m" || (plan.kind == TimeKind::kMoment && all_of_two_parts(profile));
    const bool clock = plan.kind == TimeKind::kClock || plan.kind == TimeKind::kMoment;
    if (clock != (profile.holds() == Holds::kTimes) && !(clock && packed_clock(profile))) {
      return Error{ErrorCode::kParse,
                   fmt::format("column {} holds {}, expected {}", plan.column + 1,
                               clock ? "no clock times or dates" : "no plain numbers", kind),
                   {},
                   "",
                   kind};
    }
    return std::nullopt;
  }

  static bool all_of_two_parts(const ColumnProfile& profile) {
    return !profile.time_texts.empty() && std::all_of(profile.time_texts.begin(), profile.time_texts.end(),
                                                      [](const TimeText& t) { return t.parts == 2; });
  }

  /// That a row of factors has for the times.
  double factor() const { return header_.columns[static_cast<std::size_t>(planning_.plan.column)].factor; }

  void linear(const char* name, double seconds_per_unit) {
    planning_.plan.kind = TimeKind::kNumber;
    planning_.plan.name = name;
    planning_.plan.seconds_per_unit = seconds_per_unit;
  }

  void named_unit(const UnitText& unit) {
    if (unit.factor == 1) return linear("seconds", 1);
    if (unit.factor == 0.1) return linear("tenths of a second", 0.1);
    if (unit.factor == 0.01) return linear("hundredths of a second", 0.01);
    if (unit.factor == 1e-3) return linear("milliseconds", 1e-3);
    if (unit.factor == 1e-6) return linear("microseconds", 1e-6);
    if (unit.factor == 60) return linear("minutes", 60);
    if (unit.factor == 3600) return linear("hours", 3600);
    linear("days", kDay);
  }

  void number(const ColumnProfile& profile) {
    auto& plan = planning_.plan;
    const auto& column = header_.columns[static_cast<std::size_t>(plan.column)];
    double low = std::numeric_limits<double>::infinity(), high = -low;
    for (const double v : profile.values) {
      if (!std::isfinite(v)) continue;
      low = std::min(low, v);
      high = std::max(high, v);
    }
    low *= factor();
    high *= factor();
    const double span = high - low, step = span / std::max(1.0, table_.rows - 1);
    if (low > 0.6e9 && high < 4.2e9 && span < 1e7) {
      plan.kind = TimeKind::kEpoch;
      plan.name = "seconds since 1970";
      return;
    }
    if (low > 0.6e12 && high < 4.2e12) {
      plan.kind = TimeKind::kEpoch;
      plan.name = "milliseconds since 1970";
      plan.seconds_per_unit = 1e-3;
      return;
    }
    if (low > 0.6e15 && high < 4.2e15) {
      plan.kind = TimeKind::kEpoch;
      plan.name = "microseconds since 1970";
      plan.seconds_per_unit = 1e-6;
      return;
    }
    if (low > 0.6e18 && high < 4.2e18) {
      plan.kind = TimeKind::kEpoch;
      plan.name = "nanoseconds since 1970";
      plan.seconds_per_unit = 1e-9;
      return;
    }
    auto unit = column.unit;
    if (!unit && !profile.unit_seen.empty()) unit = parse_unit(profile.unit_seen);
    if (!unit && column.ending) unit = column.ending;
    if (!unit) unit = parse_unit(column.name);  // a column called "s" and nothing else
    if (unit && unit->quantity != Quantity::kTime) unit.reset();
    if (!unit) unit = unit_of_time_in(column.texts);
    const bool days = low > 20000 && high < 80000 && span < 30 && profile.most_decimals >= 3 && step < 0.01;
    if (days && !(unit && unit->factor < kDay)) {
      plan.kind = TimeKind::kSerialDays;
      plan.name = "serial days";
      return;
    }
    if (!unit && facts_.time_unit) unit = facts_.time_unit;
    if (unit) return named_unit(*unit);
    by_duration(low, span, step, profile);
  }

  /// No unit stands anywhere: a run through an oven takes minutes, and it is logged some times a second to once in some
  /// seconds.
  void by_duration(double low, double span, double step, const ColumnProfile& profile) {
    const bool round_step = std::abs(step * 1000 - std::round(step * 1000)) < 1e-6 * std::max(1.0, step * 1000);
    if (high_fraction_of_day(low, span, step, profile)) {
      planning_.plan.kind = TimeKind::kSerialDays;
      planning_.plan.name = "serial days";
      assume("time", say(Phrase::kFractionsOfADay, {minutes(span * kDay)}), "serial days", "seconds");
    } else if (profile.whole_numbers && step >= 20 && span > 15000) {
      linear("milliseconds", 1e-3);
      assume("time", say(Phrase::kMilliseconds, {minutes(span / 1000), minutes(span)}), "milliseconds", "seconds");
    } else if (span > 1 && span < 40 && step < 0.06 && !round_step && table_.rows > 60) {
      linear("minutes", 60);
      assume("time", say(Phrase::kMinutes, {minutes(span * 60), minutes(span)}), "minutes", "seconds");
    } else {
      linear("seconds", 1);
      const auto& column = header_.columns[static_cast<std::size_t>(planning_.plan.column)];
      const bool named = (column.words & kTimeWord) != 0;
      const bool counts = profile.whole_numbers && std::abs(step - 1) < 1e-9;
      if (!named && counts) {
        assume("time", say(Phrase::kFirstColumn), "seconds", "index");
      } else {
        planning_.notes.push_back(say(Phrase::kSeconds, {minutes(span)}));
      }
    }
  }

  static bool high_fraction_of_day(double low, double span, double step, const ColumnProfile& profile) {
    return low >= 0 && low + span <= 2 && profile.most_decimals >= 4 && span * kDay > 30 && span < 0.5 && step < 2e-4;
  }

  /// To three digits, and never with an exponent: "0.08 s", "6.98 min", "116 h".
  static std::string minutes(double seconds) {
    constexpr double kMinute = 60, kHour = 3600;
    const auto number = [](double value) {
      return value >= 99.95 ? fmt::format("{:.0f}", value) : fmt::format("{:.3g}", value);
    };
    if (seconds < 2 * kMinute) return number(seconds) + " s";
    return seconds <= 2 * kHour ? number(seconds / kMinute) + " min" : number(seconds / kHour) + " h";
  }

  void clock(const ColumnProfile& profile) {
    auto& plan = planning_.plan;
    const bool stops = clock_with_full_stops(profile);
    const bool dated = !stops && std::any_of(profile.time_texts.begin(), profile.time_texts.end(),
                                             [](const TimeText& t) { return t.has_date; });
    if (dated) {
      plan.kind = TimeKind::kMoment;
      plan.name = "date and time";
      // Behind a date two parts are hours and minutes.
      plan.hours_and_minutes = all_of_two_parts(profile);
      return;
    }
    plan.kind = TimeKind::kClock;
    if (!all_of_two_parts(profile)) {
      plan.name = "clock h:m:s";
      return;
    }
    const auto& column = header_.columns[static_cast<std::size_t>(plan.column)];
    const std::string pattern = column.unit && column.unit->quantity == Quantity::kClock ? column.unit->name : "";
    const bool says_hours = pattern.find("h:m") != std::string::npos || pattern.find("hh:mm") != std::string::npos;
    const bool says_minutes = pattern.find("m:s") != std::string::npos || pattern.find("mm:ss") != std::string::npos;
    int most = 0;
    double low = 1e18, high = 0;
    bool fraction = false;
    for (const TimeText& t : profile.time_texts) {
      most = std::max(most, t.lead);
      low = std::min(low, t.clock_s);
      high = std::max(high, t.clock_s);
      fraction = fraction || t.fraction_digits > 0;
    }
    const double as_minutes = high - low;
    const bool too_short = as_minutes < 40 && as_minutes * 60 >= 60 && table_.rows > 4 * as_minutes && !fraction;
    plan.hours_and_minutes = most < 24 && !fraction && !says_minutes && (says_hours || (too_short && table_.rows > 30));
    plan.name = plan.hours_and_minutes ? "clock h:m" : "clock m:s";
    if (!says_hours && !says_minutes && most < 24 && !fraction) {
      const double chosen = plan.hours_and_minutes ? as_minutes * 60 : as_minutes;
      const double other = plan.hours_and_minutes ? as_minutes : as_minutes * 60;
      assume("time",
             say(plan.hours_and_minutes ? Phrase::kHoursMinutes : Phrase::kMinutesSeconds,
                 {minutes(chosen), minutes(other)}),
             plan.name, plan.hours_and_minutes ? "clock m:s" : "clock h:m");
    }
  }

  bool parts_in_columns() {
    auto& plan = planning_.plan;
    for (std::size_t i = 0; i < table_.columns; ++i) {
      if (columns_.roles[i] == Role::kHours) plan.hours = static_cast<int>(i);
      if (columns_.roles[i] == Role::kMinutes) plan.minutes = static_cast<int>(i);
    }
    plan.kind = plan.minutes >= 0 ? TimeKind::kClock : plan.kind;
    plan.name = plan.minutes >= 0 ? "clock h:m:s" : plan.name;
    return plan.minutes >= 0;
  }

  bool has_date_column() const {
    return std::find(columns_.roles.begin(), columns_.roles.end(), Role::kDate) != columns_.roles.end();
  }

  void companions() {
    auto& plan = planning_.plan;
    if (plan.kind != TimeKind::kClock && plan.kind != TimeKind::kMoment) return;
    for (std::size_t i = 0; i < table_.columns; ++i) {
      const int column = static_cast<int>(i);
      if (columns_.roles[i] == Role::kDate && plan.date < 0) plan.date = column;
      if (columns_.roles[i] == Role::kHalfOfDay && plan.half < 0) plan.half = column;
      if (columns_.roles[i] == Role::kMilliseconds && plan.milliseconds < 0) {
        plan.milliseconds = column;
        const auto& unit = header_.columns[i].unit;
        if (unit && unit->quantity == Quantity::kTime && unit->factor < 1)
          plan.parts_of_a_second = std::round(1 / unit->factor);
      }
    }
    if (plan.date >= 0) {
      plan.kind = TimeKind::kMoment;
      plan.name = "date and time";
    }
  }

  std::vector<TimeText> dates() const {
    const int column = planning_.plan.date >= 0 ? planning_.plan.date : planning_.plan.column;
    const auto& profile = table_.profile[static_cast<std::size_t>(column)];
    std::vector<TimeText> list;
    for (const TimeText& t : profile.time_texts) {
      if (t.has_date) list.push_back(t);
    }
    if (!list.empty()) return list;
    for (const double v : profile.values) {  // 20310312
      if (!(v >= 0 && v < 1e8)) continue;
      const auto whole = static_cast<int>(v);
      TimeText t;
      t.has_date = true;
      t.first = whole / 10000;
      t.second = whole / 100 % 100;
      t.third = whole % 100;
      t.year_digits = 4;
      t.order = DateOrder::kYearMonthDay;
      list.push_back(t);
    }
    return list;
  }

  void moment() {
    auto& plan = planning_.plan;
    const auto list = dates();
    if (list.empty()) return;
    plan.order = order_of(list);
    if (valid_date(list.front(), plan.order)) plan.base_days = days_since_1970(list.front(), plan.order);
  }

  DateOrder order_of(const std::vector<TimeText>& list) {
    if (layout_.date_order == "dmy") return DateOrder::kDayMonthYear;
    if (layout_.date_order == "mdy") return DateOrder::kMonthDayYear;
    if (layout_.date_order == "ymd") return DateOrder::kYearMonthDay;
    if (list.front().order) return *list.front().order;
    std::vector<DateOrder> possible;
    for (const DateOrder order : kOrders) {
      const bool year_last = list.front().year_digits == 4;
      if (year_last && order == DateOrder::kYearMonthDay) continue;
      if (std::all_of(list.begin(), list.end(), [order](const TimeText& t) { return valid_date(t, order); }))
        possible.push_back(order);
    }
    if (possible.empty()) return DateOrder::kDayMonthYear;
    if (possible.size() == 1) return possible.front();
    if (const auto stated = stated_order();
        stated && std::find(possible.begin(), possible.end(), *stated) != possible.end())
      return *stated;
    // A log goes forward, and it lasts minutes or hours: past midnight only one order makes the next day follow.
    const auto length = [&list](DateOrder order) {
      double span = 0, before = days_since_1970(list.front(), order);
      for (const TimeText& t : list) {
        const double day = days_since_1970(t, order);
        span += day < before ? 1e9 : day - before;
        before = day;
      }
      return span;
    };
    double shortest = std::numeric_limits<double>::infinity();
    for (const DateOrder order : possible) shortest = std::min(shortest, length(order));
    std::erase_if(possible, [&](DateOrder order) { return length(order) > shortest; });
    if (possible.size() == 1) {
      planning_.notes.push_back(say(Phrase::kDateGoesOn, {date_order_name(possible.front())}));
      return possible.front();
    }
    const DateOrder chosen = likelier(list, possible);
    const DateOrder other =
        *std::find_if(possible.begin(), possible.end(), [chosen](DateOrder o) { return o != chosen; });
    assume("date order", say(Phrase::kDateOrder, {date_order_name(chosen)}), date_order_name(chosen),
           date_order_name(other));
    return chosen;
  }

  std::optional<DateOrder> stated_order() const {
    const int column = planning_.plan.date >= 0 ? planning_.plan.date : planning_.plan.column;
    if (const auto order = date_order_in(header_.columns[static_cast<std::size_t>(column)].texts)) return order;
    return facts_.date_order;
  }

  DateOrder likelier(const std::vector<TimeText>& list, const std::vector<DateOrder>& possible) const {
    const auto can = [&possible](DateOrder o) {
      return std::find(possible.begin(), possible.end(), o) != possible.end();
    };
    std::string header_text;
    for (const auto& c : header_.columns) header_text += c.texts;
    const auto& clocks = table_.profile[static_cast<std::size_t>(planning_.plan.column)].time_texts;
    const bool twelve_hours = planning_.plan.half >= 0 || std::any_of(clocks.begin(), clocks.end(),
                                                                      [](const TimeText& t) { return t.twelve_hours; });
    const char separator = list.front().separator;
    const bool two_digits = list.front().year_digits != 4;
    if (two_digits && can(DateOrder::kYearMonthDay) && (separator == '-' || chinese_or_japanese(header_text)))
      return DateOrder::kYearMonthDay;
    if (separator == '/' && twelve_hours && decimal_ == '.' && can(DateOrder::kMonthDayYear))
      return DateOrder::kMonthDayYear;
    if (can(DateOrder::kDayMonthYear)) return DateOrder::kDayMonthYear;
    return possible.front();
  }

  const Table& table_;
  const TableHeader& header_;
  const Columns& columns_;
  const Facts& facts_;
  const Layout& layout_;
  std::optional<double> interval_s_;
  char decimal_;
  TimePlanning planning_;
};

}  // namespace

const char* date_order_name(DateOrder order) {
  switch (order) {
    case DateOrder::kDayMonthYear:
      return "dmy";
    case DateOrder::kMonthDayYear:
      return "mdy";
    case DateOrder::kYearMonthDay:
      return "ymd";
  }
  return "";
}

std::optional<UnitText> unit_of_time_in(std::string_view text) {
  std::size_t start = 0;
  while (start < text.size()) {
    const auto end = std::min(text.find_first_of(" _/,;:()[]", start), text.size());
    const auto word = text.substr(start, end - start);
    if (const auto unit = parse_unit(word);
        unit && unit->quantity == Quantity::kTime && (!unit->weak || word.size() > 1))
      return unit;
    start = end + 1;
  }
  return std::nullopt;
}

Result<TimePlanning> plan_time(const Table& table, const TableHeader& header, const Columns& columns,
                               const Facts& facts, const Layout& layout, std::optional<double> interval_s,
                               int time_column, char decimal) {
  return Planner(table, header, columns, facts, layout, interval_s, decimal).run(time_column);
}

}  // namespace ovenwright::log
