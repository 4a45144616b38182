#include "app/desktop/lots/table_file.h"

#include <fmt/format.h>

#include <QFile>
#include <QSaveFile>

#include "core/report/spreadsheet.h"

namespace ovenwright::desktop {
namespace {

constexpr std::size_t kAtOnce = 1000;

std::string line(const archive::Summary& run) {
  const auto text = [](const std::string& value) { return report::csv_cell(value); };
  return fmt::format("{},{},{},{},{},{},{},{},{},{},{},{},{},{},{},{},{},{}\r\n", run.id,
                     archive::momentText(run.runAt), archive::momentText(run.addedAt), text(run.lot), text(run.serial),
                     text(run.board), text(run.oven), text(run.recipe), text(run.window), text(run.windowRevision),
                     judge::verdict_name(run.verdict), run.margin ? fmt::format("{}", *run.margin) : std::string(),
                     text(run.operatorName), text(run.logName), run.part, run.logSha256, text(run.judgedFrom),
                     run.printedAt ? archive::momentText(*run.printedAt) : std::string());
}

}  // namespace

Result<std::size_t> writeTable(archive::Archive& archive, const archive::Filter& filter, archive::Order order,
                               const std::string& path) {
  QSaveFile file(QFile::decodeName(path.c_str()));
  const auto unwritten = [&] {
    return Error{ErrorCode::kIo, "cannot be written: " + file.errorString().toStdString(), {path, 0, 0}, {}, {}};
  };
  if (!file.open(QIODevice::WriteOnly)) return unwritten();
  file.write(
      "record,run_at,added_at,lot,serial,board,oven,recipe,window,window_revision,verdict,margin,operator,log,log_part,"
      "log_sha256,judged_from,printed_at\r\n");
  std::size_t written = 0;
  std::optional<archive::Cursor> after;
  do {
    const auto page = archive.find(filter, kAtOnce, after, order);
    if (!page) return page.error();
    for (const auto& run : page->runs) {
      const std::string cells = line(run);
      if (file.write(cells.data(), qint64(cells.size())) < 0) return unwritten();
    }
    written += page->runs.size();
    after = page->next;
  } while (after);
  if (!file.commit()) return unwritten();
  return written;
}

}  // namespace ovenwright::desktop
