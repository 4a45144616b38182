#include "app/desktop/widgets/lanes_painter.h"

#include <QPainter>

#include "app/desktop/widgets/glyphs.h"
#include "app/desktop/widgets/lane_body_painter.h"
#include "app/desktop/widgets/pair_painter.h"
#include "app/desktop/widgets/wording.h"

namespace ovenwright::widgets {
namespace {

class LanesPainter {
 public:
  LanesPainter(QPainter& painter, const LaneTable& table, const Theme& theme, const LanesState& state,
               const LanesLayout& layout)
      : m_painter(painter), m_table(table), m_theme(theme), m_state(state), m_layout(layout) {}

  void paintHeader() {
    const LaneColumns& c = m_layout.columns();
    const qreal height = m_layout.headerHeight();
    m_painter.fillRect(QRectF(c.left, 0, c.right - c.left, height), m_theme.panel);
    m_painter.setPen(QPen(m_theme.frame, m_theme.line(1)));
    const qreal line = height - m_theme.line(1) / 2;
    m_painter.drawLine(QPointF(c.left, line), QPointF(c.right, line));

    m_painter.setPen(m_theme.secondary);
    text(m_theme.font(11), QRectF(QPointF(c.titleLeft, 0), QPointF(c.titleRight, height)), Qt::AlignLeft,
         Wording::tr("Requirement"));
    const auto centred = [&](double s, const QString& what, bool bold) {
      const QFont font = m_theme.font(11, bold);
      const qreal width = QFontMetricsF(font).horizontalAdvance(what);
      const QRectF rect(c.body.x(s) - width / 2, 0, width, height);
      text(font, rect.adjusted(-1, 0, 1, 0), Qt::AlignHCenter, what);
      return rect;
    };
    const auto widthOf = [&](const QString& what, bool bold) {
      return QFontMetricsF(m_theme.font(11, bold)).horizontalAdvance(what);
    };
    const Wording wording;
    const QString lower = Wording::tr("lower limit"), upper = Wording::tr("upper limit");
    const QString middle = Wording::tr("margin %1", "scale above the lanes").arg(wording.percent(1));
    const QString half = wording.percent(0.5);
    const qreal pad = m_theme.px(8);
    const qreal step = c.body.half();
    const auto fits = [&](const QString& what) {
      return (std::max(widthOf(lower, true), widthOf(upper, true)) + widthOf(what, false)) / 2 + pad < step;
    };
    const bool showMiddle = fits(middle);
    const bool showHalves = showMiddle && (widthOf(lower, true) + widthOf(half, false)) / 2 + pad < step / 2 &&
                            (widthOf(middle, false) + widthOf(half, false)) / 2 + pad < step / 2;
    if ((widthOf(lower, true) + widthOf(upper, true)) / 2 + pad < 2 * step) {
      centred(-1, lower, true);
      centred(1, upper, true);
    } else {  // over a narrow body they stand beside its middle
      const qreal middle_x = c.body.x(0);
      const QFont bold = m_theme.font(11, true);
      text(bold, QRectF(c.left, 0, middle_x - pad / 2 - c.left, height), Qt::AlignRight, lower);
      text(bold, QRectF(middle_x + pad / 2, 0, c.right - middle_x - pad / 2, height), Qt::AlignLeft, upper);
    }
    if (showMiddle)
      centred(0, middle, false);
    else if (fits(wording.percent(1)))
      centred(0, wording.percent(1), false);
    if (showHalves) {
      centred(-0.5, half, false);
      centred(0.5, half, false);
    }
    if (m_table.pair) return paintPairHeader(m_painter, m_table, m_theme, m_layout);
    const qreal nameEnd = c.showsValue ? c.valueRight - widthOf(Wording::tr("Value"), false) - pad
                                       : c.marginRight - widthOf(Wording::tr("Margin"), false) - pad;
    text(m_theme.font(11), QRectF(QPointF(c.nameLeft, 0), QPointF(nameEnd, height)), Qt::AlignLeft,
         Wording::tr("Smallest margin"));
    if (c.showsValue)
      text(m_theme.font(11), QRectF(QPointF(c.nameLeft, 0), QPointF(c.valueRight, height)), Qt::AlignRight,
           Wording::tr("Value"));
    text(m_theme.font(11), QRectF(QPointF(c.nameRight, 0), QPointF(c.marginRight, height)), Qt::AlignRight,
         Wording::tr("Margin"));
  }

