#include "core/check/attribution.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numeric>

#include "core/heat/build.h"
#include "core/heat/identify.h"
#include "core/heat/predict.h"
#include "core/judge/bind.h"
#include "core/judge/main_zones.h"
#include "core/judge/sentence.h"
#include "core/units/phrase.h"

namespace ovenwright::check {
namespace {

constexpr double kMove_C = 3;                      // a usual change, far above rounding
constexpr double kSpeedLikeDegree_mm_per_min = 3;  // as in the search for recipes
constexpr double kThinned_s = 0.5;                 // the model itself steps 1 s
constexpr double kBefore_s = 20, kAfter_s = 60;    // kept of the log around the way through the oven
constexpr double kMeaned_s = 2;                    // before and behind, so that a logger's steps do not show
constexpr double kThousand = 1000;
constexpr double kSidesTold = 0.5;      // of the prior spread left
constexpr double kUnsetCooling_C = 50;  // what the model takes for a cooling zone without a setpoint
constexpr int kIterations = 8;          // shares then stand within 0.02 of those of the whole fit
constexpr std::size_t kSpeed = static_cast<std::size_t>(-1);

/// One thing that can be set: a zone's side, both its sides, or the speed.
struct Knob {
  std::size_t zone = kSpeed;
  std::optional<board::Side> side;
};

/// The run from shortly before the entry to shortly after the exit, at intervals of 0.5 s or its own.
run::Run thinned(const run::Run& run, const measure::Place& place) {
  const double through_s = place.oven->length_mm() / (place.recipe->speed_mm_per_min / 60);
  const double from_s = place.entry.at_s - kBefore_s, to_s = place.entry.at_s + through_s + kAfter_s;
  run::Run out;
  out.from_s = std::max(run.from_s, from_s);
  out.to_s = std::min(run.to_s, to_s);
  out.sample_interval_s = std::max(run.sample_interval_s, kThinned_s);
  for (const auto& channel : run.channels) {
    run::Channel thin;
    thin.name = channel.name;
    thin.number = channel.number;
    if (channel.trace) {
      const auto& trace = *channel.trace;
      const double first_s = std::max(trace.time_s().front(), from_s), last_s = std::min(trace.time_s().back(), to_s);
      const double step_s = std::max(trace.median_interval_s(), kThinned_s);
      std::vector<double> time_s, temperature_C;
      const auto around = static_cast<int>(kMeaned_s / step_s);
      for (double t = first_s; t <= last_s; t = first_s + step_s * static_cast<double>(time_s.size())) {
        double sum = 0;
        int n = 0;
        for (int i = -around; i <= around; ++i) {
          const double at_s = t + i * step_s;
          if (at_s < trace.time_s().front() || at_s > trace.time_s().back()) continue;
          const int weight = around + 1 - std::abs(i);
          sum += weight * trace.at(at_s);
          n += weight;
        }
        time_s.push_back(t);
        temperature_C.push_back(sum / n);
      }
      const auto samples = time_s.size();
      if (auto clock = run::Clock::make(std::move(time_s)))
        if (auto made = run::Trace::make(*clock, std::move(temperature_C))) {
          thin.removed_start_to_s = made->time_s().front();
          thin.removed_end_from_s = made->time_s().back();
          thin.samples = samples;
          thin.trace = *std::move(made);
        }
    }
    out.channels.push_back(std::move(thin));
  }
  return out;
}

/// An outcome to be attributed.
struct Wanted {
  judge::Outcome* outcome = nullptr;
  std::vector<std::size_t> channels;      ///< that it is measured on and the model knows
  std::vector<double> weights, stand_in;  ///< by knob
};

/// Weights as shares in thousandths, finer than they are known, that sum to 1: what rounding leaves goes to those it
/// cost most.
std::vector<double> in_thousandths(const std::vector<double>& weights, double sum) {
  std::vector<double> whole(weights.size()), left(weights.size());
  double missing = kThousand;
  for (std::size_t k = 0; k < weights.size(); ++k) {
    whole[k] = std::floor(kThousand * weights[k] / sum);
    left[k] = kThousand * weights[k] / sum - whole[k];
    missing -= whole[k];
  }
  for (; missing > 0.5; --missing) {
    const auto most = std::ranges::max_element(left);
    whole[static_cast<std::size_t>(most - left.begin())] += 1;
    *most = 0;
  }
  for (double& share : whole) share /= kThousand;
  return whole;
}

class Attribution {
 public:
  Attribution(const run::Run& thin, const Setting& setting, const measure::Place& place, heat::HeatModel model,
              std::vector<const run::Trace*> traces)
      : run_(thin), place_(place), recipe_(*place.recipe), model_(std::move(model)), predictor_(model_, 0, traces) {
    if (recipe_.cooling_C.empty())
      recipe_.cooling_C.assign(place.oven->zones.size() - place.oven->heating_zones(), kUnsetCooling_C);
    for (const auto& channel : run_.channels) seats_.push_back(judge::seat_of(channel, setting.board));
    placement_.assign(run_.channels.size(), std::nullopt);
    for (std::size_t c = 0; c < run_.channels.size(); ++c)
      for (std::size_t j = 0; j < traces.size(); ++j)
        if (traces[j] && model_.problem.placements[j].name == run_.channels[c].name) placement_[c] = j;
  }

