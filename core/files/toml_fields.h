#pragma once
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/files/toml_edit.h"

namespace ovenwright::files {

/// The keys of one table with their values as TOML, in the order they are written. What is empty or absent is left out.
class TomlFields {
 public:
  void text(const char* key, const std::string& value);
  void text(const char* key, const std::optional<std::string>& value);
  void number(const char* key, const std::optional<double>& value);
  void numbers(const char* key, const std::vector<double>& values);
  void put(std::string key, std::string value) { fields_.emplace_back(std::move(key), std::move(value)); }

  const std::string* find(const std::string& key) const;
  std::string lines() const;  ///< "key = value", a line each
  bool empty() const { return fields_.empty(); }
  auto begin() const { return fields_.begin(); }
  auto end() const { return fields_.end(); }

 private:
  std::vector<std::pair<std::string, std::string>> fields_;
};

/// Brings one table's values from what they were to what they are to be. False where the text cannot be changed so.
bool change_fields(TomlEdit& edit, const TomlEdit::Table& table, const TomlFields& before, const TomlFields& after);

}  // namespace ovenwright::files
