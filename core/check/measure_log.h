#pragma once
#include <optional>
#include <string>
#include <vector>

#include "core/board/board.h"
#include "core/log/reading.h"
#include "core/measure/measure.h"
#include "core/oven/oven.h"
#include "core/run/run.h"

namespace ovenwright::check {

/// Measures to take on a log without a window: levels are given, uncertainty is by the defaults (K class 1 unless the
/// board says otherwise, instrument ± 1.0 °C).
struct MeasureRequest {
  std::vector<measure::Definition> definitions;
  std::optional<board::Board> board;
  std::optional<oven::Oven> oven;
  std::optional<oven::Recipe> recipe;
  std::optional<double> entry_s;
  std::optional<int> run;  ///< of a log with several passes, from 1; else the first
  log::Options log;
};

struct Measured {
  measure::Definition measure;
  std::optional<std::size_t> channel;  ///< index into the run's channels; absent for board measures
  measure::Value value;
};

struct MeasuredLog {
  log::Reading reading;
  run::Run run;
  std::optional<oven::Entry> entry;
  std::vector<Measured> results;  ///< in the order asked for, then by channel
};

/// Errors: as check::check.
Result<MeasuredLog> measure_log(const std::string& path, const MeasureRequest& request);

/// The measures that need no parameter and fit any run, each with its defaults: what is taken when none is asked for.
std::vector<measure::Definition> usual_measures();

}  // namespace ovenwright::check
