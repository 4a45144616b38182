#pragma once
#include <QString>
#include <vector>

#include "app/desktop/text/format.h"
#include "core/oven/oven.h"
#include "core/tune/recipe_space.h"

namespace ovenwright::desktop {

/// One number of a recipe.
struct RecipeField {
  enum class Kind { kTop, kBottom, kCooling, kSpeed } kind = Kind::kTop;
  std::size_t index = 0;  ///< of the heating or cooling zone; 0 for the speed
  friend bool operator==(const RecipeField&, const RecipeField&) = default;
};

double& valueOf(oven::Recipe& recipe, const RecipeField& field);
double valueOf(const oven::Recipe& recipe, const RecipeField& field);
/// Same setpoints and speed, whatever the name.
bool sameNumbers(const oven::Recipe& a, const oven::Recipe& b);

/// What an oven allows of a recipe's numbers. The limits are those of tune::RecipeSpace: a recipe that was run beyond
/// them may stay where it is, and where the oven file states none, 50 °C and 30 % around what was run.
class RecipeLimits {
 public:
  RecipeLimits(const oven::Oven& oven, const oven::Recipe& measured);

  enum class Because { kSetpoint, kStep, kSides, kSpeed };
  struct Bound {
    double value = 0;
    Because because = Because::kSetpoint;
    std::size_t neighbour = 0;  ///< for kStep: the heating zone that the step is to
  };
  struct Range {
    Bound least, most;
  };
  /// @param together  the other side of the zone moves by the same difference
  Range range(const oven::Recipe& recipe, const RecipeField& field, bool together) const;

  struct Result {
    oven::Recipe recipe;
    QString hit;  ///< the limit that stopped it, as a sentence; empty where none did
  };
  /// Puts a number in; one beyond the limits stops at them.
  Result set(const oven::Recipe& recipe, const RecipeField& field, double value, bool together,
             const Format& format = Format::inDefaultLocale()) const;

  /// A recipe worked on for other limits, within these: where two numbers are too far apart the hotter gives way.
  oven::Recipe within(oven::Recipe recipe) const;

  /// "8", "C1"; empty for the speed.
  QString zoneName(const RecipeField& field) const;

 private:
  Range alone(const oven::Recipe& recipe, const RecipeField& field, bool sidesCount) const;
  QString sentence(const RecipeField& field, const Bound& bound, bool most, const Format& format) const;

  const oven::Oven m_oven;
  tune::RecipeSpace m_space;
  std::vector<std::string> m_heating, m_cooling;
};

}  // namespace ovenwright::desktop
