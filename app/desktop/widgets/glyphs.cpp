#include "app/desktop/widgets/glyphs.h"

#include <QPainter>
#include <array>
#include <cmath>

namespace ovenwright::widgets {
namespace {

QPainterPath polygon(std::initializer_list<QPointF> corners) {
  QPainterPath path;
  path.addPolygon(QPolygonF(QList<QPointF>(corners)));
  path.closeSubpath();
  return path;
}

QPen solid(const QColor& color, qreal width) {
  QPen pen(color, width);
  pen.setCapStyle(Qt::FlatCap);
  return pen;
}

}  // namespace

QPainterPath markerPath(Marker marker, const QPointF& c, qreal r) {
  // Factors that give the six shapes about the same area.
  QPainterPath path;
  switch (marker) {
    case Marker::kCircle:
      path.addEllipse(c, r, r);
      return path;
    case Marker::kSquare:
      path.addRect(QRectF(c.x() - 0.9 * r, c.y() - 0.9 * r, 1.8 * r, 1.8 * r));
      return path;
    case Marker::kTriangleUp:
      return polygon(
          {{c.x(), c.y() - 1.2 * r}, {c.x() + 1.2 * r, c.y() + 0.9 * r}, {c.x() - 1.2 * r, c.y() + 0.9 * r}});
    case Marker::kTriangleDown:
      return polygon(
          {{c.x(), c.y() + 1.2 * r}, {c.x() + 1.2 * r, c.y() - 0.9 * r}, {c.x() - 1.2 * r, c.y() - 0.9 * r}});
    case Marker::kDiamond:
      return polygon(
          {{c.x(), c.y() - 1.3 * r}, {c.x() + 1.3 * r, c.y()}, {c.x(), c.y() + 1.3 * r}, {c.x() - 1.3 * r, c.y()}});
    case Marker::kPlus: {
      const qreal arm = 1.2 * r;
      const qreal half = 0.45 * r;
      return polygon({{c.x() - half, c.y() - arm},
                      {c.x() + half, c.y() - arm},
                      {c.x() + half, c.y() - half},
                      {c.x() + arm, c.y() - half},
                      {c.x() + arm, c.y() + half},
                      {c.x() + half, c.y() + half},
                      {c.x() + half, c.y() + arm},
                      {c.x() - half, c.y() + arm},
                      {c.x() - half, c.y() + half},
                      {c.x() - arm, c.y() + half},
                      {c.x() - arm, c.y() - half},
                      {c.x() - half, c.y() - half}});
    }
  }
  return path;
}

void paintMarker(QPainter& painter, const QPointF& center, qreal radius, const ThermocoupleStyle& style, bool filled,
                 const QColor& ground, const Theme& theme) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  if (filled) {
    painter.fillPath(markerPath(style.marker, center, radius), style.color);
  } else {
    QPen pen(style.color, theme.line(1.5));
    pen.setJoinStyle(Qt::MiterJoin);
    painter.setPen(pen);
    painter.setBrush(ground);
    painter.drawPath(markerPath(style.marker, center, radius - theme.line(0.4)));
  }
  painter.restore();
}

void paintRing(QPainter& painter, const QPointF& center, qreal markRadius, const Theme& theme) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(theme.signal, theme.line(1.4)));
  painter.setBrush(Qt::NoBrush);
  const qreal radius = markRadius + theme.px(2.6);
  painter.drawEllipse(center, radius, radius);
  painter.restore();
}

void paintDisc(QPainter& painter, const QPointF& center, qreal diameter, int number, const Theme& theme) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(Qt::NoPen);
  painter.setBrush(theme.signal);
  painter.drawEllipse(center, diameter / 2, diameter / 2);
  QFont font = theme.font(12, true);
  font.setPixelSize(std::max(1, qRound(diameter * (number < 10 ? 0.66 : 0.52))));
  painter.setFont(font);
  painter.setPen(theme.onSignal);
  const QString text = QString::number(number);
  // Centred on the figure's own outline: the line box of a font is not.
  const QRectF ink = QFontMetricsF(font).tightBoundingRect(text);
  painter.drawText(QPointF(center.x() - ink.center().x(), center.y() - ink.center().y()), text);
  painter.restore();
}

void paintHatching(QPainter& painter, const QRectF& rect, const Theme& theme) {
  painter.save();
  painter.setClipRect(rect, Qt::IntersectClip);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(solid(theme.signal, theme.line(1.7)));
  const qreal step = theme.px(7) * std::sqrt(2.0);  // along x, so that lines stand 7 apart at 45 degrees
  const qreal sum = rect.left() + rect.top();
  for (qreal at = std::floor(sum / step) * step; at < rect.right() + rect.bottom() + step; at += step)
    painter.drawLine(QPointF(at - rect.top() + 1, rect.top() - 1), QPointF(at - rect.bottom() - 1, rect.bottom() + 1));
  painter.restore();
}

