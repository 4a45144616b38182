#pragma once
#include "core/window/window.h"

namespace ovenwright::window {

/// The classification temperature Tc of a package body by IPC/JEDEC J-STD-020 (D.1, E): table 4-1 for SnPb, 4-2 for
/// Pb-free. The volume excludes terminals and heat sinks that are no part of the body.
///
/// The two tables part their rows differently: exactly 2.5 mm is in the thick row for SnPb and in the middle row
/// (1.6 to 2.5 mm) for Pb-free; exactly 350 and 2000 mm³ are in the middle column.
/// @param thickness_mm  > 0
/// @param volume_mm3    > 0
/// @return °C, 220 to 260
double classification_temperature_C(Classification classification, double thickness_mm, double volume_mm3);

const char* classification_name(Classification classification);  ///< "Pb-free", "SnPb"

}  // namespace ovenwright::window
