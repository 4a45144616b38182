#include "core/log/json_tables.h"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <nlohmann/json.hpp>
#include <string>
#include <unordered_map>

namespace ovenwright::log {
namespace {

using Json = nlohmann::ordered_json;

constexpr std::size_t kMostBytes = std::size_t{64} << 20;
constexpr std::size_t kMostColumns = 4096;
constexpr int kDeepest = 6;

std::string_view without_mark(std::string_view bytes) {
  if (bytes.starts_with("\xEF\xBB\xBF")) bytes.remove_prefix(3);
  const auto first = bytes.find_first_not_of(" \t\r\n");
  return first == std::string_view::npos ? std::string_view{} : bytes.substr(first);
}

Error no_json(std::string found, std::string expected, std::size_t line) {
  auto message = fmt::format("found {}, expected {}", found, expected);
  return {
      ErrorCode::kParse, std::move(message), {"", static_cast<int>(line), 0}, std::move(found), std::move(expected)};
}

bool scalar(const Json& value) { return !value.is_object() && !value.is_array(); }

bool scalars(const Json& value) {
  return value.is_array() && !value.empty() && std::all_of(value.begin(), value.end(), scalar);
}

bool texts(const Json& value) {
  return value.is_array() && !value.empty() &&
         std::all_of(value.begin(), value.end(), [](const Json& v) { return v.is_string(); });
}

std::string text_of(const Json& value) {
  if (value.is_string()) return value.get<std::string>();
  if (value.is_null()) return {};
  if (value.is_boolean()) return value.get<bool>() ? "TRUE" : "FALSE";
  return value.dump();
}

/// The columns of a table whose records need not name the same things in the same order.
class Columns {
 public:
  explicit Columns(Grid& grid) : grid_(grid) { grid_.rows.emplace_back(); }

  void add_record(const Json& record) {
    grid_.rows.emplace_back();
    add(record, "", 0);
  }
  bool too_many() const { return grid_.rows.front().size() > kMostColumns; }

 private:
  void add(const Json& value, const std::string& name, int depth) {
    if (scalar(value)) return put(name, text_of(value));
    if (depth >= kDeepest) return;
    std::size_t number = 0;
    for (const auto& item : value.items()) {
      const std::string own = value.is_array() ? std::to_string(++number) : item.key();
      // A group is named only where its parts have no name: {"temps": [25.1, 25.3]}.
      const bool named = !value.is_array() && !item.value().is_array();
      add(item.value(), named || name.empty() ? own : name + " " + own, depth + 1);
      if (too_many()) return;
    }
  }

  void put(const std::string& name, std::string text) {
    const auto [place, fresh] = places_.emplace(name, places_.size());
    if (fresh) grid_.rows.front().push_back(name);
    auto& row = grid_.rows.back();
    if (row.size() <= place->second) row.resize(place->second + 1);
    row[place->second] = std::move(text);
  }

