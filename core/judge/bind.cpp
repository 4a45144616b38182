#include "core/judge/bind.h"

#include <algorithm>
#include <cctype>
#include <string_view>

#include "core/measure/parameter.h"
#include "core/units/phrase.h"
#include "core/window/classification.h"

namespace ovenwright::judge {
namespace {

using measure::Level;
using measure::TcReference;
using window::AppliesTo;
using window::TcOffset;

bool is_tc(const std::optional<window::Limit>& limit) { return limit && std::holds_alternative<TcOffset>(*limit); }
bool is_tc(const std::optional<Level>& level) { return level && std::holds_alternative<TcReference>(*level); }

bool measure_needs_tc(const window::Requirement& requirement) {
  const auto& p = requirement.measure.parameters;
  return is_tc(p.T1) || is_tc(p.T2) || is_tc(p.reference);
}
bool limit_needs_tc(const window::Requirement& requirement) {
  return is_tc(requirement.lower) || is_tc(requirement.upper) || is_tc(requirement.target);
}

/// A part's classification temperature, or what to enter to have it.
struct Tc {
  std::optional<double> value_C;
  std::string enter;
};

Tc tc_of(const Seat& seat, const board::Board& board, const window::ProcessWindow& window) {
  if (!seat.placement->part) return {{}, say(Phrase::kEnterPartOf, {seat.name})};
  const board::Part* part = board.part(*seat.placement->part);
  if (!part) return {{}, say(Phrase::kEnterPart, {*seat.placement->part})};
  const bool thickness = part->package_thickness_mm.has_value(), volume = part->package_volume_mm3.has_value();
  if (!thickness && !volume) return {{}, say(Phrase::kEnterThicknessAndVolume, {part->name})};
  if (!thickness) return {{}, say(Phrase::kEnterThickness, {part->name})};
  if (!volume) return {{}, say(Phrase::kEnterVolume, {part->name})};
  if (!window.classification) return {{}, say(Phrase::kEnterClassification, {window.identity.name})};
  return {window::classification_temperature_C(*window.classification, *part->package_thickness_mm,
                                               *part->package_volume_mm3),
          {}};
}

std::optional<double> number(const std::optional<window::Limit>& limit, std::optional<double> tc_C) {
  if (!limit) return {};
  if (const auto* given = std::get_if<double>(&*limit)) return *given;
  return tc_C ? std::optional(*tc_C + std::get<TcOffset>(*limit).offset_C) : std::nullopt;
}

void put_in_tc(std::optional<Level>& level, double tc_C) {
  if (is_tc(level)) level = tc_C + std::get<TcReference>(*level).offset_C;
}

std::string joined_sources(const std::string& lower, const std::string& upper) {
  if (lower.empty() || lower == upper) return upper;
  return upper.empty() ? lower : lower + "; " + upper;
}

bool is_contact(measure::Measure measure) {
  return measure == measure::Measure::kWaveContactTime || measure == measure::Measure::kWaveLongestContact;
}

/// A name that tells a channel by nothing but its number: "TC3", "CH 03", "channel 3", "Temp_3", "3".
bool says_nothing(std::string_view name) {
  std::string letters;
  for (const char c : name)
    if (static_cast<unsigned char>(c) >= 0x80)
      return false;
    else if (std::isalpha(static_cast<unsigned char>(c)))
      letters += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
  constexpr std::string_view kWords[] = {"",     "t",           "tc",     "ch",    "chan",  "channel",
                                         "temp", "temperature", "sensor", "probe", "input", "thermocouple"};
  return std::ranges::find(kWords, letters) != std::end(kWords);
}

class Binder {
 public:
  Binder(const run::Run& run, const board::Board* board) : run_(run), board_(board) {
    for (const auto& channel : run.channels) seats_.push_back(seat_of(channel, board));
  }

  void add(const window::ProcessWindow& window, std::size_t window_index) {
    window_ = &window;
    for (std::size_t i = 0; i < window.requirements.size(); ++i) add(window.requirements[i], window_index, i);
  }

  Bound take() && {
    if (!idle_.empty()) {
      std::string names = idle_.front();
      for (std::size_t i = 1; i < idle_.size(); ++i) names += ", " + idle_[i];
      warn(say(Phrase::kBindsNothing, {names}));
    }
    return std::move(bound_);
  }

