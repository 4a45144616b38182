#pragma once
#include <QRegularExpression>
#include <optional>
#include <string>
#include <vector>

#include "core/check/check.h"

namespace ovenwright::archive {

/// A text of a rule: an expression whose group 1 is taken from a file's name, or where it has no group a plain text.
class NamePart {
 public:
  NamePart() = default;
  /// Errors: kParse where the expression cannot be understood.
  static Result<NamePart> make(const std::string& text);
  /// Empty where the expression does not match the name.
  std::optional<std::string> of(const std::string& fileName) const;

 private:
  QString m_text;
  std::optional<QRegularExpression> m_expression;
};

/// How logs of some names are judged and kept. Names of windows and so on are looked up when a log is judged, so that a
/// new revision counts from then on.
struct WatchRule {
  std::string files;  ///< a pattern of the shell on the file's name: "QM-*.csv"
  std::optional<NamePart> lot, serial, operatorName;
  /// A name, and where the rules say it.
  struct Named {
    std::string name;
    Place at;
  };
  std::optional<Named> window, oven, recipe, board, layout;

  bool matches(const std::string& fileName) const;
  /// Errors: those of finding and reading the files; a name that nothing has is told at its place in the rules.
  Result<check::Request> request() const;
};

/// Reads rules.toml; a path in it is one beside the file where there is such a file, else one from where the program
/// runs. Errors: kIo; kParse with line and column for an unknown key, an oven without a recipe or the other
/// way round, an expression that cannot be understood, a window, oven, recipe, board or layout that cannot be read.
Result<std::vector<WatchRule>> loadWatchRules(const std::string& path);

}  // namespace ovenwright::archive
