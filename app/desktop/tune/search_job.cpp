#include "app/desktop/tune/search_job.h"

#include <QPromise>
#include <QtConcurrent>

#include "core/units/memory.h"

namespace ovenwright::desktop {
namespace {

constexpr int kProgressSteps = 100;

/// Whether the run as it was measured is inside its window: then no least change is looked for.
bool passes(const judge::Judgement& judgement) { return judgement.verdict == judge::Verdict::kPass; }

}  // namespace

SearchJob::SearchJob(QObject* parent) : QObject(parent) {
  connect(&m_watcher, &QFutureWatcherBase::finished, this, &SearchJob::conclude);
  connect(&m_watcher, &QFutureWatcherBase::progressValueChanged, this,
          [this](int value) { emit progressChanged(double(value) / kProgressSteps); });
}

SearchJob::~SearchJob() {
  m_watcher.disconnect(this);
  stop();
  m_watcher.waitForFinished();
}

void SearchJob::start(std::shared_ptr<const TuneModel> model, tune::Request request) {
  stop();
  m_abandoned = false;
  m_busy = true;
  m_stop = std::make_shared<std::atomic<bool>>(false);
  m_watcher.setFuture(QtConcurrent::run(
      [model = std::move(model), request = std::move(request), stop = m_stop](QPromise<Outcome>& promise) mutable {
        promise.setProgressRange(0, kProgressSteps);
        request.progress = [&promise, &stop](double done) {
          promise.setProgressValue(int(kProgressSteps * done));
          return !*stop;
        };
        const auto& learned = model->learned();
        std::vector<tune::Subject> boards{learned.subject(0)};
        const bool now_passes = passes(model->measured().judgement());
        const auto report = within_memory({}, [&]() -> Result<tune::Report> {
          return tune::tune(learned.model, std::move(boards), model->recipe(), now_passes, request);
        });
        auto found = std::make_shared<tune::Report>();
        if (report) {
          *found = *report;
        } else {
          found->notes.push_back(report.error().message);
          found->cut_short = true;
        }
        promise.addResult(std::shared_ptr<const tune::Report>(std::move(found)));
      }));
}

void SearchJob::stop() {
  if (m_stop) *m_stop = true;
}

void SearchJob::abandon() {
  stop();
  m_abandoned = true;
}

void SearchJob::conclude() {
  m_busy = false;
  if (!m_abandoned && m_watcher.future().resultCount() > 0) emit found(m_watcher.result());
}

}  // namespace ovenwright::desktop
