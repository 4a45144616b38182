#include "core/log/several_tables.h"

#include <algorithm>
#include <memory>
#include <set>

#include "core/log/header_text.h"
#include "core/log/interpreter.h"
#include "core/log/tables_of_file.h"
#include "core/units/phrase.h"

namespace ovenwright::log {
namespace {

std::unique_ptr<RowSource> rows_of(const TableSource& source) {
  if (source.grid != nullptr) return std::make_unique<GridRows>(*source.grid);
  return std::make_unique<TextRows>(source.text, source.dialect);
}

bool in_another(const std::vector<FileTable>& tables, const FileTable& wanted, std::size_t line) {
  return std::any_of(tables.begin(), tables.end(), [&](const FileTable& table) {
    return &table != &wanted && line >= table.from_line && line < table.to_line;
  });
}

/// The same text with the lines of the other tables empty, so that all others stay where they are.
std::string text_with_one(std::string_view text, const std::vector<FileTable>& tables, const FileTable& wanted) {
  std::string out;
  TextRows lines(text, {Dialect::Split::kWhole, '\n', {}});
  Row row;
  for (std::size_t from = 0; lines.next(row); from = lines.position().offset) {
    if (in_another(tables, wanted, row.line)) {
      out += '\n';
    } else {
      out += text.substr(from, lines.position().offset - from);
    }
  }
  return out;
}

Grid grid_with_one(const Grid& grid, const std::vector<FileTable>& tables, const FileTable& wanted) {
  Grid out = grid;
  for (std::size_t i = 0; i < out.rows.size(); ++i) {
    if (in_another(tables, wanted, out.first_line + i)) out.rows[i].clear();
  }
  return out;
}

/// The header rows and the rows of data of each table, as they stand side by side.
struct Block {
  std::vector<std::vector<std::string>> headers, data;
};

/// Blocks of channels as one table at the lines of the first.
Grid side_by_side(RowSource& rows, const std::vector<FileTable>& tables) {
  Grid grid;
  grid.first_line = tables.front().from_line;
  std::vector<Block> blocks(tables.size());
  std::vector<std::size_t> header_at, data_at;  // places in the grid
  Row row;
  std::size_t k = 0;
  rows.seek({});
  while (rows.next(row)) {
    while (k + 1 < tables.size() && row.line >= tables[k + 1].from_line) ++k;
    const FileTable& table = tables[k];
    if (k == 0 && row.line < table.from_line) {  // notes above
      grid.first_line = std::min(grid.first_line, row.line);
    }
    std::vector<std::string> cells(row.cells.begin(), row.cells.end());
    const std::size_t place = row.line - grid.first_line;
    if (k == 0 && grid.rows.size() <= place) grid.rows.resize(place + 1);
    if (row.line < table.header_line || row.blank()) {
      if (k == 0) grid.rows[place] = std::move(cells);
      continue;
    }
    const bool header = row.line <= table.last_header_line;
    const std::string time = table.time_column < cells.size() ? cells[table.time_column] : std::string{};
    auto& block = blocks[k];
    const bool data = !header && block.data.size() < table.times.size() && time == table.times[block.data.size()];
    if (!header && !data) continue;
    cells.resize(table.names.size());
    if (k == 0) {
      (header ? header_at : data_at).push_back(place);
      grid.rows[place] = cells;
    } else {
      cells.erase(cells.begin() + static_cast<std::ptrdiff_t>(table.time_column));
    }
    (header ? block.headers : block.data).push_back(std::move(cells));
  }
  for (std::size_t b = 1; b < blocks.size(); ++b) {
    const std::size_t width = tables[b].names.size() - 1;
    const auto put = [&](const std::vector<std::size_t>& places, std::vector<std::vector<std::string>>& list) {
      for (std::size_t i = 0; i < places.size(); ++i) {
        auto& target = grid.rows[places[i]];
        const std::size_t before = target.size();
        if (i < list.size()) target.insert(target.end(), list[i].begin(), list[i].end());
        target.resize(before + width);
      }
    };
    put(header_at, blocks[b].headers);
    put(data_at, blocks[b].data);
  }
  return grid;
}

std::string channels_text(const FileTable& table) {
  constexpr std::size_t kMost = 5;
  std::string text;
  std::size_t count = 0;
  for (std::size_t i = 0; i < table.names.size(); ++i) {
    const auto head = read_header_text(table.names[i]);
    const std::string& name = head.name.empty() ? head.whole : head.name;
    if (i == table.time_column || name.empty()) continue;
    if (++count > kMost) return text + " …";
    text += (text.empty() ? "" : " ") + name;
  }
  return text;
}

bool all_have_other_names(const std::vector<FileTable>& tables) {
  std::set<std::multiset<std::string>> seen;
  return std::all_of(tables.begin(), tables.end(), [&seen](const FileTable& table) {
    return seen.insert({table.names.begin(), table.names.end()}).second;
  });
}

}  // namespace

Result<Reading> read_one_of_tables(const std::string& name, const TableSource& source, const Options& options,
                                   Result<Reading> whole) {
  const auto rows = rows_of(source);
  const auto tables = tables_of_file(*rows, source.decimal);
  if (tables.empty() || !all_have_other_names(tables)) return whole;
  Options own = options;
  if (own.layout) own.layout->header_line.reset();
  if (same_times(tables)) {
    const Grid joined = side_by_side(*rows, tables);
    auto reading = Interpreter(name, own).grid(joined);
    if (!reading) return whole ? std::move(whole) : std::move(reading);
    if (source.grid == nullptr) reading->layout.delimiter = reading->read_as.delimiter = source.dialect.name();
    for (std::size_t i = 1; i < tables.size(); ++i)
      reading->read_as.notes.push_back(say(Phrase::kJoinedTable, {std::to_string(tables[i].header_line)}));
    return reading;
  }
  const FileTable* wanted =
      &*std::max_element(tables.begin(), tables.end(), [](const auto& a, const auto& b) { return a.rows < b.rows; });
  const auto line = static_cast<std::size_t>(std::max(0, options.layout ? options.layout->header_line.value_or(0) : 0));
  for (const FileTable& table : tables) {
    if (line >= table.from_line && line < table.to_line) wanted = &table;
  }
  if (line > 0) own.layout->header_line = options.layout->header_line;
  auto reading = [&] {
    if (source.grid != nullptr) return Interpreter(name, own).grid(grid_with_one(*source.grid, tables, *wanted));
    const std::string text = text_with_one(source.text, tables, *wanted);
    return Interpreter(name, own).text(text);
  }();
  if (!reading) return whole ? std::move(whole) : std::move(reading);
  for (const FileTable& table : tables) {
    ListedTable& listed = reading->read_as.tables.emplace_back();
    listed.header_line = static_cast<int>(table.header_line);
    listed.rows = table.rows;
    listed.read = &table == wanted;
    if (listed.read) continue;
    const std::string text =
        say(Phrase::kOtherTable, {std::to_string(table.header_line), channels_text(table), std::to_string(table.rows)});
    reading->warnings.push_back({text, {name, static_cast<int>(table.header_line), 0}});
    reading->read_as.assumed.push_back(
        {"header", text, std::to_string(wanted->header_line), std::to_string(table.header_line)});
  }
  // What is shown of the file are its own lines, those of the other tables too.
  rows->seek({});
  Row row;
  for (auto shown = reading->shown.begin(); shown != reading->shown.end() && rows->next(row);) {
    while (shown != reading->shown.end() && shown->line < row.line) ++shown;
    if (shown != reading->shown.end() && shown->line == row.line && in_another(tables, *wanted, row.line))
      shown->cells.assign(row.cells.begin(), row.cells.end());
  }
  return reading;
}

}  // namespace ovenwright::log
