#pragma once
#include <QString>

#include "app/desktop/widgets/theme.h"

class QLabel;
class QVBoxLayout;
class QWidget;

namespace ovenwright::desktop {

/// A label that wraps and is no markup, in a size and colour of the theme.
QLabel* themedLabel(const widgets::Theme& theme, const QString& text, int size_px, bool bold, const QColor& color,
                    QWidget* parent);

/// Takes everything out of a widget that is filled anew.
QVBoxLayout* emptied(QWidget* widget);

}  // namespace ovenwright::desktop
