#include "app/desktop/tune/recipe_strip_accessible.h"

#include "app/desktop/tune/recipe_strip.h"
#include "app/desktop/widgets/accessible_grid.h"
#include "app/desktop/widgets/wording.h"

namespace ovenwright::desktop {
namespace {

using Kind = RecipeField::Kind;

/// Rows top and bottom, a column for each zone and one for the speed, which stands in the first row.
class RecipeGrid : public widgets::AccessibleGrid {
 public:
  explicit RecipeGrid(RecipeStrip* strip) : m_strip(strip) {}
  int rows() const override { return m_strip->table().columns.empty() ? 0 : 2; }
  int columns() const override {
    const auto& zones = m_strip->table().columns;
    return zones.empty() ? 0 : int(zones.size()) + 1;
  }
  QString rowHeader(int row) const override {
    return row == 0 ? widgets::Wording::tr("Top") : widgets::Wording::tr("Bottom");
  }
  QString columnHeader(int column) const override {
    return isSpeed(column) ? RecipeStrip::tr("Speed") : widgets::Wording::tr("Zone %1").arg(at(column).name);
  }
  QString cell(int row, int column) const override {
    const auto which = field(row, column);
    return which ? m_strip->spoken(*which) : QString();
  }
  QRect rect(int row, int column) const override {
    const auto layout = m_strip->layoutNow();
    if (column < 0) return layout.rowName(row + 1).toAlignedRect();
    if (row < 0) return (isSpeed(column) ? layout.speedName() : layout.name(std::size_t(column))).toAlignedRect();
    const auto which = field(row, column);
    return which ? layout.field(*which).toAlignedRect() : QRect();
  }
  bool chosen(int row, int column) const override { return m_strip->state().current == field(row, column); }
  void press(int row, int column) override {
    if (const auto which = field(row, column)) m_strip->setCurrent(*which);
  }

  std::pair<int, int> place(const RecipeField& which) const {
    for (int column = 0; column < columns(); ++column)
      for (int row = 0; row < rows(); ++row)
        if (field(row, column) == which) return {row, column};
    return {0, 0};
  }

 private:
  const StripColumn& at(int column) const { return m_strip->table().columns[std::size_t(column)]; }
  bool isSpeed(int column) const { return column + 1 == columns(); }
  std::optional<RecipeField> field(int row, int column) const {
    if (isSpeed(column)) return row == 0 ? std::optional(RecipeField{Kind::kSpeed, 0}) : std::nullopt;
    const auto& zone = at(column);
    if (!zone.cooling) return RecipeField{row == 0 ? Kind::kTop : Kind::kBottom, zone.index};
    if (row > 0 || !zone.hasSetpoint) return std::nullopt;
    return RecipeField{Kind::kCooling, zone.index};
  }
  RecipeStrip* m_strip;
};

QAccessibleInterface* makeInterface(const QString&, QObject* object) {
  auto* strip = qobject_cast<RecipeStrip*>(object);
  return strip ? new widgets::AccessibleTable(strip, std::make_unique<RecipeGrid>(strip)) : nullptr;
}

}  // namespace

void installStripAccessibility() {
  [[maybe_unused]] static const bool installed = (QAccessible::installFactory(makeInterface), true);
}

void announceField(RecipeStrip* strip, const RecipeField& field) {
  const RecipeGrid grid(strip);
  const auto [row, column] = grid.place(field);
  widgets::announceCell(strip, row, column, grid.columns());
}

}  // namespace ovenwright::desktop
