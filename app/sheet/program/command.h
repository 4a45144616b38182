#pragma once
#include "app/sheet/program/options.h"

namespace ovenwright::sheet {

/// Judges the logs and writes their sheets. A QGuiApplication must exist.
command::ExitStatus run(const SheetOptions& options);

}  // namespace ovenwright::sheet
