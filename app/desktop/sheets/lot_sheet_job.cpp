#include "app/desktop/sheets/lot_sheet_job.h"

#include <QPointer>
#include <QPromise>
#include <QtConcurrent>
#include <algorithm>
#include <utility>

#include "app/desktop/archive/archive_link.h"
#include "app/sheet/archived.h"
#include "app/sheet/sheet.h"
#include "core/units/memory.h"

namespace ovenwright::desktop {
namespace {

using Runs = std::vector<sheet::RunRecord>;

const QString kKind = QStringLiteral("lot sheet");

/// The runs of each lot, in the order of its first one.
std::vector<Runs> byLot(Runs runs) {
  std::vector<Runs> lots;
  for (auto& run : runs) {
    auto lot = std::ranges::find_if(lots, [&](const Runs& each) { return each.front().labels.lot == run.labels.lot; });
    if (lot == lots.end()) lot = lots.insert(lot, Runs{});
    lot->push_back(std::move(run));
  }
  return lots;
}

}  // namespace

LotSheetJob::LotSheetJob(ArchiveLink* link, QObject* parent) : QObject(parent), m_link(link) {
  connect(&m_watcher, &QFutureWatcherBase::finished, this, [this] {
    const bool wanted = std::exchange(m_layingOut, false);
    if (!wanted || m_watcher.future().resultCount() == 0) return;
    if (const auto sheets = m_watcher.result()) {
      emit made(*sheets);
    } else {
      emit failed(sheets.error());
    }
  });
}

LotSheetJob::~LotSheetJob() {
  m_link->drop(this, kKind);
  m_watcher.disconnect(this);
  m_watcher.cancel();
  m_watcher.waitForFinished();
}

void LotSheetJob::cancel() {
  ++m_wish;
  m_fetching = m_layingOut = false;
  m_link->drop(this, kKind);
  m_watcher.cancel();
}

void LotSheetJob::start(Wish wish) {
  cancel();
  m_fetching = true;
  const int of = int(wish.ids.size());
  const auto progress = [this, of, number = m_wish, guard = QPointer(this)](double done) {
    QMetaObject::invokeMethod(
        QCoreApplication::instance(),
        [=, this] {
          if (guard && m_wish == number) emit progressed(qRound(done * of), of);
        },
        Qt::QueuedConnection);
  };
  m_link->ask<Runs>(
      this, kKind,
      [ids = std::move(wish.ids), progress](archive::Archive& archive, const ArchiveLink::Stop& stop) {
        return sheet::archivedRuns(archive, ids, [&](double done) {
          progress(done);
          return stop.isWanted();
        });
      },
      [this, style = std::move(wish.style), each = wish.each](Result<Runs> runs) {
        m_fetching = false;
        if (runs) {
          layOut(byLot(*std::move(runs)), style, each);
        } else {
          emit failed(runs.error());
        }
      });
}

void LotSheetJob::layOut(std::vector<Runs> lots, sheet::Style style, bool each) {
  m_layingOut = true;
  m_watcher.setFuture(
      QtConcurrent::run([lots = std::move(lots), style = std::move(style), each](QPromise<Outcome>& promise) mutable {
        auto outcome = within_memory({}, [&]() -> Outcome {
          auto pages = std::make_shared<SheetPages>();
          for (const Runs& lot : lots) {
            if (promise.isCanceled()) return Error{ErrorCode::kCancelled, {}, {}, {}, {}};
            pages->sheets.push_back(sheet::lotSheet(lot, style, each));
          }
          auto made = std::make_shared<LotSheets>();
          made->lots = std::move(lots);
          made->pages = std::move(pages);
          return std::shared_ptr<const LotSheets>(std::move(made));
        });
        if (!promise.isCanceled()) promise.addResult(std::move(outcome));
      }));
}

}  // namespace ovenwright::desktop
