#include "core/log/size_check.h"

#include <fmt/format.h>

#include <algorithm>
#include <bit>

#include "core/log/byte_masks.h"
#include "core/log/cell.h"
#include "core/log/dialect.h"
#include "core/log/grid.h"

namespace ovenwright::log {
namespace {

std::size_t cells_at_most(std::string_view text, char delimiter) {
  std::size_t ends = 1, i = 0;
  for (; i + 64 <= text.size(); i += 64) {
    const char* const p = text.data() + i;
    ends += static_cast<std::size_t>(std::popcount(mask_of(p, delimiter) | mask_of(p, '\n') | mask_of(p, '\r')));
  }
  for (; i < text.size(); ++i) ends += text[i] == delimiter || text[i] == '\n' || text[i] == '\r' ? 1 : 0;
  return ends;
}

}  // namespace

std::optional<Error> too_many_numbers(std::string_view head, double whole_bytes, const Options& options) {
  // An estimate that is off by a little must not refuse a log: those are counted exactly while they are read.
  constexpr double kMargin = 1.1;
  const Layout layout = options.layout.value_or(Layout{});
  const auto decoded = decode(head, layout.encoding.value_or(""));
  if (!decoded) return decoded.error();  // no text: the rest need not be looked at
  const std::string_view text = decoded->unchanged ? head.substr(decoded->skip) : std::string_view{decoded->utf8};
  const DialectGuess guess = guess_dialect(text, layout);
  if (guess.columns < 2) return std::nullopt;
  const double repeats = whole_bytes / static_cast<double>(std::max<std::size_t>(1, head.size()));
  const double most = static_cast<double>(options.most_samples) * kMargin;
  // No more numbers than cells: for most logs that is few enough.
  if (guess.dialect.split == Dialect::Split::kDelimiter &&
      static_cast<double>(cells_at_most(text, guess.dialect.delimiter)) * repeats <= most)
    return std::nullopt;
  TextRows rows(text, guess.dialect);
  Row row;
  std::size_t numbers = 0, count = 0;
  while (rows.next(row)) {
    if (row.cells.size() != guess.columns) continue;
    const auto here = std::count_if(row.cells.begin(), row.cells.end(),
                                    [&](std::string_view cell) { return read_cell(cell, guess.decimal).number(); });
    if (here == 0) continue;
    ++count;
    numbers += static_cast<std::size_t>(here);
  }
  // Where every cell is a number one of them is the time.
  if (numbers == count * guess.columns) numbers -= count;
  const double all = static_cast<double>(numbers) * repeats;
  if (all <= most) return std::nullopt;
  const double per_row = static_cast<double>(numbers) / static_cast<double>(std::max<std::size_t>(1, count));
  return too_many_numbers_error(static_cast<double>(count) * repeats, per_row, options.most_samples);
}

Error too_many_numbers_error(double rows, double numbers_per_row, std::size_t most_numbers) {
  auto found = fmt::format("about {:.0f} rows of {:.0f} numbers", rows, numbers_per_row);
  auto expected = fmt::format("at most {} numbers in a log", most_numbers);
  auto message = fmt::format("found {}, expected {}", found, expected);
  return {ErrorCode::kParse, std::move(message), {}, std::move(found), std::move(expected)};
}

}  // namespace ovenwright::log
