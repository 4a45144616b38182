#include "core/judge/judge.h"

#include <algorithm>

#include "core/judge/bind.h"
#include "core/judge/cause.h"
#include "core/judge/decide_run.h"
#include "core/judge/main_zones.h"
#include "core/judge/risk.h"
#include "core/judge/sentence.h"
#include "core/judge/zones.h"
#include "core/measure/parameter.h"

namespace ovenwright::judge {
namespace {

/// What must be equal for two requirements to share one evaluation of a trace.
struct Budget {
  measure::Tolerance tolerance;
  double instrument_C = 1;
};
bool operator==(const Budget& a, const Budget& b) {
  return a.tolerance.floor_C == b.tolerance.floor_C && a.tolerance.fraction == b.tolerance.fraction &&
         a.instrument_C == b.instrument_C;
}

/// Definitions to evaluate with one budget on one trace, or on the board, and the outcomes that wait for them.
struct Job {
  std::optional<std::size_t> channel;
  std::size_t window = 0;
  Budget budget;
  std::vector<measure::Definition> definitions;
  std::vector<std::pair<Outcome*, std::size_t>> waiting;  ///< with the definition's index
};

class Judge {
 public:
  Judge(const run::Run& run, std::vector<window::ProcessWindow> windows, bool window_assumed, const board::Board* board,
        const std::optional<measure::Place>& place)
      : run_(run), place_(place) {
    judgement_.windows = std::move(windows);
    judgement_.window_assumed = window_assumed;
    for (const auto& channel : run.channels) seats_.push_back(seat_of(channel, board));
    auto bound = bind_requirements(run, judgement_.windows, board);
    judgement_.results = std::move(bound.results);
    judgement_.board_results = std::move(bound.board_results);
    judgement_.warnings = std::move(bound.warnings);
    judgement_.bodies_not_judged = bound.bodies_not_judged;
    judgement_.sides_not_judged = bound.sides_not_judged;
  }

  Judgement judge() && {
    plan(judgement_.results);
    plan(judgement_.board_results);
    for (auto& job : jobs_) evaluate(job);
    for (auto* outcomes : {&judgement_.results, &judgement_.board_results})
      for (auto& outcome : *outcomes) decide_on(outcome);
    if (place_)
      for (auto& job : jobs_) find_zones(job);
    decide_run(judgement_);
    judgement_.sentence = compose(judgement_);
    return std::move(judgement_);
  }

 private:
  Budget budget_of(std::size_t channel, std::size_t window) {
    const auto& uncertainty = judgement_.windows[window].uncertainty;
    const auto* placement = seats_[channel].placement;
    Budget budget;
    budget.instrument_C = uncertainty.instrument_C;
    const bool own = placement && placement->thermocouple;
    if (!own && uncertainty.tolerance_C) {
      budget.tolerance = {*uncertainty.tolerance_C, 0};
      return budget;
    }
    const auto& name = own ? *placement->thermocouple : uncertainty.thermocouple;
    const auto tolerance = measure::tolerance_of(name);
    if (tolerance)
      budget.tolerance = *tolerance;
    else
      warn(tolerance.error().message + ": K class 1 is taken for " + seats_[channel].name);
    return budget;
  }

  void plan(std::vector<Outcome>& outcomes) {
    for (auto& outcome : outcomes) {
      if (outcome.cause.kind == Cause::Kind::kNoChannel) continue;
      if (const auto problem = measure::problem(outcome.measure)) {
        refuse(outcome, problem->message);
        continue;
      }
      const auto& p = outcome.measure.parameters;
      const auto unresolved = [](const std::optional<measure::Level>& level) {
        return level && std::holds_alternative<measure::TcReference>(*level);
      };
      if (unresolved(p.T1) || unresolved(p.T2) || unresolved(p.reference)) {
        refuse(outcome, outcome.cause.detail.empty() ? "Tc is a limit of bodies" : outcome.cause.detail);
        continue;
      }
      Job& job = job_for(outcome);
      const auto known = std::ranges::find(job.definitions, outcome.measure);
      const auto index = static_cast<std::size_t>(known - job.definitions.begin());
      if (known == job.definitions.end()) job.definitions.push_back(outcome.measure);
      job.waiting.emplace_back(&outcome, index);
    }
  }

  static void refuse(Outcome& outcome, const std::string& reason) {
    outcome.value.unit = measure::describe(outcome.measure.measure).unit;
    outcome.value.no_value = measure::NoValue::kUndetermined;
    outcome.value.reason = reason;
    if (outcome.cause.kind == Cause::Kind::kNone) outcome.cause = {.kind = Cause::Kind::kOther, .detail = reason};
  }

