#include "core/log/json_tables.h"

#include <fmt/format.h>

#include <algorithm>
#include <nlohmann/json.hpp>
#include <string>
#include <unordered_map>
#include <utility>
#include <vector>

#include "core/log/grid_builder.h"

namespace ovenwright::log {
namespace {

using Json = nlohmann::ordered_json;

constexpr std::size_t kMostBytes = std::size_t{32} << 20;
constexpr std::size_t kMostColumns = 4096;
constexpr int kDeepest = 6;
constexpr std::size_t kMostLevels = 64;

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

Error too_many_names(std::size_t line) {
  return no_json("too many names in the records", fmt::format("at most {}", kMostColumns), line);
}

/// What would cost far more to parse than it is worth, by one look at the text: the names of an object are searched one
/// by one, and levels are parsed within each other.
std::optional<Error> too_much(std::string_view text, std::size_t first_line) {
  std::vector<std::size_t> names;  // by open level
  std::size_t line = first_line;
  for (std::size_t i = 0; i < text.size(); ++i) {
    switch (text[i]) {
      case '\n':
        ++line;
        break;
      case '"':
        for (++i; i < text.size() && text[i] != '"'; ++i) {
          if (text[i] == '\n') ++line;
          if (text[i] == '\\') ++i;
        }
        break;
      case '{':
      case '[':
        if (names.size() >= kMostLevels)
          return no_json("levels too deep within each other", fmt::format("at most {}", kMostLevels), line);
        names.push_back(0);
        break;
      case '}':
      case ']':
        if (!names.empty()) names.pop_back();
        break;
      case ':':
        if (!names.empty() && ++names.back() > kMostColumns) return too_many_names(line);
        break;
      default:
        break;
    }
  }
  return std::nullopt;
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

/// The grid that is being made; behind the first error nothing more is put.
struct Writer {
  explicit Writer(UnpackBudget& budget) : grid("JSON", budget) {}
  void put(std::size_t row, std::size_t column, std::string text) {
    if (!error) error = grid.place(row, column, std::move(text));
    rows = std::max(rows, row + 1);
  }
  Result<Grid> take() {
    if (error) return *error;
    Grid made = grid.take();
    made.name.clear();
    return made;
  }
  GridBuilder grid;
  std::optional<Error> error;
  std::size_t rows = 0;
};

/// Records of a table that need not name the same things in the same order, under a row of their names.
class Records {
 public:
  Records(Writer& out, std::size_t first_row) : out_(out), header_(first_row), row_(first_row) {}

  void add(const Json& record) {
    ++row_;
    add(record, "", "", 0);
  }
  void add_blank() { ++row_; }
  std::size_t count() const { return row_ - header_; }
  bool too_many() const { return places_.size() > kMostColumns; }

 private:
  void add(const Json& value, const std::string& path, const std::string& name, int depth) {
    if (scalar(value)) return put(path, name, text_of(value));
    if (depth >= kDeepest) return;
    std::size_t number = 0;
    for (const auto& item : value.items()) {
      const std::string own = value.is_array() ? std::to_string(++number) : item.key();
      // A group is named only where its parts have no name: {"temps": [25.1, 25.3]}.
      const bool named = !value.is_array() && !item.value().is_array();
      add(item.value(), path.empty() ? own : path + kWithin + own, named || name.empty() ? own : name + " " + own,
          depth + 1);
      if (too_many()) return;
    }
  }

  void put(const std::string& path, const std::string& name, std::string text) {
    const auto [at, fresh] = places_.emplace(path, places_.size());
    const std::size_t place = at->second;
    if (fresh) {
      // Parts of two groups that are called the same are called by their groups as well: {"tc1": {"value": 25}, …}.
      const auto [first, free] = names_.emplace(name, path);
      if (!free) out_.put(header_, places_.at(first->second), shown(first->second));
      out_.put(header_, place, free ? name : shown(path));
    }
    out_.put(row_, place, std::move(text));
  }

  static std::string shown(std::string path) {
    std::replace(path.begin(), path.end(), kWithin, ' ');
    return path;
  }

  static constexpr char kWithin = '\x1f';  // parts a path

  Writer& out_;
  const std::size_t header_;
  std::size_t row_;
  std::unordered_map<std::string, std::size_t> places_;  ///< by path
  std::unordered_map<std::string, std::string> names_;   ///< paths by the name that they have first
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
void keep_keys(const Json& value, const Json* table, int depth, Writer& out) {
  constexpr std::size_t kMostLines = 200;
  if (&value == table || !value.is_object() || depth > kDeepest) return;
  for (const auto& item : value.items()) {
    if (out.rows >= kMostLines) return;
    if (scalar(item.value())) {
      const std::size_t row = out.rows;
      out.put(row, 0, item.key());
      out.put(row, 1, text_of(item.value()));
    } else {
      keep_keys(item.value(), table, depth + 1, out);
    }
  }
}

void put_column(Writer& out, std::size_t first_row, std::size_t column, const std::string& name, const Json& list) {
  out.put(first_row, column, name);
  for (std::size_t i = 0; i < list.size() && !out.error; ++i) out.put(first_row + 1 + i, column, text_of(list[i]));
}

/// A clock and its readings beside each other.
void put_pairs(Writer& out, std::size_t first_row, std::size_t& column, const std::string& name, const Json& list) {
  out.put(first_row, column, "time");
  out.put(first_row, column + 1, name);
  for (std::size_t i = 0; i < list.size() && !out.error; ++i) {
    out.put(first_row + 1 + i, column, text_of(list[i][0]));
    out.put(first_row + 1 + i, column + 1, text_of(list[i][1]));
  }
  column += 2;
}

std::string name_of(const Json& channel, std::size_t number) {
  for (const char* key : {"name", "label", "channel", "title", "id", "Name", "Label", "Channel"}) {
    if (const auto found = channel.find(key); found != channel.end() && scalar(*found) && !found->is_null())
      return text_of(*found);
  }
  return fmt::format("channel {}", number);
}

void put_rows(Writer& out, std::size_t row, const Found& found) {
  const std::size_t width = found.value->back().size();
  const auto put = [&](const Json& cells, std::size_t first = 0) {
    for (std::size_t i = 0; i < cells.size() && !out.error; ++i) out.put(row, first + i, text_of(cells[i]));
    ++row;
  };
  // The names of the columns stand beside the rows.
  if (found.parent != nullptr && found.parent->is_object()) {
    for (const auto& item : found.parent->items()) {
      if (!texts(item.value())) continue;
      if (item.value().size() == width) put(item.value());
      // Names of the channels alone: the time stands before them.
      if (width > 2 && item.value().size() + 1 == width) {
        out.put(row, 0, "time");
        put(item.value(), 1);
      }
    }
  }
  for (const Json& cells : *found.value) put(cells);
}

void put_channels(Writer& out, std::size_t first, const Found& found) {
  std::size_t column = 0, number = 0;
  // One clock for all beside the channels, or one in each of them.
  if (found.parent != nullptr && found.parent->is_object()) {
    for (const auto& item : found.parent->items()) {
      if (scalars(item.value()) && called_time(item.key())) put_column(out, first, column++, item.key(), item.value());
    }
  }
  for (const Json& channel : *found.value) {
    ++number;
    const auto unit = channel.find("unit");
    const bool stated = unit != channel.end() && unit->is_string();
    const std::string name = name_of(channel, number) + (stated ? " (" + unit->get<std::string>() + ")" : "");
    if (const Json* list = pairs_of(channel); list != nullptr && longest_array(channel) == nullptr) {
      put_pairs(out, first, column, name, *list);
      continue;
    }
    std::string time;
    for (const auto& item : channel.items()) {
      if (scalars(item.value()) && called_time(item.key())) time = item.key();
    }
    if (!time.empty()) put_column(out, first, column++, time, channel[time]);
    if (const Json* values = longest_array(channel, time)) put_column(out, first, column++, name, *values);
  }
}

Result<Grid> grid_of(const Json& document, const Found& found, UnpackBudget& budget) {
  using Kind = Found::Kind;
  Writer out(budget);
  const bool beside_lists = found.kind == Kind::kColumns || found.kind == Kind::kPairs;
  keep_keys(document, beside_lists ? nullptr : found.value, 0, out);
  const std::size_t first = out.rows;
  std::size_t column = 0;
  switch (found.kind) {
    case Kind::kRecords: {
      Records records(out, first);
      for (const Json& record : *found.value) {
        records.add(record);
        if (records.too_many()) return too_many_names(0);
      }
      break;
    }
    case Kind::kRows:
      put_rows(out, first, found);
      break;
    case Kind::kColumns:
      for (const auto& item : found.value->items()) {
        if (scalars(item.value()) && item.value().size() > 1)
          put_column(out, first, column++, item.key(), item.value());
      }
      break;
    case Kind::kChannels:
      put_channels(out, first, found);
      break;
    case Kind::kPairs:
      for (const auto& item : found.value->items()) {
        if (pairs(item.value())) put_pairs(out, first, column, item.key(), item.value());
      }
      break;
    case Kind::kNothing:
      break;
  }
  return out.take();
}

std::size_t line_at(std::string_view text, std::size_t offset) {
  return 1 + static_cast<std::size_t>(std::count(
                 text.begin(), text.begin() + static_cast<std::ptrdiff_t>(std::min(offset, text.size())), '\n'));
}

/// One record on every line.
Result<Grid> lines_of_records(std::string_view text, std::size_t first_line, UnpackBudget& budget) {
  Writer out(budget);
  Records records(out, 0);
  for (std::size_t line = first_line; !text.empty() && !out.error; ++line) {
    const auto end = text.find('\n');
    const auto one = text.substr(0, end);
    text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
    if (one.find_first_not_of(" \t\r") == std::string_view::npos) {
      records.add_blank();
      continue;
    }
    const Json record = Json::parse(one, nullptr, false);
    // The last line may be cut off.
    if (record.is_discarded() && text.empty() && records.count() > 1) break;
    if (record.is_discarded()) return no_json("a line that is no JSON", "one record a line", line);
    records.add(record);
    if (records.too_many()) return too_many_names(line);
  }
  auto grid = out.take();
  if (grid) grid->first_line = first_line - 1;
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
  if (auto error = too_much(text, line_at(bytes, skipped))) return *error;
  try {
    const Json document = Json::parse(text);
    Found found;
    look_for_table(document, nullptr, 0, found);
    if (found.kind == Found::Kind::kNothing)
      return no_json("a JSON document without a table", "records, rows or columns of readings", 1);
    return grid_of(document, found, budget);
  } catch (const Json::parse_error& error) {
    const auto first_end = text.find('\n');
    const bool by_lines = first_end != std::string_view::npos && Json::accept(text.substr(0, first_end));
    const std::size_t first_line = line_at(bytes, skipped);
    if (by_lines) return lines_of_records(text, first_line, budget);
    return no_json("JSON that is damaged or cut off", "a whole JSON document", line_at(bytes, skipped + error.byte));
  } catch (const Json::exception&) {
    return no_json("JSON that cannot be read", "a JSON document of readings", 0);
  }
}

}  // namespace ovenwright::log
