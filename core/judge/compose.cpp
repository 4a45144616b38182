#include <algorithm>
#include <cmath>

#include "core/judge/arguments.h"
#include "core/judge/causes.h"
#include "core/judge/problems.h"
#include "core/judge/render.h"
#include "core/judge/sentence.h"

namespace ovenwright::judge {
namespace {

std::string side_word(Direction direction) { return direction == Direction::kLow ? "low" : "high"; }

std::string verdict_word(Verdict verdict) {
  std::string word = verdict_name(verdict);
  std::ranges::replace(word, ' ', '_');
  return word;
}

Argument counted(const char* name, std::size_t count) { return {.name = name, .value = static_cast<int>(count)}; }

/// How many placements a sentence names one by one.
std::string who_word(const Problem& problem) {
  const std::size_t n = problem.outcomes.size();
  if (n == 1) return "one";
  switch (problem.all) {
    case Problem::All::kPlacements:
      return "all";
    case Problem::All::kJoints:
      return "all_joints";
    case Problem::All::kBodies:
      return "all_bodies";
    case Problem::All::kNo:
      break;
  }
  return n == 2 ? "two" : n == 3 ? "three" : "others";
}

/// The placements by name, and their count.
void add_names(std::vector<Argument>& arguments, const std::vector<std::string>& names) {
  constexpr const char* words[] = {"first", "second", "third"};
  for (std::size_t i = 0; i < std::min<std::size_t>(names.size(), 3); ++i)
    arguments.push_back({.name = words[i], .value = names[i]});
  if (names.size() > 2) arguments.push_back(counted("others", names.size() - 2));
  arguments.push_back(counted("count", names.size()));
}

class Composer {
 public:
  Composer(const Judgement& judgement, const Phrases& phrases, const Telling& telling)
      : judgement_(judgement), phrases_(phrases), telling_(telling) {
    for (std::size_t i = 0; i < judgement.all_size(); ++i) {
      const Outcome& outcome = judgement.all(i);
      if (!outcome.required) continue;
      ++required_;
      if (is_out(outcome.verdict)) ++out_;
      if (outcome.verdict == Verdict::kUndetermined) undetermined_.push_back(i);
    }
  }

  Sentence compose() && {
    say_verdict();
    switch (judgement_.verdict) {
      case Verdict::kPass:
        say_pass();
        break;
      case Verdict::kConditionalPass:
        say_conditional_pass();
        break;
      case Verdict::kUndetermined:
        say_undetermined();
        break;
      case Verdict::kConditionalFail:
      case Verdict::kFail:
        say_out();
        break;
    }
    say_suspicions();
    if (judgement_.bodies_not_judged) say("bodies");
    if (judgement_.sides_not_judged) say("sides");
    if (!judgement_.better_window.empty())
      say({.clause = {"window.better", {{.name = "window", .value = judgement_.better_window}}}});
    if (telling_.predicted && telling_.pass_probability)
      say_chance(*telling_.pass_probability);
    else if (telling_.predicted && telling_.fall_unseen)
      say("chance.unseen");
    return std::move(sentence_);
  }

 private:
  void say(Planned planned) {
    // What a run is measured to be, a prediction only expects: those templates have a second one.
    if (telling_.predicted && is_told_of_predictions(planned.clause.id)) planned.clause.id.insert(0, kOfPredictions);
    append(sentence_, planned, phrases_);
  }
  void say_chance(double chance) {
    constexpr double near_all = 0.99, near_none = 0.01;
    if (chance > near_all) return say("chance.high");
    if (chance < near_none) return say("chance.low");
    say("chance", 1, {counted("chance", static_cast<std::size_t>(std::lround(100 * chance)))});
  }
  void say(const char* id, std::size_t count = 1, std::vector<Argument> arguments = {}) {
    say({.clause = {id, std::move(arguments)}, .count = static_cast<int>(count)});
  }

  void say_verdict() {
    Planned planned{.clause = {"verdict." + verdict_word(judgement_.verdict), {}},
                    .signal = is_out(judgement_.verdict)};
    if (judgement_.window_assumed && !judgement_.windows.empty()) {
      planned.clause.id += ".assumed";
      planned.clause.arguments.push_back({.name = "window", .value = judgement_.windows[0].identity.name});
    }
    say(planned);
  }

