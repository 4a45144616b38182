#pragma once
#include <array>
#include <optional>
#include <string>
#include <vector>

#include "core/files/identity.h"

namespace ovenwright::oven {

enum class ZoneKind { kHeat, kCool };

struct Zone {
  std::string name;
  ZoneKind kind = ZoneKind::kHeat;
  double length_mm = 0;
  double gap_after_mm = 0;
};

struct Limits {
  std::optional<std::array<double, 2>> setpoint_C, speed_mm_per_min;
  std::optional<double> step_between_zones_C, top_bottom_difference_C;
};

/// oven.toml of contracts.md. Positions count from the oven's mouth; the first zone begins at entrance_mm.
struct Oven {
  files::Identity identity;
  double ambient_C = 25;
  double entrance_mm = 0, exit_mm = 0;
  Limits limits;
  std::vector<Zone> zones;

  double zone_start_mm(std::size_t zone) const;
  double zone_end_mm(std::size_t zone) const;
  double length_mm() const;  ///< mouth to mouth
  std::size_t heating_zones() const;
};

/// Where a recipe's keys stand in its file, for messages; 0 where absent or made in memory.
struct RecipeLines {
  int speed = 0, top_C = 0, bottom_C = 0, cooling_C = 0;
};

/// recipe.toml of contracts.md: one setpoint for each heating zone, in their order.
struct Recipe {
  files::Identity identity;
  std::optional<std::string> oven;
  double speed_mm_per_min = 0;
  std::vector<double> top_C, bottom_C;
  std::vector<double> cooling_C;  ///< empty where the oven's cooling zones have no setpoint
  RecipeLines lines;
};

/// The moment the board's leading edge passes the oven's mouth, on the log's clock.
struct Entry {
  double at_s = 0;
  double uncertainty_s = 0;  ///< half width, 95 %
  enum class Source { kLog, kGiven } found_from = Source::kLog;
};

/// Conveyor kinematics: position from the mouth of a placement x_mm behind the leading edge, and back.
double position_mm(double time_s, const Entry& entry, const Recipe& recipe, double x_mm);
double time_at_s(double position_mm, const Entry& entry, const Recipe& recipe, double x_mm);

}  // namespace ovenwright::oven
