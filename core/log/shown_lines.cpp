#include "core/log/shown_lines.h"

#include <algorithm>

#include "core/log/text.h"

namespace ovenwright::log {
namespace {

constexpr std::size_t kFirst = 20, kAfterHeader = 6, kLast = 3, kMostCells = 64, kMostBytes = 80;
constexpr std::size_t kTailBytes = 16U << 10;  ///< the last rows are looked for in these

ShownLine shown(const Row& row) {
  ShownLine line;
  line.line = row.line;
  for (const auto cell : row.cells) {
    if (line.cells.size() == kMostCells) break;
    std::size_t used = 0;
    while (used < cell.size()) {  // cut between characters
      std::size_t length = 1;
      decode_character(cell.substr(used), length);
      if (used + length > kMostBytes) break;
      used += length;
    }
    line.cells.emplace_back(cell.substr(0, used));
  }
  return line;
}

/// As few bytes at the end of a text as hold some lines more than are wanted.
std::size_t tail_of(std::string_view text) {
  std::size_t bytes = 512;
  while (bytes < kTailBytes) {
    const auto tail = text.substr(text.size() - std::min(bytes, text.size()));
    if (std::count(tail.begin(), tail.end(), '\n') > static_cast<std::ptrdiff_t>(2 * kLast)) break;
    bytes *= 2;
  }
  return bytes;
}

}  // namespace

std::vector<ShownLine> shown_lines(RowSource& rows, const Table& table, Position before) {
  std::vector<ShownLine> lines;
  Row row;
  const auto take = [&](std::size_t most) {
    for (std::size_t i = 0; i < most && rows.next(row); ++i) lines.push_back(shown(row));
  };
  rows.seek({});
  const std::size_t table_line = table.columns > 0 ? table.first_row.line : kFirst;
  const std::size_t header_line = table.headers.empty() ? table_line : table.headers.front().line;
  if (header_line <= kFirst) {
    take(table_line - 1 + kAfterHeader);
  } else {
    take(kFirst);
    for (const Statement& header : table.headers) {
      ShownLine line;
      line.line = header.line;
      for (std::size_t i = 0; i < std::min(header.cells.size(), kMostCells); ++i)
        line.cells.push_back(header.cells[i].substr(0, kMostBytes));
      lines.push_back(std::move(line));
    }
    rows.seek(table.first_row);
    take(kAfterHeader);
  }
  // The last rows, with their lines counted on from the place that is known.
  const std::string_view text = rows.text();
  Position at = rows.position();
  if (before.offset > at.offset) at = before;
  const std::size_t tail_bytes = tail_of(text);
  if (!text.empty() && text.size() > at.offset + tail_bytes) {
    const auto cut = text.find('\n', text.size() - tail_bytes);
    if (cut == std::string_view::npos) return lines;
    const auto passed = text.substr(at.offset, cut + 1 - at.offset);
    at.line += static_cast<std::size_t>(std::count(passed.begin(), passed.end(), '\n'));
    at.offset = cut + 1;
  }
  rows.seek(at);
  std::vector<ShownLine> tail;
  while (rows.next(row)) {
    if (row.blank()) continue;
    tail.push_back(shown(row));
    if (tail.size() > kLast) tail.erase(tail.begin());
  }
  lines.insert(lines.end(), std::make_move_iterator(tail.begin()), std::make_move_iterator(tail.end()));
  return lines;
}

}  // namespace ovenwright::log
