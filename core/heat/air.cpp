#include "core/heat/air.h"

#include <algorithm>
#include <cmath>

namespace ovenwright::heat {
namespace {

constexpr double kGapSupply = 0.2, kOutsideSupply = 2.0, kGapExchange = 0.4;
constexpr double kUnsetCooling_C = 50;
constexpr double kSmoothing_mm = 30, kViewDistance_mm = 40, kViewReach_mm = 400;
constexpr double kReference_K = 473.15;

/// What a grid point lies in: a zone, the gap after a zone, a tunnel, or outside.
struct Region {
  enum class Kind { kZone, kGap, kTunnel, kOutside } kind = Kind::kOutside;
  std::size_t zone = 0;
};

Region region_at(const oven::Oven& oven, double x_mm) {
  if (x_mm < 0 || x_mm > oven.length_mm()) return {Region::Kind::kOutside, 0};
  double start_mm = oven.entrance_mm;
  if (x_mm < start_mm) return {Region::Kind::kTunnel, 0};
  for (std::size_t z = 0; z < oven.zones.size(); ++z) {
    const double end_mm = start_mm + oven.zones[z].length_mm;
    if (x_mm <= end_mm) return {Region::Kind::kZone, z};
    start_mm = end_mm + oven.zones[z].gap_after_mm;
    if (x_mm < start_mm) return {z + 1 < oven.zones.size() ? Region::Kind::kGap : Region::Kind::kTunnel, z};
  }
  return {Region::Kind::kTunnel, oven.zones.size()};
}

/// Tridiagonal system with one factorisation for many right sides (Thomas).
class Tridiagonal {
 public:
  Tridiagonal(double lower, double upper, const std::vector<double>& diagonal)
      : lower_(lower), factor_(diagonal.size()), inverse_(diagonal.size()) {
    for (std::size_t i = 0; i < diagonal.size(); ++i) {
      const double pivot = diagonal[i] - (i > 0 ? lower * factor_[i - 1] : 0);
      inverse_[i] = 1 / pivot;
      factor_[i] = upper * inverse_[i];
    }
  }
  void solve(std::vector<double>& b) const {
    const std::size_t n = factor_.size();
    b[0] *= inverse_[0];
    for (std::size_t i = 1; i < n; ++i) b[i] = (b[i] - lower_ * b[i - 1]) * inverse_[i];
    for (std::size_t i = n - 1; i-- > 0;) b[i] -= factor_[i] * b[i + 1];
  }

