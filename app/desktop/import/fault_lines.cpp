#include "app/desktop/import/fault_lines.h"

#include <QFile>
#include <algorithm>
#include <map>

#include "core/log/dialect.h"
#include "core/log/grid.h"
#include "core/log/rows.h"

namespace ovenwright::desktop {
namespace {

constexpr qint64 kMostBytes = qint64{16} << 20;
constexpr std::size_t kMostUnpackedBytes = std::size_t{64} << 20;
constexpr std::size_t kMostLines = 24, kMostOfAFault = 2;

/// How the lines of the text fall into cells, by the layout's word for it.
std::optional<log::Dialect> dialectOf(const log::Layout& layout, std::string_view text) {
  const std::string delimiter = layout.delimiter.value_or("");
  log::Dialect dialect;
  if (delimiter == log::kFixedWidth) return log::guess_dialect(text, layout).dialect;
  if (delimiter == " ") {
    dialect.split = log::Dialect::Split::kBlanks;
  } else if (delimiter.size() == 1) {
    dialect.delimiter = delimiter[0];
  } else if (delimiter.empty()) {
    dialect.split = log::Dialect::Split::kWhole;
  } else {
    return std::nullopt;
  }
  return dialect;
}

/// Where the samples stand that faults took out, by line; empty where reading anew gave other samples.
std::map<std::size_t, std::vector<int>> faultyCells(const RunView& view, const log::Reading& anew) {
  const auto& before = view.reading().channels;
  std::map<std::size_t, std::vector<int>> columns;
  for (std::size_t k = 0; k < std::min(before.size(), view.run().channels.size()); ++k) {
    const auto& times = *before[k].time_s;
    if (k >= anew.cells.size() || anew.cells[k].size() != times.size()) return {};
    for (const auto& fault : view.run().channels[k].faults) {
      if (fault.action != run::FaultAction::kRemoved) continue;
      const auto first = std::size_t(std::ranges::lower_bound(times, fault.from_s) - times.begin());
      for (std::size_t i = first; i < std::min(first + kMostOfAFault, times.size()) && times[i] <= fault.to_s; ++i) {
        const auto [line, column] = anew.cells[k][i];
        if (columns.size() < kMostLines || columns.contains(line)) columns[line].push_back(column - 1);
      }
    }
  }
  return columns;
}

/// The cells of these lines as they stand in the file.
FaultLines linesOf(log::RowSource& rows, const std::map<std::size_t, std::vector<int>>& columns) {
  FaultLines found;
  rows.seek({});
  log::Row row;
  while (found.lines.size() < columns.size() && rows.next(row)) {
    const auto at = columns.find(row.line);
    if (at == columns.end()) continue;
    found.lines.push_back({row.line, {row.cells.begin(), row.cells.end()}});
    for (const int column : at->second) found.cells.push_back({row.line, column});
  }
  return found;
}

}  // namespace

FaultLines faultLines(const Source& source, const RunView& view) {
  const auto& reading = view.reading();
  const auto& layout = reading.layout;
  const auto removed = [](const run::Fault& fault) { return fault.action == run::FaultAction::kRemoved; };
  if (std::ranges::none_of(view.run().channels,
                           [&](const run::Channel& channel) { return std::ranges::any_of(channel.faults, removed); }))
    return {};
  QByteArray bytes = source.pasted;
  if (!source.path.isEmpty()) {
    QFile file(source.path);
    if (file.size() > kMostBytes || !file.open(QIODevice::ReadOnly)) return {};
    bytes = file.readAll();
  }
  const std::string_view raw(bytes.constData(), std::size_t(bytes.size()));
  log::Options options;
  options.layout = layout;
  options.most_unpacked_bytes = kMostUnpackedBytes;
  options.digest = false;
  options.keep_cells = true;
  const auto anew = log::read_bytes(reading.file.file, raw, options);
  if (!anew) return {};
  const auto columns = faultyCells(view, *anew);
  std::vector<std::string> notes;
  const auto content =
      log::open_container(reading.file.file, raw, kMostUnpackedBytes, notes, {}, layout.member.value_or(""));
  if (!content || columns.empty()) return {};
  if (content->kind != "text") {
    for (std::size_t i = 0; i < content->grids.size(); ++i) {
      if (log::sheet_key(content->grids, i) != layout.sheet.value_or("")) continue;
      log::GridRows rows(content->grids[i]);
      return linesOf(rows, columns);
    }
    return {};
  }
  const std::string_view text = content->plain ? raw : std::string_view(content->bytes);
  const auto decoded = log::decode(text, layout.encoding.value_or(""));
  if (!decoded) return {};
  const std::string_view plain = decoded->unchanged ? text.substr(decoded->skip) : std::string_view(decoded->utf8);
  const auto dialect = dialectOf(layout, plain);
  if (!dialect) return {};
  log::TextRows rows(plain, *dialect);
  return linesOf(rows, columns);
}

}  // namespace ovenwright::desktop
