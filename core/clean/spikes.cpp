#include "core/clean/spikes.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <queue>

#include "core/run/median.h"
#include "core/run/noise.h"

namespace ovenwright::clean {
namespace {

constexpr std::size_t kNone = std::numeric_limits<std::size_t>::max();
constexpr double kLeast_C = 5, kSigmas = 8, kRate_C_per_s = 6;
constexpr double kLikewise = 0.25;
constexpr std::size_t kAround = 3;
constexpr double kQueued = 1e-9;  // keeps a candidate that the neighbourhood puts last above 0
// A wave takes a joint up this far and fast, and lets it cool slowly.
constexpr double kWaveStep_C = 30, kWaveRate_C_per_s = 10, kWaveRise_s = 1.5, kWaveLater_s = 3, kWaveNear_s = 15;
constexpr double kCoarse_s = 1, kOtherWaveStep_C = 10;

/// The largest way that a trace goes off the straight line between the samples of two rows, signed as `sign`.
double off_line(const Track& track, std::size_t before, std::size_t after, std::size_t left, std::size_t right,
                double sign) {
  const auto t = track.clock->time_s();
  const auto& T = track.temperature_C;
  double farthest = 0;
  for (std::size_t row = before + 1; row < after; ++row) {
    const double line = std::lerp(T[left], T[right], (t[row] - t[left]) / (t[right] - t[left]));
    const double off = sign * (T[row] - line);
    if (off > farthest) farthest = off;  // NaN stays out
  }
  return farthest;
}

/// The largest way that a trace goes off its line between two rows of its clock, signed as `sign`. The line runs
/// between samples two rows farther out, so that its own trouble beside the rows does not bend it; and, where that is
/// more, between samples at about one height beside the rows, which shows a dip between two waves.
double off_line(const Track& track, std::size_t before, std::size_t after, double sign) {
  const auto t = track.clock->time_s();
  const auto& T = track.temperature_C;
  const std::size_t left = before - std::min<std::size_t>(before, 2), right = std::min(after + 2, t.size() - 1);
  const double off = off_line(track, before, after, left, right, sign);
  const double near = off_line(track, before, after, before, after, sign);
  const double differ = std::abs(T[after] - T[before]);
  const bool level = near > differ && differ <= kLeast_C + kRate_C_per_s * (t[after] - t[before]);
  return level ? std::max(off, near) : off;
}

/// The rows of a track's clock around an interval: the last at or before from_s, the first at or after to_s.
std::pair<std::size_t, std::size_t> rows_around(const Track& track, double from_s, double to_s) {
  const auto t = track.clock->time_s();
  const auto after_from = std::upper_bound(t.begin(), t.end(), from_s);
  const auto to = std::lower_bound(t.begin(), t.end(), to_s);
  if (after_from == t.begin() || to == t.end()) return {kNone, kNone};
  return {static_cast<std::size_t>(after_from - t.begin()) - 1, static_cast<std::size_t>(to - t.begin())};
}

/// A jump up behind sample i that the trace keeps at least half of for 3 s: no spike, a wave reached the joint.
bool keeps_a_step_up(std::span<const double> t, std::span<const double> T, std::size_t i, double least_C) {
  double step = 0, over_s = 1;
  for (std::size_t k = i + 1; k < t.size() && (k == i + 1 || t[k] - t[i] <= kWaveRise_s); ++k) {
    if (!(T[k] - T[i] > step)) continue;
    step = T[k] - T[i];
    over_s = t[k] - t[i];
  }
  if (i < 2 || step < least_C || step < kWaveRate_C_per_s * over_s) return false;
  const auto later = std::lower_bound(t.begin() + static_cast<std::ptrdiff_t>(i), t.end(), t[i] + kWaveLater_s);
  const auto from = std::max(static_cast<std::size_t>(later - t.begin()), i + 3) - 1;
  if (from + 2 >= t.size()) return false;
  const double kept = std::min({T[from], T[from + 1], T[from + 2]}) - std::max({T[i - 2], T[i - 1], T[i]});
  return kept > step / 2;  // the samples before count too: coming back from a spike downwards is no step up
}

/// Whether a trace keeps a step up that begins within 3 s of an interval.
bool steps_up_near(const Track& track, double from_s, double to_s, double size_C) {
  const auto t = track.clock->time_s();
  const auto [first, last] =
      rows_around(track, std::max(from_s - kWaveLater_s, t.front()), std::min(to_s + kWaveLater_s, t.back()));
  if (first == kNone) return false;
  for (std::size_t row = first; row < last; ++row)
    if (keeps_a_step_up(t, track.temperature_C, row, std::max(kOtherWaveStep_C, kLikewise * size_C))) return true;
  return false;
}

struct Candidate {
  double off = 0;         // how far the nearer of its samples lies off what is around it; 0: no spike
  std::size_t first = 0;  // good sample, by its place among them
  bool pair = false;
  friend bool operator<(const Candidate& a, const Candidate& b) {
    if (a.off != b.off) return a.off < b.off;
    if (a.first != b.first) return a.first > b.first;
    return a.pair && !b.pair;
  }
};

/// The search on one track: its good samples as a linked list, the worst candidate first.
class Search {
 public:
  Search(std::span<Track> tracks, std::size_t which, bool keep) : tracks_(tracks), track_(tracks[which]), keep_(keep) {}

