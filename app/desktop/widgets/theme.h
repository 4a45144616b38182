#pragma once
#include <QColor>
#include <QFont>
#include <QPalette>
#include <QPen>
#include <array>
#include <cstddef>

namespace ovenwright::widgets {

/// The shape that tells a thermocouple apart without colour.
enum class Marker { kCircle, kSquare, kTriangleUp, kTriangleDown, kDiamond, kPlus };

/// How a thermocouple is drawn everywhere.
struct ThermocoupleStyle {
  QColor color;
  Marker marker = Marker::kCircle;
  QList<qreal> dash_px;  ///< at the design size; empty: solid
  qreal width_px = 1.6;  ///< at the design size
};

/// Colours, sizes and fonts of all painted parts, and of the plot. Made anew when the system's palette or font changes.
/// Sizes are given in pixels as designed for a body text of 13 px (10 pt at 96 dpi) and follow the application's font.
class Theme {
 public:
  enum class Kind { kLight, kDark, kHighContrast, kPrint };

  /// Light or dark by the palette's text and base. A palette whose base and window are one colour and whose text stands
  /// at 20:1 or more on it is the system's high contrast: then every role takes the palette's text, base and highlight.
  static Theme fromPalette(const QPalette& palette, const QFont& font);
  static Theme light(const QFont& font);
  static Theme dark(const QFont& font);
  /// Light colours, black signs, lines of at least 0.5 pt. @param font  sized in pixels of a painter of 96 dpi
  static Theme print(const QFont& font);

  Kind kind = Kind::kLight;
  QColor panel, window, rail;
  QColor text, secondary, quiet;
  QColor accent, accentSoft, onAccent;
  QColor signal, onSignal;
  QColor outside;  ///< ground of a lane outside its limits
  QColor frame, hairline;
  std::array<QColor, 6> thermocouples;

  /// Length at the user's font of a length designed for a body text of 13 px.
  qreal px(qreal design) const { return design * m_scale; }
  /// Width of a line: as px(), but on paper, whose painter is scaled to 96 units an inch, at least 0.5 pt.
  qreal line(qreal design) const;
  /// A font of the application's family; figures are tabular in every family that this program's packages install.
  QFont font(int design_px, bool bold = false) const;
  QFont bodyFont(bool bold = false) const { return font(13, bold); }

  /// Colour k mod 6; the shape is shifted by one for each further six, so that the two together are unique to 36.
  ThermocoupleStyle thermocouple(std::size_t style) const;
  /// The pen of a thermocouple's curve, its dashes converted to widths as QPen wants them.
  QPen curvePen(std::size_t style) const;
  /// `over` at `opacity` on the panel; the panel itself in high contrast, which knows no shades.
  QColor tinted(const QColor& over, qreal opacity) const;
  /// What is out in a verdict sign: the signal colour, black on paper.
  QColor signInk() const { return kind == Kind::kPrint ? text : signal; }

  /// The same roles for stock widgets.
  QPalette toPalette() const;

 private:
  explicit Theme(const QFont& font);
  QFont m_font;
  qreal m_scale = 1;
};

/// Contrast of two opaque colours by WCAG 2.1, 1 to 21.
/// Source: W3C, Web Content Accessibility Guidelines 2.1, "contrast ratio" and "relative luminance".
qreal contrastRatio(const QColor& a, const QColor& b);

/// `over` at `opacity` on `ground`, as one opaque colour.
QColor mixed(const QColor& ground, const QColor& over, qreal opacity);

}  // namespace ovenwright::widgets
