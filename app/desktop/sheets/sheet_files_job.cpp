#include "app/desktop/sheets/sheet_files_job.h"

#include <QDir>
#include <QFile>
#include <QtConcurrent>

#include "app/desktop/archive/archive_link.h"
#include "app/desktop/sheets/printed_note.h"
#include "app/desktop/window/notice.h"
#include "app/sheet/archived.h"
#include "core/units/memory.h"

namespace ovenwright::desktop {
namespace {

using Runs = std::vector<sheet::RunRecord>;

const QString kKind = QStringLiteral("sheet files");

}  // namespace

SheetFilesJob::SheetFilesJob(ArchiveLink* link, QObject* parent) : QObject(parent), m_link(link) {
  connect(&m_writing, &QFutureWatcherBase::finished, this, [this] {
    m_isWriting = false;
    if (const auto error = m_writing.result()) {
      m_outcome.stopped = *error;
      return finish();
    }
    ++m_outcome.written;
    if (m_wish.notedBy)
      notePrinted(m_link, this, m_ids, *m_wish.notedBy,
                  [this, lot = m_wish.items[m_at].lot](const Error& error) { emit notNoted(lot, error); });
    ++m_at;
    next();
  });
}

SheetFilesJob::~SheetFilesJob() {
  m_link->drop(this, kKind);
  m_writing.disconnect(this);
  m_writing.waitForFinished();
}

QStringList SheetFilesJob::paths(const std::vector<Item>& items, const QString& folder, sheet::FileKind kind) {
  QStringList lots;
  for (const Item& item : items) lots << item.lot;
  QStringList paths = sheet::fileNames(lots, kind);
  for (QString& path : paths) path = QDir(folder).filePath(path);
  return paths;
}

void SheetFilesJob::start(Wish wish) {
  m_wish = std::move(wish);
  m_outcome = {};
  m_outcome.of = int(m_wish.items.size());
  m_at = 0;
  m_running = true;
  next();
}

void SheetFilesJob::cancel() {
  if (!m_running) return;
  m_outcome.cancelled = true;
  m_link->drop(this, kKind);
  if (!m_isWriting) finish();
}

void SheetFilesJob::next() {
  if (m_outcome.cancelled || m_at >= m_wish.items.size()) return finish();
  const Item& item = m_wish.items[m_at];
  emit progressed(int(m_at), m_outcome.of, item.lot);
  if (!m_running) return;  // one who was told has cancelled
  m_link->ask<Runs>(
      this, kKind,
      [lot = item.lot.toStdString(), ids = item.ids](archive::Archive& archive,
                                                     const ArchiveLink::Stop& stop) mutable -> Result<Runs> {
        if (ids.empty()) {
          auto all = sheet::idsOfLot(archive, lot);
          if (!all) return all.error();
          ids = *std::move(all);
        }
        return sheet::archivedRuns(archive, ids, [&stop](double) { return stop.isWanted(); });
      },
      [this](Result<Runs> runs) {
        if (runs) return write(*std::move(runs));
        notMade(runs.error());
        ++m_at;
        next();
      });
}

void SheetFilesJob::write(Runs runs) {
  m_ids.clear();
  for (const auto& run : runs) m_ids.push_back(run.archive->id.toStdString());
  m_isWriting = true;
  m_writing.setFuture(QtConcurrent::run([runs = std::move(runs), path = m_wish.paths[qsizetype(m_at)],
                                         style = m_wish.style, kind = m_wish.kind, each = m_wish.each,
                                         existing = m_wish.existing]() -> std::optional<Error> {
    const std::string file = QFile::encodeName(path).toStdString();
    const auto written =
        within_memory(file, [&] { return files::write_file(file, sheet::fileOf(runs, style, kind, each), existing); });
    if (!written) return written.error();
    return std::nullopt;
  }));
}

void SheetFilesJob::notMade(const Error& error) {
  m_outcome.notMade << tr("%1: %2").arg(m_wish.items[m_at].lot, errorText(error));
}

void SheetFilesJob::finish() {
  m_running = false;
  emit finished(m_outcome);
}

}  // namespace ovenwright::desktop
