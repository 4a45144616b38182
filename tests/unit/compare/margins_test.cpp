#include "core/compare/margins.h"

#include <gtest/gtest.h>

#include "tests/unit/compare/made_run.h"

namespace ovenwright::compare {
namespace {

using judge::MarginBound;

// Source: by hand. Limits 235 and 250, target 242.5: a peak of 236 has a margin of 1/7.5, one of 238 of 3/7.5. U of the
// difference of one result is its own U over 7.5: terms 3, 4, 1, 0 of both give 2·√2/7.5 on the same thermocouples.
TEST(Margins, OfOneResultTakeItsOwnUncertainty) {
  judge::Sample a, b;
  a.set(judge::kPeak, judge::kCentre, 236);
  b.set(judge::kPeak, judge::kCentre, 240);
  const auto run_a = run_of(a), run_b = run_of(b);
  const auto margins = margins_of(run_a.judgement, run_b.judgement, true);
  EXPECT_NEAR(*margins.a, 1 / 7.5, 1e-12);
  EXPECT_NEAR(*margins.b, 5 / 7.5, 1e-12);
  EXPECT_NEAR(*margins.expanded_uncertainty, 2 * std::sqrt(2.0) / 7.5, 1e-12);
  EXPECT_EQ(margins.more, Side::kB);
}

// Source: by hand. Two results do not share what their values share: all terms, 2·√(26 + 26)/7.5.
TEST(Margins, OfTwoResultsTakeAllTerms) {
  judge::Sample a, b;
  a.set(judge::kPeak, judge::kCentre, 236);
  b.set(judge::kPeak, judge::kR118, 240);
  const auto run_a = run_of(a), run_b = run_of(b);
  const auto margins = margins_of(run_a.judgement, run_b.judgement, true);
  EXPECT_NEAR(*margins.expanded_uncertainty, 2 * std::sqrt(52.0) / 7.5, 1e-12);
  EXPECT_FALSE(margins.more);  // 4/7.5 against 1.92
}

TEST(Margins, ABoundDecidesOnlyWhereItCan) {
  judge::Judgement a, b;
  a.margin = 0.1;
  b.margin = 0.5;
  EXPECT_EQ(margins_of(a, b, true).more, Side::kB);
  b.margin_bound = MarginBound::kAtMost;
  EXPECT_FALSE(margins_of(a, b, true).more);
  b.margin_bound = MarginBound::kAtLeast;
  EXPECT_EQ(margins_of(a, b, true).more, Side::kB);
  a.margin_bound = MarginBound::kAtMost;
  EXPECT_EQ(margins_of(a, b, true).more, Side::kB);
  a.margin_bound = MarginBound::kAtLeast;
  EXPECT_FALSE(margins_of(a, b, true).more);
  b.margin.reset();
  EXPECT_FALSE(margins_of(a, b, true).more);
}

}  // namespace
}  // namespace ovenwright::compare
