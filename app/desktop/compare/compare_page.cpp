#include "app/desktop/compare/compare_page.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desktop/compare/compare_bar.h"
#include "app/desktop/compare/compare_words.h"
#include "app/desktop/plot/curve_plot.h"
#include "app/desktop/tune/flow_row.h"
#include "app/desktop/widgets/limit_lanes.h"
#include "app/desktop/widgets/zone_strip.h"
#include "app/desktop/window/appearance.h"
#include "app/desktop/window/hairline.h"

namespace ovenwright::desktop {
namespace {

constexpr int kUpperShare = 43, kLowerShare = 57;
constexpr int kSlow_ms = 150;
constexpr double kLeastPlot_px = 240;

/// The one of the document: choices outlive the page, which is made anew with another language.
CompareSession* sessionOf(Document* document) {
  auto* session = document->findChild<CompareSession*>(QString(), Qt::FindDirectChildrenOnly);
  return session ? session : new CompareSession(document, document);
}

}  // namespace

ComparePage::ComparePage(Document* document, Settings* settings, ProfileMenus* profiles, QWidget* parent)
    : QWidget(parent),
      m_settings(settings),
      m_session(sessionOf(document)),
      m_bar(new CompareBar(m_session, profiles)),
      m_plots{new CurvePlot, new CurvePlot},
      m_strips{new widgets::ZoneStrip, new widgets::ZoneStrip},
      m_lanes(new widgets::LimitLanes),
      m_pages(new QStackedWidget),
      m_columns{new QWidget, new QWidget},
      m_rows(new HairlineSplitter(Qt::Vertical)),
      m_emptyTitle(new QLabel),
      m_emptyText(new QLabel) {
  build();
  connectParts();
  style();
  refresh();
}

ComparePage::~ComparePage() = default;

void ComparePage::build() {
  auto* upper = new QWidget;
  upper->setAutoFillBackground(true);
  upper->setBackgroundRole(QPalette::Base);
  auto* upper_layout = new QHBoxLayout(upper);
  upper_layout->setContentsMargins({});
  upper_layout->setSpacing(0);
  for (const std::size_t side : {0, 1}) {
    auto* column = new QVBoxLayout(m_columns[side]);
    column->setContentsMargins({});
    column->setSpacing(0);
    column->addWidget(m_plots[side], 1);
    column->addWidget(m_strips[side]);
    upper_layout->addWidget(m_columns[side], 1);
    m_strips[side]->setAccessibleName(tr("Zone strip of %1").arg(widgets::sideLetter(side)));
  }
  m_lanes->setAccessibleName(tr("Limit lanes, A over B"));
  m_lanes->setAccessibleDescription(tr("One row for each requirement, one cell for each thermocouple of each run."));
  m_rows->addWidget(upper);
  m_rows->addWidget(m_lanes);
  m_rows->setStretchFactor(0, kUpperShare);
  m_rows->setStretchFactor(1, kLowerShare);
  m_rows->setSizes({kUpperShare * 10, kLowerShare * 10});
  m_pages->addWidget(buildEmpty());
  m_pages->addWidget(m_rows);
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins({});
  layout->addWidget(m_pages);
  m_slow.setSingleShot(true);
  m_slow.setInterval(kSlow_ms);
  if (const QByteArray state = m_settings->compareSplitter(); !state.isEmpty()) m_rows->restoreState(state);
}

QWidget* ComparePage::buildEmpty() {
  auto* empty = new QWidget;
  auto* layout = new QVBoxLayout(empty);
  auto* row = new QWidget;
  auto* buttons = new FlowRow(row);
  buttons->setSplit(-1);  // all at the left
  buttons->setContentsMargins({});
  buttons->setSpacing(layout->spacing());
  const auto add = [&](const QString& text, auto act) {
    auto* button = new QPushButton(text);
    button->setAutoDefault(false);
    connect(button, &QPushButton::clicked, this, act);
    buttons->addWidget(button);
  };
  add(tr("Open logs…"), [this] { emit openWanted(); });
  add(tr("Add a run…"), [this] { m_bar->showAdd(); });
  add(tr("Look at two &demo runs"), [this] { emit demoWanted(); });
  for (QLabel* label : {m_emptyTitle, m_emptyText}) label->setWordWrap(true);
  layout->addWidget(m_emptyTitle);
  layout->addWidget(m_emptyText);
  layout->addWidget(row);
  layout->addStretch(1);
  return empty;
}

void ComparePage::connectParts() {
  connect(m_session, &CompareSession::comparedChanged, this, &ComparePage::refresh);
  connect(m_session, &CompareSession::choiceChanged, this, [this] {
    placePlots();
    refreshChoice();
  });
  connect(m_session, &CompareSession::stateChanged, this, [this] {
    if (m_session->isSettled()) {
      m_slow.stop();
      m_lanes->setDimmed(false);
    } else if (!m_slow.isActive()) {
      m_slow.start();
    }
    emit sentenceChanged();
  });
  connect(m_session, &CompareSession::undone, this, &ComparePage::undone);
  connect(&m_slow, &QTimer::timeout, this, [this] { m_lanes->setDimmed(!m_session->isSettled()); });
  for (const std::size_t side : {0, 1}) {
    CurvePlot* plot = m_plots[side];
    connect(plot, &CurvePlot::viewChanged, this, [this, side] {
      const auto* now = m_plots[side];
      if (!now->scene().view) return;
      const double origin = now->scene().origin_s();
      m_plots[1 - side]->showSeconds(now->viewFrom_s() - origin, now->viewTo_s() - origin);
      syncStrip(side);
      if (isOverlaid()) syncStrip(1 - side);
    });
    connect(plot, &CurvePlot::channelClicked, this,
            [this, side](std::size_t channel) { chooseChannel(side, channel); });
    connect(plot, &CurvePlot::groundClicked, this, &ComparePage::chooseNothing);
    connect(m_strips[side], &widgets::ZoneStrip::ovenWanted, this, [this, side] { emit ovenWanted(side); });
    connect(m_strips[side], &widgets::ZoneStrip::entryWanted, this, [this, side] { emit entryWanted(side); });
  }
  connect(m_lanes, &widgets::LimitLanes::chosen, this, [this](std::size_t number) { choose(number); });
  connect(m_lanes, &widgets::LimitLanes::choiceCleared, this, &ComparePage::chooseNothing);
  connect(m_lanes, &widgets::LimitLanes::channelHovered, this, [this](std::optional<std::size_t> channel) {
    m_focus.strong = channel;
    refreshScenes();
  });
  connect(m_lanes, &widgets::LimitLanes::activated, this, [this](std::size_t number) {
    if (!compared()) return;
    const auto mark = markOf(*compared(), number);
    const std::size_t side = mark.side == compare::Side::kA ? 0 : 1;
    if (const auto outcome = outcomeOf(*compared(), side, mark.result))
      emit resultWanted(side, nearestRun(compared()->side(side), *outcome), *outcome);
  });
}

void ComparePage::placePlots() {
  m_columns[1]->setVisible(!isOverlaid());
  auto* under = static_cast<QVBoxLayout*>(m_columns[isOverlaid() ? 0 : 1]->layout());
  if (m_strips[1]->parentWidget() != under->parentWidget()) under->addWidget(m_strips[1]);
}

void ComparePage::refresh() {
  const auto* now = compared();
  m_pages->setCurrentIndex(now ? 1 : 0);
  using State = CompareSession::State;
  const auto state = m_session->state();
  m_emptyTitle->setText(state == State::kWorking ? QString() : tr("Compare needs two runs"));
  m_emptyText->setText(
      tr("Open two logs, or drop them here: the first is A, the second B. A log with several passes is "
         "several runs. Curves, recipes and every requirement then stand side by side, with the "
         "uncertainty of each difference. Of more logs, or of runs marked in Lots, A and B may be groups."));
  m_slow.stop();
  m_lanes->setDimmed(false);
  m_lanes->setTable(now ? compareLanes(*now, m_format) : widgets::LaneTable{});
  // The choice stays where the other comparison has the same result.
  const bool kept = now && m_number && *m_number < now->a.judgement().all_size() + now->b.judgement().all_size();
  choose(kept ? m_number : std::nullopt);
  placePlots();
  emit sentenceChanged();
}

void ComparePage::refreshScenes() {
  const auto* now = compared();
  for (const std::size_t side : {0, 1}) {
    m_plots[side]->setScene(!now                        ? Scene{}
                            : isOverlaid() && side == 0 ? overlaidScene(*now, m_focus, m_format)
                                                        : compareScene(*now, side, m_focus, m_format));
    if (!now) continue;
    const int channels = int(now->side(side).looks.hottestFirst.size());
    m_plots[side]->setAccessibleName(
        tr("%1: temperature over time, %n thermocouples", "letter of a run", channels).arg(widgets::sideLetter(side)));
    m_plots[side]->setAccessibleDescription(now->side(side).group
                                                ? sideTitle(*now, side)
                                                : QString::fromStdString(now->side(side).judgement().sentence.text));
  }
}

void ComparePage::refreshStrips() {
  const auto* now = compared();
  auto strips = now ? compareStrips(*now, m_focus, m_marked, isOverlaid(), m_format) : CompareStrips{};
  m_strips[0]->setTable(std::move(strips.a));
  m_strips[1]->setTable(std::move(strips.b));
  for (const std::size_t side : {0, 1}) {
    const auto& other = *m_strips[isOverlaid() ? 1 - side : side];
    m_plots[side]->setLeastInsets(std::max(m_strips[side]->leastLeftInset(), other.leastLeftInset()),
                                  std::max(m_strips[side]->leastRightInset(), other.leastRightInset()));
    syncStrip(side);
  }
}

void ComparePage::refreshChoice() {
  refreshScenes();
  refreshStrips();
  m_lanes->setChosenOutcome(m_number);
}

void ComparePage::syncStrip(std::size_t side) {
  if (!compared()) return;
  const auto& plot = *m_plots[isOverlaid() ? 0 : side];
  const auto& view = *compared()->side(side).first().view;
  // From the plot's clock to the time since this side's entry.
  const double zero = commonZero_s(*compared(), side) - view.origin_s();
  const double later = zero - plot.scene().origin_s();
  const QRectF axes = plot.axes();
  m_strips[side]->setAxis(plot.viewFrom_s() + later, plot.viewTo_s() + later, axes.left(), plot.width() - axes.right());
}

void ComparePage::choose(std::optional<std::size_t> number) {
  m_number = number;
  m_focus.result.reset();
  m_focus.channel.reset();
  if (number && compared()) {
    m_focus.result = markOf(*compared(), *number).result;
    if (const auto at = m_lanes->table().find(*number)) m_focus.channel = m_lanes->table().at(*at).channel;
  }
  // Among the many curves of groups the chosen thermocouple's stand out.
  if (compared() && compared()->comparison.of_groups) m_focus.strong = m_focus.channel;
  refreshChoice();
}

void ComparePage::chooseChannel(std::size_t side, std::size_t channel) {
  const auto& pairs = compared()->pairs;
  const auto found =
      std::ranges::find_if(pairs, [&](const auto& pair) { return (side == 0 ? pair.a : pair.b) == channel; });
  choose(std::nullopt);
  if (found == pairs.end()) return;
  m_focus.channel = m_focus.strong = std::size_t(found - pairs.begin());
  refreshChoice();
}

void ComparePage::chooseNothing() {
  m_marked = false;
  m_focus.strong.reset();
  choose(std::nullopt);
}

void ComparePage::stepProblem(int by) {
  std::vector<std::size_t> numbers;
  for (const auto& lane : m_lanes->table().lanes)
    for (const auto& mark : lane.marks)
      if (mark.verdict != judge::Verdict::kPass) numbers.push_back(mark.outcome);
  if (numbers.empty()) return;
  const auto now = m_number ? std::ranges::find(numbers, *m_number) : numbers.end();
  const auto count = std::ptrdiff_t(numbers.size());
  const std::ptrdiff_t at = now == numbers.end() ? (by > 0 ? -1 : 0) : now - numbers.begin();
  choose(numbers[std::size_t(((at + by) % count + count) % count)]);
}

void ComparePage::follow(const widgets::SentenceLink& link) {
  if (link.command == u"open") emit openWanted();
  if (link.command == u"add") m_bar->showAdd();
  if (link.command == u"demo") emit demoWanted();
  if (link.command == u"window") {
    CompareChoice choice = m_session->choice();
    choice.windows.clear();
    m_session->change(tr("Compare against the window of A"), std::move(choice));
  }
  if (!compared() || !link.command.isEmpty()) return;
  if (!link.zones.empty()) {
    m_marked = !m_marked;
    refreshStrips();
    return;
  }
  // One after the other where it leads to several.
  std::vector<std::size_t> numbers;
  for (const std::size_t each : link.outcomes)
    if (const auto number = laneNumber(*compared(), compare::mark_of(compared()->comparison, each)))
      numbers.push_back(*number);
  if (numbers.empty()) return;
  const auto now = m_number ? std::ranges::find(numbers, *m_number) : numbers.end();
  choose(now == numbers.end() || now + 1 == numbers.end() ? numbers.front() : *(now + 1));
}

void ComparePage::setFormat(const Format& format) {
  m_format = format;
  m_bar->setFormat(format);
  for (CurvePlot* plot : m_plots) plot->setFormat(format);
  refresh();
  for (CurvePlot* plot : m_plots) plot->showWhole();
}

widgets::SentenceContent ComparePage::sentence() const { return compareSentence(*m_session, m_format); }

QString ComparePage::title() const {
  return compared() ? tr("Compare: %1 and %2").arg(sideName(*compared(), 0), sideName(*compared(), 1)) : tr("Compare");
}

QString ComparePage::statusText() const {
  return compared() ? compareStatus(*compared()) : tr("Nothing is compared yet");
}

bool ComparePage::isGuarded() const {
  if (!compared()) return false;
  const auto& windows = compared()->a.judgement().windows;
  return std::ranges::any_of(windows,
                             [](const auto& window) { return window.decision_rule == window::DecisionRule::kGuarded; });
}

QList<QWidget*> ComparePage::parts() const {
  if (!compared()) return {m_pages->currentWidget()};
  QList<QWidget*> parts{m_plots[0], m_strips[0]};
  if (!isOverlaid()) parts << m_plots[1];
  parts << m_strips[1] << m_lanes;
  return parts;
}

CurvePlot* ComparePage::focusedPlot() const { return m_plots[1]->hasFocus() ? m_plots[1] : m_plots[0]; }

QPixmap ComparePage::picture() const {
  const bool upper = m_rows->widget(0)->isAncestorOf(focusWidget());
  return upper ? m_rows->widget(0)->grab() : m_lanes->asPicture();
}

QString ComparePage::copyText() const {
  QStringList rows{QStringList{tr("Requirement"), tr("Note"), tr("Lower limit"), tr("Upper limit"),
                               tr("A, smallest margin at"), tr("A, margin"), tr("A, verdict"),
                               tr("B, smallest margin at"), tr("B, margin"), tr("B, verdict"), tr("Largest change at"),
                               tr("B − A"), QStringLiteral("±"), tr("Unit"), tr("More margin")}
                       .join(u'\t')};
  if (m_lanes->table().groups) rows.front() += u'\t' + QStringList{tr("Values of A"), tr("Values of B")}.join(u'\t');
  for (const auto& lane : m_lanes->table().lanes) rows << lane.rowText;
  return rows.join(u'\n') + u'\n';
}

void ComparePage::saveState() { m_settings->setCompareSplitter(m_rows->saveState()); }

std::optional<sheet::ComparisonRecord> ComparePage::sheetRecord() const {
  const auto* now = compared();
  if (!now || !m_session->isSettled()) return std::nullopt;
  const auto records = [&](std::size_t side) {
    std::vector<sheet::RunRecord> all;
    for (const auto& from : now->from[side]) {
      sheet::RunRecord run;
      run.log = std::shared_ptr<const check::CheckedLog>(from.log, &from.log->log);
      run.run = from.run;
      run.request = from.request;
      all.push_back(std::move(run));
    }
    return all;
  };
  return sheet::ComparisonRecord{records(0), records(1), {false, m_session->choice().align_C}, isOverlaid()};
}

void ComparePage::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  m_session->setActive(true);
}

void ComparePage::hideEvent(QHideEvent* event) {
  QWidget::hideEvent(event);
  m_session->setActive(false);
}

void ComparePage::style() {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  for (CurvePlot* plot : m_plots) {
    plot->setTheme(theme);
    plot->setMinimumWidth(int(theme.px(kLeastPlot_px)));  // two beside each other, also with large text
  }
  m_emptyTitle->setFont(theme.font(17, true));
  m_emptyText->setMaximumWidth(int(theme.px(620)));
  Appearance::ink(m_emptyText, theme.secondary);
  auto* empty = m_pages->widget(0)->layout();
  empty->setContentsMargins(int(theme.px(40)), int(theme.px(40)), int(theme.px(40)), int(theme.px(24)));
  empty->setSpacing(int(theme.px(12)));
}

void ComparePage::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() != QEvent::PaletteChange && event->type() != QEvent::FontChange) return;
  style();
  refreshChoice();
}

}  // namespace ovenwright::desktop
