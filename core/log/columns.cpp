#include "core/log/columns.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "core/log/text.h"

namespace ovenwright::log {
namespace {

using Holds = ColumnProfile::Holds;

constexpr double kRising = 0.97;

std::vector<double> finite(const std::vector<double>& values) {
  std::vector<double> kept;
  std::copy_if(values.begin(), values.end(), std::back_inserter(kept), [](double v) { return std::isfinite(v); });
  return kept;
}

double smallest(const std::vector<double>& values) {
  const auto kept = finite(values);
  return kept.empty() ? std::numeric_limits<double>::quiet_NaN() : *std::min_element(kept.begin(), kept.end());
}

bool rising(const ColumnProfile& column) {
  return column.holds() == Holds::kNumbers && column.numbers > 1 && share_rising(column.values) >= kRising;
}

/// Goes up by one from row to row (in the sample by whole numbers).
bool counting(const ColumnProfile& column) { return rising(column) && column.whole_numbers; }

bool is_temperature(const std::optional<UnitText>& unit) {
  return unit && (unit->quantity == Quantity::kTemperature || unit->quantity == Quantity::kUnknownTemperature);
}

bool has_digit(std::string_view text) { return text.find_first_of("0123456789") != std::string_view::npos; }

/// "Max", "Avg temp", "Delta T": no channel of its own. "TC1 max" may be one.
bool only_statistic(const TableHeader::Column& column) {
  return (column.name_words & kStatisticWord) != 0 && !has_digit(column.name);
}

class Assigner {
 public:
  Assigner(const Table& table, const TableHeader& header, const Facts& facts, const Layout& layout, bool interval_given)
      : table_(table), header_(header), facts_(facts), layout_(layout), interval_given_(interval_given) {}

  Columns run() {
    const std::size_t n = table_.columns;
    columns_.roles.assign(n, Role::kNothing);
    columns_.clock_of.assign(n, -1);
    columns_.reasons.assign(n, {});
    for (std::size_t i = 0; i < n; ++i) columns_.roles[i] = first_guess(i);
    find_parts_of_clock();
    settle_times();
    if (layout_.form ? *layout_.form == Form::kLong : is_long()) make_long();
    if (columns_.form == Form::kWide) {
      settle_statistics();
      settle_reserves();
      settle_ambient();
    }
    if (!layout_.channels.empty() && columns_.form == Form::kWide) force_channels();
    return std::move(columns_);
  }

 private:
  const ColumnProfile& profile(std::size_t i) const { return table_.profile[i]; }
  const TableHeader::Column& head(std::size_t i) const { return header_.columns[i]; }
  Role& role(std::size_t i) { return columns_.roles[i]; }

  Role first_guess(std::size_t i) const {
    switch (profile(i).holds()) {
      case Holds::kNothing:
        return empty_column(i);
      case Holds::kText:
        return text_column(i);
      case Holds::kTimes:
        return time_column(i);
      case Holds::kNumbers:
        return number_column(i);
    }
    return Role::kNothing;
  }

  /// Open from the first row to the last: a channel where its header speaks of one.
  Role empty_column(std::size_t i) const {
    const auto& column = head(i);
    if (column.texts.empty()) return profile(i).open > 0 && header_.line == 0 ? Role::kTemperature : Role::kNothing;
    if (column.unit && !is_temperature(column.unit) && column.unit->quantity != Quantity::kVoltage)
      return Role::kNothing;
    const Words never = kOtherWord | kTextWord | kTimeWord | kDateWord | kIndexWord | kSetpointWord | kZoneWord;
    if ((column.words & never) != 0 && !is_temperature(column.unit)) return Role::kNothing;
    if (only_statistic(column)) return Role::kNothing;
    return Role::kTemperature;
  }

  Role text_column(std::size_t i) const {
    const auto& seen = profile(i).texts_seen;
    const auto all = [&seen](auto test) { return !seen.empty() && std::all_of(seen.begin(), seen.end(), test); };
    if (all([](const std::string& text) { return half_of_day(text) > 0; })) return Role::kHalfOfDay;
    if (all([](const std::string& text) {
          const auto unit = parse_unit(text);
          return unit.has_value();
        })) {
      return Role::kUnit;
    }
    return Role::kText;
  }

