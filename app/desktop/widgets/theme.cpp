#include "app/desktop/widgets/theme.h"

#include <QFontInfo>
#include <algorithm>
#include <cmath>

namespace ovenwright::widgets {
namespace {

constexpr qreal kDesignBodyPx = 13;
constexpr qreal kHighContrastRatio = 20;

qreal linear(qreal channel) { return channel <= 0.03928 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4); }

qreal luminance(const QColor& color) {
  return 0.2126 * linear(color.redF()) + 0.7152 * linear(color.greenF()) + 0.0722 * linear(color.blueF());
}

/// Fusion's own grey window under a white base is no high contrast: there both are one colour.
bool isHighContrast(const QPalette& palette) {
  const QColor base = palette.color(QPalette::Base);
  return base == palette.color(QPalette::Window) &&
         contrastRatio(palette.color(QPalette::Text), base) >= kHighContrastRatio;
}

}  // namespace

qreal contrastRatio(const QColor& a, const QColor& b) {
  const qreal one = luminance(a);
  const qreal other = luminance(b);
  return (std::max(one, other) + 0.05) / (std::min(one, other) + 0.05);
}

QColor mixed(const QColor& ground, const QColor& over, qreal opacity) {
  const auto channel = [opacity](qreal below, qreal above) { return float(below + (above - below) * opacity); };
  return QColor::fromRgbF(channel(ground.redF(), over.redF()), channel(ground.greenF(), over.greenF()),
                          channel(ground.blueF(), over.blueF()));
}

Theme::Theme(const QFont& font) : m_font(font), m_scale(QFontInfo(font).pixelSize() / kDesignBodyPx) {
  m_font.setKerning(true);
}

Theme Theme::light(const QFont& font) {
  Theme theme(font);
  theme.kind = Kind::kLight;
  theme.panel = QColor(0xFFFFFF);
  theme.window = QColor(0xF3F4F5);
  theme.rail = QColor(0xE9EBED);
  theme.text = QColor(0x1A2127);
  theme.secondary = QColor(0x46515A);
  theme.quiet = QColor(0x59646D);
  theme.accent = QColor(0x0A5A8C);
  theme.accentSoft = QColor(0xE4EFF6);
  theme.onAccent = QColor(0xFFFFFF);
  theme.signal = QColor(0xA63C00);
  theme.onSignal = QColor(0xFFFFFF);
  theme.outside = QColor(0xECEEF0);
  theme.frame = QColor(0xC5CACF);
  theme.hairline = QColor(0xE3E6E9);
  theme.thermocouples = {QColor(0x00538F), QColor(0x008F68), QColor(0xB5538C),
                         QColor(0xB27C00), QColor(0x3492D0), QColor(0x24282C)};
  return theme;
}

Theme Theme::dark(const QFont& font) {
  Theme theme(font);
  theme.kind = Kind::kDark;
  theme.panel = QColor(0x25292E);
  theme.window = QColor(0x1D2125);
  theme.rail = QColor(0x1A1D21);
  theme.text = QColor(0xE9EDF0);
  theme.secondary = QColor(0xBAC4CB);
  theme.quiet = QColor(0x93A0A9);
  theme.accent = QColor(0x7FC2EE);
  theme.accentSoft = QColor(0x22384A);
  theme.onAccent = QColor(0x1A1D21);
  theme.signal = QColor(0xFF9B62);
  theme.onSignal = QColor(0x1A1D21);
  theme.outside = QColor(0x17191C);
  theme.frame = QColor(0x434B53);
  theme.hairline = QColor(0x343A41);
  theme.thermocouples = {QColor(0x3F97D6), QColor(0x17B488), QColor(0xDB8CB8),
                         QColor(0xEBAA33), QColor(0xA3DCFB), QColor(0xF4F6F7)};
  return theme;
}

Theme Theme::print(const QFont& font) {
  Theme theme = light(font);
  theme.kind = Kind::kPrint;
  theme.text = QColor(Qt::black);
  return theme;
}

