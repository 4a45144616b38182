#include "app/desktop/tune/tune_session.h"

#include <algorithm>

#include "app/desktop/tune/field_format.h"
#include "app/desktop/tune/tune_command.h"
#include "core/oven/oven_file.h"

namespace ovenwright::desktop {
namespace {

std::vector<std::shared_ptr<const RunView>> viewsOf(const std::vector<TuneRun>& runs) {
  std::vector<std::shared_ptr<const RunView>> views;
  for (const auto& run : runs) views.push_back(run.view);
  return views;
}

/// Whether two runs are of one board: of the same name, or without any and with the same channels.
bool sameBoard(const RunView& a, const RunView& b) {
  if (a.board() || b.board()) return a.board() && b.board() && a.board()->identity.name == b.board()->identity.name;
  return std::ranges::equal(a.run().channels, b.run().channels, {}, &run::Channel::name, &run::Channel::name);
}

/// Whether two ovens are alike in all that a prediction rests on. Their files tell less: an edited oven is in none.
bool sameOven(const oven::Oven& a, const oven::Oven& b) {
  return a.identity.sha256 == b.identity.sha256 && oven::oven_text(a) == oven::oven_text(b);
}

}  // namespace

std::vector<double> TuneBench::halfWidths() const {
  if (!prediction) return {};
  if (prediction->hasBand() || !banded || banded->judgement().all_size() != prediction->judgement().all_size())
    return prediction->forecast.half_width;
  return banded->forecast.half_width;
}

std::vector<std::vector<double>> TuneBench::band_C() const {
  if (!prediction) return {};
  if (prediction->hasBand() || !banded) return prediction->forecast.band_C;
  const auto& channels = prediction->checked.run.channels;
  const auto& band_C = banded->forecast.band_C;
  const bool fits = std::ranges::equal(band_C, channels, [](const auto& band, const run::Channel& channel) {
    return band.size() == (channel.trace ? channel.trace->time_s().size() : 0);
  });
  return fits ? band_C : prediction->forecast.band_C;
}

TuneSession::TuneSession(Document* document, QObject* parent) : QObject(parent), m_document(document) {
  connect(document, &Document::currentChanged, this, &TuneSession::refresh);
  connect(document, &Document::logsChanged, this, [this] {
    if (!m_active || !m_bench) return;
    // Where the shown run itself has a new result, currentChanged() follows.
    const auto& known = m_learningFor == m_bench ? m_learningFrom : m_bench->learnedFrom;
    if (known.empty() || known.back() != m_document->view()) return;
    learnIfOthers();
    emit stateChanged();
    emit searchChanged();
  });
  connect(&m_learn, &LearnJob::progressChanged, this, [this](double done) {
    m_learningDone = done;
    emit stateChanged();
  });
  connect(&m_learn, &LearnJob::learned, this, [this](std::shared_ptr<const TuneModel> model) {
    const auto bench = std::exchange(m_learningFor, nullptr);
    if (!bench) return;
    bench->learnedFrom = m_learningFrom;
    bench->model = std::move(model);
    bench->error.reset();
    bench->prediction.reset();
    bench->banded.reset();
    if (bench == m_bench) {
      predictEdit();
      emit stateChanged();
    }
  });
  connect(&m_learn, &LearnJob::failed, this, [this](const Error& error) {
    const auto bench = std::exchange(m_learningFor, nullptr);
    if (!bench) return;
    bench->learnedFrom = m_learningFrom;
    bench->model.reset();
    bench->error = error;
    bench->prediction.reset();
    bench->banded.reset();
    if (bench == m_bench) emit stateChanged();
  });
  connect(&m_predict, &PredictJob::predicted, this, [this](std::shared_ptr<const Prediction> prediction) {
    if (!m_bench || prediction->model != m_bench->model) return;
    if (prediction->hasBand()) m_bench->banded = prediction;
    m_bench->notPredicted.reset();
    m_bench->prediction = std::move(prediction);
    emit predictionChanged();
  });
  connect(&m_predict, &PredictJob::failed, this, [this](const Error& error) {
    if (!m_bench) return;
    m_bench->prediction.reset();  // of another recipe, which must not stand beside the numbers of this one
    m_bench->banded.reset();
    m_bench->notPredicted = error;
    emit predictionChanged();
  });
  connect(&m_search, &SearchJob::progressChanged, this, [this](double done) {
    m_searchDone = done;
    emit searchChanged();
  });
  connect(&m_search, &SearchJob::found, this, [this](std::shared_ptr<const tune::Report> report) {
    m_searching = false;
    if (const auto bench = std::exchange(m_searchingFor, nullptr)) bench->report = std::move(report);
    emit searchChanged();
  });
}

TuneSession::~TuneSession() = default;

void TuneSession::setActive(bool active) {
  if (m_active == active) return;
  m_active = active;
  if (active) refresh();
}

TuneSession::State TuneSession::state() const {
  const auto view = m_document->view();
  if (!view) return State::kNothing;
  if (!view->oven() || !view->recipe()) return State::kNeedsOven;
  if (!view->entry()) return State::kNeedsEntry;
  if (!m_bench || m_bench == m_learningFor) return State::kLearning;
  if (m_bench->model) return m_bench->model->fit().usable ? State::kReady : State::kNotUsable;
  if (!m_bench->error) return State::kLearning;
  return m_bench->error->code == ErrorCode::kCancelled ? State::kStopped : State::kFailed;
}

bool TuneSession::isSettled() const {
  return m_bench && m_bench->prediction && m_bench->prediction->hasBand() &&
         sameNumbers(m_bench->prediction->recipe, m_bench->edit.recipe);
}

bool TuneSession::isBusy() const { return m_learn.isBusy() || m_predict.isBusy() || m_search.isBusy(); }

std::shared_ptr<TuneBench> TuneSession::benchOf(const Document::LogPointer& log, std::size_t run) {
  const auto view = log->view();
  std::erase_if(m_benches, [](const auto& bench) { return bench->log.expired(); });
  const auto of_run = [&](const auto& bench) {
    return bench->log.lock() == log && bench->run == run && sameNumbers(bench->measured, *view->recipe());
  };
  const auto known = std::ranges::find_if(
      m_benches, [&](const auto& bench) { return of_run(bench) && sameOven(bench->oven, *view->oven()); });
  if (known != m_benches.end()) return *known;
  auto bench = std::make_shared<TuneBench>();
  bench->log = log;
  bench->run = run;
  bench->oven = *view->oven();
  bench->measured = *view->recipe();
  bench->limits.emplace(bench->oven, bench->measured);
  bench->edit.recipe = bench->measured;
  // Where the oven was edited, the recipe that was worked on stays; what is kept is of the oven as it was.
  if (m_bench && of_run(m_bench) &&
      std::ranges::equal(m_bench->oven.zones, bench->oven.zones, {}, &oven::Zone::kind, &oven::Zone::kind)) {
    bench->edit = m_bench->edit;
    bench->edit.kept.clear();
    bench->edit.recipe = bench->limits->within(m_bench->edit.recipe);
    for (auto& locked : bench->edit.lockedZones) {  // a zone may have another name now
      const auto at = std::ranges::find(m_bench->oven.zones, locked, &oven::Zone::name) - m_bench->oven.zones.begin();
      if (std::size_t(at) < bench->oven.zones.size()) locked = bench->oven.zones[std::size_t(at)].name;
    }
  }
  m_benches.push_back(bench);
  return bench;
}

void TuneSession::refresh() {
  if (!m_active) return;
  const auto view = m_document->view();
  const auto before = m_bench;
  const bool complete = view && view->oven() && view->recipe() && view->entry();
  m_bench = complete ? benchOf(m_document->currentPointer(), m_document->current()->run) : nullptr;
  if (m_bench != before) {
    m_predict.drop();
    if (m_searching && m_searchingFor != m_bench) {
      m_search.abandon();
      m_searchingFor.reset();
      m_searching = false;
    }
  }
  if (m_bench) learnIfOthers();
  emit stateChanged();
  emit editChanged();
  emit searchChanged();
}

std::vector<Document::LogPointer> TuneSession::companions() const {
  std::vector<Document::LogPointer> companions;
  const auto shown = m_document->view();
  if (!m_bench || !shown) return companions;
  for (const auto& log : m_document->logs()) {
    const auto view = log->settled && log != m_document->currentPointer() ? log->view() : nullptr;
    if (view && view->oven() && view->recipe() && view->entry() && sameBoard(*view, *shown) &&
        sameOven(*view->oven(), m_bench->oven))
      companions.push_back(log);
  }
  return companions;
}

bool TuneSession::learnsFrom(const OpenLog& log) const {
  return m_bench && std::ranges::find(m_bench->edit.learnedWith, log.number) != m_bench->edit.learnedWith.end();
}

void TuneSession::setLearnsFrom(const OpenLog& log, bool learns) {
  if (!m_bench || learnsFrom(log) == learns) return;
  TuneEdit edit = m_bench->edit;
  if (learns) {
    edit.learnedWith.push_back(log.number);
  } else {
    std::erase(edit.learnedWith, log.number);
  }
  change((learns ? tr("Learn from %1 too") : tr("Do not learn from %1")).arg(log.source.name), std::move(edit));
}

std::vector<TuneRun> TuneSession::runsToLearnFrom() const {
  std::vector<TuneRun> runs;
  for (const auto& log : companions())
    if (learnsFrom(*log)) runs.push_back({log->view(), log->source.name.toStdString(), log->setup.entry_s});
  const auto* shown = m_document->current();
  runs.push_back({shown->view(), shown->source.name.toStdString(), shown->setup.entry_s});
  return runs;
}

void TuneSession::learnIfOthers() {
  const auto wanted = viewsOf(runsToLearnFrom());
  if (m_bench->learnedFrom != wanted && (m_learningFor != m_bench || m_learningFrom != wanted)) {
    m_bench->report.reset();  // what was suggested stands against another window, board or model
    learn();
  } else if (m_bench->model && !isSettled()) {
    predictEdit();
  }
}

void TuneSession::learn() {
  auto runs = runsToLearnFrom();
  m_learningFor = m_bench;
  m_learningFrom = viewsOf(runs);
  m_learningDone = 0;
  TuneInput input{runs.back(), {}};
  runs.pop_back();
  input.others = std::move(runs);
  m_learn.start(std::move(input));
}

void TuneSession::learnAgain() {
  if (!m_bench) return;
  learn();
  emit stateChanged();
}

void TuneSession::predictEdit() {
  if (m_bench && m_bench->model && m_bench->model->fit().usable) m_predict.ask(m_bench->model, m_bench->edit.recipe);
}

void TuneSession::apply(const std::shared_ptr<TuneBench>& bench, const TuneEdit& edit) {
  const bool recipe = !sameNumbers(bench->edit.recipe, edit.recipe);
  const bool others = bench->edit.learnedWith != edit.learnedWith;
  bench->edit = edit;
  const auto log = bench->log.lock();
  const auto* current = m_document->current();
  const bool shown = current != nullptr && log.get() == current && current->run == bench->run;
  if (bench != m_bench || !shown) {  // while Tune is hidden another run may be the current one
    const auto& logs = m_document->logs();
    if (log && std::ranges::find(logs, log) != logs.end()) m_document->setCurrent(log, bench->run);
    return;
  }
  if (recipe) predictEdit();
  if (others) {
    learnIfOthers();
    emit stateChanged();
    emit searchChanged();
  }
  emit editChanged();
  emit shownChanged();
}

void TuneSession::change(const QString& text, TuneEdit edit, int mergeKey) {
  if (m_bench) m_document->undoStack()->push(new TuneCommand(this, m_bench, text, std::move(edit), mergeKey));
}

QString TuneSession::stepText(const RecipeField& field, const oven::Recipe& recipe) const {
  const QString number = FieldFormat(m_format).withUnit(field, valueOf(recipe, field));
  return field.kind == RecipeField::Kind::kSpeed ? tr("Speed to %1").arg(number)
                                                 : tr("Zone %1 to %2").arg(m_bench->limits->zoneName(field), number);
}

void TuneSession::setField(const RecipeField& field, double value, int gesture) {
  if (!m_bench) return;
  const auto result = m_bench->limits->set(m_bench->edit.recipe, field, value, m_bench->edit.together, m_format);
  emit limitHit(result.hit);
  if (sameNumbers(result.recipe, m_bench->edit.recipe)) return;
  TuneEdit edit = m_bench->edit;
  edit.recipe = result.recipe;
  const QString text = stepText(field, edit.recipe);
  change(text, std::move(edit), gesture);
}

void TuneSession::markSaved() {
  if (m_bench) m_bench->saved = m_bench->edit.recipe;
}

std::vector<std::pair<Document::LogPointer, oven::Recipe>> TuneSession::unsaved() const {
  std::vector<std::pair<Document::LogPointer, oven::Recipe>> all;
  for (const auto& bench : m_benches) {
    const auto log = bench->log.lock();
    if (!log || std::ranges::find(m_document->logs(), log) == m_document->logs().end()) continue;
    const auto& recipe = bench->edit.recipe;
    if (sameNumbers(recipe, bench->measured) || (bench->saved && sameNumbers(recipe, *bench->saved))) continue;
    all.emplace_back(log, recipe);
  }
  return all;
}

void TuneSession::backToMeasured() {
  if (!m_bench || sameNumbers(m_bench->edit.recipe, m_bench->measured)) return;
  TuneEdit edit = m_bench->edit;
  edit.recipe = m_bench->measured;
  change(tr("Back to the recipe that was run"), std::move(edit));
}

void TuneSession::backToMeasured(const RecipeField& field) {
  if (!m_bench) return;
  TuneEdit edit = m_bench->edit;
  std::vector<RecipeField> fields{field};
  const bool sided = field.kind == RecipeField::Kind::kTop || field.kind == RecipeField::Kind::kBottom;
  if (sided && edit.together)
    fields = {{RecipeField::Kind::kTop, field.index}, {RecipeField::Kind::kBottom, field.index}};
  QString hit;
  for (const auto& one : fields) {
    const auto result = m_bench->limits->set(edit.recipe, one, valueOf(m_bench->measured, one), false, m_format);
    edit.recipe = result.recipe;
    if (hit.isEmpty()) hit = result.hit;
  }
  emit limitHit(hit);
  if (sameNumbers(edit.recipe, m_bench->edit.recipe)) return;
  const QString text = stepText(field, edit.recipe);
  change(text, std::move(edit));
}

void TuneSession::takeOver(const QString& text, const oven::Recipe& recipe) {
  if (!m_bench) return;
  TuneEdit edit = m_bench->edit;
  edit.recipe.speed_mm_per_min = recipe.speed_mm_per_min;
  edit.recipe.top_C = recipe.top_C;
  edit.recipe.bottom_C = recipe.bottom_C;
  edit.recipe.cooling_C = recipe.cooling_C;
  change(text, std::move(edit));
}

void TuneSession::keepPrediction() {
  if (!m_bench || !isSettled()) return;
  TuneEdit edit = m_bench->edit;
  KeptPrediction kept{++m_bench->keptSoFar, m_bench->prediction};
  const QString text = tr("Keep the prediction %1").arg(kept.tag());
  edit.kept.push_back(std::move(kept));
  change(text, std::move(edit));
}

void TuneSession::dropKept(int number) {
  if (!m_bench) return;
  TuneEdit edit = m_bench->edit;
  const auto found = std::ranges::find(edit.kept, number, &KeptPrediction::number);
  if (found == edit.kept.end()) return;
  const QString text = tr("Drop the prediction %1").arg(found->tag());
  edit.kept.erase(found);
  change(text, std::move(edit));
}

void TuneSession::setShown(int number, bool shown) {
  if (!m_bench) return;
  if (number == 0) {
    m_bench->measuredHidden = !shown;
  } else if (shown) {
    m_bench->hidden.erase(number);
  } else {
    m_bench->hidden.insert(number);
  }
  emit shownChanged();
}

bool TuneSession::isShown(int number) const {
  if (!m_bench) return false;
  return number == 0 ? !m_bench->measuredHidden : !m_bench->hidden.contains(number);
}

tune::Request TuneSession::request() const {
  tune::Request request;
  const TuneEdit& edit = m_bench->edit;
  request.freedom.keep_speed = edit.keepSpeed;
  request.freedom.min_speed_mm_per_min = edit.leastSpeed_mm_per_min.value_or(0);
  request.freedom.locked_zones = edit.lockedZones;
  request.freedom.split_sides = !edit.together && m_bench->model && m_bench->model->toldSidesApart();
  request.at_margin = edit.marginToKeep;
  return request;
}

void TuneSession::suggest() {
  if (state() != State::kReady) return;
  m_searching = true;
  m_searchDone = 0;
  m_searchingFor = m_bench;
  m_search.start(m_bench->model, request());
  emit searchChanged();
}

void TuneSession::stop() {
  if (m_learningFor) m_learn.cancel();
  if (m_searching) m_search.stop();
}

}  // namespace ovenwright::desktop
