#include <algorithm>
#include <limits>
#include <numeric>

#include "core/log/channel_names.h"
#include "core/log/interpreter.h"
#include "core/units/phrase.h"

// Time, channel and value in each row.

namespace ovenwright::log {
namespace {

/// Readings that a database gave in any order, or with the newest first. A few steps back are another run or a clock
/// that was set, and stay. True where anything moved.
bool put_in_order(LongChannel& channel) {
  const auto& times = channel.times;
  std::size_t back = 0;
  for (std::size_t i = 1; i < times.size(); ++i) back += times[i] < times[i - 1] ? 1 : 0;
  constexpr std::size_t kFewRows = 20, kFew = 3;
  if (back < kFew || back * kFewRows < times.size()) return false;
  std::vector<std::size_t> order(times.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::stable_sort(order.begin(), order.end(), [&times](std::size_t a, std::size_t b) { return times[a] < times[b]; });
  LongChannel sorted{channel.name, channel.unit, {}, {}, {}};
  for (const std::size_t i : order) {
    sorted.times.push_back(channel.times[i]);
    sorted.values.push_back(channel.values[i]);
    if (!channel.lines.empty()) sorted.lines.push_back(channel.lines[i]);
  }
  channel = std::move(sorted);
  return true;
}

}  // namespace

Result<bool> Interpreter::long_form(RowSource& rows, Found& found) {
  reading_.layout.form = Form::kLong;
  WidePlan plan = plan_of(found);
  int names = -1, value = -1, unit = -1;
  for (std::size_t i = 0; i < found.table.columns; ++i) {
    const int column = static_cast<int>(i);
    if (found.columns.roles[i] == Role::kChannelName) names = column;
    if (found.columns.roles[i] == Role::kTemperature) value = column;
    if (found.columns.roles[i] == Role::kUnit) unit = column;
  }
  if (names < 0 || value < 0) {
    return Error{ErrorCode::kParse,
                 "found no columns of channel names and values, expected time, channel and value",
                 {name_, static_cast<int>(found.table.first_row.line), 0},
                 "",
                 "time, channel and value"};
  }
  auto planned = clock(found, only_time(found));
  if (!planned) return planned.error();
  plan.clocks.push_back(*planned);
  plan.numbers.push_back({value, 0, true});
  reading_.read_as.time = planned->name;
  auto result =
      read_long(rows, found.table.first_row, plan, names, unit, name_, options_.most_samples, options_.progress);
  if (!result) return result.error();
  if (auto error = enough_rows(result->account.rows, found)) return *error;
  take_account(result->account);
  return long_channels(found, plan, *result, static_cast<std::size_t>(value));
}

Result<bool> Interpreter::long_channels(const Found& found, const WidePlan& plan, LongResult& result,
                                        std::size_t value) {
  std::vector<HeaderText> heads;
  std::vector<std::size_t> judged;
  const auto& value_column = found.header.columns[value];
  std::vector<std::string> all;
  for (const LongChannel& channel : result.channels) all.push_back(channel.name);
  for (std::size_t i = 0; i < result.channels.size(); ++i) {
    heads.push_back(read_header_text(result.channels[i].name));
    HeaderText& head = heads.back();
    if (auto unit = parse_unit(result.channels[i].unit)) head.unit = unit;
    if (head.name.empty()) head.name = head.whole;
    const bool temperature =
        head.unit && (head.unit->quantity == Quantity::kTemperature || head.unit->quantity == Quantity::kVoltage ||
                      head.unit->quantity == Quantity::kUnknownTemperature);
    const bool other_unit = head.unit && !temperature;
    const bool of_the_oven = (head.words & (kZoneWord | kSetpointWord | kColdJunctionWord)) != 0;
    const bool other_word =
        !temperature && (of_the_oven || ((head.words & kOtherWord) != 0 && !one_of_a_series(head.name, all)));
    if (!other_unit && !other_word) judged.push_back(i);
  }
  if (judged.empty()) {
    for (std::size_t i = 0; i < result.channels.size(); ++i) judged.push_back(i);
  }
  std::vector<ChannelEvidence> evidence;
  std::vector<std::vector<double>> samples;
  samples.reserve(judged.size());
  for (const std::size_t i : judged) {
    const auto& values = result.channels[i].values;
    const std::size_t step = std::max<std::size_t>(1, values.size() / 400);
    samples.emplace_back();
    for (std::size_t k = 0; k < values.size(); k += step) samples.back().push_back(values[k]);
    ChannelEvidence one;
    one.name = heads[i].name;
    one.column = static_cast<int>(value);
    one.values = &samples.back();
    one.whole_numbers = found.table.profile[value].whole_numbers;
    one.unit = heads[i].unit ? heads[i].unit : value_column.unit;
    if (!one.unit) one.unit = unit_of_cells(found.table.profile[value].unit_seen);
    one.bracket = value_column.bracket;
    one.thermocouple = heads[i].thermocouple != 0 ? heads[i].thermocouple : value_column.thermocouple;
    evidence.push_back(std::move(one));
  }
  auto temperatures = finish_plan(
      plan_temperatures(evidence, found.facts, layout_, -1, {}, true, line_of_header(found)), line_of_header(found));
  if (!temperatures) return temperatures.error();
  std::vector<std::string> names;
  for (const std::size_t i : judged) names.push_back(heads[i].name);
  names = unique_names(std::move(names));
  std::shared_ptr<const std::vector<double>> before;
  bool any_sorted = false;
  for (const std::size_t i : judged) any_sorted = put_in_order(result.channels[i]) || any_sorted;
  if (any_sorted) note_once(say(Phrase::kPutInOrder));
  for (std::size_t k = 0; k < judged.size(); ++k) {
    LongChannel& channel = result.channels[judged[k]];
    if (plan.clocks.front().column < 0) {
      for (std::size_t i = 0; i < channel.times.size(); ++i) channel.times[i] = static_cast<double>(i);
    }
    to_celsius(channel.values, temperatures->channels[k], *temperatures, {});
    if (!before || raw_times_ != channel.times) {
      raw_times_ = channel.times;
      before = finished(std::move(channel.times), from_first_row(plan.clocks.front(), result));
    }
    const auto fixed = std::find_if(layout_.channels.begin(), layout_.channels.end(),
                                    [&](const auto& c) { return c.name == names[k]; });
    const bool use = fixed == layout_.channels.end() || fixed->use;
    reading_.layout.channels.push_back({0, names[k], 0, use, fixed != layout_.channels.end() && fixed->reversed, {}});
    if (use && plan.keep_lines) {
      auto& cells = reading_.cells.emplace_back();
      for (const std::size_t line : channel.lines) cells.push_back({line, static_cast<int>(value) + 1});
    }
    if (use) {
      reading_.channels.push_back({names[k], static_cast<int>(k) + 1, before, std::move(channel.values)});
    } else {
      reading_.others.push_back({names[k], std::move(channel.values)});
    }
  }
  for (std::size_t i = 0; i < result.channels.size(); ++i) {
    if (std::find(judged.begin(), judged.end(), i) == judged.end())
      reading_.others.push_back({heads[i].name, std::move(result.channels[i].values)});
  }
  clocks_ = plan.clocks;
  temperatures_ = *temperatures;
  return true;
}

TimePlan Interpreter::from_first_row(TimePlan plan, const LongResult& result) const {
  if (first_time_ == nullptr) {
    double first = std::numeric_limits<double>::infinity();
    for (const LongChannel& channel : result.channels) {
      if (!channel.times.empty()) first = std::min(first, channel.times.front());
    }
    first_time_ = std::make_unique<double>(first);
  }
  plan.origin = *first_time_;
  return plan;
}

}  // namespace ovenwright::log
