#pragma once
#include <QRectF>
#include <vector>

#include "app/desktop/plot/scene.h"
#include "app/desktop/widgets/theme.h"
#include "app/desktop/widgets/zone_table.h"

class QPainter;

namespace ovenwright::sheet {

/// Temperature over time with the window's bands, axes and call-outs, and under the same time axis the zones.
class CurvePicture {
 public:
  /// @param view  must outlive it
  CurvePicture(std::shared_ptr<const desktop::RunView> view, const desktop::Format& format,
               const widgets::Theme& theme);
  /// A scene of any kind without zones under it. @param scene  its runs must outlive it
  CurvePicture(desktop::Scene scene, const desktop::Format& format, const widgets::Theme& theme);

  qreal stripHeight() const;
  void paint(QPainter& painter, const QRectF& rect) const;

 private:
  void measure();
  void paintAxes(QPainter& painter, const QRectF& axes) const;

  desktop::Scene m_scene;
  desktop::Format m_format;
  widgets::Theme m_theme;
  widgets::ZoneTable m_zones;
  double m_from_s = 0, m_to_s = 1;  ///< since the origin
  double m_highest = 250;           ///< in the shown unit
  qreal m_left = 0, m_right = 0;    ///< insets of the axes
};

}  // namespace ovenwright::sheet
