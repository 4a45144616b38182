#include "core/log/long_form.h"

#include <fmt/format.h>

#include <algorithm>
#include <string_view>
#include <unordered_map>

#include "core/log/row_reader.h"

namespace ovenwright::log {
namespace {

struct Hash {
  using is_transparent = void;
  std::size_t operator()(std::string_view text) const { return std::hash<std::string_view>{}(text); }
};

std::string_view cell_at(const Row& row, int column) {
  const auto i = static_cast<std::size_t>(column);
  return column >= 0 && i < row.cells.size() ? row.cells[i] : std::string_view{};
}

}  // namespace

Result<LongResult> read_long(RowSource& rows, Position first, const WidePlan& plan, int name_column, int unit_column,
                             const std::string& file, std::size_t most_numbers, const Progress& progress) {
  LongResult result;
  std::vector<std::vector<double>> times(1, std::vector<double>(1));
  std::vector<std::vector<double>> values(plan.keep_lines ? 2 : 1, std::vector<double>(1));
  std::vector<RowReader> readers;
  readers.emplace_back(plan, times, values);
  RowReader& reader = readers.front();
  std::unordered_map<std::string, std::size_t, Hash, std::equal_to<>> places;
  Row row;
  std::size_t taken = 0, seen = 0;
  LongChannel* last = nullptr;
  std::string time_before;  // stands once for the rows of one scan
  const int time_column = plan.clocks.front().column;
  const double length = std::max(1.0, static_cast<double>(rows.text().size()));
  rows.seek(first);
  while (rows.next(row)) {
    if (++seen % 16384 == 0 && progress &&
        !progress(std::min(1.0, static_cast<double>(rows.position().offset) / length), taken)) {
      return Error{ErrorCode::kCancelled, "reading was stopped", {file, 0, 0}, "", ""};
    }
    const auto name = cell_at(row, name_column);
    if (time_column >= 0 && static_cast<std::size_t>(time_column) < row.cells.size()) {
      auto& cell = row.cells[static_cast<std::size_t>(time_column)];
      if (!cell.empty()) {
        time_before.assign(cell);
      } else if (!name.empty() && !row.blank()) {
        cell = time_before;
      }
    }
    if (name.empty() || !reader.take(row, 0)) {
      if (name.empty() && !row.blank()) ++reader.account.skipped;
      continue;
    }
    if (++taken > most_numbers) {
      return Error{ErrorCode::kParse,
                   fmt::format("found more than {} readings, expected a log below the cap on its size", most_numbers),
                   {file, 0, 0},
                   fmt::format("more than {} readings", most_numbers),
                   "a log below the cap on its size"};
    }
    auto place = places.find(name);
    if (place == places.end()) {
      if (places.size() >= kMostChannels) {
        return Error{ErrorCode::kParse,
                     fmt::format("found more than {} names of channels", kMostChannels),
                     {file, static_cast<int>(row.line), name_column + 1},
                     std::string{name},
                     "the name of a channel"};
      }
      place = places.emplace(std::string{name}, result.channels.size()).first;
      result.channels.push_back({std::string{name}, std::string{cell_at(row, unit_column)}, {}, {}, {}});
    }
    LongChannel& channel = result.channels[place->second];
    last = &channel;
    channel.times.push_back(times[0][0]);
    channel.values.push_back(values[0][0]);
    if (plan.keep_lines) channel.lines.push_back(row.line);
  }
  std::vector<RowReader::Account> accounts{std::move(reader.account)};
  bool drop_last = false;
  if (auto error = settle(accounts, taken, plan, file, result.account, drop_last)) return *error;
  if (drop_last && last != nullptr) {
    last->times.pop_back();
    last->values.pop_back();
    if (plan.keep_lines) last->lines.pop_back();
    --taken;
  }
  result.account.rows = taken;
  return result;
}

}  // namespace ovenwright::log
