#pragma once
#include <string>

#include "core/compare/compare.h"

namespace ovenwright::compare {

/// English: which has more margin, how many results differ by more than their uncertainty and which most clearly, which
/// is faster.
std::string sentence_of(const Comparison& comparison);

}  // namespace ovenwright::compare
