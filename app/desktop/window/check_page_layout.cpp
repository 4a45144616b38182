#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QSignalBlocker>
#include <QStackedWidget>
#include <QTabBar>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>
#include <array>

#include "app/desktop/panels/derivation_panel.h"
#include "app/desktop/plot/curve_plot.h"
#include "app/desktop/settings/settings.h"
#include "app/desktop/table/results_table.h"
#include "app/desktop/widgets/board_picture.h"
#include "app/desktop/widgets/limit_lanes.h"
#include "app/desktop/widgets/zone_strip.h"
#include "app/desktop/window/appearance.h"
#include "app/desktop/window/check_page.h"
#include "app/desktop/window/elided_label.h"
#include "app/desktop/window/hairline.h"
#include "app/desktop/window/side_panel.h"

// Where the parts of the Check page stand.
namespace ovenwright::desktop {
namespace {

constexpr double kLeastWidth_px = 300;
constexpr int kUpperShare = 55, kLowerShare = 45;
constexpr double kCurvesKeep_px = 200, kStrip_px = 54, kUnderStrip_px = 2;
constexpr double kLanesKeep_px = 92;  // header and four lanes
constexpr double kLeastCurves_px = 84, kLeastLanes_px = 84;

}  // namespace

void CheckPage::build() {
  m_upper->setAutoFillBackground(true);
  m_upper->setBackgroundRole(QPalette::Base);
  auto* upper_layout = new QVBoxLayout(m_upper);
  upper_layout->setSpacing(0);
  upper_layout->addWidget(m_plot, 1);
  upper_layout->addWidget(m_strip);

  for (const auto& [tab, name] :
       {std::pair(kLanes, tr("&Limit lanes")), std::pair(kTable, tr("&Table")), std::pair(kBoard, tr("&Board"))}) {
    m_tabs->setTabData(m_tabs->addTab(name), int(tab));
  }
  m_tabs->setDrawBase(true);
  m_tabs->setExpanding(false);
  m_tabs->setUsesScrollButtons(false);
  m_tabs->setElideMode(Qt::ElideNone);  // Qt cuts what has its key in brackets, as in Chinese
  m_tabs->setAccessibleName(tr("Limit lanes, table, board"));
  m_filter->setPlaceholderText(tr("Filter"));
  m_filter->setAccessibleName(tr("Filter the table"));
  m_filter->setClearButtonEnabled(true);
  m_panelLink->setAutoRaise(true);
  m_corner->addWidget(m_lanesNote);
  auto* filter_place = new QWidget;
  auto* filter_layout = new QHBoxLayout(filter_place);
  filter_layout->setContentsMargins({});
  filter_layout->addStretch(1);
  filter_layout->addWidget(m_filter);
  m_corner->addWidget(filter_place);
  auto* show_lane = new QWidget;
  auto* show_layout = new QHBoxLayout(show_lane);
  show_layout->setContentsMargins({});
  auto* show_label = new QLabel(tr("&Show"));
  show_label->setBuddy(m_boardLane);
  m_boardLane->setAccessibleName(tr("Requirement shown on the board"));
  m_boardLane->setSizeAdjustPolicy(QComboBox::AdjustToContents);
  connect(m_boardLane, &QComboBox::currentTextChanged, m_boardLane, &QWidget::setToolTip);  // where it is cut
  show_layout->addStretch(1);
  show_layout->addWidget(show_label);
  show_layout->addWidget(m_boardLane);
  m_corner->addWidget(show_lane);
  m_lanesNote->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
  m_lanesNote->setMinimumWidth(0);
  m_lanesNote->setLeastShare(0.4);
  m_lanesNote->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
  m_pages->addWidget(m_lanes);
  m_pages->addWidget(m_table);
  m_pages->addWidget(m_board);
  auto* tab_row = new QHBoxLayout;
  tab_row->setContentsMargins({});
  tab_row->addWidget(m_tabs, 0, Qt::AlignBottom);
  tab_row->addWidget(m_corner, 1);
  tab_row->addWidget(m_panelLink);
  auto* lower_layout = new QVBoxLayout(m_lower);
  lower_layout->setContentsMargins({});
  lower_layout->setSpacing(0);
  lower_layout->addLayout(tab_row);
  lower_layout->addWidget(m_pages, 1);

  m_rows->addWidget(m_upper);
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
  // Over the lanes in a narrow window, under the tab bar, so that the curves stay in sight.
  m_side = new SidePanel(this, m_columns, m_panel, m_pages, m_settings->panelWidth());
  m_side->setWanted(m_settings->panelShown());
  connect(m_side, &SidePanel::placed, this, &CheckPage::fitTabs);
  const QByteArray state = m_settings->checkSplitter();
  m_rowsMoved = !state.isEmpty() && m_rows->restoreState(state);
  connect(m_rows, &QSplitter::splitterMoved, this, [this] { m_rowsMoved = true; });
  m_table->restoreColumns(m_settings->tableColumns());
  m_tabs->setCurrentIndex(std::clamp(m_settings->checkTab(), 0, m_tabs->count() - 1));
  showPage();
}

void CheckPage::showPage() {
  const std::array<QWidget*, 4> pages{m_lanes, m_table, m_board, m_upper};
  if (tab() != kCurves) m_lowerTab = tab();
  QWidget* page = pages[std::size_t(tab())];
  Appearance::shrinkHiddenPages(m_pages, page);
  m_pages->setCurrentWidget(page);
  showCorner();
}

/// Large text in a small window: curves and lanes above one another would both be too low to be read.
void CheckPage::setStacked(bool stacked) {
  if (m_stacked == stacked) return;
  m_stacked = stacked;
  const QSignalBlocker quiet(m_tabs);
  if (stacked) {
    m_pages->addWidget(m_upper);
    m_tabs->insertTab(0, tr("C&urves"));
    m_tabs->setTabData(0, int(kCurves));
    m_tabs->setCurrentIndex(0);
  } else {
    m_pages->removeWidget(m_upper);
    m_rows->insertWidget(0, m_upper);
    m_rows->setStretchFactor(0, kUpperShare);
    m_upper->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Preferred);
    m_upper->show();
    m_tabs->removeTab(0);
    showTab(m_lowerTab);
  }
  showPage();
}

