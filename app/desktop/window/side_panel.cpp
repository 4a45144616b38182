#include "app/desktop/window/side_panel.h"

#include <QSplitter>
#include <algorithm>

#include "app/desktop/widgets/theme.h"

namespace ovenwright::desktop {
namespace {

constexpr double kNarrow_px = 1280;  // of the window, whatever the rail takes of it
constexpr double kLeast_px = 300, kMost_px = 520;
constexpr double kLeastOver_px = 240;  // of height, so that what it holds can be read

widgets::Theme themeOf(const QWidget& widget) { return widgets::Theme::fromPalette(widget.palette(), widget.font()); }

}  // namespace

SidePanel::SidePanel(QWidget* page, QSplitter* columns, QWidget* panel, QWidget* over, double width_px)
    : QObject(page), m_page(page), m_columns(columns), m_panel(panel), m_over(over) {
  setWidth_px(width_px);
  m_panel->setAutoFillBackground(true);
  // Only what a person moved it to is its width: a page that was not looked at yet has none.
  connect(columns, &QSplitter::splitterMoved, this, [this] {
    if (!isNarrow() && m_panel->isVisible() && m_panel->width() > 0)
      setWidth_px(m_panel->width() / themeOf(*m_page).px(1));
  });
}

bool SidePanel::isNarrow() const { return m_page->window()->width() < themeOf(*m_page).px(kNarrow_px); }

void SidePanel::setShown(bool shown) {
  (isNarrow() ? m_open : m_wanted) = shown;
  place();
}

void SidePanel::setWidth_px(double width_px) { m_width_px = std::clamp(width_px, kLeast_px, kMost_px); }

void SidePanel::place() {
  const auto theme = themeOf(*m_page);
  const int wanted = int(theme.px(m_width_px));
  m_panel->setMinimumWidth(int(theme.px(kLeast_px)));
  m_panel->setMaximumWidth(int(theme.px(kMost_px)));
  if (isNarrow()) {
    if (m_panel->parentWidget() != m_page) m_panel->setParent(m_page);
    const bool low = m_instead && m_over->height() < theme.px(kLeastOver_px) && m_instead->height() > m_over->height();
    const QWidget* over = low ? m_instead : m_over;
    const int width = std::min(wanted, over->width());
    const QPoint corner = over->mapTo(m_page, QPoint(over->width() - width, 0));
    m_panel->setGeometry(corner.x(), corner.y(), width, over->height());
    m_panel->setVisible(m_open);
    if (m_open) m_panel->raise();
  } else {
    if (m_panel->parentWidget() != m_columns) {
      m_columns->addWidget(m_panel);
      m_columns->setStretchFactor(m_columns->indexOf(m_panel), 0);
    }
    const bool was_hidden = m_panel->isHidden() || m_columns->sizes().value(1) == 0;
    m_panel->setVisible(m_wanted);
    if (m_wanted && was_hidden) m_columns->setSizes({m_page->width() - wanted, wanted});
  }
  emit placed();
}

}  // namespace ovenwright::desktop
