#include "core/log/columns.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/log/assigner.h"
#include "core/log/channel_names.h"
#include "core/log/column_values.h"
#include "core/log/text.h"

namespace ovenwright::log {

using Holds = ColumnProfile::Holds;

Columns Assigner::run() {
  const std::size_t n = table_.columns;
  columns_.roles.assign(n, Role::kNothing);
  columns_.clock_of.assign(n, -1);
  columns_.reasons.assign(n, {});
  columns_.doubted.assign(n, false);
  for (std::size_t i = 0; i < n; ++i) {
    if (profile(i).holds() == Holds::kNumbers && (head(i).name_words & kOtherWord) == 0)
      series_.push_back(head(i).name);
  }
  for (std::size_t i = 0; i < n; ++i) columns_.roles[i] = first_guess(i);
  find_parts_of_clock();
  settle_times();
  if (layout_.form ? *layout_.form == Form::kLong : is_long()) make_long();
  if (columns_.form == Form::kWide) {
    settle_statistics();
    settle_statistics_of_channels();
    settle_tables_beside();
    settle_flags();
    settle_reserves();
    settle_tolerances();
    settle_ambient();
    take_back_by_curve();
    settle_statistics_of_channels();
    settle_cold_junction();
  }
  if (!layout_.channels.empty() && columns_.form == Form::kWide) force_channels();
  return std::move(columns_);
}

Role Assigner::first_guess(std::size_t i) const {
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

Role Assigner::empty_column(std::size_t i) const {
  const auto& column = head(i);
  if (column.texts.empty()) return profile(i).open > 0 && header_.line == 0 ? Role::kTemperature : Role::kNothing;
  if (column.unit && !is_temperature(column.unit) && column.unit->quantity != Quantity::kVoltage) return Role::kNothing;
  const Words never = kOtherWord | kTextWord | kTimeWord | kDateWord | kIndexWord | kSetpointWord | kZoneWord;
  if ((column.words & never) != 0 && !is_temperature(column.unit)) return Role::kNothing;
  if (only_statistic(column)) return Role::kNothing;
  return Role::kTemperature;
}

Role Assigner::text_column(std::size_t i) const {
  const auto& seen = profile(i).texts_seen;
  const auto all = [&seen](auto test) { return !seen.empty() && std::all_of(seen.begin(), seen.end(), test); };
  if (all([](const std::string& text) { return half_of_day(text) > 0; })) return Role::kHalfOfDay;
  if (all([](const std::string& text) {
        const auto unit = parse_unit(text);
        return unit.has_value();
      })) {
    return Role::kUnit;
  }
  if (seen.size() == 1 && profile(i).numbers + profile(i).times == 0 && named_like_a_channel(i))
    return Role::kTemperature;
  return Role::kText;
}

/// "Canale 3" beside "Canale 1", or a unit of temperature: one word in every row says that it was open.
bool Assigner::named_like_a_channel(std::size_t i) const {
  const Words never = kOtherWord | kTextWord | kTimeWord | kDateWord | kIndexWord | kSetpointWord | kZoneWord;
  if (is_temperature(head(i).unit)) return true;
  if ((head(i).words & never) != 0 || !has_digit(head(i).name)) return false;
  const auto stem = [](std::string name) {
    std::erase_if(name, [](char c) { return c >= '0' && c <= '9'; });
    return name;
  };
  for (std::size_t k = 0; k < table_.columns; ++k) {
    if (k != i && profile(k).holds() == Holds::kNumbers && has_digit(head(k).name) &&
        stem(head(k).name) == stem(head(i).name))
      return true;
  }
  return false;
}

Role Assigner::time_column(std::size_t i) const {
  const auto& times = profile(i).time_texts;
  const auto dated = std::count_if(times.begin(), times.end(), [](const TimeText& t) { return t.has_date; });
  const auto clocked = std::count_if(times.begin(), times.end(), [](const TimeText& t) { return t.has_clock; });
  const auto half = static_cast<std::ptrdiff_t>(times.size() / 2);
  if (clock_with_full_stops(profile(i))) return Role::kTime;
  if (dated > half && clocked <= half) return Role::kDate;
  return Role::kTime;
}

Role Assigner::number_column(std::size_t i) const {
  const auto& column = head(i);
  const auto& p = profile(i);
  const Words words = column.words, name_words = column.name_words;
  const bool goes_up = rising(p);
  auto unit = column.unit;
  if (!unit && !p.unit_seen.empty()) unit = parse_unit(p.unit_seen);
  if (!unit && column.ending && column.ending->quantity == Quantity::kTime && (words & kTimeWord) != 0)
    unit = column.ending;
  if (unit && unit->quantity == Quantity::kTime) {
    const bool part =
        unit->factor < 1 && !goes_up && robust_peak(p.values) * unit->factor < 1 && smallest(p.values) >= 0;
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
  const bool other = (name_words & (kOtherWord | kZoneWord)) != 0;
  if (other && !in_a_series(i)) return Role::kOther;
  if (only_statistic(column)) return Role::kOther;
  return Role::kTemperature;
}

bool Assigner::in_a_series(std::size_t i) const {
  return (head(i).name_words & kZoneWord) == 0 && one_of_a_series(head(i).name, series_);
}

bool Assigner::compact_date(std::size_t i) const {
  const auto& p = profile(i);
  if (!p.whole_numbers || p.numbers == 0) return false;
  return std::all_of(p.values.begin(), p.values.end(), [](double v) {
    if (!std::isfinite(v)) return true;
    if (v < 19700101 || v > 21001231) return false;
    const auto whole = static_cast<int>(v);
    return whole / 100 % 100 >= 1 && whole / 100 % 100 <= 12 && whole % 100 >= 1 && whole % 100 <= 31;
  });
}

bool Assigner::numbers_without_words(std::size_t i) const {
  // Above the first column of several header rows stand the labels of these rows: "Channel", "Name", "Type".
  const bool labels = i == 0 && table_.headers.size() > 1 && !has_digit(head(i).texts);
  return profile(i).holds() == Holds::kNumbers && columns_.roles[i] == Role::kTemperature && !head(i).unit &&
         profile(i).unit_seen.empty() && (labels || (head(i).words & (kTemperatureWord | kChannelWord)) == 0);
}

std::vector<std::size_t> Assigner::with_role(Role wanted) const {
  std::vector<std::size_t> found;
  for (std::size_t i = 0; i < table_.columns; ++i) {
    if (columns_.roles[i] == wanted) found.push_back(i);
  }
  return found;
}

bool Assigner::is_long() const {
  if (columns_.no_time && !interval_given_ && !facts_.interval) return false;
  const auto values = with_role(Role::kTemperature);
  const auto names = channel_name_column();
  if (!names) return false;
  std::size_t numbers = 0;
  const auto numbers_them = [&](std::size_t i) {  // "1", "2", "3" beside "U1", "R118", "C44"
    const auto &p = profile(i), &named = profile(*names);
    return named.holds() == Holds::kText && p.whole_numbers && !head(i).unit && p.texts_seen.size() > 1 &&
           p.texts_seen.size() <= 33 && p.texts_seen.size() == named.texts_seen.size();
  };
  for (const std::size_t i : values) numbers += i != *names && !numbers_them(i) ? 1 : 0;
  return numbers == 1;
}

std::optional<std::size_t> Assigner::channel_name_column() const {
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

void Assigner::make_long() {
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

void Assigner::force_channels() {
  for (std::size_t i = 0; i < table_.columns; ++i) {
    if (role(i) == Role::kTemperature) role(i) = profile(i).holds() == Holds::kNothing ? Role::kNothing : Role::kOther;
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

Columns assign_columns(const Table& table, const TableHeader& header, const Facts& facts, const Layout& layout,
                       bool interval_given) {
  return Assigner(table, header, facts, layout, interval_given).run();
}

}  // namespace ovenwright::log
