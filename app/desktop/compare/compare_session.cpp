#include "app/desktop/compare/compare_session.h"

#include <algorithm>
#include <set>
#include <string>
#include <utility>

#include "app/desktop/compare/compare_command.h"
#include "app/desktop/window/chooser_bar.h"

namespace ovenwright::desktop {
namespace {

constexpr int kTakeKey = 2;  // logs that are dropped together are one step

}  // namespace

CompareSession::CompareSession(Document* document, QObject* parent) : QObject(parent), m_document(document) {
  connect(document, &Document::logsChanged, this, [this] {
    finishGroups();
    refresh();
  });
  connect(document, &Document::setupChanged, this, &CompareSession::refresh);
  connect(document, &Document::opened, this, &CompareSession::take);
  connect(document, &Document::activityChanged, this, [this] {
    m_taking = m_taking && m_document->isBusy();
    finishGroups();
  });
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

CompareSubjects CompareSession::subjects(std::size_t side) const {
  const auto chosen = [this](CompareSubjects of) {
    std::erase_if(of, [this](const CompareSubject& one) { return !isOpen(one); });
    return of;
  };
  auto a = chosen(m_choice.a), b = chosen(m_choice.b);
  const auto all = runs();
  const auto first_but = [&](const CompareSubjects& other) {
    const auto found = std::ranges::find_if(
        all, [&](const CompareSubject& one) { return std::ranges::find(other, one) == other.end(); });
    return found == all.end() ? CompareSubjects{} : CompareSubjects{*found};
  };
  if (a.empty()) a = first_but(b);
  if (b.empty()) b = first_but(a);
  return side == 0 ? a : b;
}

std::optional<CompareSubject> CompareSession::subject(std::size_t side) const {
  const auto all = subjects(side);
  return all.empty() ? std::nullopt : std::optional(all.front());
}

CompareSession::State CompareSession::state() const {
  if (!subject(0)) return State::kNothing;
  if (!subject(1)) return State::kOneRun;
  if (m_compared) return State::kReady;
  return m_error ? State::kFailed : State::kWorking;
}

std::optional<CompareInput> CompareSession::input() const {
  const auto a = subjects(0), b = subjects(1);
  if (a.empty() || b.empty()) return std::nullopt;
  const auto runs = [](const CompareSubjects& subjects) {
    std::vector<CompareInput::Run> all;
    for (const auto& subject : subjects)
      all.push_back({subject.log->checked, subject.run, std::make_shared<const check::Request>(subject.log->setup)});
    return all;
  };
  CompareInput input{runs(a), runs(b), m_choice.windows, false, m_choice.align_C};
  if (input.windows.empty()) {
    input.windows = a.front().log->setup.windows;
    input.windowAssumed = a.front().log->setup.window_assumed;
  }
  return input;
}

bool CompareSession::areJudged() const {
  const auto a = subjects(0), b = subjects(1);
  const auto judged = [](const CompareSubject& subject) { return subject.log->settled; };
  return !a.empty() && !b.empty() && std::ranges::all_of(a, judged) && std::ranges::all_of(b, judged);
}

bool CompareSession::isSettled() const {
  return areJudged() && !m_job.isBusy() && m_groups[0].isEmpty() && (m_compared || m_error);
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
  // While one of them is judged anew, or some of a group are still being read, the last answer stands.
  if (m_active && m_groups[0].isEmpty() && areJudged() && (!m_asked || !(*m_asked == *now))) {
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
  choice.a = subjects(0);
  choice.b = subjects(1);
  auto& chosen = side == 0 ? choice.a : choice.b;
  auto& other = side == 0 ? choice.b : choice.a;
  if (chosen == CompareSubjects{subject}) return;
  if (std::ranges::find(other, subject) != other.end()) {
    std::erase(other, subject);
    if (other.empty()) other = chosen;
    std::erase(other, subject);
  }
  chosen = {subject};
  const QString title = runTitle(*subject.log, subject.run);
  change(side == 0 ? tr("Compare %1 as A").arg(title) : tr("Compare %1 as B").arg(title), std::move(choice));
}

void CompareSession::chooseGroups(CompareSubjects a, CompareSubjects b) {
  for (CompareSubjects* side : {&a, &b}) {  // a run counts once, however often it is open or kept
    std::set<std::pair<std::string, double>> counted;
    std::erase_if(*side, [&counted](const CompareSubject& one) {
      const auto& checked = *one.log->checked;
      return !counted.emplace(checked.reading->file.sha256, checked.views[one.run].run().from_s).second;
    });
  }
  CompareChoice choice = m_choice;
  choice.a = std::move(a);
  choice.b = std::move(b);
  change(tr("Compare two groups"), std::move(choice));
}

void CompareSession::swap() {
  CompareChoice choice = m_choice;
  choice.a = subjects(1);
  choice.b = subjects(0);
  // All stay judged against what they are now.
  if (choice.windows.empty() && !choice.a.empty() && !choice.b.empty() &&
      !sameWindows(choice.a.front().log->setup.windows, choice.b.front().log->setup.windows))
    choice.windows = choice.b.front().log->setup.windows;
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
    choice.a = {CompareSubject{m_taken.front(), 0}};
    choice.b = {CompareSubject{m_taken.back(), 0}};
  } else if (logs.size() == 1 && passes) {
    choice.a = {CompareSubject{*opened, 0}};
    choice.b = {CompareSubject{*opened, 1}};
  } else {
    auto a = subjects(0);
    choice.b = {CompareSubject{*opened, 0}};
    if (a.empty() || a.front().log == *opened) return;  // the first of all: what is opened next becomes B
    choice.a = std::move(a);
  }
  const QString title = runTitle(*choice.b.front().log, choice.b.front().run);
  change(tr("Compare with %1").arg(title), std::move(choice), kTakeKey);
}

void CompareSession::takeGroups(const QStringList& a, const QStringList& b) {
  m_taking = false;
  m_groups[0] = a;
  m_groups[1] = b;
  finishGroups();
}

void CompareSession::finishGroups() {
  if (m_groups[0].isEmpty() || m_document->isBusy()) return;
  CompareSubjects groups[2];
  for (const std::size_t side : {0, 1})
    for (const QString& name : std::exchange(m_groups[side], {})) {
      const auto log = std::ranges::find(m_document->logs(), name, [](const auto& each) { return each->source.name; });
      if (log != m_document->logs().end() && (*log)->checked) groups[side].push_back({*log, 0});
    }
  // What could not be read is said by the document; of what is left there may be nothing to compare.
  if (!groups[0].empty() && !groups[1].empty()) return chooseGroups(std::move(groups[0]), std::move(groups[1]));
  refresh();
}

}  // namespace ovenwright::desktop
