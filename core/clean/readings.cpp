#include "core/clean/readings.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <map>
#include <optional>

namespace ovenwright::clean {
namespace {

// Ends of the ranges of thermocouple types B, R and S, K, N, J, E, T, and the coldest any of them reads.
// Source: ITS-90 reference functions (NIST Monograph 175).
constexpr double kHottest_C = 1820.5, kColdest_C = -270.5;
constexpr double kSurelyHot_C = 1360, kSurelyCold_C = -195;  // above: the end of type K; below: those of T, E, K, N, J
constexpr double kNoOven_C = 500;                            // no oven and no wave for soldering gets there
// Between these, equal readings set off from the rest are those of a thermocouple in the solder of a wave or between
// two waves; no sentinel is known there. Common practice, no source.
constexpr double kCoolestBetweenWaves_C = 60, kHottestSolder_C = 300;
constexpr std::array kRangeEnds_C = {400.0, 1000.0, 1200.0, 1300.0};
// A curve of a soldering run never gets near these, so a channel between them needs no second look.
constexpr double kUsualLowest_C = -15, kUsualHighest_C = 390;
// A trace cannot move faster than this into a stretch without readings; and a number that stands for 'no reading' lies
// this far off the curve, where a few equal readings at the top of a coarse curve do not.
constexpr double kLeast_C = 20, kFastest_C_per_s = 12;

bool one_of_fixed(double value) {
  // Runs of nines, and the ends of 16-bit counts as such, in tenths and in hundredths.
  constexpr std::array kFixed = {0.0,    999.0,  999.9,  999.99, 9999.0,  9999.9, 99999.0,
                                 327.67, 3276.7, 655.35, 6553.5, 32767.0, 65535.0};
  constexpr std::array kFixedBelow = {-327.68, -3276.8, -32768.0};
  return std::ranges::any_of(kFixed, [&](double fixed) { return std::abs(std::abs(value) - fixed) < 1e-6; }) ||
         std::ranges::any_of(kFixedBelow, [&](double fixed) { return std::abs(value - fixed) < 1e-6; });
}

/// A number that stands for 'no reading', as such or as one in °F or K that was turned into °C.
bool stands_for_nothing(double value_C) {
  return one_of_fixed(value_C) || one_of_fixed(value_C * 1.8 + 32) || one_of_fixed(value_C + 273.15);
}

bool at_surely_end(double value_C) { return value_C >= kSurelyHot_C || value_C <= kSurelyCold_C; }

bool at_range_end(double value_C) {
  return std::ranges::any_of(kRangeEnds_C, [&](double end) { return std::abs(value_C - end) < 0.05; });
}

/// Rows first..last that belong together, and the nearest rows with a number beside them.
struct Group {
  std::size_t first = 0, last = 0;
  double value = 0;
  std::optional<std::size_t> before, after;
};

class Search {
 public:
  explicit Search(Track& track) : track_(track), T_(track.temperature_C), jump_(suspicious_step_C(track)) {}

  void run() {
    remove_where(run::FaultKind::kOpen, [](double v) { return std::isnan(v); });
    remove_where(run::FaultKind::kOverRange, [](double v) { return std::isinf(v); });
    remove_where(run::FaultKind::kDropout,
                 [](double v) { return (v > kHottest_C || v < kColdest_C) && stands_for_nothing(v); });
    remove_where(run::FaultKind::kOverRange, [](double v) { return v > kHottest_C || v < kColdest_C; });
    remove_range_ends();
    remove_fixed_values();
    trim_ends();
  }

 private:
  bool gone(std::size_t row) const { return !gone_.empty() && gone_[row]; }

  void take(run::FaultKind kind, std::size_t first, std::size_t last) {
    if (gone_.empty()) gone_.resize(T_.size());
    for (std::size_t row = first; row <= last; ++row) gone_[row] = true;
    track_.remove(kind, first, last);
  }

  /// Calls what(group) for each group of neighbouring rows that are `same` as its first; where it returns a kind of
  /// fault, the group goes. Cost: O(n).
  template <class Same, class What>
  void each_group(Same same, What what) {
    std::optional<std::size_t> before;
    for (std::size_t i = 0; i < T_.size(); ++i) {
      if (gone(i)) continue;
      Group group{i, i, T_[i], before, {}};
      while (group.last + 1 < T_.size() && !gone(group.last + 1) && same(T_[i], T_[group.last + 1])) ++group.last;
      std::size_t after = group.last + 1;
      while (after < T_.size() && gone(after)) ++after;
      if (after < T_.size()) group.after = after;
      if (const std::optional<run::FaultKind> kind = what(group))
        take(*kind, group.first, group.last);
      else
        before = group.last;
      i = group.last;
    }
  }

