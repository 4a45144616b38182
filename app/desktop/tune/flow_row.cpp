#include "app/desktop/tune/flow_row.h"

#include <algorithm>

namespace ovenwright::desktop {

FlowRow::~FlowRow() { qDeleteAll(m_items); }

QLayoutItem* FlowRow::takeAt(int index) {
  return index >= 0 && index < m_items.size() ? m_items.takeAt(index) : nullptr;
}

QSize FlowRow::minimumSize() const {
  QSize size;
  for (const auto* item : m_items)
    if (!item->isEmpty()) size = size.expandedTo(item->sizeHint());
  const QMargins margins = contentsMargins();
  return size + QSize(margins.left() + margins.right(), margins.top() + margins.bottom());
}

void FlowRow::setHint(std::optional<int> index) {
  if (m_hint == index) return;
  m_hint = index;
  invalidate();
}

void FlowRow::setGeometry(const QRect& rect) {
  QLayout::setGeometry(rect);
  place(rect, true);
}

int FlowRow::place(const QRect& rect, bool apply) const {
  const QRect inner = rect.marginsRemoved(contentsMargins());
  struct Row {
    QList<int> items;
    int width = 0, height = 0;
  };
  int all = -spacing();
  for (const auto* item : m_items)
    if (!item->isEmpty()) all += item->sizeHint().width() + spacing();
  int right = -spacing();  // of all from the split on
  for (int i = std::max(m_split, 0); i < m_items.size(); ++i)
    if (!m_items[i]->isEmpty()) right += m_items[i]->sizeHint().width() + spacing();
  bool split = false;
  QList<Row> rows{Row{}};
  for (int i = 0; i < m_items.size(); ++i) {
    if (m_items[i]->isEmpty()) continue;
    if (i == m_hint && all > inner.width()) {
      if (apply) m_items[i]->setGeometry(QRect(inner.topLeft(), QSize(0, 0)));
      continue;
    }
    const QSize size = m_items[i]->sizeHint();
    // What stands at the right stays together where it fits a row.
    const int wanted = m_split >= 0 && i >= m_split && !split && right <= inner.width() ? right : size.width();
    split = split || (m_split >= 0 && i >= m_split);
    if (!rows.last().items.isEmpty() && rows.last().width + spacing() + wanted > inner.width()) rows << Row{};
    Row& row = rows.last();
    row.width += size.width() + (row.items.isEmpty() ? 0 : spacing());
    row.height = std::max(row.height, size.height());
    row.items << i;
  }
  const int between = m_between < 0 ? spacing() : m_between;
  int y = inner.top();
  for (const Row& row : rows) {
    int x = inner.left();
    bool pushed = m_split < 0;
    for (const int i : row.items) {
      const QSize size = m_items[i]->sizeHint();
      if (!pushed && i >= m_split) {
        x += inner.width() - row.width;
        pushed = true;
      }
      if (apply) m_items[i]->setGeometry(QRect(QPoint(x, y + (row.height - size.height()) / 2), size));
      x += size.width() + spacing();
    }
    y += row.height + between;
  }
  return y - between - rect.top() + contentsMargins().bottom();
}

}  // namespace ovenwright::desktop