  void paintRow(std::size_t index) {
    const Lane& lane = m_table.lanes[index];
    const QRectF row = m_layout.row(index);
    const LaneColumns& c = m_layout.columns();
    const bool chosen = m_state.chosen && m_state.chosen->lane == index;
    if (chosen) {
      m_painter.fillRect(row, m_theme.accentSoft);
      m_painter.fillRect(QRectF(row.left(), row.top(), m_theme.px(3), row.height()), m_theme.accent);
    }
    m_painter.setPen(QPen(m_theme.hairline, m_theme.line(1)));
    const qreal line = row.bottom() - m_theme.line(1) / 2;
    m_painter.drawLine(QPointF(c.titleLeft, line), QPointF(row.right(), line));

    const QColor ink = lane.informative ? m_theme.secondary : m_theme.text;
    const QFont titleFont = m_theme.bodyFont(chosen);
    const QFontMetricsF titleMetrics(titleFont);
    const qreal room = c.titleRight - c.titleLeft;
    const QString title = titleMetrics.elidedText(lane.title, Qt::ElideMiddle, room);
    m_painter.setPen(ink);
    text(titleFont, QRectF(c.titleLeft, row.top(), room, row.height()), Qt::AlignLeft, title);
    const qreal noteLeft = c.titleLeft + titleMetrics.horizontalAdvance(title) + m_theme.px(8);
    // A note of which little more than its ends is left says nothing: the tool tip has it.
    constexpr qreal kLeastShare = 0.6;
    const qreal noteRoom = c.titleRight - noteLeft;
    const qreal noteWidth = QFontMetricsF(m_theme.font(11)).horizontalAdvance(lane.note);
    if (!lane.note.isEmpty() && noteRoom > m_theme.px(30) && noteRoom > kLeastShare * noteWidth) {
      m_painter.setPen(m_theme.secondary);
      text(m_theme.font(11), QRectF(noteLeft, row.top(), c.titleRight - noteLeft, row.height()), Qt::AlignLeft,
           lane.note);
    }
    m_painter.setPen(m_theme.secondary);
    text(m_theme.bodyFont(), QRectF(QPointF(c.titleLeft, row.top()), QPointF(c.lowerRight, row.bottom())),
         Qt::AlignRight, lane.lower);
    text(m_theme.bodyFont(), QRectF(QPointF(c.upperLeft, row.top()), QPointF(c.signLeft, row.bottom())), Qt::AlignLeft,
         lane.upper);
    LaneBodyPainter(m_painter, m_table, m_theme, m_state, m_layout).paintBody(index);
    if (m_table.pair)
      paintPairSummary(m_painter, m_table, index, m_theme, m_layout);
    else if (!lane.marks.empty())
      paintSummary(index);
  }

  void paintMarks(std::size_t index) {
    LaneBodyPainter(m_painter, m_table, m_theme, m_state, m_layout).paintMarks(index);
    if (m_state.chosen && m_state.chosen->lane == index && m_state.focused) {
      paintFocusFrame(m_painter, m_layout.row(index), m_theme);
      if (!m_layout.grouped(index)) {
        const qreal reach = m_layout.radius(index) + m_theme.px(6);
        const QPointF center = m_layout.center(index, m_state.chosen->mark);
        paintFocusFrame(m_painter, QRectF(center.x() - reach, center.y() - reach, 2 * reach, 2 * reach), m_theme);
      }
    }
  }

 private:
  void text(const QFont& font, const QRectF& rect, Qt::Alignment alignment, const QString& what) {
    paintLaneText(m_painter, m_theme, font, rect, alignment, what);
  }

