#pragma once
#include <span>
#include <string>
#include <vector>

#include "core/judge/judgement.h"

namespace ovenwright::judge {

/// The zones with at least a tenth, both sides together, in the order they come.
std::vector<std::string> main_zones(std::span<const ZoneShare> shares);

}  // namespace ovenwright::judge
