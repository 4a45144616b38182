#include "app/desktop/tune/field_format.h"

#include <cmath>

namespace ovenwright::desktop {
namespace {

using Quantity = Format::Quantity;

bool isSpeed(const RecipeField& field) { return field.kind == RecipeField::Kind::kSpeed; }

}  // namespace

double FieldFormat::shown(const RecipeField& field, double value) const {
  return isSpeed(field) ? m_format.shownSpeed(value) : m_format.shown(value, Quantity::kTemperature);
}

double FieldFormat::fromShown(const RecipeField& field, double shown) const {
  return isSpeed(field) ? m_format.fromShownSpeed(shown) : m_format.fromShown(shown, Quantity::kTemperature);
}

double FieldFormat::step(const RecipeField& field) const {
  return isSpeed(field) && m_format.shownSpeed(1) != 1 ? 0.1 : 1;
}

double FieldFormat::stepped(const RecipeField& field, double value, double steps) const {
  constexpr double kOnGrid = 1e-6;
  const double step = this->step(field), at = shown(field, value) / step;
  // From a number between two steps to the next one.
  const double whole = steps > 0 ? std::floor(at + kOnGrid) : std::ceil(at - kOnGrid);
  return fromShown(field, (whole + steps) * step);
}

QString FieldFormat::shortest(double shown) const {
  // One decimal where it is needed; a speed of whole mm a minute has more in inches.
  return m_format.number(shown, std::abs(shown - std::round(shown)) < 0.05 ? 0 : 1);
}

QString FieldFormat::number(const RecipeField& field, double value) const { return shortest(shown(field, value)); }

QString FieldFormat::withUnit(const RecipeField& field, double value) const {
  return number(field, value) + u' ' + unit(field);
}

QString FieldFormat::difference(const RecipeField& field, double value) const {
  const double by = isSpeed(field) ? m_format.shownSpeed(value) : m_format.shown(value, Quantity::kDifference);
  return by > 0 ? u'+' + shortest(by) : shortest(by);
}

QString FieldFormat::unit(const RecipeField& field) const {
  return isSpeed(field) ? m_format.speedUnitText() : m_format.unit(Quantity::kTemperature);
}

}  // namespace ovenwright::desktop