  Role time_column(std::size_t i) const {
    const auto& times = profile(i).time_texts;
    const auto dated = std::count_if(times.begin(), times.end(), [](const TimeText& t) { return t.has_date; });
    const auto clocked = std::count_if(times.begin(), times.end(), [](const TimeText& t) { return t.has_clock; });
    const auto half = static_cast<std::ptrdiff_t>(times.size() / 2);
    if (clock_with_full_stops(profile(i))) return Role::kTime;
    if (dated > half && clocked <= half) return Role::kDate;
    return Role::kTime;
  }

  Role number_column(std::size_t i) const {
    const auto& column = head(i);
    const auto& p = profile(i);
    const Words words = column.words, name_words = column.name_words;
    const bool goes_up = rising(p);
    auto unit = column.unit;
    if (!unit && !p.unit_seen.empty()) unit = parse_unit(p.unit_seen);
    if (!unit && column.ending && column.ending->quantity == Quantity::kTime && (words & kTimeWord) != 0)
      unit = column.ending;
    if (unit && unit->quantity == Quantity::kTime) {
      const bool part = unit->factor == 1e-3 && !goes_up && robust_peak(p.values) < 1000 && smallest(p.values) >= 0;
      if (part) return Role::kMilliseconds;
      return share_rising(p.values) >= 0.5 || (words & kTimeWord) != 0 ? Role::kTime : Role::kOther;
    }
    if (unit && unit->quantity == Quantity::kClock) return Role::kTime;
    if (unit && unit->quantity == Quantity::kOther) return Role::kOther;
    if ((words & kColdJunctionWord) != 0) return Role::kColdJunction;
    if ((name_words & kSetpointWord) != 0) return Role::kOther;
    if (is_temperature(unit)) {
      if ((name_words & kZoneWord) != 0 || only_statistic(column)) return Role::kOther;
      static constexpr std::array<std::string_view, 8> kDew{"dew",  "taupunkt", "rosée", "rocío",
                                                            "露点", "露點",     "slope", "steigung"};
      const std::string small = lower(column.name);
      if (std::any_of(kDew.begin(), kDew.end(),
                      [&small](std::string_view w) { return small.find(w) != std::string::npos; }))
        return Role::kOther;
      return Role::kTemperature;
    }
    const bool volts = unit && unit->quantity == Quantity::kVoltage;
    if (volts) return (name_words & (kOtherWord | kZoneWord)) != 0 ? Role::kOther : Role::kTemperature;
    if (compact_date(i)) return Role::kDate;
    const bool time_word = (name_words & kTimeWord) != 0 ||
                           ((words & kTimeWord) != 0 && (name_words & (kTemperatureWord | kChannelWord)) == 0);
    const bool also_temperature =
        (name_words & kTemperatureWord) != 0;  // French "temps" is the time, English "temps" are not
    if (time_word && (name_words & kIndexWord) == 0 && (!also_temperature || goes_up)) {
      const bool part =
          (name_words & kMillisecondWord) != 0 && !goes_up && robust_peak(p.values) < 1000 && smallest(p.values) >= 0;
      if (part) return Role::kMilliseconds;
      return Role::kTime;
    }
    if (time_word && goes_up && !p.whole_numbers) return Role::kTime;
    if ((name_words & kIndexWord) != 0 && counting(p)) return Role::kIndex;
    if ((name_words & kOtherWord) != 0 || (name_words & kZoneWord) != 0) return Role::kOther;
    if (only_statistic(column)) return Role::kOther;
    return Role::kTemperature;
  }

  bool compact_date(std::size_t i) const {
    const auto& p = profile(i);
    if (!p.whole_numbers || p.numbers == 0) return false;
    return std::all_of(p.values.begin(), p.values.end(), [](double v) {
      if (!std::isfinite(v)) return true;
      const auto whole = static_cast<long long>(v);
      return whole >= 19700101 && whole <= 21001231 && whole / 100 % 100 >= 1 && whole / 100 % 100 <= 12 &&
             whole % 100 >= 1 && whole % 100 <= 31;
    });
  }

