#pragma once
#include <optional>
#include <string>
#include <vector>

#include "core/board/board.h"
#include "core/judge/judgement.h"
#include "core/log/reading.h"
#include "core/oven/oven.h"
#include "core/run/run.h"
#include "core/window/window.h"

namespace ovenwright::check {

/// What a log is judged with. No window: the shipped sac305 is assumed.
struct Request {
  std::vector<window::ProcessWindow> windows;
  bool window_assumed = false;
  std::optional<board::Board> board;
  std::optional<oven::Oven> oven;
  std::optional<oven::Recipe> recipe;
  std::optional<double> entry_s;  ///< given; else found from the log
  std::optional<int> run;         ///< of a log with several passes, from 1
  std::vector<int> keep_spikes;   ///< numbers of channels whose spikes are to stay as they are
  log::Options log;
};

/// One run of a log, judged.
struct CheckedRun {
  run::Run run;
  std::optional<oven::Entry> entry;
  judge::Judgement judgement;
};

/// A log with all its runs. The one path from a file to a verdict: the command, the desktop and the archive take it.
struct CheckedLog {
  log::Reading reading;  ///< channels moved out into the runs unless kept
  std::vector<CheckedRun> runs;
};

/// Errors: those of log::read and clean::clean; kParse at its line where a board names a channel that the log lacks or
/// an unknown thermocouple class, or where a recipe does not fit its oven; kBadArgument where `run` is out of range.
/// What does not stop the work, such as a recipe beyond the oven's limits, is added to the reading's warnings.
Result<CheckedLog> check(const std::string& path, const Request& request);
/// The same from a reading, for a log that is open already.
Result<CheckedLog> check(log::Reading reading, const Request& request);

}  // namespace ovenwright::check
