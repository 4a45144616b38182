#include "app/desktop/tune/recipe_edit.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "app/desktop/tune/field_format.h"

namespace ovenwright::desktop {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(RecipeLimits)
};

constexpr double kMostCooling_C = 200;  // a cooling zone heats no board

RecipeField otherSide(RecipeField field) {
  field.kind = field.kind == RecipeField::Kind::kTop ? RecipeField::Kind::kBottom : RecipeField::Kind::kTop;
  return field;
}

bool isHeating(const RecipeField& field) {
  return field.kind == RecipeField::Kind::kTop || field.kind == RecipeField::Kind::kBottom;
}

}  // namespace

double& valueOf(oven::Recipe& recipe, const RecipeField& field) {
  switch (field.kind) {
    case RecipeField::Kind::kTop:
      return recipe.top_C[field.index];
    case RecipeField::Kind::kBottom:
      return recipe.bottom_C[field.index];
    case RecipeField::Kind::kCooling:
      return recipe.cooling_C[field.index];
    case RecipeField::Kind::kSpeed:
      break;
  }
  return recipe.speed_mm_per_min;
}

double valueOf(const oven::Recipe& recipe, const RecipeField& field) {
  return valueOf(const_cast<oven::Recipe&>(recipe), field);
}

bool sameNumbers(const oven::Recipe& a, const oven::Recipe& b) {
  return a.speed_mm_per_min == b.speed_mm_per_min && a.top_C == b.top_C && a.bottom_C == b.bottom_C &&
         a.cooling_C == b.cooling_C;
}

RecipeLimits::RecipeLimits(const oven::Oven& oven, const oven::Recipe& measured)
    : m_oven(oven), m_space(oven, measured, {false, 0, {}, true}) {
  for (const auto& zone : oven.zones) (zone.kind == oven::ZoneKind::kHeat ? m_heating : m_cooling).push_back(zone.name);
}

QString RecipeLimits::zoneName(const RecipeField& field) const {
  if (field.kind == RecipeField::Kind::kSpeed) return {};
  return QString::fromStdString((isHeating(field) ? m_heating : m_cooling)[field.index]);
}

RecipeLimits::Range RecipeLimits::alone(const oven::Recipe& recipe, const RecipeField& field, bool sidesCount) const {
  if (field.kind == RecipeField::Kind::kCooling)
    return {{m_oven.ambient_C, Because::kSetpoint, 0}, {kMostCooling_C, Because::kSetpoint, 0}};
  if (field.kind == RecipeField::Kind::kSpeed) {
    const double unit = tune::RecipeSpace::kSpeedUnit_mm_per_min;
    return {{std::ceil(m_space.lower()[m_space.speed()] * unit - 1e-6), Because::kSpeed, 0},
            {std::floor(m_space.upper()[m_space.speed()] * unit + 1e-6), Because::kSpeed, 0}};
  }
  const std::size_t zones = recipe.top_C.size();
  const std::size_t at = field.index + (field.kind == RecipeField::Kind::kBottom ? zones : 0);
  const auto x = m_space.vector(recipe);
  Range range{{m_space.lower()[at], Because::kSetpoint, 0}, {m_space.upper()[at], Because::kSetpoint, 0}};
  for (const auto& row : m_space.rows()) {
    if (row.weights[at] == 0) continue;
    // A row bounds the difference of two setpoints, to both sides alike.
    const auto other =
        std::size_t(std::ranges::find_if(
                        row.weights, [&](const double& weight) { return weight != 0 && &weight != &row.weights[at]; }) -
                    row.weights.begin());
    const bool sides = other % zones == at % zones;
    if (sides && !sidesCount) continue;
    const Because because = sides ? Because::kSides : Because::kStep;
    if (x[other] - row.upper > range.least.value) range.least = {x[other] - row.upper, because, other % zones};
    if (x[other] + row.upper < range.most.value) range.most = {x[other] + row.upper, because, other % zones};
  }
  return range;
}

