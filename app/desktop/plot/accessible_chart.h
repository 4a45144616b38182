#pragma once

namespace ovenwright::desktop {

/// Makes the curve plot known to screen readers as a chart whose value is what its cursor reads. The first call counts.
void installChartAccessibility();

}  // namespace ovenwright::desktop
