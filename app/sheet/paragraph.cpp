#include "app/sheet/paragraph.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QTextLayout>
#include <algorithm>

namespace ovenwright::sheet {
namespace {

constexpr qreal kLeading = 1.1;         // of a line, times the font's own height
constexpr qsizetype kMostSet = 20'000;  // characters: more is no paragraph

}  // namespace

Paragraph::Paragraph(const QString& text, const QFont& font, qreal width, int most)
    : m_font(font), m_lineHeight(lineHeight(font)) {
  const QFontMetricsF metrics(font);
  QTextOption option;
  option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
  option.setTextDirection(Qt::LeftToRight);
  QTextLayout layout(text.left(kMostSet), font);
  layout.setTextOption(option);
  layout.beginLayout();
  while (true) {
    QTextLine line = layout.createLine();
    if (!line.isValid()) break;
    line.setLineWidth(width);
    const auto rest = layout.text().mid(line.textStart());
    if (m_lines.size() + 1 == most && line.textLength() < rest.size()) {
      m_lines.append(metrics.elidedText(rest, Qt::ElideRight, width));
      m_width = std::max(m_width, width);
      break;
    }
    m_lines.append(layout.text().mid(line.textStart(), line.textLength()).trimmed());
    m_width = std::max(m_width, line.naturalTextWidth());
  }
  layout.endLayout();
  m_height = m_lineHeight * qreal(std::max<qsizetype>(1, m_lines.size()));
}

void Paragraph::paint(QPainter& painter, const QPointF& topLeft, const QColor& color, qreal alignWidth) const {
  for (qsizetype i = 0; i < m_lines.size(); ++i) {
    const QRectF line(topLeft.x(), topLeft.y() + m_lineHeight * qreal(i), std::max(m_width, alignWidth), m_lineHeight);
    paintLine(painter, line.adjusted(0, 0, alignWidth > 0 ? 0 : 1, 0), m_lines[i], m_font, color,
              alignWidth > 0 ? Qt::AlignRight : Qt::AlignLeft);
  }
}

qreal lineHeight(const QFont& font) { return QFontMetricsF(font).height() * kLeading; }

qreal lineWidth(const QString& text, const QFont& font) { return QFontMetricsF(font).horizontalAdvance(text); }

void paintLine(QPainter& painter, const QRectF& rect, const QString& text, const QFont& font, const QColor& color,
               Qt::Alignment alignment) {
  const QFontMetricsF metrics(font);
  QString shown = text;
  constexpr qreal kRounding = 0.01;
  if (metrics.horizontalAdvance(text) > rect.width() + kRounding) {
    shown = metrics.elidedText(text, Qt::ElideMiddle, rect.width());
  }
  painter.setFont(font);
  painter.setPen(color);
  painter.setLayoutDirection(Qt::LeftToRight);
  const QRectF line(rect.left(), rect.top(), rect.width(), metrics.height() * kLeading);
  painter.drawText(line, int(alignment | Qt::AlignVCenter) | Qt::TextSingleLine | Qt::TextDontClip, shown);
}

}  // namespace ovenwright::sheet
