#pragma once
#include <string>
#include <utility>
#include <vector>

#include "app/command/command_line.h"

namespace CLI {
class App;
class Option;
class Validator;
}  // namespace CLI

namespace ovenwright::command {

/// Options that several commands take, worded once.

/// --format, -o, --quiet, --version and --help.
void add_common(CLI::App& app, Common& common);
/// --table.
void add_table(CLI::App& app, std::optional<std::string>& table);
/// --leave-empty.
void add_leave_empty(CLI::App& app, bool& leave_empty);

/// --board, --oven, --recipe, --layout, --table, --leave-empty and --entry.
void add_setting(CLI::App& app, LogOptions& log);
/// The same and --run.
void add_log(CLI::App& app, LogOptions& log);
/// Each occurrence takes one value, so that a log may follow.
void repeatable(CLI::Option* option);
/// The parser takes "nan" and "inf" for numbers; this refuses them.
CLI::Validator finite();
/// A number above 0.
CLI::Validator above_zero();
/// A whole number from `least` to `most`; without `most` to as many as there may be.
CLI::Validator whole(int least, int most = 0);
/// One of these words; the parser's own list of them shows the program's numbers. They become the value's number.
CLI::Validator one_word(std::vector<std::pair<std::string, int>> words);
/// Words of an enumeration.
template <class T>
std::vector<std::pair<std::string, int>> words_of(const std::vector<std::pair<std::string, T>>& all) {
  std::vector<std::pair<std::string, int>> words;
  for (const auto& [word, value] : all) words.emplace_back(word, static_cast<int>(value));
  return words;
}

}  // namespace ovenwright::command