  bool numbers_without_words(std::size_t i) const {
    // Above the first column of several header rows stand the labels of these rows: "Channel", "Name", "Type".
    const bool labels = i == 0 && table_.headers.size() > 1 && !has_digit(head(i).texts);
    return profile(i).holds() == Holds::kNumbers && columns_.roles[i] == Role::kTemperature && !head(i).unit &&
           profile(i).unit_seen.empty() && (labels || (head(i).words & (kTemperatureWord | kChannelWord)) == 0);
  }

  bool forced_time(std::size_t i) const {
    const auto& fixed = layout_.time.columns;
    return std::find(fixed.begin(), fixed.end(), static_cast<int>(i) + 1) != fixed.end();
  }

  bool whole_below(std::size_t i, double limit) const {
    const auto& p = profile(i);
    return p.holds() == Holds::kNumbers && p.whole_numbers && smallest(p.values) >= 0 && robust_peak(p.values) < limit;
  }

  /// Hour, minute and second in columns of their own, perhaps behind year, month and day.
  void find_parts_of_clock() {
    using Names = std::array<std::string_view, 14>;
    static constexpr Names kHour{"h",       "hh",    "hour",   "hours", "hr", "std", "stunde",
                                 "stunden", "heure", "heures", "hora",  "时", "時",  "小时"};
    static constexpr Names kMinute{"m",      "mm",      "min", "minute", "minutes", "mins", "minuten",
                                   "minuto", "minutos", "mi",  "分",     "分钟",    "分鐘", "mn"};
    static constexpr Names kSecond{"s",       "ss",       "sec", "second",  "seconds",  "secs",    "sek",
                                   "sekunde", "sekunden", "seg", "segundo", "segundos", "seconde", "秒"};
    static constexpr Names kCalendar{"year", "month", "day",   "jahr", "monat", "tag", "año",
                                     "mes",  "día",   "année", "mois", "jour",  "年",  "月"};
    const auto called = [this](std::size_t i, const Names& names) {
      const std::string text = lower(head(i).texts);
      return std::find(names.begin(), names.end(), text) != names.end();
    };
    const bool fixed = layout_.time.kind == "clock h:m:s" && layout_.time.columns.size() > 1;
    if (!fixed && !layout_.time.columns.empty()) return;
    for (std::size_t i = 0; i + 1 < table_.columns; ++i) {
      const bool named = called(i, kMinute) && called(i + 1, kSecond);
      const bool stated =
          fixed && forced_time(i) && forced_time(i + 1) && (i + 2 >= table_.columns || !forced_time(i + 2));
      const auto& seconds = profile(i + 1);
      const bool below =
          seconds.holds() == Holds::kNumbers && smallest(seconds.values) >= 0 && robust_peak(seconds.values) < 60;
      if ((!named && !stated) || !whole_below(i, 60) || !below) continue;
      role(i) = Role::kMinutes;
      role(i + 1) = Role::kTime;
      if (i > 0 && whole_below(i - 1, 24) && (called(i - 1, kHour) || (fixed && forced_time(i - 1))))
        role(i - 1) = Role::kHours;
      for (std::size_t k = 0; k < i; ++k) {
        if (called(k, kCalendar) || lower(head(k).texts) == "日") role(k) = Role::kText;
      }
      return;
    }
  }

  /// One clock for all, or one for each group of channels.
  void settle_times() {
    const std::size_t n = table_.columns;
    if (!layout_.time.columns.empty()) return settle_forced_times();
    if (layout_.time.kind == "index") {
      for (std::size_t i = 0; i < n; ++i) {
        if (role(i) == Role::kTime)
          role(i) = profile(i).holds() == Holds::kNumbers && counting(profile(i)) ? Role::kIndex : Role::kOther;
      }
      keep_one_index();
      columns_.no_time = true;
      return;
    }
    std::vector<std::size_t> times = with_role(Role::kTime);
    if (times.empty()) times = by_values();
    if (alternate(times)) {
      for (std::size_t k = 0; k < times.size(); ++k) {
        const std::size_t end = k + 1 < times.size() ? times[k + 1] : n;
        for (std::size_t i = times[k] + 1; i < end; ++i) columns_.clock_of[i] = static_cast<int>(times[k]);
      }
      drop_index_and_dates();
      return;
    }
    if (times.size() > 1) {
      const std::size_t best = best_time(times);
      for (const std::size_t i : times) {
        if (i != best) role(i) = profile(i).holds() == Holds::kTimes ? Role::kText : Role::kOther;
      }
      times = {best};
    }
    if (times.empty()) {
      keep_one_index();
      columns_.no_time = true;
      // A date alone says when only where it changes from row to row, which it does not in an oven.
      for (std::size_t i = 0; i < n; ++i) {
        if (role(i) == Role::kDate || role(i) == Role::kHalfOfDay || role(i) == Role::kMilliseconds)
          role(i) = Role::kText;
      }
      return;
    }
    drop_companions(times.front());
  }

