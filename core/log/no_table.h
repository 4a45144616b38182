#pragma once
#include <string>
#include <string_view>

#include "core/units/result.h"

namespace ovenwright::log {

/// The error for a text without rows of numbers: at its header where that is all there is, else at its first line.
Error no_table(const std::string& name, std::string_view text);

}  // namespace ovenwright::log
