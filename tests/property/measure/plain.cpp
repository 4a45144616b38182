#include "tests/property/measure/plain.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>

namespace ovenwright::measure::plain {
namespace {

const double kInf = std::numeric_limits<double>::infinity();

/// What a measure needs to be told besides its definition: levels moved by noise; and what it found besides its value.
struct Extra {
  double level = 0, T1 = 0, T2 = 0;
};
struct Found {
  Answer a;
  double squares = 0, seconds = 0;
  int contacts = 0;
  bool to_peak = false;
};

double snap(double T, double level) { return std::abs(T - level) <= 1e-6 ? 0 : T - level; }
bool above(double T, double level) { return snap(T, level) > 0; }
bool at_least(double T, double level) { return snap(T, level) >= 0; }

std::size_t peak_of(const Samples& T) {
  std::size_t p = 0;
  for (std::size_t i = 0; i < T.size(); ++i)
    if (T[i] > T[p]) p = i;
  return p;
}

/// Every point in time where a sample is or the curve meets one of the levels, with the temperature there; the
/// condition then holds, or does not, all the way between two of them, and is asked in the middle.
Found time_where(const Trace& x, std::size_t first, std::size_t last, std::vector<double> levels,
                 const std::function<bool(double)>& holds) {
  Found f;
  f.a.value = 0;
  for (std::size_t i = first; i < last; ++i) {
    std::vector<double> cuts{0, 1};
    double a = x.T[i], b = x.T[i + 1];
    for (double L : levels) {
      if (std::abs(a - L) <= 1e-6) a = L;
      if (std::abs(b - L) <= 1e-6) b = L;
    }
    for (double L : levels)
      if ((a - L) * (b - L) < 0) cuts.push_back((L - a) / (b - a));
    std::sort(cuts.begin(), cuts.end());
    for (std::size_t k = 0; k + 1 < cuts.size(); ++k) {
      const double middle = a == b ? a : a + (b - a) * (cuts[k] + cuts[k + 1]) / 2;
      if (!holds(middle)) continue;
      const double from = x.t[i] + cuts[k] * (x.t[i + 1] - x.t[i]), to = x.t[i] + cuts[k + 1] * (x.t[i + 1] - x.t[i]);
      if (!f.a.from_s) f.a.from_s = from;
      f.a.to_s = to;
      *f.a.value += to - from;
    }
  }
  return f;
}
Found above_time(const Trace& x, std::size_t first, std::size_t last, double L) {
  return time_where(x, first, last, {L}, [L](double T) { return T > L; });
}
Found between_time(const Trace& x, std::size_t first, std::size_t last, double L1, double L2) {
  if (L2 == kInf) return above_time(x, first, last, L1);
  return time_where(x, first, last, {L1, L2}, [=](double T) { return T > L1 && T <= L2; });
}

std::vector<double> crossings(const Trace& x, std::size_t first, std::size_t last, double L) {
  std::vector<double> found;
  for (std::size_t i = first; i < last; ++i)
    if (!above(x.T[i], L) && above(x.T[i + 1], L)) {
      const double a = snap(x.T[i], L), b = snap(x.T[i + 1], L);
      found.push_back(x.t[i] - a / (b - a) * (x.t[i + 1] - x.t[i]));
    }
  return found;
}

Found none(NoValue kind) {
  Found f;
  f.a.no_value = kind;
  return f;
}
Found not_reached(const Trace& x) {
  const std::size_t p = peak_of(x.T);
  return none(p == 0 || p + 1 == x.T.size() ? NoValue::kUndetermined : NoValue::kNotReached);
}

struct Line {
  double slope, squares;
};
Line line(const Trace& x, const std::vector<std::size_t>& samples) {
  double mt = 0, mT = 0, tt = 0, tT = 0;
  for (auto j : samples) mt += x.t[j], mT += x.T[j];
  mt /= double(samples.size()), mT /= double(samples.size());
  for (auto j : samples) tt += (x.t[j] - mt) * (x.t[j] - mt), tT += (x.t[j] - mt) * (x.T[j] - mT);
  return {tT / tt, tt};
}
// On the edge by the digits of the clock is inside, whatever the doubles say.
double slack(const Trace& x) { return x.h / 10 + 1e-9; }
std::vector<std::size_t> window(const Trace& x, std::size_t i, double over) {
  std::vector<std::size_t> samples;
  for (std::size_t j = 0; j < x.t.size(); ++j)
    if (std::abs(x.t[j] - x.t[i]) <= over / 2 + slack(x)) samples.push_back(j);
  return samples;
}

Found steepest(const Trace& x, const Parameters& q, bool fall) {
  const std::size_t p = peak_of(x.T), n = x.T.size();
  if (fall && p + 1 == n) return none(NoValue::kUndetermined);
  const double begin = fall ? x.t[p] : x.t[0], end = fall ? x.t[n - 1] : x.t[p];
  double lower = q.from.value_or(-kInf), upper = q.to.value_or(kInf);
  if (q.from && q.to && lower > upper) std::swap(lower, upper);
  struct Candidate {
    double slope;
    std::size_t i;
  };
  std::vector<Candidate> candidates;
  double best = -kInf;
  for (std::size_t i = 0; i < n; ++i) {
    if (x.t[i] - *q.over / 2 < begin - slack(x) || x.t[i] + *q.over / 2 > end + slack(x)) continue;
    if (!at_least(x.T[i], lower) || above(x.T[i], upper)) continue;
    const auto samples = window(x, i, *q.over);
    if (samples.size() < 3) continue;
    candidates.push_back({(fall ? -1 : 1) * line(x, samples).slope, i});
    best = std::max(best, candidates.back().slope);
  }
  for (const auto& c : candidates) {
    if (c.slope < best - 1e-9) continue;
    Found f;
    const auto samples = window(x, c.i, *q.over);
    f.a.value = best;
    f.squares = line(x, samples).squares;
    f.a.from_s = x.t[samples.front()];
    f.a.to_s = x.t[samples.back()];
    const bool ranged = (q.from || q.to) && lower > -kInf;
    f.a.at_least = (!fall && p + 1 == n) || (ranged && above(x.T[fall ? n - 1 : 0], lower));
    return f;
  }
  return none(NoValue::kUndetermined);
}

Found wave(const Trace& x, const Definition& d) {
  const std::size_t n = x.T.size();
  std::vector<double> s(n, NAN);
  double steepest = -kInf;
  for (std::size_t i = 1; i + 1 < n; ++i) {
    const auto samples = window(x, i, 1);
    if (samples.size() < 3)
      s[i] = line(x, {i - 1, i, i + 1}).slope;
    else if (x.t[i] - .5 >= x.t[0] - slack(x) && x.t[i] + .5 <= x.t[n - 1] + slack(x))
      s[i] = line(x, samples).slope;
    if (s[i] > steepest) steepest = s[i];
  }
  if (!(steepest >= 5 - 1e-9)) return none(NoValue::kUndetermined);
  std::size_t i = 0;
  while (!(s[i] >= std::max(steepest / 2, 4.) - 1e-9)) ++i;
  while (!(s[i] <= std::max(steepest / 5, 3.) + 1e-9)) {
    if (i == 0) return none(NoValue::kUndetermined);
    --i;
  }
  const std::size_t start = i;
  // Alternating turning points, each 10 °C from the one before: valley, peak, valley, …
  std::vector<std::size_t> turn{start};
  for (std::size_t k = start + 1; k < n; ++k) {
    const bool going_up = turn.size() % 2 == 0;  // the last turning point found so far is a peak still growing
    const double here = x.T[k], there = x.T[turn.back()];
    if (going_up ? here > there : here < there)
      turn.back() = k;
    else if (std::abs(here - there) >= 10 - 1e-6)
      turn.push_back(k);
  }
  const bool rising = peak_of(x.T) + 1 == n;
  Found f;
  if (d.measure == Measure::kWavePreheatTemperature) {
    f.a = {x.T[start], false, {}, x.t[start], x.t[start], {}};
    return f;
  }
  if (d.measure == Measure::kWaveStep) {
    if (turn.size() < 2) return none(NoValue::kUndetermined);
    f.a = {x.T[turn[1]] - x.T[start], turn[1] + 1 == n, {}, x.t[start], x.t[turn[1]], {}};
    return f;
  }
  const double level = *d.parameters.level;
  f.a.value = 0;
  f.a.at_least = rising;
  for (std::size_t k = 1; k < turn.size(); k += 2) {
    if (!above(x.T[turn[k]], level)) continue;
    const double out = std::max(level, x.T[turn[k]] - 5);
    const auto in = crossings(x, turn[k - 1], turn[k], std::max(level, x.T[turn[k - 1]] + 5));
    const std::size_t until = k + 1 < turn.size() && k + 2 < turn.size() ? turn[k + 1] : n - 1;
    double left = x.t[turn[k]];
    for (std::size_t j = turn[k]; j <= until; ++j) {
      if (!at_least(x.T[j], out)) continue;
      left = x.t[j];
      if (j < until && !at_least(x.T[j + 1], out))
        left += snap(x.T[j], out) / (x.T[j] - x.T[j + 1]) * (x.t[j + 1] - x.t[j]);
    }
    if (left == x.t[n - 1]) f.a.at_least = true;
    const double seconds = left - in.front();
    if (d.measure == Measure::kWaveLongestContact) {
      if (f.contacts > 0 && seconds <= *f.a.value) continue;
      f.contacts = 1;
      f.a.value = seconds, f.a.from_s = in.front(), f.a.to_s = left;
    } else {
      *f.a.value += seconds;
      f.contacts++;
      if (!f.a.from_s) f.a.from_s = in.front();
      f.a.to_s = left;
    }
  }
  return f;
}

Found measure(const Trace& x, const Definition& d, const Extra& extra = {}) {
  const auto& q = d.parameters;
  const std::size_t n = x.T.size(), p = peak_of(x.T);
  const bool rising = p + 1 == n, starts_at_peak = p == 0;
  Found f;
  switch (d.measure) {
    case Measure::kPeak:
      f.a = {x.T[p], rising || starts_at_peak, {}, x.t[p], x.t[p], {}};
      return f;
    case Measure::kPeakTime: {
      const double lowest = *std::min_element(x.T.begin(), x.T.begin() + long(p) + 1);
      const auto c = crossings(x, 0, p, std::max(*q.level, lowest + 3) + extra.level);
      if (c.empty()) return not_reached(x);
      f.a = {x.t[p] - c.back(), rising || above(lowest, *q.level + 15), {}, c.back(), x.t[p], {}};
      f.to_peak = true;
      return f;
    }
    case Measure::kTimeAbove:
    case Measure::kAreaAbove: {
      const double L = *q.level + extra.level;
      f = above_time(x, 0, n - 1, L);
      f.a.at_least = above(x.T[0], L) || above(x.T[n - 1], L) || rising;
      if (d.measure == Measure::kTimeAbove) return f;
      f.seconds = *f.a.value;
      f.a.value = 0;
      for (std::size_t i = 0; i + 1 < n; ++i) {
        const double a = snap(x.T[i], L), b = snap(x.T[i + 1], L), dt = x.t[i + 1] - x.t[i];
        if (a >= 0 && b >= 0) *f.a.value += dt * (a + b) / 2;
        if (a * b < 0) *f.a.value += dt * std::max(a, b) / std::abs(a - b) * std::max(a, b) / 2;
      }
      return f;
    }
    case Measure::kExcursionsAbove: {
      int count = 0;
      for (std::size_t i = 0; i < n;) {  // split where it falls 2 °C under the level
        std::size_t j = i;
        while (j + 1 < n && above(x.T[j + 1], *q.level - 2)) ++j;
        // samples i … j + 1 hold what lies between two such places
        const auto one = above_time(x, i, std::min(j + 1, n - 1), *q.level).a;
        if (*one.value > 1 + 1e-9) {
          if (count++ == 0) f.a.from_s = one.from_s;
          f.a.to_s = one.to_s;
        }
        i = j + 1;
      }
      f.a.value = count;
      f.a.at_least = above(x.T[0], *q.level) || above(x.T[n - 1], *q.level) || rising;
      return f;
    }
    case Measure::kTimeBetweenOnRise: {
      const double T1 = std::get<double>(*q.T1) + extra.T1, T2 = std::get<double>(*q.T2) + extra.T2;
      f = between_time(x, 0, p, T1, T2);
      const bool reached = at_least(x.T[p], T2);
      f.to_peak = !reached && *f.a.value > 0;
      f.a.at_least = above(x.T[0], T1) || (rising && !reached);
      return f;
    }
    case Measure::kTimeNearPeak: {
      const bool own = std::holds_alternative<OwnPeak>(*q.reference);
      const double L = (own ? x.T[p] : std::get<double>(*q.reference)) - *q.offset + extra.level;
      f = time_where(x, 0, n - 1, {L}, [L](double T) { return T >= L; });
      f.a.at_least = rising || at_least(x.T[0], L) || at_least(x.T[n - 1], L);
      return f;
    }
    case Measure::kSteepestRise:
      return steepest(x, q, false);
    case Measure::kSteepestFall:
      return steepest(x, q, true);
    case Measure::kMeanRise: {
      const bool own = std::holds_alternative<OwnPeak>(*q.T2);
      const double T1 = std::get<double>(*q.T1) + extra.T1, T2 = own ? x.T[p] : std::get<double>(*q.T2) + extra.T2;
      if (own ? !above(T2, T1) : !at_least(x.T[p], T2)) return not_reached(x);
      if (above(x.T[0], T1)) return none(NoValue::kUndetermined);
      f = between_time(x, 0, p, T1, own ? kInf : T2);
      f.seconds = *f.a.value;
      if (!(f.seconds > 0) || !(T2 > T1)) return none(NoValue::kUndetermined);
      f.a.value = (T2 - T1) / f.seconds;
      f.a.at_least = own && rising;
      f.to_peak = own;
      return f;
    }
    case Measure::kMeanFall: {
      if (rising) return none(NoValue::kUndetermined);
      const bool own = std::holds_alternative<OwnPeak>(*q.T1);
      const double T1 = own ? x.T[p] : std::get<double>(*q.T1) + extra.T1, T2 = std::get<double>(*q.T2) + extra.T2;
      if (own ? !above(T1, T2) : !at_least(x.T[p], T1)) return not_reached(x);
      if (above(x.T[n - 1], T2)) return none(NoValue::kUndetermined);
      f = between_time(x, p, n - 1, T2, own ? kInf : T1);
      f.seconds = *f.a.value;
      if (!(f.seconds > 0) || !(T1 > T2)) return none(NoValue::kUndetermined);
      f.a.value = (T1 - T2) / f.seconds;
      f.to_peak = own;
      return f;
    }
    case Measure::kTemperatureAt: {
      if (*q.time < x.t[0] || *q.time > x.t[n - 1]) return none(NoValue::kUndetermined);
      std::size_t i = 0;
      while (i + 2 < n && x.t[i + 1] <= *q.time) ++i;
      f.a.value = x.T[i] + (x.T[i + 1] - x.T[i]) * (*q.time - x.t[i]) / (x.t[i + 1] - x.t[i]);
      f.a.from_s = f.a.to_s = *q.time;
      return f;
    }
    case Measure::kExitTemperature:
      f.a = {x.T[n - 1], false, {}, x.t[n - 1], x.t[n - 1], {}};
      return f;
    default:
      return wave(x, d);
  }
}

double at(const Trace& x, double t) {
  for (std::size_t i = 0; i + 1 < x.t.size(); ++i)
    if (x.t[i] <= t && t <= x.t[i + 1]) return x.T[i] + (x.T[i + 1] - x.T[i]) * ((t - x.t[i]) / (x.t[i + 1] - x.t[i]));
  return NAN;
}

Found board(const std::vector<Trace>& all, const Definition& d) {
  const auto& q = d.parameters;
  Found f;
  const auto rising = [](const Trace& x) { return peak_of(x.T) + 1 == x.T.size(); };
  const auto cold_start = [](const Trace& x) { return peak_of(x.T) == 0; };
  const auto turned = [&](const Trace& x, double L) {
    return !above(x.T[peak_of(x.T)], L) && !rising(x) && !cold_start(x);
  };
  double begin = -kInf, end = kInf;
  for (const auto& x : all) begin = std::max(begin, x.t.front()), end = std::min(end, x.t.back());
  if (d.measure == Measure::kSpreadOfPeaks) {
    double low = kInf, high = -kInf;
    for (const auto& x : all) {
      if (rising(x) || cold_start(x)) return none(NoValue::kUndetermined);
      low = std::min(low, x.T[peak_of(x.T)]), high = std::max(high, x.T[peak_of(x.T)]);
    }
    f.a.value = high - low;
    return f;
  }
  if (d.measure == Measure::kLargestSpread) {
    if (begin > end) return none(NoValue::kUndetermined);
    double lower = q.from.value_or(-kInf), upper = q.to.value_or(kInf);
    if (q.from && q.to && lower > upper) std::swap(lower, upper);
    Samples times;
    for (const auto& x : all)
      for (double t : x.t)
        if (t >= begin && t <= end) times.push_back(t);
    std::sort(times.begin(), times.end());
    bool open = false, late = false;
    for (double t : times) {
      std::size_t coldest = 0;
      double low = kInf, high = -kInf;
      for (std::size_t k = 0; k < all.size(); ++k) {
        const double T = at(all[k], t);
        if (T < low) low = T, coldest = k;
        high = std::max(high, T);
      }
      const bool past = t > all[coldest].t[peak_of(all[coldest].T)];
      if (t == begin) late = q.from.has_value() && lower > -kInf && above(low, lower);
      if (t == begin && !(q.from || q.to)) late = false;
      if (t == end) open = !past && !above(low, upper);
      if (past || !at_least(low, lower) || above(low, upper)) continue;
      if (!f.a.value || high - low > *f.a.value) f.a.value = high - low, f.a.from_s = f.a.to_s = t;
    }
    f.a.at_least = open || late;
    if (f.a.value) return f;
    bool certain = false;
    for (const auto& x : all) certain = certain || turned(x, lower);
    return none(certain && !open && !late ? NoValue::kNotReached : NoValue::kUndetermined);
  }
  double first = kInf, last = -kInf;
  bool missing = false, certain = false, any_turned_not = false, hot_start = false;
  for (const auto& x : all) {
    const auto c = crossings(x, 0, x.T.size() - 1, *q.level);
    if (above(x.T[0], *q.level)) hot_start = true;
    if (c.empty()) {
      missing = true;
      (turned(x, *q.level) ? certain : any_turned_not) = true;
    } else {
      first = std::min(first, c.front()), last = std::max(last, c.front());
    }
  }
  if (d.measure == Measure::kLag) {
    if (missing) return none(certain ? NoValue::kNotReached : NoValue::kUndetermined);
    f.a.value = last - first;
    return f;
  }
  if (first == kInf) return none(any_turned_not || hot_start ? NoValue::kUndetermined : NoValue::kNotReached);
  if (first < begin || first > end) return none(NoValue::kUndetermined);
  double low = kInf, high = -kInf;
  for (const auto& x : all) low = std::min(low, at(x, first)), high = std::max(high, at(x, first));
  f.a.value = high - low;
  return f;
}

double median(Samples v) {
  std::sort(v.begin(), v.end());
  return v.size() % 2 ? v[v.size() / 2] : (v[v.size() / 2 - 1] + v[v.size() / 2]) / 2;
}

double noise(const Trace& x) {
  Samples off;
  double q = kInf;
  for (std::size_t i = 1; i + 1 < x.T.size(); ++i) {
    const double b = (x.t[i] - x.t[i - 1]) / (x.t[i + 1] - x.t[i - 1]);
    off.push_back(std::abs(x.T[i] - ((1 - b) * x.T[i - 1] + b * x.T[i + 1])) /
                  std::sqrt(1 + b * b + (1 - b) * (1 - b)));
  }
  for (std::size_t i = 1; i < x.T.size(); ++i)
    if (const double step = std::abs(x.T[i] - x.T[i - 1]); step > 1e-9) q = std::min(q, step);
  return std::max(1.4826 * median(off), q == kInf ? 0 : q / std::sqrt(12.));
}

template <class Change>
Trace changed(Trace x, Change change) {
  for (auto& T : x.T) T = change(T);
  return x;
}

/// The larger change of a measure under an error, up and down.
template <class Measured>
double larger(const Found& base, Measured up, Measured down) {
  double most = 0;
  if (up.a.value) most = std::max(most, std::abs(*up.a.value - *base.a.value));
  if (down.a.value) most = std::max(most, std::abs(*down.a.value - *base.a.value));
  return most;
}

/// Squares of the three common errors of a trace, `again` measuring a changed trace.
double common_squares(const Trace& x, const Found& base, const Tolerance& tol, double instrument_C,
                      const std::function<Found(const Trace&)>& again) {
  const double r3 = std::sqrt(3.);
  const auto a = [&](double T) { return std::max(tol.floor_C, tol.fraction * std::abs(T)) / r3; };
  const double offset = larger(base, again(changed(x, [&](double T) { return T + a(T); })),
                               again(changed(x, [&](double T) { return T - a(T); })));
  const double gain = larger(base, again(changed(x, [&](double T) { return T * (1 + tol.fraction / r3); })),
                             again(changed(x, [&](double T) { return T * (1 - tol.fraction / r3); })));
  const double instrument = larger(base, again(changed(x, [&](double T) { return T + instrument_C / r3; })),
                                   again(changed(x, [&](double T) { return T - instrument_C / r3; })));
  return std::pow(std::max(offset, gain), 2) + instrument * instrument;
}

double noise_squares(const Trace& x, const Definition& d, const Found& f) {
  const double s = noise(x);
  const auto moved = [&](double Extra::*level, double by) {
    Extra up, down;
    up.*level = by, down.*level = -by;
    return std::pow(larger(f, measure(x, d, up), measure(x, d, down)), 2);
  };
  const double peak = x.T[peak_of(x.T)], low = peak - 3 * s;
  const double moment =
      f.to_peak
          ? *time_where(x, 0, x.T.size() - 1, {low}, [low](double T) { return T >= low; }).a.value / std::sqrt(12.)
          : 0;
  switch (d.measure) {
    case Measure::kPeak:
    case Measure::kTemperatureAt:
    case Measure::kExitTemperature:
    case Measure::kWavePreheatTemperature:
      return s * s;
    case Measure::kWaveStep:
      return 2 * s * s;
    case Measure::kTimeAbove:
      return moved(&Extra::level, s);
    case Measure::kTimeNearPeak:
      return moved(&Extra::level, std::holds_alternative<OwnPeak>(*d.parameters.reference) ? 2 * s : s);
    case Measure::kPeakTime:
      return moved(&Extra::level, s) + moment * moment;
    case Measure::kTimeBetweenOnRise:
      return moved(&Extra::T1, s) + moved(&Extra::T2, s) + moment * moment;
    case Measure::kMeanRise:
    case Measure::kMeanFall:
      if (!f.to_peak) return moved(&Extra::T1, s) + moved(&Extra::T2, s);
      return moved(d.measure == Measure::kMeanRise ? &Extra::T1 : &Extra::T2, 2 * s) +
             std::pow(*f.a.value * moment / f.seconds, 2);
    case Measure::kAreaAbove:
      return s * s * f.seconds * x.h;
    case Measure::kSteepestRise:
    case Measure::kSteepestFall:
      return std::pow(1.5 * s, 2) / f.squares;
    case Measure::kWaveContactTime:
    case Measure::kWaveLongestContact:
      return std::pow(larger(f, measure(changed(x, [s](double T) { return T + s; }), d),
                             measure(changed(x, [s](double T) { return T - s; }), d)),
                      2);
    default:
      return 0;
  }
}

}  // namespace

Trace trace_of(const run::Channel& channel) {
  Trace x;
  x.t.assign(channel.trace->time_s().begin(), channel.trace->time_s().end());
  x.T.assign(channel.trace->temperature_C().begin(), channel.trace->temperature_C().end());
  Samples steps;
  for (std::size_t i = 1; i < x.t.size(); ++i) steps.push_back(x.t[i] - x.t[i - 1]);
  x.h = median(steps);
  return x;
}

Answer answer(const Trace& x, const Definition& d, const Tolerance& tolerance, double instrument_C) {
  Found f = measure(x, d);
  if (!f.a.value || describe(d.measure).unit == Unit::kCount) return f.a;
  double squares = common_squares(x, f, tolerance, instrument_C, [&](const Trace& other) { return measure(other, d); });
  squares += noise_squares(x, d, f);
  const std::size_t p = peak_of(x.T);
  if (d.measure == Measure::kPeak && p > 0 && p + 1 < x.T.size())
    squares += std::pow((x.T[p - 1] - 2 * x.T[p] + x.T[p + 1]) / (8 * std::sqrt(3.)), 2);
  squares += x.h * x.h * f.contacts / 6;
  f.a.U = 2 * std::sqrt(squares);
  return f.a;
}

Answer board_answer(const std::vector<Trace>& traces, const Definition& d, const std::vector<Tolerance>& tolerances,
                    double instrument_C) {
  Found f = board(traces, d);
  if (!f.a.value) return f.a;
  double squares = 0;
  for (std::size_t k = 0; k < traces.size(); ++k) {
    const auto again = [&](const Trace& other) {
      auto all = traces;
      all[k] = other;
      return board(all, d);
    };
    squares += common_squares(traces[k], f, tolerances[k], instrument_C, again);
    const double s = noise(traces[k]);
    squares += std::pow(larger(f, again(changed(traces[k], [s](double T) { return T + s; })),
                               again(changed(traces[k], [s](double T) { return T - s; }))),
                        2);
  }
  f.a.U = 2 * std::sqrt(squares);
  return f.a;
}

}  // namespace ovenwright::measure::plain