  std::vector<std::size_t> with_role(Role wanted) const {
    std::vector<std::size_t> found;
    for (std::size_t i = 0; i < table_.columns; ++i) {
      if (columns_.roles[i] == wanted) found.push_back(i);
    }
    return found;
  }

  /// No header says which column is the time: the ones whose numbers go up from the first row to the last. A count of
  /// rows stands before the time, not behind it.
  std::vector<std::size_t> by_values() {
    std::vector<std::size_t> found;
    for (std::size_t i = 0; i < table_.columns; ++i) {
      if (numbers_without_words(i) && rising(profile(i))) found.push_back(i);
    }
    if (found.empty() && table_.columns > 1 && numbers_without_words(0) && header_.line == 0 &&
        share_rising(profile(0).values) >= 0.8)
      found.push_back(0);
    const bool index_known = !with_role(Role::kIndex).empty();
    if (found.size() == 1 && index_known && found.front() > 0 && table_.sampled < 8)
      found.clear();  // a few rows on a rise
    if (found.size() > 1 && found[1] == found[0] + 1) {
      if (counting(profile(found[0])) && !counting(profile(found[1])) && found[0] == 0) {
        role(found[0]) = Role::kIndex;
        found.erase(found.begin());
      }
    }
    if (found.size() > 1 && !alternate(found)) found.erase(found.begin() + 1, found.end());
    if (!found.empty() && found.size() == 1 && found.front() > 0 && index_known && (interval_given_ || facts_.interval))
      found.clear();
    if (found.size() == 1 && counting(profile(found.front())) &&
        (interval_given_ || (facts_.interval && facts_.interval->seconds != 1))) {
      role(found.front()) = Role::kIndex;
      return {};
    }
    for (const std::size_t i : found) role(i) = Role::kTime;
    return found;
  }

  bool channels_between(std::size_t from, std::size_t to) const {
    for (std::size_t i = from; i < to; ++i) {
      if (columns_.roles[i] == Role::kTemperature) return true;
    }
    return false;
  }

  bool alternate(const std::vector<std::size_t>& times) const {
    if (times.size() < 2) return false;
    for (std::size_t k = 0; k < times.size(); ++k) {
      const std::size_t end = k + 1 < times.size() ? times[k + 1] : table_.columns;
      if (!channels_between(times[k] + 1, end)) return false;
    }
    return !channels_between(0, times.front());
  }

  /// The one that is finest: a time that stands still from row to row is rounded.
  std::size_t best_time(const std::vector<std::size_t>& times) const {
    std::size_t best = times.front();
    double best_score = -1;
    for (const std::size_t i : times) {
      const auto& p = profile(i);
      double score = 0;
      if (p.holds() == Holds::kNumbers) {
        const bool known = head(i).unit || (head(i).words & kTimeWord) != 0;
        score = 2 + (known ? 1 : 0) + distinct_share(p.values) * 3;
      } else {
        std::vector<double> clocks;
        bool dated = false;
        for (const auto& t : p.time_texts) {
          clocks.push_back(t.clock_s);
          dated = dated || (t.has_date && t.has_clock);
        }
        score = 1.5 + (dated ? 0.7 : 0) + distinct_share(clocks) * 3;
      }
      if (score > best_score + 0.01) {
        best_score = score;
        best = i;
      }
    }
    return best;
  }

