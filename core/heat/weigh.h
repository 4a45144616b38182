#pragma once
#include "core/heat/identify.h"

namespace ovenwright::heat {

/// Whether a fit may be believed, and what in it is odd: fills usable, message and warnings of the report. What
/// concerns a zone is named from three prior standard deviations on; a given entry where it is beyond twice its
/// uncertainty (95 %, that of the given moment and of the curves together).
void weigh(HeatModel& model);

}  // namespace ovenwright::heat
