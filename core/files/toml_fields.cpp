#include "core/files/toml_fields.h"

#include <algorithm>

#include "core/files/toml.h"

namespace ovenwright::files {

void TomlFields::text(const char* key, const std::string& value) {
  if (!value.empty()) put(key, toml_text(value));
}

void TomlFields::text(const char* key, const std::optional<std::string>& value) {
  if (value) put(key, toml_text(*value));
}

void TomlFields::number(const char* key, const std::optional<double>& value) {
  if (value) put(key, toml_number(*value));
}

void TomlFields::numbers(const char* key, const std::vector<double>& values) {
  if (values.empty()) return;
  std::string list;
  for (const double value : values) list += (list.empty() ? "" : ", ") + toml_number(value);
  put(key, "[" + list + "]");
}

const std::string* TomlFields::find(const std::string& key) const {
  const auto found = std::ranges::find(fields_, key, &std::pair<std::string, std::string>::first);
  return found == fields_.end() ? nullptr : &found->second;
}

std::string TomlFields::lines() const {
  std::string text;
  for (const auto& [key, value] : fields_) text += key + " = " + value + "\n";
  return text;
}

bool change_fields(TomlEdit& edit, const TomlEdit::Table& table, const TomlFields& before, const TomlFields& after) {
  for (const auto& [key, value] : after) {
    const std::string* old = before.find(key);
    if ((old == nullptr || *old != value) && !edit.set(table, key, value)) return false;
  }
  for (const auto& [key, value] : before) {
    if (after.find(key) == nullptr && !edit.erase(table, key)) return false;
  }
  return true;
}

}  // namespace ovenwright::files