  /// At most two: a log with more has one trouble of its own, and the faults stand with their traces.
  void say_suspicions() {
    constexpr std::size_t most = 2;
    for (std::size_t i = 0; i < std::min(most, judgement_.suspicions.size()); ++i) {
      const Suspicion& one = judgement_.suspicions[i];
      Planned planned{.clause = {std::string("suspect.") + suspicion_word(one.fault),
                                 {{.name = "placement", .value = one.placement},
                                  {.name = "from", .value = one.from_s, .digits = 1, .role = Argument::Role::kMoment},
                                  {.name = "to", .value = one.to_s, .digits = 1, .role = Argument::Role::kMoment}}}};
      for (std::size_t k = 0; k < judgement_.results.size(); ++k)
        if (judgement_.results[k].channel == one.channel) planned.outcomes.push_back(k);
      say(planned);
    }
  }

  static const char* suspicion_word(run::FaultKind fault) {
    switch (fault) {
      case run::FaultKind::kReversedPolarity:
        return "reversed";
      case run::FaultKind::kDetached:
        return "detached";
      case run::FaultKind::kSwappedPlacement:
        return "swapped";
      default:
        return "stuck";
    }
  }

  void say_pass() {
    if (required_ == 0) return say("met.nothing_required");
    say("met.all", required_, {counted("n", required_)});
    const auto closest = smallest([](const Outcome&) { return true; });
    if (closest) say_inside("closest", *closest);
  }

  void say_conditional_pass() {
    const auto is_tight = [](const Outcome& outcome) { return outcome.verdict == Verdict::kConditionalPass; };
    std::size_t tight = 0;
    std::optional<std::size_t> first;
    for (std::size_t i = 0; i < judgement_.all_size(); ++i) {
      if (!judgement_.all(i).required || !is_tight(judgement_.all(i))) continue;
      ++tight;
      if (!first) first = i;
    }
    const auto tightest = smallest(is_tight);
    if (tight == 1)
      say("tight.one");
    else
      say("tight.more", tight, {counted("k", tight), counted("n", required_)});
    if (first) say_inside(tight == 1 ? "tight" : "tightest", tightest.value_or(*first));
  }

  /// The required result of smallest margin among those that `counts` takes.
  template <class Counts>
  std::optional<std::size_t> smallest(const Counts& counts) const {
    std::optional<std::size_t> found;
    for (std::size_t i = 0; i < judgement_.all_size(); ++i) {
      const Outcome& outcome = judgement_.all(i);
      if (!outcome.required || !outcome.margin || !counts(outcome)) continue;
      if (!found || *outcome.margin < *judgement_.all(*found).margin) found = i;
    }
    return found;
  }

  void say_inside(const std::string& how, std::size_t index) {
    const Outcome& outcome = judgement_.all(index);
    const Direction direction = nearer_limit(outcome);
    std::string id = how + "." + phrase_key(outcome.measure) + "." + side_word(direction);
    if (how == "closest" && outcome.value.at_least) id += ".at_least";
    say({.clause = {std::move(id), arguments_of(outcome, direction)}, .outcomes = {index}});
  }

  void say_undetermined() {
    if (required_ == 0) return;
    say_causes("none");
    const std::size_t met = required_ - undetermined_.size();
    if (met > 0) say("met.rest", met, {counted("k", met)});
  }

  void say_out() {
    auto problems = problems_of(judgement_);
    if (judgement_.verdict == Verdict::kFail || out_ > 1) {
      const bool within = judgement_.verdict == Verdict::kConditionalFail;
      const bool before_none = !undetermined_.empty() && lacks_values();
      say(within        ? "out.within"
          : before_none ? "out.and_none"
                        : "out",
          out_, {counted("k", out_), counted("n", required_)});
    }
    std::size_t named = 0;
    constexpr std::size_t most = 2;
    for (std::size_t i = 0; i < std::min(most, problems.size()); ++i) {
      say_problem(problems[i], static_cast<int>(i) + 1);
      named += problems[i].count();
    }
    if (named < out_) {
      std::vector<std::size_t> rest;
      for (std::size_t i = most; i < problems.size(); ++i)
        for (const auto* indexes : {&problems[i].outcomes, &problems[i].peaks})
          rest.insert(rest.end(), indexes->begin(), indexes->end());
      say({.clause = {undetermined_.empty() ? "more" : "more.out", {counted("k", out_ - named)}},
           .count = static_cast<int>(out_ - named),
           .outcomes = std::move(rest)});
    }
    if (!undetermined_.empty()) say_causes("more_none");
  }

