#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>
#include <span>
#include <string>

#include "core/clean/suspects.h"
#include "core/run/noise.h"
#include "core/units/phrase.h"

namespace ovenwright::clean {
namespace {

constexpr double kStuck_s = 20, kOtherMoves_C = 10;
constexpr double kNearStart_C = 5, kBeenHot_C = 30;
constexpr double kAcceleration_C_per_s2 = 0.5;
constexpr std::size_t kGentleSamples = 3;

/// Whether the trace spans 10 °C between two times.
bool moves(const run::Trace& trace, double from_s, double to_s) {
  const auto t = trace.time_s();
  const auto T = trace.temperature_C();
  double low = std::numeric_limits<double>::infinity(), high = -low;
  for (auto i = static_cast<std::size_t>(std::ranges::lower_bound(t, from_s) - t.begin()); i < t.size() && t[i] <= to_s;
       ++i) {
    low = std::min(low, T[i]);
    high = std::max(high, T[i]);
  }
  return high - low >= kOtherMoves_C;
}

/// Tells rest from trouble on one trace; asked about stretches in the order of time.
class Rest {
 public:
  explicit Rest(const run::Trace& trace) : t_(trace.time_s()), T_(trace.temperature_C()) {}

  /// The trace comes to rest and leaves again as a curve does that is flatter than its digits are fine: by no more than
  /// one digit a sample and what 0.5 °C/s² make of it. Or it is back at rest near where it began, having been hot.
  bool honest(std::size_t first, std::size_t last) {
    for (; looked_at_ <= first; ++looked_at_) hottest_C_ = std::max(hottest_C_, T_[looked_at_]);
    if (std::abs(T_[last] - T_[0]) < kNearStart_C && hottest_C_ > T_[last] + kBeenHot_C) return true;
    if (!step_C_) step_C_ = 1.01 * run::resolution_C(T_);
    bool gentle = *step_C_ > 0 && last + 1 < T_.size();
    for (std::size_t k = 1; k <= kGentleSamples; ++k) {
      if (first >= k) gentle = gentle && gently(first - k, first, k);
      if (last + k < T_.size()) gentle = gentle && gently(last, last + k, k);
    }
    return gentle;
  }

 private:
  bool gently(std::size_t from, std::size_t to, std::size_t samples) const {
    const double away_s = t_[to] - t_[from];
    return std::abs(T_[to] - T_[from]) <=
           static_cast<double>(samples) * *step_C_ + kAcceleration_C_per_s2 / 2 * away_s * away_s;
  }

  std::span<const double> t_, T_;
  std::size_t looked_at_ = 0;
  double hottest_C_ = -std::numeric_limits<double>::infinity();
  std::optional<double> step_C_;  ///< one digit, once it is needed
};

/// Stretches of equal samples of 20 s or more, by first and last sample.
template <class Found>
void each_still_stretch(const run::Trace& trace, std::size_t stride, Found found) {
  const auto t = trace.time_s();
  const auto T = trace.temperature_C();
  for (std::size_t i = 0; i + stride < T.size();) {
    if (T[i] != T[i + stride]) {
      i += stride;
      continue;
    }
    std::size_t first = i, last = i;
    while (first > 0 && T[first - 1] == T[i]) --first;
    while (last + 1 < T.size() && T[last + 1] == T[i]) ++last;
    if (t[last] - t[first] >= kStuck_s) found(first, last);
    i = std::max(last + 1, i + 1);
  }
}

}  // namespace

void flag_stuck(run::Run& run) {
  const run::Clock* clock = nullptr;
  std::size_t stride = 1;
  for (auto& channel : run.channels) {
    if (!channel.trace) continue;
    const auto& trace = *channel.trace;
    if (trace.clock().get() != clock) {
      clock = trace.clock().get();
      // Any stretch of 20 s holds two neighbours of samples that are this far apart.
      stride = static_cast<std::size_t>(std::clamp(kStuck_s / (2 * clock->longest_interval_s()), 1.0, 1000.0));
    }
    const auto t = trace.time_s();
    Rest rest(trace);
    each_still_stretch(trace, stride, [&](std::size_t first, std::size_t last) {
      const bool other_moves = std::ranges::any_of(run.channels, [&](const run::Channel& other) {
        return &other != &channel && other.trace && moves(*other.trace, t[first], t[last]);
      });
      if (!other_moves || rest.honest(first, last)) return;
      auto digits = std::to_string(trace.temperature_C()[first]);
      digits.resize(digits.find('.') + 2);
      channel.faults.push_back({run::FaultKind::kStuck,
                                t[first],
                                t[last],
                                run::FaultAction::kFlagged,
                                say(Phrase::kStandsAt, {digits}),
                                {}});
    });
  }
}

}  // namespace ovenwright::clean
