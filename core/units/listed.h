#pragma once
#include <string>
#include <vector>

namespace ovenwright {

/// Names as a sentence lists them: "R118", "R118 and U3", "R118, U3 and D7"; nothing for none.
std::string listed(const std::vector<std::string>& names);

}  // namespace ovenwright
