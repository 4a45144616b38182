#include <algorithm>

#include "core/log/interpret.h"
#include "core/log/interpreter.h"
#include "core/log/several_tables.h"
#include "core/log/side_blocks.h"
#include "core/units/phrase.h"

// The whole of a text or sheet: its one table, or one of several.

namespace ovenwright::log {

bool Interpreter::may_hold_others(const Result<Reading>& reading) const {
  constexpr std::size_t kFewestRows = 5;
  if (!reading)
    return reading.error().code == ErrorCode::kParse && (reading.error().where.line > 1 || layout_.header_line);
  return other_rows_ >= kFewestRows && reading->layout.form != Form::kRows;
}

Result<Reading> interpret_text(const std::string& name, std::string_view text, const Options& options) {
  Interpreter interpreter(name, options);
  auto reading = interpreter.text(text);
  if (!interpreter.may_hold_others(reading)) return reading;
  return read_one_of_tables(name, {text, nullptr, interpreter.dialect(), interpreter.decimal()}, options,
                            std::move(reading));
}

namespace {

Result<Reading> interpret_block(const std::string& name, const Grid& grid, const Options& options) {
  Interpreter interpreter(name, options);
  auto reading = interpreter.grid(grid);
  if (!interpreter.may_hold_others(reading)) return reading;
  return read_one_of_tables(name, {{}, &grid, {}, interpreter.decimal()}, options, std::move(reading));
}

}  // namespace

Result<Reading> interpret_grid(const std::string& name, const Grid& grid, const Options& options) {
  const auto apart = without_side_blocks(grid);
  if (!apart) return interpret_block(name, grid, options);
  auto reading = interpret_block(name, apart->grid, options);
  if (!reading) return reading;
  reading->read_as.notes.push_back(
      say(Phrase::kOtherTable, {std::to_string(apart->first_line), apart->words, std::to_string(apart->rows)}));
  // What is shown of the file are its own lines.
  for (auto& line : reading->shown) {
    const auto row = line.line - grid.first_line;
    if (row < grid.rows.size() && grid.rows[row].size() <= line.cells.size())
      std::ranges::copy(grid.rows[row], line.cells.begin());
  }
  return reading;
}

Likeness likeness_to_a_log(const Grid& grid) {
  const DialectGuess guess = guess_grid(grid, {});
  if (guess.columns < 1) return {};
  GridRows rows(grid);
  const Table table = find_table(rows, guess.columns, guess.decimal, 0, false);
  return {table.rows * static_cast<double>(table.columns) * guess.score, static_cast<std::size_t>(table.rows)};
}

std::vector<Statement> Interpreter::lines_at_the_end(RowSource& rows, const Found& found) {
  constexpr std::size_t kTail = 4096;
  const std::string_view text = rows.text();
  std::vector<Statement> lines;
  if (text.empty()) return lines;
  Row row;
  const std::size_t from = std::max(found.table.first_row.offset, text.size() - std::min(kTail, text.size()));
  rows.seek({from, 0});
  if (from > 0) rows.next(row);
  while (rows.next(row)) {
    if (row.blank() || is_rule(row) || fit_row(row, found.table.profile, found.decimal).data()) continue;
    Statement statement;
    statement.line = row.line;
    statement.text = std::string{row.text.substr(0, 1000)};
    statement.cells.assign(row.cells.begin(), row.cells.end());
    lines.push_back(std::move(statement));
  }
  return lines;
}

}  // namespace ovenwright::log
