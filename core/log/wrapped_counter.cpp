#include "core/log/wrapped_counter.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "core/units/phrase.h"

namespace ovenwright::log {
namespace {

struct Length {
  double value = 0;  ///< in the unit of the times
  std::size_t least = 1;
};

std::vector<Length> lengths(const TimePlan& plan) {
  std::vector<Length> list;
  for (const int bits : {15, 16, 24, 32}) {
    const double counts = std::ldexp(1.0, bits);
    list.push_back({counts, 1});
    for (const double second : {1e3, 1e6}) list.push_back({counts / (second * plan.seconds_per_unit), 1});
  }
  constexpr double kDay = 86400, kHour = 3600, kMinute = 60;
  list.push_back({kDay / plan.seconds_per_unit, 1});
  for (const double length : {kHour, kMinute}) list.push_back({length / plan.seconds_per_unit, 3});
  return list;
}

}  // namespace

void unwrap_counter(std::vector<double>& times, const TimePlan& plan, std::vector<Assumption>& assumed) {
  std::vector<std::size_t> back;  // rows at which the time is earlier than in the row before
  for (std::size_t i = 1; i < times.size(); ++i) {
    if (times[i] < times[i - 1]) back.push_back(i);
  }
  constexpr std::size_t kFewestSteps = 5;
  if (back.empty() || back.size() * 3 > times.size()) return;
  std::vector<double> steps;
  for (std::size_t i = 1; i < times.size(); ++i) {
    if (times[i] > times[i - 1]) steps.push_back(times[i] - times[i - 1]);
  }
  if (steps.size() < kFewestSteps) return;
  const auto at_share = [&steps](double share) {
    const auto at = steps.begin() + static_cast<std::ptrdiff_t>(share * static_cast<double>(steps.size() - 1));
    std::nth_element(steps.begin(), at, steps.end());
    return *at;
  };
  // As far from the usual step as nine of ten others are.
  const double usual = at_share(0.5), quantum = std::pow(10.0, -std::clamp(plan.decimals, 0, 9));
  for (double& step : steps) step = std::abs(step - usual);
  const double slack = at_share(0.9) + 1.5 * quantum;
  const auto fits = [&](const Length& length) {
    return back.size() >= length.least && std::all_of(back.begin(), back.end(), [&](std::size_t i) {
             return std::abs(times[i] + length.value - times[i - 1] - usual) <= slack;
           });
  };
  const auto candidates = lengths(plan);
  const auto length = std::find_if(candidates.begin(), candidates.end(), fits);
  if (length == candidates.end()) return;
  double added = 0;
  std::size_t next = 0;
  for (std::size_t i = 0; i < times.size(); ++i) {
    if (next < back.size() && back[next] == i) {
      added += length->value;
      ++next;
    }
    times[i] += added;
  }
  const auto text = fmt::format("{:.10g}", length->value);
  assumed.push_back({"time", say(Phrase::kCounterStartsAnew, {text}), "going on", "as it stands"});
}

}  // namespace ovenwright::log
