#pragma once
#include <optional>
#include <string>
#include <vector>

#include "core/files/identity.h"

namespace ovenwright::board {

enum class Kind { kJoint, kBody, kBoard, kAir };
enum class Side { kTop, kBottom };

const char* kind_name(Kind kind);  ///< "joint", "body", "board", "air"

/// What one thermocouple sits on.
struct Placement {
  std::string channel;  ///< the channel's name in the log, or its number from 1
  std::optional<std::string> label, part;
  Kind kind = Kind::kJoint;
  std::optional<Side> side;
  std::optional<std::string> thermocouple;  ///< "K class 1"; else the window's
  std::optional<double> x_mm;               ///< behind the leading edge, along the conveyor
  std::optional<double> y_mm;               ///< from the front rail
  int line = 0;                             ///< in the board file
};

struct Part {
  std::string name;
  std::optional<Side> side;
  std::optional<double> length_mm, width_mm, mass_g, package_thickness_mm, package_volume_mm3, wetted_pad_area_mm2;
  int max_passes = 3;
};

/// board.toml of contracts.md.
struct Board {
  files::Identity identity;
  std::optional<double> length_mm, width_mm, thickness_mm, mass_g;
  std::optional<std::string> picture;  ///< path, made absolute by the board file's folder
  std::vector<Placement> placements;
  std::vector<Part> parts;

  /// The placement of a channel by its name, else by its number; null where the board does not name it.
  const Placement* placement(const std::string& channel, int number) const;
  const Part* part(const std::string& name) const;
};

}  // namespace ovenwright::board
