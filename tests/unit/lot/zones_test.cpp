#include "core/lot/zones.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

// Counted by hand.
namespace ovenwright::lot {
namespace {

using testing::ElementsAre;

TracedResult outside(const std::string& trace, std::vector<std::string> zones) {
  return {"SAC305, general", "peak", trace, std::move(zones)};
}

std::vector<std::string> names(const ZoneTraces& traces) {
  std::vector<std::string> all;
  for (const auto& zone : traces.zones) all.push_back(zone.zone);
  return all;
}

TEST(ZoneTraces, CountsResultsRunsAndWhichTheyAre) {
  const std::vector<RunTraces> runs{{outside("U1", {"8", "9", "10"}), outside("U2", {"9"})},
                                    {},
                                    {outside("U2", {"10", "C1"})},
                                    {outside("U2", {"9"})}};
  const auto traces = zone_traces(runs);
  EXPECT_EQ(traces.outside, 4U);
  EXPECT_EQ(traces.traced, 4U);
  EXPECT_EQ(traces.runs, 3U);
  EXPECT_THAT(names(traces), ElementsAre("8", "9", "10", "C1"));
  const auto& nine = traces.zones[1];
  EXPECT_EQ(nine.results, 3U);
  EXPECT_THAT(nine.runs, ElementsAre(0, 3));
  ASSERT_EQ(nine.subjects.size(), 2U);
  EXPECT_EQ(nine.subjects[0].trace, "U2");
  EXPECT_EQ(nine.subjects[0].runs, 2U);
  EXPECT_EQ(nine.subjects[1].trace, "U1");
  EXPECT_EQ(nine.subjects[1].runs, 1U);
  EXPECT_EQ(traces.leading, 1U);
}

TEST(ZoneTraces, ResultsWithoutAZoneAreCountedApart) {
  const auto traces = zone_traces(std::vector<RunTraces>{{outside("U1", {})}, {outside("U1", {"2"})}});
  EXPECT_EQ(traces.outside, 2U);
  EXPECT_EQ(traces.traced, 1U);
  EXPECT_EQ(traces.runs, 2U);
}

TEST(ZoneTraces, AmongEqualsMoreRunsThenTheNewestLead) {
  // Zone 1: two results in one run; zone 2: two in two runs; zone 3: two in two runs, the newer ones.
  const auto traces = zone_traces(std::vector<RunTraces>{
      {outside("U1", {"1", "2"}), outside("U2", {"1"})}, {outside("U1", {"2", "3"})}, {outside("U1", {"3"})}});
  ASSERT_TRUE(traces.leading);
  EXPECT_EQ(traces.zones[*traces.leading].zone, "3");
}

TEST(ZoneTraces, OfNoRunIsNothing) { EXPECT_FALSE(zone_traces({}).leading); }

}  // namespace
}  // namespace ovenwright::lot