RecipeLimits::Range RecipeLimits::range(const oven::Recipe& recipe, const RecipeField& field, bool together) const {
  Range range = alone(recipe, field, !together);
  const double now = valueOf(recipe, field);
  if (together && isHeating(field)) {
    const auto other = otherSide(field);
    const double offset = now - valueOf(recipe, other);
    const Range its = alone(recipe, other, false);
    if (its.least.value + offset > range.least.value)
      range.least = {its.least.value + offset, its.least.because, its.least.neighbour};
    if (its.most.value + offset < range.most.value)
      range.most = {its.most.value + offset, its.most.because, its.most.neighbour};
  }
  // What is beyond already may go back, not further.
  range.least.value = std::min(range.least.value, now);
  range.most.value = std::max(range.most.value, now);
  return range;
}

RecipeLimits::Result RecipeLimits::set(const oven::Recipe& recipe, const RecipeField& field, double value,
                                       bool together, const Format& format) const {
  const Range range = this->range(recipe, field, together);
  Result result{recipe, {}};
  if (value < range.least.value) result.hit = sentence(field, range.least, false, format);
  if (value > range.most.value) result.hit = sentence(field, range.most, true, format);
  value = std::clamp(value, range.least.value, range.most.value);
  const double by = value - valueOf(recipe, field);
  valueOf(result.recipe, field) = value;
  if (together && isHeating(field)) valueOf(result.recipe, otherSide(field)) += by;
  return result;
}

oven::Recipe RecipeLimits::within(oven::Recipe recipe) const {
  auto x = m_space.vector(recipe);
  for (std::size_t i = 0; i < x.size(); ++i) x[i] = std::clamp(x[i], m_space.lower()[i], m_space.upper()[i]);
  // A row bounds the difference of two setpoints; one that gives way may be too far from its next then.
  for (std::size_t pass = 0; pass < x.size(); ++pass) {
    for (const auto& row : m_space.rows()) {
      std::vector<std::size_t> two;
      for (std::size_t i = 0; i < x.size(); ++i)
        if (row.weights[i] != 0) two.push_back(i);
      if (two.size() != 2) continue;
      const auto [cooler, hotter] = std::minmax(x[two[0]], x[two[1]]);
      double& gives = x[two[0]] > x[two[1]] ? x[two[0]] : x[two[1]];
      if (hotter - cooler > row.upper) gives = cooler + row.upper;
    }
  }
  const std::size_t zones = m_space.zones();
  for (std::size_t z = 0; z < zones; ++z) {
    recipe.top_C[z] = x[z];
    recipe.bottom_C[z] = x[zones + z];
  }
  const RecipeField speed{RecipeField::Kind::kSpeed, 0};
  const Range allowed = alone(recipe, speed, false);
  recipe.speed_mm_per_min = std::clamp(recipe.speed_mm_per_min, allowed.least.value, allowed.most.value);
  for (std::size_t z = 0; z < recipe.cooling_C.size(); ++z)
    recipe.cooling_C[z] = std::max(recipe.cooling_C[z], m_oven.ambient_C);
  return recipe;
}

QString RecipeLimits::sentence(const RecipeField& field, const Bound& bound, bool most, const Format& format) const {
  const QString value = FieldFormat(format).withUnit(field, bound.value), zone = zoneName(field);
  const auto difference = [&](const std::optional<double>& limit_C) {
    return format.limit(limit_C.value_or(0), Format::Quantity::kDifference) + u' ' +
           format.unit(Format::Quantity::kDifference);
  };
  switch (bound.because) {
    case Because::kSpeed:
      return most ? Words::tr("The speed stays at %1: the oven goes no faster.").arg(value)
                  : Words::tr("The speed stays at %1: the oven goes no slower.").arg(value);
    case Because::kStep:
      return Words::tr("Zone %1 stays at %2: the oven allows a step of %3 to zone %4.")
          .arg(zone, value, difference(m_oven.limits.step_between_zones_C),
               QString::fromStdString(m_heating[bound.neighbour]));
    case Because::kSides:
      return Words::tr("Zone %1 stays at %2: the oven allows %3 between top and bottom.")
          .arg(zone, value, difference(m_oven.limits.top_bottom_difference_C));
    case Because::kSetpoint:
      break;
  }
  return most ? Words::tr("Zone %1 stays at %2: the oven allows no more.").arg(zone, value)
              : Words::tr("Zone %1 stays at %2: the oven allows no less.").arg(zone, value);
}

}  // namespace ovenwright::desktop
