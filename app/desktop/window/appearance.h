#pragma once
#include <QObject>
#include <optional>

#include "app/desktop/widgets/theme.h"

namespace ovenwright::desktop {

/// Light, dark or high contrast, as the system says, for stock widgets and painted ones alike.
class Appearance {
 public:
  /// Takes the roles of the theme that fits the system's palette into the application's palette.
  static void followSystem();
  /// For pictures of a theme that is not the system's.
  static void force(widgets::Theme::Kind kind);
  /// A button that is filled with the accent: one at most on a screen.
  static void fillWithAccent(class QPushButton* button, const widgets::Theme& theme);
};

}  // namespace ovenwright::desktop
