#include "core/log/wide.h"

#include <fmt/format.h>

#include <algorithm>
#include <bit>
#include <cstdint>
#include <cstring>
#include <limits>
#include <memory>
#include <thread>

#include "core/log/plain_number.h"
#include "core/log/row_reader.h"

namespace ovenwright::log {
namespace {

constexpr std::size_t kSmallestPart = 1U << 20;  // bytes of text that are worth a thread
constexpr std::size_t kRowsBetweenReports = 1U << 15;

/// What the fast way does with each column, from the left.
struct FastColumn {
  double* target = nullptr;  ///< nullptr: the cell is passed over
};

/// A stretch of the text and the rows that came out of it.
struct Part {
  std::size_t from = 0, to = 0;  ///< bytes
  std::size_t line = 1;          ///< that starts at `from`
  std::size_t first_row = 0;     ///< place in the arrays
  std::size_t rows = 0;
  std::unique_ptr<RowReader> reader;
};

struct Shared {
  std::atomic<std::size_t> bytes_done{0}, rows_done{0};
  std::atomic<bool> cancelled{false};
  const Progress* progress = nullptr;
  std::size_t bytes_in_all = 1;
};

bool plain_clock(const TimePlan& clock) {
  return clock.column < 0 || clock.kind == TimeKind::kNumber || clock.kind == TimeKind::kEpoch ||
         clock.kind == TimeKind::kSerialDays || clock.kind == TimeKind::kIndex;
}

/// One row of plain numbers. Moves `p` behind its line end; false where anything else stands there, `p` is then
/// unmoved.
bool fast_row(const char*& p, const char* safe_end, const std::vector<FastColumn>& columns, char delimiter,
              char decimal, std::size_t at) {
  const char* q = p;
  const std::size_t last = columns.size() - 1;
  for (std::size_t i = 0;; ++i) {
    if (q >= safe_end) return false;
    if (double* target = columns[i].target) {
      if (!read_plain_number(q, decimal, target[at])) return false;
    } else {
      while (*q != delimiter && *q != '\n' && *q != '\r' && *q != '"' && q < safe_end) ++q;
    }
    if (i == last) break;
    if (*q != delimiter) return false;
    ++q;
  }
  if (*q == '\n') {
    p = q + 1;
    return true;
  }
  if (*q == '\r' && q[1] == '\n') {
    p = q + 2;
    return true;
  }
  return false;
}

class WideReader {
 public:
  WideReader(RowSource& rows, const Dialect* dialect, Position first, const WidePlan& plan, const std::string& file,
             const Progress& progress)
      : rows_(rows), dialect_(dialect), first_(first), plan_(plan), file_(file) {
    shared_.progress = progress ? &progress : nullptr;
  }

  Result<WideResult> run(unsigned threads, std::size_t most_numbers) {
    const std::string_view text = rows_.text();
    std::size_t bound = 0;
    std::vector<Part> parts;
    if (text.empty()) {
      bound = count_grid_rows();
      parts.resize(1);
    } else {
      parts = cut(text, threads);
      bound = place(text, parts);
    }
    const std::size_t kept = plan_.numbers.size();
    if (bound * std::max<std::size_t>(1, kept) > most_numbers) return too_large(bound, kept);
    result_.times.resize(plan_.clocks.size());
    result_.values.resize(kept);
    allocate(bound, parts.size());
    for (Part& part : parts) part.reader = std::make_unique<RowReader>(plan_, result_.times, result_.values);
    if (text.empty()) {
      read_grid(parts.front());
    } else {
      shared_.bytes_in_all = std::max<std::size_t>(1, text.size() - first_.offset);
      std::vector<std::jthread> workers;
      for (std::size_t i = 1; i < parts.size(); ++i)
        workers.emplace_back([this, &parts, i, text] { read_part(parts[i], text, false); });
      read_part(parts.front(), text, true);
    }
    if (shared_.cancelled) return Error{ErrorCode::kCancelled, "reading was stopped", {file_, 0, 0}, "", ""};
    return finish(parts);
  }

 private:
  Error too_large(std::size_t rows, std::size_t columns) const {
    auto found = fmt::format("about {} rows of {} numbers", rows, columns);
    return {ErrorCode::kParse,
            fmt::format("found {}, expected a log below the cap on its size", found),
            {file_, 0, 0},
            found,
            "a log below the cap on its size"};
  }

  std::size_t count_grid_rows() {
    Row row;
    std::size_t count = 0;
    rows_.seek(first_);
    while (rows_.next(row)) ++count;
    return count;
  }

