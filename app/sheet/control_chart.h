#pragma once
#include <QRectF>

#include "app/desktop/widgets/theme.h"

class QPainter;

namespace ovenwright::lot {
struct Series;
}

namespace ovenwright::sheet {

/// The series run by run with its centre and control limits, and the limits of the window where they lie near; a square
/// around each run that completes a signal.
void paintControlChart(QPainter& painter, const QRectF& rect, const lot::Series& series, const widgets::Theme& theme);

}  // namespace ovenwright::sheet
