#pragma once
#include <QPen>
#include <QRectF>
#include <optional>
#include <vector>

#include "app/desktop/plot/polyline.h"
#include "app/desktop/plot/scene.h"
#include "app/desktop/widgets/theme.h"

class QPainter;

namespace ovenwright::desktop {

/// Where a scene is painted: the rectangle inside the axes and the way of time and temperature to it.
/// Every function below paints one kind of mark and can be called alone, so that the plot, the small picture in the
/// panel and a sheet share them. They clip to `area` themselves where the marks belong inside the axes.
struct Canvas {
  QRectF area;
  Mapping mapping;
  double room_right = 0;  ///< for names right of the axes
  const widgets::Theme* theme = nullptr;
  const Format* format = nullptr;
  bool moving = false;  ///< the view is being moved: curves of one pixel with plain edges, in a tenth of the time
};

void paintBands(QPainter& painter, const Canvas& canvas, const Scene& scene);
/// The bands' names right of the axes, kept from overlapping.
void paintBandNames(QPainter& painter, const Canvas& canvas, const Scene& scene);
/// The scene's title in the top left corner of the axes, over the curves' rise.
void paintTitle(QPainter& painter, const Canvas& canvas, const Scene& scene);
void paintZoneBorders(QPainter& painter, const Canvas& canvas, const Scene& scene);
void paintHalos(QPainter& painter, const Canvas& canvas, const Scene& scene);
/// The curves, coldest first; stretches that were removed are dotted in a dotted frame, never a curve.
/// @param hidden  channel indexes that are not drawn
void paintCurves(QPainter& painter, const Canvas& canvas, const Scene& scene, const std::vector<bool>& hidden);
/// Runs behind the curves: the measured one dotted, predictions dash-dotted with their letters at the peaks, those of a
/// group thin.
void paintBehind(QPainter& painter, const Canvas& canvas, const Scene& scene, const std::vector<bool>& hidden);
/// The pen of a run of a group: thin, of the other group dashed.
QPen groupPen(const widgets::Theme& theme, std::size_t style, bool dashed);
/// Prediction ± its error band.
void paintErrorBands(QPainter& painter, const Canvas& canvas, const Scene& scene, const std::vector<bool>& hidden);
/// The pen of a run behind the curves, in a thermocouple's colour.
QPen behindPen(const widgets::Theme& theme, std::size_t style, bool measured);
constexpr double kErrorBandOpacity = 0.18;
void paintBarbs(QPainter& painter, const Canvas& canvas, const Scene& scene);
void paintPeaks(QPainter& painter, const Canvas& canvas, const Scene& scene, const std::vector<bool>& hidden);
/// The dashed lines of the chosen result down to the time axis, with a label, or a bracket for an interval.
void paintChosen(QPainter& painter, const Canvas& canvas, const Scene& scene);
/// Samples as they stand in the log: those that were taken out, and all of them where there is room for each.
void paintRawSamples(QPainter& painter, const Canvas& canvas, const Scene& scene, const std::vector<bool>& hidden);

}  // namespace ovenwright::desktop