 private:
  void add(const window::Requirement& requirement, std::size_t window_index, std::size_t index) {
    Outcome base;
    base.window = window_index;
    base.requirement = index;
    base.requirement_name = requirement.name;
    base.source = joined_sources(source(requirement, requirement.lower_source, requirement.lower),
                                 source(requirement, requirement.upper_source, requirement.upper));
    if (base.source.empty()) base.source = requirement.source;
    base.measure = measure::with_defaults(requirement.measure, window_->liquidus_C);
    base.required = requirement.required;
    if (requirement.applies_to.kind == AppliesTo::Kind::kBoard ||
        measure::describe(requirement.measure.measure).board) {
      base.lower = number(requirement.lower, {});
      base.upper = number(requirement.upper, {});
      base.target = number(requirement.target, {});
      bound_.board_results.push_back(std::move(base));
      return;
    }
    if (!board_ && (requirement.applies_to.kind == AppliesTo::Kind::kBody || measure_needs_tc(requirement) ||
                    limit_needs_tc(requirement)))
      bound_.bodies_not_judged = true;
    const std::size_t before = bound_.results.size();
    for (std::size_t channel = 0; channel < run_.channels.size(); ++channel)
      if (names(requirement.applies_to, channel) && on_side(requirement, channel)) add(requirement, base, channel);
    if (requirement.applies_to.kind == AppliesTo::Kind::kChannels) add_missing(requirement, base);
    if (bound_.results.size() == before && board_) idle_.push_back(requirement.name);
  }

  static std::string source(const window::Requirement& requirement, const std::string& own,
                            const std::optional<window::Limit>& limit) {
    if (!limit) return {};
    return own.empty() ? requirement.source : own;
  }

  bool names(const AppliesTo& applies_to, std::size_t channel) const {
    const board::Kind kind = seats_[channel].kind;
    switch (applies_to.kind) {
      case AppliesTo::Kind::kAll:
        return kind != board::Kind::kAir;
      case AppliesTo::Kind::kJoint:
        return kind == board::Kind::kJoint;
      case AppliesTo::Kind::kBody:
        return kind == board::Kind::kBody;
      case AppliesTo::Kind::kChannels:
        return std::ranges::any_of(applies_to.channels,
                                   [&](const std::string& name) { return channel_named(name) == channel; });
      case AppliesTo::Kind::kBoard:
        return false;
    }
    return false;
  }

  /// By its name, else by its number from 1; the number of channels where the log has no such one.
  std::size_t channel_named(const std::string& name) const {
    for (std::size_t i = 0; i < run_.channels.size(); ++i)
      if (run_.channels[i].name == name) return i;
    for (std::size_t i = 0; i < run_.channels.size(); ++i)
      if (std::to_string(run_.channels[i].number) == name) return i;
    return run_.channels.size();
  }

  bool on_side(const window::Requirement& requirement, std::size_t channel) {
    const auto side = seats_[channel].side;
    if (side == board::Side::kTop && is_contact(requirement.measure.measure)) return false;
    if (!requirement.side) return true;
    if (!side) {
      if (!board_) bound_.sides_not_judged = true;
      if (board_) warn(say(Phrase::kSideNotKnown, {requirement.name, seats_[channel].name}));
      return false;
    }
    return *side == *requirement.side;
  }

  void add(const window::Requirement& requirement, const Outcome& base, std::size_t channel) {
    const Seat& seat = seats_[channel];
    const bool body = seat.kind == board::Kind::kBody;
    const bool needs_tc = measure_needs_tc(requirement) || limit_needs_tc(requirement);
    if (!body && measure_needs_tc(requirement)) return;
    Tc tc;
    if (body && needs_tc) tc = tc_of(seat, *board_, *window_);
    Outcome outcome = base;
    outcome.channel = channel;
    outcome.trace = run_.channels[channel].name;
    outcome.placement = seat.name;
    outcome.tc_C = tc.value_C;
    outcome.lower = number(requirement.lower, tc.value_C);
    outcome.upper = number(requirement.upper, tc.value_C);
    outcome.target = number(requirement.target, tc.value_C);
    if (!outcome.lower && !outcome.upper && !body) return;
    if (tc.value_C) {
      auto& p = outcome.measure.parameters;
      for (auto* level : {&p.T1, &p.T2, &p.reference}) put_in_tc(*level, *tc.value_C);
      check_resolved(outcome);
    } else if (body && needs_tc) {
      outcome.cause = {.kind = Cause::Kind::kTcUnknown, .channel = channel, .placement = seat.name, .detail = tc.enter};
      warn(say(Phrase::kNeedsTc, {tc.enter, requirement.name, seat.name}));
    }
    bound_.results.push_back(std::move(outcome));
  }

