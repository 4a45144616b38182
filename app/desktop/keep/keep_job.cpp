#include "app/desktop/keep/keep_job.h"

#include <QtConcurrent>
#include <algorithm>
#include <utility>

#include "app/archive/keep.h"
#include "app/desktop/archive/archive_link.h"
#include "core/units/memory.h"

namespace ovenwright::desktop {
namespace {

using archive::NewRun;

Result<std::vector<NewRun>> recordsOf(const KeepJob::Log& log, const archive::Labels& labels) {
  if (!log.source.path.isEmpty())
    return archive::keep(log.source.path.toStdString(), log.setup, log.checked->log, labels);
  archive::NewFile pasted;
  pasted.name = log.source.name.toStdString();
  pasted.bytes = std::make_shared<const std::string>(log.source.pasted.toStdString());
  pasted.sha256 = log.checked->log.reading.file.sha256;
  return archive::keep(std::move(pasted), archive::now(), log.setup, log.checked->log, labels);
}

Result<std::vector<NewRun>> work(const KeepJob::Wish& wish) {
  std::vector<NewRun> all;
  for (const auto& log : wish.logs) {
    auto runs = recordsOf(log, wish.labels);
    if (!runs) {
      Error error = runs.error();
      if (error.where.file.empty()) error.where.file = log.source.name.toStdString();
      return error;
    }
    for (std::size_t i = 0; i < runs->size(); ++i) {
      if (log.run && *log.run != i) continue;
      all.push_back(std::move((*runs)[i]));
    }
  }
  return all;
}

}  // namespace

KeepJob::KeepJob(ArchiveLink* link, QObject* parent) : QObject(parent), m_link(link) {
  connect(&m_watcher, &QFutureWatcherBase::finished, this, [this] {
    m_making = false;
    auto records = m_watcher.result();
    const auto logs = std::exchange(m_wish, {}).logs;
    if (records) return add(*std::move(records));
    lookForKept(logs, records.error());
  });
}

KeepJob::~KeepJob() {
  m_watcher.disconnect(this);
  m_watcher.waitForFinished();
  if (!m_making) return;
  if (auto records = m_watcher.result()) add(*std::move(records));
}

void KeepJob::start(Wish wish) {
  m_running = m_making = true;
  m_wish = wish;
  m_watcher.setFuture(
      QtConcurrent::run([wish = std::move(wish)] { return within_memory({}, [&] { return work(wish); }); }));
}

void KeepJob::lookForKept(const std::vector<Log>& logs, const Error& error) {
  using All = std::vector<Kept>;
  m_link->ask<All>(
      this, QStringLiteral("kept"),
      [logs, error](archive::Archive& archive, const ArchiveLink::Stop&) -> Result<All> {
        All all;
        for (const auto& log : logs) {
          archive::Filter filter;
          filter.logSha256 = log.checked->log.reading.file.sha256;
          const auto kept = archive.find(filter, 1000, std::nullopt, archive::Order::kOldestFirst);
          if (!kept) return error;
          for (std::size_t i = 0; i < log.checked->log.runs.size(); ++i) {
            if (log.run && *log.run != i) continue;
            const int part = log.checked->log.runs[i].run.part;
            const auto at = std::ranges::find_if(
                kept->runs, [part](const auto& run) { return run.part == part && run.judgedFrom.empty(); });
            if (at == kept->runs.end()) return error;
            all.push_back({QString::fromStdString(at->logName), QString::fromStdString(at->id),
                           QString::fromStdString(at->lot), true});
          }
        }
        return all;
      },
      [this, error](Result<All> all) {  // the error of the records, also where the archive could not be asked
        m_running = false;
        if (all) {
          emit kept(*all);
        } else {
          emit failed(error);
        }
      });
}

void KeepJob::add(std::vector<NewRun> runs) {
  using All = std::vector<Kept>;
  const auto records = std::make_shared<const std::vector<NewRun>>(std::move(runs));
  m_link->ask<All>(
      this, {},
      [records](archive::Archive& archive, const ArchiveLink::Stop&) -> Result<All> {
        const auto added = archive.add(*records);
        if (!added) return added.error();
        All all;
        for (std::size_t i = 0; i < records->size(); ++i) {
          const auto& one = (*added)[i];
          Kept kept{QString::fromStdString((*records)[i].log.name), QString::fromStdString(one.id),
                    QString::fromStdString((*records)[i].labels.lot), one.already};
          if (one.already) {  // in which lot it is; a server that went away meanwhile leaves that open
            const auto record = archive.load(one.id);
            kept.lot = record ? QString::fromStdString(record->summary.lot) : QString();
          }
          all.push_back(std::move(kept));
        }
        return all;
      },
      [this](Result<All> all) {
        m_running = false;
        if (all) {
          emit kept(*all);
        } else {
          emit failed(all.error());
        }
      },
      ArchiveLink::Need::kWrite);
}

}  // namespace ovenwright::desktop
