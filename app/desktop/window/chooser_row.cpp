#include "app/desktop/window/chooser_row.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <algorithm>

#include "app/desktop/widgets/theme.h"
#include "app/desktop/window/chooser_button.h"

namespace ovenwright::desktop {
namespace {

constexpr int kMoreToRead_M = 3;  // above the least width of a chooser: what tells a name from others

}  // namespace

ChooserRow::ChooserRow(QWidget* parent) : QWidget(parent), m_layout(new QHBoxLayout(this)) {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  // With the line under it 40 high.
  m_layout->setContentsMargins(int(theme.px(16)), int(theme.px(6)), int(theme.px(12)), int(theme.px(5)));
  m_layout->setSpacing(int(theme.px(6)));
}

ChooserButton* ChooserRow::add(const QString& label, QMenu* menu) {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  auto* text = new QLabel(label, this);
  text->setFont(theme.font(12));
  text->setForegroundRole(QPalette::PlaceholderText);
  auto* button = new ChooserButton(label, this);
  button->setMenu(menu);
  text->setBuddy(button);
  m_labels.push_back(text);
  m_choosers.push_back(button);
  if (m_labels.size() > 1) m_layout->addSpacing(int(theme.px(8)));
  m_layout->addWidget(text);
  m_layout->addWidget(button);
  return button;
}

void ChooserRow::addButton(QPushButton* button) {
  m_layout->addWidget(button);
  m_buttons.push_back(button);
  fitLabels();
}

QSize ChooserRow::minimumSizeHint() const {
  // Without labels and buttons, which go before the choosers do.
  const QMargins margins = m_layout->contentsMargins();
  QSize least(margins.left() + margins.right(), 0);
  for (const ChooserButton* chooser : m_choosers) {
    const QSize size = chooser->minimumSizeHint();
    least = QSize(least.width() + size.width() + 3 * m_layout->spacing(), std::max(least.height(), size.height()));
  }
  return least + QSize(0, margins.top() + margins.bottom());
}

void ChooserRow::fitLabels() {
  // Labels go before the choosers' texts are cut.
  int wanted = m_layout->contentsMargins().left() + m_layout->contentsMargins().right();
  for (int i = 0; i < m_layout->count(); ++i) {
    const auto* item = m_layout->itemAt(i);
    wanted += (item->widget() ? item->widget()->sizeHint() : item->sizeHint()).width() + m_layout->spacing();
  }
  for (QLabel* label : m_labels) label->setVisible(wanted <= width());
  // What the buttons do stands in the menus too: in a bar that is too narrow for both they go, not the choosers.
  int least = minimumSizeHint().width();
  for (const ChooserButton* chooser : m_choosers) {
    const int narrow = chooser->minimumSizeHint().width();
    const int readable = narrow + kMoreToRead_M * chooser->fontMetrics().horizontalAdvance(u'M');
    least += std::min(chooser->sizeHint().width(), readable) - narrow;
  }
  for (const QPushButton* button : m_buttons) least += button->sizeHint().width() + m_layout->spacing();
  for (QPushButton* button : m_buttons) button->setVisible(least <= width());
  fitChoosers();
}

void ChooserRow::fitChoosers() {
  const QMargins margins = m_layout->contentsMargins();
  int room = width() - margins.left() - margins.right() + m_layout->spacing();
  for (int i = 0; i < m_layout->count(); ++i) {
    auto* item = m_layout->itemAt(i);
    if (item->widget() && item->widget()->isHidden()) continue;
    if (!qobject_cast<ChooserButton*>(item->widget())) room -= item->sizeHint().width();
    if (item->widget()) room -= m_layout->spacing();
  }
  // The widest give way first, down to one width.
  std::vector<int> widths;
  for (const ChooserButton* chooser : m_choosers) widths.push_back(chooser->sizeHint().width());
  std::ranges::sort(widths);
  int most = QWIDGETSIZE_MAX;
  for (std::size_t i = 0; i < widths.size(); ++i) {
    const int each = room / int(widths.size() - i);
    if (widths[i] > each) {
      most = std::max(each, 0);
      break;
    }
    room -= widths[i];
  }
  for (ChooserButton* chooser : m_choosers) chooser->setMaximumWidth(std::max(most, chooser->minimumSizeHint().width()));
}

void ChooserRow::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  fitLabels();
}

}  // namespace ovenwright::desktop
