#include "core/compare/sentence.h"

#include <algorithm>
#include <cmath>

#include "core/judge/decide.h"
#include "core/judge/render.h"

namespace ovenwright::compare {
namespace {

using judge::Argument;
using judge::Planned;
using judge::Verdict;

Argument counted(const char* name, std::size_t count) { return {.name = name, .value = static_cast<int>(count)}; }
Argument worded(const char* name, std::string text) { return {.name = name, .value = std::move(text)}; }
Argument letter(Side side) { return worded("side", side == Side::kA ? "A" : "B"); }

/// The significant difference that is the most times its uncertainty; null without any.
const Difference* clearest(const Comparison& comparison) {
  const Difference* best = nullptr;
  // Products, not quotients: an uncertainty may be 0.
  const auto clearer = [](const Difference& x, const Difference& y) {
    return std::abs(*x.difference) * *y.expanded_uncertainty > std::abs(*y.difference) * *x.expanded_uncertainty;
  };
  for (const auto& result : comparison.results)
    if (result.significant.value_or(false) && (best == nullptr || clearer(result, *best))) best = &result;
  return best;
}

class Composer {
 public:
  Composer(const Comparison& comparison, const Phrases& phrases) : comparison_(comparison), phrases_(phrases) {}

  judge::Sentence sentence() && {
    say_margins();
    comparison_.of_groups ? say_runs_out() : say_out();
    say_speed();
    say_differences();
    return std::move(sentence_);
  }

  judge::Sentence note() && {
    if (comparison_.of_groups)
      say({.clause = {"shared.groups", {counted("n_a", comparison_.runs_a), counted("n_b", comparison_.runs_b)}}});
    else
      say({.clause = {comparison_.same_thermocouples ? "shared" : "shared.not", {}}});
    if (comparison_.several_a || comparison_.several_b)
      say_several();
    else if (comparison_.recipes_known)
      say_recipes();
    return std::move(sentence_);
  }

 private:
  void say(const Planned& planned) { judge::append(sentence_, planned, phrases_); }

  void say_margins() {
    const auto& m = comparison_.margins;
    if (!m.a && !m.b) return say({.clause = {"margin.none.both", {}}});
    if (!m.a || !m.b) return say({.clause = {"margin.none.one", {letter(m.a ? Side::kB : Side::kA)}}});
    const std::string a = phrases_.margin(*m.a, m.a_bound), b = phrases_.margin(*m.b, m.b_bound);
    const std::string means = comparison_.of_groups ? ".means" : "";
    if (m.more) {
      const bool more_b = *m.more == Side::kB;
      return say({.clause = {"margin.more" + means,
                             {letter(*m.more), worded("more", more_b ? b : a), worded("less", more_b ? a : b)}}});
    }
    const bool few = comparison_.of_groups && !m.expanded_uncertainty;
    say({.clause = {few ? "margin.few" : "margin.same" + means, {worded("a", a), worded("b", b)}}});
  }

  /// Required results of a side whose verdict `is` takes, as numbers of marks.
  template <class Is>
  std::vector<std::size_t> marks(Side side, const Is& is) const {
    const auto& results = comparison_.results;
    std::vector<std::size_t> found;
    for (std::size_t i = 0; i < results.size(); ++i) {
      const auto& verdict = side == Side::kA ? results[i].verdict_a : results[i].verdict_b;
      if (results[i].required && verdict && is(*verdict)) found.push_back(side == Side::kA ? i : results.size() + i);
    }
    return found;
  }

  struct Plan {
    const char* id;
    std::vector<std::size_t> marks;
  };
  Plan plan_of(Side side) const {
    if (auto out = marks(side, judge::is_out); !out.empty()) return {"out.some", std::move(out)};
    if (auto open = marks(side, [](Verdict v) { return v == Verdict::kUndetermined; }); !open.empty())
      return {"out.open", std::move(open)};
    if (auto within = marks(side, [](Verdict v) { return v == Verdict::kConditionalPass; }); !within.empty())
      return {"out.within", std::move(within)};
    return {"out.none", {}};
  }

  void say_out() {
    const auto a = plan_of(Side::kA), b = plan_of(Side::kB);
    if (a.marks.empty() && b.marks.empty()) return say({.clause = {"out.neither", {}}});
    const auto one = [&](Side side, const Plan& plan) {
      say({.clause = {plan.id, {letter(side), counted("k", plan.marks.size())}},
           .count = static_cast<int>(plan.marks.size()),
           .outcomes = plan.marks});
    };
    // The one with more margin first.
    const bool b_first = comparison_.margins.more == Side::kB;
    one(b_first ? Side::kB : Side::kA, b_first ? b : a);
    one(b_first ? Side::kA : Side::kB, b_first ? a : b);
  }

