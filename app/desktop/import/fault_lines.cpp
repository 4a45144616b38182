#include "app/desktop/import/fault_lines.h"

#include <QFile>
#include <algorithm>
#include <map>

#include "core/log/cell.h"
#include "core/log/grid.h"
#include "core/log/rows.h"

namespace ovenwright::desktop {
namespace {

constexpr qint64 kMostBytes = qint64{16} << 20;
constexpr std::size_t kMostUnpackedBytes = std::size_t{64} << 20;
constexpr std::size_t kMostLines = 24, kMostOfAFault = 2;

/// How rows fall into cells, by the layout's word for it; none where they do not stand apart by one character.
std::optional<log::Dialect> dialectOf(const std::string& delimiter) {
  log::Dialect dialect;
  if (delimiter == " ") {
    dialect.split = log::Dialect::Split::kBlanks;
  } else if (delimiter.size() == 1) {
    dialect.delimiter = delimiter[0];
  } else {
    return std::nullopt;
  }
  return dialect;
}

/// The samples that faults took out of channels of one clock.
struct FaultySamples {
  std::map<std::size_t, std::vector<int>> columns;  ///< by the sample's number: the columns, from 0
  std::size_t samples = 0;                          ///< of the clock
};

/// By the column of the clock, from 1; 0: the layout's own.
std::map<int, FaultySamples> faultySamples(const RunView& view) {
  std::map<int, FaultySamples> clocks;
  std::size_t lines = 0, used = 0;
  const auto& reading = view.reading();
  for (const auto& column : reading.layout.channels) {
    if (!column.use || used >= view.run().channels.size() || used >= reading.channels.size()) continue;
    const auto& raw = reading.channels[used];
    for (const auto& fault : view.run().channels[used].faults) {
      if (fault.action != run::FaultAction::kRemoved) continue;
      auto& clock = clocks[column.time_column];
      clock.samples = raw.time_s->size();
      const auto first = std::size_t(std::ranges::lower_bound(*raw.time_s, fault.from_s) - raw.time_s->begin());
      for (std::size_t i = first; i < std::min(first + kMostOfAFault, raw.time_s->size()); ++i) {
        if ((*raw.time_s)[i] > fault.to_s || lines >= kMostLines) break;
        lines += !clock.columns.contains(i);
        clock.columns[i].push_back(column.column - 1);
      }
    }
    ++used;
  }
  return clocks;
}

/// A row of the table: a time (or, without times, a reading) stands where it belongs, and not only text elsewhere.
bool isSample(const log::Row& row, const std::vector<int>& times, const std::vector<int>& channels, char decimal) {
  const auto cell = [&](int column) {
    const auto at = std::size_t(column - 1);
    return column > 0 && at < row.cells.size() ? log::read_cell(row.cells[at], decimal) : log::Cell{};
  };
  const bool has_time = std::ranges::all_of(times, [&](int column) {
    const auto kind = cell(column).kind;
    return kind == log::CellKind::kNumber || kind == log::CellKind::kTime ||
           (times.size() > 1 && kind == log::CellKind::kText);  // "PM" beside its clock
  });
  if (!has_time) return false;
  const auto reads = [&](int column) {
    const auto kind = cell(column).kind;
    return kind != log::CellKind::kText && (!times.empty() || kind == log::CellKind::kNumber);
  };
  return std::ranges::any_of(channels, reads);
}

void takeLines(log::RowSource& rows, const log::Layout& layout, int clock, const FaultySamples& faulty,
               FaultLines& found) {
  const char decimal = layout.decimal.value_or(".").empty() ? '.' : layout.decimal.value_or(".").front();
  const std::vector<int> times = clock > 0 ? std::vector{clock} : layout.time.columns;
  std::vector<int> channels;
  for (const auto& channel : layout.channels)
    if (channel.time_column == clock) channels.push_back(channel.column);
  FaultLines own;
  rows.seek({});
  log::Row row;
  std::size_t sample = 0;
  while (rows.next(row)) {
    if (int(row.line) <= layout.header_line.value_or(0) || row.blank()) continue;
    if (!isSample(row, times, channels, decimal)) continue;
    if (const auto at = faulty.columns.find(sample++); at != faulty.columns.end()) {
      own.lines.push_back({row.line, {row.cells.begin(), row.cells.end()}});
      for (const int column : at->second) own.cells.push_back({row.line, column});
    }
  }
  // A row that was cut off is no sample; any other difference means that rows were counted otherwise than by the
  // reader.
  if (sample != faulty.samples && sample != faulty.samples + 1) return;
  for (auto& line : own.lines)
    if (std::ranges::find(found.lines, line.line, &log::ShownLine::line) == found.lines.end())
      found.lines.push_back(std::move(line));
  found.cells.insert(found.cells.end(), own.cells.begin(), own.cells.end());
}

}  // namespace

FaultLines faultLines(const Source& source, const RunView& view) {
  const auto& reading = view.reading();
  const auto& layout = reading.layout;
  if (layout.form.value_or(log::Form::kWide) != log::Form::kWide) return {};
  const auto clocks = faultySamples(view);
  if (clocks.empty()) return {};
  QByteArray bytes = source.pasted;
  if (!source.path.isEmpty()) {
    QFile file(source.path);
    if (file.size() > kMostBytes || !file.open(QIODevice::ReadOnly)) return {};
    bytes = file.readAll();
  }
  const std::string_view raw(bytes.constData(), std::size_t(bytes.size()));
  std::vector<std::string> notes;
  const auto content = log::open_container(reading.file.file, raw, kMostUnpackedBytes, notes);
  if (!content) return {};
  FaultLines found;
  const auto take = [&](log::RowSource& rows) {
    for (const auto& [clock, faulty] : clocks) takeLines(rows, layout, clock, faulty, found);
  };
  if (content->kind == "text") {
    const std::string_view text = content->plain ? raw : std::string_view(content->bytes);
    const auto dialect = dialectOf(layout.delimiter.value_or(""));
    const auto decoded = log::decode(text, layout.encoding.value_or(""));
    if (!dialect || !decoded) return {};
    log::TextRows rows(decoded->unchanged ? text.substr(decoded->skip) : std::string_view(decoded->utf8), *dialect);
    take(rows);
  } else {
    const auto grid = std::ranges::find(content->grids, layout.sheet.value_or(""), &log::Grid::name);
    if (grid == content->grids.end()) return {};
    log::GridRows rows(*grid);
    take(rows);
  }
  std::ranges::sort(found.lines, {}, &log::ShownLine::line);
  return found;
}

}  // namespace ovenwright::desktop
