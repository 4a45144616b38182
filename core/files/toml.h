#pragma once
#include <array>
#include <limits>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

#include "core/units/result.h"

namespace ovenwright::files {

/// What a number in a file may be. `words` names it in the message: "a length above 0".
struct Range {
  double lowest = -std::numeric_limits<double>::infinity();
  double highest = std::numeric_limits<double>::infinity();
  bool above_lowest = false;  ///< the lowest itself is out
  const char* words = "a number";
};
inline constexpr Range kAnyNumber{};
inline constexpr Range kPositive{0, 1e9, true, "a number above 0"};
inline constexpr Range kNotNegative{0, 1e9, false, "a number of at least 0"};
inline constexpr Range kTemperature{-273.15, 10000, false, "a temperature in °C"};

class TomlFile;

/// One table of a file that people edit: the root, `[name]`, `{…}` or one of `[[name]]`. A getter returns nothing
/// where the key is absent, or where its value is of the wrong type or out of range: then the error is kept, with its
/// line and column, for TomlFile::finish(). Keys that no getter asked for are unknown keys.
/// A handle: cheap to copy, valid as long as its TomlFile.
class TomlTable {
 public:
  bool has(std::string_view key) const;
  std::optional<std::string> text(std::string_view key);
  std::optional<double> number(std::string_view key, const Range& range = kAnyNumber);
  std::optional<int> integer(std::string_view key, int lowest, int highest);
  std::optional<bool> boolean(std::string_view key);
  std::optional<std::variant<double, std::string>> number_or_text(std::string_view key);
  std::optional<std::vector<double>> numbers(std::string_view key, const Range& range = kAnyNumber);
  /// Two numbers, the first below the second.
  std::optional<std::array<double, 2>> interval(std::string_view key, const Range& range = kAnyNumber);
  std::optional<std::vector<std::string>> texts(std::string_view key);
  /// A text that must be one of these.
  std::optional<std::string> one_of(std::string_view key, std::span<const std::string_view> words);
  std::optional<TomlTable> table(std::string_view key);
  std::vector<TomlTable> tables(std::string_view key);
  /// The type of a value whose form decides how it is read: "text", "number", "array", "other"; empty where absent.
  std::string_view type(std::string_view key) const;

  /// The same, but an absent key is an error: `missing "name", expected a text`.
  std::string needed_text(std::string_view key);
  double needed_number(std::string_view key, const Range& range = kAnyNumber);
  void missing(std::string_view key, std::string_view expected);

  /// Keeps an error at the key's value, or at the table's head where the key is absent.
  void fail(std::string_view key, std::string message, std::string found = {}, std::string expected = {});
  /// The key's value as it is written in the file; empty where it is absent.
  std::string written(std::string_view key) const;
  Place place(std::string_view key) const;  ///< of the key's value, else of the table
  Place place() const;
  int line() const { return place().line; }

 private:
  friend class TomlFile;
  struct State;
  TomlTable(State* state, const void* node, std::string title) : state_(state), node_(node), title_(std::move(title)) {}
  std::optional<double> checked(std::string_view key, const void* node, const Range& range);
  void wrong(std::string_view key, const void* node, std::string_view expected);

  State* state_;
  const void* node_;   // a toml::table; null for a table that was found to be something else
  std::string title_;  // "[limits]" in messages; empty for the root
};

/// A file that people edit, parsed. The parser's exceptions end here.
class TomlFile {
 public:
  /// Errors: kParse with line and column where the text is no TOML; also where it is no valid UTF-8.
  static Result<TomlFile> parse(const std::string& file, std::string_view text);
  TomlFile(TomlFile&&) noexcept;
  TomlFile& operator=(TomlFile&&) noexcept;
  ~TomlFile();

  TomlTable root();
  /// The error to report, none where all is well: an unknown key with the key that was meant comes first (it explains
  /// a missing one), then the others in the order of the file. Call it when everything was asked for.
  std::optional<Error> finish() const;
  bool failed() const;  ///< whether a getter has kept an error so far

 private:
  explicit TomlFile(std::unique_ptr<TomlTable::State> state);
  std::unique_ptr<TomlTable::State> state_;
};

/// A text as a TOML basic string with its quotes.
std::string toml_text(std::string_view text);
/// The shortest number that reads back the same; whole numbers without a point.
std::string toml_number(double number);

}  // namespace ovenwright::files
