#include "core/lot/lot.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>
#include <utility>

#include "core/lot/sentence.h"
#include "core/lot/statistics.h"
#include "core/lot/tolerance.h"

namespace ovenwright::lot {
namespace {

constexpr double kTolerated = 0.95;  // coverage and confidence of the tolerance interval
constexpr std::size_t kLargestSubgroup = 25;

/// The factor of each number of values met, found once.
class ToleranceFactors {
 public:
  double of(std::size_t n) {
    const auto [at, added] = factors_.try_emplace(n, 0);
    if (added) at->second = tolerance_factor(n, kTolerated, kTolerated);
    return at->second;
  }

 private:
  std::map<std::size_t, double> factors_;
};

std::string runs_text(std::size_t n) { return n == 1 ? "1 run" : fmt::format("{} runs", n); }

/// The results of the runs, put together by requirement and trace.
class Gathered {
 public:
  explicit Gathered(std::span<const Run> runs) : runs_(runs) {
    for (std::size_t r = 0; r < runs.size(); ++r)
      for (const auto& result : runs[r].results) add(r, result);
    for (std::size_t s = 0; s < series.size(); ++s) {
      for (const std::size_t other : index_[key_of(series[s])])
        if (other != s) series[s].measured_otherwise += runs_with_[other];
      series[s].without_value = runs.size() - series[s].measured_otherwise - series[s].points.size() - series[s].bounds;
      if (!limits_agree[s]) series[s].lower.reset(), series[s].upper.reset();
      if (!limits_agree[s] || !targets_agree_[s]) series[s].target.reset();
    }
  }

  std::vector<Series> series;
  std::vector<bool> limits_agree;  ///< over the runs, of each series

 private:
  using Key = std::tuple<std::string, std::string, std::string>;
  template <class Named>
  static Key key_of(const Named& named) {
    return {named.window, named.requirement, named.trace};
  }

  void add(std::size_t run, const RunResult& result) {
    auto& all = index_[key_of(result)];
    if (std::ranges::any_of(all, [&](std::size_t s) { return last_run_[s] == run; })) return;  // the same window twice
    const auto same = std::ranges::find_if(all, [&](std::size_t s) {
      return series[s].measure == result.measure && series[s].parameters == result.parameters;
    });
    const std::size_t s = same == all.end() ? series.size() : *same;
    if (same == all.end()) {
      all.push_back(s);
      Series made{result.window, result.requirement, result.trace, result.measure, result.unit, result.required};
      made.lower = result.lower;
      made.upper = result.upper;
      made.parameters = result.parameters;
      made.target = result.target;
      series.push_back(std::move(made));
      limits_agree.push_back(true);
      targets_agree_.push_back(true);
      last_run_.push_back(run);
      runs_with_.push_back(0);
    }
    last_run_[s] = run;
    ++runs_with_[s];
    Series& its = series[s];
    if (its.lower != result.lower || its.upper != result.upper) limits_agree[s] = false;
    if (its.target != result.target) targets_agree_[s] = false;
    if (!result.value) return;
    if (result.at_least)
      ++its.bounds;
    else
      its.points.push_back({run, *result.value});
  }

