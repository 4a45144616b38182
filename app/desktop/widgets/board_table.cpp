#include "app/desktop/widgets/board_table.h"

#include <algorithm>

namespace ovenwright::widgets {
namespace {

void setResult(BoardMark& mark, const judge::Judgement& judgement, const Lane& lane, const Wording& wording) {
  const auto found = std::ranges::find(lane.marks, std::optional(mark.channel), &LaneMark::channel);
  if (found == lane.marks.end()) return;
  const judge::Outcome& outcome = judgement.all(found->outcome);
  mark.mark = *found;
  mark.hasLower = outcome.lower.has_value();
  mark.hasUpper = outcome.upper.has_value();
  mark.value = wording.value(outcome);
  mark.margin = wording.margin(outcome);
  mark.note = found->ownLimit;
}

/// Room of an eighth around the marks.
QSizeF sizeAround(const std::vector<BoardMark>& marks) {
  QSizeF size(0, 0);
  for (const BoardMark& mark : marks)
    if (mark.at_mm) size = size.expandedTo(QSizeF(mark.at_mm->x(), mark.at_mm->y()));
  constexpr double kRoom = 1.125, kLeast_mm = 10;
  return (size * kRoom).expandedTo(QSizeF(kLeast_mm, kLeast_mm));
}

}  // namespace

BoardTable boardTable(const board::Board& board, const QImage& picture, const Channels& channels,
                      const judge::Judgement& judgement, const Lane* lane, const Wording& wording) {
  BoardTable table;
  table.picture = picture;
  if (lane) table.title = lane->title;
  for (std::size_t channel = 0; channel < channels.looks.size(); ++channel) {
    const ChannelLook& look = channels.looks[channel];
    if (!look.placement) continue;
    const board::Placement& placement = board.placements[*look.placement];
    BoardMark mark;
    mark.name = look.name;
    mark.channel = channel;
    mark.style = look.style;
    if (placement.x_mm && placement.y_mm) mark.at_mm = QPointF(*placement.x_mm, *placement.y_mm);
    if (lane) setResult(mark, judgement, *lane, wording);
    table.marks.push_back(std::move(mark));
  }
  table.sizeKnown = board.length_mm && board.width_mm;
  table.size_mm = table.sizeKnown ? QSizeF(*board.length_mm, *board.width_mm) : sizeAround(table.marks);
  return table;
}

}  // namespace ovenwright::widgets
