#include "core/lot/zones.h"

#include <algorithm>
#include <tuple>

#include "core/files/profiles.h"

namespace ovenwright::lot {
namespace {

void count(TracedZone& zone, std::size_t run, const TracedResult& result) {
  ++zone.results;
  if (zone.runs.empty() || zone.runs.back() != run) zone.runs.push_back(run);
  const auto same = [&](const TracedZone::Subject& one) {
    return std::tie(one.window, one.requirement, one.trace) ==
           std::tie(result.window, result.requirement, result.trace);
  };
  const auto at = std::ranges::find_if(zone.subjects, same);
  if (at != zone.subjects.end()) {
    ++at->runs;
  } else {
    zone.subjects.push_back({result.window, result.requirement, result.trace, 1});
  }
}

}  // namespace

ZoneTraces zone_traces(std::span<const RunTraces> runs) {
  ZoneTraces traces;
  for (std::size_t r = 0; r < runs.size(); ++r) {
    for (const auto& result : runs[r]) {
      ++traces.outside;
      if (!result.zones.empty()) ++traces.traced;
      for (const auto& name : result.zones) {
        auto at = std::ranges::find(traces.zones, name, &TracedZone::zone);
        if (at == traces.zones.end()) at = traces.zones.insert(at, TracedZone{.zone = name});
        count(*at, r, result);
      }
    }
    if (!runs[r].empty()) ++traces.runs;
  }
  std::ranges::sort(traces.zones, files::natural_less, &TracedZone::zone);
  for (auto& zone : traces.zones)
    std::ranges::stable_sort(zone.subjects, std::ranges::greater{}, &TracedZone::Subject::runs);
  const auto weight = [](const TracedZone& zone) {
    return std::tuple(zone.results, zone.runs.size(), zone.runs.back());
  };
  for (std::size_t z = 0; z < traces.zones.size(); ++z)
    if (!traces.leading || weight(traces.zones[z]) > weight(traces.zones[*traces.leading])) traces.leading = z;
  return traces;
}

}  // namespace ovenwright::lot
