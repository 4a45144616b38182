#pragma once
#include <QRectF>
#include <optional>
#include <string>

#include "app/desktop/widgets/theme.h"
#include "app/desktop/widgets/zone_table.h"

class QPainter;

namespace ovenwright::widgets {

/// The plot's x mapping: the axis from `from_s` to `to_s` lies between the two insets of the strip's width.
struct StripAxis {
  double from_s = 0, to_s = 1;  ///< since the board's entry
  qreal leftInset = 0, rightInset = 0;
};

struct ZoneStripState {
  std::optional<std::size_t> hovered, current;  ///< indexes of cells
  bool focused = false;
};

/// Where everything stands in a strip of one size.
class ZoneStripLayout {
 public:
  ZoneStripLayout(const ZoneTable& table, const StripAxis& axis, const Theme& theme, const QRectF& area);

  qreal x(double time_s) const;
  /// The zone's name, top and bottom over each other; cut to the axis, empty where the zone lies outside it.
  QRectF cell(std::size_t index) const;
  QRectF nameRect(std::size_t index) const;
  QRectF topRect(std::size_t index) const;  ///< both rows of a cooling zone, or the one row
  QRectF bottomRect(std::size_t index) const;
  QRectF changeRect(std::size_t index) const;  ///< of a comparison: under the setpoints
  QRectF axisRect() const { return m_axisRect; }
  /// Row 0 to 2: names, top, bottom; in a comparison names, one or two of setpoints, differences.
  qreal rowTop(int row) const;
  qreal rowHeight() const { return m_rowHeight; }
  std::optional<std::size_t> cellAt(const QPointF& point) const;

  static qreal height(const Theme& theme, const ZoneTable& table);
  static int rows(const ZoneTable& table);
  static qreal leastLeftInset(const Theme& theme, const ZoneTable& table);
  static qreal leastRightInset(const Theme& theme, const ZoneTable& table);

 private:
  const ZoneTable& m_table;
  StripAxis m_axis;
  QRectF m_area, m_axisRect;
  qreal m_rowHeight = 0;
  qreal m_gap = 0;
};

/// The line shown where there are no zones; a link in the widget.
QString stripLine(const ZoneTable& table);
/// "Times as met", "by U12 centre" and the speed, each a line of the note at the right; in a comparison the speed
/// alone.
QStringList stripNote(const ZoneTable& table);

void paintZoneStrip(QPainter& painter, const QRectF& area, const ZoneTable& table, const StripAxis& axis,
                    const Theme& theme, const ZoneStripState& state = {});

}  // namespace ovenwright::widgets
