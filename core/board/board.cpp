#include "core/board/board.h"

#include <algorithm>

namespace ovenwright::board {

const char* kind_name(Kind kind) {
  switch (kind) {
    case Kind::kJoint:
      return "joint";
    case Kind::kBody:
      return "body";
    case Kind::kBoard:
      return "board";
    case Kind::kAir:
      return "air";
  }
  return "";
}

const Placement* Board::placement(const std::string& channel, int number) const {
  const auto named = std::ranges::find(placements, channel, &Placement::channel);
  if (named != placements.end()) return &*named;
  const auto numbered = std::ranges::find(placements, std::to_string(number), &Placement::channel);
  return numbered != placements.end() ? &*numbered : nullptr;
}

const Part* Board::part(const std::string& name) const {
  const auto found = std::ranges::find(parts, name, &Part::name);
  return found != parts.end() ? &*found : nullptr;
}

}  // namespace ovenwright::board