  /// Parts of about the same size that start at line starts.
  std::vector<Part> cut(std::string_view text, unsigned threads) const {
    const std::size_t length = text.size() - first_.offset;
    std::size_t wanted = threads > 0 ? threads : std::max(1U, std::thread::hardware_concurrency());
    wanted = std::min(wanted, length / kSmallestPart + 1);
    if (wanted > 1 && std::memchr(text.data() + first_.offset, '"', length) != nullptr) wanted = 1;
    std::vector<Part> parts;
    std::size_t from = first_.offset;
    for (std::size_t i = 1; i <= wanted; ++i) {
      std::size_t to = i == wanted ? text.size() : text.find('\n', std::max(from, first_.offset + length / wanted * i));
      to = to == std::string_view::npos ? text.size() : i == wanted ? to : to + 1;
      if (to <= from) continue;
      Part part;
      part.from = from;
      part.to = to;
      parts.push_back(std::move(part));
      from = to;
    }
    if (parts.empty()) {
      parts.resize(1);
      parts.front().from = parts.front().to = first_.offset;
    }
    return parts;
  }

  /// Gives every part its first line and its place in the arrays; returns a bound on all rows. Each row has two bytes
  /// for every cell at least, so a text of next to empty lines takes no room for rows.
  std::size_t place(std::string_view text, std::vector<Part>& parts) {
    std::vector<std::size_t> filled(parts.size()), ends(parts.size());
    const auto count = [&](std::size_t i) {
      const auto piece = text.substr(parts[i].from, parts[i].to - parts[i].from);
      filled[i] =
          std::min(count_filled_lines(piece), piece.size() / std::max<std::size_t>(1, 2 * plan_.columns - 1) + 1);
      if (i + 1 < parts.size()) ends[i] = static_cast<std::size_t>(std::count(piece.begin(), piece.end(), '\n'));
    };
    {
      std::vector<std::jthread> workers;
      for (std::size_t i = 1; i < parts.size(); ++i) workers.emplace_back([&count, i] { count(i); });
      count(0);
    }
    std::size_t row = 0, line = first_.line;
    for (std::size_t i = 0; i < parts.size(); ++i) {
      parts[i].first_row = row;
      parts[i].line = line;
      row += filled[i];
      line += ends[i];
    }
    return row;
  }

  /// The arrays at their full length, the pages touched by as many threads as will fill them.
  void allocate(std::size_t rows, std::size_t threads) {
    std::vector<std::vector<double>*> arrays;
    for (auto& array : result_.times) arrays.push_back(&array);
    for (auto& array : result_.values) arrays.push_back(&array);
    const auto work = [&](std::size_t from) {
      for (std::size_t i = from; i < arrays.size(); i += threads) arrays[i]->resize(rows);
    };
    std::vector<std::jthread> workers;
    for (std::size_t t = 1; t < threads; ++t) workers.emplace_back([&work, t] { work(t); });
    work(0);
  }

  /// False where the work was cancelled.
  bool report(std::size_t bytes, std::size_t rows, bool speaks) {
    const std::size_t all_bytes = shared_.bytes_done.fetch_add(bytes) + bytes,
                      all_rows = shared_.rows_done.fetch_add(rows) + rows;
    if (speaks && shared_.progress != nullptr) {
      const double share = std::min(1.0, static_cast<double>(all_bytes) / static_cast<double>(shared_.bytes_in_all));
      if (!(*shared_.progress)(share, all_rows)) shared_.cancelled = true;
    }
    return !shared_.cancelled;
  }

  std::vector<FastColumn> fast_columns() {
    if (dialect_ == nullptr || dialect_->split != Dialect::Split::kDelimiter || dialect_->delimiter == plan_.decimal)
      return {};
    if (plan_.columns == 0 || !std::all_of(plan_.clocks.begin(), plan_.clocks.end(), plain_clock)) return {};
    if (std::any_of(plan_.clocks.begin(), plan_.clocks.end(), [](const TimePlan& clock) { return clock.column < 0; }))
      return {};
    std::vector<FastColumn> columns(plan_.columns);
    for (std::size_t c = 0; c < plan_.clocks.size(); ++c)
      columns[static_cast<std::size_t>(plan_.clocks[c].column)].target = result_.times[c].data();
    for (std::size_t i = 0; i < plan_.numbers.size(); ++i)
      columns[static_cast<std::size_t>(plan_.numbers[i].column)].target = result_.values[i].data();
    return columns;
  }

