#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <map>

#include "core/log/time_plan.h"
#include "core/log/wrapped_counter.h"
#include "core/units/phrase.h"

namespace ovenwright::log {
namespace {

constexpr double kDay = 86400, kHour = 3600;

double power_of_ten(int digits) { return std::pow(10.0, digits); }

/// A decimal with so many digits behind the sign: what a difference of two such decimals is.
double rounded_to(double value, int digits) {
  if (digits < 0 || digits > 9) return value;
  const double power = power_of_ten(digits);
  return std::round(value * power) / power;
}

double first_finite(const std::vector<double>& times) {
  const auto first = std::find_if(times.begin(), times.end(), [](double t) { return std::isfinite(t); });
  return first == times.end() ? 0 : *first;
}

/// A clock that starts anew at midnight, at noon without saying which half of the day, or at the full hour.
void unwrap(std::vector<double>& times, const TimePlan& plan, std::vector<std::string>& notes) {
  const bool minutes_only = plan.name == "clock m:s";
  double added = 0, before = std::numeric_limits<double>::quiet_NaN();
  double highest = 0;
  for (double& time : times) {
    if (!std::isfinite(time)) continue;
    highest = std::max(highest, time);
    const double drop = before - (time + added);
    if (std::isfinite(before) && drop > 0) {
      if (minutes_only && drop > 0.8 * kHour && highest < kHour) {
        added += kHour;
      } else if (drop > kDay / 2 + kHour) {
        added += kDay;
        notes.push_back(say(Phrase::kMidnight));
      } else if (drop > kDay / 2 - kHour && highest < kDay / 2 + kHour) {
        added += kDay / 2;
        notes.push_back(say(Phrase::kTwelve));
      }
    }
    time += added;
    before = time;
  }
}

/// A local clock that is set forward or back an hour, on the hour and at night, while the rows go on: the jump is taken
/// out. Nothing else in the log may jump.
void without_summer_time(std::vector<double>& times, std::vector<Assumption>& assumed) {
  constexpr std::size_t kFewest = 20;
  if (times.size() < kFewest) return;
  std::vector<double> steps;
  std::size_t at = 0;
  for (std::size_t i = 1; i < times.size(); ++i) {
    const double step = times[i] - times[i - 1];
    if (!std::isfinite(step)) return;
    if (std::abs(step) < kHour / 2) {
      steps.push_back(step);
    } else if (at == 0) {
      at = i;
    } else {
      return;
    }
  }
  if (at == 0) return;
  const auto middle = steps.begin() + static_cast<std::ptrdiff_t>(steps.size() / 2);
  std::nth_element(steps.begin(), middle, steps.end());
  const double usual = std::max(*middle, 0.0), jump = times[at] - times[at - 1];
  const double hour = jump > 0 ? kHour : -kHour, beyond = jump - hour;
  const double since_hour = times[at] - std::floor(times[at] / kHour) * kHour;
  const double of_day = times[at] - std::floor(times[at] / kDay) * kDay;
  constexpr double kEarliest = 0, kLatest = 4 * kHour;
  if (beyond < -0.5 || beyond > 3 * usual + 1 || since_hour > 3 * usual + 1 || of_day < kEarliest || of_day > kLatest)
    return;
  for (std::size_t i = at; i < times.size(); ++i) times[i] -= hour;
  const std::string at_hour = std::to_string(static_cast<int>(of_day / kHour));
  assumed.push_back({"time", say(hour > 0 ? Phrase::kSummerBegins : Phrase::kSummerEnds, {at_hour}), "without the jump",
                     "as it stands"});
}

/// Serial days have few digits for seconds: where all times lie within those digits of a regular step they are put on
/// it.
void snap(std::vector<double>& times, double resolution) {
  const double tolerance = std::max(resolution, 2e-6);
  for (const double step : {1.0, 0.5, 0.25, 0.2, 0.1, 0.05, 0.02, 0.01, 0.005, 0.001}) {
    if (step < 4 * tolerance) return;
    const bool all = std::all_of(times.begin(), times.end(), [&](double t) {
      return !std::isfinite(t) || std::abs(t - std::round(t / step) * step) <= tolerance;
    });
    if (!all) continue;
    const double per_second = std::round(1 / step);
    for (double& t : times) t = std::round(t / step) / per_second;
    return;
  }
}

/// How much room a line a + d·i has to pass every row within its rounded time k_i to k_i + 1; below 0: none.
double room(const std::vector<double>& k, double d, double& lowest) {
  double low = -std::numeric_limits<double>::infinity(), high = -low;
  for (std::size_t i = 0; i < k.size(); ++i) {
    const double at = k[i] - d * static_cast<double>(i);
    low = std::max(low, at);
    high = std::min(high, at + 1);
  }
  lowest = low;
  return high - low;
}

/// Rows evenly apart whose rounded times are those that stand there. The step in quanta, 0 where there is none.
double even_step(const std::vector<double>& k, double allowed) {
  const double n = static_cast<double>(k.size() - 1);
  double low = std::max(1e-9, (k.back() - k.front() - 1) / n), high = (k.back() - k.front() + 1) / n;
  double unused = 0;
  // Round steps first: a whole number of rows to the quantum, then few decimals.
  const double about = (low + high) / 2;
  // One that puts every row where it was written goes before one that needs some slack.
  for (const double least : {0.0, allowed}) {
    for (int m = 1; m <= 1000; ++m) {
      const double d = 1.0 / m;
      if (d >= low && d <= high && room(k, d, unused) > least) return d;
    }
  }
  for (int digits = 1; digits <= 4; ++digits) {
    const double d = rounded_to(about, digits);
    if (d >= low && d <= high && room(k, d, unused) > allowed) return d;
  }
  for (int i = 0; i < 60; ++i) {  // the room is concave in d
    const double a = low + (high - low) / 3, b = high - (high - low) / 3;
    (room(k, a, unused) < room(k, b, unused) ? low : high) = room(k, a, unused) < room(k, b, unused) ? a : b;
  }
  const double d = (low + high) / 2;
  return room(k, d, unused) > allowed ? d : 0;
}

std::string plain(double value) { return fmt::format("{:.6g}", value); }

/// Groups of rows of one rounded time, nearly all of the same size, with gaps between some of them.
bool spread_groups(std::vector<double>& times, double quantum, double& step) {
  std::map<std::size_t, std::size_t> sizes;
  std::vector<std::size_t> starts;
  for (std::size_t i = 0; i < times.size(); ++i) {
    if (i == 0 || times[i] != times[i - 1]) starts.push_back(i);
  }
  starts.push_back(times.size());
  for (std::size_t g = 0; g + 1 < starts.size(); ++g) ++sizes[starts[g + 1] - starts[g]];
  const auto usual =
      std::max_element(sizes.begin(), sizes.end(), [](const auto& a, const auto& b) { return a.second < b.second; });
  const std::size_t m = usual->first;
  if (m < 2 || usual->second * 10 < (starts.size() - 1) * 8 || usual->second < 3) return false;
  if (sizes.rbegin()->first > m + 1) return false;
  step = quantum / static_cast<double>(m);
  for (std::size_t g = 0; g + 1 < starts.size(); ++g) {
    const std::size_t size = starts[g + 1] - starts[g];
    const double base = times[starts[g]];
    const std::size_t skipped = g == 0 && size < m ? m - size : 0;  // the log started within the quantum
    const double own_step = size > m ? quantum / static_cast<double>(size) : step;
    for (std::size_t i = 0; i < size; ++i) times[starts[g] + i] = base + own_step * static_cast<double>(i + skipped);
  }
  return true;
}

/// Rows of one rounded time spread evenly over it, however many they are. Not where a clock stood still: then some
/// group is far larger than the usual one.
bool spread_within(std::vector<double>& times, double quantum) {
  std::vector<std::size_t> starts;
  for (std::size_t i = 0; i < times.size(); ++i) {
    if (i == 0 || times[i] != times[i - 1]) starts.push_back(i);
  }
  starts.push_back(times.size());
  std::size_t largest = 1;
  const std::size_t usual = (times.size() + starts.size() - 3) / (starts.size() - 1);  // rounded up
  for (std::size_t g = 0; g + 1 < starts.size(); ++g) largest = std::max(largest, starts[g + 1] - starts[g]);
  if (largest > 2 * usual + 1) return false;
  for (std::size_t g = 0; g + 1 < starts.size(); ++g) {
    const std::size_t size = starts[g + 1] - starts[g];
    const double base = times[starts[g]];
    const bool edge = g == 0 || g + 2 == starts.size();  // the log may have started or ended within
    const double step = quantum / static_cast<double>(edge ? std::max(size, usual) : size);
    const std::size_t skipped = g == 0 && size < usual ? usual - size : 0;
    for (std::size_t i = 0; i < size; ++i) times[starts[g] + i] = base + step * static_cast<double>(i + skipped);
  }
  return true;
}

void spread(std::vector<double>& times, const run::Steps& steps, const TimePlan& plan, double quantum,
            std::vector<Assumption>& assumed) {
  const std::size_t n = times.size();
  if (n < 6 || !(quantum > 0)) return;
  if (!std::isfinite(times.front()) || !std::isfinite(times.back())) return;
  if (steps.up + steps.level + 1 != n) return;  // a time that goes back, or is none
  const std::size_t repeats = steps.level;
  const double interval = (times.back() - times.front()) / static_cast<double>(n - 1);
  if (!(interval > 0)) return;
  const bool rounded = repeats >= 3 && repeats * 10 >= n;
  const bool coarse_unit =
      (plan.kind == TimeKind::kSerialDays || (plan.kind == TimeKind::kNumber && plan.seconds_per_unit >= 60)) &&
      quantum > 0.1 * interval;
  if (!rounded && !coarse_unit) return;
  std::vector<double> k(n);
  const double start = times.front();
  for (std::size_t i = 0; i < n; ++i) k[i] = std::round((times[i] - start) / quantum);
  double step = even_step(k, rounded ? -0.6 : 1e-9);
  if (step > 0) {
    double offset = 0;
    room(k, step, offset);
    if (plan.kind != TimeKind::kNumber) offset = 0;  // counts from the first row
    for (std::size_t i = 0; i < n; ++i) times[i] = start + (offset + step * static_cast<double>(i)) * quantum;
    step *= quantum;
  } else if (!rounded) {
    return;
  } else if (!spread_groups(times, quantum, step)) {
    if (!spread_within(times, quantum)) return;
    step = 0;
  }
  const double first = plan.kind == TimeKind::kNumber ? 0 : times.front();
  for (double& t : times) t = rounded_to(t - first, 9);
  assumed.push_back({"time",
                     step > 0 ? say(Phrase::kSpreadEvenly, {plain(quantum), plain(step)})
                              : say(Phrase::kSpreadWithin, {plain(quantum)}),
                     "", ""});
}

}  // namespace

bool newest_first(const std::vector<double>& times) {
  constexpr std::size_t kFewest = 3, kDownForEachUp = 20;
  std::size_t up = 0, down = 0;
  double before = std::numeric_limits<double>::quiet_NaN();
  for (const double time : times) {
    if (!std::isfinite(time)) continue;
    up += time > before ? 1 : 0;
    down += time < before ? 1 : 0;
    before = time;
    if (up > kDownForEachUp && down == 0) return false;  // most logs, at once
  }
  return down >= kFewest && down >= kDownForEachUp * up;
}

void finish_times(std::vector<double>& times, const TimePlan& plan, std::vector<Assumption>& assumed,
                  std::vector<std::string>& notes, std::optional<run::Steps> steps) {
  if (times.empty()) return;
  const bool whole_parts = plan.seconds_per_unit < 1;
  const double parts = whole_parts ? std::round(1 / plan.seconds_per_unit) : 1;
  const auto in_seconds = [&](double v) { return whole_parts ? v / parts : v * plan.seconds_per_unit; };
  double quantum = 1 / power_of_ten(std::min(plan.decimals, 9));
  if (plan.kind == TimeKind::kClock) unwrap(times, plan, notes);
  const bool forward = steps && steps->down == 0;  // so no end of a counter is looked for
  const bool as_they_came = forward && plan.kind == TimeKind::kNumber && plan.seconds_per_unit == 1;
  if (!forward && (plan.kind == TimeKind::kNumber || plan.kind == TimeKind::kEpoch))
    unwrap_counter(times, plan, assumed);
  const double first = plan.origin.value_or(first_finite(times));
  switch (plan.kind) {
    case TimeKind::kNumber:
      if (plan.seconds_per_unit != 1)
        for (double& t : times) t = in_seconds(t);
      quantum *= plan.seconds_per_unit;
      break;
    case TimeKind::kEpoch:
      for (double& t : times) t = in_seconds(rounded_to(t - first, plan.decimals));
      quantum *= plan.seconds_per_unit;
      break;
    case TimeKind::kSerialDays:
      quantum *= kDay;
      for (double& t : times) t = (t - first) * kDay;
      snap(times, quantum);
      break;
    case TimeKind::kIndex: {
      // Intervals such as 0.1 are no doubles, their reciprocals often are.
      const double rate = std::round(1 / plan.interval_s);
      const bool whole_rate = rate >= 1 && std::abs(1 / rate - plan.interval_s) < 1e-15;
      for (double& t : times) t = whole_rate ? (t - first) / rate : (t - first) * plan.interval_s;
      return;
    }
    case TimeKind::kClock:
    case TimeKind::kMoment:
      if (plan.hours_and_minutes) quantum = 60;
      without_summer_time(times, assumed);
      for (double& t : times) t = rounded_to(t - first, std::min(plan.decimals, 9));
      break;
  }
  spread(times, as_they_came ? *steps : run::steps_of(times), plan, quantum, assumed);
}

}  // namespace ovenwright::log
