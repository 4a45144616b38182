#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desktop/plot/curve_plot.h"
#include "app/desktop/settings/settings.h"
#include "app/desktop/tune/flow_row.h"
#include "app/desktop/tune/recipe_strip.h"
#include "app/desktop/tune/suggestions_panel.h"
#include "app/desktop/tune/tune_page.h"
#include "app/desktop/widgets/limit_lanes.h"
#include "app/desktop/window/appearance.h"
#include "app/desktop/window/hairline.h"
#include "app/desktop/window/side_panel.h"

// Where the parts of the Tune page stand, and how they look.
namespace ovenwright::desktop {
namespace {

constexpr int kUpperShare = 58, kLowerShare = 42;
constexpr int kSlow_ms = 150;
constexpr double kCurvesKeep_px = 200;  // what the lanes leave them
constexpr double kLow_px = 480, kLeastCurves_px = 150,
                 kLowest_px = 100;  // of the window; of the curves, usually and there

}  // namespace

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
  const QByteArray state = m_settings->tuneSplitter();
  m_rowsMoved = !state.isEmpty() && m_rows->restoreState(state);
  connect(m_rows, &QSplitter::splitterMoved, this, [this] { m_rowsMoved = true; });
  m_side = new SidePanel(this, m_columns, m_panel, m_lanes, m_settings->tunePanelWidth());
  m_side->setInstead(upper);
  m_side->setWanted(m_settings->tunePanelShown());
  connect(m_side, &SidePanel::placed, this, [this] {
    m_panelLink->setVisible(m_side->needsLink());
    keepTools();
    shareHeight();
  });
  m_slow.setSingleShot(true);
  m_slow.setInterval(kSlow_ms);
}

/// A splitter asks no height for a width, so the rows that the tools need now are told to it.
void TunePage::keepTools() {
  if (!isVisible()) return;  // not laid out yet
  QWidget* tools = m_tools->parentWidget();
  tools->setMinimumHeight(m_tools->heightForWidth(m_lower->width()));
}

/// As on the Check page: where the lanes would have to scroll they get what they need first, as long as the curves keep
/// enough. In a low window the page scrolls, and the curves are so low that the strip is in sight with them.
void TunePage::shareHeight() {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  m_plot->setMinimumHeight(int(theme.px(window()->height() < theme.px(kLow_px) ? kLowest_px : kLeastCurves_px)));
  if (m_rowsMoved || m_rows->height() < 1) return;
  const int all = m_rows->height() - m_rows->handleWidth();
  const int needed = m_tools->parentWidget()->minimumHeight() + m_lanes->leastHeight();
  const int most = all - m_strip->sizeHint().height() - int(theme.px(kCurvesKeep_px));
  const int usual = all * kLowerShare / (kUpperShare + kLowerShare);
  const int lower = std::max(usual, std::min(needed, most));
  m_rows->setSizes({all - lower, lower});
}

bool TunePage::isPanelShown() const { return m_side->isShown(); }

void TunePage::setPanelShown(bool shown) {
  m_side->setShown(shown);
  emit panelShownChanged(shown);
}

void TunePage::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  m_side->place();
  QMetaObject::invokeMethod(m_side, &SidePanel::place, Qt::QueuedConnection);  // once the rest is laid out
}

void TunePage::saveState() {
  if (m_rowsMoved) m_settings->setTuneSplitter(m_rows->saveState());
  m_settings->setTunePanelWidth(int(m_side->width_px()));
  m_settings->setTunePanelShown(m_side->isWanted());
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
