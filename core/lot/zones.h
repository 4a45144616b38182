#pragma once
#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace ovenwright::lot {

/// A required result of a run that is outside its limits, and the zones that it traces back to.
struct TracedResult {
  std::string window = {}, requirement = {}, trace = {};  ///< trace: empty for board measures
  std::vector<std::string> zones = {};                    ///< empty where none is known, as without an oven
};
/// The results outside of one run.
using RunTraces = std::vector<TracedResult>;

/// A zone that results outside their limits trace back to.
struct TracedZone {
  std::string zone = {};
  std::size_t results = 0;             ///< required results outside, of all runs, that trace to it
  std::vector<std::size_t> runs = {};  ///< indices of their runs, each once, rising; the last is the newest
  /// One requirement on one trace, and how many runs it traces to the zone in.
  struct Subject {
    std::string window = {}, requirement = {}, trace = {};
    std::size_t runs = 0;
  };
  std::vector<Subject> subjects = {};  ///< that in most runs first; among equals in the order they came in
};

/// What the runs say of the zones they went through. A count of results as they were judged, not a statement on the
/// state of the oven: a result traces to the zones that would move it most (measures.md, Zones), whatever moved it.
struct ZoneTraces {
  std::vector<TracedZone> zones = {};       ///< by name: 1, 2, … 10, C1
  std::size_t outside = 0;                  ///< required results outside, conditional ones counted
  std::size_t traced = 0;                   ///< of these, those with a zone: a run without an oven has none
  std::size_t runs = 0;                     ///< with a required result outside
  std::optional<std::size_t> leading = {};  ///< index into zones: that with most results, among equals in most runs,
                                            ///< then that of the newest run, then the first
};

/// Runs in order of time. Names of zones mean the same in runs of one oven only. Cost: O(results × zones named).
ZoneTraces zone_traces(std::span<const RunTraces> runs);

}  // namespace ovenwright::lot