  void say_problem(const Problem& problem, int disc) {
    switch (problem.kind) {
      case Problem::Kind::kOut:
        return say_out(problem, disc);
      case Problem::Kind::kNeverReached:
        return say_never_reached(problem, disc);
      case Problem::Kind::kNotReached:
        return say_not_reached(problem, disc);
    }
  }

  void say_out(const Problem& problem, int disc) {
    const Outcome& first = judgement_.all(problem.outcomes.front());
    const std::string who = who_word(problem);
    Planned planned{.disc = disc, .outcomes = problem.outcomes, .zones = common_zones(judgement_, problem.outcomes)};
    std::string& id = planned.clause.id;
    id = "problem." + phrase_key(first.measure) + "." + side_word(problem.direction) + "." + who;
    if (problem.at_least) id += ".at_least";
    if (problem.within) id += ".within";
    if (!planned.zones.empty()) id += ".zones";
    if (problem.at_least && who == "one" && undetermined_.empty()) id += cut_suffix(first.cause.kind);
    auto& arguments = planned.clause.arguments;
    arguments = arguments_of(first, problem.direction);
    if (who != "one") {
      add_names(arguments, names(problem.outcomes));
      arguments.push_back(distance("distance_1", first, problem.direction));
      arguments.push_back(distance("distance_2", judgement_.all(problem.outcomes[1]), problem.direction));
    }
    add_zones(planned);
    say(planned);
  }

  static std::string cut_suffix(Cause::Kind kind) {
    switch (kind) {
      case Cause::Kind::kLogEndsHot:
        return ".ends_hot";
      case Cause::Kind::kLogEndsRising:
        return ".ends_rising";
      case Cause::Kind::kLogStartsHot:
        return ".starts_hot";
      default:
        return {};
    }
  }

  void say_never_reached(const Problem& problem, int disc) {
    const Outcome& time = judgement_.all(problem.outcomes.front());
    Planned planned{.disc = disc, .outcomes = problem.peaks, .zones = common_zones(judgement_, problem.outcomes)};
    planned.outcomes.insert(planned.outcomes.end(), problem.outcomes.begin(), problem.outcomes.end());
    if (!problem.peaks.empty()) planned.zones = common_zones(judgement_, problem.peaks);
    planned.clause.id = "never." + who_word(problem) + (problem.peaks.empty() ? ".time" : ".both");
    if (!planned.zones.empty()) planned.clause.id += ".zones";
    auto& arguments = planned.clause.arguments;
    arguments = {{.name = "placement", .value = time.placement},
                 stated("level", *time.measure.parameters.level, Unit::kCelsius),
                 stated("time", 0, Unit::kSecond),
                 stated("time_distance", *time.lower, Unit::kSecond)};
    add_names(arguments, names(problem.outcomes));
    if (!problem.peaks.empty()) {
      const Outcome& peak = judgement_.all(problem.peaks.front());
      arguments.push_back(value("peak", peak));
      arguments.push_back(distance("peak_distance", peak, Direction::kLow));
    }
    for (std::size_t i = 0; i < std::min<std::size_t>(problem.peaks.size(), 2); ++i) {
      const Outcome& peak = judgement_.all(problem.peaks[i]);
      const std::string number = "_" + std::to_string(i + 1);
      arguments.push_back(value("peak" + number, peak));
      arguments.push_back(distance("peak_distance" + number, peak, Direction::kLow));
    }
    add_zones(planned);
    say(planned);
  }

