#include "app/desktop/window/appearance.h"

#include <QApplication>
#include <QPainter>
#include <QProxyStyle>
#include <QPushButton>
#include <QStackedWidget>
#include <QStyleOption>
#include <QToolTip>

#include "app/desktop/window/chooser_button.h"

namespace ovenwright::desktop {
namespace {

constexpr double kButton_px = 28, kField_px = 26, kTarget_px = 24, kTab_px = 30;
constexpr int kComboInset_px = 6;     // of the text in its field, both sides together
constexpr double kBesideText_px = 8;  // on both sides of a button's text

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
    // In em of the application's font; the heights of lines differ from family to family.
    const QFont body = QApplication::font();
    const double scale = widgets::Theme::light(body).px(1) * option->fontMetrics.height() / QFontMetrics(body).height();
    const auto scaled = [scale](double px) { return qRound(px * scale); };
    const auto least = [&](double px) { size.setHeight(std::max({size.height(), scaled(px), int(kTarget_px)})); };
    switch (type) {
      case CT_PushButton: {
        least(kButton_px);
        // A chooser has its text cut where there is no room.
        if (!qobject_cast<const ChooserButton*>(widget)) size.setWidth(std::max(size.width(), contents.width() + 2 * scaled(kBesideText_px)));
        break;
      }
      case CT_TabBarTab:
        least(kTab_px);
        break;
      case CT_MenuBarItem:
      case CT_MenuItem:
        least(kTarget_px);
        break;
      case CT_ComboBox:
        size.rwidth() += kComboInset_px;
        [[fallthrough]];
      case CT_LineEdit:
      case CT_SpinBox:
        least(kField_px);
        break;
      case CT_CheckBox:
      case CT_RadioButton:
      case CT_ToolButton:
        least(kTarget_px);
        size.setWidth(std::max(size.width(), int(kTarget_px)));
        break;
      default:
        break;
    }
    return size;
  }

  /// Nothing moves by itself: the toolkit cannot ask the system whether somebody wants less motion.
  int styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                QStyleHintReturn* data) const override {
    return hint == SH_Widget_Animation_Duration ? 0 : QProxyStyle::styleHint(hint, option, widget, data);
  }

  /// In high contrast controls have the ground of the window: only their outline says where they are.
  void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                     const QWidget* widget) const override {
    QProxyStyle::drawPrimitive(element, option, painter, widget);
    if (element == PE_PanelButtonCommand || element == PE_PanelLineEdit || element == PE_IndicatorCheckBox)
      outline(option, painter);
  }
  void drawComplexControl(ComplexControl control, const QStyleOptionComplex* option, QPainter* painter,
                          const QWidget* widget) const override {
    QProxyStyle::drawComplexControl(control, option, painter, widget);
    if (control == CC_ComboBox || control == CC_SpinBox) outline(option, painter);
  }

  /// A text that is too long for its box is cut in the middle, as everywhere.
  void drawControl(ControlElement element, const QStyleOption* option, QPainter* painter,
                   const QWidget* widget) const override {
    const auto* combo = qstyleoption_cast<const QStyleOptionComboBox*>(option);
    if (element != CE_ComboBoxLabel || !combo || combo->editable)
      return QProxyStyle::drawControl(element, option, painter, widget);
    QStyleOptionComboBox cut = *combo;
    const int room = subControlRect(CC_ComboBox, combo, SC_ComboBoxEditField, widget).width() - kComboInset_px;
    cut.currentText = combo->fontMetrics.elidedText(combo->currentText, Qt::ElideMiddle, room);
    QProxyStyle::drawControl(element, &cut, painter, widget);
  }

 private:
  static void outline(const QStyleOption* option, QPainter* painter) {
    const auto& palette = option->palette;
    if (widgets::Theme::fromPalette(palette, QApplication::font()).kind != widgets::Theme::Kind::kHighContrast) return;
    const bool enabled = option->state.testFlag(State_Enabled);
    painter->save();
    painter->setPen(QPen(palette.color(enabled ? QPalette::Active : QPalette::Disabled, QPalette::Text), 1));
    painter->setBrush(Qt::NoBrush);
    painter->drawRect(option->rect.adjusted(0, 0, -1, -1));
    painter->restore();
  }
};

/// As a system gives it to those who need it: white on black, what is chosen in yellow.
QPalette highContrast() {
  QPalette palette(Qt::white, Qt::black, Qt::white, Qt::black, Qt::white, Qt::white, Qt::white, Qt::black, Qt::black);
  for (const auto role : {QPalette::Text, QPalette::WindowText, QPalette::ButtonText})
    palette.setColor(QPalette::Disabled, role, Qt::gray);
  palette.setColor(QPalette::Highlight, Qt::yellow);
  palette.setColor(QPalette::HighlightedText, Qt::black);
  palette.setColor(QPalette::PlaceholderText, Qt::white);
  palette.setColor(QPalette::Link, Qt::yellow);
  palette.setColor(QPalette::ToolTipBase, Qt::black);
  palette.setColor(QPalette::ToolTipText, Qt::white);
  return palette;
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

void Appearance::giveRoom() {
  QApplication::setStyle(new RoomyStyle);
  for (const auto effect : {Qt::UI_AnimateMenu, Qt::UI_FadeMenu, Qt::UI_AnimateCombo, Qt::UI_AnimateTooltip,
                            Qt::UI_FadeTooltip, Qt::UI_AnimateToolBox})
    QApplication::setEffectEnabled(effect, false);
}

void Appearance::shrinkHiddenPages(QStackedWidget* pages, const QWidget* shown) {
  for (int i = 0; i < pages->count(); ++i) {
    const auto policy = pages->widget(i) == shown ? QSizePolicy::Preferred : QSizePolicy::Ignored;
    pages->widget(i)->setSizePolicy(policy, policy);
  }
}

void Appearance::force(widgets::Theme::Kind kind) {
  forced() = kind;
  const QFont font = QApplication::font();
  if (kind == widgets::Theme::Kind::kHighContrast) {
    QApplication::setPalette(highContrast());
    QToolTip::setPalette(highContrast());
    return;
  }
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