  void operator()(judge::Judgement& judgement) {
    std::vector<Wanted> wanted;
    for (auto* outcomes : {&judgement.results, &judgement.board_results})
      for (auto& outcome : *outcomes) {
        if (!judge::is_out(outcome.verdict)) continue;
        Wanted one{&outcome, {}, {}, {}};
        for (std::size_t c = 0; c < run_.channels.size(); ++c)
          if (placement_[c] && (!outcome.channel || *outcome.channel == c)) one.channels.push_back(c);
        if (!one.channels.empty()) wanted.push_back(std::move(one));
      }
    if (wanted.empty()) return;

    const bool split = std::ranges::all_of(wanted, [&](const Wanted& one) { return sides_told(one); });
    const auto knobs = knobs_of(split);
    const auto base = measured(recipe_, wanted);
    const auto base_run = moved_;
    for (const Knob& knob : knobs) {
      const auto values = measured(turned(knob), wanted);
      for (std::size_t i = 0; i < wanted.size(); ++i) {
        const bool both = base[i] && values[i];
        wanted[i].weights.push_back(both ? std::abs(*values[i] - *base[i]) : 0);
        wanted[i].stand_in.push_back(change_at_peak(wanted[i], base_run));
      }
    }
    for (auto& one : wanted) write(one, knobs);
  }

 private:
  bool sides_told(const Wanted& one) const {
    const auto map = model_.problem.map();
    return std::ranges::all_of(one.channels, [&](std::size_t c) {
      const auto i = map.placement(*placement_[c], heat::ParameterMap::kTopShare);
      return std::sqrt(model_.covariance[i * map.size() + i]) < kSidesTold;
    });
  }

  std::vector<Knob> knobs_of(bool split) const {
    std::vector<Knob> out;
    for (std::size_t z = 0; z < place_.oven->zones.size(); ++z) {
      if (split && place_.oven->zones[z].kind == oven::ZoneKind::kHeat) {
        out.push_back({z, board::Side::kTop});
        out.push_back({z, board::Side::kBottom});
      } else {
        out.push_back({z, std::nullopt});
      }
    }
    out.push_back({});
    return out;
  }

  oven::Recipe turned(const Knob& knob) const {
    oven::Recipe out = recipe_;
    if (knob.zone == kSpeed) {
      out.speed_mm_per_min += kMove_C * kSpeedLikeDegree_mm_per_min;
      return out;
    }
    const auto& zones = place_.oven->zones;
    const auto kind = zones[knob.zone].kind;
    const auto index =
        static_cast<std::size_t>(std::count_if(zones.begin(), zones.begin() + static_cast<std::ptrdiff_t>(knob.zone),
                                               [&](const oven::Zone& zone) { return zone.kind == kind; }));
    if (kind == oven::ZoneKind::kCool) {
      out.cooling_C[index] += kMove_C;
      return out;
    }
    if (knob.side != board::Side::kBottom) out.top_C[index] += kMove_C;
    if (knob.side != board::Side::kTop) out.bottom_C[index] += kMove_C;
    return out;
  }

