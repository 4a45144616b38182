#pragma once
#include <vector>

#include "core/run/run.h"

namespace ovenwright::clean {

/// All traces of a run as means over whole seconds, from before they warm to after they cool.
struct PassMeans {
  double from_s = 0;
  std::vector<std::vector<double>>
      mean_C;  ///< by channel; empty for one without a trace, or that misses part of the time
};

/// Of the time in which any trace is above the lowest tenth of its range, and half a minute around it. Empty where that
/// is more than an hour or the log's samples are more than 2 s apart: no pass whose details could be told.
PassMeans pass_means(const run::Run& run, unsigned threads = 1);

}  // namespace ovenwright::clean
