#include "app/desktop/widgets/pair_painter.h"

#include <QPainter>

#include "app/desktop/widgets/glyphs.h"
#include "app/desktop/widgets/lanes_painter.h"
#include "app/desktop/widgets/wording.h"

namespace ovenwright::widgets {
namespace {

constexpr qreal kSign_px = 15, kMarker_px = 4.2, kLeastName_px = 20;

class PairPainter {
 public:
  PairPainter(QPainter& painter, const Lane& lane, const QRectF& row, const Theme& theme, const LanesLayout& layout)
      : m_painter(painter), m_lane(lane), m_row(row), m_theme(theme), m_layout(layout) {}

  void paint(std::size_t index) {
    const LaneColumns& c = m_layout.columns();
    for (const std::size_t side : {0, 1}) {
      m_painter.setPen(m_theme.secondary);
      const qreal y = m_layout.sideCenter(index, side), half = m_theme.px(7);
      paintLaneText(m_painter, m_theme, m_theme.font(10),
                    QRectF(c.lowerRight, y - half, c.body.left - c.lowerRight - m_theme.px(4), 2 * half),
                    Qt::AlignRight, sideLetter(side));
      paintWorst(m_lane.pair.worst[side], c.pair.worst[side]);
    }
    paintChange(c);
    const bool decided = m_lane.pair.more == sideLetter(0) || m_lane.pair.more == sideLetter(1);
    m_painter.setPen(decided && !m_lane.informative ? m_theme.text : m_theme.secondary);
    text(m_theme.bodyFont(decided), c.pair.moreLeft, c.marginRight, Qt::AlignRight, m_lane.pair.more);
  }

 private:
  void text(const QFont& font, qreal left, qreal right, Qt::Alignment alignment, const QString& what) {
    paintLaneText(m_painter, m_theme, font, QRectF(QPointF(left, m_row.top()), QPointF(right, m_row.bottom())),
                  alignment, what);
  }

  /// Marker and name; the board has no marker, and its name the marker's room too.
  void paintPlace(const LaneMark& mark, qreal markerCenter, qreal nameLeft, qreal nameRight, bool bold) {
    if (m_lane.board)
      nameLeft = markerCenter - m_theme.px(5);
    else
      paintMarker(m_painter, QPointF(markerCenter, m_row.center().y()), m_theme.px(kMarker_px),
                  m_theme.thermocouple(mark.style), true, m_theme.panel, m_theme);
    if (nameRight - nameLeft > m_theme.px(kLeastName_px))
      text(m_theme.bodyFont(bold), nameLeft, nameRight, Qt::AlignLeft, mark.place);
  }

  void paintWorst(const PairSummary::Worst& worst, const LaneColumns::Worst& c) {
    if (!worst.mark) return;
    const LaneMark& mark = m_lane.marks[*worst.mark];
    const qreal sign = m_theme.px(kSign_px);
    paintVerdictSign(m_painter, QRectF(c.signLeft, m_row.center().y() - sign / 2, kSignAspect * sign, sign),
                     mark.verdict, m_theme, m_lane.informative);
    const QColor ink = mark.signal ? m_theme.signal : worst.bold ? m_theme.text : m_theme.secondary;
    m_painter.setPen(ink);
    paintPlace(mark, c.markerCenter, c.nameLeft, c.nameRight, worst.bold);
    m_painter.setPen(ink);
    text(m_theme.bodyFont(worst.bold), c.nameRight, c.marginRight, Qt::AlignRight, worst.margin);
  }

  void paintChange(const LaneColumns& c) {
    const PairSummary& pair = m_lane.pair;
    m_painter.setPen(m_theme.secondary);
    if (!pair.change)
      return text(m_theme.bodyFont(), c.pair.nameLeft, c.pair.valueRight, Qt::AlignRight, QStringLiteral("–"));
    paintPlace(m_lane.marks[*pair.change], c.pair.markerCenter, c.pair.nameLeft, c.pair.nameRight, false);
    const QFont body = m_theme.bodyFont();
    QString half;
    if (!pair.uncertainty.isEmpty()) half = QStringLiteral(" ± ") + pair.uncertainty;
    m_painter.setPen(m_theme.secondary);
    text(body, c.pair.nameRight, c.pair.valueRight, Qt::AlignRight, half);
    const qreal right = c.pair.valueRight - QFontMetricsF(body).horizontalAdvance(half);
    m_painter.setPen(m_lane.informative ? m_theme.secondary : m_theme.text);
    text(body, right - QFontMetricsF(body).horizontalAdvance(pair.difference) - 1, right, Qt::AlignRight,
         pair.difference);
    m_painter.setPen(m_theme.secondary);
    text(m_theme.font(11), c.pair.unitLeft, c.pair.moreLeft, Qt::AlignLeft, pair.unit);
    if (!pair.counts.isEmpty())
      text(m_theme.font(11), c.pair.unitLeft, c.pair.countsRight, Qt::AlignRight, pair.counts);
  }

  QPainter& m_painter;
  const Lane& m_lane;
  const QRectF& m_row;
  const Theme& m_theme;
  const LanesLayout& m_layout;
};

}  // namespace

void paintPairHeader(QPainter& painter, const LaneTable& table, const Theme& theme, const LanesLayout& layout) {
  const LaneColumns& c = layout.columns();
  painter.setPen(theme.secondary);
  const auto text = [&](qreal left, qreal right, Qt::Alignment alignment, const QString& what) {
    paintLaneText(painter, theme, theme.font(11), QRectF(left, 0, right - left, layout.headerHeight()), alignment,
                  what);
  };
  const auto& worst = c.pair.worst;
  const bool groups = table.groups;
  const auto fits = [&](const QString& what) {
    return QFontMetricsF(theme.font(11)).horizontalAdvance(what) <=
           c.pair.worst[0].marginRight - c.pair.worst[0].signLeft;
  };
  const QString whole[] = {groups ? Wording::tr("A, mean margin") : Wording::tr("A, smallest margin"),
                           groups ? Wording::tr("B, mean margin") : Wording::tr("B, smallest margin")};
  const QString brief[] = {Wording::tr("A, margin"), Wording::tr("B, margin")};
  for (const std::size_t side : {0, 1})
    text(worst[side].signLeft, worst[side].marginRight, Qt::AlignLeft, fits(whole[side]) ? whole[side] : brief[side]);
  const QString counts = QStringLiteral("n");
  const qreal right =
      groups ? c.pair.countsRight - QFontMetricsF(theme.font(11)).horizontalAdvance(counts) : c.pair.moreLeft;
  text(c.pair.changeLeft, right - theme.px(8), Qt::AlignLeft, Wording::tr("Largest change, A to B"));
  if (groups) text(right - theme.px(2), c.pair.countsRight, Qt::AlignRight, counts);
  text(c.pair.moreLeft, c.marginRight, Qt::AlignRight, Wording::tr("more margin"));
}

void paintPairSummary(QPainter& painter, const LaneTable& table, std::size_t lane, const Theme& theme,
                      const LanesLayout& layout) {
  PairPainter(painter, table.lanes[lane], layout.row(lane), theme, layout).paint(lane);
}

}  // namespace ovenwright::widgets
