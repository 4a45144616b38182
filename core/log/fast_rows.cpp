#include "core/log/fast_rows.h"

#include <algorithm>
#include <bit>
#include <cstring>

#include "core/log/four_numbers.h"
#include "core/log/plain_number.h"
#include "core/log/row_ends.h"

namespace ovenwright::log {
namespace {

constexpr std::size_t kBlock = 64;
/// Looked at ahead of the first row; twice as much each time that all of it was rows, so that a row of another kind
/// costs little.
constexpr std::size_t kFewestBytes = 512, kMostBytes = 8192, kMostBytesForACell = 64;
constexpr std::size_t kLanes = 4;

RowEnds find_one_by_one(const char* base, std::size_t blocks, std::size_t within, char delimiter, std::size_t columns,
                        std::uint32_t* ends) {
  return find_row_ends(base, blocks, within, delimiter, columns, ends);
}

#if defined(OVENWRIGHT_FOUR_NUMBERS)
OVENWRIGHT_FOUR_NUMBERS RowEnds find_by_four(const char* base, std::size_t blocks, std::size_t within, char delimiter,
                                             std::size_t columns, std::uint32_t* ends) {
  return find_row_ends(base, blocks, within, delimiter, columns, ends);
}
#endif

}  // namespace

FastRows::FastRows(const std::vector<double*>& targets, char delimiter, char decimal)
    : FastRows(targets, delimiter, decimal, four_numbers_supported()) {}

FastRows::FastRows(const std::vector<double*>& targets, char delimiter, char decimal, bool four_at_a_time)
    : targets_(targets),
      columns_(targets.size()),
      most_bytes_(std::max(kMostBytes, kMostBytesForACell * targets.size())),
      delimiter_(delimiter),
      decimal_(decimal),
      by_four_(four_at_a_time && four_numbers_supported()) {
  if (columns_ == 0) return;
  passes_over_ = std::ranges::find(targets, nullptr) != targets.end();
  places_.resize(kLanes * columns_);
  passed_over_.resize(most_bytes_ + kBlock + kLanes);
  ends_.resize(1 + room_for_ends(most_bytes_ + kBlock));
  ends_.front() = ~std::uint32_t{0};  // one before offset 0
}

inline bool FastRows::read_one(const char* base, std::size_t row, std::size_t column) const {
  if (targets_[column] == nullptr) return true;
  const std::uint32_t* const ends = ends_.data() + row * columns_ + column;
  const char* p = base + static_cast<std::int32_t>(ends[0]) + 1;
  const char* end = base + ends[1];
  if (column + 1 == columns_ && end > p && end[-1] == '\r') --end;
  return read_plain_number(p, decimal_, places_[column][row]) && p == end;
}

std::size_t FastRows::read_one_by_one(const char* base, std::size_t rows, std::size_t first) const {
  for (std::size_t row = first; row < rows; ++row) {
    for (std::size_t column = 0; column < columns_; ++column) {
      if (!read_one(base, row, column)) return row;
    }
  }
  return rows;
}

#if defined(OVENWRIGHT_FOUR_NUMBERS)
OVENWRIGHT_FOUR_NUMBERS std::size_t FastRows::read_by_four(const char* base, std::size_t rows) const {
  const FourNumbers four(decimal_);
  const std::size_t cells = places_.size();  // of four rows: whole fours, whatever the number of columns
  double* const* const places = places_.data();
  const std::uint32_t* ends = ends_.data() + 1;
  std::size_t row = 0;
  for (; row + kLanes <= rows; row += kLanes, ends += cells) {
    for (std::size_t cell = 0; cell < cells; cell += kLanes) {
      for (unsigned bad = four.read(base, ends + cell, places + cell, row); bad != 0; bad &= bad - 1) {
        const std::size_t other = cell + static_cast<std::size_t>(std::countr_zero(bad));
        if (!read_one(base, row + other / columns_, other % columns_)) return row + other / columns_;
      }
    }
  }
  return read_one_by_one(base, rows, row);
}
#else
std::size_t FastRows::read_by_four(const char* base, std::size_t rows) const { return read_one_by_one(base, rows); }
#endif

std::size_t FastRows::read(const char*& p, const char* begin, const char* end, const char* text_end, std::size_t at,
                           std::size_t most) {
  // Numbers are read up to kPlainNumberReach bytes from where they start, and 8 bytes before their end.
  if (p - begin < 8) return 0;
  std::size_t rows = 0, wanted_bytes = kFewestBytes;
  while (rows < most && p < end) {
    const auto left = static_cast<std::size_t>(text_end - p);
    if (left < kBlock + kPlainNumberReach) break;
    const std::size_t bytes = std::min(wanted_bytes, (left - kPlainNumberReach) / kBlock * kBlock);
    // A delimiter or line end in quotes is none; where all cells must be numbers the quote would be met as such.
    if (passes_over_ && std::memchr(p, '"', bytes) != nullptr) break;
    const auto find = [&](auto finder) {
      return finder(p, bytes / kBlock, static_cast<std::size_t>(end - p), delimiter_, columns_, ends_.data() + 1);
    };
#if defined(OVENWRIGHT_FOUR_NUMBERS)
    const RowEnds found = by_four_ ? find(find_by_four) : find(find_one_by_one);
#else
    const RowEnds found = find(find_one_by_one);
#endif
    const std::size_t here = std::min(found.rows, most - rows);
    for (std::size_t column = 0; column < columns_; ++column) {
      double* const place = targets_[column] != nullptr ? targets_[column] + at + rows : passed_over_.data();
      for (std::size_t row = 0; row < kLanes; ++row) places_[row * columns_ + column] = place + row;
    }
    const std::size_t read = by_four_ ? read_by_four(p, here) : read_one_by_one(p, here, 0);
    rows += read;
    if (read > 0) p += ends_[read * columns_] + 1;
    if (read < here || found.irregular) break;
    if (here == 0 && (bytes < wanted_bytes || wanted_bytes == most_bytes_)) break;
    wanted_bytes = std::min(2 * wanted_bytes, most_bytes_);
  }
  return rows;
}

}  // namespace ovenwright::log
