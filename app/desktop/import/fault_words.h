#pragma once
#include <QString>

#include "app/desktop/text/format.h"
#include "core/run/run.h"

namespace ovenwright::desktop {

/// "Spike at 75.0 s, one sample, 412.0 °C"; without times where it is the whole run.
/// @param origin_s  where times count from, on the log's clock
QString faultLine(const run::Fault& fault, const run::Run& run, double origin_s, const Format& format);

}  // namespace ovenwright::desktop
