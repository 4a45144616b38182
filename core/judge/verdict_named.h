#pragma once
#include <optional>
#include <string_view>

#include "core/judge/judgement.h"

namespace ovenwright::judge {

/// The verdict of a name as verdict_name() gives it; empty for any other text.
std::optional<Verdict> verdict_named(std::string_view name);

}  // namespace ovenwright::judge
