#include "core/heat/board_estimate.h"

#include <algorithm>
#include <cmath>

namespace ovenwright::heat {
namespace {

constexpr double kLaminate_kg_per_m3 = 1850, kLaminate_J_per_kgK = 1100, kExcess_J_per_kgK = 500;
constexpr double kPart_J_per_kgK = 850, kHot = 1.25;  // of laminate and moulding compound, 150 °C against 25 °C
constexpr double kAlong_W_per_mK = 20, kUsual_W_per_m2K = 136, kUsualSd = 0.25;
constexpr double kWithMassSd = 0.10, kWithThicknessSd = 0.20;  // copper is not known where the mass is not
constexpr double kBareSd = 0.2, kPartSd = 0.35, kUnknownPartSd = 0.5;
constexpr double kLevelSd = 0.1;      // of the physics above, common to all boards
constexpr double kUsualSide_mm = 15;  // of a part whose size is not stated

struct Bare {
  double capacity_J_per_m2K = 0, thickness_m = 0, sd = 0;
};

std::optional<Bare> bare(const board::Board& board) {
  Bare out;
  std::optional<double> areal_kg_per_m2;
  if (board.mass_g && board.length_mm && board.width_mm) {
    double mass_g = *board.mass_g;
    for (const auto& part : board.parts) mass_g -= part.mass_g.value_or(0);
    areal_kg_per_m2 = std::max(mass_g, 0.3 * *board.mass_g) / (*board.length_mm * *board.width_mm) * 1e3;
  }
  if (board.thickness_mm) {
    out.thickness_m = *board.thickness_mm * 1e-3;
    const double laminate = kLaminate_kg_per_m3 * out.thickness_m;
    out.capacity_J_per_m2K = laminate * kLaminate_J_per_kgK * kHot;
    if (areal_kg_per_m2) out.capacity_J_per_m2K += std::max(0.0, *areal_kg_per_m2 - laminate) * kExcess_J_per_kgK;
  } else if (areal_kg_per_m2) {
    out.capacity_J_per_m2K = *areal_kg_per_m2 * kLaminate_J_per_kgK;
    out.thickness_m = *areal_kg_per_m2 / kLaminate_kg_per_m3;
  } else {
    return std::nullopt;
  }
  out.sd = areal_kg_per_m2 && board.thickness_mm ? kWithMassSd : kWithThicknessSd;
  return out;
}

}  // namespace

std::optional<PlaceEstimate> estimate(const board::Board& board, const std::string& part_name) {
  const auto board_alone = bare(board);
  if (!board_alone) return std::nullopt;
  PlaceEstimate out{std::log(board_alone->capacity_J_per_m2K), kBareSd, board_alone->sd};
  const auto* part = part_name.empty() ? nullptr : board.part(part_name);
  if (part_name.empty() || !part || !part->mass_g) {
    if (!part_name.empty()) out.own_sd = kUnknownPartSd;
    return out;
  }
  const double around_m = std::sqrt(kAlong_W_per_mK * board_alone->thickness_m / kUsual_W_per_m2K);
  const double length_m = part->length_mm.value_or(kUsualSide_mm) * 1e-3 + around_m;
  const double width_m = part->width_mm.value_or(kUsualSide_mm) * 1e-3 + around_m;
  out.ln_capacity =
      std::log(board_alone->capacity_J_per_m2K + *part->mass_g * 1e-3 * kPart_J_per_kgK * kHot / (length_m * width_m));
  out.own_sd = kPartSd;
  return out;
}

ExchangeLevel usual_exchange_level() { return {std::log(kUsual_W_per_m2K), kUsualSd, 0}; }

ExchangeLevel exchange_level(const HeatModel& model, const std::vector<const board::Board*>& boards) {
  const auto map = model.problem.map();
  std::vector<double> level;
  double weight = 0, sum = 0;
  for (std::size_t j = 0; j < model.problem.placements.size(); ++j) {
    const auto& placement = model.problem.placements[j];
    const auto* board = boards[placement.board];
    const auto* seat = board ? board->placement(placement.name, 0) : nullptr;
    if (!seat) continue;
    const auto place = estimate(*board, seat->part.value_or(""));
    if (!place) continue;
    const auto own = [&](ParameterMap::Placement which) { return model.theta[map.placement(j, which)]; };
    // The mass beside it is a/b of the placement's own.
    const double beside = std::log1p(std::exp(own(ParameterMap::kToSide) - own(ParameterMap::kFromSide)));
    level.push_back(place->ln_capacity - own(ParameterMap::kTimeConstant) - beside);
    const double w = 1 / (place->own_sd * place->own_sd);
    weight += w;
    sum += w * level.back();
  }
  if (level.empty()) return usual_exchange_level();
  // The textbook range is one more witness.
  const auto usual = usual_exchange_level();
  const double prior = 1 / (usual.sd * usual.sd);
  const double measured = 1 / (1 / weight + kLevelSd * kLevelSd + kWithThicknessSd * kWithThicknessSd);
  return {(prior * usual.ln_W_per_m2K + measured * sum / weight) / (prior + measured), 1 / std::sqrt(prior + measured),
          level.size()};
}

}  // namespace ovenwright::heat