  /// Of groups: how many runs are out on either side.
  void say_runs_out() {
    if (comparison_.out_a == 0 && comparison_.out_b == 0) return say({.clause = {"runs.neither", {}}});
    const auto one = [&](Side side) {
      const std::size_t out = side == Side::kA ? comparison_.out_a : comparison_.out_b;
      if (out == 0) return say({.clause = {"runs.none", {letter(side)}}});
      const std::size_t runs = side == Side::kA ? comparison_.runs_a : comparison_.runs_b;
      if (runs == 1) return say({.clause = {"runs.one", {letter(side)}}});
      say({.clause = {"runs.some", {letter(side), counted("k", out), counted("n", runs)}},
           .count = static_cast<int>(out)});
    };
    const bool b_first = comparison_.margins.more == Side::kB;
    one(b_first ? Side::kB : Side::kA);
    one(b_first ? Side::kA : Side::kB);
  }

  void say_several() {
    if (comparison_.several_a && comparison_.several_b) return say({.clause = {"recipes.several.both", {}}});
    say({.clause = {"recipes.several.one", {letter(comparison_.several_a ? Side::kA : Side::kB)}}});
  }

  void say_speed() {
    if (!comparison_.speed_a_mm_per_min || !comparison_.speed_b_mm_per_min) return;
    const double a = *comparison_.speed_a_mm_per_min, b = *comparison_.speed_b_mm_per_min;
    if (!comparison_.faster) return say({.clause = {"speed.same", {worded("speed", phrases_.speed(a))}}});
    say({.clause = {b > a ? "speed.more" : "speed.fewer",
                    {letter(Side::kB), worded("share", phrases_.share(std::abs(b / a - 1)))}}});
  }

  void say_differences() {
    std::size_t known = 0, significant = 0;
    for (const auto& result : comparison_.results) {
      known += result.significant ? 1 : 0;
      significant += result.significant.value_or(false) ? 1 : 0;
    }
    // Where a group has one run the sentence about the margins says that there is no interval.
    const bool any =
        std::ranges::any_of(comparison_.results, [](const auto& result) { return result.difference.has_value(); });
    if (known == 0 && comparison_.of_groups && any) return;
    if (known == 0) return say({.clause = {"differ.nothing", {}}});
    const auto* most = clearest(comparison_);
    if (most == nullptr) return say({.clause = {"differ.none", {counted("n", known)}}});
    const int digits = judge::usual_digits(most->measure);
    const auto value = [&](const char* name, double of) {
      return Argument{.name = name,
                      .value = of,
                      .unit = most->unit,
                      .digits = judge::digits_needed(of, digits, most->lower, most->upper)};
    };
    const auto difference = [&](double of, int decimals) {
      return phrases_.number({.name = "difference",
                              .value = of,
                              .unit = most->unit,
                              .digits = decimals,
                              .role = Argument::Role::kDifference});
    };
    const std::string sign = *most->difference > 0 ? "+" : "";
    Planned planned{
        .clause = {most->trace.empty() ? "differ.board" : "differ.trace",
                   {counted("k", significant), counted("n", known), worded("requirement", most->requirement),
                    worded("trace", most->trace), value("a", *most->a), value("b", *most->b),
                    worded("difference", sign + difference(*most->difference, digits)),
                    worded("uncertainty", difference(*most->expanded_uncertainty, digits + 1))}},
        .count = static_cast<int>(significant)};
    const auto index = static_cast<std::size_t>(most - comparison_.results.data());
    planned.outcomes = {index, comparison_.results.size() + index};
    say(planned);
  }

  void say_recipes() {
    std::vector<std::string> zones;
    bool speed = false;
    for (const auto& change : comparison_.recipe_changes) {
      speed |= change.zone.empty();
      if (!change.zone.empty() && std::ranges::find(zones, change.zone) == zones.end()) zones.push_back(change.zone);
    }
    if (zones.empty() && !speed) return say({.clause = {"recipes.same", {}}});
    const std::size_t count = zones.size();
    if (speed) zones.emplace_back();
    say({.clause = {count == 0 ? "recipes.speed"
                    : speed    ? "recipes.zones_speed"
                               : "recipes.zones",
                    {counted("k", count)}},
         .count = static_cast<int>(count),
         .zones = std::move(zones)});
  }

  const Comparison& comparison_;
  const Phrases& phrases_;
  judge::Sentence sentence_;
};

}  // namespace

Mark mark_of(const Comparison& comparison, std::size_t number) {
  const std::size_t results = comparison.results.size();
  return number < results ? Mark{Side::kA, number} : Mark{Side::kB, number - results};
}

judge::Sentence compose(const Comparison& comparison, const Phrases& phrases) {
  return Composer(comparison, phrases).sentence();
}

judge::Sentence compose_note(const Comparison& comparison, const Phrases& phrases) {
  return Composer(comparison, phrases).note();
}

}  // namespace ovenwright::compare