  void run() {
    gather();
    if (rows_.size() < 3 || !any_suspicious()) return;
    limit_ = std::max({kLeast_C, kRate_C_per_s * track_.clock->median_interval_s(), kSigmas * run::noise_C(t_, T_)});
    link();
    while (!queue_.empty()) {
      const auto worst = queue_.top();
      queue_.pop();
      const auto now = judged(worst.first, worst.pair);
      if (now.off < worst.off) {  // its neighbours went since
        if (now.off > 0) queue_.push(now);
      } else if (!moves_likewise(now)) {
        take(now);
      }
    }
  }

 private:
  void gather() {
    const auto t = track_.clock->time_s();
    for (std::size_t row = 0; row < t.size(); ++row) {
      if (std::isnan(track_.temperature_C[row])) continue;
      rows_.push_back(row);
      t_.push_back(t[row]);
      T_.push_back(track_.temperature_C[row]);
    }
  }

  bool steps_after(std::size_t i) const { return std::abs(T_[i + 1] - T_[i]) > suspicious_; }

  bool any_suspicious() {
    suspicious_ = suspicious_step_C(track_);
    for (std::size_t i = 0; i + 1 < T_.size(); ++i)
      if (steps_after(i)) return true;
    return false;
  }

  void link() {
    const std::size_t n = T_.size();
    before_.resize(n);
    after_.resize(n);
    for (std::size_t i = 0; i < n; ++i) {
      before_[i] = i > 0 ? i - 1 : kNone;
      after_[i] = i + 1 < n ? i + 1 : kNone;
    }
    for (std::size_t i = 0; i + 1 < n; ++i)
      if (steps_after(i) && keeps_a_step_up(t_, T_, i, kWaveStep_C)) waves_s_.push_back(t_[i]);
    // A single spike has such a step on at least one side, a pair before or behind it.
    for (std::size_t i = 0; i + 1 < n; ++i)
      if (steps_after(i)) look_around(i);
  }

  void look_around(std::size_t i) {
    for (const std::size_t at : {before(i), i, after(i)}) {
      if (at == kNone) continue;
      for (const bool pair : {false, true}) {
        const auto candidate = judged(at, pair);
        if (candidate.off > 0) queue_.push(candidate);
      }
    }
  }

  std::size_t before(std::size_t i) const { return i == kNone ? kNone : before_[i]; }
  std::size_t after(std::size_t i) const { return i == kNone ? kNone : after_[i]; }

