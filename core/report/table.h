#pragma once
#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace ovenwright::report {

/// Columns that a UTF-8 text takes on a terminal: wide characters of East Asia two, combining marks none.
std::size_t width_of(std::string_view text);

/// A table as aligned plain text: no frame, two blanks between columns, no blanks at a line's end.
class Table {
 public:
  enum class Align { kLeft, kRight };
  struct Column {
    std::string title;
    Align align = Align::kLeft;
  };
  explicit Table(std::vector<Column> columns) : columns_(std::move(columns)) {}
  /// One cell for each column.
  void add(std::vector<std::string> cells) { rows_.push_back(std::move(cells)); }
  bool empty() const { return rows_.empty(); }
  /// Title row and rows, each line ended by a newline. Columns in which every cell is empty are left out.
  std::string text() const;

 private:
  std::vector<Column> columns_;
  std::vector<std::vector<std::string>> rows_;
};

/// The text broken at blanks so that no line is wider than `most`, where its words allow; lines after the first begin
/// with `indent` blanks. Ended by a newline.
std::string wrapped(std::string_view text, std::size_t indent = 0, std::size_t most = 110);

}  // namespace ovenwright::report
