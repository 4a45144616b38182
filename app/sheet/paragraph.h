#pragma once
#include <QFont>
#include <QRectF>
#include <QString>

#include "app/sheet/page.h"

namespace ovenwright::sheet {

/// A text set in lines of one width, broken between words where there are some and inside one that is too long.
/// Reads left to right whatever it begins with, so that a name from a log cannot turn the line around.
class Paragraph {
 public:
  /// @param most  lines; what is longer ends in an ellipsis
  Paragraph(const QString& text, const QFont& font, qreal width, int most = 1000);
  qreal height() const { return m_height; }
  qreal width() const { return m_width; }  ///< of its widest line
  void paint(QPainter& painter, const QPointF& topLeft, const QColor& color, qreal alignWidth = 0) const;

 private:
  QFont m_font;
  QStringList m_lines;
  qreal m_lineHeight = 0, m_height = 0, m_width = 0;
};

/// One line into the top of `rect`, cut in the middle where it does not fit.
void paintLine(QPainter& painter, const QRectF& rect, const QString& text, const QFont& font, const QColor& color,
               Qt::Alignment alignment = Qt::AlignLeft);
/// How wide the line is, set in full.
qreal lineWidth(const QString& text, const QFont& font);
qreal lineHeight(const QFont& font);

}  // namespace ovenwright::sheet
