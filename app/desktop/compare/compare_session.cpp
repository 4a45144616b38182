#include "app/desktop/compare/compare_session.h"

#include <algorithm>

#include "app/desktop/compare/compare_command.h"
#include "app/desktop/window/chooser_bar.h"

namespace ovenwright::desktop {
namespace {

constexpr int kTakeKey = 2;  // logs that are dropped together are one step

}  // namespace

CompareSession::CompareSession(Document* document, QObject* parent) : QObject(parent), m_document(document) {
  connect(document, &Document::logsChanged, this, &CompareSession::refresh);
  connect(document, &Document::setupChanged, this, &CompareSession::refresh);
  connect(document, &Document::opened, this, &CompareSession::take);
  connect(document, &Document::activityChanged, this, [this] { m_taking = m_taking && m_document->isBusy(); });
  connect(&m_job, &CompareJob::compared, this, [this](std::shared_ptr<const ComparedLogs> compared) {
    m_compared = std::move(compared);
    m_error.reset();
    emit comparedChanged();
    emit stateChanged();
  });
  connect(&m_job, &CompareJob::failed, this, [this](const Error& error) {
    m_compared.reset();
    m_error = error;
    emit comparedChanged();
    emit stateChanged();
  });
}

CompareSession::~CompareSession() = default;

void CompareSession::setActive(bool active) {
  if (m_active == active) return;
  m_active = active;
  if (active) refresh();
}

std::vector<CompareSubject> CompareSession::runs() const {
  std::vector<CompareSubject> all;
  for (const auto& log : m_document->logs())
    for (std::size_t run = 0; log->checked && run < log->checked->views.size(); ++run) all.push_back({log, run});
  return all;
}

bool CompareSession::isOpen(const CompareSubject& subject) const {
  return std::ranges::find(m_document->logs(), subject.log) != m_document->logs().end() && subject.log->checked &&
         subject.run < subject.log->checked->views.size();
}

std::optional<CompareSubject> CompareSession::subject(std::size_t side) const {
  const auto chosen = [this](const std::optional<CompareSubject>& of) {
    return of && isOpen(*of) ? of : std::optional<CompareSubject>();
  };
  auto a = chosen(m_choice.a), b = chosen(m_choice.b);
  const auto all = runs();
  const auto first_but = [&](const std::optional<CompareSubject>& other) -> std::optional<CompareSubject> {
    const auto found = std::ranges::find_if(all, [&](const CompareSubject& one) { return !other || one != *other; });
    return found == all.end() ? std::nullopt : std::optional(*found);
  };
  if (!a) a = first_but(b);
  if (!b) b = first_but(a);
  return side == 0 ? a : b;
}

CompareSession::State CompareSession::state() const {
  if (!subject(0)) return State::kNothing;
  if (!subject(1)) return State::kOneRun;
  if (m_compared) return State::kReady;
  return m_error ? State::kFailed : State::kWorking;
}

std::optional<CompareInput> CompareSession::input() const {
  const auto a = subject(0), b = subject(1);
  if (!a || !b) return std::nullopt;
  const auto run = [](const CompareSubject& subject) {
    return CompareInput::Run{subject.log->checked, subject.run,
                             std::make_shared<const check::Request>(subject.log->setup)};
  };
  CompareInput input{run(*a), run(*b), m_choice.windows, false, m_choice.align_C};
  if (input.windows.empty()) {
    input.windows = a->log->setup.windows;
    input.windowAssumed = a->log->setup.window_assumed;
  }
  return input;
}

bool CompareSession::isSettled() const {
  const auto a = subject(0), b = subject(1);
  const bool judged = a && b && a->log->settled && b->log->settled;
  return judged && !m_job.isBusy() && (m_compared || m_error);
}

void CompareSession::refresh() {
  auto now = input();
  if (!now) {
    m_job.drop();
    m_asked.reset();
    const bool had = m_compared || m_error;
    m_compared.reset();
    m_error.reset();
    if (had) emit comparedChanged();
    emit stateChanged();
    return;
  }
  // While one of them is judged anew the last answer stands.
  const bool judged = subject(0)->log->settled && subject(1)->log->settled;
  if (m_active && judged && (!m_asked || !(*m_asked == *now))) {
    m_asked = now;
    m_job.ask(*std::move(now));
  }
  emit stateChanged();
}

void CompareSession::change(const QString& text, CompareChoice choice, int mergeKey) {
  m_document->undoStack()->push(new CompareCommand(this, text, std::move(choice), mergeKey));
}

void CompareSession::apply(const CompareChoice& choice) {
  m_choice = choice;
  emit choiceChanged();
  refresh();
}

void CompareSession::choose(std::size_t side, const CompareSubject& subject) {
  CompareChoice choice = m_choice;
  choice.a = this->subject(0);
  choice.b = this->subject(1);
  auto& chosen = side == 0 ? choice.a : choice.b;
  auto& other = side == 0 ? choice.b : choice.a;
  if (chosen == subject) return;
  if (other == subject) other = chosen;
  chosen = subject;
  const QString title = runTitle(*subject.log, subject.run);
  change(side == 0 ? tr("Compare %1 as A").arg(title) : tr("Compare %1 as B").arg(title), std::move(choice));
}

void CompareSession::swap() {
  CompareChoice choice = m_choice;
  choice.a = subject(1);
  choice.b = subject(0);
  // Both stay judged against what they are now.
  if (choice.windows.empty() && choice.a && choice.b &&
      !sameWindows(choice.a->log->setup.windows, choice.b->log->setup.windows))
    choice.windows = choice.b->log->setup.windows;
  change(tr("Swap A and B"), std::move(choice));
}

void CompareSession::takeOpened() {
  m_taking = true;
  m_taken.clear();
}

void CompareSession::take(const QString& name) {
  if (!m_taking) return;
  const auto& logs = m_document->logs();
  const auto opened = std::ranges::find_if(logs, [&](const auto& log) {
    return log->source.name == name && std::ranges::find(m_taken, log) == m_taken.end();
  });
  if (opened == logs.end()) return;
  m_taken.insert(std::ranges::upper_bound(m_taken, (*opened)->number, {}, [](const auto& log) { return log->number; }),
                 *opened);
  CompareChoice choice = m_choice;
  const bool passes = m_taken.front()->checked->views.size() > 1;
  if (m_taken.size() > 1) {
    choice.a = CompareSubject{m_taken.front(), 0};
    choice.b = CompareSubject{m_taken.back(), 0};
  } else if (logs.size() == 1 && passes) {
    choice.a = CompareSubject{*opened, 0};
    choice.b = CompareSubject{*opened, 1};
  } else {
    const auto a = subject(0);
    choice.b = CompareSubject{*opened, 0};
    if (!a || a->log == *opened) return;  // the first of all: what is opened next becomes B
    choice.a = a;
  }
  const QString title = runTitle(*choice.b->log, choice.b->run);
  change(tr("Compare with %1").arg(title), std::move(choice), kTakeKey);
}

}  // namespace ovenwright::desktop
