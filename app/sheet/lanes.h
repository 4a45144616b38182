#pragma once
#include "app/desktop/widgets/lanes_painter.h"
#include "app/sheet/page.h"

namespace ovenwright::sheet {

/// Limit lanes on paper: their own insets stand in the page's margins.
class PaperLanes {
 public:
  /// @param width  of the page between its margins
  PaperLanes(const widgets::LaneTable& table, const widgets::Theme& theme, qreal width)
      : m_table(table), m_theme(theme), m_width(width) {}

  void setSqueezed(bool squeezed) { m_squeezed = squeezed; }  ///< as low as rows go
  qreal height() const;                                       ///< all on one page, with the room above them
  /// Takes the largest type of which `fits` says that there is room.
  template <class Fits>
  void chooseType(const Fits& fits) {
    for (const int body_px : {11, 10, 9}) {
      m_theme = paperTheme(body_px);
      if (fits(layout(m_table).columns(), m_theme)) return;
    }
  }
  /// As many on each page as there is room for.
  void addTo(Flow& flow) const;

 private:
  QMarginsF insets() const { return {m_theme.px(16), 0, m_theme.px(12), 0}; }
  widgets::LanesLayout layout(const widgets::LaneTable& lanes) const;

  const widgets::LaneTable& m_table;
  widgets::Theme m_theme;
  qreal m_width;
  bool m_squeezed = false;
};

}  // namespace ovenwright::sheet