  static double distinct_share(const std::vector<double>& values) {
    if (values.size() < 2) return 1;
    std::size_t changed = 0;
    for (std::size_t i = 1; i < values.size(); ++i) changed += values[i] != values[i - 1] ? 1 : 0;
    return static_cast<double>(changed) / static_cast<double>(values.size() - 1);
  }

  /// Goes up by one in each of the first rows.
  static bool counts_rows(const ColumnProfile& column) {
    if (!counting(column) || column.values.size() < 3) return false;
    const std::size_t looked = std::min<std::size_t>(column.values.size(), 100);
    for (std::size_t k = 1; k < looked; ++k) {
      if (column.values[k] - column.values[k - 1] != 1) return false;
    }
    return true;
  }

  /// A nameless count of rows beside a time.
  void drop_row_numbers() {
    for (std::size_t i = 0; i < table_.columns; ++i) {
      if (role(i) == Role::kTemperature && head(i).name.empty() && !head(i).unit && counts_rows(profile(i)))
        role(i) = Role::kIndex;
    }
  }

  /// A date, a half of the day and milliseconds belong to a clock beside them; an index is of no use beside a time.
  void drop_companions(std::size_t time) {
    const bool packed = packed_clock(profile(time)) && !with_role(Role::kDate).empty();
    const bool stops = clock_with_full_stops(profile(time));
    const bool clock = packed || (profile(time).holds() == Holds::kTimes && !profile(time).time_texts.empty());
    const bool dated = clock && !packed && !stops && profile(time).time_texts.front().has_date;
    bool date_used = false, half_used = false, milliseconds_used = false;
    drop_row_numbers();
    for (std::size_t i = 0; i < table_.columns; ++i) {
      bool keep = true;
      if (role(i) == Role::kDate) {
        keep = clock && !dated && !date_used;
        date_used = date_used || keep;
      } else if (role(i) == Role::kHalfOfDay) {
        keep = clock && !half_used && i > time;
        half_used = half_used || keep;
      } else if (role(i) == Role::kMilliseconds) {
        keep =
            clock && !packed && !milliseconds_used && i > time && profile(time).time_texts.front().fraction_digits == 0;
        milliseconds_used = milliseconds_used || keep;
      } else {
        continue;
      }
      if (!keep) role(i) = role(i) == Role::kMilliseconds ? Role::kOther : Role::kText;
    }
  }

  void drop_index_and_dates() {
    for (std::size_t i = 0; i < table_.columns; ++i) {
      if (role(i) == Role::kDate || role(i) == Role::kHalfOfDay || role(i) == Role::kMilliseconds)
        role(i) = Role::kText;
    }
  }

  void keep_one_index() {
    bool kept = false;
    for (std::size_t i = 0; i < table_.columns; ++i) {
      if (role(i) != Role::kIndex) continue;
      if (kept) role(i) = Role::kOther;
      kept = true;
    }
    if (kept || table_.columns < 2) return;
    if (numbers_without_words(0) && counting(profile(0))) role(0) = Role::kIndex;
  }

  void settle_forced_times() {
    const bool index = layout_.time.kind == "index";
    std::size_t time = 0;
    for (std::size_t i = 0; i < table_.columns; ++i) {
      if (!forced_time(i)) {
        if (role(i) == Role::kTime) role(i) = profile(i).holds() == Holds::kTimes ? Role::kText : Role::kOther;
        continue;
      }
      if (index) {
        role(i) = Role::kIndex;
      } else if (role(i) != Role::kHours && role(i) != Role::kMinutes && role(i) != Role::kDate &&
                 role(i) != Role::kHalfOfDay && role(i) != Role::kMilliseconds) {
        role(i) = Role::kTime;
        time = i;
      }
    }
    if (index) {
      columns_.no_time = true;
      return;
    }
    if (with_role(Role::kTime).empty()) {
      const auto column = static_cast<std::size_t>(layout_.time.columns.front() - 1);
      if (column < table_.columns) role(column) = Role::kTime;
    }
    if (!forced_time(0) && numbers_without_words(0) && counting(profile(0))) role(0) = Role::kIndex;
    drop_companions(time);
  }

