#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "core/units/result.h"

namespace ovenwright::files {

/// Changes the text of a TOML file at the places of its values, so that comments, order and spelling of all else stay.
/// Every change is checked by parsing; one that cannot be made in place is an error and leaves the text as it was.
class TomlEdit {
 public:
  /// Errors: kParse where the text is no TOML.
  static Result<TomlEdit> open(std::string file, std::string text);

  /// Which table a key stands in: the root (`name` empty), `[name]`, or the index-th `[[name]]` from 0.
  struct Table {
    std::string name;
    std::size_t index = 0;
  };
  /// Puts `value` (TOML text) in the place of the key's value, and of a list of as many plain values only those that
  /// differ, so that what stands between them stays; a key that is absent is added after the table's last, a
  /// table that is absent at the end of the file. Errors: kBadArgument.
  Result<bool> set(const Table& table, const std::string& key, const std::string& value);
  /// Takes the key out with its line; a comment beside it stays. False where the key is absent.
  Result<bool> erase(const Table& table, const std::string& key);
  /// Takes out the index-th [[name]], from its header to the next. False where there is none.
  Result<bool> erase_table(const Table& table);
  /// Adds a block of whole lines at the end of the file, after a blank line.
  Result<bool> append(const std::string& block);

  const std::string& text() const { return text_; }

 private:
  TomlEdit(std::string file, std::string text) : file_(std::move(file)), text_(std::move(text)) {}
  Result<bool> replace(std::size_t begin, std::size_t end, std::string_view with);

  std::string file_, text_;
};

}  // namespace ovenwright::files