void paintDotGrid(QPainter& painter, const QRectF& rect, const Theme& theme) {
  if (rect.isEmpty()) return;
  painter.save();
  painter.setClipRect(rect, Qt::IntersectClip);
  QColor ink = theme.quiet;
  const bool shades = theme.kind != Theme::Kind::kHighContrast;
  if (shades) ink.setAlphaF(0.55f);
  painter.setPen(Qt::NoPen);
  painter.setBrush(ink);
  // A grid of 4 px, every second row set between; where dots are as strong as whiskers they are half as many each way.
  const qreal row = theme.px(shades ? 2 : 4);
  const qreal dot = theme.px(1);
  QList<QRectF> dots;
  for (qreal index = std::floor(rect.top() / row); index * row < rect.bottom(); ++index) {
    const qreal shift = std::fmod(index, 2) == 0 ? 0 : row;
    for (qreal column = std::floor((rect.left() - shift) / (2 * row)); column * 2 * row + shift < rect.right();
         ++column)
      dots.append(QRectF(column * 2 * row + shift, index * row, dot, dot));
  }
  painter.drawRects(dots);
  painter.restore();
}

QPainterPath arrowHead(const QPointF& tip, qreal length, qreal halfHeight, bool right) {
  const qreal back = right ? tip.x() - length : tip.x() + length;
  return polygon({tip, {back, tip.y() - halfHeight}, {back, tip.y() + halfHeight}});
}

void paintFocusFrame(QPainter& painter, const QRectF& rect, const Theme& theme) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  QPen pen(theme.accent, theme.line(2));
  pen.setJoinStyle(Qt::MiterJoin);
  painter.setPen(pen);
  painter.setBrush(Qt::NoBrush);
  const qreal half = pen.widthF() / 2;
  painter.drawRect(rect.adjusted(half, half, -half, -half));
  painter.restore();
}

void paintVerdictSign(QPainter& painter, const QRectF& box, std::optional<judge::Verdict> verdict, const Theme& theme,
                      bool informative) {
  using judge::Verdict;
  const qreal height = box.height();
  const qreal width = kSignAspect * height;
  const auto x = [&](qreal share) { return box.left() + share * width; };
  const qreal top = box.top() + 0.1 * height;
  const qreal bottom = box.bottom() - 0.1 * height;
  const qreal middle = box.center().y();
  const qreal radius = 0.2 * height;
  const qreal line = std::max(theme.line(1.2), 0.075 * height);
  const bool out = verdict && judge::is_out(*verdict);
  const QColor ink = out && !informative ? theme.signInk() : theme.text;
  const bool undetermined = verdict == Verdict::kUndetermined;
  // The dot that is clear outside needs its room: there the limits stand further left.
  const std::array<qreal, 2> limits = verdict == Verdict::kFail ? std::array{0.20, 0.65} : std::array{0.26, 0.74};

  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  QPen limitPen = solid(verdict ? theme.secondary : theme.frame, line);
  if (theme.kind == Theme::Kind::kPrint) limitPen.setColor(theme.text);
  if (undetermined) limitPen.setDashPattern({1, 1});
  painter.setPen(limitPen);
  for (const qreal limit : limits) painter.drawLine(QPointF(x(limit), top), QPointF(x(limit), bottom));
  if (undetermined) {
    QPen dashes = limitPen;
    const qreal length = 0.30 * width;
    dashes.setDashPattern({0.24 * length / line, 0.14 * length / line});
    painter.setPen(dashes);
    painter.drawLine(QPointF(x(0.5) - length / 2, middle), QPointF(x(0.5) + length / 2, middle));
  } else if (verdict) {
    const qreal dot = *verdict == Verdict::kPass ? 0.5 : *verdict == Verdict::kConditionalPass ? 0.605 : 0.86;
    painter.setPen(solid(ink, line));
    if (*verdict == Verdict::kConditionalPass) painter.drawLine(QPointF(x(dot), middle), QPointF(x(0.95), middle));
    if (*verdict == Verdict::kConditionalFail) painter.drawLine(QPointF(x(0.51), middle), QPointF(x(dot), middle));
    painter.setPen(Qt::NoPen);
    painter.setBrush(ink);
    painter.drawEllipse(QPointF(x(dot), middle), radius, radius);
  }
  painter.restore();
}

void paintBarredSign(QPainter& painter, const QRectF& box, const Theme& theme) {
  const qreal height = box.height(), width = kSignAspect * height;
  const qreal line = std::max(theme.line(1.2), 0.075 * height);
  const auto x = [&](qreal share) { return box.left() + share * width; };
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  QPen limit = solid(theme.secondary, line);
  limit.setDashPattern({1, 1});
  painter.setPen(limit);
  for (const qreal at : {0.25, 0.75})
    painter.drawLine(QPointF(x(at), box.top() + 0.1 * height), QPointF(x(at), box.bottom() - 0.1 * height));
  painter.setPen(solid(theme.text, line));
  painter.drawLine(QPointF(x(0.36), box.center().y()), QPointF(x(0.64), box.center().y()));
  painter.restore();
}

}  // namespace ovenwright::widgets
