#include "app/desktop/window/check_page.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QStackedWidget>
#include <QTabBar>
#include <QToolButton>
#include <QVBoxLayout>

#include "app/desktop/panels/derivation_panel.h"
#include "app/desktop/plot/curve_plot.h"
#include "app/desktop/settings/settings.h"
#include "app/desktop/table/results_table.h"
#include "app/desktop/widgets/board_picture.h"
#include "app/desktop/widgets/limit_lanes.h"
#include "app/desktop/widgets/zone_strip.h"
#include "app/desktop/window/appearance.h"
#include "app/desktop/window/elided_label.h"
#include "app/desktop/window/hairline.h"

namespace ovenwright::desktop {
CheckPage::CheckPage(Document* document, Settings* settings, QWidget* parent)
    : QWidget(parent),
      m_document(document),
      m_settings(settings),
      m_plot(new CurvePlot),
      m_strip(new widgets::ZoneStrip),
      m_lanes(new widgets::LimitLanes),
      m_table(new ResultsTable),
      m_board(new widgets::BoardPicture),
      m_boardLane(new QComboBox),
      m_panel(new DerivationPanel),
      m_tabs(new QTabBar),
      m_pages(new QStackedWidget),
      m_corner(new QStackedWidget),
      m_lanesNote(new ElidedLabel),
      m_filter(new QLineEdit),
      m_panelLink(new QToolButton),
      m_upper(new QWidget),
      m_lower(new QWidget),
      m_columns(new HairlineSplitter(Qt::Horizontal, this)),
      m_rows(new HairlineSplitter(Qt::Vertical)) {
  m_lanesNote->setWords(tr("Each mark is a thermocouple, hottest on top. Whisker: ± U. Dotted: guard band."));
  build();
  connectParts();
  style();
  refresh();
}

CheckPage::~CheckPage() = default;

void CheckPage::connectParts() {
  connect(m_document, &Document::currentChanged, this, &CheckPage::refresh);
  connect(m_document, &Document::chosenChanged, this, [this] {
    // Another run comes with a choice of its own, once for both.
    const bool other_run = m_document->view() != m_shown.view;
    if (!other_run && (m_shown.outcome != m_document->chosen() || m_shown.channel != m_document->chosenChannel()))
      refreshChoice();
  });
  connect(m_document, &Document::activityChanged, this, [this] {
    const auto* log = m_document->current();
    m_lanes->setDimmed(log && !log->job.isNull());
  });
  connect(m_plot, &CurvePlot::viewChanged, this, &CheckPage::syncStrip);
  connect(m_plot, &CurvePlot::outcomeClicked, this, [this](std::size_t outcome) { m_document->choose(outcome); });
  connect(m_plot, &CurvePlot::channelClicked, this,
          [this](std::size_t channel) { m_document->chooseChannel(channel); });
  connect(m_plot, &CurvePlot::groundClicked, this, [this] { m_document->choose(std::nullopt); });
  connect(m_strip, &widgets::ZoneStrip::ovenWanted, this, &CheckPage::ovenWanted);
  connect(m_strip, &widgets::ZoneStrip::entryWanted, this, &CheckPage::entryWanted);
  connect(m_strip, &widgets::ZoneStrip::zoneActivated, this, [this](const QString& zone) {
    const auto view = m_document->view();
    const std::string name = zone.toStdString();
    for (std::size_t i = 0; view && i < view->judgement().all_size(); ++i) {
      const auto& zones = view->judgement().all(i).zones;
      if (std::ranges::find(zones, name) == zones.end()) continue;
      m_document->choose(i);
      return;
    }
  });
  connect(m_lanes, &widgets::LimitLanes::chosen, this, [this](std::size_t outcome) { m_document->choose(outcome); });
  connect(m_lanes, &widgets::LimitLanes::choiceCleared, this, [this] { m_document->choose(std::nullopt); });
  connect(m_lanes, &widgets::LimitLanes::activated, this, [this](std::size_t outcome) {
    m_document->choose(outcome);
    setPanelShown(true);
  });
  connect(m_lanes, &widgets::LimitLanes::channelHovered, this, &CheckPage::hover);
  connect(m_table, &ResultsTable::chosen, this, [this](std::size_t outcome) { m_document->choose(outcome); });
  connect(m_table, &ResultsTable::activatedOutcome, this, [this](std::size_t outcome) {
    m_document->choose(outcome);
    setPanelShown(true);
  });
  connect(m_board, &widgets::BoardPicture::chosen, this, [this](std::size_t outcome) { m_document->choose(outcome); });
  connect(m_board, &widgets::BoardPicture::activated, this, [this](std::size_t outcome) {
    m_document->choose(outcome);
    setPanelShown(true);
  });
  connect(m_board, &widgets::BoardPicture::channelHovered, this, &CheckPage::hover);
  connect(m_board, &widgets::BoardPicture::boardWanted, this, &CheckPage::boardWanted);
  connect(m_boardLane, &QComboBox::activated, this, &CheckPage::showBoardLane);
  connect(m_filter, &QLineEdit::textChanged, m_table, &ResultsTable::setFilter);
  connect(m_panel, &DerivationPanel::stepped, this, &CheckPage::stepResult);
  connect(m_panel, &DerivationPanel::windowWanted, this, &CheckPage::windowWanted);
  connect(m_panel, &DerivationPanel::tuneWanted, this, &CheckPage::tuneWanted);
  connect(m_tabs, &QTabBar::currentChanged, this, &CheckPage::showPage);
  connect(m_panelLink, &QToolButton::clicked, this, [this] { setPanelShown(!isPanelShown()); });
}

Scene CheckPage::scene() const {
  // Only what is pointed at, or a curve chosen by itself, makes the others pale.
  std::optional<std::size_t> strong = m_hovered;
  if (!strong && !m_document->chosen()) strong = m_document->chosenChannel();
  return makeScene(m_document->view(), m_document->chosen(), m_document->chosenChannel(), strong, m_format);
}

void CheckPage::hover(std::optional<std::size_t> channel) {
  m_hovered = channel;
  m_plot->setScene(scene());
}

void CheckPage::fillBoardLanes() {
  m_boardLane->clear();
  const auto& lanes = m_lanes->table().lanes;
  for (std::size_t i = 0; i < lanes.size(); ++i) {
    if (lanes[i].board) continue;
    m_boardLane->addItem(
        lanes[i].note.isEmpty()
            ? lanes[i].title
            : widgets::LimitLanes::tr("%1, %2", "requirement and its note").arg(lanes[i].title, lanes[i].note),
        qulonglong(i));
  }
}

void CheckPage::showBoardLane() {
  const auto view = m_document->view();
  if (!view || !view->board()) {
    m_board->setTable(std::nullopt);
    return;
  }
  const auto& lanes = m_lanes->table().lanes;
  const auto lane = m_boardLane->currentData();
  m_board->setTable(widgets::boardTable(*view->board(), view->boardPicture(), view->looks(), view->judgement(),
                                        lane.isValid() ? &lanes[lane.toULongLong()] : nullptr,
                                        widgets::Wording(m_format)));
  m_board->setChosenOutcome(m_document->chosen());
}

void CheckPage::setFormat(const Format& format) {
  m_format = format;
  m_plot->setFormat(format);
  refresh();
  m_plot->showWhole();
}

void CheckPage::refresh() {
  const auto view = m_document->view();
  m_hovered.reset();
  m_lanes->setTable(view ? widgets::laneTable(view->judgement(), view->looks(), widgets::Wording(m_format))
                         : widgets::LaneTable{});
  m_table->setRun(view, m_format);
  fillBoardLanes();
  refreshChoice();
  shareHeight();
}

void CheckPage::refreshChoice() {
  const auto view = m_document->view();
  m_shown = {view, m_document->chosen(), m_document->chosenChannel()};
  const Scene now = scene();
  m_plot->setScene(now);
  m_plot->setAccessibleName(
      view ? tr("Temperature over time, %n thermocouples", nullptr, int(view->hottestFirst().size()))
           : tr("Temperature over time"));
  m_plot->setAccessibleDescription(view ? QString::fromStdString(view->judgement().sentence.text) : QString());
  m_lanes->setChosenOutcome(m_document->chosen());
  m_lanes->setHighlightedChannel(now.strong);
  m_table->setChosen(m_document->chosen());
  if (const auto chosen = m_document->chosen(); chosen && view) {
    // The board shows the requirement of the chosen result.
    if (const auto position = m_lanes->table().find(*chosen)) {
      const int index = m_boardLane->findData(qulonglong(position->lane));
      if (index >= 0) m_boardLane->setCurrentIndex(index);
    }
  }
  showBoardLane();
  m_panel->show(now, m_document->chosen(), widgets::Theme::fromPalette(palette(), font()), m_format);
  if (view) {
    const auto channel = m_document->chosenChannel();
    const board::Board* board = view->board() ? &*view->board() : nullptr;
    const board::Placement* placement =
        board && channel ? board->placement(view->run().channels[*channel].name, view->run().channels[*channel].number)
                         : nullptr;
    const auto place =
        widgets::stripPlace(board, placement, channel ? view->channels()[*channel].look.name : QString());
    m_strip->setTable(widgets::zoneTable(view->oven() ? &*view->oven() : nullptr,
                                         view->recipe() ? &*view->recipe() : nullptr, view->entry(), place,
                                         &view->judgement(), m_format));
  } else {
    m_strip->setTable({});
  }
  m_plot->setLeastInsets(m_strip->leastLeftInset(), m_strip->leastRightInset());
  syncStrip();
}

void CheckPage::syncStrip() {
  const auto view = m_document->view();
  const double origin = view ? view->origin_s() : 0;
  const QRectF axes = m_plot->axes();
  m_strip->setAxis(m_plot->viewFrom_s() - origin, m_plot->viewTo_s() - origin, axes.left(),
                   m_plot->width() - axes.right());
}

QList<QWidget*> CheckPage::parts() const {
  QList<QWidget*> parts;
  if (m_stacked) parts << m_tabs;  // the only way to what it hides
  if (!m_stacked || tab() == kCurves) parts << m_plot << m_strip;
  if (tab() != kCurves) parts << m_pages->currentWidget();
  if (isPanelShown()) parts << m_panel;
  return parts;
}

void CheckPage::showTab(Tab tab) {
  for (int index = 0; index < m_tabs->count(); ++index)
    if (m_tabs->tabData(index).toInt() == tab) m_tabs->setCurrentIndex(index);
}

CheckPage::Tab CheckPage::tab() const { return Tab(m_tabs->tabData(m_tabs->currentIndex()).toInt()); }

void CheckPage::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() != QEvent::PaletteChange && event->type() != QEvent::FontChange) return;
  style();
  refreshChoice();
}

