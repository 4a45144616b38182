#pragma once
#include "app/command/command_line.h"

namespace ovenwright::command {

ExitStatus run(const CheckOptions& options);
ExitStatus run(const MeasureOptions& options);
ExitStatus run(const ListOptions& options);
ExitStatus run(const PredictOptions& options);
ExitStatus run(const TuneOptions& options);
ExitStatus run(const CompareOptions& options);
ExitStatus run(const LotOptions& options);
ExitStatus run(const StartOptions& options);

}  // namespace ovenwright::command
