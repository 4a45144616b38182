#pragma once
#include <QRectF>
#include <optional>
#include <vector>

#include "app/desktop/widgets/board_table.h"
#include "app/desktop/widgets/theme.h"

class QPainter;

namespace ovenwright::widgets {

struct BoardState {
  std::optional<std::size_t> chosen, hovered;  ///< indexes into BoardTable::marks
  bool focused = false;
};

/// The board in the middle, a call-out for each thermocouple at its left or right, sorted by y. A leader runs level
/// from its mark to beside the board and only there up or down to its call-out, so that leaders of one side never
/// cross.
class BoardLayout {
 public:
  BoardLayout(const BoardTable& table, const Theme& theme, const QRectF& area);

  struct Callout {
    std::size_t mark = 0;
    bool left = true;
    QRectF rect;
    qreal leader_y = 0;  ///< of the level part
    bool placed = true;  ///< has a place on the board
  };
  const QRectF& board() const { return m_board; }
  const std::vector<Callout>& callouts() const { return m_callouts; }
  QPointF point(std::size_t mark) const;  ///< of a mark that has a place
  QPolygonF leader(const Callout& callout) const;
  bool showsLanes() const { return m_showsLanes; }  ///< else a call-out is one line high
  std::optional<std::size_t> markAt(const QPointF& point) const;
  qreal markRadius() const;

 private:
  void assignSides();
  void placeSide(bool left, const QRectF& column);
  qreal calloutHeight(const Callout& callout) const;
  qreal sideHeight(bool left) const;

  const BoardTable& m_table;
  const Theme& m_theme;
  QRectF m_area, m_board;
  std::vector<Callout> m_callouts;
  bool m_showsLanes = true;
};

void paintBoard(QPainter& painter, const QRectF& area, const BoardTable& table, const Theme& theme,
                const BoardState& state = {});

}  // namespace ovenwright::widgets
