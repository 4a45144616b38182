#include "core/heat/weigh.h"
#include "core/units/listed.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace ovenwright::heat {
namespace {

using Map = ParameterMap;

constexpr double kOdd = 3, kImpossible = 5;  // prior standard deviations
// A share of the setpoints' rise above ambient by which the air of all places falls short. Where panels radiate it
// truly does, by up to 0.15; much hotter than set it is nowhere.
constexpr double kOddShade = 0.06, kMostShade = 0.2, kLeastShade = -0.15;
constexpr double kMostMisfit_C = 3.3, kLeastRise_C = 60;
constexpr double kAirTau_s = 6.5, kAirSlope_C_per_s = 8;  // boards are three times as slow, joints rise at 6 at most
constexpr double kCooled = 0.7;     // of the rise above ambient: a log that ends hotter shows little of the cooling
constexpr double kEntrySd_s = 0.6;  // of entries told by the curves, whatever the fit says (docs/entry.md)
constexpr double kCoverage = 1.96;

/// When the last of a run's placements leaves a zone, by recipe and entry.
double leaves_s(const HeatModel& model, std::size_t r, std::size_t zone) {
  const Map map = model.problem.map();
  double last_mm = 0;
  for (std::size_t j = 0; j < map.placements; ++j)
    if (model.problem.placements[j].board == model.problem.runs[r].board)
      last_mm = std::max(last_mm, model.theta[map.placement(j, Map::kDistance)]);
  return model.theta[map.entry(r)] +
         (model.problem.oven.zone_end_mm(zone) + last_mm) / (model.problem.runs[r].recipe.speed_mm_per_min / 60);
}

/// The last reading of a run, over its placements; NaN where there is none.
double last_reading_C(const ModelRun& run) {
  double hottest = std::nan("");
  for (const auto& data : run.mean_C)
    for (auto i = data.rbegin(); i != data.rend(); ++i)
      if (std::isfinite(*i)) {
        hottest = std::isfinite(hottest) ? std::max(hottest, *i) : *i;
        break;
      }
  return hottest;
}

double highest_C(const ModelRun& run) {
  double highest = run.ambient_C;
  for (const auto& data : run.mean_C)
    for (const double x : data)
      if (x > highest) highest = x;
  return highest;
}

class Weigher {
 public:
  explicit Weigher(HeatModel& model)
      : model_(model), map_(model.problem.map()), prior_(priors(model.problem)), report_(model.report) {}

  void operator()() {
    if (!std::isfinite(report_.rmse_C)) {
      report_.message = "no model fits this log";
    } else {
      placements();
      zones();
      for (std::size_t r = 0; r < map_.runs; ++r) {
        entry(r);
        length(r);
      }
      if (report_.message.empty()) unmolten();  // a log that ends too soon shows less still
      if (report_.rmse_C > kMostMisfit_C)
        fails(
            fmt::format("the log does not follow this oven and recipe (misfit {:.0f} °C): check that recipe, speed, "
                        "oven and entry belong to this log",
                        report_.rmse_C));
    }
    report_.usable = report_.message.empty();
  }

 private:
  double pulled(std::size_t i) const {
    return prior_[i].sd > 0 ? (model_.theta[i] - prior_[i].mean) / prior_[i].sd : 0;
  }
  /// The first reason stands: it is the most telling.
  void fails(std::string why) {
    if (report_.message.empty()) report_.message = std::move(why);
  }
  void warn(std::string text) { report_.warnings.push_back(std::move(text)); }

  void zones() {
    std::vector<std::string> impossible, odd;
    for (std::size_t z = 0; z < map_.zones; ++z) {
      const double offset = pulled(map_.offset(z));
      const auto& name = model_.problem.oven.zones[z].name;
      if (std::abs(offset) > kOdd)
        odd.push_back(
            fmt::format("zone {} seems {:.0f} °C {} than its setpoint: check the recipe, the zone and its thermocouple",
                        name, std::abs(model_.theta[map_.offset(z)]), offset > 0 ? "hotter" : "colder"));
      if (std::abs(offset) > kImpossible) impossible.push_back(name);
    }
    throughout(impossible, odd);
    // Offsets as far off as that are where the fit stopped, and no numbers to go by.
    if (impossible.empty())
      for (auto& zone : odd) warn(std::move(zone));
    else
      fails(
          fmt::format("the log does not follow this recipe in zone{} {}: check that recipe and oven belong to this "
                      "log, and that no setpoints are swapped",
                      impossible.size() == 1 ? "" : "s", listed(impossible)));
  }