  /// Time, channel, value: one column of numbers, and one of names that changes from row to row or starts anew.
  bool is_long() const {
    if (columns_.no_time && !interval_given_ && !facts_.interval) return false;
    const auto values = with_role(Role::kTemperature);
    const auto names = channel_name_column();
    if (!names) return false;
    std::size_t numbers = 0;
    for (const std::size_t i : values) numbers += i != *names ? 1 : 0;
    return numbers == 1;
  }

  std::optional<std::size_t> channel_name_column() const {
    const auto time = with_role(Role::kTime);
    bool time_repeats = false;
    if (!time.empty()) {
      const auto& p = profile(time.front());
      std::vector<double> at = p.values;
      if (p.holds() == Holds::kTimes) {
        at.clear();
        for (const auto& t : p.time_texts) at.push_back(t.clock_s);
      }
      for (std::size_t i = 1; i < at.size(); ++i) time_repeats = time_repeats || at[i] <= at[i - 1];
    }
    for (std::size_t i = 0; i < table_.columns; ++i) {
      const auto& p = profile(i);
      const bool text = columns_.roles[i] == Role::kText && p.holds() == Holds::kText;
      const bool small_numbers = columns_.roles[i] == Role::kTemperature && p.whole_numbers && p.numbers > 0 &&
                                 p.unit_seen.empty() && p.texts_seen.size() <= 33 && smallest(p.values) >= 0 &&
                                 robust_peak(p.values) <= 999;
      if (!text && !small_numbers) continue;
      const std::size_t kinds = p.texts_seen.size();
      const bool named =
          (head(i).name_words & kChannelWord) != 0 && !has_digit(head(i).name) && !is_temperature(head(i).unit);
      const bool text_word = (head(i).name_words & (kTextWord | kOtherWord)) != 0;
      const bool label = (head(i).name_words & kNameWord) != 0;
      if (text_word && !named) continue;
      const bool few = kinds >= 1 && kinds * 2 <= table_.sampled;
      const bool interleaved = kinds >= 2 && 2 * p.text_changes + 2 >= std::min<std::size_t>(table_.sampled, 100);
      if (text && few && (named || label) && (kinds > 1 || named)) return i;
      if (text && few && kinds > 1 && (interleaved || time_repeats)) return i;
      if (small_numbers && few && named && (interleaved || time_repeats || kinds == 1)) return i;
      if (small_numbers && few && header_.line == 0 && interleaved && time_repeats && kinds > 1 &&
          robust_peak(p.values) <= 64)
        return i;
    }
    return std::nullopt;
  }

  void make_long() {
    columns_.form = Form::kLong;
    auto names = channel_name_column();
    if (!names) {
      for (std::size_t i = 0; i < table_.columns && !names; ++i) {
        if (role(i) == Role::kText) names = i;
      }
    }
    if (names) role(*names) = Role::kChannelName;
    bool value = false;
    // The column that is called the value, else the first of numbers.
    for (const bool by_name : {true, false}) {
      for (std::size_t i = 0; i < table_.columns && !value; ++i) {
        const bool called = (head(i).words & (kValueWord | kTemperatureWord)) != 0 || is_temperature(head(i).unit);
        if (role(i) == Role::kTemperature && (!by_name || called)) {
          value = true;
          value_ = i;
        }
      }
    }
    for (std::size_t i = 0; i < table_.columns; ++i) {
      if (role(i) == Role::kTemperature && i != value_) role(i) = Role::kOther;
    }
  }

