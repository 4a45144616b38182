#pragma once
#include <QRectF>

#include "app/desktop/widgets/board_table.h"
#include "app/desktop/widgets/theme.h"

class QPainter;

namespace ovenwright::sheet {

/// The board seen from above, leading edge at the left, front rail at the bottom, with the markers of its
/// thermocouples and, where there are few, their names.
void paintSmallBoard(QPainter& painter, const QRectF& rect, const widgets::BoardTable& table,
                     const widgets::Theme& theme);

}  // namespace ovenwright::sheet
