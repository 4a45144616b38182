#include "app/desktop/document/check_job.h"

#include <QElapsedTimer>
#include <QPromise>
#include <QtConcurrent>

#include "core/units/memory.h"

namespace ovenwright::desktop {
namespace {

constexpr int kProgressSteps = 1000;

Result<log::Reading> read(const Source& source, const log::Options& options) {
  if (source.path.isEmpty()) {
    return log::read_bytes(source.name.toStdString(), {source.pasted.constData(), std::size_t(source.pasted.size())},
                           options);
  }
  return log::read(source.path.toStdString(), options);
}

/// A worker thread can begin with the upper halves of its vector registers in use, left by what started it; until they
/// are cleared each call of the mathematical library from plain SSE code waits for them. Once for a thread is enough.
void clearUpperHalves() {
#if defined(__x86_64__)
  if (__builtin_cpu_supports("avx"))
    __asm__ volatile("vzeroupper" ::
                         : "xmm0", "xmm1", "xmm2", "xmm3", "xmm4", "xmm5", "xmm6", "xmm7", "xmm8", "xmm9", "xmm10",
                           "xmm11", "xmm12", "xmm13", "xmm14", "xmm15");
#endif
}

Result<std::shared_ptr<const Checked>> work(CheckJob::Input& input) {
  QElapsedTimer timer;
  timer.start();
  auto reading = input.reading;
  if (!reading) {
    auto read_now = read(input.source, input.request.log);
    if (!read_now) return read_now.error();
    if (!input.request.log.layout && input.remembered) {
      if (auto layout = input.remembered(*read_now)) {
        input.request.log.layout = std::move(layout);
        // A layout kept for this shape that does not fit this file after all gives way to what was found.
        if (auto again = read(input.source, input.request.log)) read_now = std::move(again);
      }
    }
    reading = std::make_shared<const log::Reading>(std::move(*read_now));
  }
  auto checked = std::make_shared<Checked>();
  checked->reading = reading;
  auto log = check::check(log::Reading(*reading), input.request);
  if (!log) return log.error();
  checked->log = std::move(*log);
  for (const auto& run : checked->log.runs) checked->views.emplace_back(run, *reading, input.request);
  checked->elapsed_ms = int(timer.elapsed());
  return std::shared_ptr<const Checked>(std::move(checked));
}

}  // namespace

CheckJob::CheckJob(QObject* parent) : QObject(parent) {
  connect(&m_watcher, &QFutureWatcherBase::finished, this, &CheckJob::conclude);
  connect(&m_watcher, &QFutureWatcherBase::progressTextChanged, this, [this](const QString& rows) {
    emit progressChanged(double(m_watcher.progressValue()) / kProgressSteps, rows.toULongLong());
  });
}

CheckJob::~CheckJob() {
  m_watcher.disconnect(this);
  m_watcher.cancel();
  m_watcher.waitForFinished();
}

void CheckJob::start(Input input) {
  m_watcher.setFuture(QtConcurrent::run([input = std::move(input)](QPromise<Outcome>& promise) mutable {
    promise.setProgressRange(0, kProgressSteps);
    input.request.log.progress = [&promise](double done, std::size_t rows) {
      promise.setProgressValueAndText(int(kProgressSteps * done), QString::number(rows));
      return !promise.isCanceled();
    };
    clearUpperHalves();
    auto outcome = within_memory(input.source.name.toStdString(), [&] { return work(input); });
    if (!promise.isCanceled()) promise.addResult(std::move(outcome));
  }));
}

void CheckJob::cancel() { m_watcher.cancel(); }

void CheckJob::conclude() {
  if (m_watcher.future().resultCount() == 0) {
    emit cancelled();
    return;
  }
  const Outcome outcome = m_watcher.result();
  if (outcome) {
    emit finished(*outcome);
  } else if (outcome.error().code == ErrorCode::kCancelled) {
    emit cancelled();
  } else {
    emit failed(outcome.error());
  }
}

}  // namespace ovenwright::desktop
