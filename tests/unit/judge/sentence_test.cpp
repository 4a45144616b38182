#include "core/judge/sentence.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/judge/decide.h"
#include "core/judge/decide_run.h"

// Expected texts: the plate of the sentence's states (design, section 6), row by row; where a row has no plate, its
// template. Numbers of a plate follow from the digits it prints.
namespace ovenwright::judge {
namespace {

using measure::Measure;
using window::DecisionRule;

enum Requirement { kRise, kSoak, kAbove, kPeak, kNear, kFall, kTime, kLag, kSpreadAt, kLargest, kSpread };

struct Kind {
  Measure measure;
  Unit unit;
  std::optional<double> lower, upper;
  double fine, U;
};
// A value in the middle of its window, or half of a lone upper limit: margin 100 %.
constexpr Kind kKinds[] = {{Measure::kSteepestRise, Unit::kCelsiusPerSecond, {}, 2.5, 1.25, 0.07},
                           {Measure::kTimeBetweenOnRise, Unit::kSecond, 60, 120, 90, 2.2},
                           {Measure::kTimeAbove, Unit::kSecond, 45, 90, 67.5, 3.0},
                           {Measure::kPeak, Unit::kCelsius, 235, 250, 242.5, 2.1},
                           {Measure::kTimeNearPeak, Unit::kSecond, {}, 30, 15, 1.2},
                           {Measure::kSteepestFall, Unit::kCelsiusPerSecond, {}, 4, 2, 0.08},
                           {Measure::kPeakTime, Unit::kSecond, {}, 480, 240, 3},
                           {Measure::kLag, Unit::kSecond, {}, 50, 25, 2.4},
                           {Measure::kSpreadWhenHottestReaches, Unit::kCelsius, {}, 35, 17.5, 2.0},
                           {Measure::kLargestSpread, Unit::kCelsius, {}, 40, 20, 2.0},
                           {Measure::kSpreadOfPeaks, Unit::kCelsius, {}, 10, 5, 2.0}};
const std::vector<std::string> kPlacements{"R118", "D7 lead", "U3 body", "J4 pin 1", "U12 corner", "U12 centre"};

/// 7 requirements on 6 placements and 3 of the board: 45, all fine; one informative of the board.
class Sample {
 public:
  explicit Sample(DecisionRule rule = DecisionRule::kGuarded,
                  std::vector<Requirement> requirements = {kRise, kSoak, kAbove, kPeak, kNear, kFall, kTime})
      : requirements_(std::move(requirements)) {
    all_.windows.resize(1);
    all_.windows[0].identity.name = "SAC305, general";
    all_.windows[0].decision_rule = rule;
    all_.windows[0].requirements.resize(std::size(kKinds));
    for (const auto requirement : requirements_)
      for (std::size_t channel = 0; channel < kPlacements.size(); ++channel)
        all_.results.push_back(make(requirement, channel));
  }

  Sample& with_board() {
    for (const auto requirement : {kLag, kSpreadAt, kLargest, kSpread}) {
      all_.board_results.push_back(make(requirement, {}));
      all_.board_results.back().required = requirement != kSpread;
    }
    return *this;
  }

  Outcome& at(Requirement requirement, std::size_t channel = 0) {
    for (auto& outcome : all_.results)
      if (outcome.requirement == requirement && outcome.channel == channel) return outcome;
    return *std::ranges::find(all_.board_results, static_cast<std::size_t>(requirement), &Outcome::requirement);
  }
  Sample& set(Requirement requirement, std::size_t channel, double value) {
    at(requirement, channel).value.value = value;
    return *this;
  }
  Sample& zones(Requirement requirement, std::size_t channel, std::vector<std::string> zones) {
    for (const auto& zone : zones)
      at(requirement, channel).zone_shares.push_back({zone, {}, 1.0 / static_cast<double>(zones.size())});
    at(requirement, channel).zones = std::move(zones);
    return *this;
  }
  Sample& open(std::size_t channel, double from_s, double to_s) {
    for (auto& outcome : all_.results)
      if (outcome.channel == channel && outcome.requirement != kRise)
        none(outcome, {.kind = Cause::Kind::kFault,
                       .channel = channel,
                       .placement = kPlacements[channel],
                       .from_s = from_s,
                       .to_s = to_s});
    return *this;
  }
  static void none(Outcome& outcome, Cause cause, measure::NoValue why = measure::NoValue::kUndetermined) {
    outcome.value.value.reset();
    outcome.value.expanded_uncertainty.reset();
    outcome.value.no_value = why;
    outcome.cause = std::move(cause);
  }
  Judgement& judgement() { return all_; }
  Judgement& judge() {
    for (auto* outcomes : {&all_.results, &all_.board_results})
      for (auto& outcome : *outcomes) settle(outcome, all_.windows[0].decision_rule);
    decide_run(all_);
    all_.sentence = compose(all_);
    return all_;
  }
  std::string text() { return judge().sentence.text; }

