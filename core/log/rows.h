#pragma once
#include <cstddef>
#include <deque>
#include <string>
#include <string_view>
#include <vector>

#include "core/log/grid.h"

namespace ovenwright::log {

/// How a line of text falls into cells.
struct Dialect {
  enum class Split {
    kDelimiter,  ///< at one character
    kBlanks,     ///< at runs of blanks and tabs
    kColumns,    ///< at fixed places in the line
    kWhole,      ///< the line is the cell
  };
  Split split = Split::kDelimiter;
  char delimiter = ',';
  std::vector<std::size_t> starts;  ///< kColumns: where each column starts, in characters; wide characters are two

  /// As in layout.toml: ",", "\t", " " for runs of blanks, "fixed width", "" for whole lines.
  std::string name() const;
};
inline constexpr const char* kFixedWidth = "fixed width";

/// One row of a table: cells trimmed, quotes taken off. The views hold until the next row is asked for.
struct Row {
  std::size_t line = 0;   ///< from 1, of its first line
  std::size_t lines = 1;  ///< a quoted cell may hold line ends
  std::string_view text;  ///< the raw text; empty for a row of a grid
  std::vector<std::string_view> cells;
  bool ended = true;           ///< a line end stands behind it
  bool blank() const;          ///< all cells are empty
  std::size_t filled() const;  ///< cells that are not empty
};

/// Where to go on reading: an offset into the text or a row of a grid, and the line that stands there.
struct Position {
  std::size_t offset = 0;
  std::size_t line = 1;
};

/// Rows one after the other, from wherever they come.
class RowSource {
 public:
  virtual ~RowSource() = default;
  /// False at the end.
  virtual bool next(Row& row) = 0;
  virtual Position position() const = 0;
  virtual void seek(Position position) = 0;
  /// Text only: the whole of it; empty for a grid.
  virtual std::string_view text() const { return {}; }
};

/// Rows of a text. Line ends are LF, CR, CRLF or any number of CR before an LF. A cell that starts with a double quote
/// ends at the next single one and may hold delimiters, line ends and doubled quotes; a quote that is never closed, or
/// only far on, is a plain character. A line that is one quoted cell with delimiters in it is taken apart again.
class TextRows : public RowSource {
 public:
  TextRows(std::string_view text, Dialect dialect) : text_(text), dialect_(std::move(dialect)) {}
  bool next(Row& row) override;
  Position position() const override { return {at_, line_}; }
  void seek(Position position) override;
  std::string_view text() const override { return text_; }
  const Dialect& dialect() const { return dialect_; }
  /// The cells of one line by the dialect; nothing of the source moves.
  void split(std::string_view line, std::vector<std::string_view>& cells);

 private:
  std::size_t end_of_line(std::size_t from);
  std::size_t behind_line_end(std::size_t at) const;
  bool quoted_cell(std::size_t& at, std::size_t limit, std::string_view& cell);
  bool split_quoted(Row& row);
  void split_plain(std::string_view line, std::vector<std::string_view>& cells) const;
  bool delimits(std::size_t at) const;

  std::string_view text_;
  Dialect dialect_;
  std::size_t at_ = 0, line_ = 1;
  std::size_t line_feed_ = 0;  ///< the next LF at or behind at_, once it was looked for
  bool line_feed_known_ = false;
  std::deque<std::string> unquoted_;
};

/// Rows of a sheet or an HTML table, all filled up to the width of the longest but those in which nothing stands.
class GridRows : public RowSource {
 public:
  explicit GridRows(const Grid& grid);
  bool next(Row& row) override;
  Position position() const override { return {at_, grid_->line_of(at_)}; }
  void seek(Position position) override { at_ = position.offset; }

 private:
  const Grid* grid_;
  std::size_t width_ = 0;
  std::size_t at_ = 0;
};

}  // namespace ovenwright::log