  void read_part(Part& part, std::string_view text, bool speaks) {
    const auto fast = fast_columns();
    TextRows rows(text, *dialect_);
    Row row;
    std::size_t at = part.first_row, line = part.line;
    const char* p = text.data() + part.from;
    const char* const end = text.data() + part.to;
    const char* const safe_end = end - std::min<std::size_t>(part.to - part.from, kPlainNumberReach);
    const char* reported = p;
    std::size_t reported_rows = at, next_report = at + kRowsBetweenReports, slow = 0;
    const std::size_t room = result_.times.empty() ? 0 : result_.times.front().size();
    while (p < end) {
      if (!fast.empty() && at < room) {
        const std::size_t before = at;
        while (at < next_report && at < room && fast_row(p, safe_end, fast, dialect_->delimiter, plan_.decimal, at))
          ++at;
        if (at > before) {
          line += at - before;
          part.reader->account.last_skipped.clear();
          if (part.reader->account.first_data_line == 0) part.reader->account.first_data_line = line - (at - before);
          part.reader->account.last_data_line = line - 1;
        }
      }
      if (at >= next_report || ++slow % 4096 == 0) {
        if (!report(static_cast<std::size_t>(p - reported), at - reported_rows, speaks)) return;
        reported = p;
        reported_rows = at;
        next_report = at + kRowsBetweenReports;
        if (p >= end) break;
        if (slow % 4096 != 0) continue;
      }
      if (p >= end) break;
      rows.seek({static_cast<std::size_t>(p - text.data()), line});
      if (!rows.next(row)) break;
      if (at < room && part.reader->take(row, at)) ++at;
      line += row.lines;
      p = text.data() + rows.position().offset;
    }
    part.rows = at - part.first_row;
  }

  void read_grid(Part& part) {
    Row row;
    rows_.seek(first_);
    std::size_t seen = 0;
    const std::size_t room = result_.times.empty() ? 0 : result_.times.front().size();
    shared_.bytes_in_all = std::max<std::size_t>(1, room);
    while (part.rows < room && rows_.next(row)) {
      if (part.reader->take(row, part.rows)) ++part.rows;
      if (++seen % 4096 == 0 && !report(4096, 0, true)) return;
    }
  }

  /// Rows of all parts next to each other.
  void close_up(const std::vector<Part>& parts) {
    std::size_t rows = 0;
    for (const Part& part : parts) {
      if (part.first_row != rows) {
        for (auto* arrays : {&result_.times, &result_.values}) {
          for (auto& array : *arrays)
            std::memmove(array.data() + rows, array.data() + part.first_row, part.rows * sizeof(double));
        }
      }
      rows += part.rows;
    }
    for (auto* arrays : {&result_.times, &result_.values}) {
      for (auto& array : *arrays) {
        array.resize(rows);
        if (array.capacity() > rows + rows / 4 + 64) array.shrink_to_fit();
      }
    }
    result_.rows = rows;
  }

  Result<WideResult> finish(std::vector<Part>& parts) {
    std::vector<RowReader::Account> accounts;
    std::size_t rows = 0;
    for (Part& part : parts) {
      accounts.push_back(std::move(part.reader->account));
      rows += part.rows;
    }
    bool drop_last = false;
    if (auto error = settle(accounts, rows, plan_, file_, result_, drop_last)) return *error;
    close_up(parts);
    if (drop_last) {
      for (auto* arrays : {&result_.times, &result_.values}) {
        for (auto& array : *arrays) array.pop_back();
      }
      --result_.rows;
    }
    return std::move(result_);
  }

  RowSource& rows_;
  const Dialect* dialect_;
  const Position first_;
  const WidePlan& plan_;
  const std::string& file_;
  Shared shared_;
  WideResult result_;
};

}  // namespace

std::size_t count_filled_lines(std::string_view text) {
  // Starts of lines that hold more than a line end.
  std::size_t count = 0;
  bool at_start = true;
  const char* p = text.data();
  const char* const end = p + text.size();
  while (p < end) {
    if (*p == '\n' || *p == '\r') {
      at_start = true;
      ++p;
      continue;
    }
    count += at_start ? 1 : 0;
    at_start = false;
    // A word of 8 bytes without CR and LF is passed over at once.
    while (end - p >= 8) {
      std::uint64_t word = 0;
      std::memcpy(&word, p, 8);
      constexpr std::uint64_t kOnes = 0x0101010101010101, kHigh = 0x8080808080808080;
      const std::uint64_t feed = word ^ (kOnes * '\n'), carriage = word ^ (kOnes * '\r');
      const std::uint64_t hit = ((feed - kOnes) & ~feed & kHigh) | ((carriage - kOnes) & ~carriage & kHigh);
      if (hit != 0) break;
      p += 8;
    }
    while (p < end && *p != '\n' && *p != '\r') ++p;
  }
  return count;
}

Result<WideResult> read_wide(RowSource& rows, const Dialect* dialect, Position first, const WidePlan& plan,
                             const std::string& file, unsigned threads, std::size_t most_numbers,
                             const Progress& progress) {
  return WideReader(rows, dialect, first, plan, file, progress).run(threads, most_numbers);
}

}  // namespace ovenwright::log
