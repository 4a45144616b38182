#include "app/desktop/tune/tune_page.h"

#include <QCheckBox>
#include <QLabel>
#include <QPushButton>
#include <QToolButton>
#include <algorithm>

#include "app/desktop/plot/curve_plot.h"
#include "app/desktop/table/results_model.h"
#include "app/desktop/tune/flow_row.h"
#include "app/desktop/tune/recipe_strip.h"
#include "app/desktop/tune/suggestions_panel.h"
#include "app/desktop/tune/tune_words.h"
#include "app/desktop/widgets/limit_lanes.h"
#include "app/desktop/window/hairline.h"

namespace ovenwright::desktop {
namespace {

constexpr int kTogetherNote = 1;  // its place among the tools

/// The one of the document: edits and what was learned outlive the page, which is made anew with another language.
TuneSession* sessionOf(Document* document) {
  auto* session = document->findChild<TuneSession*>(QString(), Qt::FindDirectChildrenOnly);
  return session ? session : new TuneSession(document, document);
}

}  // namespace

TunePage::TunePage(Document* document, Settings* settings, QWidget* parent)
    : QWidget(parent),
      m_document(document),
      m_settings(settings),
      m_session(sessionOf(document)),
      m_plot(new CurvePlot),
      m_strip(new RecipeStrip),
      m_lanes(new widgets::LimitLanes),
      m_panel(new SuggestionsPanel(m_session)),
      m_together(new QCheckBox(tr("Top and bottom &together"))),
      m_allCurves(new QCheckBox(tr("&All curves"))),
      m_togetherNote(new QLabel),
      m_keep(new QPushButton(tr("&Keep this prediction"))),
      m_back(new QPushButton(tr("&Back to what was run"))),
      m_note(new QPushButton(tr("Change &note…"))),
      m_save(new QPushButton(tr("&Save as a recipe…"))),
      m_panelLink(new QToolButton),
      m_lower(new QWidget),
      m_columns(new HairlineSplitter(Qt::Horizontal, this)),
      m_rows(new HairlineSplitter(Qt::Vertical)) {
  build();
  connectParts();
  style();
}

TunePage::~TunePage() = default;

void TunePage::connectParts() {
  connect(m_session, &TuneSession::stateChanged, this, &TunePage::refresh);
  connect(m_session, &TuneSession::editChanged, this, [this] {
    refreshStrip();
    refreshTools();
    if (!m_slow.isActive()) m_slow.start();
  });
  connect(m_session, &TuneSession::predictionChanged, this, [this] {
    m_slow.stop();
    m_lanes->setDimmed(false);
    refreshScene();
    refreshLanes();
    refreshTools();
    emit sentenceChanged();
  });
  connect(m_session, &TuneSession::shownChanged, this, &TunePage::refreshScene);
  connect(m_session, &TuneSession::limitHit, this, &TunePage::noted);
  connect(m_session, &TuneSession::undone, this, &TunePage::undone);
  connect(&m_slow, &QTimer::timeout, this, [this] {
    if (m_session->state() == TuneSession::State::kReady && !m_session->isSettled()) m_lanes->setDimmed(true);
  });
  connect(m_document, &Document::chosenChanged, this, [this] {
    if (isVisible()) refreshScene();
    m_lanes->setChosenOutcome(m_document->chosen());
  });
  connect(m_plot, &CurvePlot::viewChanged, this, &TunePage::syncStrip);
  connect(m_plot, &CurvePlot::outcomeClicked, this, [this](std::size_t outcome) { m_document->choose(outcome); });
  connect(m_plot, &CurvePlot::channelClicked, this,
          [this](std::size_t channel) { m_document->chooseChannel(channel); });
  connect(m_plot, &CurvePlot::groundClicked, this, [this] { m_document->choose(std::nullopt); });
  connect(m_lanes, &widgets::LimitLanes::chosen, this, [this](std::size_t outcome) { m_document->choose(outcome); });
  connect(m_lanes, &widgets::LimitLanes::choiceCleared, this, [this] { m_document->choose(std::nullopt); });
  connect(m_lanes, &widgets::LimitLanes::channelHovered, this, [this](std::optional<std::size_t> channel) {
    m_hovered = channel;
    refreshScene();
  });
  connect(m_strip, &RecipeStrip::edited, m_session, &TuneSession::setField);
  connect(m_strip, &RecipeStrip::backWanted, m_session, qOverload<const RecipeField&>(&TuneSession::backToMeasured));
  const auto set_together = [this](bool together) {
    const auto* bench = m_session->bench();
    if (!bench || bench->edit.together == together) return;
    TuneEdit edit = bench->edit;
    edit.together = together;
    m_session->change(together ? tr("Top and bottom together") : tr("Top and bottom apart"), std::move(edit));
  };
  connect(m_together, &QCheckBox::toggled, this, set_together);
  connect(m_strip, &RecipeStrip::togetherToggled, this, [this] { m_together->toggle(); });
  connect(m_strip, &RecipeStrip::lockToggled, this, [this](const std::string& zone) {
    const auto* bench = m_session->bench();
    if (!bench) return;
    TuneEdit edit = bench->edit;
    const QString name = QString::fromStdString(zone);
    if (std::erase(edit.lockedZones, zone) > 0) {
      m_session->change(tr("Let a search move zone %1").arg(name), std::move(edit));
    } else {
      edit.lockedZones.push_back(zone);
      m_session->change(tr("Keep zone %1 in a search").arg(name), std::move(edit));
    }
  });
  connect(m_allCurves, &QCheckBox::toggled, this, &TunePage::refreshScene);
  connect(m_keep, &QPushButton::clicked, m_session, &TuneSession::keepPrediction);
  connect(m_back, &QPushButton::clicked, m_session, qOverload<>(&TuneSession::backToMeasured));
  connect(m_save, &QPushButton::clicked, this, &TunePage::saveRecipe);
  connect(m_panelLink, &QToolButton::clicked, this, [this] { setPanelShown(!isPanelShown()); });
}

/// The channel of the smallest margin as measured, so that it stays while the recipe is edited, and the one at the
/// other end of the board: the hottest or the coldest.
std::vector<std::size_t> TunePage::fewChannels() const {
  const auto view = m_document->view();
  const auto& hottest_first = view->hottestFirst();
  const judge::Outcome* tightest = nullptr;
  for (const auto& outcome : view->judgement().results)
    if (outcome.required && outcome.channel && outcome.margin && (!tightest || *outcome.margin < *tightest->margin))
      tightest = &outcome;
  if (!tightest || hottest_first.empty()) return {};
  const auto at = std::ranges::find(hottest_first, *tightest->channel) - hottest_first.begin();
  const bool hot = 2 * std::size_t(at) < hottest_first.size();
  return {*tightest->channel, hot ? hottest_first.back() : hottest_first.front()};
}

Scene TunePage::scene() const {
  std::optional<std::size_t> strong = m_hovered;
  if (!strong && !m_document->chosen()) strong = m_document->chosenChannel();
  const auto* bench = m_session->bench();
  const auto measured = m_document->view();
  if (!bench || !bench->prediction || !measured || m_session->state() != TuneSession::State::kReady)
    return makeScene(measured, m_document->chosen(), m_document->chosenChannel(), strong, m_format);
  const auto& prediction = bench->prediction;
  const auto chosen = m_document->chosen();
  Scene scene = makeScene({prediction, prediction->view.get()},
                          chosen && *chosen < prediction->judgement().all_size() ? chosen : std::nullopt,
                          m_document->chosenChannel(), strong, m_format);
  scene.subject = measured;
  scene.errorBand_C = bench->band_C();
  if (m_session->isShown(0)) scene.behind.push_back({measured, tr("measured"), {}});
  for (const auto& kept : bench->edit.kept)
    if (m_session->isShown(kept.number))
      scene.behind.push_back(
          {{kept.prediction, kept.prediction->view.get()},
           tr("%1: %2", "letter of a prediction, what it changes")
               .arg(kept.tag(), changesInShort(bench->oven, bench->measured, kept.prediction->recipe, m_format)),
           kept.tag()});
  return scene;
}

void TunePage::refreshScene() {
  const auto view = m_document->view();
  Scene shown = scene();
  std::vector<bool> wanted;
  if (view) {
    wanted.assign(view->channels().size(), m_allCurves->isChecked());
    for (const std::size_t channel : fewChannels()) wanted[channel] = true;
    for (const auto& callOut : shown.callOuts) wanted[callOut.channel] = true;
    for (const auto& channel : {m_hovered, m_document->chosenChannel()})
      if (channel && *channel < wanted.size()) wanted[*channel] = true;  // hovered on a run with more of them
    if (std::ranges::find(wanted, true) == wanted.end()) wanted.assign(wanted.size(), true);
    std::erase_if(shown.stretches, [&](const auto& stretch) { return !wanted[stretch.channel]; });
  }
  m_plot->setScene(std::move(shown));
  if (!view) return;
  // What a person shows or hides by key stays as long as nothing here asks for another choice of that curve.
  const bool anew = m_wantedOf.lock() != view;
  for (std::size_t channel = 0; channel < wanted.size(); ++channel)
    if (anew || wanted[channel] != m_wanted[channel]) m_plot->setHidden(channel, !wanted[channel]);
  m_wanted = std::move(wanted);
  m_wantedOf = view;
  m_plot->setAccessibleName(
      tr("Predicted and measured temperature over time, %n thermocouples", nullptr, int(view->hottestFirst().size())));
  m_plot->setAccessibleDescription(sentence().spoken);
  syncStrip();
}

void TunePage::refreshLanes() {
  const auto* bench = m_session->bench();
  const auto view = m_document->view();
  if (bench && bench->prediction && view && m_session->state() == TuneSession::State::kReady) {
    const auto& prediction = *bench->prediction;
    m_lanes->setTable(
        widgets::predictedLaneTable(tune::with_prediction_error(prediction.judgement(), bench->halfWidths()),
                                    view->judgement(), prediction.view->looks(), widgets::Wording(m_format)));
  } else {
    m_lanes->setTable(view ? widgets::laneTable(view->judgement(), view->looks(), widgets::Wording(m_format))
                           : widgets::LaneTable{});
  }
  m_lanes->setChosenOutcome(m_document->chosen());
}

void TunePage::refreshStrip() {
  RecipeStripTable table;
  const auto* bench = m_session->bench();
  const auto view = m_document->view();
  if (bench && view) {
    table.measured = bench->measured;
    table.edited = bench->edit.recipe;
    table.together = bench->edit.together;
    m_strip->setAccessibleDescription(table.together ? tr("Top and bottom together, checked")
                                                     : tr("Top and bottom together, not checked"));
    table.format = m_format;
    table.enabled = m_session->state() == TuneSession::State::kReady;
    const auto channel = m_document->chosenChannel();
    const auto zones = widgets::zoneTable(&bench->oven, &bench->edit.recipe, view->entry(), {view->x_mm(channel), {}},
                                          nullptr, m_format);
    std::size_t heating = 0, cooling = 0;
    for (const auto& cell : zones.cells) {
      StripColumn column{cell.id,     cell.name, cell.cooling, true, cell.cooling ? cooling++ : heating++,
                         cell.from_s, cell.to_s, false};
      column.hasSetpoint = !cell.cooling || column.index < bench->measured.cooling_C.size();
      column.locked = std::ranges::find(bench->edit.lockedZones, cell.id) != bench->edit.lockedZones.end();
      table.columns.push_back(std::move(column));
    }
  }
  m_strip->setVisible(!table.columns.empty());
  m_strip->setTable(std::move(table));
  m_plot->setLeastInsets(m_strip->leastLeftInset(), m_strip->leastRightInset());
  syncStrip();
}

void TunePage::refreshTools() {
  const auto* bench = m_session->bench();
  const bool ready = m_session->state() == TuneSession::State::kReady;
  const bool changed = bench && !sameNumbers(bench->edit.recipe, bench->measured);
  {
    const QSignalBlocker quiet(m_together);
    m_together->setChecked(!bench || bench->edit.together);
  }
  m_together->setEnabled(ready);
  refreshNote();
  m_allCurves->setEnabled(bench != nullptr);
  // A button that goes dim under the keyboard hands it to the strip, not to its neighbour, which may do another thing.
  const auto enable = [this](QPushButton* button, bool enabled) {
    if (!enabled && button->hasFocus()) m_strip->setFocus(Qt::OtherFocusReason);
    button->setEnabled(enabled);
  };
  enable(m_keep, ready && m_session->isSettled());
  enable(m_back, ready && changed);
  enable(m_note, ready && changed && m_session->isSettled());
  enable(m_save, ready && changed);
  const auto revision = bench ? bench->measured.identity.revision : std::nullopt;
  m_back->setText(revision ? tr("&Back to rev %1").arg(QString::fromStdString(*revision))
                           : tr("&Back to what was run"));
}

void TunePage::refreshNote() {
  const auto* bench = m_session->bench();
  const bool alike = bench && !(bench->model && bench->model->toldSidesApart());
  const bool together = m_together->isChecked();
  m_togetherNote->setText(together ? tr("a split needs a run that splits them")
                                   : tr("the run had both sides alike: what each does alone is not known"));
  m_together->setToolTip(alike ? m_togetherNote->text() : QString());
  // What is not known is said wherever the sides are apart, the hint where there is room.
  m_tools->setHint(together ? std::optional(kTogetherNote) : std::nullopt);
  m_togetherNote->setVisible(m_together->isEnabled() && alike);
  keepTools();
}

void TunePage::refresh() {
  if (m_session->state() != TuneSession::State::kReady) m_lanes->setDimmed(false);
  refreshStrip();
  refreshScene();
  refreshLanes();
  refreshTools();
  emit sentenceChanged();
}

void TunePage::syncStrip() {
  const auto view = m_document->view();
  const double origin = view ? view->origin_s() : 0;
  const QRectF axes = m_plot->axes();
  m_strip->setAxis(m_plot->viewFrom_s() - origin, m_plot->viewTo_s() - origin, axes.left(),
                   m_plot->width() - axes.right());
}

void TunePage::setFormat(const Format& format) {
  m_format = format;
  m_plot->setFormat(format);
  m_panel->setFormat(format);
  m_session->setFormat(format);
  if (!isVisible()) return;
  refresh();
  m_plot->showWhole();
}

widgets::SentenceContent TunePage::sentence() const { return tuneSentence(*m_session, m_format); }

void TunePage::follow(const widgets::SentenceLink& link) {
  if (link.command == u"oven") emit ovenWanted();
  if (link.command == u"entry") emit entryWanted();
  if (link.command == u"stop") m_session->stop();
  if (link.command == u"learn") m_session->learnAgain();
  if (link.command.isEmpty() && !link.outcomes.empty()) m_document->choose(link.outcomes.front());
}

void TunePage::stepProblem(int by) {
  const auto* bench = m_session->bench();
  if (!bench || !bench->prediction || m_session->state() != TuneSession::State::kReady) return;
  const auto& judgement = bench->prediction->judgement();
  const auto count = std::ptrdiff_t(judgement.all_size());
  std::ptrdiff_t at = m_document->chosen() ? std::ptrdiff_t(*m_document->chosen()) : (by > 0 ? -1 : 0);
  for (std::ptrdiff_t tried = 0; tried < count; ++tried) {
    at = ((at + by) % count + count) % count;
    if (judgement.all(std::size_t(at)).verdict == judge::Verdict::kPass) continue;
    m_document->choose(std::size_t(at));
    return;
  }
}

QList<QWidget*> TunePage::parts() const {
  QList<QWidget*> parts{m_plot, m_strip, m_together, m_lanes};
  if (isPanelShown()) parts << m_panel;
  return parts;
}

void TunePage::setAllCurvesShown(bool shown) { m_allCurves->setChecked(shown); }

QString TunePage::copyText() const {
  QStringList rows{QStringList{ResultsModel::tr("Requirement"), tr("Note"), ResultsModel::tr("Lower limit"),
                               ResultsModel::tr("Upper limit"), ResultsModel::tr("Placement"),
                               ResultsModel::tr("Value"), ResultsModel::tr("± U"), ResultsModel::tr("Unit"),
                               ResultsModel::tr("Margin"), ResultsModel::tr("Verdict")}
                       .join(u'\t')};
  for (const auto& lane : m_lanes->table().lanes) rows << lane.rowText;
  return rows.join(u'\n') + u'\n';
}

QPixmap TunePage::picture() const {
  return m_lanes->hasFocus() ? m_lanes->asPicture() : m_plot->parentWidget()->grab();
}

void TunePage::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  m_session->setActive(true);
  refresh();
}

void TunePage::hideEvent(QHideEvent* event) {
  QWidget::hideEvent(event);
  m_session->setActive(false);
}

}  // namespace ovenwright::desktop
