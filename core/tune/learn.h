#pragma once
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "core/check/check.h"
#include "core/heat/build.h"
#include "core/heat/identify.h"
#include "core/tune/forecast.h"

namespace ovenwright::tune {

/// One measured run to learn from: what a command line or a list of runs names.
struct RunSource {
  std::string log;
  oven::Recipe recipe;
  std::optional<board::Board> board;
  std::vector<window::ProcessWindow> windows;
  std::optional<double> entry_s;
  std::optional<int> run;  ///< of a log with several passes, from 1
  log::Options options;
};

/// A list of runs of one oven (runs.toml): paths in it are relative to the file.
/// Errors: as every file that people edit, kParse with file, line and column; those of the files that it names.
struct RunList {
  oven::Oven oven;
  std::vector<RunSource> runs;
};
Result<RunList> load_runs(const std::string& path);

/// A run that was read, with its entry.
struct MeasuredRun {
  RunSource source;
  log::Reading reading;
  run::Run run;
  oven::Entry entry;
  std::size_t board_index = 0;
};

/// A run that is open already, with its entry: given, else found. `source.log` only names it.
/// Errors: kUndetermined where the run does not show the entry and none is given.
Result<MeasuredRun> measured_run(const oven::Oven& oven, RunSource source, run::Run run);

/// Whether top and bottom of a zone are so far apart that a run tells them apart.
constexpr double kSidesApart_C = 5;
bool sides_apart(const oven::Recipe& recipe);

/// An oven and its boards, learned from runs.
struct Learned {
  std::vector<MeasuredRun> runs;
  heat::HeatModel model;
  std::vector<std::vector<const run::Trace*>> traces;  ///< into `runs`: [run][placement]
  std::size_t boards = 0;

  /// The last run of a board, to be held in its windows.
  Subject subject(std::size_t board_index) const;
  /// Its name, "board 2" where it has none.
  std::string board_name(std::size_t board_index) const;
};

/// Reads the runs and identifies the model. Runs whose boards have the same name, or none, are of one board.
/// `liquidus_C`: of the first window that has one, else suggested by the peaks.
/// Errors: those of log::read and clean; kUndetermined where a log does not show the entry and none is given, or no
/// trace is left.
Result<Learned> learn(const oven::Oven& oven, std::vector<RunSource> sources,
                      const std::function<bool(double)>& progress = {});
/// The same from runs that were read already.
Result<Learned> learn_from(const oven::Oven& oven, std::vector<MeasuredRun> runs,
                           const std::function<bool(double)>& progress = {});

}  // namespace ovenwright::tune
