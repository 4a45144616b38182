#pragma once
#include <QPainterPath>
#include <QPointF>
#include <QRectF>
#include <optional>

#include "app/desktop/widgets/theme.h"
#include "core/judge/judgement.h"

class QPainter;

namespace ovenwright::widgets {

/// The small drawn parts that widgets, plot, tables and sheets share. All lengths are in the painter's units.

/// The outline of a marker; shapes of one radius look equally large.
QPainterPath markerPath(Marker marker, const QPointF& center, qreal radius);
/// A thermocouple's marker, filled or as an outline on `ground`.
void paintMarker(QPainter& painter, const QPointF& center, qreal radius, const ThermocoupleStyle& style, bool filled,
                 const QColor& ground, const Theme& theme);
/// The ring around a mark that is out of its limits.
void paintRing(QPainter& painter, const QPointF& center, qreal markRadius, const Theme& theme);
/// A numbered disc in the signal colour, as in the sentence, on the plot and by the zones.
void paintDisc(QPainter& painter, const QPointF& center, qreal diameter, int number, const Theme& theme);
/// Hatching in the signal colour: 45 degrees, anchored to the painter's origin so that neighbours meet.
void paintHatching(QPainter& painter, const QRectF& rect, const Theme& theme);
/// The dot grid of a guard band, anchored to the painter's origin.
void paintDotGrid(QPainter& painter, const QRectF& rect, const Theme& theme);
/// A head of an arrow whose tip is at `tip`, pointing along +x (or −x).
QPainterPath arrowHead(const QPointF& tip, qreal length, qreal halfHeight, bool right);
/// The accent frame around what has the focus, inside `rect`.
void paintFocusFrame(QPainter& painter, const QRectF& rect, const Theme& theme);

/// A lane in miniature: two limits and a dot inside, outside, or with a bar across the limit; dashes where there is no
/// verdict; the limits alone, pale, where nothing is judged yet (no verdict). Fills the height of `box` and 1.7 times
/// that in width from its left edge. Informative results and paper take no signal colour.
void paintVerdictSign(QPainter& painter, const QRectF& box, std::optional<judge::Verdict> verdict, const Theme& theme,
                      bool informative = false);
constexpr qreal kSignAspect = 1.7;
/// In its place where a log was not read or nothing was judged: dashed limits and one bar.
void paintBarredSign(QPainter& painter, const QRectF& box, const Theme& theme);

}  // namespace ovenwright::widgets