  /// What the loader cannot know before Tc is a number.
  void check_resolved(Outcome& outcome) {
    if (outcome.lower && outcome.upper && !(*outcome.lower < *outcome.upper))
      warn(say(Phrase::kLimitsCrossAtTc, {outcome.requirement_name, outcome.placement}));
    if (outcome.target && ((outcome.lower && !(*outcome.lower < *outcome.target)) ||
                           (outcome.upper && !(*outcome.target < *outcome.upper)))) {
      warn(say(Phrase::kTargetOutsideAtTc, {outcome.requirement_name, outcome.placement}));
      outcome.target.reset();
    }
  }

  void add_missing(const window::Requirement& requirement, const Outcome& base) {
    for (const auto& name : requirement.applies_to.channels) {
      if (channel_named(name) < run_.channels.size()) continue;
      Outcome outcome = base;
      outcome.trace = outcome.placement = name;
      outcome.lower = number(requirement.lower, {});
      outcome.upper = number(requirement.upper, {});
      outcome.target = number(requirement.target, {});
      outcome.value.no_value = measure::NoValue::kUndetermined;
      outcome.value.reason = say(Phrase::kNoChannel, {name});
      outcome.cause = {.kind = Cause::Kind::kNoChannel, .placement = name, .detail = outcome.value.reason};
      bound_.results.push_back(std::move(outcome));
      warn(say(Phrase::kRequirementNoChannel, {requirement.name, name}));
    }
  }

  void warn(std::string text) {
    if (std::ranges::find(bound_.warnings, text) == bound_.warnings.end()) bound_.warnings.push_back(std::move(text));
  }

  const run::Run& run_;
  const board::Board* board_;
  const window::ProcessWindow* window_ = nullptr;
  std::vector<Seat> seats_;
  Bound bound_;
  std::vector<std::string> idle_;  ///< requirements that bind nothing on this board
};

}  // namespace

Seat seat_of(const run::Channel& channel, const board::Board* board) {
  Seat seat;
  seat.name = channel.name;
  if (!board) return seat;
  if (board->length_mm) seat.x_mm = *board->length_mm / 2;
  seat.placement = board->placement(channel.name, channel.number);
  if (!seat.placement) return seat;
  seat.kind = seat.placement->kind;
  seat.side = seat.placement->side;
  if (!seat.side && seat.placement->part)
    if (const auto* part = board->part(*seat.placement->part)) seat.side = part->side;
  if (seat.placement->x_mm) seat.x_mm = *seat.placement->x_mm;
  if (seat.placement->label && says_nothing(channel.name)) seat.name = *seat.placement->label;
  return seat;
}

SeatedSubject subject_of(const run::Channel& channel, const Seat& seat, const window::UncertaintyBudget& uncertainty) {
  SeatedSubject seated;
  auto& subject = seated.subject;
  subject.channel = &channel;
  subject.instrument_C = uncertainty.instrument_C;
  subject.x_mm = seat.x_mm;
  subject.air = seat.kind == board::Kind::kAir;
  subject.bottom = seat.side == board::Side::kBottom;
  const bool own = seat.placement && seat.placement->thermocouple;
  if (!own && uncertainty.tolerance_C) {
    subject.tolerance = {*uncertainty.tolerance_C, 0};
    return seated;
  }
  const auto tolerance = measure::tolerance_of(own ? *seat.placement->thermocouple : uncertainty.thermocouple);
  if (tolerance)
    subject.tolerance = *tolerance;
  else
    seated.warning = say(Phrase::kClassOneTaken, {tolerance.error().message, seat.name});
  return seated;
}

Bound bind_requirements(const run::Run& run, std::span<const window::ProcessWindow> windows,
                        const board::Board* board) {
  Binder binder(run, board);
  for (std::size_t i = 0; i < windows.size(); ++i) binder.add(windows[i], i);
  return std::move(binder).take();
}

}  // namespace ovenwright::judge
