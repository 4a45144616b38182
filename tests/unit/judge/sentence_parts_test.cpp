#include "core/judge/sentence.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "tests/unit/judge/sample.h"

namespace ovenwright::judge {
namespace {

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

// Design, section 1: every part of the sentence is a link; a cause leads to what has no verdict for it.
TEST(Sentence, ACauseIsALinkToWhatItIsTheCauseOf) {
  Sample run;
  run.with_board();
  for (const std::size_t channel : {kR118, kCentre}) {
    run.at(kAbove, channel).value.at_least = true;
    run.at(kAbove, channel).cause = {
        .kind = Cause::Kind::kLogEndsHot, .channel = channel, .placement = kPlacements[channel]};
  }
  const auto links = [&] {
    std::vector<std::pair<std::string, std::size_t>> found;
    for (const auto& part : run.judge().sentence.parts)
      if (part.link == SentencePart::Link::kOutcome) found.emplace_back(part.text, part.outcomes.size());
    return found;
  };
  using Links = std::vector<std::pair<std::string, std::size_t>>;
  EXPECT_EQ(links(), (Links{{"the log ends before they cool", 2}}));
  run.at(kPeak, kCentre).value.at_least = true;
  run.at(kPeak, kCentre).cause = {.kind = Cause::Kind::kLogEndsRising, .channel = kCentre, .placement = "U12 centre"};
  EXPECT_EQ(links(), (Links{{"the log ends before they cool", 2}, {"the log ends while U12 centre still rises", 1}}));
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
