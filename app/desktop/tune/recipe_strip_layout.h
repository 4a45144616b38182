#pragma once
#include <QRectF>
#include <optional>
#include <vector>

#include "app/desktop/tune/recipe_edit.h"
#include "app/desktop/widgets/theme.h"
#include "app/desktop/widgets/zone_strip_painter.h"

namespace ovenwright::desktop {

/// A zone as the strip shows it.
struct StripColumn {
  std::string zone;
  QString name;
  bool cooling = false;
  bool hasSetpoint = true;      ///< a cooling zone may have none
  std::size_t index = 0;        ///< among the heating or the cooling zones
  double from_s = 0, to_s = 0;  ///< since the board's entry
  bool locked = false;          ///< a search leaves it as it is
};

/// What the strip shows; holds no reference to what it was made from.
struct RecipeStripTable {
  std::vector<StripColumn> columns;
  oven::Recipe measured, edited;
  bool together = true;
  Format format;         ///< units of setpoints and speed
  bool enabled = false;  ///< else the numbers stand there and cannot be edited
};

/// Zones at the times when a placement is in them, as on the plot above; where that leaves no room for a number the
/// fields stand side by side instead.
class RecipeStripLayout {
 public:
  RecipeStripLayout(const RecipeStripTable& table, const widgets::StripAxis& axis, const widgets::Theme& theme,
                    const QRectF& area);

  bool isAligned() const { return m_aligned; }
  int fontSize_px() const { return m_font_px; }
  QRectF name(std::size_t column) const;
  /// Top, bottom, a cooling zone's one field over both rows, or the speed.
  QRectF field(const RecipeField& field) const;
  QRectF nowText(std::size_t column) const;
  QRectF differenceText(std::size_t column) const;
  QRectF speedName() const { return m_speedName; }
  QRectF speedNow() const;
  QRectF speedDifference() const;
  QRectF rowName(int row) const;  ///< 0 zone, 1 top, 2 bottom, 3 now
  QRectF padlock() const;         ///< of top and bottom
  std::optional<RecipeField> fieldAt(const QPointF& point) const;
  std::optional<std::size_t> nameAt(const QPointF& point) const;
  /// 1 on the upper arrow of a field, −1 on the lower, 0 elsewhere.
  int stepAt(const RecipeField& field, const QPointF& point) const;
  bool hasArrows(const QRectF& field) const;
  QRectF arrow(const QRectF& field, bool up) const;

  static qreal height(const widgets::Theme& theme);
  static qreal leastLeftInset(const widgets::Theme& theme);
  static qreal leastRightInset(const widgets::Theme& theme);

 private:
  QRectF column(std::size_t index) const { return m_columns[index]; }
  std::optional<std::size_t> columnOf(const RecipeField& field) const;

  const RecipeStripTable& m_table;
  const widgets::Theme& m_theme;
  QRectF m_area;
  widgets::StripAxis m_axis;
  QString m_number;  // as wide as any setpoint
  bool m_aligned = true;
  int m_font_px = 13;
  qreal m_top[6] = {};  // of the rows: names, top, bottom, now, difference, and the end
  std::vector<QRectF> m_columns;
  QRectF m_speedName;
  qreal m_speedLeft = 0, m_speedWidth = 0;
};

/// The fields in the order of Tab: column by column, the bottom only where the sides are apart, the speed last.
std::vector<RecipeField> fieldOrder(const RecipeStripTable& table);

struct RecipeStripState {
  std::optional<RecipeField> current, hovered;
  bool focused = false;
};

void paintRecipeStrip(QPainter& painter, const RecipeStripTable& table, const widgets::Theme& theme,
                      const RecipeStripLayout& layout, const RecipeStripState& state);

}  // namespace ovenwright::desktop
