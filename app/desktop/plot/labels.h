#pragma once
#include <QRectF>
#include <optional>
#include <vector>

#include "app/desktop/plot/paint.h"

namespace ovenwright::desktop {

/// The table of curves: hottest to coldest with their peaks or, with a cursor, with what each reads there.
struct Key {
  QRectF rect;  ///< empty: there is no room for it
  QString heading;
  struct Row {
    std::size_t channel;
    QString value;
  };
  std::vector<Row> rows;
  std::vector<const Scene::Behind*> behind;
  bool errorBand = false;
  bool values = true;  ///< false: names alone, in two columns without a heading
};

/// The key for the top left of the axes; its rect is empty where the plot is too low or there are too many channels.
/// Names alone stand where no curve is, at the foot of the axes.
Key makeKey(const Canvas& canvas, const Scene& scene, const std::vector<bool>& hidden, std::optional<double> cursor_s);
/// The same beside a cursor where the key itself has no room.
Key makeCursorKey(const Canvas& canvas, const Scene& scene, const std::vector<bool>& hidden, double cursor_s);
void paintKey(QPainter& painter, const Canvas& canvas, const Scene& scene, const Key& key);

/// Where each call-out's disc and text stand: on free ground near what they point at, else only the disc.
struct PlacedCallOut {
  const Scene::CallOut* callOut = nullptr;
  QPointF anchor, disc;
  QRectF text;  ///< empty: only the disc
};
std::vector<PlacedCallOut> placeCallOuts(const Canvas& canvas, const Scene& scene, const QRectF& taken);
void paintCallOuts(QPainter& painter, const Canvas& canvas, const std::vector<PlacedCallOut>& placed);
constexpr double kDisc_px = 16;

/// The line of the cursor, a mark where it meets each curve, and its time at the axis.
void paintCursor(QPainter& painter, const Canvas& canvas, const Scene& scene, const std::vector<bool>& hidden,
                 double cursor_s);

/// "At 212.5 s, zone 7, 2431 mm": the time from the origin and, where it is known, the place in the oven.
QString cursorHeading(const Scene& scene, const Format& format, double cursor_s);

}  // namespace ovenwright::desktop
