#include "core/compare/sentence.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <set>

#include "tests/unit/compare/made_run.h"

namespace ovenwright::compare {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::StartsWith;
using Link = judge::SentencePart::Link;

Difference result(const char* requirement, judge::Verdict a, judge::Verdict b) {
  Difference made;
  made.requirement = requirement;
  made.trace = "U1";
  made.verdict_a = a;
  made.verdict_b = b;
  return made;
}

/// A peak of U1 that fell from 240 to 235, with U = 1, and a slope that is out in A.
Comparison sample() {
  Comparison comparison;
  comparison.results = {result("peak", judge::Verdict::kPass, judge::Verdict::kConditionalPass),
                        result("steepest rise", judge::Verdict::kFail, judge::Verdict::kPass)};
  auto& peak = comparison.results[0];
  peak.a = 240, peak.b = 235, peak.difference = -5, peak.expanded_uncertainty = 1, peak.significant = true;
  comparison.margins.a = -0.39, comparison.margins.b = 0.07, comparison.margins.more = Side::kB;
  comparison.speed_a_mm_per_min = 810, comparison.speed_b_mm_per_min = 750, comparison.faster = Side::kA;
  comparison.same_thermocouples = true;
  comparison.recipes_known = true;
  comparison.recipe_changes = {{"1", board::Side::kTop, 146, 132},
                               {"1", board::Side::kBottom, 146, 132},
                               {"2", board::Side::kTop, 150, 129},
                               {"", std::nullopt, 810, 750}};
  return comparison;
}

const judge::SentencePart& link(const judge::Sentence& sentence, const std::string& text) {
  static const judge::SentencePart none;
  const auto found = std::ranges::find(sentence.parts, text, &judge::SentencePart::text);
  EXPECT_NE(found, sentence.parts.end()) << text << " in: " << sentence.text;
  return found == sentence.parts.end() ? none : *found;
}

// Source: 750 against 810 mm/min are 7.4 % fewer boards at one spacing.
TEST(CompareSentence, SaysWhatDecides) {
  const auto sentence = compose(sample());
  EXPECT_EQ(sentence.text,
            "B has more margin: 7 % against −39 %. B has nothing out, 1 within its uncertainty. A has 1 out. B makes "
            "7 % fewer boards an hour. 1 of 1 results differs by more than its uncertainty, most clearly peak on U1: "
            "240.0 to 235.0 °C (−5.0 ± 1.00).");
  EXPECT_TRUE(sentence.parts.front().strong);
  EXPECT_THAT(link(sentence, "1 out").outcomes, ElementsAre(1));
  EXPECT_THAT(link(sentence, "1 within its uncertainty").outcomes, ElementsAre(2));
  EXPECT_THAT(link(sentence, "peak on U1").outcomes, ElementsAre(0, 2));
  EXPECT_EQ(mark_of(sample(), 1).side, Side::kA);
  EXPECT_EQ(mark_of(sample(), 2).side, Side::kB);
  EXPECT_EQ(mark_of(sample(), 2).result, 0U);
}

TEST(CompareSentence, TheNoteNamesTheZonesThatDiffer) {
  const auto note = compose_note(sample());
  EXPECT_EQ(note.text,
            "Same board and thermocouples, so their common error cancels in the differences. 2 zones and the speed "
            "differ");
  EXPECT_EQ(link(note, "2 zones and the speed differ").link, Link::kZones);
  EXPECT_THAT(link(note, "2 zones and the speed differ").zones, ElementsAre("1", "2", ""));
  auto speed = sample();
  speed.recipe_changes = {{"", std::nullopt, 810, 750}};
  speed.same_thermocouples = false;
  EXPECT_THAT(compose_note(speed).text, HasSubstr("the errors of both stay in the differences. The speed differs"));
  speed.recipe_changes.clear();
  EXPECT_THAT(compose_note(speed).text, HasSubstr("The recipes are equal."));
  speed.of_groups = true, speed.runs_a = 3, speed.runs_b = 4;
  EXPECT_THAT(compose_note(speed).text, StartsWith("Means of 3 and 4 runs;"));
}

TEST(CompareSentence, UndeterminedAndInformativeResults) {
  auto comparison = sample();
  comparison.results[1].required = false;
  comparison.results[0].verdict_b = judge::Verdict::kUndetermined;
  EXPECT_THAT(compose(comparison).text, HasSubstr("B has nothing out, 1 undetermined. A has nothing out."));
  comparison.results[0].verdict_b = judge::Verdict::kPass;
  EXPECT_THAT(compose(comparison).text, HasSubstr("Neither has anything out."));
  comparison.margins = {};
  EXPECT_THAT(compose(comparison).text, StartsWith("Neither A nor B has a margin to compare."));
  comparison.margins.a = 0.1;
  EXPECT_THAT(compose(comparison).text, StartsWith("B has no margin to compare."));
}

TEST(CompareSentence, EveryTemplateIsKnownOnce) {
  const auto ids = sentence_ids();
  EXPECT_EQ(std::set<std::string>(ids.begin(), ids.end()).size(), ids.size());
  for (const auto& id : ids)
    for (const int count : {1, 2}) EXPECT_NE(Phrases().text(id, count), id);
}

}  // namespace
}  // namespace ovenwright::compare