Theme Theme::fromPalette(const QPalette& palette, const QFont& font) {
  if (isHighContrast(palette)) {
    Theme theme(font);
    theme.kind = Kind::kHighContrast;
    const QColor ink = palette.color(QPalette::Text);
    const QColor base = palette.color(QPalette::Base);
    theme.panel = theme.window = theme.rail = theme.outside = theme.accentSoft = base;
    theme.text = theme.secondary = theme.quiet = theme.signal = theme.frame = theme.hairline = ink;
    theme.accent = palette.color(QPalette::Highlight);
    theme.onAccent = palette.color(QPalette::HighlightedText);
    theme.onSignal = base;
    theme.thermocouples.fill(ink);
    return theme;
  }
  const bool darkBase = luminance(palette.color(QPalette::Base)) < luminance(palette.color(QPalette::Text));
  return darkBase ? dark(font) : light(font);
}

qreal Theme::line(qreal design) const {
  constexpr qreal kHalfPoint = 0.5 * 96 / 72;
  return kind == Kind::kPrint ? std::max(px(design), kHalfPoint) : px(design);
}

QFont Theme::font(int design_px, bool bold) const {
  QFont font = m_font;
  font.setPixelSize(std::max(1, qRound(px(design_px))));
  font.setBold(bold);
  return font;
}

ThermocoupleStyle Theme::thermocouple(std::size_t style) const {
  static const std::array<QList<qreal>, 6> kDashes = {QList<qreal>{}, {8, 3}, {2, 2.5}, {9, 3, 2, 3}, {14, 4}, {}};
  const std::size_t color = style % thermocouples.size();
  const std::size_t shape = (style + style / thermocouples.size()) % thermocouples.size();
  return {thermocouples[color], static_cast<Marker>(shape), kDashes[color], color == 5 ? 2.1 : 1.6};
}

QPen Theme::curvePen(std::size_t style) const {
  const ThermocoupleStyle look = thermocouple(style);
  QPen pen(look.color, line(look.width_px));
  pen.setCapStyle(Qt::FlatCap);
  pen.setJoinStyle(Qt::RoundJoin);
  if (!look.dash_px.isEmpty()) {
    QList<qreal> pattern;
    for (const qreal dash : look.dash_px) pattern.append(px(dash) / pen.widthF());
    pen.setDashPattern(pattern);
  }
  return pen;
}

QColor Theme::tinted(const QColor& over, qreal opacity) const {
  return kind == Kind::kHighContrast ? panel : mixed(panel, over, opacity);
}

QPalette Theme::toPalette() const {
  QPalette palette;
  palette.setColor(QPalette::Window, window);
  palette.setColor(QPalette::WindowText, text);
  palette.setColor(QPalette::Base, panel);
  palette.setColor(QPalette::AlternateBase, window);
  palette.setColor(QPalette::Text, text);
  palette.setColor(QPalette::PlaceholderText, quiet);
  palette.setColor(QPalette::Button, window);
  palette.setColor(QPalette::ButtonText, text);
  palette.setColor(QPalette::Highlight, accent);
  palette.setColor(QPalette::HighlightedText, onAccent);
  palette.setColor(QPalette::Link, accent);
  palette.setColor(QPalette::LinkVisited, accent);
  palette.setColor(QPalette::ToolTipBase, panel);
  palette.setColor(QPalette::ToolTipText, text);
  palette.setColor(QPalette::Light, mixed(window, panel, kind == Kind::kDark ? 0.2 : 0.8));
  palette.setColor(QPalette::Midlight, hairline);
  palette.setColor(QPalette::Mid, frame);
  palette.setColor(QPalette::Dark, mixed(frame, text, 0.3));
  for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
    palette.setColor(QPalette::Disabled, role, mixed(window, quiet, 0.6));
  return palette;
}

}  // namespace ovenwright::widgets