  void say_not_reached(const Problem& problem, int disc) {
    const Outcome& first = judgement_.all(problem.outcomes.front());
    Planned planned{.disc = disc, .outcomes = problem.outcomes};
    auto& arguments = planned.clause.arguments;
    arguments = arguments_of(first, Direction::kLow);
    if (first.channel) {
      add_names(arguments, names(problem.outcomes));
      const auto level = level_not_reached(first);
      if (level) arguments.push_back(*level);
      planned.clause.id = (level ? "not_reached.level." : "not_reached.other.") + who_word(problem);
    } else {
      const auto& by = first.not_reached_by;
      std::erase_if(arguments, [](const Argument& argument) { return argument.name == "placement"; });
      if (!by.empty()) arguments.push_back({.name = "placement", .value = by.front()});
      add_names(arguments, by);
      const char* who = by.empty()       ? "reason"
                        : by.size() == 1 ? "one"
                        : by.size() == 2 ? "two"
                        : by.size() == 3 ? "three"
                                         : "others";
      planned.clause.id = "not_reached." + phrase_key(first.measure) + "." + who;
    }
    say(planned);
  }

  /// The level that a placement's measure needed and the trace did not reach.
  static std::optional<Argument> level_not_reached(const Outcome& outcome) {
    const auto& p = outcome.measure.parameters;
    const auto& needed = outcome.measure.measure == measure::Measure::kMeanRise   ? p.T2
                         : outcome.measure.measure == measure::Measure::kMeanFall ? p.T1
                                                                                  : std::optional<measure::Level>{};
    const auto* number = needed ? std::get_if<double>(&*needed) : nullptr;
    return number ? std::optional(stated("level", *number, Unit::kCelsius)) : std::nullopt;
  }

  std::vector<std::string> names(const std::vector<std::size_t>& outcomes) const {
    std::vector<std::string> out;
    for (const std::size_t i : outcomes) out.push_back(judgement_.all(i).placement);
    return out;
  }

  static void add_zones(Planned& planned) {
    if (!planned.zones.empty()) planned.clause.arguments.push_back({.name = "zones", .value = planned.zones});
  }

  /// True where no undetermined result has a number: "has no value", not "is undetermined".
  bool lacks_values() const {
    return std::ranges::none_of(undetermined_,
                                [&](std::size_t i) { return judgement_.all(i).value.value.has_value(); });
  }

  /// @param lead  "none" where nothing else stands before, "more_none" after what is out
  void say_causes(const std::string& lead) {
    const auto causes = causes_of(judgement_, undetermined_);
    const std::string id = lead + (lacks_values() ? ".value." : ".verdict.");
    const std::size_t total = undetermined_.size();
    std::vector<Argument> counts{counted("k", total), counted("n", required_)};
    if (causes.size() == 1) {
      auto arguments = causes[0].arguments;
      arguments.insert(arguments.end(), counts.begin(), counts.end());
      say({.clause = {id + causes[0].word, std::move(arguments)},
           .count = static_cast<int>(total),
           .outcomes = causes[0].outcomes});
      return;
    }
    say({.clause = {id + "several", counts}, .count = static_cast<int>(total), .outcomes = undetermined_});
    std::size_t named = 0;
    constexpr std::size_t most = 2;
    for (std::size_t i = 0; i < std::min(most, causes.size()); ++i) {
      auto arguments = causes[i].arguments;
      arguments.push_back(counted("k", causes[i].outcomes.size()));
      named += causes[i].outcomes.size();
      say({.clause = {"for." + causes[i].word, std::move(arguments)}, .outcomes = causes[i].outcomes});
    }
    if (named == total) return;
    std::vector<std::size_t> rest;
    for (std::size_t i = most; i < causes.size(); ++i)
      rest.insert(rest.end(), causes[i].outcomes.begin(), causes[i].outcomes.end());
    say({.clause = {"more.causes", {counted("k", total - named)}},
         .count = static_cast<int>(total - named),
         .outcomes = std::move(rest)});
  }

  const Judgement& judgement_;
  const Phrases& phrases_;
  const Telling& telling_;
  Sentence sentence_;
  std::size_t required_ = 0, out_ = 0;
  std::vector<std::size_t> undetermined_;
};

}  // namespace

Sentence compose(const Judgement& judgement, const Phrases& phrases, const Telling& telling) {
  return Composer(judgement, phrases, telling).compose();
}

}  // namespace ovenwright::judge
