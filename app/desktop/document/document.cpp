#include "app/desktop/document/document.h"

#include <QFileInfo>
#include <algorithm>

#include "app/desktop/document/commands.h"

namespace ovenwright::desktop {

Document::Document(QObject* parent) : QObject(parent) {}

Document::~Document() {
  m_undo.disconnect(this);
  qDeleteAll(findChildren<QObject*>(Qt::FindDirectChildrenOnly));  // before what their slots touch is gone
}

void Document::openFiles(const QStringList& paths) {
  check::Request setup = this->setup();
  setup.entry_s.reset();
  setup.run.reset();
  setup.log.layout.reset();
  const std::size_t first = m_pending.size();
  for (const QString& path : paths) open({path, {}, QFileInfo(path).fileName()}, setup);
  if (first < m_pending.size()) m_show = m_pending[first];
}

void Document::openPasted(const QByteArray& text) {
  check::Request setup = this->setup();
  setup.entry_s.reset();
  setup.run.reset();
  setup.log.layout.reset();
  open({{}, text, tr("pasted text")}, std::move(setup));
}

void Document::open(const Source& source, check::Request setup) {
  dismissFailure();
  auto log = std::make_shared<OpenLog>();
  log->source = source;
  log->setup = std::move(setup);
  log->number = m_opened++;
  m_pending.push_back(log);
  m_show = log;
  m_activity = {source.name, 0, 0};
  start(log, Rework::kRead);
}

void Document::setCurrent(const LogPointer& log, std::size_t run) {
  const bool same = log == m_current;
  if (same && (!log || log->run == run)) return;
  m_current = log;
  if (log) log->run = run;
  m_chosen.reset();
  m_chosenChannel.reset();
  chooseFirstProblem();
  emit setupChanged();
  emit currentChanged();
  emit chosenChanged();
  emit activityChanged();
}

void Document::edit(const QString& text, check::Request setup, Rework rework, int mergeKey) {
  dismissFailure();
  m_undo.push(new SetupCommand(this, m_current, text, std::move(setup), rework, mergeKey));
}

void Document::close(const LogPointer& log) {
  m_undo.push(new CloseCommand(this, log, tr("Close %1").arg(log->source.name)));
}

void Document::choose(std::optional<std::size_t> outcome) {
  std::optional<std::size_t> channel;
  if (outcome) {
    const auto shown = view();
    if (!shown || *outcome >= shown->judgement().all_size()) return;
    channel = shown->judgement().all(*outcome).channel;
    m_chosenName = shown->judgement().all(*outcome).requirement_name;
  }
  if (m_chosen == outcome && m_chosenChannel == channel) return;
  m_chosen = outcome;
  m_chosenChannel = channel;
  emit chosenChanged();
}

void Document::chooseChannel(std::optional<std::size_t> channel) {
  if (m_chosenChannel == channel && !m_chosen) return;
  m_chosen.reset();
  m_chosenChannel = channel;
  emit chosenChanged();
}

std::optional<Document::Activity> Document::activity() const {
  if (m_show || (m_current && m_current->job)) return m_activity;
  return std::nullopt;
}

void Document::stop() {
  const auto& log = m_show ? m_show : m_current;
  if (log && log->job) log->job->cancel();
}

void Document::dismissFailure() {
  if (!m_failure) return;
  m_failure.reset();
  emit failureChanged();
}

bool Document::isBusy() const {
  return !m_pending.empty() || std::ranges::any_of(m_logs, [](const auto& log) { return !log->job.isNull(); });
}

void Document::setRememberedLayouts(std::function<std::optional<log::Layout>(const log::Reading&)> remembered) {
  m_remembered = std::move(remembered);
}

void Document::apply(const LogPointer& log, const LogState& state, Rework rework) {
  if (!log) {
    m_setup = state.setup;
    emit setupChanged();
    return;
  }
  log->setup = state.setup;
  log->error.reset();
  abandonJob(*log);
  if (state.checked) {
    finish(log, state.checked);
  } else {
    log->settled = false;
    start(log, rework);
  }
  if (log == m_current) {
    emit setupChanged();
    emit activityChanged();
  }
}

void Document::insert(const LogPointer& log, std::size_t at) {
  m_logs.insert(m_logs.begin() + std::ptrdiff_t(std::min(at, m_logs.size())), log);
  emit logsChanged();
}

void Document::remove(const LogPointer& log) {
  const auto at = std::ranges::find(m_logs, log);
  const auto next = m_logs.erase(at);
  LogPointer show = m_current;
  if (m_current == log) {
    show = nullptr;
    if (next != m_logs.end()) {
      show = *next;
    } else if (!m_logs.empty()) {
      show = m_logs.back();
    } else {
      m_setup = log->setup;
    }
  }
  emit logsChanged();
  setCurrent(show, show ? show->run : 0);
}

void Document::abandonJob(OpenLog& log) {
  CheckJob* job = log.job;
  if (!job) return;
  // The answer to a question that is no longer asked. It is not waited for: the job goes when its worker has ended.
  job->disconnect(this);
  connect(job, &CheckJob::finished, job, &QObject::deleteLater);
  connect(job, &CheckJob::failed, job, &QObject::deleteLater);
  connect(job, &CheckJob::cancelled, job, &QObject::deleteLater);
  job->cancel();
  log.job.clear();
}

void Document::start(const LogPointer& log, Rework rework) {
  auto* job = new CheckJob(this);
  log->job = job;
  const std::weak_ptr<OpenLog> weak = log;
  connect(job, &CheckJob::progressChanged, this, [this, weak](double done, qulonglong rows) {
    const auto shown = m_show ? m_show : m_current;
    if (!shown || weak.lock() != shown) return;
    m_activity = {shown->source.name, done, rows};
    emit activityChanged();
  });
  const auto conclude = [job](const LogPointer& of) {
    of->job.clear();
    job->deleteLater();
  };
  connect(job, &CheckJob::finished, this, [this, weak, conclude](const std::shared_ptr<const Checked>& checked) {
    const auto done = weak.lock();
    if (!done) return;
    conclude(done);
    finish(done, checked);
  });
  connect(job, &CheckJob::failed, this,
          [this, weak, conclude](const Error& error, const std::vector<log::ListedTable>& tables) {
            const auto done = weak.lock();
            if (!done) return;
            conclude(done);
            fail(done, error, tables);
          });
  connect(job, &CheckJob::cancelled, this, [this, weak, conclude] {
    const auto done = weak.lock();
    if (!done) return;
    conclude(done);
    forgetPending(done);
    emit activityChanged();
  });
  CheckJob::Input input{log->source, log->setup, nullptr, m_remembered};
  if (rework == Rework::kJudge && log->checked) input.reading = log->checked->reading;
  job->start(std::move(input));
  emit activityChanged();
}

void Document::finish(const LogPointer& log, std::shared_ptr<const Checked> checked) {
  const bool is_new =
      std::ranges::find(m_logs, log) == m_logs.end() && std::ranges::find(m_pending, log) != m_pending.end();
  log->checked = std::move(checked);
  log->settled = true;
  log->error.reset();
  if (log->run >= log->checked->log.runs.size()) log->run = 0;
  if (is_new) {
    const bool show = m_show == log || (!m_show && !m_current);
    if (m_show == log) m_show = nullptr;
    forgetPending(log);
    m_logs.insert(std::ranges::upper_bound(m_logs, log->number, {}, [](const auto& other) { return other->number; }),
                  log);
    emit opened(log->source.name);
    emit logsChanged();
    if (show) setCurrent(log);
    return;
  }
  emit logsChanged();
  if (log != m_current) return;
  keepChoice();
  emit currentChanged();
  emit activityChanged();
}

void Document::chooseFirstProblem() {
  const auto shown = view();
  if (!shown) return;
  for (const auto& part : shown->judgement().sentence.parts) {
    if (part.disc != 1 || part.outcomes.empty()) continue;
    m_chosen = part.outcomes.front();
    m_chosenChannel = shown->judgement().all(*m_chosen).channel;
    m_chosenName = shown->judgement().all(*m_chosen).requirement_name;
    return;
  }
}

void Document::keepChoice() {
  const auto shown = view();
  if (m_chosenChannel && (!shown || *m_chosenChannel >= shown->channels().size())) m_chosenChannel.reset();
  if (!m_chosen) return;
  std::optional<std::size_t> same;
  for (std::size_t i = 0; shown && i < shown->judgement().all_size() && !same; ++i) {
    const auto& outcome = shown->judgement().all(i);
    if (outcome.requirement_name == m_chosenName && outcome.channel == m_chosenChannel) same = i;
  }
  m_chosen = same;
  emit chosenChanged();
}

void Document::fail(const LogPointer& log, const Error& error, const std::vector<log::ListedTable>& tables) {
  const bool is_new = std::ranges::find(m_pending, log) != m_pending.end();
  if (is_new) {
    forgetPending(log);
    if (m_failure) {
      m_failure->others << log->source.name;
    } else {
      m_failure = Failure{log, error, {}, tables};
    }
    emit failureChanged();
  } else {
    log->error = error;
    if (log == m_current) emit failureChanged();
  }
  emit activityChanged();
}

void Document::forgetPending(const LogPointer& log) {
  std::erase(m_pending, log);
  if (m_show != log) return;
  m_show = m_pending.empty() ? nullptr : m_pending.front();
  if (m_show) m_activity = {m_show->source.name, 0, 0};
}

}  // namespace ovenwright::desktop
