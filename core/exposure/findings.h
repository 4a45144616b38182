#pragma once
#include <span>

#include "core/exposure/exposure.h"

namespace ovenwright::exposure {

/// What several passes do that one does not show, the worst first; within one verdict in order of the passes.
std::vector<Finding> findings_of(std::span<const Pass> passes, std::span<const Placement> placements);

/// English: every finding that is out, what could not be decided, and the longest total above liquidus.
std::string sentence_of(const Exposure& exposure);

}  // namespace ovenwright::exposure