QSize CheckPage::minimumSizeHint() const {
  // As low as it can be with the curves in a tab.
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  const double curves = theme.px(kLeastCurves_px) + m_strip->sizeHint().height() + theme.px(kUnderStrip_px);
  const int page = int(std::max(curves, theme.px(kLeastLanes_px)));
  return {int(theme.px(kLeastWidth_px)), m_tabs->sizeHint().height() + page};
}

bool CheckPage::isPanelShown() const { return m_side->isShown(); }

void CheckPage::setPanelShown(bool shown) {
  m_side->setShown(shown);
  m_settings->setPanelShown(m_side->isWanted());
  emit panelShownChanged(shown);
}

/// What stands beside the tabs is cut before a tab is.
void CheckPage::fitTabs() {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  m_panel->setFloating(m_side->isNarrow());
  m_panelLink->setVisible(m_side->needsLink());
  m_tabs->setMinimumWidth(std::min(m_tabs->sizeHint().width(), width()));
  const QString link = tr("How this number came about");
  const int corner = tab() == kBoard ? m_corner->currentWidget()->minimumSizeHint().width() : 0;
  const int room = width() - m_tabs->sizeHint().width() - corner - int(theme.px(48));
  const QString shown = m_panelLink->fontMetrics().elidedText(link, Qt::ElideRight, room);
  m_panelLink->setText(shown);
  m_panelLink->setToolTip(shown == link ? QString() : link);
  m_panelLink->setAccessibleName(link);
}

/// 55 : 45, but where the lanes would have to scroll they get what they need first, as long as the curves keep enough.
void CheckPage::shareHeight() {
  if (m_stacked || m_rowsMoved || m_rows->height() < 1) return;
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  const int all = m_rows->height() - m_rows->handleWidth();
  const int needed = m_tabs->sizeHint().height() + m_lanes->leastHeight();
  const int most = all - m_strip->sizeHint().height() - int(theme.px(kCurvesKeep_px + kUnderStrip_px));
  const int usual = all * kLowerShare / (kUpperShare + kLowerShare);
  const int lower = std::max(usual, std::min(needed, most));
  m_rows->setSizes({all - lower, lower});
}

void CheckPage::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  setStacked(height() < m_tabs->sizeHint().height() + theme.px(kCurvesKeep_px + kStrip_px + kLanesKeep_px));
  m_side->place();
  shareHeight();
  // Once the tabs are laid out.
  QMetaObject::invokeMethod(
      this,
      [this] {
        m_side->place();
        shareHeight();
      },
      Qt::QueuedConnection);
}

void CheckPage::showCorner() {
  const int corner = tab() == kCurves ? int(kLanes) : int(tab());
  Appearance::shrinkHiddenPages(m_corner, m_corner->widget(corner));
  m_corner->setCurrentIndex(corner);
  m_lanesNote->setVisible(tab() == kLanes);
  if (m_side) fitTabs();
}

void CheckPage::style() {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  m_plot->setTheme(theme);
  m_plot->setMinimumHeight(int(theme.px(kLeastCurves_px)));
  m_upper->layout()->setContentsMargins(0, 0, 0, int(theme.px(kUnderStrip_px)));
  m_table->setTheme(theme);
  m_lanesNote->setFont(theme.font(12));
  Appearance::ink(m_lanesNote, theme.secondary);
  m_corner->setContentsMargins(0, 0, int(theme.px(12)), 0);
  m_filter->setMinimumWidth(int(theme.px(100)));
  m_boardLane->setMinimumWidth(int(theme.px(100)));
  Appearance::ink(m_panelLink, theme.accent);
  showCorner();
}

void CheckPage::saveState() {
  if (m_rowsMoved && !m_stacked) m_settings->setCheckSplitter(m_rows->saveState());
  m_settings->setCheckTab(m_lowerTab);
  m_settings->setTableColumns(m_table->columns());
  m_settings->setPanelWidth(int(m_side->width_px()));
}

}  // namespace ovenwright::desktop