  /// How far off the samples are where they are spikes; 0 where not.
  Candidate judged(std::size_t first, bool pair) const {
    Candidate candidate{0, first, pair};
    const std::size_t last = pair ? after(first) : first;
    const std::size_t left = before(first), right = after(last);
    if (gone(first) || left == kNone || right == kNone || in_a_wave(t_[first])) return candidate;
    const double h = track_.clock->median_interval_s();
    const double nearest = std::min(t_[first] - t_[left], t_[right] - t_[last]);
    const double limit = nearest > 3 * h ? std::max(limit_, kRate_C_per_s * nearest) : limit_;
    const double differ = std::abs(T_[right] - T_[left]);
    if (differ > kLeast_C + kRate_C_per_s * (t_[right] - t_[left])) return candidate;
    double off = std::numeric_limits<double>::infinity();
    for (const std::size_t i : {first, last}) {
      const double line = std::lerp(T_[left], T_[right], (t_[i] - t_[left]) / (t_[right] - t_[left]));
      off = std::min(off, std::abs(T_[i] - line));
    }
    if (off > limit && off > differ) candidate.off = std::min(off, off_neighbourhood(first, last)) + kQueued;
    return candidate;
  }

  /// Off the median of the three samples before and behind, so that a good sample between two spikes comes after them.
  double off_neighbourhood(std::size_t first, std::size_t last) const {
    std::array<double, 2 * kAround> around{};
    std::size_t n = 0;
    for (std::size_t i = before(first); i != kNone && n < kAround; i = before(i)) around[n++] = T_[i];
    const std::size_t behind = n + kAround;
    for (std::size_t i = after(last); i != kNone && n < behind; i = after(i)) around[n++] = T_[i];
    const double middle = run::median(std::span(around).first(n));
    return std::min(std::abs(T_[first] - middle), std::abs(T_[last] - middle));
  }

  bool in_a_wave(double time_s) const {
    const auto wave = std::ranges::lower_bound(waves_s_, time_s - kWaveNear_s);
    return wave != waves_s_.end() && *wave <= time_s + kWaveNear_s;
  }

  bool gone(std::size_t i) const { return std::isnan(track_.temperature_C[rows_[i]]) || (!kept_.empty() && kept_[i]); }

  bool moves_likewise(const Candidate& spike) const {
    const std::size_t last = spike.pair ? after_[spike.first] : spike.first;
    const std::size_t left = before_[spike.first], right = after_[last];
    const double line = std::lerp(T_[left], T_[right], (t_[spike.first] - t_[left]) / (t_[right] - t_[left]));
    const double size = T_[spike.first] - line, sign = size < 0 ? -1 : 1;
    return std::ranges::any_of(tracks_, [&](const Track& other) {
      if (&other == &track_) return false;
      const auto [from, to] =
          other.clock == track_.clock ? std::pair(rows_[left], rows_[right]) : rows_around(other, t_[left], t_[right]);
      if (from == kNone) return false;
      if (off_line(other, from, to, sign) > std::max(suspicious_step_C(other), kLikewise * std::abs(size))) return true;
      return sign > 0 && track_.clock->median_interval_s() >= kCoarse_s &&
             steps_up_near(other, t_[left], t_[right], size);
    });
  }

  void take(const Candidate& spike) {
    const std::size_t last = spike.pair ? after_[spike.first] : spike.first;
    const std::size_t left = before_[spike.first], right = after_[last];
    for (const std::size_t i : {spike.first, last}) {
      if (gone(i)) continue;
      if (keep_) {
        if (kept_.empty()) kept_.resize(T_.size());
        kept_[i] = true;
        track_.stretches.push_back({run::FaultKind::kSpike, rows_[i], rows_[i], run::FaultAction::kFlagged, {}});
      } else {
        track_.remove(run::FaultKind::kSpike, rows_[i], rows_[i]);
      }
    }
    after_[left] = right;
    before_[right] = left;
    look_around(left);
    look_around(right);
  }

  std::span<Track> tracks_;
  Track& track_;
  bool keep_;
  double suspicious_ = 0, limit_ = 0;
  std::vector<std::size_t> rows_, before_, after_;
  std::vector<double> t_, T_, waves_s_;
  std::vector<bool> kept_;
  std::priority_queue<Candidate> queue_;
};

}  // namespace

void find_spikes(std::span<Track> tracks, std::span<const int> keep) {
  for (std::size_t i = 0; i < tracks.size(); ++i) {
    const auto& overview = tracks[i].overview;
    if (overview.all_finite && overview.largest_step <= suspicious_step_C(tracks[i])) continue;
    Search(tracks, i, std::ranges::find(keep, tracks[i].number) != keep.end()).run();
  }
}

}  // namespace ovenwright::clean
