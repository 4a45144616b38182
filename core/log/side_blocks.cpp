#include "core/log/side_blocks.h"

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

#include "core/log/number.h"

namespace ovenwright::log {
namespace {

/// Columns between two empty ones.
struct Block {
  std::size_t from = 0, to = 0;  ///< to is behind the last
  std::size_t rows = 0;          ///< in which something stands
  std::size_t first_row = 0;
};

std::vector<Block> blocks_of(const Grid& grid) {
  std::vector<bool> filled;
  for (const auto& row : grid.rows) {
    if (row.size() > filled.size()) filled.resize(row.size());
    for (std::size_t i = 0; i < row.size(); ++i) filled[i] = filled[i] || !row[i].empty();
  }
  std::vector<Block> blocks;
  for (std::size_t i = 0; i < filled.size(); ++i) {
    if (!filled[i]) continue;
    if (blocks.empty() || blocks.back().to < i) blocks.push_back({i, i, 0, 0});
    blocks.back().to = i + 1;
  }
  return blocks;
}

/// In which rows something stands, in one pass over the cells: there may be thousands of blocks.
void count_rows(const Grid& grid, std::vector<Block>& blocks) {
  for (std::size_t r = 0; r < grid.rows.size(); ++r) {
    const auto& row = grid.rows[r];
    for (auto block = blocks.begin(); block != blocks.end() && block->from < row.size(); ++block) {
      const auto begin = row.begin() + static_cast<std::ptrdiff_t>(block->from);
      const auto end = row.begin() + static_cast<std::ptrdiff_t>(std::min(block->to, row.size()));
      if (std::all_of(begin, end, [](const std::string& cell) { return cell.empty(); })) continue;
      if (block->rows++ == 0) block->first_row = r;
    }
  }
}

/// Several columns of numbers, the first of which goes up from row to row: the log may as well be this one.
bool like_a_log(const Grid& grid, const Block& block) {
  constexpr std::size_t kFewestRows = 8, kMostOthers = 10;
  std::size_t numbers = 0, others = 0, rising = 0;
  double last = 0;
  if (block.rows < kFewestRows) return false;
  // Its rows stand below each other; blank ones between them are few.
  const std::size_t end = std::min(grid.rows.size(), block.first_row + 2 * block.rows);
  for (std::size_t r = block.first_row; r < end; ++r) {
    const auto& row = grid.rows[r];
    if (block.from >= row.size()) continue;
    std::optional<double> first;
    std::size_t in_row = 0, filled = 0;
    for (std::size_t i = block.from; i < std::min(block.to, row.size()); ++i) {
      const auto number = read_number(row[i], row[i].find(',') == std::string::npos ? '.' : ',');
      filled += row[i].empty() ? 0 : 1;
      if (!number || !number->rest.empty()) continue;
      if (in_row++ == 0) first = number->value;
    }
    if (in_row < 2) {
      others += filled > 0 ? 1 : 0;
      if (others > kMostOthers) return false;
      continue;
    }
    rising += numbers > 0 && *first > last ? 1 : 0;
    last = *first;
    ++numbers;
  }
  return numbers >= kFewestRows && 20 * rising >= 19 * (numbers - 1);
}

}  // namespace

std::optional<WithoutSideBlocks> without_side_blocks(const Grid& grid) {
  constexpr std::size_t kFewestRows = 20, kTimesMore = 4, kMostWords = 5;
  auto blocks = blocks_of(grid);
  if (blocks.size() < 2) return std::nullopt;
  count_rows(grid, blocks);
  const auto widest = std::ranges::max_element(blocks, {}, [](const Block& block) { return block.to - block.from; });
  if (widest->rows < kFewestRows || widest == blocks.begin()) return std::nullopt;
  const Block* longest = nullptr;
  for (auto block = blocks.begin(); block != widest; ++block) {
    if (like_a_log(grid, *block)) return std::nullopt;
    if (block->rows * kTimesMore > widest->rows) return std::nullopt;
    if (longest == nullptr || block->rows > longest->rows) longest = &*block;
  }
  WithoutSideBlocks out{grid, 0, 0, {}};
  for (auto& row : out.grid.rows) {
    for (std::size_t i = 0; i < std::min(widest->from, row.size()); ++i) row[i].clear();
  }
  out.rows = longest->rows;
  out.first_line = grid.first_line + longest->first_row;
  const auto& first = grid.rows[longest->first_row];
  for (std::size_t i = longest->from; i < std::min({longest->to, first.size(), longest->from + kMostWords}); ++i)
    out.words += (out.words.empty() || first[i].empty() ? "" : " ") + first[i];
  return out;
}

}  // namespace ovenwright::log