  /// Names that no list knows, beside columns that are stated to be temperatures: a column that never moves is none.
  void settle_reserves() {
    const std::size_t n = table_.columns;
    std::size_t stated = 0;
    for (std::size_t i = 0; i < n; ++i) {
      if (role(i) == Role::kTemperature && is_temperature(head(i).unit)) ++stated;
    }
    for (std::size_t i = 0; i < n; ++i) {
      if (role(i) != Role::kTemperature || profile(i).numbers == 0) continue;
      const auto kept = finite(profile(i).values);
      const auto [low, high] = std::minmax_element(kept.begin(), kept.end());
      const bool temperature_stated = is_temperature(head(i).unit) ||
                                      (head(i).words & (kTemperatureWord | kChannelWord)) != 0 ||
                                      (head(i).unit && head(i).unit->quantity == Quantity::kVoltage);
      const double middle = robust_peak(profile(i).values);
      if (called_zone(i) && stands_still(i))
        set_aside(i, "it is named like a zone and stands at its temperature throughout");
      if (role(i) != Role::kTemperature) continue;
      if (!temperature_stated && stated >= 1 && !head(i).foreign_unit.empty()) {
        set_aside(i, "its unit is \"" + head(i).foreign_unit + "\", none of temperature");
      } else if (!temperature_stated && (middle > 6000 || middle < -300)) {
        set_aside(i, "its values are no temperatures");
      } else if (!temperature_stated && stated >= 1 && header_.line > 0 && !kept.empty() && *high - *low < 1e-9 &&
                 table_.sampled > 5) {
        set_aside(i, "no unit of temperature stands there and it never changes");
      }
    }
    // Nothing but zones or set-aside columns of temperature: then these are what was logged.
    if (with_role(Role::kTemperature).empty()) {
      for (const bool stated_only : {true, false}) {
        for (std::size_t i = 0; i < n; ++i) {
          const bool zone = is_temperature(head(i).unit) || (head(i).name_words & (kZoneWord | kTemperatureWord)) != 0;
          const bool may = role(i) == Role::kOther && profile(i).holds() == Holds::kNumbers &&
                           (head(i).name_words & kSetpointWord) == 0 && (!head(i).unit || is_temperature(head(i).unit));
          if (may && (zone || !stated_only) && (head(i).name_words & kOtherWord) == 0) {
            role(i) = Role::kTemperature;
            columns_.reasons[i].clear();
          }
        }
        if (!with_role(Role::kTemperature).empty()) break;
      }
    }
  }

  /// "Z1", "Z3 top", "HZ 4 PV".
  bool called_zone(std::size_t i) const {
    std::string name = lower(head(i).name);
    if (name.starts_with('h') || name.starts_with('k')) name.erase(0, 1);
    if (name.size() < 2 || name.front() != 'z') return false;
    const auto digit = name.find_first_not_of(" _-", 1);
    return digit != std::string::npos && name[digit] >= '0' && name[digit] <= '9';
  }

  /// Moves little beside the others.
  bool stands_still(std::size_t i) const {
    const auto range = [this](std::size_t k) {
      const auto kept = finite(profile(k).values);
      if (kept.empty()) return 0.0;
      const auto [low, high] = std::minmax_element(kept.begin(), kept.end());
      return *high - *low;
    };
    double widest = 0;
    for (const std::size_t k : with_role(Role::kTemperature)) widest = std::max(widest, range(k));
    return range(i) < 0.25 * widest;
  }

  void set_aside(std::size_t i, std::string why) {
    role(i) = Role::kOther;
    columns_.reasons[i] = std::move(why);
  }

  /// "TC1 min", "TC1 max", "TC1 avg" of each interval: the mean is the channel.
  void settle_statistics() {
    const auto split = [this](std::size_t i, std::string& base) {
      static constexpr std::array<std::string_view, 17> kKinds{
          "avg", "average", "mean", "mittel",  "mittelwert", "moyenne", "promedio", "media", "平均",
          "min", "minimum", "max",  "maximum", "最小",       "最大",    "std",      "stdev"};
      const std::string name = lower(head(i).name);
      for (std::size_t k = 0; k < kKinds.size(); ++k) {
        const auto at = name.find(kKinds[k]);
        if (at == std::string::npos) continue;
        base = name;
        base.erase(at, kKinds[k].size());
        return k < 9 ? 1 : 2;  // the mean, another
      }
      return 0;
    };
    std::vector<std::string> means;
    std::string base;
    for (const std::size_t i : with_role(Role::kTemperature)) {
      if (split(i, base) == 1) means.push_back(base);
    }
    for (const std::size_t i : with_role(Role::kTemperature)) {
      if (split(i, base) == 2 && std::find(means.begin(), means.end(), base) != means.end()) role(i) = Role::kOther;
    }
  }

