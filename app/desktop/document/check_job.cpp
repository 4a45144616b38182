#include "app/desktop/document/check_job.h"

#include <QElapsedTimer>
#include <QFile>
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

/// The tables of a log that could not be read; of a large file none, which would take as long as reading it did.
std::vector<log::ListedTable> tablesOf(const CheckJob::Input& input) {
  constexpr qint64 kMostBytes = qint64{16} << 20;
  const auto& source = input.source;
  using Tables = Result<std::vector<log::ListedTable>>;
  const auto tables = within_memory({}, [&]() -> Tables {
    QByteArray bytes = source.pasted;
    if (!source.path.isEmpty()) {
      QFile file(source.path);
      if (file.size() > kMostBytes || !file.open(QIODevice::ReadOnly)) return std::vector<log::ListedTable>{};
      bytes = file.readAll();
    }
    return log::tables_of(source.name.toStdString(), {bytes.constData(), std::size_t(bytes.size())},
                          input.request.log);
  });
  return tables ? *tables : std::vector<log::ListedTable>{};
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
    Outcome outcome{within_memory(input.source.name.toStdString(), [&] { return work(input); }), {}};
    if (!outcome.checked && !input.reading && !promise.isCanceled()) outcome.tables = tablesOf(input);
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
  if (outcome.checked) {
    emit finished(*outcome.checked);
  } else if (outcome.checked.error().code == ErrorCode::kCancelled) {
    emit cancelled();
  } else {
    emit failed(outcome.checked.error(), outcome.tables);
  }
}

}  // namespace ovenwright::desktop
