#pragma once
#include <QObject>
#include <optional>

#include "app/desktop/widgets/theme.h"

class QPushButton;
class QStackedWidget;
class QWidget;

namespace ovenwright::desktop {

/// Light, dark or high contrast, as the system says, for stock widgets and painted ones alike.
class Appearance {
 public:
  /// Takes the roles of the theme that fits the system's palette into the application's palette.
  static void followSystem();
  /// The system's style with controls that are high enough to be hit: 28 px for buttons, 26 for fields, at a 13 px
  /// font.
  static void giveRoom();
  /// A page that is not shown does not keep the window wide or high. To be called when another page is shown.
  static void shrinkHiddenPages(QStackedWidget* pages, const QWidget* shown);
  /// For pictures of a theme that is not the system's.
  static void force(widgets::Theme::Kind kind);
  /// Text of a label or button in a colour of its own, whatever ground it stands on.
  static void ink(QWidget* widget, const QColor& color);
  /// A button that is filled with the accent: one at most on a screen.
  static void fillWithAccent(QPushButton* button, const widgets::Theme& theme);
};

}  // namespace ovenwright::desktop