 private:
  double lower_;
  std::vector<double> factor_, inverse_;
};

std::vector<double> smoothed(const std::vector<double>& y) {
  const auto reach = static_cast<std::ptrdiff_t>(kSmoothing_mm / 2 / AirField::kStep_mm);
  const auto n = static_cast<std::ptrdiff_t>(y.size());
  std::vector<double> out(y.size());
  for (std::ptrdiff_t i = 0; i < n; ++i) {
    double sum = 0;
    for (std::ptrdiff_t k = -reach; k <= reach; ++k)
      sum += y[static_cast<std::size_t>(std::clamp<std::ptrdiff_t>(i + k, 0, n - 1))];
    out[static_cast<std::size_t>(i)] = sum / static_cast<double>(2 * reach + 1);
  }
  return out;
}

/// View factor of a strip seen across a distance: d²/(2 (d² + x²)^1.5), normalised on the grid.
std::vector<double> seen(const std::vector<double>& y) {
  const auto reach = static_cast<std::ptrdiff_t>(kViewReach_mm / AirField::kStep_mm);
  std::vector<double> weight(static_cast<std::size_t>(2 * reach + 1));
  double total = 0;
  for (std::ptrdiff_t k = -reach; k <= reach; ++k) {
    const double x_mm = static_cast<double>(k) * AirField::kStep_mm;
    total += weight[static_cast<std::size_t>(k + reach)] =
        1 / std::pow(kViewDistance_mm * kViewDistance_mm + x_mm * x_mm, 1.5);
  }
  const auto n = static_cast<std::ptrdiff_t>(y.size());
  std::vector<double> out(y.size());
  for (std::ptrdiff_t i = 0; i < n; ++i) {
    double sum = 0;
    for (std::ptrdiff_t k = -reach; k <= reach; ++k)
      sum += weight[static_cast<std::size_t>(k + reach)] *
             y[static_cast<std::size_t>(std::clamp<std::ptrdiff_t>(i + k, 0, n - 1))];
    out[static_cast<std::size_t>(i)] = sum / total;
  }
  return out;
}

}  // namespace

ZoneSetpoints zone_setpoints(const oven::Oven& oven, const oven::Recipe& recipe) {
  ZoneSetpoints out;
  std::size_t heat = 0, cool = 0;
  for (const auto& zone : oven.zones) {
    if (zone.kind == oven::ZoneKind::kHeat && heat < recipe.top_C.size() && heat < recipe.bottom_C.size()) {
      out.mean_C.push_back((recipe.top_C[heat] + recipe.bottom_C[heat]) / 2);
      out.difference_C.push_back(recipe.top_C[heat] - recipe.bottom_C[heat]);
      ++heat;
    } else {
      out.mean_C.push_back(cool < recipe.cooling_C.size() ? recipe.cooling_C[cool] : kUnsetCooling_C);
      out.difference_C.push_back(0);
      ++cool;
    }
  }
  return out;
}

AirField::AirField(const oven::Oven& oven, const ZoneSetpoints& setpoints, double ambient_C, const AirParameters& p,
                   bool with_gradient)
    : n_(static_cast<std::size_t>((oven.length_mm() + 2 * kMargin_mm) / kStep_mm) + 2), zones_(oven.zones.size()) {
  std::vector<Region> region(n_);
  for (std::size_t i = 0; i < n_; ++i) region[i] = region_at(oven, static_cast<double>(i) * kStep_mm - kMargin_mm);

  // Supply: temperature and rate at each grid point.
  const double tunnel = std::exp(p.ln_tunnel_supply);
  const double up = std::exp(p.ln_mixing_upstream_mm), down = std::exp(p.ln_mixing_downstream_mm);
  std::vector<double> rate(n_), supply(n_), difference(n_), panel(n_);
  for (std::size_t i = 0; i < n_; ++i) {
    const auto [kind, z] = region[i];
    const auto value = [&](std::size_t k) { return setpoints.mean_C[k] + p.zone_offset_C[k]; };
    switch (kind) {
      case Region::Kind::kZone:
        rate[i] = 1;
        supply[i] = value(z);
        difference[i] = setpoints.difference_C[z];
        panel[i] = setpoints.mean_C[z];
        break;
      case Region::Kind::kGap:
        rate[i] = kGapSupply;
        supply[i] = (value(z) + value(z + 1)) / 2;
        difference[i] = (setpoints.difference_C[z] + setpoints.difference_C[z + 1]) / 2;
        panel[i] = (setpoints.mean_C[z] + setpoints.mean_C[z + 1]) / 2;
        break;
      default:
        rate[i] = kind == Region::Kind::kTunnel ? tunnel : kOutsideSupply;
        supply[i] = panel[i] = ambient_C;
    }
  }

  // (−D δ² + u δ + β) A = β Σ with central differences; ambient far outside.
  const double mixing = up * down / (kStep_mm * kStep_mm), drift = (down - up) / (2 * kStep_mm);
  std::vector<double> diagonal(n_);
  for (std::size_t i = 0; i < n_; ++i) diagonal[i] = 2 * mixing + rate[i];
  const double lower = -mixing - drift, upper = -mixing + drift;
  const Tridiagonal system(lower, upper, diagonal);
  const auto solve = [&](std::vector<double> b, double end_value) {
    b.front() -= lower * end_value;
    b.back() -= upper * end_value;
    system.solve(b);
    return b;
  };
  const auto times_rate = [&](const std::vector<double>& y) {
    std::vector<double> b(n_);
    for (std::size_t i = 0; i < n_; ++i) b[i] = rate[i] * y[i];
    return b;
  };
  air_ = solve(times_rate(supply), ambient_C);
  difference_ = solve(times_rate(difference), 0);

  const std::size_t width = 3 + zones_;
  if (with_gradient) {
    // Derivatives of the solution: M dA = −dM A + d(β Σ), same factorisation.
    const auto sensitivity = [&](const std::vector<double>& field, const std::vector<double>& source, double end_value,
                                 int which) {
      std::vector<double> b(n_, 0.0);
      for (std::size_t i = 0; i < n_; ++i) {
        const double before = i > 0 ? field[i - 1] : end_value, after = i + 1 < n_ ? field[i + 1] : end_value;
        const double second = (before - 2 * field[i] + after) * mixing, first = (after - before) / (2 * kStep_mm);
        if (which == 0) b[i] = second + up * first;
        if (which == 1) b[i] = second - down * first;
        if (which == 2 && region[i].kind == Region::Kind::kTunnel) b[i] = tunnel * (source[i] - field[i]);
      }
      system.solve(b);
      return b;
    };
    air_columns_.assign(n_ * width, 0.0);
    difference_columns_.assign(n_ * 3, 0.0);
    for (int k = 0; k < 3; ++k) {
      const auto a = sensitivity(air_, supply, ambient_C, k), d = sensitivity(difference_, difference, 0, k);
      for (std::size_t i = 0; i < n_; ++i) {
        air_columns_[i * width + static_cast<std::size_t>(k)] = a[i];
        difference_columns_[i * 3 + static_cast<std::size_t>(k)] = d[i];
      }
    }
    for (std::size_t z = 0; z < zones_; ++z) {
      std::vector<double> b(n_, 0.0);
      for (std::size_t i = 0; i < n_; ++i) {
        if (region[i].kind == Region::Kind::kZone && region[i].zone == z) b[i] = rate[i];
        if (region[i].kind == Region::Kind::kGap && (region[i].zone == z || region[i].zone + 1 == z))
          b[i] = rate[i] / 2;
      }
      system.solve(b);
      for (std::size_t i = 0; i < n_; ++i) air_columns_[i * width + 3 + z] = b[i];
    }
  }

  // Exchange: exp of the zone's own and a slope along the oven; less in gaps and tunnels; smoothed.
  const auto slope_of = [&](std::size_t z) {
    return zones_ > 1 ? 2.0 * static_cast<double>(z) / static_cast<double>(zones_ - 1) - 1 : 0.0;
  };
  std::vector<double> level(zones_);
  for (std::size_t z = 0; z < zones_; ++z)
    level[z] = std::exp(p.zone_ln_exchange[z] + p.exchange_slope * slope_of(z) +
                        (oven.zones[z].kind == oven::ZoneKind::kCool ? p.ln_exchange_cooling : 0));
  std::vector<std::vector<double>> part(with_gradient ? width : 0, std::vector<double>(n_, 0.0));
  std::vector<double> exchange(n_);
  const auto add_zone = [&](std::size_t i, std::size_t z, double share) {
    const double g = share * level[z];
    exchange[i] += g;
    if (!with_gradient) return;
    part[0][i] += g * slope_of(z);
    if (oven.zones[z].kind == oven::ZoneKind::kCool) part[1][i] += g;
    part[3 + z][i] += g;
  };
  const double outside = std::exp(p.ln_exchange_tunnel);
  for (std::size_t i = 0; i < n_; ++i) {
    const auto [kind, z] = region[i];
    if (kind == Region::Kind::kZone) {
      add_zone(i, z, 1);
    } else if (kind == Region::Kind::kGap) {
      add_zone(i, z, kGapExchange / 2);
      add_zone(i, z + 1, kGapExchange / 2);
    } else {
      exchange[i] = outside;
      if (with_gradient) part[2][i] = outside;
    }
  }
  exchange_ = smoothed(exchange);
  exchange_columns_.assign(part.size() * n_, 0.0);
  for (std::size_t k = 0; k < part.size(); ++k) {
    const auto column = smoothed(part[k]);
    for (std::size_t i = 0; i < n_; ++i) exchange_columns_[i * width + k] = column[i];
  }

  for (double& x : panel) {
    const double square = (x + 273.15) * (x + 273.15);
    x = square * square / (4 * kReference_K * kReference_K * kReference_K);
  }
  panel_ = seen(panel);
}

AirField::Sample AirField::at(double position_mm) const {
  Sample s{};
  const double at = std::clamp((position_mm + kMargin_mm) / kStep_mm, 0.0, static_cast<double>(n_ - 1) - 1e-9);
  s.index = static_cast<std::size_t>(at);
  s.share = at - static_cast<double>(s.index);
  const auto slope = [&](const std::vector<double>& y) { return (y[s.index + 1] - y[s.index]) / kStep_mm; };
  s.air_C = at_(air_, s);
  s.air_slope = slope(air_);
  s.difference_C = at_(difference_, s);
  s.difference_slope = slope(difference_);
  s.exchange = at_(exchange_, s);
  s.exchange_slope = slope(exchange_);
  s.panel_K = at_(panel_, s);
  s.panel_slope = slope(panel_);
  return s;
}

double AirField::at_(const std::vector<double>& grid, const Sample& s) const {
  return grid[s.index] + s.share * (grid[s.index + 1] - grid[s.index]);
}

void AirField::gradient_(const std::vector<double>& columns, std::size_t width, const Sample& s,
                         std::span<double> out) const {
  const double* below = &columns[s.index * width];
  const double* above = below + width;
  for (std::size_t k = 0; k < width; ++k) out[k] = below[k] + s.share * (above[k] - below[k]);
}

void AirField::air_gradient(const Sample& s, std::span<double> out) const {
  gradient_(air_columns_, 3 + zones_, s, out);
}
void AirField::difference_gradient(const Sample& s, std::span<double> out) const {
  gradient_(difference_columns_, 3, s, out);
}
void AirField::exchange_gradient(const Sample& s, std::span<double> out) const {
  gradient_(exchange_columns_, 3 + zones_, s, out);
}

}  // namespace ovenwright::heat