  void paintSummary(std::size_t index) {
    const Lane& lane = m_table.lanes[index];
    const LaneMark& mark = lane.marks[lane.worst.mark];
    const QRectF row = m_layout.row(index);
    const LaneColumns& c = m_layout.columns();
    const QColor ink = mark.signal ? m_theme.signal : lane.worst.bold ? m_theme.text : m_theme.secondary;
    const qreal sign = m_theme.px(16);
    paintVerdictSign(m_painter, QRectF(c.signLeft, row.center().y() - sign / 2, kSignAspect * sign, sign), mark.verdict,
                     m_theme, lane.informative);
    qreal nameLeft = c.nameLeft;
    if (lane.board)
      nameLeft = c.markerCenter - m_theme.px(5);
    else
      paintMarker(m_painter, QPointF(c.markerCenter, row.center().y()), m_theme.px(4.2),
                  m_theme.thermocouple(mark.style), true, m_theme.panel, m_theme);
    const auto cell = [&](qreal left, qreal right) {
      return QRectF(QPointF(left, row.top()), QPointF(right, row.bottom()));
    };
    m_painter.setPen(ink);
    if (c.nameRight - c.nameLeft > m_theme.px(20))
      text(m_theme.bodyFont(lane.worst.bold), cell(nameLeft, c.nameRight), Qt::AlignLeft, mark.place);
    const bool without = !c.showsValue && lane.worst.margin.isEmpty();
    text(m_theme.bodyFont(lane.worst.bold), cell(c.nameRight, c.marginRight), Qt::AlignRight,
         without ? insteadOfMargin(lane) : lane.worst.margin);
    if (!c.showsValue) return;
    const QFont body = m_theme.bodyFont();
    m_painter.setPen(m_theme.secondary);
    QString half;
    if (!lane.worst.uncertainty.isEmpty()) half = QStringLiteral(" ± ") + lane.worst.uncertainty;
    text(body, cell(c.nameLeft, c.valueRight), Qt::AlignRight, half);
    const qreal valueRight = c.valueRight - QFontMetricsF(body).horizontalAdvance(half);
    m_painter.setPen(lane.worst.bold ? m_theme.text : m_theme.secondary);
    const qreal valueLeft = valueRight - QFontMetricsF(body).horizontalAdvance(lane.worst.value) - 1;
    text(body, cell(valueLeft, valueRight), Qt::AlignRight, lane.worst.value);
    m_painter.setPen(m_theme.secondary);
    text(m_theme.font(11), cell(c.unitLeft, c.marginRight), Qt::AlignLeft, lane.worst.unit);
  }

  QPainter& m_painter;
  const LaneTable& m_table;
  const Theme& m_theme;
  const LanesState& m_state;
  const LanesLayout& m_layout;
};

}  // namespace

void paintLaneText(QPainter& painter, const Theme& theme, const QFont& font, const QRectF& rect,
                   Qt::Alignment alignment, const QString& what) {
  const QFontMetricsF metrics(font), body(theme.bodyFont());
  const QString shown = metrics.elidedText(what, Qt::ElideMiddle, rect.width() + 1);
  const qreal width = metrics.horizontalAdvance(shown);
  qreal x = rect.left();
  if (alignment == Qt::AlignRight) x = rect.right() - width;
  if (alignment == Qt::AlignHCenter) x = rect.center().x() - width / 2;
  // Every size of text in a row stands on the baseline of its body text.
  painter.setFont(font);
  painter.drawText(QPointF(x, rect.center().y() + (body.ascent() - body.descent()) / 2), shown);
}

void paintLanes(QPainter& painter, const QRectF& area, const LaneTable& table, const Theme& theme,
                const LanesState& state) {
  LanesLayout layout(table, theme, area.width(), 0, state.opened);
  const LanesLayout fitted(table, theme, area.width(), area.height() - layout.headerHeight(), state.opened);
  paintLanes(painter, area, table, theme, state, fitted);
}

void paintLanes(QPainter& painter, const QRectF& area, const LaneTable& table, const Theme& theme,
                const LanesState& state, const LanesLayout& layout) {
  painter.save();
  painter.setClipRect(area, Qt::IntersectClip);
  painter.translate(area.topLeft());
  LanesPainter lanes(painter, table, theme, state, layout);
  const qreal header = layout.headerHeight();
  const qreal top = state.scroll, bottom = state.scroll + area.height() - header;
  const auto eachRow = [&](qreal over, const auto& paint) {
    painter.save();
    painter.setClipRect(QRectF(0, header - over, area.width(), area.height() - header + over), Qt::IntersectClip);
    painter.translate(0, header - state.scroll);
    if (state.dimmed) painter.setOpacity(0.5);
    for (std::size_t lane = 0; lane < table.lanes.size(); ++lane)
      if (layout.row(lane).bottom() > top && layout.row(lane).top() < bottom) paint(lane);
    painter.restore();
  };
  eachRow(0, [&](std::size_t lane) { lanes.paintRow(lane); });
  lanes.paintHeader();
  // The ring of the hottest in the first lane stands over the header's line; what is scrolled ends at it.
  eachRow(state.scroll > 0 ? 0 : theme.px(3), [&](std::size_t lane) { lanes.paintMarks(lane); });
  painter.restore();
}

}  // namespace ovenwright::widgets
