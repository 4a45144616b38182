#include "core/tune/start.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "core/heat/board_estimate.h"
#include "core/tune/words.h"
#include "core/units/listed.h"

namespace ovenwright::tune {
namespace {

using Map = heat::ParameterMap;

constexpr double kEntry_s = 10, kStep_s = 0.5, kAfter_s = 90;  // of the imagined log
constexpr double kUsualLiquidus_C = 217, kUsualInOven_s = 240;
constexpr double kFirstBelow_C = 90, kSoakBelow_C = 20, kAboveLiquidus_C = 30, kLastAbove_C = 8;
constexpr double kSoakZones = 0.75;  // of the heated zones
constexpr double kKeptMargin = 0.75, kAnyEdge = 1e6;
constexpr const char* kLight = "smallest parts";  // they heat as the bare board does

/// The board with everything that a first look should watch: its placements, each part of stated mass, the smallest
/// parts.
board::Board watched(board::Board board) {
  std::erase_if(board.placements, [](const board::Placement& p) { return p.kind == board::Kind::kAir; });
  const auto add = [&](const std::string& name, board::Kind kind, const board::Part* part) {
    board::Placement placement;
    placement.channel = name;
    placement.kind = kind;
    if (part) {
      placement.part = part->name;
      placement.side = part->side;
    }
    if (board.length_mm) placement.x_mm = *board.length_mm / 2;
    board.placements.push_back(std::move(placement));
  };
  for (const auto& part : board.parts) {
    const bool has = std::ranges::any_of(board.placements, [&](const auto& p) { return p.part == part.name; });
    if (part.mass_g && !has) add(part.name, board::Kind::kJoint, &part);
  }
  const bool light = std::ranges::any_of(board.placements, [&](const board::Placement& p) {
    return p.kind == board::Kind::kBoard || !p.part || !board.part(*p.part) || !board.part(*p.part)->mass_g;
  });
  if (!light) add(kLight, board::Kind::kJoint, nullptr);
  return board;
}

/// Steps between zones within the oven's limit, the hottest zones kept.
void ease(std::vector<double>& setpoints_C, const oven::Limits& limits) {
  if (limits.setpoint_C)
    for (double& x : setpoints_C) x = std::clamp(x, (*limits.setpoint_C)[0], (*limits.setpoint_C)[1]);
  if (!limits.step_between_zones_C) return;
  for (std::size_t z = setpoints_C.size() - 1; z > 0; --z)
    setpoints_C[z - 1] = std::max(setpoints_C[z - 1], setpoints_C[z] - *limits.step_between_zones_C);
}

/// A plain rise: to below the liquidus over three quarters of the zones, then to above the window's peak.
oven::Recipe plain_recipe(const oven::Oven& oven, const std::vector<window::ProcessWindow>& windows,
                          double liquidus_C) {
  double peak_C = liquidus_C + kAboveLiquidus_C;
  for (const auto& window : windows)
    for (const auto& requirement : window.requirements) {
      if (requirement.measure.measure != measure::Measure::kPeak || !requirement.lower || !requirement.upper) continue;
      const auto* low = std::get_if<double>(&*requirement.lower);
      const auto* high = std::get_if<double>(&*requirement.upper);
      if (low && high) peak_C = (*low + *high) / 2;
    }
  oven::Recipe out;
  const auto n = oven.heating_zones();
  const auto soak = static_cast<std::size_t>(std::max(1.0, std::floor(kSoakZones * static_cast<double>(n))));
  for (std::size_t z = 0; z < n; ++z) {
    const double share = soak > 1 ? static_cast<double>(z) / static_cast<double>(soak - 1) : 1;
    out.top_C.push_back(std::round(z < soak ? std::lerp(liquidus_C - kFirstBelow_C, liquidus_C - kSoakBelow_C, share)
                                            : peak_C + kLastAbove_C));
  }
  ease(out.top_C, oven.limits);
  out.bottom_C = out.top_C;
  double heated_mm = 0;
  for (std::size_t z = 0; z < oven.zones.size(); ++z)
    if (oven.zones[z].kind == oven::ZoneKind::kHeat) heated_mm = oven.zone_end_mm(z) - oven.entrance_mm;
  out.speed_mm_per_min = std::round(heated_mm / kUsualInOven_s * 60);
  if (const auto& limits = oven.limits.speed_mm_per_min)
    out.speed_mm_per_min = std::clamp(out.speed_mm_per_min, (*limits)[0], (*limits)[1]);
  return out;
}

/// The imagined log: every placement at ambient, as long as the way through the oven takes at the first recipe's speed.
run::Run imagined_run(const board::Board& board, const oven::Oven& oven, const oven::Recipe& recipe) {
  run::Run out;
  const double way_mm = oven.length_mm() + board.length_mm.value_or(0);
  const double end_s = kEntry_s + way_mm / (recipe.speed_mm_per_min / 60) + kAfter_s;
  std::vector<double> time_s;
  for (double t = 0; t <= end_s; t += kStep_s) time_s.push_back(t);
  const auto samples = time_s.size();
  const auto clock = *run::Clock::make(std::move(time_s));
  for (const auto& placement : board.placements) {
    run::Channel channel;
    channel.name = placement.channel;
    channel.number = static_cast<int>(out.channels.size() + 1);
    channel.trace = *run::Trace::make(clock, std::vector<double>(samples, oven.ambient_C));
    channel.samples = samples;
    channel.removed_end_from_s = clock->time_s().back();
    out.channels.push_back(std::move(channel));
  }
  out.to_s = clock->time_s().back();
  out.sample_interval_s = kStep_s;
  return out;
}

bool same_zones(const oven::Oven& a, const oven::Oven& b) {
  return a.entrance_mm == b.entrance_mm &&
         std::ranges::equal(a.zones, b.zones, [](const oven::Zone& x, const oven::Zone& y) {
           return x.kind == y.kind && x.length_mm == y.length_mm && x.gap_after_mm == y.gap_after_mm;
         });
}

/// The model of a run that is only imagined: what earlier runs tell about the oven, what its file tells of the board.
heat::HeatModel imagined_model(const oven::Oven& oven, const board::Board& board, const run::Run& run,
                               const oven::Recipe& recipe, double liquidus_C, const heat::ExchangeLevel& level,
                               const Learned* learned) {
  const heat::RunInput input{&run, recipe, &board, 0, {kEntry_s, 0, oven::Entry::Source::kGiven}};
  heat::HeatModel out;
  out.problem = heat::build(oven, liquidus_C, {&input, 1}).problem;
  out.problem.runs.front().imagined = true;
  out.report.usable = true;
  const auto map = out.problem.map();
  const auto priors = heat::priors(out.problem);
  const std::size_t P = map.size();
  for (const auto& prior : priors) {
    out.theta.push_back(prior.mean);
    out.sd.push_back(prior.sd);
  }
  out.sd[map.entry(0)] = 0;
  out.covariance.assign(P * P, 0.0);
  for (std::size_t p = 0; p < P; ++p) out.covariance[p * P + p] = 1;
  if (learned) {  // the oven's parameters stand first in both, with the same priors
    const auto& known = learned->model;
    const std::size_t shared = Map::kOvenCount + 2 * map.zones, Q = known.theta.size();
    for (std::size_t p = 0; p < shared; ++p) {
      out.theta[p] = known.theta[p];
      for (std::size_t q = 0; q < shared; ++q) out.covariance[p * P + q] = known.covariance[p * Q + q];
    }
  }
  const double beside =
      std::log1p(std::exp(out.theta[map.placement(0, Map::kToSide)] - out.theta[map.placement(0, Map::kFromSide)]));
  std::vector<heat::PlaceEstimate> places;
  for (const auto& placement : out.problem.placements) {
    const auto* seat = board.placement(placement.name, 0);
    places.push_back(*heat::estimate(board, seat->kind == board::Kind::kBoard ? "" : seat->part.value_or("")));
  }
  // The board's and the oven's level move all placements together.
  const auto common = [&](std::size_t j) { return std::hypot(places[j].board_sd, level.sd); };
  for (std::size_t j = 0; j < places.size(); ++j) {
    const auto p = map.placement(j, Map::kTimeConstant);
    out.theta[p] = places[j].ln_capacity - level.ln_W_per_m2K - beside;
    out.sd[p] = std::hypot(common(j), places[j].own_sd);
  }
  for (std::size_t j = 0; j < places.size(); ++j)
    for (std::size_t k = 0; k < places.size(); ++k) {
      const auto p = map.placement(j, Map::kTimeConstant), q = map.placement(k, Map::kTimeConstant);
      if (p != q) out.covariance[p * P + q] = common(j) * common(k) / (out.sd[p] * out.sd[q]);
    }
  return out;
}

std::string sentence_of(const Start& start, const heat::ExchangeLevel& level) {
  double coldest_C = 1e9, hottest_C = -1e9, band_C = 0;
  std::string coldest, hottest;
  for (std::size_t c = 0; c < start.predicted.run.channels.size(); ++c) {
    const auto& channel = start.predicted.run.channels[c];
    if (!channel.trace) continue;
    const auto T = channel.trace->temperature_C();
    const auto top = static_cast<std::size_t>(std::ranges::max_element(T) - T.begin());
    if (T[top] < coldest_C) coldest_C = T[top], coldest = channel.name;
    if (T[top] > hottest_C) hottest_C = T[top], hottest = channel.name;
    band_C = std::max(band_C, start.predicted.band_C[c][top]);
  }
  // A peak moves in time too, so it is known less well than the curve at that moment.
  for (std::size_t i = 0; i < start.predicted.half_width.size(); ++i)
    if (start.predicted.judgement.all(i).measure.measure == measure::Measure::kPeak)
      band_C = std::max(band_C, start.predicted.half_width[i]);
  // Rises are known least: how sharply the air changes from zone to zone shows in light parts alone.
  double rise = 0, rise_band = 0;
  for (std::size_t i = 0; i < start.predicted.half_width.size(); ++i) {
    const auto& outcome = start.predicted.judgement.all(i);
    if (outcome.measure.measure != measure::Measure::kSteepestRise || !outcome.value.value) continue;
    if (*outcome.value.value + start.predicted.half_width[i] <= rise + rise_band) continue;
    rise = *outcome.value.value;
    rise_band = start.predicted.half_width[i];
  }
  const bool alike = std::lround(coldest_C) == std::lround(hottest_C);
  std::string out = fmt::format(
      "{} has not been measured. By its size and parts alone{}, this recipe is expected to bring it to peaks {}, known "
      "to ± {:.0f} °C",
      start.board.identity.name.empty() ? "The board" : start.board.identity.name,
      start.learned_from.empty() ? ", in an oven that has not been measured either"
                                 : ", in an oven known from " + std::to_string(start.learned_from.size()) +
                                       (start.learned_from.size() == 1 ? " run" : " runs") + " of other boards",
      alike ? fmt::format("of {:.0f} °C", hottest_C)
            : fmt::format("from {:.0f} °C ({}) to {:.0f} °C ({})", coldest_C, coldest, hottest_C, hottest),
      band_C);
  if (rise > 0) out += fmt::format(", and to rises of up to {:.1f} °C/s, known to ± {:.1f} °C/s", rise, rise_band);
  if (start.predicted.pass_probability)
    out += fmt::format("; it passes with a probability of about {:.0f} %",
                       std::clamp(100 * *start.predicted.pass_probability, 1.0, 99.0));
  out +=
      ". Make one instrumented run with it, with a thermocouple on the heaviest and on the lightest part, and tune "
      "from that run.";
  if (!start.learned_from.empty() && level.placements == 0)
    out +=
        " The earlier boards' files do not say what they weigh, so how strongly the oven heats is not known from them.";
  return out;
}

}  // namespace

Result<Start> start(const oven::Oven& oven, const board::Board& board, std::vector<window::ProcessWindow> windows,
                    const Learned* learned) {
  Start out;
  out.board = watched(board);
  if (!heat::estimate(board, ""))
    return Error{ErrorCode::kUndetermined,
                 "does not say what the board weighs: enter thickness_mm, better with length_mm, width_mm and mass_g",
                 {board.identity.file, 0, 0},
                 {},
                 {}};
  if (learned && !learned->model.report.usable)
    return Error{ErrorCode::kUndetermined,
                 "the earlier runs do not carry a model: " + learned->model.report.message,
                 {learned->runs.front().source.log, 0, 0},
                 {},
                 {}};
  if (learned && !same_zones(oven, learned->model.problem.oven))
    return Error{
        ErrorCode::kBadArgument,
        "the earlier runs are of an oven with other zones, \"" + learned->model.problem.oven.identity.name + "\"",
        {oven.identity.file, 0, 0},
        {},
        {}};
  double liquidus_C = kUsualLiquidus_C;
  for (auto window = windows.rbegin(); window != windows.rend(); ++window)
    if (window->liquidus_C) liquidus_C = *window->liquidus_C;

  auto level = heat::usual_exchange_level();
  if (learned) {
    std::vector<const board::Board*> boards(learned->boards, nullptr);
    for (const auto& run : learned->runs) {
      if (run.source.board) boards[run.board_index] = &*run.source.board;
      out.learned_from.push_back(run.source.log + ", recipe " + run.source.recipe.identity.name +
                                 (run.source.board ? ", board " + run.source.board->identity.name : std::string{}));
      if (run.source.board && run.source.board->identity.name == board.identity.name)
        out.warnings.push_back("the board is among the measured runs: `tune` knows it far better");
    }
    level = heat::exchange_level(learned->model, boards);
  }
  std::vector<std::string> unknown;
  for (const auto& placement : out.board.placements) {
    if (!placement.part || placement.kind == board::Kind::kBoard) continue;
    const auto* part = out.board.part(*placement.part);
    if ((!part || !part->mass_g) && std::ranges::find(unknown, *placement.part) == unknown.end())
      unknown.push_back(*placement.part);
  }
  if (!unknown.empty())
    out.warnings.push_back("the mass of " + listed(unknown) +
                           " is not stated: it counts as light, and as little known");

  std::vector<oven::Recipe> begin{plain_recipe(oven, windows, liquidus_C)};
  if (learned) begin.insert(begin.begin(), learned->runs.back().source.recipe);
  const auto& first = begin.front();
  const auto run = imagined_run(out.board, oven, first);
  const auto model = imagined_model(oven, out.board, run, first, liquidus_C, level, learned);
  Subject subject;
  subject.run = &run;
  subject.board = &out.board;
  subject.windows = std::move(windows);
  for (const auto& channel : run.channels) subject.traces.push_back(&*channel.trace);
  const Forecaster forecaster(model, std::move(subject));
  const RecipeSpace space(oven, first, {});
  const Search search({&forecaster}, space, {});
  std::optional<Point> best;
  for (const auto& recipe : begin)
    for (const double speed : {1.0, 0.75, 1.3}) {
      auto x = space.vector(recipe);
      x.back() = std::clamp(x.back() * speed, space.lower().back(), space.upper().back());
      if (!space.allows(space.rounded(x))) continue;
      auto found = search.run(Aim::kMostMargin, x, x, {});
      if (!best || found.point.margin > best->margin) best = std::move(found.point);
    }
  if (!best || best->limits.empty())
    return Error{ErrorCode::kUndetermined,
                 "the window requires nothing that can be predicted for this board",
                 {board.identity.file, 0, 0},
                 {},
                 {}};
  // Little is known, so the last of the margin is worth nothing: the least change that keeps most of it is a recipe
  // that an engineer recognises.
  if (best->margin > 0) {
    const auto x = space.vector(first);
    auto plain = search.run(Aim::kLeastChange, best->x, x, {-kAnyEdge, kKeptMargin * best->margin});
    if (plain.point.margin >= kKeptMargin * best->margin - 0.01) best = std::move(plain.point);
  }
  out.recipe = space.recipe(best->x);
  out.recipe.identity = {};
  out.recipe.identity.name = (board.identity.name.empty() ? "board" : board.identity.name) + ", first recipe";
  out.recipe.identity.source =
      "a prediction for a board that has not been measured; to be confirmed by an instrumented run";
  out.recipe.oven = oven.identity.name;
  out.predicted = forecaster.forecast(out.recipe, true);
  out.sentence = sentence_of(out, level);
  out.caution = kCaution;
  return out;
}

}  // namespace ovenwright::tune
