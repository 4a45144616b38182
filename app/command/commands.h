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
ExitStatus run(const ArchiveAddOptions& options);
ExitStatus run(const ArchiveListOptions& options);
ExitStatus run(const ArchiveShowOptions& options);
ExitStatus run(const ArchiveJudgeOptions& options);
ExitStatus run(const ArchiveExportOptions& options);
ExitStatus run(const ArchiveVerifyOptions& options);
ExitStatus run(const ArchiveMoveOptions& options);
ExitStatus run(const ArchiveReleaseOptions& options);
ExitStatus run(const WatchOptions& options);

}  // namespace ovenwright::command
