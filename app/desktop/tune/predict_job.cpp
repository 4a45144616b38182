#include "app/desktop/tune/predict_job.h"

#include <QtConcurrent>

#include "core/units/memory.h"

namespace ovenwright::desktop {
namespace {

constexpr int kRest_ms = 25;  // a mouse that moves reports more often than that

}  // namespace

PredictJob::PredictJob(QObject* parent) : QObject(parent) {
  m_thread.setMaxThreadCount(1);
  m_rest.setSingleShot(true);
  m_rest.setInterval(kRest_ms);
  connect(&m_watcher, &QFutureWatcherBase::finished, this, &PredictJob::conclude);
  connect(&m_rest, &QTimer::timeout, this, &PredictJob::askForBand);
}

PredictJob::~PredictJob() {
  m_watcher.disconnect(this);
  m_watcher.waitForFinished();
}

void PredictJob::ask(std::shared_ptr<const TuneModel> model, oven::Recipe recipe) {
  m_wanted = {std::move(model), std::move(recipe), false};
  if (!m_busy || m_rest.isActive()) next();
}

void PredictJob::drop() {
  m_wanted.reset();
  m_dropped = true;
  if (!m_rest.isActive()) return;
  m_rest.stop();
  m_busy = false;
}

void PredictJob::next() {
  m_rest.stop();
  m_running = *std::move(m_wanted);
  m_wanted.reset();
  m_dropped = false;
  m_busy = true;
  m_watcher.setFuture(QtConcurrent::run(&m_thread, [wanted = m_running]() {
    return within_memory({}, [&]() -> Outcome { return predict(wanted.model, wanted.recipe, wanted.withBand); });
  }));
}

void PredictJob::conclude() {
  const Outcome outcome = m_watcher.result();
  // A band of a recipe that is no longer wanted would hold up the one that is.
  const bool unwanted = m_dropped || (m_wanted && (m_running.withBand || !outcome));
  if (m_wanted) {
    next();
  } else if (outcome && !m_dropped && !m_running.withBand) {
    m_rest.start();
  } else {
    m_busy = false;
  }
  if (unwanted) return;
  if (outcome) {
    emit predicted(*outcome);
  } else {
    emit failed(outcome.error());
  }
}

void PredictJob::askForBand() {
  m_wanted = m_running;
  m_wanted->withBand = true;
  next();
}

}  // namespace ovenwright::desktop
