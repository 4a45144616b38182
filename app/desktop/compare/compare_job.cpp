#include "app/desktop/compare/compare_job.h"

#include <QtConcurrent>

#include "core/units/memory.h"

namespace ovenwright::desktop {

CompareJob::CompareJob(QObject* parent) : QObject(parent) {
  m_thread.setMaxThreadCount(1);
  connect(&m_watcher, &QFutureWatcherBase::finished, this, &CompareJob::conclude);
}

CompareJob::~CompareJob() {
  m_watcher.disconnect(this);
  m_watcher.waitForFinished();
}

void CompareJob::ask(CompareInput input) {
  m_wanted = std::move(input);
  if (!m_busy) next();
}

void CompareJob::drop() {
  m_wanted.reset();
  m_dropped = true;
}

void CompareJob::next() {
  m_busy = true;
  m_dropped = false;
  m_watcher.setFuture(QtConcurrent::run(&m_thread, [input = *std::exchange(m_wanted, std::nullopt)]() mutable {
    return within_memory({}, [&] { return compareNow(std::move(input)); });
  }));
}

void CompareJob::conclude() {
  const auto outcome = m_watcher.result();
  m_busy = false;
  if (m_wanted) return next();  // what was worked out is no longer asked for
  if (m_dropped) return;
  if (outcome) {
    emit compared(*outcome);
  } else {
    emit failed(outcome.error());
  }
}

}  // namespace ovenwright::desktop