  Job& job_for(const Outcome& outcome) {
    const Budget budget = outcome.channel ? budget_of(*outcome.channel, outcome.window) : Budget{};
    for (auto& job : jobs_)
      if (job.channel == outcome.channel && (outcome.channel ? job.budget == budget : job.window == outcome.window))
        return job;
    jobs_.push_back({outcome.channel, outcome.window, budget, {}, {}});
    return jobs_.back();
  }

  measure::Subject subject(std::size_t channel, const Budget& budget) const {
    measure::Subject subject;
    subject.channel = &run_.channels[channel];
    subject.tolerance = budget.tolerance;
    subject.instrument_C = budget.instrument_C;
    subject.x_mm = seats_[channel].x_mm;
    subject.air = seats_[channel].kind == board::Kind::kAir;
    subject.bottom = seats_[channel].side == board::Side::kBottom;
    return subject;
  }

  std::vector<measure::Subject> subjects(std::size_t window) {
    std::vector<measure::Subject> all;
    for (std::size_t i = 0; i < run_.channels.size(); ++i) all.push_back(subject(i, budget_of(i, window)));
    return all;
  }

  void evaluate(Job& job) {
    const auto values = job.channel ? measure::evaluate(subject(*job.channel, job.budget), job.definitions, place_)
                                    : measure::evaluate_board(subjects(job.window), job.definitions, place_);
    for (auto& [outcome, index] : job.waiting) outcome->value = values[index];
  }

  void decide_on(Outcome& outcome) {
    outcome.cause = cause_of(outcome, run_, seats_);
    outcome.not_reached_by = not_reached_by(outcome, run_, seats_);
    if (outcome.cause.kind == Cause::Kind::kTcUnknown && outcome.value.reason.empty())
      outcome.value.reason = outcome.cause.detail;
    settle(outcome, judgement_.windows[outcome.window].decision_rule);
    name_source(outcome);
    if (outcome.cannot_pass)
      warn(outcome.requirement_name + ": its limits are narrower than 2 U, so nothing can pass under the guarded rule");
    if (!is_out(outcome.verdict)) return;
    const bool high = outcome.value.value && outcome.upper && *outcome.value.value > *outcome.upper;
    const Risk risk =
        risk_of(outcome.measure.measure, high ? Direction::kHigh : Direction::kLow, outcome.tc_C.has_value());
    outcome.risk = risk.text;
    outcome.risk_source = risk.source;
  }

  /// The source of the nearer limit, where the two differ.
  void name_source(Outcome& outcome) const {
    const auto& requirement = judgement_.windows[outcome.window].requirements[outcome.requirement];
    if (!outcome.value.value) return;
    const double value = *outcome.value.value;
    const bool upper = outcome.upper && (!outcome.lower || *outcome.upper - value < value - *outcome.lower);
    const auto& own = upper ? requirement.upper_source : requirement.lower_source;
    outcome.source = own.empty() ? requirement.source : own;
  }

  void find_zones(Job& job) {
    std::vector<measure::Definition> definitions;
    std::vector<Outcome*> outcomes;
    for (auto& [outcome, index] : job.waiting) {
      if (!is_out(outcome->verdict)) continue;
      definitions.push_back(job.definitions[index]);
      outcomes.push_back(outcome);
    }
    if (outcomes.empty()) return;
    const auto shares = job.channel ? zone_shares(subject(*job.channel, job.budget), definitions, *place_)
                                    : board_zone_shares(board_subjects(job.window), definitions, *place_);
    for (std::size_t i = 0; i < outcomes.size(); ++i) {
      outcomes[i]->zone_shares = shares[i];
      outcomes[i]->zones = main_zones(shares[i]);
    }
  }

  std::vector<measure::Subject> board_subjects(std::size_t window) {
    auto all = subjects(window);
    std::erase_if(all, [](const measure::Subject& one) { return one.air || !one.channel->trace; });
    return all;
  }

  void warn(std::string text) {
    auto& warnings = judgement_.warnings;
    if (std::ranges::find(warnings, text) == warnings.end()) warnings.push_back(std::move(text));
  }

  const run::Run& run_;
  const std::optional<measure::Place>& place_;
  std::vector<Seat> seats_;
  Judgement judgement_;
  std::vector<Job> jobs_;
};

}  // namespace

Judgement judge(const run::Run& run, std::vector<window::ProcessWindow> windows, bool window_assumed,
                const board::Board* board, const std::optional<measure::Place>& place) {
  return Judge(run, std::move(windows), window_assumed, board, place).judge();
}

}  // namespace ovenwright::judge
