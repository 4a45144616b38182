#include <gtest/gtest.h>

#include "core/compare/compare.h"
#include "core/compare/group.h"

namespace ovenwright::compare {
namespace {

/// A trace that is at rest at 25 °C up to `from_s`, then rises by 2 °C/s for 100 s, then falls.
run::Channel channel(const std::string& name, double from_s) {
  const auto clock = *run::Clock::make({0, from_s, from_s + 100, from_s + 200});
  run::Channel made;
  made.name = name;
  made.trace = *run::Trace::make(clock, {25, 25, 225, 100});
  return made;
}

check::CheckedRun run_with(std::vector<run::Channel> channels) {
  check::CheckedRun run;
  run.run.channels = std::move(channels);
  return run;
}

// Source: algebra. The rise crosses 150 °C 62.5 s after its start, 217 °C 96 s after it.
TEST(Align, AtALevelOfTheFirstTraceToCross) {
  const auto a = run_with({channel("U1", 50), channel("U2", 40)});
  const auto b = run_with({channel("U1", 70), channel("U2", 90)});
  const auto at = align(a, b, 217);
  ASSERT_TRUE(at);
  EXPECT_NEAR(at->a_s, 136, 1e-9);
  EXPECT_NEAR(at->b_s, 166, 1e-9);
  EXPECT_EQ(alignment_name(*at), "217 degC on rise");
}

TEST(Align, ATraceThatOneLacksDoesNotCount) {
  auto a = run_with({channel("U1", 50), channel("U2", 10)});
  auto b = run_with({channel("U1", 70), channel("U2", 10)});
  b.run.channels[1].trace.reset();
  const auto at = align(a, b, std::nullopt);
  ASSERT_TRUE(at);
  EXPECT_NEAR(at->a_s, 112.5, 1e-9);
  EXPECT_NEAR(at->b_s, 132.5, 1e-9);
  EXPECT_EQ(alignment_name(*at), "150 degC on rise");
}

TEST(Align, AtTheEntryWhereBothShowIt) {
  auto a = run_with({channel("U1", 50)}), b = run_with({channel("U1", 70)});
  a.entry = {.at_s = 30};
  b.entry = {.at_s = 52};
  const auto at = align(a, b, std::nullopt);
  ASSERT_TRUE(at);
  EXPECT_EQ(at->a_s, 30);
  EXPECT_EQ(at->b_s, 52);
  EXPECT_EQ(alignment_name(*at), "oven entry");
  EXPECT_EQ(alignment_name(*align(a, b, 180.5)), "180.5 degC on rise");
  b.entry.reset();
  EXPECT_EQ(alignment_name(*align(a, b, std::nullopt)), "150 degC on rise");
}

TEST(Align, NotWhereALevelIsNotReachedOrNoTraceIsShared) {
  const auto a = run_with({channel("U1", 50)}), b = run_with({channel("U1", 70)});
  EXPECT_FALSE(align(a, b, 230));
  EXPECT_FALSE(align(a, run_with({channel("U9", 70)}), 150));
}

// Source: algebra, as above. U2 is not in every run, so U1 decides in all; entries are taken where every run has one.
TEST(Align, ManyRunsAtOneMoment) {
  auto a = run_with({channel("U1", 50), channel("U2", 40)}), b = run_with({channel("U1", 70)}),
       c = run_with({channel("U1", 10), channel("U2", 5)});
  const check::CheckedRun *of_a[] = {&a, &c}, *of_b[] = {&b};
  const auto at = align(of_a, of_b, 217);
  ASSERT_TRUE(at);
  EXPECT_EQ(at->level_C, 217);
  EXPECT_NEAR(at->a_s[0], 146, 1e-9);
  EXPECT_NEAR(at->a_s[1], 106, 1e-9);
  EXPECT_NEAR(at->b_s[0], 166, 1e-9);
  a.entry = {3, 1, {}};
  b.entry = {5, 1, {}};
  EXPECT_EQ(align(of_a, of_b, {})->level_C, 150);
  c.entry = {7, 1, {}};
  const auto entries = align(of_a, of_b, {});
  EXPECT_FALSE(entries->level_C);
  EXPECT_EQ(entries->a_s, (std::vector<double>{3, 7}));
}

}  // namespace
}  // namespace ovenwright::compare
