#include "core/judge/problems.h"

#include <algorithm>
#include <limits>
#include <utility>

#include "core/judge/main_zones.h"

namespace ovenwright::judge {
namespace {

using measure::Measure;

constexpr double kNone = std::numeric_limits<double>::infinity();

Direction direction_of(const Outcome& outcome) {
  return outcome.value.value && outcome.upper && *outcome.value.value > *outcome.upper ? Direction::kHigh
                                                                                       : Direction::kLow;
}

bool same_requirement(const Outcome& a, const Outcome& b) {
  return a.window == b.window && a.requirement == b.requirement;
}

double margin_or_none(const Judgement& judgement, std::size_t index) {
  return judgement.all(index).margin.value_or(kNone);
}

class Joiner {
 public:
  explicit Joiner(const Judgement& judgement) : judgement_(judgement), taken_(judgement.all_size(), false) {}

  std::vector<Problem> problems() && {
    join_never_reached();
    for (std::size_t i = 0; i < taken_.size(); ++i)
      if (is_free(i)) join_like(i);
    std::ranges::stable_sort(problems_, [&](const Problem& a, const Problem& b) { return rank(a) < rank(b); });
    return std::move(problems_);
  }

 private:
  bool is_free(std::size_t i) const {
    const Outcome& outcome = judgement_.all(i);
    return !taken_[i] && outcome.required && is_out(outcome.verdict);
  }

  static bool is_zero_time(const Outcome& outcome) {
    return outcome.measure.measure == Measure::kTimeAbove && outcome.value.value == 0.0 && !outcome.value.at_least;
  }

  /// The peak of the same trace that is too low and was not joined yet; all_size() where there is none.
  std::size_t low_peak(const Outcome& time) const {
    for (std::size_t i = 0; i < taken_.size(); ++i) {
      const Outcome& peak = judgement_.all(i);
      if (is_free(i) && peak.channel && peak.channel == time.channel && peak.measure.measure == Measure::kPeak &&
          peak.value.value && !peak.value.at_least && direction_of(peak) == Direction::kLow)
        return i;
    }
    return taken_.size();
  }

  void join_never_reached() {
    for (std::size_t i = 0; i < taken_.size(); ++i) {
      if (!is_free(i) || !is_zero_time(judgement_.all(i))) continue;
      Problem both, alone;
      both.kind = alone.kind = Problem::Kind::kNeverReached;
      for (std::size_t k = i; k < taken_.size(); ++k) {
        const Outcome& time = judgement_.all(k);
        if (!is_free(k) || !is_zero_time(time) || !same_requirement(time, judgement_.all(i))) continue;
        taken_[k] = true;
        const std::size_t peak = low_peak(time);
        if (peak == taken_.size()) {
          alone.outcomes.push_back(k);
        } else {
          taken_[peak] = true;
          both.outcomes.push_back(k);
          both.peaks.push_back(peak);
        }
      }
      sort_by_peak(both);
      for (Problem* problem : {&both, &alone})
        if (!problem->outcomes.empty()) keep(std::move(*problem));
    }
  }

  void sort_by_peak(Problem& problem) const {
    std::vector<std::size_t> order(problem.peaks.size());
    for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
    std::ranges::stable_sort(order, [&](std::size_t a, std::size_t b) {
      return margin_or_none(judgement_, problem.peaks[a]) < margin_or_none(judgement_, problem.peaks[b]);
    });
    Problem sorted = problem;
    for (std::size_t i = 0; i < order.size(); ++i) {
      sorted.outcomes[i] = problem.outcomes[order[i]];
      sorted.peaks[i] = problem.peaks[order[i]];
    }
    problem = std::move(sorted);
  }

  void join_like(std::size_t first) {
    const Outcome& like = judgement_.all(first);
    Problem problem;
    problem.kind = like.value.value ? Problem::Kind::kOut : Problem::Kind::kNotReached;
    problem.direction = direction_of(like);
    problem.at_least = like.value.at_least;
    for (std::size_t i = first; i < taken_.size(); ++i) {
      const Outcome& outcome = judgement_.all(i);
      if (!is_free(i) || !same_requirement(outcome, like) ||
          outcome.value.value.has_value() != like.value.value.has_value() ||
          direction_of(outcome) != problem.direction || outcome.value.at_least != like.value.at_least)
        continue;
      taken_[i] = true;
      problem.outcomes.push_back(i);
    }
    std::ranges::stable_sort(problem.outcomes, [&](std::size_t a, std::size_t b) {
      return margin_or_none(judgement_, a) < margin_or_none(judgement_, b);
    });
    keep(std::move(problem));
  }

  /// What all the placements that a requirement binds are: all there are, all joints or all bodies.
  Problem::All all_of(const Outcome& outcome, std::ptrdiff_t bound) const {
    std::vector<std::string> traces;
    for (const auto& one : judgement_.results)
      if (std::ranges::find(traces, one.trace) == traces.end()) traces.push_back(one.trace);
    if (std::cmp_equal(traces.size(), bound)) return Problem::All::kPlacements;
    switch (judgement_.windows[outcome.window].requirements[outcome.requirement].applies_to.kind) {
      case window::AppliesTo::Kind::kJoint:
        return Problem::All::kJoints;
      case window::AppliesTo::Kind::kBody:
        return Problem::All::kBodies;
      default:
        return Problem::All::kNo;
    }
  }

  void keep(Problem problem) {
    const auto& first = judgement_.all(problem.outcomes.front());
    const auto bound = std::ranges::count_if(judgement_.results,
                                             [&](const Outcome& outcome) { return same_requirement(outcome, first); });
    if (problem.outcomes.size() >= 3 && std::cmp_equal(problem.outcomes.size(), bound))
      problem.all = all_of(first, bound);
    problem.within = std::ranges::all_of(
        problem.outcomes, [&](std::size_t i) { return judgement_.all(i).verdict == Verdict::kConditionalFail; });
    problems_.push_back(std::move(problem));
  }

  /// Smallest margin; behind all margins a problem without one, and one without a value behind that.
  std::pair<int, double> rank(const Problem& problem) const {
    double smallest = kNone;
    for (const auto* indexes : {&problem.outcomes, &problem.peaks})
      for (const std::size_t i : *indexes) smallest = std::min(smallest, margin_or_none(judgement_, i));
    return {problem.kind == Problem::Kind::kNotReached ? 2 : smallest == kNone ? 1 : 0, smallest};
  }

  const Judgement& judgement_;
  std::vector<bool> taken_;
  std::vector<Problem> problems_;
};

}  // namespace

std::vector<Problem> problems_of(const Judgement& judgement) { return Joiner(judgement).problems(); }

std::vector<std::string> common_zones(const Judgement& judgement, const std::vector<std::size_t>& outcomes) {
  std::vector<ZoneShare> mean;
  double members = 0;
  for (const std::size_t i : outcomes) {
    const auto& shares = judgement.all(i).zone_shares;
    if (!shares.empty()) ++members;
    auto after = mean.begin();  // a zone not seen yet goes behind the one before it in the oven
    for (const auto& share : shares) {
      auto found = std::ranges::find(mean, share.zone, &ZoneShare::zone);
      if (found == mean.end()) found = mean.insert(after, {share.zone, {}, 0});
      found->share += share.share;
      after = found + 1;
    }
  }
  for (auto& share : mean) share.share /= members;
  return main_zones(mean);
}

}  // namespace ovenwright::judge
