#pragma once
#include <QImage>
#include <QPointF>
#include <QSizeF>
#include <QString>
#include <optional>
#include <vector>

#include "app/desktop/widgets/channels.h"
#include "app/desktop/widgets/lane_table.h"
#include "core/board/board.h"

namespace ovenwright::widgets {

/// One thermocouple on the board and what one requirement says about it.
struct BoardMark {
  QString name;
  std::size_t channel = 0;
  std::size_t style = 0;
  std::optional<QPointF> at_mm;  ///< behind the leading edge, from the front rail
  std::optional<LaneMark> mark;  ///< absent where the requirement does not bind it
  bool hasLower = false, hasUpper = false;
  QString value, margin, note;  ///< note: limits that are its own, "upper limit 245, Tc"
};

/// What the picture of the board shows; holds no reference to what it was made from.
struct BoardTable {
  QString title;   ///< "Peak, limits by part"
  QSizeF size_mm;  ///< length along the conveyor, width; where the board file has none, around the marks
  bool sizeKnown = false;
  QImage picture;  ///< null: a plain outline
  std::vector<BoardMark> marks;
};

/// @param lane  of `laneTable(judgement, channels)`; empty: marks without results. Board requirements bind no mark.
BoardTable boardTable(const board::Board& board, const QImage& picture, const Channels& channels,
                      const judge::Judgement& judgement, const Lane* lane, const Wording& wording = Wording());

}  // namespace ovenwright::widgets
