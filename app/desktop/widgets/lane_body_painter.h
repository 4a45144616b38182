#pragma once
#include <array>

#include "app/desktop/widgets/lanes_painter.h"

namespace ovenwright::widgets {

/// Left edges of two names over two marks, left one first: as close to their marks as they may stand without touching
/// one another or leaving the lane; both fit into it.
std::array<qreal, 2> placeNames(const std::array<qreal, 2>& centers, const std::array<qreal, 2>& widths, qreal left,
                                qreal right, qreal gap);

/// Paints the bodies of lanes: ground, limits, guard bands, whiskers and marks.
class LaneBodyPainter {
 public:
  LaneBodyPainter(QPainter& painter, const LaneTable& table, const Theme& theme, const LanesState& state,
                  const LanesLayout& layout)
      : m_painter(painter), m_table(table), m_theme(theme), m_state(state), m_layout(layout) {}
  void paintBody(std::size_t lane);
  /// Over the bodies of all lanes: the ring of a mark on the outermost track reaches into the next row.
  void paintMarks(std::size_t lane);

 private:
  bool chosen(std::size_t lane) const { return m_state.chosen && m_state.chosen->lane == lane; }
  void paintGround(std::size_t lane);
  void paintGuardBands(std::size_t lane);
  void paintLimits(std::size_t lane);
  void paintSides(std::size_t lane);
  void paintTicks(std::size_t lane);
  void paintGroup(std::size_t lane);
  void paintGroupEnds(std::size_t lane, std::size_t first, std::size_t last);
  void paintMark(std::size_t lane, std::size_t mark);
  void paintMeasured(const LaneMark& mark, const QPointF& center);
  void paintWhisker(const LaneMark& mark, const QPointF& center, const QColor& ink);
  void paintUndetermined(const LaneMark& mark, const QPointF& center, const QColor& ink);
  void paintEdgeArrow(const LaneMark& mark, qreal y);
  ThermocoupleStyle style(std::size_t lane, const LaneMark& mark) const;

  QPainter& m_painter;
  const LaneTable& m_table;
  const Theme& m_theme;
  const LanesState& m_state;
  const LanesLayout& m_layout;
};

}  // namespace ovenwright::widgets
