#include "app/sheet/lanes.h"

#include <QPainter>

namespace ovenwright::sheet {
namespace {

constexpr qreal kGap = 6;
constexpr qreal kNatural = 1e6;  // height for lanes that need not be squeezed

}  // namespace

widgets::LanesLayout PaperLanes::layout(const widgets::LaneTable& lanes) const {
  return widgets::LanesLayout(lanes, m_theme, m_width + insets().left() + insets().right(), m_squeezed ? 0 : kNatural,
                              {});
}

qreal PaperLanes::height() const {
  const auto all = layout(m_table);
  return all.headerHeight() + all.contentHeight() + kGap;
}

void PaperLanes::addTo(Flow& flow) const {
  for (std::size_t from = 0; from < m_table.lanes.size();) {
    widgets::LaneTable part;
    part.tracks = m_table.tracks;
    part.pair = m_table.pair;
    part.groups = m_table.groups;
    Block block;
    block.before = kGap;
    for (std::size_t to = from; to < m_table.lanes.size(); ++to) {
      part.lanes.push_back(m_table.lanes[to]);
      const auto here = layout(part);
      const qreal height = here.headerHeight() + here.contentHeight();
      if (part.lanes.size() > 1 && height + block.before > flow.room()) {
        part.lanes.pop_back();
        break;
      }
      block.height = height;
    }
    from += part.lanes.size();
    block.paint = [part = std::move(part), theme = m_theme, insets = insets(), squeezed = m_squeezed](
                      QPainter& painter, const QRectF& rect) {
      const QRectF wide = rect.marginsAdded(insets);
      const widgets::LanesLayout here(part, theme, wide.width(), squeezed ? 0 : kNatural, {});
      painter.setRenderHint(QPainter::Antialiasing);
      widgets::paintLanes(painter, wide, part, theme, {}, here);
    };
    flow.add(block);
    if (from < m_table.lanes.size()) flow.newPage();
  }
}

}  // namespace ovenwright::sheet
