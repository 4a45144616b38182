#include "app/desktop/import/plain_header.h"

#include <QPainter>
#include <algorithm>

#include "app/desktop/import/file_table.h"
#include "app/desktop/widgets/glyphs.h"

namespace ovenwright::desktop {
namespace {

constexpr double kInset_px = 4;  // as the cells of a table have it
constexpr double kLine_px = 2, kHeading_px = 26, kNumbers_px = 44;

}  // namespace

QSize PlainHeader::sizeHint() const {
  const QSize size = QHeaderView::sizeHint();
  return orientation() == Qt::Horizontal ? QSize(size.width(), int(m_theme.px(kHeading_px)))
                                         : QSize(std::max(size.width(), int(m_theme.px(kNumbers_px))), size.height());
}

QSize PlainHeader::sectionSizeFromContents(int section) const {
  const QString words = model()->headerData(section, orientation(), Qt::DisplayRole).toString();
  const QFontMetrics metrics(m_theme.font(12));
  return {metrics.horizontalAdvance(words) + int(m_theme.px(4 * kInset_px)), int(metrics.height() + m_theme.px(8))};
}

void PlainHeader::paintSection(QPainter* painter, const QRect& rect, int section) const {
  painter->save();
  painter->setFont(m_theme.font(12));
  const QString words = model()->headerData(section, orientation(), Qt::DisplayRole).toString();
  const QRectF inner = QRectF(rect).adjusted(m_theme.px(kInset_px), 0, -m_theme.px(kInset_px), 0);
  if (orientation() == Qt::Vertical) {
    painter->setPen(m_theme.quiet);
    painter->drawText(inner, Qt::AlignRight | Qt::AlignVCenter, words);
    painter->restore();
    return;
  }
  using Role = FileModel::Role;
  const auto role = Role(model()->headerData(section, orientation(), FileModel::kColumnRole).toInt());
  const auto align = role == Role::kTime ? Qt::AlignLeft : Qt::AlignRight;
  painter->setPen(role == Role::kOther ? m_theme.secondary : m_theme.accent);
  painter->drawText(inner, align | Qt::AlignVCenter, words);
  if (role != Role::kOther) {
    const double width = QFontMetricsF(painter->font()).horizontalAdvance(words);
    const double left = align == Qt::AlignLeft ? inner.left() : inner.right() - width;
    QPen line(m_theme.accent, m_theme.line(kLine_px));
    if (role == Role::kTime) line.setDashPattern({4, 2});
    line.setCapStyle(Qt::FlatCap);
    painter->setPen(line);
    const double y = inner.bottom() - m_theme.px(kLine_px);
    painter->drawLine(QLineF(left, y, left + width, y));
  }
  if (hasFocus() && currentIndex().isValid() && currentIndex().column() == section)
    widgets::paintFocusFrame(*painter, rect, m_theme);
  painter->restore();
}

}  // namespace ovenwright::desktop
