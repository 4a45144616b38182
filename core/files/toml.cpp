#include "core/files/toml.h"

#include <toml++/toml.h>

#include <algorithm>
#include <charconv>
#include <cmath>
#include <map>
#include <tuple>

#include "core/files/nearest.h"
#include "core/files/toml_slips.h"
#include "core/files/toml_source.h"

namespace ovenwright::files {
namespace {

const toml::table* as_table(const void* node) { return static_cast<const toml::table*>(node); }
const toml::node* as_node(const void* node) { return static_cast<const toml::node*>(node); }

Place place_of(const std::string& file, const toml::source_region& source) {
  return {file, static_cast<int>(source.begin.line), static_cast<int>(source.begin.column)};
}

std::string in_quotes(std::string_view key) { return "\"" + std::string{key} + "\""; }

/// What stands in a message: one line, not longer than a message bears.
std::string shortened(std::string_view written) {
  constexpr std::size_t kMost = 60;
  std::string text{written.substr(0, written.find('\n'))};
  if (text.size() < written.size() || text.size() > kMost) {
    text.resize(std::min(text.size(), kMost));
    while (!text.empty() && (static_cast<unsigned char>(text.back()) & 0xC0U) == 0x80U) text.pop_back();
    if (!text.empty() && static_cast<unsigned char>(text.back()) >= 0xC0U) text.pop_back();
    text += "…";
  }
  return text;
}

}  // namespace

struct TomlTable::State {
  struct Asked {
    std::string title;
    std::vector<std::string> keys;
  };
  std::string file;
  std::string text;
  toml::table root;
  std::vector<Error> errors;
  std::map<const toml::table*, Asked> asked;

  const toml::node* get(const void* table, std::string_view key, const std::string& title) {
    if (table == nullptr) return nullptr;
    Asked& entry = asked[as_table(table)];
    entry.title = title;
    if (std::ranges::find(entry.keys, key) == entry.keys.end()) entry.keys.emplace_back(key);
    return as_table(table)->get(key);
  }

