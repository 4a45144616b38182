#include "app/desktop/import/fault_lines.h"

#include <QFile>
#include <algorithm>
#include <map>

#include "core/log/grid.h"
#include "core/log/rows.h"

namespace ovenwright::desktop {
namespace {

constexpr qint64 kMostBytes = qint64{16} << 20;
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

/// The samples that faults took out, with the columns they stand in.
std::map<std::size_t, std::vector<int>> faultySamples(const RunView& view) {
  std::map<std::size_t, std::vector<int>> columns;
  const auto& reading = view.reading();
  std::size_t used = 0;
  for (const auto& column : reading.layout.channels) {
    if (!column.use || used >= view.run().channels.size() || used >= reading.channels.size()) continue;
    const auto& raw = reading.channels[used];
    for (const auto& fault : view.run().channels[used].faults) {
      if (fault.action != run::FaultAction::kRemoved) continue;
      const auto first = std::size_t(std::ranges::lower_bound(*raw.time_s, fault.from_s) - raw.time_s->begin());
      for (std::size_t i = first; i < std::min(first + kMostOfAFault, raw.time_s->size()); ++i)
        if ((*raw.time_s)[i] <= fault.to_s && columns.size() < kMostLines) columns[i].push_back(column.column - 1);
    }
    ++used;
  }
  return columns;
}

/// Where the table's first row stands: what is shown of a file starts with its first lines up to six rows of the table.
std::size_t firstRowLine(const log::Reading& reading) {
  constexpr std::size_t kRowsShown = 6;
  std::size_t last = 0;
  for (const auto& line : reading.shown) {
    if (line.line != last + 1) break;
    last = line.line;
  }
  const auto header = std::size_t(std::max(0, reading.layout.header_line.value_or(0)));
  return last >= header + kRowsShown && reading.read_as.rows > kRowsShown ? last - kRowsShown + 1 : 0;
}

}  // namespace

FaultLines faultLines(const Source& source, const RunView& view) {
  const auto& reading = view.reading();
  const auto dialect = dialectOf(reading.layout.delimiter.value_or(""));
  const bool wide = reading.layout.form.value_or(log::Form::kWide) == log::Form::kWide;
  const std::size_t first_row = firstRowLine(reading);
  if (!dialect || !wide || first_row == 0 || reading.read_as.rows_skipped > 0 || !reading.file.member.empty())
    return {};
  const auto samples = faultySamples(view);
  if (samples.empty()) return {};
  QByteArray bytes = source.pasted;
  if (!source.path.isEmpty()) {
    QFile file(source.path);
    if (file.size() > kMostBytes || !file.open(QIODevice::ReadOnly)) return {};
    bytes = file.readAll();
  }
  const std::string_view raw(bytes.constData(), std::size_t(bytes.size()));
  const auto decoded = log::decode(raw, reading.layout.encoding.value_or(""));
  if (!decoded) return {};
  log::TextRows rows(decoded->unchanged ? raw.substr(decoded->skip) : std::string_view(decoded->utf8), *dialect);
  FaultLines found;
  log::Row row;
  auto next = samples.begin();
  for (std::size_t sample = 0; next != samples.end() && rows.next(row);) {
    if (row.line < first_row || row.blank()) continue;
    if (sample++ != next->first) continue;
    found.lines.push_back({row.line, {row.cells.begin(), row.cells.end()}});
    for (const int column : next->second) found.cells.push_back({row.line, column});
    ++next;
  }
  return found;
}

}  // namespace ovenwright::desktop
