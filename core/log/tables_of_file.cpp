#include "core/log/tables_of_file.h"

#include <algorithm>

#include "core/log/cell.h"
#include "core/log/header_text.h"
#include "core/log/text.h"
#include "core/log/words.h"

namespace ovenwright::log {
namespace {

constexpr std::size_t kFewestRows = 5, kMostHeaders = 4, kMostTimes = 100'000, kMostCells = 4096;

/// What a row is, by its cells.
struct RowKind {
  std::size_t filled = 0, texts = 0, numbers = 0;
  int time = -1;  ///< the first cell that names a time
};

RowKind kind_of(const Row& row, char decimal) {
  RowKind kind;
  for (std::size_t i = 0; i < std::min(row.cells.size(), kMostCells); ++i) {
    const auto text = row.cells[i];
    if (text.empty()) continue;
    ++kind.filled;
    const Cell cell = read_cell(text, decimal);
    kind.numbers += cell.number() || cell.kind == CellKind::kTime ? 1 : 0;
    if (cell.kind != CellKind::kText) continue;
    ++kind.texts;
    constexpr std::size_t kLongest = 60;
    const bool names_time = kind.time < 0 && text.size() < kLongest &&
                            (read_header_text(text).words & (kTimeWord | kDateWord | kIndexWord)) != 0;
    if (names_time) kind.time = static_cast<int>(i);
  }
  return kind;
}

/// Seconds, a number: what tells whether time goes on. Nothing where neither stands there.
std::optional<double> moment(std::string_view text, char decimal) {
  const Cell cell = read_cell(text, decimal);
  if (cell.number()) return cell.value;
  return cell.kind == CellKind::kTime && cell.time.has_clock ? std::optional{cell.time.clock_s} : std::nullopt;
}

class Tables {
 public:
  explicit Tables(char decimal) : decimal_(decimal) {}

  void add(const Row& row) {
    if (row.blank()) return;
    const RowKind kind = kind_of(row, decimal_);
    const bool words = kind.texts >= 2 && kind.numbers == 0 && kind.time >= 0;
    if (words && (tables_.empty() || !same_names(row))) {
      begin(row, kind);
    } else if (!tables_.empty() && kind.numbers >= 2 && kind.numbers >= kind.texts) {
      count(row);
    } else if (!tables_.empty() && tables_.back().rows == 0 && headers_ < kMostHeaders) {
      ++headers_;
      tables_.back().last_header_line = row.line;
    }
  }

  std::vector<FileTable> take(std::size_t end_line) {
    std::vector<FileTable> logs;
    for (std::size_t i = 0; i < tables_.size(); ++i) {
      FileTable& table = tables_[i];
      const bool log = table.rows >= kFewestRows && back_[i] * 10 <= table.rows && names_channels(table);
      if (log) logs.push_back(std::move(table));
    }
    for (std::size_t i = 0; i < logs.size(); ++i)
      logs[i].to_line = i + 1 < logs.size() ? logs[i + 1].from_line : end_line;
    if (logs.size() < 2) return {};
    return logs;
  }

 private:
  bool same_names(const Row& row) const {
    return std::equal(row.cells.begin(), row.cells.end(), tables_.back().names.begin(), tables_.back().names.end());
  }

  /// "Zone", "Reached at (s)", "Setpoint": a list of zones, levels or results, though its times may go on.
  static bool names_channels(const FileTable& table) {
    std::size_t channels = 0;
    for (std::size_t i = 0; i < table.names.size(); ++i) {
      const auto head = read_header_text(table.names[i]);
      if (i == table.time_column || head.whole.empty()) continue;
      const bool of_zones = (head.words & (kZoneWord | kSetpointWord | kStatisticWord)) != 0;
      if (i == 0 && of_zones) return false;
      channels += of_zones || (head.words & kOtherWord) != 0 ? 0 : 1;
    }
    return channels > 0;
  }

  void begin(const Row& row, const RowKind& kind) {
    // A header of several rows: the one that names the time last counts.
    const bool goes_on = !tables_.empty() && tables_.back().rows == 0;
    if (!goes_on) {
      tables_.emplace_back();
      back_.push_back(0);
      tables_.back().from_line = row.line;
    }
    FileTable& table = tables_.back();
    table.header_line = table.last_header_line = row.line;
    table.names.assign(row.cells.begin(), row.cells.end());
    table.time_column = static_cast<std::size_t>(kind.time);
    headers_ = 0;
    before_.reset();
  }

  void count(const Row& row) {
    FileTable& table = tables_.back();
    const auto time = table.time_column < row.cells.size() ? row.cells[table.time_column] : std::string_view{};
    const auto now = moment(time, decimal_);
    if (!now) return;
    ++table.rows;
    if (before_ && *now < *before_) ++back_.back();
    before_ = now;
    if (table.times.size() < kMostTimes) table.times.emplace_back(time);
  }

  const char decimal_;
  std::vector<FileTable> tables_;
  std::vector<std::size_t> back_;  ///< steps back in time, for each table
  std::optional<double> before_;
  std::size_t headers_ = 0;
};

}  // namespace

std::vector<FileTable> tables_of_file(RowSource& rows, char decimal) {
  Tables tables(decimal);
  Row row;
  std::size_t end_line = 1;
  rows.seek({});
  while (rows.next(row)) {
    tables.add(row);
    end_line = row.line + row.lines;
  }
  return tables.take(end_line);
}

bool same_times(const std::vector<FileTable>& tables) {
  return std::all_of(tables.begin(), tables.end(), [&](const FileTable& table) {
    return table.rows == table.times.size() && table.times == tables.front().times;
  });
}

}  // namespace ovenwright::log
