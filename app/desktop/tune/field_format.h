#pragma once
#include "app/desktop/text/format.h"
#include "app/desktop/tune/recipe_edit.h"

namespace ovenwright::desktop {

/// Numbers of a recipe in the units that were chosen once: setpoints in °C or °F, the speed in mm, cm or in a minute.
class FieldFormat {
 public:
  explicit FieldFormat(const Format& format) : m_format(format) {}

  double shown(const RecipeField& field, double value) const;
  double fromShown(const RecipeField& field, double shown) const;
  double step(const RecipeField& field) const;  ///< of the arrows, in the shown unit
  /// `value` moved by some steps, onto the grid of the steps.
  double stepped(const RecipeField& field, double value, double steps) const;
  QString number(const RecipeField& field, double value) const;      ///< "252"
  QString withUnit(const RecipeField& field, double value) const;    ///< "252 °C", "810 mm/min"
  QString difference(const RecipeField& field, double value) const;  ///< "+10", "−38", "0"
  QString unit(const RecipeField& field) const;

 private:
  QString shortest(double shown) const;
  const Format& m_format;
};

}  // namespace ovenwright::desktop
