#include "app/desktop/lots/run_details.h"

#include <map>

#include "core/report/kept_run.h"

namespace ovenwright::desktop {
namespace {

/// Which run of its lot each is, by the id of the run's first record.
using Places = std::map<std::string, int>;

Result<Places> placesIn(archive::Archive& archive, const std::string& lot) {
  const auto runs = archive.runsOfLot(lot);
  if (!runs) return runs.error();
  Places places;
  for (const auto& run : *runs) places.emplace(run.origin, int(places.size()) + 1);
  return places;
}

}  // namespace

Result<std::vector<RunDetails>> runDetails(archive::Archive& archive, const std::vector<std::string>& ids,
                                           const ArchiveLink::Stop& stop) {
  std::map<std::string, Places> lots;
  std::vector<RunDetails> all;
  for (const auto& id : ids) {
    if (!stop.isWanted()) return Error{ErrorCode::kCancelled, "no longer wanted", {}, {}, {}};
    RunDetails details;
    const auto record = archive.load(id);
    if (!record) return record.error();
    if (record->recipe) details.recipeRevision = record->recipe->revision.value_or("");
    if (const auto& lot = record->summary.lot; !lot.empty()) {
      if (!lots.contains(lot)) {
        auto places = placesIn(archive, lot);
        if (!places) return places.error();
        lots.emplace(lot, *std::move(places));
      }
      const auto& places = lots.at(lot);
      const auto place = places.find(record->summary.origin);
      if (place != places.end()) details.runOfLot = place->second;
    }
    const auto report = archive.report(id);
    if (!report) return report.error();
    if (const auto run = report::kept_run(id, *report)) {
      if (const auto decides = lot::deciding_result(*run)) {
        const auto& result = run->results[*decides];
        details.requirement = result.requirement;
        details.trace = result.trace;
        details.measure = result.measure;
        details.value = result.value;
        details.at_least = result.at_least;
      }
    }
    all.push_back(std::move(details));
  }
  return all;
}

}  // namespace ovenwright::desktop
