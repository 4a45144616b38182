#include "core/judge/judge.h"

#include <algorithm>
#include <limits>

#include "core/judge/bind.h"
#include "core/judge/cause.h"
#include "core/judge/decide_run.h"
#include "core/judge/main_zones.h"
#include "core/judge/risk.h"
#include "core/judge/sentence.h"
#include "core/judge/zones.h"
#include "core/measure/parameter.h"
#include "core/units/phrase.h"

namespace ovenwright::judge {
namespace {

/// Windows that state the same uncertainties are evaluated together: what is asked of each trace and of the board.
struct Group {
  window::UncertaintyBudget uncertainty;
  std::vector<measure::Request> requests;  ///< one for each channel, in their order
  std::vector<measure::Definition> board;
  /// An outcome and its value's place: the channel (absent: the board) and the definition's index there.
  struct Waiting {
    Outcome* outcome;
    std::optional<std::size_t> channel;
    std::size_t definition;
  };
  std::vector<Waiting> waiting;
};

bool same(const window::UncertaintyBudget& a, const window::UncertaintyBudget& b) {
  return a.thermocouple == b.thermocouple && a.tolerance_C == b.tolerance_C && a.instrument_C == b.instrument_C;
}

/// The index of a definition in a list, which it joins where it is new.
std::size_t index_in(std::vector<measure::Definition>& definitions, const measure::Definition& definition) {
  const auto known = std::ranges::find(definitions, definition);
  const auto index = static_cast<std::size_t>(known - definitions.begin());
  if (known == definitions.end()) definitions.push_back(definition);
  return index;
}

class Judge {
 public:
  Judge(const run::Run& run, std::vector<window::ProcessWindow> windows, bool window_assumed, const board::Board* board,
        const std::optional<measure::Place>& place, unsigned threads)
      : run_(run), place_(place), threads_(threads) {
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

  Judgement values() && {
    plan(judgement_.results);
    plan(judgement_.board_results);
    for (auto& group : groups_) evaluate(group, false);
    for (auto* outcomes : {&judgement_.results, &judgement_.board_results})
      for (auto& outcome : *outcomes) settle(outcome, window::DecisionRule::kSimple);
    decide_run(judgement_);
    return std::move(judgement_);
  }

  Judgement judge() && {
    plan(judgement_.results);
    plan(judgement_.board_results);
    for (auto& group : groups_) evaluate(group, true);
    for (auto* outcomes : {&judgement_.results, &judgement_.board_results})
      for (auto& outcome : *outcomes) decide_on(outcome);
    find_zones();
    suspect();
    decide_run(judgement_);
    judgement_.sentence = compose(judgement_);
    return std::move(judgement_);
  }

 private:
  void plan(std::vector<Outcome>& outcomes) {
    for (auto& outcome : outcomes) {
      if (outcome.cause.kind == Cause::Kind::kNoChannel) continue;
      const auto& p = outcome.measure.parameters;
      if (is_tc(p.T1) || is_tc(p.T2) || is_tc(p.reference)) {
        refuse(outcome, outcome.cause.detail.empty() ? say(Phrase::kTcOfBodies) : outcome.cause.detail);
        continue;
      }
      if (const auto problem = measure::problem(outcome.measure)) {
        refuse(outcome, problem->message);
        continue;
      }
      Group& group = group_of(judgement_.windows[outcome.window]);
      auto& definitions = outcome.channel ? group.requests[*outcome.channel].definitions : group.board;
      group.waiting.push_back({&outcome, outcome.channel, index_in(definitions, outcome.measure)});
    }
  }

  static bool is_tc(const std::optional<measure::Level>& level) {
    return level && std::holds_alternative<measure::TcReference>(*level);
  }

  static void refuse(Outcome& outcome, const std::string& reason) {
    outcome.value.unit = measure::describe(outcome.measure.measure).unit;
    outcome.value.no_value = measure::NoValue::kUndetermined;
    outcome.value.reason = reason;
    if (outcome.cause.kind == Cause::Kind::kNone) outcome.cause = {.kind = Cause::Kind::kOther, .detail = reason};
  }

  Group& group_of(const window::ProcessWindow& window) {
    for (auto& group : groups_)
      if (same(group.uncertainty, window.uncertainty)) return group;
    Group& group = groups_.emplace_back();
    group.uncertainty = window.uncertainty;
    for (std::size_t i = 0; i < run_.channels.size(); ++i)
      group.requests.push_back({subject(i, window.uncertainty), {}});
    return group;
  }

  measure::Subject subject(std::size_t channel, const window::UncertaintyBudget& uncertainty) {
    auto seated = subject_of(run_.channels[channel], seats_[channel], uncertainty);
    if (!seated.warning.empty()) warn(std::move(seated.warning));
    return seated.subject;
  }

  void evaluate(Group& group, bool uncertainty) {
    const auto values =
        measure::evaluate_all(group.requests, group.board, place_, {.uncertainty = uncertainty, .threads = threads_});
    for (auto& one : group.waiting)
      one.outcome->value = one.channel ? values.by_request[*one.channel][one.definition] : values.board[one.definition];
  }

  void decide_on(Outcome& outcome) {
    outcome.cause = cause_of(outcome, run_, seats_);
    outcome.not_reached_by = not_reached_by(outcome, run_, seats_);
    if (outcome.cause.kind == Cause::Kind::kTcUnknown && outcome.value.reason.empty())
      outcome.value.reason = outcome.cause.detail;
    settle(outcome, judgement_.windows[outcome.window].decision_rule);
    name_source(outcome);
    if (outcome.cannot_pass) warn(say(Phrase::kNarrow, {outcome.requirement_name}));
    if (!is_out(outcome.verdict)) return;
    const Risk risk = risk_of(outcome);
    outcome.risk = risk.text;
    outcome.risk_source = risk.source;
  }

  Risk risk_of(const Outcome& outcome) const {
    const auto& window = judgement_.windows[outcome.window];
    const auto melts_at_C = window.solidus_C ? window.solidus_C : window.liquidus_C;
    if (!outcome.value.value) {
      const auto& p = outcome.measure.parameters;
      double needed_C = p.level.value_or(p.from.value_or(-std::numeric_limits<double>::infinity()));
      for (const auto& end : {p.T1, p.T2})
        if (const auto* given = end ? std::get_if<double>(&*end) : nullptr) needed_C = std::max(needed_C, *given);
      return risk_of_not_reaching(melts_at_C && needed_C >= *melts_at_C);
    }
    const bool high = outcome.upper && *outcome.value.value > *outcome.upper,
               wave = window.process == window::Process::kWave;
    return judge::risk_of(outcome.measure.measure, high ? Direction::kHigh : Direction::kLow,
                          {.against_tc = outcome.tc_C.has_value(),
                           .wave = wave,
                           .stays_solid = wave && outcome.upper && melts_at_C && *outcome.upper <= *melts_at_C});
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

  /// Traces with a required result outside, and all of them where one of the board is.
  void suspect() {
    const auto is_failing = [](const Outcome& outcome) { return outcome.required && is_out(outcome.verdict); };
    const bool board = std::ranges::any_of(judgement_.board_results, is_failing);
    for (std::size_t i = 0; i < run_.channels.size(); ++i) {
      const auto own = [&](const Outcome& outcome) { return outcome.channel == i && is_failing(outcome); };
      if (!std::ranges::any_of(judgement_.results, own) && (!board || seats_[i].kind == board::Kind::kAir)) continue;
      for (const auto& fault : run_.channels[i].faults) {
        if (fault.action != run::FaultAction::kFlagged || !tells_of_the_trace(fault.kind)) continue;
        judgement_.suspicions.push_back({i, seats_[i].name, fault.kind, fault.from_s, fault.to_s});
        break;
      }
    }
  }

  static bool tells_of_the_trace(run::FaultKind kind) {
    return kind == run::FaultKind::kReversedPolarity || kind == run::FaultKind::kDetached ||
           kind == run::FaultKind::kSwappedPlacement || kind == run::FaultKind::kStuck;
  }

  void find_zones() {
    if (!place_ || !place_->entry_known) return;
    if (std::ranges::none_of(groups_, [](const Group& group) {
          return std::ranges::any_of(group.waiting, [](const auto& one) { return is_out(one.outcome->verdict); });
        }))
      return;
    const ZoneEstimate estimate(*place_);
    for (const auto& group : groups_) find_zones(group, estimate);
  }

  static void find_zones(const Group& group, const ZoneEstimate& estimate) {
    for (std::size_t channel = 0; channel < group.requests.size(); ++channel)
      put_zones(group, channel, [&](std::span<const measure::Definition> definitions) {
        return estimate.of_trace(group.requests[channel].subject, definitions);
      });
    put_zones(group, std::nullopt, [&](std::span<const measure::Definition> definitions) {
      std::vector<measure::Subject> subjects;
      for (const auto& request : group.requests)
        if (!request.subject.air && request.subject.channel->trace) subjects.push_back(request.subject);
      return estimate.of_board(subjects, definitions);
    });
  }

  /// @param shares_of  zone shares of some definitions on that channel, or on the board
  template <class SharesOf>
  static void put_zones(const Group& group, std::optional<std::size_t> channel, const SharesOf& shares_of) {
    std::vector<measure::Definition> definitions;
    std::vector<Outcome*> outcomes;
    for (const auto& one : group.waiting) {
      if (one.channel != channel || !is_out(one.outcome->verdict)) continue;
      definitions.push_back(one.outcome->measure);
      outcomes.push_back(one.outcome);
    }
    if (outcomes.empty()) return;
    auto shares = shares_of(definitions);
    for (std::size_t i = 0; i < outcomes.size(); ++i) {
      outcomes[i]->zones = main_zones(shares[i]);
      outcomes[i]->zone_shares = std::move(shares[i]);
    }
  }

  void warn(std::string text) {
    auto& warnings = judgement_.warnings;
    if (std::ranges::find(warnings, text) == warnings.end()) warnings.push_back(std::move(text));
  }

  const run::Run& run_;
  const std::optional<measure::Place>& place_;
  std::vector<Seat> seats_;
  unsigned threads_;
  Judgement judgement_;
  std::vector<Group> groups_;
};

}  // namespace

Judgement judge(const run::Run& run, std::vector<window::ProcessWindow> windows, bool window_assumed,
                const board::Board* board, const std::optional<measure::Place>& place, unsigned threads) {
  return Judge(run, std::move(windows), window_assumed, board, place, threads).judge();
}

Judgement values(const run::Run& run, std::vector<window::ProcessWindow> windows, const board::Board* board,
                 const std::optional<measure::Place>& place) {
  return Judge(run, std::move(windows), false, board, place, 1).values();
}

}  // namespace ovenwright::judge
