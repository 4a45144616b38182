#include "app/sheet/control_chart.h"

#include <QCoreApplication>
#include <QPainter>
#include <algorithm>

#include "app/desktop/widgets/wording.h"
#include "app/sheet/paragraph.h"
#include "core/judge/decide.h"
#include "core/lot/lot.h"

namespace ovenwright::sheet {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Sheet)
};

struct Line {
  double value;
  QString name;
  Qt::PenStyle style;
  qreal width;
};

}  // namespace

void paintControlChart(QPainter& painter, const QRectF& rect, const lot::Series& series, const widgets::Theme& theme) {
  if (!series.control) return;
  const auto& chart = *series.control;
  const widgets::Wording wording;
  const int digits = judge::usual_digits(series.measure) + 1;
  const QFont font = theme.font(11);
  const qreal names = 120, height = lineHeight(font);
  std::vector<Line> lines{
      {chart.upper, Words::tr("%1 upper").arg(wording.number(chart.upper, digits)), Qt::DashLine, 1},
      {chart.centre, Words::tr("%1 centre").arg(wording.number(chart.centre, digits)), Qt::SolidLine, 1},
      {chart.lower, Words::tr("%1 lower").arg(wording.number(chart.lower, digits)), Qt::DashLine, 1}};
  double low = chart.lower, high = chart.upper;
  for (const auto& point : chart.points) {
    low = std::min(low, point.value);
    high = std::max(high, point.value);
  }
  // A limit of the window is drawn where it would not squeeze the runs into a line.
  const double span = std::max(high - low, 1e-9);
  for (const auto& limit : {series.lower, series.upper}) {
    if (!limit || *limit < low - span || *limit > high + span) continue;
    lines.push_back({*limit, Words::tr("limit %1").arg(wording.limit(*limit)), Qt::SolidLine, 2});
    low = std::min(low, *limit);
    high = std::max(high, *limit);
  }
  const QRectF area = rect.adjusted(8, height / 2 + 2, -names, -height / 2 - 2);
  const double pad = 0.06 * std::max(high - low, 1e-9);
  low -= pad;
  high += pad;
  const auto y = [&](double value) { return area.bottom() - area.height() * (value - low) / (high - low); };
  const auto count = std::max<std::size_t>(chart.points.size(), 2);
  const auto x = [&](std::size_t i) { return area.left() + 6 + (area.width() - 12) * double(i) / double(count - 1); };
  painter.setRenderHint(QPainter::Antialiasing);
  std::ranges::sort(lines, {}, [&](const Line& line) { return y(line.value); });
  qreal free = rect.top();
  for (const Line& line : lines) {
    painter.setPen(QPen(theme.text, theme.line(line.width), line.style));
    painter.drawLine(QLineF(area.left(), y(line.value), area.right(), y(line.value)));
    const qreal top = std::max(free, y(line.value) - height / 2);
    paintLine(painter, QRectF(area.right() + 6, top, names - 6, height), line.name, font, theme.secondary);
    free = top + height;
  }
  QPolygonF course;
  for (std::size_t i = 0; i < chart.points.size(); ++i) course << QPointF(x(i), y(chart.points[i].value));
  painter.setPen(QPen(theme.thermocouples[0], theme.line(1.2)));
  painter.drawPolyline(course);
  painter.setBrush(theme.thermocouples[0]);
  for (const QPointF& at : course) painter.drawEllipse(at, 2, 2);
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(theme.signal, theme.line(1.4)));
  constexpr qreal kSquare = 8;
  for (const auto& signal : chart.signals_found) {
    const QPointF at = course[qsizetype(signal.point)];
    painter.drawRect(QRectF(at.x() - kSquare / 2, at.y() - kSquare / 2, kSquare, kSquare));
  }
}

}  // namespace ovenwright::sheet
