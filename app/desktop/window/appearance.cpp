#include "app/desktop/window/appearance.h"

#include <QApplication>
#include <QPushButton>
#include <QStyleFactory>
#include <QToolTip>

namespace ovenwright::desktop {
namespace {

std::optional<widgets::Theme::Kind>& forced() {
  static std::optional<widgets::Theme::Kind> kind;
  return kind;
}

void apply(const widgets::Theme& theme) {
  if (theme.kind == widgets::Theme::Kind::kHighContrast) return;  // the system's palette wins
  QApplication::setPalette(theme.toPalette());
  QToolTip::setPalette(theme.toPalette());
}

}  // namespace

void Appearance::followSystem() {
  if (forced()) return;
  QApplication::setPalette(QPalette());  // the system's own again, so that it can be looked at
  apply(widgets::Theme::fromPalette(QApplication::palette(), QApplication::font()));
}

void Appearance::force(widgets::Theme::Kind kind) {
  forced() = kind;
  const QFont font = QApplication::font();
  apply(kind == widgets::Theme::Kind::kDark ? widgets::Theme::dark(font) : widgets::Theme::light(font));
}

void Appearance::fillWithAccent(QPushButton* button, const widgets::Theme& theme) {
  QPalette palette = button->palette();
  for (const auto group : {QPalette::Active, QPalette::Inactive}) {
    palette.setColor(group, QPalette::Button, theme.accent);
    palette.setColor(group, QPalette::ButtonText, theme.onAccent);
  }
  button->setPalette(palette);
  QFont bold = button->font();
  bold.setBold(true);
  button->setFont(bold);
}

}  // namespace ovenwright::desktop