  /// The temperature of the room or of the instrument stays low while the board goes through the oven; zones that are
  /// only called Z1 stand at their temperature from the first row on.
  void settle_ambient() {
    double hottest = 0;
    for (const std::size_t i : with_role(Role::kTemperature)) {
      const double peak = robust_peak(profile(i).values);
      if (std::isfinite(peak)) hottest = std::max(hottest, peak);
    }
    for (std::size_t i = 0; i < table_.columns; ++i) {
      if (role(i) != Role::kTemperature || (head(i).name_words & kAmbientWord) == 0) continue;
      const double peak = robust_peak(profile(i).values);
      if (std::isfinite(peak) && peak < 0.45 * hottest && with_role(Role::kTemperature).size() > 1)
        set_aside(i, "it stays far below the others");
    }
  }

  void force_channels() {
    for (std::size_t i = 0; i < table_.columns; ++i) {
      if (role(i) == Role::kTemperature)
        role(i) = profile(i).holds() == Holds::kNothing ? Role::kNothing : Role::kOther;
    }
    for (const auto& channel : layout_.channels) {
      if (channel.column < 1 || static_cast<std::size_t>(channel.column) > table_.columns) continue;
      const auto i = static_cast<std::size_t>(channel.column - 1);
      role(i) = Role::kTemperature;
      columns_.reasons[i].clear();
      if (channel.time_column > 0 && static_cast<std::size_t>(channel.time_column) <= table_.columns) {
        columns_.clock_of[i] = channel.time_column - 1;
        role(static_cast<std::size_t>(channel.time_column - 1)) = Role::kTime;
      }
    }
  }

  const Table& table_;
  const TableHeader& header_;
  const Facts& facts_;
  const Layout& layout_;
  const bool interval_given_;
  std::size_t value_ = 0;
  Columns columns_;
};

}  // namespace

bool clock_with_full_stops(const ColumnProfile& column) {
  const auto& times = column.time_texts;
  if (times.empty() || !std::all_of(times.begin(), times.end(), [](const TimeText& t) { return t.full_stops; }))
    return false;
  if (std::any_of(times.begin(), times.end(), [](const TimeText& t) { return !t.has_date; })) return true;
  // A date stays the same from row to row.
  std::size_t changes = 0;
  for (std::size_t i = 1; i < times.size(); ++i) changes += times[i].clock_s != times[i - 1].clock_s ? 1 : 0;
  return 4 * changes > times.size();
}

bool packed_clock(const ColumnProfile& column) {
  if (column.holds() != Holds::kNumbers || !column.whole_numbers) return false;
  return std::all_of(column.values.begin(), column.values.end(), [](double v) {
    if (!std::isfinite(v)) return true;
    const auto packed = static_cast<long long>(v);
    return packed >= 0 && packed < 240000 && packed / 100 % 100 < 60 && packed % 100 < 60;
  });
}

double share_rising(const std::vector<double>& values) {
  std::size_t up = 0, steps = 0;
  double before = std::numeric_limits<double>::quiet_NaN();
  for (const double value : values) {
    if (!std::isfinite(value)) continue;
    if (std::isfinite(before)) {
      ++steps;
      up += value >= before ? 1 : 0;
    }
    before = value;
  }
  const auto kept = finite(values);
  if (steps == 0 || !(kept.back() > kept.front())) return 0;
  return static_cast<double>(up) / static_cast<double>(steps);
}

double robust_peak(const std::vector<double>& values) {
  auto kept = finite(values);
  if (kept.empty()) return std::numeric_limits<double>::quiet_NaN();
  const auto place = kept.begin() + static_cast<std::ptrdiff_t>(kept.size() - 1 - kept.size() / 40);
  std::nth_element(kept.begin(), place, kept.end());
  return *place;
}

double robust_start(const std::vector<double>& values) {
  auto kept = finite(values);
  if (kept.empty()) return std::numeric_limits<double>::quiet_NaN();
  kept.resize(std::min<std::size_t>(kept.size(), 9));
  const auto middle = kept.begin() + static_cast<std::ptrdiff_t>(kept.size() / 2);
  std::nth_element(kept.begin(), middle, kept.end());
  return *middle;
}

Columns assign_columns(const Table& table, const TableHeader& header, const Facts& facts, const Layout& layout,
                       bool interval_given) {
  return Assigner(table, header, facts, layout, interval_given).run();
}

}  // namespace ovenwright::log