  std::string written(const toml::node& node) const {
    const auto& begin = node.source().begin;
    if (!begin) return {};
    const std::size_t from = offset_of(text, begin.line, begin.column);
    return text.substr(from, value_end(text, from) - from);
  }
};

bool TomlTable::has(std::string_view key) const { return node_ != nullptr && as_table(node_)->contains(key); }

void TomlTable::wrong(std::string_view key, const void* node, std::string_view expected) {
  const std::string found = shortened(state_->written(*as_node(node)));
  state_->errors.push_back({ErrorCode::kParse,
                            "found " + found + " for " + in_quotes(key) + ", expected " + std::string{expected},
                            place_of(state_->file, as_node(node)->source()), found, std::string{expected}});
}

std::optional<double> TomlTable::checked(std::string_view key, const void* node, const Range& range) {
  const auto* value = as_node(node);
  if (!value->is_number()) {
    wrong(key, node, range.words);
    return std::nullopt;
  }
  const double number = *value->value<double>();
  const bool inside = std::isfinite(number) && number >= range.lowest && number <= range.highest &&
                      !(range.above_lowest && number == range.lowest);
  if (!inside) {
    wrong(key, node, range.words);
    return std::nullopt;
  }
  return number;
}

std::optional<std::string> TomlTable::text(std::string_view key) {
  const toml::node* node = state_->get(node_, key, title_);
  if (node == nullptr) return std::nullopt;
  if (!node->is_string()) {
    wrong(key, node, "a text in quotes");
    return std::nullopt;
  }
  return node->as_string()->get();
}

std::optional<double> TomlTable::number(std::string_view key, const Range& range) {
  const toml::node* node = state_->get(node_, key, title_);
  return node == nullptr ? std::nullopt : checked(key, node, range);
}

std::optional<int> TomlTable::integer(std::string_view key, int lowest, int highest) {
  const toml::node* node = state_->get(node_, key, title_);
  if (node == nullptr) return std::nullopt;
  const auto* integer = node->as_integer();
  if (integer == nullptr || integer->get() < lowest || integer->get() > highest) {
    const bool open_ended = highest == std::numeric_limits<int>::max();
    wrong(key, node,
          open_ended ? "a whole number of at least " + std::to_string(lowest)
                     : "a whole number from " + std::to_string(lowest) + " to " + std::to_string(highest));
    return std::nullopt;
  }
  return static_cast<int>(integer->get());
}

std::optional<bool> TomlTable::boolean(std::string_view key) {
  const toml::node* node = state_->get(node_, key, title_);
  if (node == nullptr) return std::nullopt;
  if (!node->is_boolean()) {
    wrong(key, node, "true or false");
    return std::nullopt;
  }
  return node->as_boolean()->get();
}

std::optional<std::variant<double, std::string>> TomlTable::number_or_text(std::string_view key) {
  const toml::node* node = state_->get(node_, key, title_);
  if (node == nullptr) return std::nullopt;
  if (node->is_string()) return node->as_string()->get();
  if (const auto number = checked(key, node, Range{.words = "a number or a text in quotes"})) return *number;
  return std::nullopt;
}

std::optional<std::vector<double>> TomlTable::numbers(std::string_view key, const Range& range) {
  const toml::node* node = state_->get(node_, key, title_);
  if (node == nullptr) return std::nullopt;
  if (!node->is_array()) {
    wrong(key, node, "an array of numbers");
    return std::nullopt;
  }
  std::vector<double> values;
  for (const toml::node& element : *node->as_array()) {
    const auto value = checked(key, &element, range);
    if (!value) return std::nullopt;
    values.push_back(*value);
  }
  return values;
}

std::optional<std::array<double, 2>> TomlTable::interval(std::string_view key, const Range& range) {
  const auto values = numbers(key, range);
  if (!values) return std::nullopt;
  if (values->size() != 2 || !((*values)[0] < (*values)[1])) {
    wrong(key, as_table(node_)->get(key), "two numbers, the lower one first");
    return std::nullopt;
  }
  return std::array<double, 2>{(*values)[0], (*values)[1]};
}

std::optional<std::vector<std::string>> TomlTable::texts(std::string_view key) {
  const toml::node* node = state_->get(node_, key, title_);
  if (node == nullptr) return std::nullopt;
  if (!node->is_array()) {
    wrong(key, node, "an array of texts");
    return std::nullopt;
  }
  std::vector<std::string> values;
  for (const toml::node& element : *node->as_array()) {
    if (!element.is_string()) {
      wrong(key, &element, "a text in quotes");
      return std::nullopt;
    }
    values.push_back(element.as_string()->get());
  }
  return values;
}

std::optional<std::string> TomlTable::one_of(std::string_view key, std::span<const std::string_view> words) {
  auto value = text(key);
  if (value && std::ranges::find(words, *value) == words.end()) {
    fail(key, "found " + in_quotes(*value) + " for " + in_quotes(key) + suggestion(*value, words), *value,
         listed(words));
    return std::nullopt;
  }
  return value;
}

std::optional<TomlTable> TomlTable::table(std::string_view key) {
  const toml::node* node = state_->get(node_, key, title_);
  if (node == nullptr) return std::nullopt;
  if (!node->is_table()) {
    wrong(key, node, "a table: [" + std::string{key} + "]");
    return std::nullopt;
  }
  TomlTable found{state_, node->as_table(), "[" + std::string{key} + "]"};
  state_->asked[node->as_table()].title = found.title_;
  return found;
}

std::vector<TomlTable> TomlTable::tables(std::string_view key) {
  const toml::node* node = state_->get(node_, key, title_);
  std::vector<TomlTable> found;
  if (node == nullptr) return found;
  const std::string title = "[[" + std::string{key} + "]]";
  if (!node->is_array_of_tables() && !(node->is_array() && node->as_array()->empty())) {
    wrong(key, node, "tables: " + title);
    return found;
  }
  for (const toml::node& element : *node->as_array()) {
    found.push_back(TomlTable{state_, element.as_table(), title});
    state_->asked[element.as_table()].title = title;
  }
  return found;
}

std::string_view TomlTable::type(std::string_view key) const {
  const toml::node* node = node_ == nullptr ? nullptr : as_table(node_)->get(key);
  if (node == nullptr) return {};
  if (node->is_string()) return "text";
  if (node->is_number()) return "number";
  return node->is_array() ? "array" : "other";
}

std::string TomlTable::needed_text(std::string_view key) {
  auto value = text(key);
  if (!has(key)) missing(key, "a text in quotes");
  return value.value_or("");
}

double TomlTable::needed_number(std::string_view key, const Range& range) {
  const auto value = number(key, range);
  if (!has(key)) missing(key, range.words);
  return value.value_or(0);
}

void TomlTable::missing(std::string_view key, std::string_view expected) {
  if (node_ == nullptr) return;
  state_->errors.push_back(
      {ErrorCode::kParse,
       "missing " + in_quotes(key) + (title_.empty() ? "" : " in " + title_) + ", expected " + std::string{expected},
       place(), "nothing", std::string{expected}});
}

void TomlTable::fail(std::string_view key, std::string message, std::string found, std::string expected) {
  state_->errors.push_back({ErrorCode::kParse, std::move(message), place(key), std::move(found), std::move(expected)});
}

std::string TomlTable::written(std::string_view key) const {
  const toml::node* node = node_ == nullptr ? nullptr : as_table(node_)->get(key);
  return node == nullptr ? "" : shortened(state_->written(*node));
}

Place TomlTable::place(std::string_view key) const {
  const toml::node* node = node_ == nullptr ? nullptr : as_table(node_)->get(key);
  return node == nullptr ? place() : place_of(state_->file, node->source());
}

Place TomlTable::place() const {
  if (node_ == nullptr || title_.empty()) return {state_->file, 1, 1};
  return place_of(state_->file, as_table(node_)->source());
}

Result<TomlFile> TomlFile::parse(const std::string& file, std::string_view text) {
  constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";
  if (text.starts_with(kByteOrderMark)) text.remove_prefix(kByteOrderMark.size());
  auto state = std::make_unique<TomlTable::State>();
  state->file = file;
  state->text = text;
  try {
    state->root = toml::parse(std::string_view{state->text}, std::string_view{file});
  } catch (const toml::parse_error& error) {
    return in_plain_words(error.description(), place_of(file, error.source()), state->text);
  } catch (const std::exception& error) {
    return Error{ErrorCode::kParse, std::string{"cannot be parsed: "} + error.what(), {file, 0, 0}, "", "TOML"};
  }
  return TomlFile{std::move(state)};
}

TomlFile::TomlFile(std::unique_ptr<TomlTable::State> state) : state_(std::move(state)) {}
TomlFile::TomlFile(TomlFile&&) noexcept = default;
TomlFile& TomlFile::operator=(TomlFile&&) noexcept = default;
TomlFile::~TomlFile() = default;

TomlTable TomlFile::root() { return {state_.get(), &state_->root, ""}; }

bool TomlFile::failed() const { return !state_->errors.empty(); }

std::optional<Error> TomlFile::finish() const {
  const auto by_place = [](const Error& a, const Error& b) {
    return std::tie(a.where.line, a.where.column) < std::tie(b.where.line, b.where.column);
  };
  std::vector<Error> unknown;
  for (const auto& [table, asked] : state_->asked) {
    const std::vector<std::string_view> known(asked.keys.begin(), asked.keys.end());
    for (const auto& [key, node] : *table) {
      if (std::ranges::find(known, key.str()) != known.end()) continue;
      const std::string name{key.str()};
      const std::string_view meant = nearest(name, known);
      const std::string where = asked.title.empty() ? "" : " in " + asked.title;
      unknown.push_back(
          {ErrorCode::kParse, "found the unknown key " + in_quotes(name) + where + suggestion(name, known),
           place_of(state_->file, key.source()), name, meant.empty() ? listed(known) : std::string{meant}});
    }
  }
  if (!unknown.empty()) return *std::ranges::min_element(unknown, by_place);
  if (!state_->errors.empty()) return *std::ranges::min_element(state_->errors, by_place);
  return std::nullopt;
}

std::string toml_text(std::string_view text) {
  std::string quoted = "\"";
  for (const char c : text) {
    const auto byte = static_cast<unsigned char>(c);
    if (c == '"' || c == '\\') {
      quoted += '\\';
      quoted += c;
    } else if (c == '\n') {
      quoted += "\\n";
    } else if (c == '\t') {
      quoted += "\\t";
    } else if (byte < 0x20 || byte == 0x7F) {
      constexpr std::string_view kHex = "0123456789ABCDEF";
      quoted += "\\u00";
      quoted += kHex[byte >> 4];
      quoted += kHex[byte & 15];
    } else {
      quoted += c;
    }
  }
  return quoted + '"';
}

std::string toml_number(double number) {
  std::array<char, 32> buffer{};
  const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), number).ptr;
  return {buffer.data(), end};
}

}  // namespace ovenwright::files
