#include "core/measure/slope.h"

#include <cmath>

#include "core/measure/running_fit.h"

namespace ovenwright::measure {
namespace {

constexpr std::size_t kFewest = 3;  // samples in a window
constexpr double kEqual = 1e-9;     // °C/s
constexpr double kInterval = 0.1;   // of the sample interval: how far a window's ends may be off
constexpr double kWaveWindow_s = 1;

/// How far a window's ends may be off. What a decimal clock has exactly on the edge counts, whatever its doubles say.
double edge_slack_s(const Curve& curve) {
  constexpr double kRounding_s = 1e-9;
  return kInterval * curve.interval_s() + kRounding_s;
}

/// Samples first <= i < end whose windows lie within a stretch, to a tenth of the sample interval.
struct Centres {
  std::size_t first, end;
};
Centres centres_within(const Curve& curve, Stretch stretch, double half_s, double slack_s) {
  const auto time_s = curve.trace().time_s();
  const auto begin = time_s.begin() + static_cast<std::ptrdiff_t>(stretch.first);
  const auto end = time_s.begin() + static_cast<std::ptrdiff_t>(stretch.last) + 1;
  const double start_s = time_s[stretch.first] - slack_s, end_s = time_s[stretch.last] + slack_s;
  const auto first = std::partition_point(begin, end, [&](double t) { return t - half_s < start_s; });
  const auto last = std::partition_point(first, end, [&](double t) { return t + half_s <= end_s; });
  return {static_cast<std::size_t>(first - time_s.begin()), static_cast<std::size_t>(last - time_s.begin())};
}

/// What no slope of a window centred in a block can exceed, in either direction.
///
/// With R the spread of temperatures in the window, |Σ(t − t̄)(T − c)| <= R/2·√(n·Σ(t − t̄)²), so |slope| <= R/2 over the
/// standard deviation of the times; and n samples at intervals of at least a and at most b that reach over a length l
/// have one of at least (a/b)·l/√12.
class SlopeBounds {
 public:
  SlopeBounds(const Curve& curve, double half_s, double slack_s) : curve_(&curve), reach_s_(half_s + slack_s) {
    const auto& clock = *curve.trace().clock();
    const double length_s = 2 * half_s - 2 * clock.longest_interval_s();
    if (length_s > 0)
      per_spread_ = std::sqrt(3.0) * clock.longest_interval_s() / (clock.shortest_interval_s() * length_s);
  }
  double operator()(std::size_t block) {
    if (!std::isfinite(per_spread_)) return per_spread_;
    const auto& blocks = curve_->blocks();
    const double from_s = curve_->time_s(blocks.begin(block)) - reach_s_;
    const double to_s = curve_->time_s(blocks.end(block)) + reach_s_;
    while (curve_->time_s(blocks.end(first_)) < from_s) ++first_;
    double lowest = curve_->block_lowest_C(block), highest = curve_->block_highest_C(block);
    for (std::size_t b = first_; b < blocks.count() && curve_->time_s(blocks.begin(b)) <= to_s; ++b) {
      lowest = std::min(lowest, curve_->block_lowest_C(b));
      highest = std::max(highest, curve_->block_highest_C(b));
    }
    return per_spread_ * (highest - lowest);
  }

 private:
  const Curve* curve_;
  double reach_s_;
  double per_spread_ = std::numeric_limits<double>::infinity();
  std::size_t first_ = 0;  ///< the first block in reach; blocks are asked for in order
};

/// The search itself, with a callable for the temperature of a sample so that an unperturbed trace costs no arithmetic.
template <class Temperature>
class Search {
 public:
  Search(const Curve& curve, const SlopeWindows& windows, Temperature temperature)
      : curve_(&curve),
        windows_(&windows),
        temperature_(temperature),
        slack_s_(edge_slack_s(curve)),
        sign_(windows.fall ? -1 : 1),
        ranged_(std::isfinite(windows.lowest_C) || std::isfinite(windows.highest_C)),
        centres_(centres_within(curve, windows.stretch, windows.over_s / 2, slack_s_)),
        fit_(curve.trace().time_s(), temperature, windows.over_s / 2 + slack_s_) {}

  std::optional<Slope> steepest() {
    if (centres_.first >= centres_.end) return std::nullopt;
    const auto& blocks = curve_->blocks();
    const std::size_t first = blocks.block_of(centres_.first), last = blocks.block_of(centres_.end - 1);
    SlopeBounds bounds(*curve_, windows_->over_s / 2, slack_s_);
    std::vector<double> bound;
    for (std::size_t block = first; block <= last; ++block) bound.push_back(bounds(block));
    const double reached = somewhere_steep(first, bound);
    for (std::size_t block = first; block <= last; ++block)
      if (in_reach(block) && bound[block - first] >= std::max(reached, best_)) scan(block);
    if (!found_) return std::nullopt;
    return fitted(*curve_, found_->centre, found_->first, found_->last);
  }

