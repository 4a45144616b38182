#pragma once
#include <string>
#include <vector>

namespace ovenwright::report {

/// What the logs could not tell, in words of the shop floor and gathered: zones that miss the same are named together
/// ("by how much zones 1 to 3 and 7 are off their setpoints"), of placements it says on how many.
/// @param parameters  FitReport::not_determined
/// Empty where there are none.
std::string not_told_words(const std::vector<std::string>& parameters);

}  // namespace ovenwright::report
