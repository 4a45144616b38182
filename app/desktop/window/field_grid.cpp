#include "app/desktop/window/field_grid.h"

#include <QLabel>
#include <QVBoxLayout>
#include <algorithm>

namespace ovenwright::desktop {

FieldGrid::~FieldGrid() { qDeleteAll(m_items); }

void FieldGrid::addField(const QString& title, QWidget* field, QWidget* buddy) {
  auto* cell = new QWidget;
  auto* layout = new QVBoxLayout(cell);
  layout->setContentsMargins({});
  layout->setSpacing(m_down);
  auto* label = new QLabel(title);
  label->setBuddy(buddy ? buddy : field);
  layout->addWidget(label);
  layout->addWidget(field);
  addWidget(cell);
}

void FieldGrid::setBetween(int across, int down) {
  m_across = across;
  m_down = down;
}

QLayoutItem* FieldGrid::takeAt(int index) {
  return index >= 0 && index < m_items.size() ? m_items.takeAt(index) : nullptr;
}

QSize FieldGrid::minimumSize() const {
  QSize size;
  for (const auto* item : m_items) size = size.expandedTo(item->minimumSize());
  const QMargins margins = contentsMargins();
  return size + QSize(margins.left() + margins.right(), margins.top() + margins.bottom());
}

void FieldGrid::setGeometry(const QRect& rect) {
  QLayout::setGeometry(rect);
  place(rect, true);
}

int FieldGrid::place(const QRect& rect, bool apply) const {
  const QRect inner = rect.marginsRemoved(contentsMargins());
  int widest = 1, height = 0;
  for (const auto* item : m_items) {
    widest = std::max(widest, item->minimumSize().width());
    height = std::max(height, item->sizeHint().height());
  }
  const int columns = std::clamp((inner.width() + m_across) / (widest + m_across), 1, m_most);
  const int width = (inner.width() - (columns - 1) * m_across) / columns;
  const int rows = (count() + columns - 1) / columns;
  for (int i = 0; apply && i < count(); ++i)
    m_items[i]->setGeometry(QRect(inner.left() + (i % columns) * (width + m_across),
                                  inner.top() + (i / columns) * (height + m_down), width, height));
  const QMargins margins = contentsMargins();
  return margins.top() + rows * height + std::max(0, rows - 1) * m_down + margins.bottom();
}

}  // namespace ovenwright::desktop