  std::span<const Run> runs_;
  std::map<Key, std::vector<std::size_t>> index_;  ///< more than one where the measure changed within the lot
  std::vector<std::size_t> last_run_, runs_with_;
  std::vector<bool> targets_agree_;
};

/// Why a series has no index; empty where it has one.
std::string no_index_because(const Series& series, std::size_t runs, bool limits_agree) {
  if (series.without_value + series.bounds > 0) {
    std::string why;
    if (series.without_value > 0) why = fmt::format("{} of {} without a value", series.without_value, runs_text(runs));
    if (series.bounds > 0)
      why += fmt::format("{}{} of {} with a bound only", why.empty() ? "" : ", ", series.bounds, runs_text(runs));
    return why;
  }
  if (series.n() < kFewest) return fmt::format("{}, an index needs {}", runs_text(series.n()), kFewest);
  if (series.unit == Unit::kCount) return "a count is not normally distributed";
  if (!limits_agree) return "the limits changed within the lot";
  if (!series.lower && !series.upper) return "no limit is known";
  if (*series.sd == 0) return "all values are equal";
  return {};
}

void add_indices(Series& series) {
  Capability& c = series.capability;
  c.ppk = centred_capability(*series.mean, *series.sd, series.lower, series.upper);
  const auto ppk_limits = centred_capability_limits(*c.ppk, series.n());
  c.ppk_low = ppk_limits.low;
  c.ppk_high = ppk_limits.high;
  const bool held_still = *series.sd_short_term > 0;
  if (held_still) c.cpk = centred_capability(*series.mean, *series.sd_short_term, series.lower, series.upper);
  if (!series.lower || !series.upper) return;
  c.pp = capability(*series.lower, *series.upper, *series.sd);
  const auto pp_limits = capability_limits(*c.pp, series.n());
  c.pp_low = pp_limits.low;
  c.pp_high = pp_limits.high;
  if (held_still) c.cp = capability(*series.lower, *series.upper, *series.sd_short_term);
}

void add_charts(Series& series, const Options& options) {
  switch (options.chart) {
    case ChartKind::kXbarR:
    case ChartKind::kXbarS:
      if (series.n() >= 2 * options.subgroup) {
        auto pair = xbar_chart(series.points, options.subgroup, options.chart, options.rules);
        series.control = std::move(pair.control);
        series.spread = std::move(pair.spread);
      }
      return;
    case ChartKind::kEwma:
      if (series.n() >= 2)
        series.control =
            ewma_chart(series.points, *series.mean, *series.sd_short_term, options.ewma_weight, options.rules);
      return;
    default:
      if (series.n() >= 2) {
        auto pair = individuals_chart(series.points, options.rules);
        series.control = std::move(pair.control);
        series.spread = std::move(pair.spread);
      }
  }
}

void add_figures(Series& series, std::size_t all_runs, bool limits_agree, const Options& options,
                 ToleranceFactors& factors) {
  const auto value = [&](std::size_t i) { return series.points[i].value; };
  const std::size_t n = series.n(), runs = all_runs - series.measured_otherwise;
  if (n >= 1) {
    series.mean = mean_of(n, value);
    const auto [low, high] = std::ranges::minmax(series.points, {}, &Point::value);
    series.minimum = low.value;
    series.maximum = high.value;
  }
  if (n >= 2) {
    series.sd = sd_of(n, value);
    series.sd_short_term = short_term_sd(series.points);
  }
  series.note = no_index_because(series, runs, limits_agree);
  if (series.note.empty()) add_indices(series);
  if (n >= kFewest && n == runs && series.unit != Unit::kCount) {
    const double half = factors.of(n) * *series.sd;
    series.tolerance_interval = {*series.mean - half, *series.mean + half};
  }
  if (series.note.empty() && n < kFew) series.note = fmt::format("{} are few", runs_text(n));
  if (series.measured_otherwise > 0)
    series.note += fmt::format("{}{} of {} measured otherwise: a row of its own", series.note.empty() ? "" : "; ",
                               series.measured_otherwise, runs_text(all_runs));
  add_charts(series, options);
}

void add_verdict(Lot& lot, std::span<const Run> runs) {
  if (runs.empty()) return;
  lot.verdict = judge::Verdict::kPass;
  const auto smaller = [](const Run& a, const Run& b) { return *a.margin < *b.margin; };
  if (std::ranges::all_of(runs, [](const Run& run) { return run.margin.has_value(); })) {
    const auto smallest = std::ranges::min_element(runs, smaller);
    lot.margin = smallest->margin;
    lot.margin_bound = smallest->margin_bound;
    if (std::ranges::any_of(runs, [](const Run& run) { return run.margin_bound == judge::MarginBound::kAtMost; }))
      lot.margin_bound = judge::MarginBound::kAtMost;
  }
  for (const auto& run : runs) {
    lot.ids.push_back(run.id);
    lot.verdict = std::max(lot.verdict, run.verdict);
    switch (run.verdict) {
      case judge::Verdict::kPass:
        ++lot.pass;
        break;
      case judge::Verdict::kConditionalPass:
        ++lot.conditional_pass;
        break;
      case judge::Verdict::kUndetermined:
        ++lot.undetermined;
        break;
      case judge::Verdict::kConditionalFail:
        ++lot.conditional_fail;
        break;
      case judge::Verdict::kFail:
        ++lot.fail;
        break;
    }
  }
}

}  // namespace

Run run_of(std::string id, const judge::Judgement& judgement) {
  Run run{std::move(id), judgement.verdict, judgement.margin, judgement.margin_bound};
  run.results.reserve(judgement.all_size());
  for (std::size_t i = 0; i < judgement.all_size(); ++i) {
    const auto& outcome = judgement.all(i);
    run.results.push_back({judgement.windows[outcome.window].identity.name, outcome.requirement_name, outcome.trace,
                           outcome.measure.measure, outcome.value.unit, outcome.value.value, outcome.value.at_least,
                           outcome.lower, outcome.upper, outcome.required, outcome.verdict, outcome.margin,
                           outcome.target, outcome.measure.parameters});
  }
  return run;
}

std::optional<std::size_t> deciding_result(const Run& run) {
  std::optional<std::size_t> smallest;
  for (std::size_t i = 0; i < run.results.size(); ++i) {
    const auto& result = run.results[i];
    if (!result.required) continue;
    if (!result.value && result.verdict == judge::Verdict::kUndetermined) return i;
    if (result.margin && (!smallest || *result.margin < *run.results[*smallest].margin)) smallest = i;
  }
  return smallest;
}

Result<Lot> summarise(std::span<const Run> runs, const Options& options) {
  if (options.subgroup < 2 || options.subgroup > kLargestSubgroup)
    return Error{ErrorCode::kBadArgument,
                 fmt::format("found a subgroup of {} runs, expected 2 to {}", options.subgroup, kLargestSubgroup),
                 {},
                 fmt::format("{}", options.subgroup),
                 fmt::format("2 to {}", kLargestSubgroup)};
  if (!(options.ewma_weight > 0 && options.ewma_weight <= 1))
    return Error{ErrorCode::kBadArgument,
                 fmt::format("found the weight {}, expected above 0 and at most 1", options.ewma_weight),
                 {},
                 fmt::format("{}", options.ewma_weight),
                 "above 0 and at most 1"};
  Lot lot;
  add_verdict(lot, runs);
  Gathered gathered(runs);
  ToleranceFactors factors;
  for (std::size_t s = 0; s < gathered.series.size(); ++s)
    add_figures(gathered.series[s], runs.size(), gathered.limits_agree[s], options, factors);
  lot.series = std::move(gathered.series);
  for (std::size_t s = 0; s < lot.series.size(); ++s) {
    const auto& ppk = lot.series[s].capability.ppk;
    if (!ppk || !lot.series[s].required) continue;
    if (!lot.weakest || *ppk < *lot.series[*lot.weakest].capability.ppk) lot.weakest = s;
  }
  lot.sentence = sentence_of(lot);
  return lot;
}

}  // namespace ovenwright::lot