 private:
  bool in_range(double T) const {
    return !ranged_ || (above_by(T, windows_->lowest_C) >= 0 && above_by(T, windows_->highest_C) <= 0);
  }
  bool in_reach(std::size_t block) const {
    return !ranged_ || (above_by(curve_->block_highest_C(block), windows_->lowest_C) >= 0 &&
                        above_by(curve_->block_lowest_C(block), windows_->highest_C) <= 0);
  }
  Centres centres_of(std::size_t block) const {
    const auto& blocks = curve_->blocks();
    const std::size_t end = block + 1 == blocks.count() ? curve_->size() : blocks.end(block);
    return {std::max(blocks.begin(block), centres_.first), std::min(end, centres_.end)};
  }

  /// The slope of one window in the most promising block: others that cannot reach it need no look.
  double somewhere_steep(std::size_t first, const std::vector<double>& bound) const {
    constexpr double kNone = -std::numeric_limits<double>::infinity();
    std::size_t most = bound.size();
    for (std::size_t k = 0; k < bound.size(); ++k)
      if (std::isfinite(bound[k]) && in_reach(first + k) && (most == bound.size() || bound[k] > bound[most])) most = k;
    if (most == bound.size()) return kNone;
    const auto [begin, end] = centres_of(first + most);
    const std::size_t centre = begin + (end - begin) / 2;
    if (!in_range(temperature_(centre))) return kNone;
    RunningFit<Temperature> fit(curve_->trace().time_s(), temperature_, windows_->over_s / 2 + slack_s_);
    fit.move_to(centre);
    if (fit.count() < kFewest) return kNone;
    return sign_ * fit.numerator() / fit.denominator() - kEqual;
  }

  void scan(std::size_t block) {
    const auto [begin, end] = centres_of(block);
    for (std::size_t i = begin; i < end; ++i) {
      if (ranged_ && !in_range(temperature_(i))) continue;
      fit_.move_to(i);
      if (fit_.count() < kFewest) continue;
      const double numerator = sign_ * fit_.numerator(), denominator = fit_.denominator();
      if (found_ && !(numerator > (best_ + kEqual) * denominator)) continue;
      best_ = numerator / denominator;
      found_ = Slope{best_, i, fit_.first(), fit_.last(), 0};
    }
  }

  const Curve* curve_;
  const SlopeWindows* windows_;
  Temperature temperature_;
  double slack_s_, sign_;
  bool ranged_;
  Centres centres_;
  RunningFit<Temperature> fit_;
  double best_ = -std::numeric_limits<double>::infinity();
  std::optional<Slope> found_;
};

}  // namespace

Slope fitted(const Curve& curve, std::size_t centre, std::size_t first, std::size_t last) {
  const double n = static_cast<double>(last - first + 1);
  const double zero_s = curve.time_s(centre), zero_C = curve.at(centre);
  double mean_s = 0, mean_C = 0;
  for (std::size_t j = first; j <= last; ++j) {
    mean_s += curve.time_s(j) - zero_s;
    mean_C += curve.at(j) - zero_C;
  }
  mean_s /= n;
  mean_C /= n;
  double squares = 0, products = 0;
  for (std::size_t j = first; j <= last; ++j) {
    const double t = curve.time_s(j) - zero_s - mean_s;
    squares += t * t;
    products += t * (curve.at(j) - zero_C - mean_C);
  }
  return {products / squares, centre, first, last, squares};
}

std::optional<Slope> steepest(const Curve& curve, const SlopeWindows& windows) {
  const auto samples = curve.trace().temperature_C();
  if (curve.perturbation() == Perturbation{})
    return Search(curve, windows, [samples](std::size_t i) { return samples[i]; }).steepest();
  const auto perturbation = curve.perturbation();
  return Search(curve, windows, [samples, perturbation](std::size_t i) { return perturbation(samples[i]); }).steepest();
}

std::vector<double> wave_slopes(const Curve& curve) {
  const double half_s = kWaveWindow_s / 2;
  const auto within = centres_within(curve, whole(curve), half_s, edge_slack_s(curve));
  std::vector<double> slopes(curve.size(), std::numeric_limits<double>::quiet_NaN());
  RunningFit fit(
      curve.trace().time_s(), [&curve](std::size_t i) { return curve.at(i); }, half_s + edge_slack_s(curve));
  for (std::size_t i = 1; i < curve.last(); ++i) {
    fit.move_to(i);
    if (fit.count() < kFewest) {
      slopes[i] = fitted(curve, i, i - 1, i + 1).per_s;
    } else if (i >= within.first && i < within.end) {
      slopes[i] = fit.numerator() / fit.denominator();
    }
  }
  return slopes;
}

}  // namespace ovenwright::measure
