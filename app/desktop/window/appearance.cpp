#include "app/desktop/window/appearance.h"

#include <QApplication>
#include <QProxyStyle>
#include <QPushButton>
#include <QStackedWidget>
#include <QStyleOption>
#include <QToolTip>

namespace ovenwright::desktop {
namespace {

constexpr double kButton_px = 28, kField_px = 26, kTarget_px = 24;

std::optional<widgets::Theme::Kind>& forced() {
  static std::optional<widgets::Theme::Kind> kind;
  return kind;
}

class RoomyStyle : public QProxyStyle {
 public:
  QSize sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& contents,
                         const QWidget* widget) const override {
    QSize size = QProxyStyle::sizeFromContents(type, option, contents, widget);
    if (!option) return size;
    const auto least = [&](double px) {
      constexpr double kDesignLine_px = 16;  // of a 13 px font
      size.setHeight(std::max(size.height(), qRound(px * option->fontMetrics.height() / kDesignLine_px)));
    };
    switch (type) {
      case CT_PushButton:
        least(kButton_px);
        break;
      case CT_ComboBox:
      case CT_LineEdit:
      case CT_SpinBox:
        least(kField_px);
        break;
      case CT_CheckBox:
      case CT_RadioButton:
      case CT_ToolButton:
        least(kTarget_px);
        break;
      default:
        break;
    }
    return size;
  }
};

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

void Appearance::giveRoom() { QApplication::setStyle(new RoomyStyle); }

void Appearance::shrinkHiddenPages(QStackedWidget* pages, const QWidget* shown) {
  for (int i = 0; i < pages->count(); ++i) {
    const auto policy = pages->widget(i) == shown ? QSizePolicy::Preferred : QSizePolicy::Ignored;
    pages->widget(i)->setSizePolicy(policy, policy);
  }
}

void Appearance::force(widgets::Theme::Kind kind) {
  forced() = kind;
  const QFont font = QApplication::font();
  apply(kind == widgets::Theme::Kind::kDark ? widgets::Theme::dark(font) : widgets::Theme::light(font));
}

void Appearance::ink(QWidget* widget, const QColor& color) {
  QPalette palette = widget->palette();
  // On a ground of the role Base a label takes Text, on others WindowText.
  for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText}) palette.setColor(role, color);
  widget->setPalette(palette);
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