 private:
  Outcome make(Requirement requirement, std::optional<std::size_t> channel) const {
    const Kind& kind = kKinds[requirement];
    Outcome outcome;
    outcome.requirement = requirement;
    outcome.requirement_name = measure::describe(kind.measure).name;
    outcome.measure.measure = kind.measure;
    auto& p = outcome.measure.parameters;
    if (requirement == kAbove || requirement == kLag || requirement == kSpreadAt) p.level = 217;
    if (requirement == kSoak) p.T1 = 150.0, p.T2 = 200.0;
    if (requirement == kNear) p.offset = 5, p.reference = measure::OwnPeak{};
    outcome.channel = channel;
    if (channel) outcome.trace = outcome.placement = kPlacements[*channel];
    outcome.value.unit = kind.unit;
    outcome.value.value = kind.fine;
    outcome.value.expanded_uncertainty = kind.U;
    outcome.lower = kind.lower;
    outcome.upper = kind.upper;
    return outcome;
  }

  std::vector<Requirement> requirements_;
  Judgement all_;
};

constexpr std::size_t kR118 = 0, kCorner = 4, kCentre = 5;

TEST(Sentence, Pass) {
  Sample run;
  run.with_board().set(kPeak, kCorner, 237.9);
  EXPECT_EQ(run.text(),
            "Pass. All 45 requirements are met. The closest is U12 corner, which peaks at 237.9 ± 2.1 °C, 2.9 °C above "
            "its lower limit.");
  EXPECT_NEAR(*run.judgement().margin, 0.39, 0.005);
}

TEST(Sentence, WindowAssumed) {
  Sample run(DecisionRule::kSimple, {kRise, kSoak, kAbove, kPeak, kFall, kTime});
  run.set(kAbove, kR118, 80.2);
  run.judgement().window_assumed = true;
  EXPECT_EQ(
      run.text(),
      "Pass against SAC305, general (assumed). All 36 requirements are met. The closest is R118, which stays above "
      "217 °C for 80.2 ± 3.0 s, 9.8 s below its upper limit.");
  EXPECT_NEAR(*run.judgement().margin, 0.44, 0.005);
}

TEST(Sentence, BodiesNotJudged) {
  Sample run;
  run.with_board().set(kPeak, kCentre, 237.7);
  run.judgement().bodies_not_judged = true;
  EXPECT_EQ(
      run.text(),
      "Pass. All 45 requirements are met. The closest is U12 centre, which peaks at 237.7 ± 2.1 °C, 2.7 °C above its "
      "lower limit. Body limits are not judged: no board says what is a body.");
}

TEST(Sentence, ConditionalPassOfOne) {
  Sample run;
  run.with_board().set(kPeak, kCorner, 236.0);
  EXPECT_EQ(
      run.text(),
      "Conditional pass. Nothing is out. U12 corner peaks at 236.0 ± 2.1 °C, 1.0 °C above its lower limit, within its "
      "uncertainty.");
}

TEST(Sentence, ConditionalPassOfMore) {
  Sample run;
  run.with_board().set(kPeak, kCorner, 236.0).set(kAbove, kR118, 88.0).set(kPeak, kCentre, 236.5);
  EXPECT_EQ(
      run.text(),
      "Conditional pass. Nothing is out; 3 of 45 lie within their uncertainty of a limit. The tightest: R118 stays "
      "above 217 °C for 88.0 ± 3.0 s, 2.0 s below its upper limit.");
}

TEST(Sentence, ConditionalFailOfOne) {
  Sample run;
  run.with_board().set(kPeak, kCentre, 234.1).zones(kPeak, kCentre, {"8", "9", "10"});
  EXPECT_EQ(run.text(),
            "Conditional fail. U12 centre peaks at 234.1 ± 2.1 °C, 0.9 °C short, within its uncertainty; set by zones "
            "8\u201310.");
  EXPECT_NEAR(*run.judgement().margin, -0.12, 0.005);
}

TEST(Sentence, ConditionalFailOfTwo) {
  Sample run;
  run.with_board().set(kPeak, kCentre, 234.1).set(kPeak, kCorner, 234.5);
  EXPECT_EQ(
      run.text(),
      "Conditional fail. 2 of 45 requirements are out, within their uncertainty. U12 centre and U12 corner peak too "
      "low, by 0.9 and 0.5 °C, within their uncertainty.");
}

TEST(Sentence, FailOfOne) {
  Sample run;
  run.with_board().set(kRise, kR118, 2.73).zones(kRise, kR118, {"1"});
  EXPECT_EQ(run.text(), "Fail. 1 of 45 requirements is out. R118 rises at 2.73 °C/s, 0.23 °C/s too steep, in zone 1.");
  EXPECT_NEAR(*run.judgement().margin, -0.18, 0.005);
}

TEST(Sentence, FailOfTwo) {
  Sample run;
  run.with_board().set(kRise, kR118, 2.73).zones(kRise, kR118, {"1"});
  run.set(kPeak, kCentre, 232.1).zones(kPeak, kCentre, {"8", "9", "10"});
  EXPECT_EQ(
      run.text(),
      "Fail. 2 of 45 requirements are out. U12 centre peaks at 232.1 °C, 2.9 °C short, set by zones 8\u201310. R118 "
      "rises at 2.73 °C/s, 0.23 °C/s too steep, in zone 1.");
  EXPECT_NEAR(*run.judgement().margin, -0.39, 0.005);
}

TEST(Sentence, FailOfMany) {
  Sample run;
  run.with_board().set(kPeak, kCentre, 230.4).set(kPeak, kCorner, 232.4);
  for (const std::size_t channel : {kCentre, kCorner}) run.zones(kPeak, channel, {"8", "9", "10"});
  for (std::size_t channel = 0; channel < 6; ++channel)
    run.set(kSoak, channel, channel == 2 ? 134.2 : 125.0 + static_cast<double>(channel))
        .zones(kSoak, channel, {"3", "4", "5", "6"});
  run.set(kRise, kR118, 2.73).set(kFall, kR118, 4.5);
  EXPECT_EQ(
      run.text(),
      "Fail. 10 of 45 requirements are out. U12 centre and U12 corner peak too low, by 4.6 and 2.6 °C, set by zones "
      "8\u201310. All six soak too long, by up to 14.2 s, in zones 3\u20136. 2 more.");
  EXPECT_NEAR(*run.judgement().margin, -0.61, 0.005);
}

TEST(Sentence, SeveralButNotAllAreNamedByTheWorst) {
  Sample run;
  run.with_board().set(kSoak, 0, 130).set(kSoak, 1, 134).set(kSoak, 2, 132);
  EXPECT_EQ(run.text(),
            "Fail. 3 of 45 requirements are out. D7 lead, U3 body and R118 soak too long, by up to 14.0 s.");
  run.set(kSoak, 3, 131);
  EXPECT_EQ(run.text(),
            "Fail. 4 of 45 requirements are out. D7 lead, U3 body and 2 others soak too long, by up to 14.0 s.");
}

TEST(Sentence, AllJointsAreNotAllPlacements) {
  Sample run;
  std::erase_if(run.judgement().results,
                [](const Outcome& one) { return one.requirement == kSoak && one.channel == 2u; });
  run.judgement().windows[0].requirements[kSoak].applies_to.kind = window::AppliesTo::Kind::kJoint;
  for (const std::size_t channel : {0, 1, 3, 4, 5}) run.set(kSoak, channel, 130);
  EXPECT_EQ(run.text(), "Fail. 5 of 41 requirements are out. All five joints soak too long, by up to 10.0 s.");
}

TEST(Sentence, BothSidesOfOneRequirementAreTwoProblems) {
  Sample run;
  run.with_board().set(kPeak, 0, 254).set(kPeak, kCentre, 230);
  EXPECT_EQ(
      run.text(),
      "Fail. 2 of 45 requirements are out. U12 centre peaks at 230.0 °C, 5.0 °C short. R118 peaks at 254.0 °C, 4.0 °C "
      "too hot.");
}

TEST(Sentence, Undetermined) {
  Sample run;
  run.with_board().open(kCentre, 330.1, 349.6);
  EXPECT_EQ(
      run.text(),
      "Undetermined. 6 of 45 requirements have no value: U12 centre was open from 330.1 to 349.6 s on the log. The "
      "other 39 are met.");
  EXPECT_EQ(summarise(run.judgement()).of_the_other, 39);
  EXPECT_FALSE(run.judgement().margin);
}

TEST(Sentence, UndeterminedForSeveralReasons) {
  Sample run;
  run.with_board().open(kCentre, 330.1, 349.6);
  for (const auto requirement : {kFall, kAbove})
    Sample::none(run.at(requirement, 0), {.kind = Cause::Kind::kLogEndsHot, .channel = 0, .placement = "R118"});
  EXPECT_EQ(
      run.text(),
      "Undetermined. 8 of 45 requirements have no value. For 6, U12 centre was open from 330.1 to 349.6 s on the log. "
      "For 2, the log ends before R118 cools. The other 37 are met.");
  Sample::none(run.at(kLag), {.kind = Cause::Kind::kOther, .detail = "no trace crosses the level"});
  EXPECT_EQ(
      run.text(),
      "Undetermined. 9 of 45 requirements have no value. For 6, U12 centre was open from 330.1 to 349.6 s on the log. "
      "For 2, the log ends before R118 cools. 1 more has another reason. The other 36 are met.");
}

TEST(Sentence, FailAndUndetermined) {
  Sample run;
  run.with_board().open(kCentre, 302.1, 321.6).set(kRise, kR118, 2.73);
  EXPECT_EQ(
      run.text(),
      "Fail. 1 of 45 requirements is out: R118 rises at 2.73 °C/s, 0.23 °C/s too steep. 6 more have no value: U12 "
      "centre was open from 302.1 to 321.6 s on the log.");
  EXPECT_EQ(summarise(run.judgement()).of_the_other, 39);
}

TEST(Sentence, LevelNeverReached) {
  Sample run;
  run.with_board().set(kPeak, kCentre, 209.8).set(kAbove, kCentre, 0).zones(kPeak, kCentre, {"8", "9", "10"});
  Sample::none(run.at(kLag), {}, measure::NoValue::kNotReached);
  run.at(kLag).not_reached_by = {"U12 centre"};
  EXPECT_EQ(
      run.text(),
      "Fail. 3 of 45 requirements are out. U12 centre never reaches 217 °C: it peaks at 209.8 °C, 25.2 °C short, with "
      "0 s above 217 °C, 45 s short; set by zones 8\u201310. The lag at 217 °C has no value: not reached by U12 "
      "centre.");
  const auto summary = summarise(run.judgement());
  EXPECT_EQ(summary.of_the_other, 44);
  ASSERT_EQ(summary.smallest.size(), 2u);
  EXPECT_NEAR(summary.smallest[0].margin, -3.36, 0.005);
  EXPECT_NEAR(summary.smallest[1].margin, -2, 1e-9);
}

TEST(Sentence, LevelNeverReachedByMore) {
  Sample run;
  run.with_board();
  for (const std::size_t channel : {kCentre, kCorner})
    run.set(kPeak, channel, channel == kCentre ? 209.8 : 211.2).set(kAbove, channel, 0);
  EXPECT_EQ(
      run.text(),
      "Fail. 4 of 45 requirements are out. U12 centre and U12 corner never reach 217 °C: they peak at 209.8 and 211.2 "
      "°C, 25.2 and 23.8 °C short, with 0 s above 217 °C, 45 s short.");
  for (std::size_t channel = 0; channel < 6; ++channel) run.set(kPeak, channel, 200).set(kAbove, channel, 0);
  EXPECT_EQ(
      run.text(),
      "Fail. 12 of 45 requirements are out. None of the six reaches 217 °C: they peak up to 35.0 °C short, with 0 s "
      "above 217 °C, 45 s short.");
}

TEST(Sentence, AtLeastWithOthers) {
  Sample run;
  run.with_board().set(kAbove, kR118, 91.4);
  for (std::size_t channel = 0; channel < 6; ++channel) {
    run.at(kAbove, channel).value.at_least = true;
    run.at(kAbove, channel).cause = {
        .kind = Cause::Kind::kLogEndsHot, .channel = channel, .placement = kPlacements[channel]};
  }
  run.judgement().windows[0].decision_rule = DecisionRule::kSimple;
  EXPECT_EQ(
      run.text(),
      "Fail. 1 of 45 requirements is out. R118 stays above 217 °C for at least 91.4 s, 1.4 s or more too long. 5 more "
      "are undetermined: the log ends before they cool.");
  EXPECT_NEAR(*run.judgement().margin, -0.06, 0.005);
  EXPECT_EQ(run.judgement().margin_bound, MarginBound::kAtMost);
}

TEST(Sentence, AtLeastAlone) {
  Sample run(DecisionRule::kSimple);
  run.with_board().set(kAbove, kR118, 91.4);
  run.at(kAbove, kR118).value.at_least = true;
  run.at(kAbove, kR118).cause = {.kind = Cause::Kind::kLogEndsHot, .channel = 0, .placement = "R118"};
  EXPECT_EQ(
      run.text(),
      "Fail. 1 of 45 requirements is out. R118 stays above 217 °C for at least 91.4 s, 1.4 s or more too long; the log "
      "ends before it cools.");
}

TEST(Sentence, TcUnknownSaysWhatToEnter) {
  Sample run;
  run.with_board().at(kPeak, 2).cause = {.kind = Cause::Kind::kTcUnknown,
                                         .channel = 2,
                                         .placement = "U3 body",
                                         .detail = "enter the package thickness and volume of U3 in the board file"};
  EXPECT_EQ(
      run.text(),
      "Undetermined. 1 of 45 requirements is undetermined: Tc is not known, enter the package thickness and volume of "
      "U3 in the board file. The other 44 are met.");
}

TEST(Sentence, ExcursionsAreCountedAndComeLast) {
  Sample run(DecisionRule::kSimple, {kRise});
  for (auto& outcome : run.judgement().results) {
    outcome.measure.measure = Measure::kExcursionsAbove;
    outcome.measure.parameters.level = 217;
    outcome.value.unit = Unit::kCount;
    outcome.value.expanded_uncertainty.reset();
    outcome.upper = 1;
    outcome.value.value = 1;
  }
  run.set(kRise, kR118, 2);
  EXPECT_EQ(run.text(), "Fail. 1 of 6 requirements is out. R118 goes above 217 °C 2 times, 1 too many.");
}

TEST(Sentence, NothingRequired) {
  Sample run(DecisionRule::kSimple, {});
  EXPECT_EQ(run.text(), "Pass. Nothing is required of this run.");
}

// The parts are the text, discs stand before the problems, and every link knows its results.
TEST(Sentence, PartsCarryTheLinks) {
  Sample run;
  run.with_board()
      .set(kRise, kR118, 2.73)
      .zones(kRise, kR118, {"1"})
      .set(kPeak, kCentre, 232.1)
      .zones(kPeak, kCentre, {"9"});
  const auto& all = run.judge();
  std::string text;
  std::vector<int> discs;
  std::vector<std::string> linked, zones;
  for (const auto& part : all.sentence.parts) {
    text += part.text;
    if (part.disc > 0) discs.push_back(part.disc);
    if (part.link == SentencePart::Link::kOutcome) {
      ASSERT_EQ(part.outcomes.size(), 1u);
      linked.push_back(all.all(part.outcomes[0]).placement);
    }
    if (part.link == SentencePart::Link::kZones) zones.insert(zones.end(), part.zones.begin(), part.zones.end());
  }
  EXPECT_EQ(text, all.sentence.text);
  EXPECT_EQ(discs, (std::vector<int>{1, 2}));
  EXPECT_EQ(linked, (std::vector<std::string>{"U12 centre", "R118"}));
  EXPECT_EQ(zones, (std::vector<std::string>{"9", "1"}));
  EXPECT_TRUE(all.sentence.parts.front().strong);
  EXPECT_TRUE(all.sentence.parts.front().signal);
  EXPECT_EQ(all.sentence.parts.front().text, "Fail.");
}

/// What a desktop does: its own words, decimal comma, and times from the oven's entry.
class German : public Phrases {
 public:
  std::string text(const std::string& id, int count) const override {
    if (id == "none.value.open")
      return "{k} von {n} Anforderungen ohne Wert: [fault:{placement} war von {from} bis {to} s offen].";
    return Phrases::text(id, count);
  }
  std::string number(const Argument& argument) const override {
    std::string text = Phrases::number(argument);
    std::ranges::replace(text, '.', ',');
    return text;
  }
  std::string moment(const Argument& argument) const override {
    Argument from_entry = argument;
    from_entry.value = std::get<double>(argument.value) - 10.4;
    return number(from_entry);
  }
};

TEST(Sentence, OtherPhrasesGiveTheSameLinks) {
  Sample run;
  const auto& all = run.with_board().open(kCentre, 330.1, 349.6).judge();
  const auto other = compose(all, German());
  EXPECT_EQ(other.parts[2].text, "6 von 45 Anforderungen ohne Wert: ");
  EXPECT_EQ(other.parts[3].text, "U12 centre war von 319,7 bis 339,2 s offen");
  EXPECT_EQ(other.parts[3].link, SentencePart::Link::kFault);
  EXPECT_EQ(other.parts[3].outcomes, all.sentence.parts[3].outcomes);
  EXPECT_EQ(other.clauses.size(), all.sentence.clauses.size());
}

TEST(Sentence, NamesFromTheLogAreNeverTemplates) {
  Sample run;
  run.with_board().set(kRise, kR118, 2.73).at(kRise, kR118).placement = "[zones:{value}]";
  EXPECT_EQ(run.text(), "Fail. 1 of 45 requirements is out. [zones:{value}] rises at 2.73 °C/s, 0.23 °C/s too steep.");
}

// Property: results named and "N more" add up to the count, whatever is out.
TEST(Sentence, CountsAddUp) {
  unsigned seed = 1;
  for (int round = 0; round < 300; ++round) {
    Sample run(round % 2 == 0 ? DecisionRule::kSimple : DecisionRule::kGuarded);
    run.with_board();
    for (auto* outcomes : {&run.judgement().results, &run.judgement().board_results})
      for (auto& outcome : *outcomes) {
        seed = seed * 1664525u + 1013904223u;
        const unsigned pick = (seed >> 16) % 40;
        if (pick == 0) *outcome.value.value *= 1.6;
        if (pick == 1) *outcome.value.value = 0;
        if (pick == 2) Sample::none(outcome, {}, measure::NoValue::kNotReached);
      }
    const auto& all = run.judge();
    std::size_t out = 0, linked = 0;
    for (std::size_t i = 0; i < all.all_size(); ++i) out += all.all(i).required && is_out(all.all(i).verdict);
    for (const auto& part : all.sentence.parts)
      if (part.link == SentencePart::Link::kOutcome || part.link == SentencePart::Link::kMore)
        linked += part.outcomes.size();
    if (is_out(all.verdict)) {
      EXPECT_EQ(linked, out) << all.sentence.text;
    }
    EXPECT_EQ(all.sentence.text.find('{'), std::string::npos) << all.sentence.text;
    EXPECT_EQ(all.sentence.text.find("  "), std::string::npos) << all.sentence.text;
  }
}

}  // namespace
}  // namespace ovenwright::judge