  template <class Is>
  void remove_where(run::FaultKind kind, Is is) {
    const auto alike = [&](double a, double b) { return is(a) == is(b); };
    each_group(alike, [&](const Group& g) { return is(g.value) ? std::optional(kind) : std::nullopt; });
  }

  bool jumps_before(const Group& g) const { return g.before && std::abs(T_[*g.before] - T_[g.first]) > jump_; }
  bool jumps_after(const Group& g) const { return g.after && std::abs(T_[*g.after] - T_[g.last]) > jump_; }
  /// Set off from what there is beside it; alone in its channel also counts.
  bool set_off(const Group& g) const { return (!g.before || jumps_before(g)) && (!g.after || jumps_after(g)); }

  /// The curve goes on behind the rows about where it was before them, and they lie far outside of both.
  bool curve_goes_on(const Group& g) const {
    if (!g.before || !g.after) return false;
    const auto t = track_.clock->time_s();
    const double low = std::min(T_[*g.before], T_[*g.after]), high = std::max(T_[*g.before], T_[*g.after]);
    const double off = std::max(jump_, kLeast_C);
    return high - low <= 5 + 6 * (t[*g.after] - t[*g.before]) &&
           (g.value < std::min(low - off, kCoolestBetweenWaves_C) || g.value > std::max(high + off, kHottestSolder_C));
  }

  void remove_range_ends() {
    const auto alike = [](double a, double b) { return at_surely_end(a) == at_surely_end(b); };
    each_group(alike, [&](const Group& g) -> std::optional<run::FaultKind> {
      if (!at_surely_end(g.value)) return std::nullopt;
      if (jumps_before(g) || jumps_after(g) || (!g.before && !g.after)) return run::FaultKind::kOverRange;
      return std::nullopt;
    });
  }

  void remove_fixed_values() {
    std::map<double, std::vector<Group>> short_ones;
    const auto alike = [](double a, double b) { return a == b; };
    each_group(alike, [&](const Group& g) -> std::optional<run::FaultKind> {
      if (!set_off(g)) return std::nullopt;
      if (stands_for_nothing(g.value)) return run::FaultKind::kDropout;
      if (at_range_end(g.value)) return run::FaultKind::kOverRange;
      if (g.value > kNoOven_C && g.last - g.first >= 2) return run::FaultKind::kOverRange;
      if (!curve_goes_on(g)) return std::nullopt;
      if (g.last - g.first >= 2) return run::FaultKind::kDropout;
      short_ones[g.value].push_back(g);
      return std::nullopt;
    });
    for (const auto& [value, places] : short_ones) {
      if (places.size() < 3) continue;
      for (const auto& group : places) take(run::FaultKind::kDropout, group.first, group.last);
    }
  }

  /// A sensor that opens or comes back can leave a sample on the way; in the middle of a trace the search for spikes
  /// finds it, at the ends there is no second neighbour.
  void trim_ends() {
    if (gone_.empty()) return;
    const auto t = track_.clock->time_s();
    for (const bool forward : {true, false}) {
      std::vector<std::size_t> rows;  // the outermost three with a number
      for (std::size_t k = 0; k < T_.size() && rows.size() < 3; ++k) {
        const std::size_t row = forward ? k : T_.size() - 1 - k;
        if (!gone(row)) rows.push_back(row);
      }
      if (rows.size() < 3 || rows[0] == (forward ? 0 : T_.size() - 1)) continue;
      const double limit = std::max(kLeast_C, kFastest_C_per_s * std::abs(t[rows[1]] - t[rows[0]]));
      if (std::abs(T_[rows[0]] - T_[rows[1]]) > limit && std::abs(T_[rows[1]] - T_[rows[2]]) < limit)
        take(kind_beside(rows[0]), rows[0], rows[0]);
    }
  }

  run::FaultKind kind_beside(std::size_t row) const {
    const auto beside = std::ranges::find_if(track_.stretches,
                                             [&](const Stretch& s) { return s.first == row + 1 || s.last + 1 == row; });
    return beside == track_.stretches.end() ? run::FaultKind::kOpen : beside->kind;
  }

  Track& track_;
  const std::vector<double>& T_;
  const double jump_;
  std::vector<bool> gone_;
};

}  // namespace

void find_bad_readings(Track& track) {
  const auto& overview = track.overview;
  const bool constant = overview.lowest == overview.highest;
  if (overview.all_finite && overview.largest_step <= suspicious_step_C(track) && !constant &&
      overview.lowest > kUsualLowest_C && overview.highest < kUsualHighest_C)
    return;
  Search(track).run();
}

}  // namespace ovenwright::clean
