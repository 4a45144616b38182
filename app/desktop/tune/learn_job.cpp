#include "app/desktop/tune/learn_job.h"

#include <QPromise>
#include <QtConcurrent>

#include "core/units/memory.h"

namespace ovenwright::desktop {
namespace {

constexpr int kProgressSteps = 100;

}  // namespace

LearnJob::LearnJob(QObject* parent) : QObject(parent) {
  connect(&m_watcher, &QFutureWatcherBase::finished, this, &LearnJob::conclude);
  connect(&m_watcher, &QFutureWatcherBase::progressValueChanged, this,
          [this](int value) { emit progressChanged(double(value) / kProgressSteps); });
}

LearnJob::~LearnJob() {
  m_watcher.disconnect(this);
  m_watcher.cancel();
  m_watcher.waitForFinished();
}

void LearnJob::start(TuneInput input) {
  m_watcher.cancel();
  m_busy = true;
  m_watcher.setFuture(QtConcurrent::run([input = std::move(input)](QPromise<Outcome>& promise) {
    promise.setProgressRange(0, kProgressSteps);
    const auto goOn = [&promise](double done) {
      promise.setProgressValue(int(kProgressSteps * done));
      return !promise.isCanceled();
    };
    auto outcome = within_memory({}, [&] { return TuneModel::learn(input, goOn); });
    if (!promise.isCanceled()) promise.addResult(std::move(outcome));
  }));
}

void LearnJob::conclude() {
  m_busy = false;
  if (m_watcher.future().resultCount() == 0) {
    emit failed({ErrorCode::kCancelled, {}, {}, {}, {}});
    return;
  }
  const Outcome outcome = m_watcher.result();
  if (outcome) {
    emit learned(*outcome);
  } else {
    emit failed(outcome.error());
  }
}

}  // namespace ovenwright::desktop
