#include "core/files/toml_edit.h"

#include <toml++/toml.h>

#include <algorithm>
#include <optional>
#include <utility>
#include <vector>

#include "core/files/toml_source.h"

namespace ovenwright::files {
namespace {

std::optional<toml::table> parsed(const std::string& file, const std::string& text, Error* why = nullptr) {
  try {
    return toml::parse(std::string_view{text}, std::string_view{file});
  } catch (const toml::parse_error& error) {
    if (why != nullptr) {
      const auto& begin = error.source().begin;
      *why = {ErrorCode::kParse,
              "no valid TOML: " + std::string{error.description()},
              {file, static_cast<int>(begin.line), static_cast<int>(begin.column)},
              "",
              "TOML"};
    }
  }
  return std::nullopt;
}

const toml::table* find_table(const toml::table& root, const TomlEdit::Table& table) {
  if (table.name.empty()) return &root;
  const toml::node* node = root.get(table.name);
  if (node == nullptr) return nullptr;
  if (const auto* array = node->as_array()) node = array->get(table.index);
  return node == nullptr ? nullptr : node->as_table();
}

std::size_t begin_of(std::string_view text, const toml::source_region& source) {
  return offset_of(text, source.begin.line, source.begin.column);
}

/// One past the last value that stands under the table's own keys; 0 where it has none. Tables with a header of their
/// own do not count.
std::size_t last_value_end(std::string_view text, const toml::table& table) {
  std::size_t last = 0;
  for (const auto& [key, node] : table) {
    const toml::node* first = &node;
    if (const auto* array = node.as_array(); array != nullptr && node.is_array_of_tables()) first = array->get(0);
    const std::size_t begin = begin_of(text, first->source());
    if (first->is_table()) {
      if (text[begin] == '[') continue;
      if (text[begin] != '{') {  // a table that dotted keys made
        last = std::max(last, last_value_end(text, *first->as_table()));
        continue;
      }
    }
    const std::size_t own = begin_of(text, node.source());
    last = std::max(last, value_end(text, own));
  }
  return last;
}

std::size_t line_begin(std::string_view text, std::size_t at) {
  const std::size_t newline = at == 0 ? std::string_view::npos : text.rfind('\n', at - 1);
  return newline == std::string_view::npos ? 0 : newline + 1;
}

/// The newline that ends the line, or the text's size.
std::size_t line_end(std::string_view text, std::size_t at) { return std::min(text.find('\n', at), text.size()); }

std::string newline_of(std::string_view text) { return text.find("\r\n") != std::string_view::npos ? "\r\n" : "\n"; }

std::string spelt_key(const std::string& key) {
  const bool bare = !key.empty() && std::ranges::all_of(key, [](char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_' || c == '-';
  });
  return bare ? key : "'" + key + "'";
}

/// The elements of a list that are replaced one by one, so that comments between them stay: each with its value's TOML
/// text. Absent unless both are lists of as many plain values.
std::optional<std::vector<std::pair<const toml::node*, std::string>>> changed_elements(const toml::node& old,
                                                                                       const std::string& value) {
  const auto parsed_value = parsed({}, "list = " + value);
  const auto* before = old.as_array();
  const auto* after = parsed_value ? parsed_value->get("list")->as_array() : nullptr;
  if (before == nullptr || after == nullptr || before->size() != after->size()) return std::nullopt;
  std::vector<std::pair<const toml::node*, std::string>> changed;
  const std::string line = "list = " + value;
  for (std::size_t i = 0; i < before->size(); ++i) {
    const auto& from = *before->get(i);
    const auto& to = *after->get(i);
    if (!from.is_value() || !to.is_value()) return std::nullopt;
    const bool same_number = from.is_number() && to.is_number() && from.value<double>() == to.value<double>();
    if (same_number || (from.is_string() && to.is_string() && from.value<std::string>() == to.value<std::string>()))
      continue;
    const std::size_t begin = begin_of(line, to.source());
    changed.emplace_back(&from, line.substr(begin, value_end(line, begin) - begin));
  }
  return changed;
}

Error cannot(const std::string& file, const std::string& what) {
  return {ErrorCode::kBadArgument, what + " cannot be changed in place", {file, 0, 0}, "", ""};
}

}  // namespace

Result<TomlEdit> TomlEdit::open(std::string file, std::string text) {
  Error why;
  if (!parsed(file, text, &why)) return why;
  return TomlEdit{std::move(file), std::move(text)};
}

Result<bool> TomlEdit::replace(std::size_t begin, std::size_t end, std::string_view with) {
  std::string changed = text_.substr(0, begin) + std::string{with} + text_.substr(end);
  if (!parsed(file_, changed)) return cannot(file_, "the text");
  text_ = std::move(changed);
  return true;
}

Result<bool> TomlEdit::set(const Table& table, const std::string& key, const std::string& value) {
  const auto root = parsed(file_, text_);
  const std::string newline = newline_of(text_);
  const std::string line = spelt_key(key) + " = " + value;
  const toml::table* found = find_table(*root, table);
  if (found == nullptr) {
    if (root->contains(table.name)) return cannot(file_, table.name);
    return append("[" + table.name + "]" + newline + line + newline);
  }
  if (const toml::node* node = found->get(key)) {
    if (const auto elements = changed_elements(*node, value)) {
      std::string changed = text_;
      for (auto element = elements->rbegin(); element != elements->rend(); ++element) {  // the last first
        const std::size_t begin = begin_of(text_, element->first->source());
        changed.replace(begin, value_end(text_, begin) - begin, element->second);
      }
      return replace(0, text_.size(), changed);
    }
    const std::size_t begin = begin_of(text_, node->source());
    return replace(begin, value_end(text_, begin), value);
  }
  const std::size_t begin = table.name.empty() ? 0 : begin_of(text_, found->source());
  if (!table.name.empty() && text_[begin] == '{') {
    std::size_t end = value_end(text_, begin) - 1;
    while (text_[end - 1] == ' ') --end;
    return replace(end, end, (found->empty() ? " " : ", ") + line);
  }
  const std::size_t last = last_value_end(text_, *found);
  const bool dotted = !table.name.empty() && text_[begin] != '[';
  if (last == 0 && table.name.empty()) return replace(0, 0, line + newline);
  std::size_t at = line_end(text_, std::max(last, begin));
  if (at > 0 && text_[at - 1] == '\r') --at;
  return replace(at, at, newline + (dotted ? spelt_key(table.name) + "." : "") + line);
}

Result<bool> TomlEdit::erase(const Table& table, const std::string& key) {
  const auto root = parsed(file_, text_);
  const toml::table* found = find_table(*root, table);
  const auto entry = found == nullptr ? toml::table::const_iterator{} : found->find(key);
  if (found == nullptr || entry == found->cend()) return false;
  const std::size_t key_begin = begin_of(text_, entry->first.source());
  std::size_t end = value_end(text_, begin_of(text_, entry->second.source()));
  const std::size_t table_begin = table.name.empty() ? 0 : begin_of(text_, found->source());
  if (!table.name.empty() && text_[table_begin] == '{') {
    const std::size_t before = text_.find_last_not_of(" \t", key_begin - 1);
    if (text_[before] == ',') return replace(before, end, "");
    const std::size_t after = text_.find_first_not_of(" \t", end);
    if (text_[after] == ',') end = text_.find_first_not_of(" \t", after + 1);
    return replace(key_begin, end, "");
  }
  const std::size_t begin = line_begin(text_, key_begin);
  const std::size_t rest = text_.find_first_not_of(" \t", end);
  if (rest != std::string::npos && text_[rest] == '#') return replace(begin, rest, "");
  return replace(begin, std::min(line_end(text_, end) + 1, text_.size()), "");
}

Result<bool> TomlEdit::erase_table(const Table& table) {
  const auto root = parsed(file_, text_);
  const toml::table* found = find_table(*root, table);
  if (table.name.empty() || found == nullptr) return false;
  const std::size_t begin = begin_of(text_, found->source());
  if (text_[begin] != '[') return cannot(file_, table.name);
  // The next header begins a line; the table's own values may hold '[' at a line's begin, so look behind them.
  std::size_t end = line_end(text_, std::max(begin, last_value_end(text_, *found)));
  while (end < text_.size()) {
    const std::size_t next = text_.find_first_not_of(" \t", end + 1);
    if (next == std::string::npos || text_[next] == '[') break;
    end = line_end(text_, next);
  }
  return replace(begin, std::min(end + 1, text_.size()), "");
}

Result<bool> TomlEdit::append(const std::string& block) {
  const std::string newline = newline_of(text_);
  std::string between;
  if (!text_.empty() && text_.back() != '\n') between = newline;
  if (!text_.empty()) between += newline;
  return replace(text_.size(), text_.size(), between + block);
}

}  // namespace ovenwright::files
