#include "app/desktop/tune/predict_job.h"

#include <QtConcurrent>

namespace ovenwright::desktop {

PredictJob::PredictJob(QObject* parent) : QObject(parent) {
  m_thread.setMaxThreadCount(1);
  connect(&m_watcher, &QFutureWatcherBase::finished, this, &PredictJob::conclude);
}

PredictJob::~PredictJob() {
  m_watcher.disconnect(this);
  m_watcher.waitForFinished();
}

void PredictJob::ask(std::shared_ptr<const TuneModel> model, oven::Recipe recipe) {
  m_wanted = {std::move(model), std::move(recipe), false};
  if (!m_busy) next();
}

void PredictJob::drop() {
  m_wanted.reset();
  m_dropped = true;
}

void PredictJob::next() {
  m_running = *std::move(m_wanted);
  m_wanted.reset();
  m_dropped = false;
  m_busy = true;
  m_watcher.setFuture(QtConcurrent::run(
      &m_thread, [wanted = m_running] { return predict(wanted.model, wanted.recipe, wanted.withBand); }));
}

void PredictJob::conclude() {
  const auto prediction = m_watcher.result();
  if (!m_dropped) emit predicted(prediction);
  if (!m_wanted && !m_dropped && !m_running.withBand) {
    m_wanted = m_running;
    m_wanted->withBand = true;
  }
  if (m_wanted) {
    next();
  } else {
    m_busy = false;
  }
}

}  // namespace ovenwright::desktop
