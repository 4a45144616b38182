#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "core/log/channel_names.h"
#include "core/log/interpreter.h"
#include "core/log/row_order.h"
#include "core/log/text.h"
#include "core/log/words.h"
#include "core/units/phrase.h"

// One row of the table holds all channels.

namespace ovenwright::log {
namespace {

/// The rows that hold a reading where these are every second, third, … one from the first to the last: a channel that
/// is scanned less often than the others. Empty for all other channels.
std::vector<std::size_t> regular_rows(const std::vector<double>& values) {
  constexpr std::size_t kFewest = 8;
  if (values.size() < 2 * kFewest) return {};
  std::size_t looked = 0, missing = 0;
  for (; looked < 2 * kFewest; ++looked) missing += std::isnan(values[looked]) ? 1 : 0;
  if (missing < kFewest / 2) return {};  // most channels, at once
  std::vector<std::size_t> rows;
  for (std::size_t i = 0; i < values.size(); ++i) {
    if (!std::isnan(values[i])) rows.push_back(i);
  }
  if (rows.size() < kFewest) return {};
  const std::size_t step = rows[1] - rows[0];
  std::size_t regular = 0;
  for (std::size_t k = 1; k < rows.size(); ++k) regular += rows[k] - rows[k - 1] == step ? 1 : 0;
  const bool throughout = rows.front() < 2 * step && values.size() - rows.back() <= 2 * step;
  return step > 1 && throughout && 10 * regular >= 9 * (rows.size() - 1) ? rows : std::vector<std::size_t>{};
}

}  // namespace

std::optional<Error> Interpreter::too_many_channels(std::size_t channels, const Found& found) const {
  if (channels <= kMostChannels) return std::nullopt;
  const std::string count = fmt::format("{} channels", channels), expected = fmt::format("at most {}", kMostChannels);
  return Error{ErrorCode::kParse,
               fmt::format("found {}, expected {}", count, expected),
               {name_, static_cast<int>(found.table.first_row.line), 0},
               count,
               expected};
}

Result<bool> Interpreter::wide(RowSource& rows, Found& found) {
  WidePlan plan = plan_of(found);
  std::vector<int> time_columns;
  const int shared_time = only_time(found);
  const auto clock_index = [&](std::size_t column) {
    int time = found.columns.clock_of[column];
    if (time < 0) time = shared_time;
    const auto at = std::find(time_columns.begin(), time_columns.end(), time);
    if (at != time_columns.end()) return static_cast<int>(at - time_columns.begin());
    time_columns.push_back(time);
    return static_cast<int>(time_columns.size()) - 1;
  };
  std::vector<std::size_t> channels, others;
  int cold_junction = -1;
  for (std::size_t i = 0; i < found.table.columns; ++i) {
    const Role role = found.columns.roles[i];
    if (role == Role::kTemperature) channels.push_back(i);
    if (role == Role::kOther && found.table.profile[i].holds() == ColumnProfile::Holds::kNumbers) others.push_back(i);
    if (role == Role::kColdJunction) {
      others.push_back(i);
      if (cold_junction < 0) cold_junction = static_cast<int>(i);
    }
  }
  if (layout_.cold_junction_column) cold_junction = *layout_.cold_junction_column - 1;
  if (channels.empty()) {
    if (auto error = unit_of_no_temperature(found)) return *error;
    return Error{ErrorCode::kParse,
                 "found no column of temperatures, expected one at least",
                 {name_, static_cast<int>(found.table.first_row.line), 0},
                 "",
                 "a column of temperatures"};
  }
  if (auto error = too_many_channels(channels.size(), found)) return *error;
  for (const std::size_t i : channels) plan.numbers.push_back({static_cast<int>(i), clock_index(i), true});
  for (const std::size_t i : others)
    plan.numbers.push_back({static_cast<int>(i), found.columns.clock_of[i] < 0 ? 0 : clock_index(i), false});
  for (const int time : time_columns) {
    auto planned = clock(found, time);
    if (!planned) return planned.error();
    plan.clocks.push_back(*planned);
  }
  reading_.read_as.time = plan.clocks.front().name;
  auto temperatures = plan_channels(found, channels, cold_junction);
  if (!temperatures) return temperatures.error();
  for (std::size_t k = 0; k < channels.size(); ++k) {
    const ChannelUnit& unit = temperatures->channels[k];
    if (unit.unit != "mV" && unit.scale == 1) plan.numbers[k].unit = unit.unit;
  }
  plan.names = names_in_header(found);
  if (std::any_of(channels.begin(), channels.end(),
                  [&](std::size_t i) { return found.table.profile[i].tolerances > 0; }))
    note_once(say(Phrase::kTolerances));

  auto result = read_wide(rows, found.dialect, found.table, plan, name_, options_.threads, options_.most_samples,
                          options_.progress);
  if (!result) return result.error();
  if (auto error = enough_rows(result->rows, found)) return *error;
  take_account(*result);
  last_piece_ = result->last_piece;
  for (std::size_t c = 0; c < plan.clocks.size(); ++c) {
    if (plan.clocks[c].column < 0) {
      for (std::size_t i = 0; i < result->rows; ++i) result->times[c][i] = static_cast<double>(i);
    }
  }
  if (auto error = standing_still(result->times, found)) return *error;
  if (plan.clocks.size() == 1) {
    if (auto error = put_rows_in_order(rows, found, plan, *result)) return *error;
  }
  keep_others(found, plan, others, *result, channels.size());
  const auto cold = cold_junction_of(*temperatures, plan, *result);
  channels_of(found, plan, channels, *temperatures, cold, *result);
  clocks_ = plan.clocks;
  return true;
}

std::optional<Error> Interpreter::put_rows_in_order(RowSource& rows, const Found& found, WidePlan plan,
                                                    WideResult& result) {
  std::vector<double>& times = result.times.front();
  const bool reversed = newest_first(times);
  if (reversed) {
    for (auto* arrays : {&result.times, &result.values}) {
      for (auto& array : *arrays) std::reverse(array.begin(), array.end());
    }
    note_once(say(Phrase::kNewestFirst));
  }
  // Numbers that go forward do so as seconds; clocks go on past midnight first.
  const TimeKind kind = plan.clocks.front().kind;
  const bool by_clock = kind == TimeKind::kClock || kind == TimeKind::kMoment;
  const run::Steps steps = run::steps_of(times);
  finish(times, plan.clocks.front(), steps);
  if (!by_clock && steps.down == 0) return std::nullopt;
  const RowOrder order = row_order(times);
  if (order.kind == RowOrder::Kind::kAny) {
    note_once(say(Phrase::kPutInOrder));
    for (auto* arrays : {&result.times, &result.values}) {
      for (auto& array : *arrays) {
        const auto before = array;
        for (std::size_t i = 0; i < order.order.size(); ++i) array[i] = before[order.order[i]];
      }
    }
  }
  if (order.kind != RowOrder::Kind::kRestarts) return std::nullopt;
  // The line is looked for in a second reading that keeps them.
  plan.keep_lines = true;
  const auto again = read_wide(rows, found.dialect, found.table, plan, name_, options_.threads, options_.most_samples,
                               options_.progress);
  const std::size_t row = reversed ? times.size() - 1 - order.first_back : order.first_back;
  const double line = again && row < again->rows ? again->values.back()[row] : 0;
  const std::string what = fmt::format("times that start anew in {} places", order.steps_back);
  const std::string expected = "times that go on";
  return Error{ErrorCode::kParse,
               fmt::format("found {}, expected {}", what, expected),
               {name_, static_cast<int>(line), plan.clocks.front().column + 1},
               what,
               expected};
}

std::vector<std::string> Interpreter::names_in_header(const Found& found) {
  // At blanks a name falls into several cells.
  if (found.dialect != nullptr && found.dialect->split != Dialect::Split::kDelimiter) return {};
  for (const Statement& row : found.table.headers) {
    if (static_cast<int>(row.line) != found.header.line || row.cells.size() < found.table.columns) continue;
    std::size_t names = row.cells.size();
    while (names > 0 && row.cells[names - 1].empty()) --names;
    if (names > found.table.columns)
      note_once(say(Phrase::kMoreNames, {std::to_string(names), std::to_string(found.table.columns)}));
    return {row.cells.begin(), row.cells.begin() + static_cast<std::ptrdiff_t>(found.table.columns)};
  }
  return {};
}

std::optional<Error> Interpreter::unit_of_no_temperature(const Found& found) const {
  for (std::size_t i = 0; i < found.table.columns; ++i) {
    const auto& column = found.header.columns[i];
    if (!column.unit || column.unit->quantity != Quantity::kOther ||
        (column.name_words & (kTemperatureWord | kChannelWord)) == 0)
      continue;
    return Error{ErrorCode::kParse,
                 fmt::format("found the unit {} and no column of temperatures, expected °C, °F, K or mV",
                             quoted_for_message(column.unit->name)),
                 {name_, line_of_header(found), static_cast<int>(i) + 1},
                 column.unit->name,
                 "°C, °F, K or mV"};
  }
  return std::nullopt;
}

std::optional<Error> Interpreter::standing_still(const std::vector<std::vector<double>>& clocks,
                                                 const Found& found) const {
  for (const auto& times : clocks) {
    const bool moves =
        std::any_of(times.begin(), times.end(), [&times](double t) { return t != times.front() && !std::isnan(t); });
    if (!moves) {
      return Error{ErrorCode::kParse,
                   "found the same time in every row, expected times that go on",
                   {name_, static_cast<int>(found.table.first_row.line), 0},
                   "the same time in every row",
                   "times that go on"};
    }
  }
  return std::nullopt;
}

Result<TemperaturePlan> Interpreter::plan_channels(const Found& found, const std::vector<std::size_t>& channels,
                                                   int cold_junction) {
  std::vector<ChannelEvidence> evidence;
  std::optional<UnitText> shared_ending = found.header.columns[channels.front()].ending;
  for (const std::size_t i : channels) {
    const auto& ending = found.header.columns[i].ending;
    if (!ending || !shared_ending || ending->name != shared_ending->name || ending->quantity != Quantity::kTemperature)
      shared_ending.reset();
  }
  // "TC1 C": a letter that could be part of the name is a unit where every channel has it, or it is spelt out.
  endings_are_units_ = shared_ending.has_value() && (channels.size() > 1 || !shared_ending->weak);
  for (const std::size_t i : channels) {
    const auto& column = found.header.columns[i];
    const auto& profile = found.table.profile[i];
    ChannelEvidence one;
    one.name = column_name(found, i);
    one.column = static_cast<int>(i);
    one.values = &profile.values;
    one.whole_numbers = profile.whole_numbers && profile.numbers > 0;
    one.unit = column.unit;
    if (one.unit && one.unit->quantity != Quantity::kTemperature && one.unit->quantity != Quantity::kVoltage &&
        one.unit->quantity != Quantity::kUnknownTemperature)
      one.unit.reset();
    if (!one.unit && !profile.unit_seen.empty()) one.unit = unit_of_cells(profile.unit_seen);
    if (!one.unit) one.unit = unit_beside(found, i);
    if (!one.unit && endings_are_units_) one.unit = column.ending;
    one.bracket = column.bracket;
    one.foreign_unit = column.foreign_unit;
    one.foreign_unit_line = column.foreign_unit_line;
    one.thermocouple = column.thermocouple;
    one.factor = column.factor;
    if (const auto* fixed = fixed_channel(i)) {
      one.forced_unit = fixed->unit;
      one.reversed = fixed->reversed;
    }
    evidence.push_back(std::move(one));
  }
  const int time = only_time(found);
  const bool time_bracket = time >= 0 && found.header.columns[static_cast<std::size_t>(time)].unit.has_value();
  std::optional<UnitText> cold_unit;
  if (cold_junction >= 0 && static_cast<std::size_t>(cold_junction) < found.table.columns)
    cold_unit = found.header.columns[static_cast<std::size_t>(cold_junction)].unit;
  return finish_plan(
      plan_temperatures(evidence, found.facts, layout_, cold_junction, cold_unit, time_bracket, line_of_header(found)),
      line_of_header(found));
}

std::optional<UnitText> Interpreter::unit_beside(const Found& found, std::size_t i) {
  if (i + 1 >= found.table.columns || found.columns.roles[i + 1] != Role::kUnit ||
      found.table.profile[i + 1].texts_seen.empty())
    return std::nullopt;
  return unit_of_cells(found.table.profile[i + 1].texts_seen.front());
}

void Interpreter::keep_others(const Found& found, const WidePlan&, const std::vector<std::size_t>& others,
                              WideResult& result, std::size_t channels) {
  std::string reasons;
  for (std::size_t k = 0; k < others.size(); ++k) {
    const std::size_t i = others[k];
    std::string name = column_name(found, i);
    if (name.empty()) name = fmt::format("column {}", i + 1);
    if (!found.columns.reasons[i].empty()) {
      std::string aside = fmt::format("{} is kept but not judged: {}.", name, found.columns.reasons[i]);
      if (found.columns.doubted[i])
        reading_.warnings.push_back({aside, {name_, line_of_header(found), static_cast<int>(i) + 1}});
      note_once(std::move(aside));
    }
    // The cold junction's readings are still needed.
    const bool needed = found.columns.roles[i] == Role::kColdJunction;
    auto& values = result.values[channels + k];
    reading_.others.push_back({std::move(name), needed ? values : std::move(values)});
  }
}

std::vector<double> Interpreter::cold_junction_of(const TemperaturePlan& temperatures, const WidePlan& plan,
                                                  const WideResult& result) const {
  if (temperatures.cold_junction_column < 0) return {};
  for (std::size_t k = 0; k < plan.numbers.size(); ++k) {
    if (plan.numbers[k].column != temperatures.cold_junction_column) continue;
    std::vector<double> cold = result.values[k];
    for (double& value : cold) {
      if (temperatures.cold_junction_fahrenheit) value = (value - 32) / 1.8;
      if (temperatures.cold_junction_kelvin) value -= 273.15;
    }
    return cold;
  }
  return {};
}

void Interpreter::channels_of(const Found& found, const WidePlan& plan, const std::vector<std::size_t>& columns,
                              const TemperaturePlan& temperatures, const std::vector<double>& cold,
                              WideResult& result) {
  std::vector<std::string> names;
  for (std::size_t k = 0; k < columns.size(); ++k) {
    const auto& column = found.header.columns[columns[k]];
    std::string name = endings_are_units_ && column.ending ? column.name_before_ending : column.name;
    if (name.empty()) name = name_above_clock(found, columns[k]);
    const Layout::ChannelColumn* fixed = fixed_channel(columns[k]);
    if (fixed != nullptr && !fixed->name.empty()) name = fixed->name;
    names.push_back(std::move(name));
  }
  names = unique_names(std::move(names));
  std::vector<std::shared_ptr<const std::vector<double>>> shared(plan.clocks.size());
  const bool own_clocks = plan.clocks.size() > 1;
  if (!own_clocks) shared.front() = std::make_shared<const std::vector<double>>(std::move(result.times.front()));
  for (std::size_t k = 0; k < columns.size(); ++k) {
    const Layout::ChannelColumn* fixed = fixed_channel(columns[k]);
    const int clock = plan.numbers[k].clock;
    auto& values = result.values[k];
    std::vector<double> lines;
    if (plan.keep_lines) lines = result.values.back();
    to_celsius(values, temperatures.channels[k], temperatures, cold);
    Layout::ChannelColumn described{static_cast<int>(columns[k]) + 1,
                                    names[k],
                                    own_clocks ? plan.clocks[static_cast<std::size_t>(clock)].column + 1 : 0,
                                    fixed == nullptr || fixed->use,
                                    fixed != nullptr && fixed->reversed,
                                    {}};
    if (temperatures.channels[k].unit != temperatures.unit) described.unit = temperatures.channels[k].unit;
    reading_.layout.channels.push_back(described);
    if (own_clocks) {
      // Rows in which this clock stands still because its log was over.
      auto times = result.times[static_cast<std::size_t>(clock)];
      std::size_t kept = 0;
      for (std::size_t i = 0; i < times.size(); ++i) {
        if (std::isnan(times[i])) continue;
        times[kept] = times[i];
        if (plan.keep_lines) lines[kept] = lines[i];
        values[kept++] = values[i];
      }
      times.resize(kept);
      values.resize(kept);
      if (plan.keep_lines) lines.resize(kept);
      auto& one = shared[static_cast<std::size_t>(clock)];
      if (!one) one = finished(std::move(times), plan.clocks[static_cast<std::size_t>(clock)]);
    }
    auto times = shared[static_cast<std::size_t>(clock)];
    if (const auto rows = regular_rows(values); !own_clocks && !rows.empty()) {
      std::vector<double> own_times, own_values, own_lines;
      for (const std::size_t row : rows) {
        own_times.push_back((*times)[row]);
        own_values.push_back(values[row]);
        if (plan.keep_lines) own_lines.push_back(lines[row]);
      }
      lines = std::move(own_lines);
      times = std::make_shared<const std::vector<double>>(std::move(own_times));
      values = std::move(own_values);
      note_once(say(Phrase::kOneRowIn, {names[k], std::to_string(rows[1] - rows[0])}));
    }
    if (described.use) {
      if (plan.keep_lines) reading_.cells.push_back(cells_of(found, columns[k], lines));
      reading_.channels.push_back({names[k], static_cast<int>(k) + 1, std::move(times), std::move(values)});
    } else {
      reading_.others.push_back({names[k], std::move(values)});
    }
  }
  temperatures_ = temperatures;
}

std::vector<SampleCell> Interpreter::cells_of(const Found& found, std::size_t column,
                                              const std::vector<double>& lines) {
  std::vector<SampleCell> cells;
  cells.reserve(lines.size());
  for (const double line : lines) {
    // A row of a turned table is a column of the file.
    const bool turned = !found.lines_of_columns.empty();
    cells.push_back(turned ? SampleCell{found.lines_of_columns[column], static_cast<int>(line)}
                           : SampleCell{static_cast<std::size_t>(line), static_cast<int>(column) + 1});
  }
  return cells;
}

std::string Interpreter::name_above_clock(const Found& found, std::size_t column) {
  if (column == 0 || found.columns.clock_of[column] != static_cast<int>(column) - 1) return {};
  const auto& clock = found.header.columns[column - 1];
  return (clock.name_words & (kTimeWord | kDateWord | kIndexWord)) == 0 ? clock.name : std::string{};
}

const Layout::ChannelColumn* Interpreter::fixed_channel(std::size_t column) const {
  const auto found = std::find_if(layout_.channels.begin(), layout_.channels.end(),
                                  [column](const auto& c) { return c.column == static_cast<int>(column) + 1; });
  return found == layout_.channels.end() ? nullptr : &*found;
}

}  // namespace ovenwright::log