  /// Zones that are all off alike show as places that all see more or less than the air; told of the hottest zone.
  void throughout(std::vector<std::string>& impossible, std::vector<std::string>& odd) const {
    double shade = 0, hottest_C = -INFINITY;
    for (std::size_t j = 0; j < map_.placements; ++j)
      shade += model_.theta[map_.placement(j, Map::kShade)] / static_cast<double>(map_.placements);
    if (std::abs(shade) <= kOddShade) return;
    const auto& run = model_.problem.runs.front();
    std::size_t hottest = 0;
    for (std::size_t z = 0, heat = 0; z < map_.zones; ++z) {
      const auto& zone = model_.problem.oven.zones[z];
      if (zone.kind != oven::ZoneKind::kHeat) continue;
      const double set_C = (run.recipe.top_C[heat] + run.recipe.bottom_C[heat]) / 2;
      if (set_C > hottest_C) hottest_C = set_C, hottest = z;
      if ((shade > kMostShade || shade < kLeastShade) && !std::ranges::count(impossible, zone.name))
        impossible.push_back(zone.name);
      ++heat;
    }
    odd.push_back(
        fmt::format("zone {} seems {:.0f} °C {} than its setpoint: check the recipe, the zone and its thermocouple",
                    model_.problem.oven.zones[hottest].name, std::abs(shade) * (hottest_C - run.ambient_C),
                    shade < 0 ? "hotter" : "colder"));
  }

  /// A given entry against what the curves alone say.
  void entry(std::size_t r) {
    const auto& run = model_.problem.runs[r];
    const auto i = map_.entry(r);
    if (!run.entry_given || !(prior_[i].sd > 0)) return;
    const double left = model_.covariance[i * map_.size() + i];  // of the prior variance
    if (left > 0.999) return;
    const double variance = prior_[i].sd * prior_[i].sd;
    const double curves_s = (model_.theta[i] - prior_[i].mean) / (1 - left);
    const double u_s = std::sqrt(variance + variance * left / (1 - left) + kEntrySd_s * kEntrySd_s);
    if (std::abs(curves_s) <= 2 * kCoverage * u_s) return;
    report_.contradicted = true;
    warn(
        fmt::format("the curves fit an entry {:.0f} s ± {:.0f} s {} than the one given: check the entry, the speed and "
                    "the oven's entrance",
                    std::abs(curves_s), kCoverage * u_s, curves_s > 0 ? "later" : "earlier"));
  }

  /// What of the way through the oven the log shows.
  void length(std::size_t r) {
    const auto& run = model_.problem.runs[r];
    const auto& zones = model_.problem.oven.zones;
    std::size_t last = 0;
    for (std::size_t z = 0; z < zones.size(); ++z)
      if (zones[z].kind == oven::ZoneKind::kHeat) last = z;
    if (highest_C(run) < run.ambient_C + kLeastRise_C)
      fails(fmt::format("no thermocouple rises above {:.0f} °C: the log does not show a board going through an oven",
                        highest_C(run)));
    const double missing_s = leaves_s(model_, r, last) - run.end_s;
    if (missing_s > 0) {
      fails(
          fmt::format("the log ends {:.0f} s before the board has left zone {} by this recipe's speed: check the "
                      "speed, the entry and the oven, or log until the board has cooled",
                      std::ceil(missing_s), zones[last].name));
    } else if (last_reading_C(run) > std::lerp(run.ambient_C, highest_C(run), kCooled)) {
      warn(fmt::format("the log ends at {:.0f} °C: how the board cools is little known; log until it has cooled",
                       last_reading_C(run)));
    }
  }

  void placements() {
    std::size_t in_air = 0;
    for (std::size_t j = 0; j < map_.placements; ++j) {
      if (model_.theta[map_.placement(j, Map::kTimeConstant)] >= std::log(kAirTau_s) &&
          steepest_C_per_s(j) < kAirSlope_C_per_s)
        continue;
      ++in_air;
      warn(model_.problem.placements[j].name +
           " follows the air: its bead may be detached, or it belongs to kind \"air\"");
    }
    if (in_air == map_.placements)
      fails("every thermocouple follows the air, so nothing is known of a board: check that the beads are attached");
    else if (map_.placements == 1)
      warn(
          "one thermocouple only: what is predicted holds for its place, not for the hottest and coldest of the board");
  }

  /// What was never as hot as the solder's liquidus shows nothing of how it melts.
  void unmolten() {
    std::vector<std::string> names;
    for (std::size_t j = 0; j < map_.placements; ++j) {
      double hottest_C = -INFINITY;
      for (const auto& run : model_.problem.runs)
        for (const double T : run.mean_C[j]) hottest_C = std::fmax(hottest_C, T);
      if (hottest_C < model_.problem.liquidus_C) names.push_back(model_.problem.placements[j].name);
    }
    if (names.empty()) return;
    warn(fmt::format("{} stayed below {:g} °C: how melting slows {} down is not known from this log", listed(names),
                     model_.problem.liquidus_C, names.size() > 1 ? "them" : "it"));
  }

  /// Over 4 s, of any run.
  double steepest_C_per_s(std::size_t j) const {
    double most = 0;
    for (const auto& run : model_.problem.runs)
      for (std::size_t i = 2; i < run.mean_C[j].size(); ++i)
        most = std::max(most, (run.mean_C[j][i] - run.mean_C[j][i - 2]) / (2 * kBin_s));
    return most;
  }

  HeatModel& model_;
  const Map map_;
  const std::vector<Prior> prior_;
  FitReport& report_;
};

}  // namespace

void weigh(HeatModel& model) { Weigher{model}(); }

}  // namespace ovenwright::heat