  Grid& grid_;
  std::unordered_map<std::string, std::size_t> places_;
};

/// A part of the document that may be the table.
struct Found {
  enum class Kind { kNothing, kRecords, kRows, kColumns, kChannels, kPairs } kind = Kind::kNothing;
  const Json* value = nullptr;
  const Json* parent = nullptr;
  std::size_t cells = 0;
};

/// [[0, 25.1], [0.5, 25.3], …]
bool pairs(const Json& value) {
  return value.is_array() && value.size() > 1 &&
         std::all_of(value.begin(), value.end(), [](const Json& v) { return scalars(v) && v.size() == 2; });
}

/// The member of a channel that is a list of times and values; nullptr without.
const Json* pairs_of(const Json& channel) {
  if (!channel.is_object()) return nullptr;
  for (const auto& item : channel.items()) {
    if (pairs(item.value())) return &item.value();
  }
  return nullptr;
}

/// The member of a channel that holds its values: its longest array.
const Json* longest_array(const Json& channel, std::string_view other_than = {}) {
  const Json* longest = nullptr;
  if (!channel.is_object()) return nullptr;
  for (const auto& item : channel.items()) {
    if (item.key() == other_than || !scalars(item.value())) continue;
    if (longest == nullptr || item.value().size() > longest->size()) longest = &item.value();
  }
  return longest;
}

bool called_time(std::string key) {
  std::transform(key.begin(), key.end(), key.begin(),
                 [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c; });
  return key.starts_with("t_") || key == "t" || key == "x" || key.find("time") != std::string::npos ||
         key.find("zeit") != std::string::npos || key == "s" || key == "seconds";
}

void look_for_table(const Json& value, const Json* parent, int depth, Found& best) {
  if (depth > kDeepest || scalar(value)) return;
  using Kind = Found::Kind;
  Found here{Kind::kNothing, &value, parent, 0};
  if (value.is_array()) {
    const bool objects =
        !value.empty() && std::all_of(value.begin(), value.end(), [](const Json& v) { return v.is_object(); });
    const bool arrays = !value.empty() && std::all_of(value.begin(), value.end(), scalars);
    if (objects) {
      const auto list_of = [](const Json& v) { return longest_array(v) != nullptr ? longest_array(v) : pairs_of(v); };
      const bool channels = std::all_of(value.begin(), value.end(), [&](const Json& v) {
        const Json* list = list_of(v);
        return list != nullptr && list->size() > 1;
      });
      std::size_t cells = 0;
      for (const Json& one : value) cells += channels ? list_of(one)->size() : one.size();
      const bool more_than_channels = !channels || cells > 4 * value.size();
      here.kind = channels && more_than_channels ? Kind::kChannels : Kind::kRecords;
      here.cells = cells;
    } else if (arrays) {
      here.kind = Kind::kRows;
      for (const Json& one : value) here.cells += one.size();
    }
  } else {
    std::size_t lists = 0, lists_of_pairs = 0;
    for (const auto& item : value.items()) {
      if (pairs(item.value())) {
        ++lists_of_pairs;
        here.cells += 2 * item.value().size();
      }
      if (!scalars(item.value()) || item.value().size() < 2) continue;
      ++lists;
      here.cells += item.value().size();
    }
    if (lists >= 2) here.kind = Kind::kColumns;
    if (lists_of_pairs >= 2 && lists_of_pairs > lists) here.kind = Kind::kPairs;
  }
  if (here.kind != Found::Kind::kNothing && here.cells > best.cells) best = here;
  // What a table is made of is none of its own.
  if (here.kind == Kind::kRecords || here.kind == Kind::kRows || here.kind == Kind::kChannels ||
      here.kind == Kind::kPairs)
    return;
  for (const auto& item : value.items()) look_for_table(item.value(), &value, depth + 1, best);
}

/// Single values outside of the table, as lines of a key and a value.
void keep_keys(const Json& value, const Json* table, int depth, Grid& grid) {
  constexpr std::size_t kMostLines = 200;
  if (&value == table || !value.is_object() || depth > kDeepest) return;
  for (const auto& item : value.items()) {
    if (grid.rows.size() >= kMostLines) return;
    if (scalar(item.value()))
      grid.rows.push_back({item.key(), text_of(item.value())});
    else
      keep_keys(item.value(), table, depth + 1, grid);
  }
}

void put_column(Grid& grid, std::size_t first_row, std::size_t column, const std::string& name, const Json& list) {
  const auto put = [&](std::size_t row, std::string text) {
    if (grid.rows.size() <= row) grid.rows.resize(row + 1);
    if (grid.rows[row].size() <= column) grid.rows[row].resize(column + 1);
    grid.rows[row][column] = std::move(text);
  };
  put(first_row, name);
  for (std::size_t i = 0; i < list.size(); ++i) put(first_row + 1 + i, text_of(list[i]));
}

/// A clock and its readings beside each other.
void put_pairs(Grid& grid, std::size_t first_row, std::size_t& column, const std::string& name, const Json& list) {
  Json times = Json::array(), values = Json::array();
  for (const Json& pair : list) {
    times.push_back(pair[0]);
    values.push_back(pair[1]);
  }
  put_column(grid, first_row, column++, "time", times);
  put_column(grid, first_row, column++, name, values);
}

std::string name_of(const Json& channel, std::size_t number) {
  for (const char* key : {"name", "label", "channel", "title", "id", "Name", "Label", "Channel"}) {
    if (const auto found = channel.find(key); found != channel.end() && scalar(*found) && !found->is_null())
      return text_of(*found);
  }
  return fmt::format("channel {}", number);
}

Grid grid_of(const Json& document, const Found& found) {
  using Kind = Found::Kind;
  Grid grid;
  const bool beside_lists = found.kind == Kind::kColumns || found.kind == Kind::kPairs;
  keep_keys(document, beside_lists ? nullptr : found.value, 0, grid);
  const std::size_t first = grid.rows.size();
  switch (found.kind) {
    case Kind::kRecords: {
      Grid records;
      Columns columns(records);
      for (const Json& record : *found.value) columns.add_record(record);
      std::move(records.rows.begin(), records.rows.end(), std::back_inserter(grid.rows));
      break;
    }
    case Kind::kRows: {
      const std::size_t width = found.value->back().size();
      if (found.parent != nullptr && found.parent->is_object()) {
        for (const auto& item : found.parent->items()) {
          if (!texts(item.value()) || item.value().size() != width) continue;
          grid.rows.emplace_back();
          for (const Json& name : item.value()) grid.rows.back().push_back(text_of(name));
        }
      }
      for (const Json& row : *found.value) {
        grid.rows.emplace_back();
        for (const Json& value : row) grid.rows.back().push_back(text_of(value));
      }
      break;
    }
    case Kind::kColumns: {
      std::size_t column = 0;
      for (const auto& item : found.value->items()) {
        if (scalars(item.value()) && item.value().size() > 1)
          put_column(grid, first, column++, item.key(), item.value());
      }
      break;
    }
    case Kind::kChannels: {
      std::size_t column = 0, number = 0;
      // One clock for all beside the channels, or one in each of them.
      if (found.parent != nullptr && found.parent->is_object()) {
        for (const auto& item : found.parent->items()) {
          if (scalars(item.value()) && called_time(item.key()))
            put_column(grid, first, column++, item.key(), item.value());
        }
      }
      for (const Json& channel : *found.value) {
        ++number;
        std::string time;
        for (const auto& item : channel.items()) {
          if (scalars(item.value()) && called_time(item.key())) time = item.key();
        }
        const auto unit = channel.find("unit");
        const bool stated = unit != channel.end() && unit->is_string();
        const std::string name = name_of(channel, number) + (stated ? " (" + unit->get<std::string>() + ")" : "");
        if (const Json* list = pairs_of(channel); list != nullptr && longest_array(channel) == nullptr) {
          put_pairs(grid, first, column, name, *list);
          continue;
        }
        if (!time.empty()) put_column(grid, first, column++, time, channel[time]);
        if (const Json* values = longest_array(channel, time)) put_column(grid, first, column++, name, *values);
      }
      break;
    }
    case Kind::kPairs: {
      std::size_t column = 0;
      for (const auto& item : found.value->items()) {
        if (pairs(item.value())) put_pairs(grid, first, column, item.key(), item.value());
      }
      break;
    }
    case Kind::kNothing:
      break;
  }
  return grid;
}

std::size_t line_at(std::string_view text, std::size_t offset) {
  return 1 + static_cast<std::size_t>(std::count(
                 text.begin(), text.begin() + static_cast<std::ptrdiff_t>(std::min(offset, text.size())), '\n'));
}

/// One record on every line.
Result<Grid> lines_of_records(std::string_view text, std::size_t first_line) {
  Grid grid;
  grid.first_line = first_line - 1;
  Columns columns(grid);
  std::size_t line = first_line;
  while (!text.empty()) {
    const auto end = text.find('\n');
    const auto one = text.substr(0, end);
    text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
    if (one.find_first_not_of(" \t\r") == std::string_view::npos) {
      grid.rows.emplace_back();
    } else {
      const Json record = Json::parse(one, nullptr, false);
      // The last line may be cut off.
      if (record.is_discarded() && text.empty() && grid.rows.size() > 2) break;
      if (record.is_discarded()) return no_json("a line that is no JSON", "one record a line", line);
      columns.add_record(record);
    }
    if (columns.too_many())
      return no_json("too many names in the records", fmt::format("at most {}", kMostColumns), line);
    ++line;
  }
  return grid;
}

}  // namespace

bool is_json(std::string_view bytes) {
  const auto text = without_mark(bytes);
  if (text.size() < 2 || (text.front() != '{' && text.front() != '[')) return false;
  const auto next = text.find_first_not_of(" \t\r\n", 1);
  if (next == std::string_view::npos) return false;
  const char c = text[next];
  if (text.front() == '{') return c == '"';
  if (c != '[') return c == '{';
  // "[[Section]]" is none.
  const auto inner = text.find_first_not_of(" \t\r\n", next + 1);
  return inner != std::string_view::npos &&
         std::string_view{"0123456789-\"n"}.find(text[inner]) != std::string_view::npos;
}

Result<Grid> read_json(std::string_view bytes, UnpackBudget& budget) {
  const auto text = without_mark(bytes);
  if (text.size() > kMostBytes || !budget.take(text.size()))
    return no_json(fmt::format("a JSON document of {} MiB", text.size() >> 20),
                   fmt::format("at most {} MiB", kMostBytes >> 20), 0);
  const std::size_t skipped = static_cast<std::size_t>(text.data() - bytes.data());
  try {
    const Json document = Json::parse(text);
    Found found;
    look_for_table(document, nullptr, 0, found);
    if (found.kind == Found::Kind::kNothing)
      return no_json("a JSON document without a table", "records, rows or columns of readings", 1);
    Grid grid = grid_of(document, found);
    const bool wide =
        std::any_of(grid.rows.begin(), grid.rows.end(), [](const auto& row) { return row.size() > 16 * kMostColumns; });
    if (wide) return no_json("too many cells in a row", fmt::format("at most {}", 16 * kMostColumns), 0);
    return grid;
  } catch (const Json::parse_error& error) {
    const auto first_end = text.find('\n');
    const bool by_lines = first_end != std::string_view::npos && Json::accept(text.substr(0, first_end));
    const std::size_t first_line = line_at(bytes, skipped);
    if (by_lines) return lines_of_records(text, first_line);
    return no_json("JSON that is damaged or cut off", "a whole JSON document", line_at(bytes, skipped + error.byte));
  } catch (const Json::exception&) {
    return no_json("JSON that cannot be read", "a JSON document of readings", 0);
  }
}

}  // namespace ovenwright::log