  /// Predicts a recipe into `moved_` and measures what is wanted there.
  std::vector<std::optional<double>> measured(const oven::Recipe& recipe, const std::vector<Wanted>& wanted) {
    moved_ = run_;
    for (const auto& predicted : predictor_.predict(recipe, false))
      for (std::size_t c = 0; c < moved_.channels.size(); ++c) {
        if (placement_[c] != predicted.placement) continue;
        auto clock = run::Clock::make(predicted.time_s);
        if (!clock) continue;
        auto trace = run::Trace::make(*clock, predicted.temperature_C);
        if (!trace) continue;
        moved_.channels[c].removed_start_to_s = trace->time_s().front();
        moved_.channels[c].removed_end_from_s = trace->time_s().back();
        moved_.channels[c].trace = *std::move(trace);
      }
    const measure::Place place{place_.oven, &recipe, place_.entry};
    std::vector<std::optional<double>> out;
    for (const auto& one : wanted) {
      const std::span<const measure::Definition> definition{&one.outcome->measure, 1};
      std::vector<measure::Subject> subjects;
      for (const auto c : one.channels) {
        measure::Subject subject;
        subject.channel = &moved_.channels[c];
        subject.x_mm = seats_[c].x_mm;
        subject.bottom = seats_[c].side == board::Side::kBottom;
        subjects.push_back(subject);
      }
      const auto values = one.outcome->channel
                              ? measure::evaluate(subjects.front(), definition, place, {.uncertainty = false})
                              : measure::evaluate_board(subjects, definition, place, {.uncertainty = false});
      // A peak's moment moves by whole samples: what warms the peak stands in.
      const bool coarse = one.outcome->measure.measure == measure::Measure::kPeakTime;
      out.push_back(coarse ? std::nullopt : values.front().value);
    }
    return out;
  }

  /// °C by which the traces are moved where they peak, summed over them.
  double change_at_peak(const Wanted& one, const run::Run& base) const {
    double sum = 0;
    for (const auto c : one.channels) {
      const auto was = base.channels[c].trace->temperature_C(), is = moved_.channels[c].trace->temperature_C();
      sum += std::abs(*std::ranges::max_element(is) - *std::ranges::max_element(was));
    }
    return sum;
  }

  void write(Wanted& one, const std::vector<Knob>& knobs) const {
    auto& outcome = *one.outcome;
    auto weights = one.weights;
    if (std::ranges::none_of(weights, [](double w) { return w > 0; })) weights = one.stand_in;
    const double speed = weights.back();
    weights.pop_back();
    const double zones = std::accumulate(weights.begin(), weights.end(), 0.0);
    if (!(zones > 0)) return;  // nothing to go by: what stood before stays
    const auto shares = in_thousandths(weights, zones);
    outcome.zone_shares.clear();
    for (std::size_t k = 0; k < shares.size(); ++k)
      if (shares[k] > 0)
        outcome.zone_shares.push_back({place_.oven->zones[knobs[k].zone].name, knobs[k].side, shares[k]});
    outcome.speed_share = std::round(kThousand * speed / (zones + speed)) / kThousand;
    outcome.zones = judge::main_zones(outcome.zone_shares);
  }

  const run::Run& run_;
  const measure::Place& place_;
  oven::Recipe recipe_;
  heat::HeatModel model_;
  heat::Predictor predictor_;
  std::vector<judge::Seat> seats_;
  std::vector<std::optional<std::size_t>> placement_;  ///< of the model, by channel
  run::Run moved_;
};

}  // namespace

std::string attribute(const run::Run& run, const Setting& setting, const measure::Place& place,
                      judge::Judgement& judgement) {
  bool out = false;
  for (std::size_t i = 0; i < judgement.all_size(); ++i) out = out || judge::is_out(judgement.all(i).verdict);
  if (!out) return {};
  const auto first_estimate = [](const std::string& why) { return say(Phrase::kZonesByCurves, {why}); };
  std::optional<double> liquidus_C;
  for (const auto& window : judgement.windows) {
    if (window.process == window::Process::kWave) return first_estimate(say(Phrase::kKnowsNoWaves));
    if (!liquidus_C) liquidus_C = window.liquidus_C;
  }
  const auto thin = thinned(run, place);
  const heat::RunInput input{&thin, *place.recipe, setting.board, 0, place.entry};
  auto built = heat::build(*place.oven, liquidus_C, {&input, 1});
  auto model = heat::identify(std::move(built.problem), {}, kIterations);
  if (!model) return first_estimate(model.error().message);
  if (!model->report.usable) return first_estimate(model->report.message);
  const double rmse_C = model->report.rmse_C;
  Attribution{thin, setting, place, *std::move(model), std::move(built.traces.front())}(judgement);
  judgement.sentence = judge::compose(judgement);
  return say(Phrase::kZonesByModel, {fmt::format("{:.1f}", rmse_C)});
}

}  // namespace ovenwright::check