void CheckPage::stepResult(int by) {
  const auto view = m_document->view();
  if (!view || view->judgement().all_size() == 0) return;
  const auto count = std::ptrdiff_t(view->judgement().all_size());
  const std::ptrdiff_t now = m_document->chosen() ? std::ptrdiff_t(*m_document->chosen()) : (by > 0 ? -1 : 0);
  m_document->choose(std::size_t(((now + by) % count + count) % count));
}

void CheckPage::stepProblem(int by) {
  const auto view = m_document->view();
  if (!view) return;
  const auto count = std::ptrdiff_t(view->judgement().all_size());
  std::ptrdiff_t at = m_document->chosen() ? std::ptrdiff_t(*m_document->chosen()) : (by > 0 ? -1 : 0);
  for (std::ptrdiff_t tried = 0; tried < count; ++tried) {
    at = ((at + by) % count + count) % count;
    if (view->judgement().all(std::size_t(at)).verdict == judge::Verdict::kPass) continue;
    m_document->choose(std::size_t(at));
    return;
  }
}

void CheckPage::find() {
  showTab(kTable);
  m_filter->setFocus(Qt::ShortcutFocusReason);
  m_filter->selectAll();
}

QString CheckPage::copyText() const { return m_table->asText(); }

QPixmap CheckPage::picture() const {
  if (m_plot->hasFocus() || m_strip->hasFocus() || tab() == kTable) return m_plot->parentWidget()->grab();
  return tab() == kLanes ? m_lanes->asPicture() : m_pages->currentWidget()->grab();
}

}  // namespace ovenwright::desktop
