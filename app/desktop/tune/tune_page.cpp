#include "app/desktop/tune/tune_page.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desktop/plot/curve_plot.h"
#include "app/desktop/tune/flow_row.h"
#include "app/desktop/tune/recipe_strip.h"
#include "app/desktop/tune/suggestions_panel.h"
#include "app/desktop/tune/tune_words.h"
#include "app/desktop/widgets/limit_lanes.h"
#include "app/desktop/window/appearance.h"
#include "app/desktop/window/hairline.h"

namespace ovenwright::desktop {
namespace {

constexpr double kNarrow_px = 1280, kRail_px = 104;
constexpr double kPanel_px = 372, kPanelLeast_px = 300, kPanelMost_px = 520;
constexpr int kUpperShare = 58, kLowerShare = 42;
constexpr int kSlow_ms = 150;
constexpr std::size_t kFewCurves = 2;

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

QWidget* TunePage::buildTools() {
  auto* tools = new QWidget;
  m_tools = new FlowRow(tools);
  for (QWidget* tool : std::initializer_list<QWidget*>{m_together, m_togetherNote, m_allCurves, m_keep, m_back, m_note,
                                                       m_save, m_panelLink})
    m_tools->addWidget(tool);
  m_tools->setSplit(3);  // buttons at the right
  m_panelLink->setText(tr("Suggestions"));
  m_panelLink->setAutoRaise(true);
  for (QPushButton* button : {m_keep, m_back, m_note, m_save}) button->setAutoDefault(false);
  m_keep->setToolTip(tr("Its curves stay, to be laid over others"));
  auto* note = new QMenu(m_note);
  note->addAction(tr("Save as &PDF…"), this, [this] { saveNote(true); });
  note->addAction(tr("Save as &text…"), this, [this] { saveNote(false); });
  m_note->setMenu(note);
  return tools;
}

void TunePage::build() {
  auto* upper = new QWidget;
  upper->setAutoFillBackground(true);
  upper->setBackgroundRole(QPalette::Base);
  auto* upper_layout = new QVBoxLayout(upper);
  upper_layout->setContentsMargins({});
  upper_layout->setSpacing(0);
  upper_layout->addWidget(m_plot, 1);
  upper_layout->addWidget(m_strip);
  auto* lower_layout = new QVBoxLayout(m_lower);
  lower_layout->setContentsMargins({});
  lower_layout->setSpacing(0);
  lower_layout->addWidget(buildTools());
  lower_layout->addWidget(m_lanes, 1);
  m_rows->addWidget(upper);
  m_rows->addWidget(m_lower);
  m_rows->setStretchFactor(0, kUpperShare);
  m_rows->setStretchFactor(1, kLowerShare);
  m_rows->setSizes({kUpperShare * 10, kLowerShare * 10});
  m_columns->addWidget(m_rows);
  m_columns->addWidget(m_panel);
  m_columns->setStretchFactor(0, 1);
  m_columns->setStretchFactor(1, 0);
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins({});
  layout->addWidget(m_columns);
  m_slow.setSingleShot(true);
  m_slow.setInterval(kSlow_ms);
}

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
  connect(m_strip, &RecipeStrip::backWanted, this, [this](const RecipeField& field) {
    if (const auto* bench = m_session->bench()) m_session->setField(field, valueOf(bench->measured, field), -1);
  });
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
  connect(m_back, &QPushButton::clicked, m_session, &TuneSession::backToMeasured);
  connect(m_save, &QPushButton::clicked, this, &TunePage::saveRecipe);
  connect(m_panelLink, &QToolButton::clicked, this, [this] { setPanelShown(!isPanelShown()); });
}

std::vector<std::size_t> TunePage::fewChannels() const {
  // Those of the smallest margins as measured, so that they stay while the recipe is edited.
  const auto view = m_document->view();
  std::vector<std::pair<double, std::size_t>> margins;
  for (const auto& outcome : view->judgement().results)
    if (outcome.required && outcome.channel && outcome.margin) margins.emplace_back(*outcome.margin, *outcome.channel);
  std::ranges::stable_sort(margins, {}, &std::pair<double, std::size_t>::first);
  std::vector<std::size_t> few;
  for (const auto& [margin, channel] : margins)
    if (few.size() < kFewCurves && std::ranges::find(few, channel) == few.end()) few.push_back(channel);
  return few;
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
  scene.errorBand_C = prediction->forecast.band_C;
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
  m_plot->setScene(scene());
  if (!view) return;
  const auto few = fewChannels();
  for (std::size_t channel = 0; channel < view->channels().size(); ++channel) {
    const bool wanted = m_allCurves->isChecked() || few.empty() || std::ranges::find(few, channel) != few.end() ||
                        channel == m_hovered || channel == m_document->chosenChannel();
    m_plot->setHidden(channel, !wanted);
  }
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
        widgets::predictedLaneTable(tune::with_prediction_error(prediction.judgement(), prediction.forecast.half_width),
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
  m_keep->setEnabled(ready && m_session->isSettled());
  m_back->setEnabled(ready && changed);
  m_note->setEnabled(ready && changed && m_session->isSettled());
  m_save->setEnabled(ready && changed);
  const auto revision = bench ? bench->measured.identity.revision : std::nullopt;
  m_back->setText(revision ? tr("&Back to rev %1").arg(QString::fromStdString(*revision))
                           : tr("&Back to what was run"));
}

void TunePage::refreshNote() {
  const auto* bench = m_session->bench();
  const bool alike = bench && bench->measured.top_C == bench->measured.bottom_C;
  const bool together = m_together->isChecked();
  m_togetherNote->setText(together ? tr("a split needs a run that splits them")
                                   : tr("the run had both sides alike: what each does alone is not known"));
  // What is not known is said wherever the sides are apart, the hint where there is room.
  m_togetherNote->setVisible(m_together->isEnabled() && alike && (!together || !isNarrow()));
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

QList<QWidget*> TunePage::parts() const {
  QList<QWidget*> parts{m_plot, m_strip, m_together, m_lanes};
  if (isPanelShown()) parts << m_panel;
  return parts;
}

void TunePage::setAllCurvesShown(bool shown) { m_allCurves->setChecked(shown); }

QPixmap TunePage::picture() const {
  return m_lanes->hasFocus() ? m_lanes->asPicture() : m_plot->parentWidget()->grab();
}

bool TunePage::isNarrow() const {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  return width() + theme.px(kRail_px) < theme.px(kNarrow_px);
}

bool TunePage::isPanelShown() const { return isNarrow() ? m_overlayOpen : m_panelWanted; }

void TunePage::setPanelShown(bool shown) {
  (isNarrow() ? m_overlayOpen : m_panelWanted) = shown;
  placePanel();
  emit panelShownChanged(shown);
}

void TunePage::placePanel() {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  const bool narrow = isNarrow();
  const int wanted = int(theme.px(kPanel_px));
  m_panel->setMinimumWidth(int(theme.px(kPanelLeast_px)));
  m_panel->setMaximumWidth(int(theme.px(kPanelMost_px)));
  m_panel->setAutoFillBackground(true);
  m_panelLink->setVisible(narrow || !m_panelWanted);
  refreshNote();
  if (narrow) {
    if (m_panel->parentWidget() != this) m_panel->setParent(this);
    const QPoint corner = m_lanes->mapTo(this, QPoint(m_lanes->width() - wanted, 0));
    m_panel->setGeometry(corner.x(), corner.y(), wanted, m_lanes->height());
    m_panel->setVisible(m_overlayOpen);
    if (m_overlayOpen) m_panel->raise();
    return;
  }
  if (m_panel->parentWidget() != m_columns) {
    m_columns->addWidget(m_panel);
    m_columns->setStretchFactor(1, 0);
  }
  const bool was_hidden = m_panel->isHidden() || m_columns->sizes().value(1) == 0;
  m_panel->setVisible(m_panelWanted);
  if (m_panelWanted && was_hidden) m_columns->setSizes({width() - wanted, wanted});
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

void TunePage::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  placePanel();
  QMetaObject::invokeMethod(this, &TunePage::placePanel, Qt::QueuedConnection);  // once the rest is laid out
}

void TunePage::style() {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  m_plot->setTheme(theme);
  m_togetherNote->setFont(theme.font(12));
  QPalette quiet = m_togetherNote->palette();
  quiet.setColor(QPalette::WindowText, theme.secondary);
  m_togetherNote->setPalette(quiet);
  m_tools->setContentsMargins(int(theme.px(16)), int(theme.px(4)), int(theme.px(12)), int(theme.px(4)));
  m_tools->setSpacing(int(theme.px(6)));
  QPalette link = m_panelLink->palette();
  link.setColor(QPalette::ButtonText, theme.accent);
  m_panelLink->setPalette(link);
  Appearance::fillWithAccent(m_save, theme);
}

void TunePage::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() != QEvent::PaletteChange && event->type() != QEvent::FontChange) return;
  style();
  if (isVisible()) refresh();
}

}  // namespace ovenwright::desktop
