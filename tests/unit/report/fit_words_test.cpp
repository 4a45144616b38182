#include "core/report/fit_words.h"

#include <gtest/gtest.h>

namespace ovenwright::report {
namespace {

TEST(NotTold, IsGatheredInPlainWords) {
  EXPECT_EQ(not_told_words({"supply in the tunnels, ln", "offset of zone 1, °C", "offset of zone 2, °C",
                            "offset of zone 3, °C", "offset of zone 7, °C", "exchange in zone C1, ln",
                            "U1 corner: heat of melting, K", "R7: heat of melting, K"}),
            "how the tunnels' air is fed; by how much zones 1 to 3 and 7 are off their setpoints; how strongly zone C1 "
            "heats; the heat that melting takes at U1 corner and R7");
}

// A zone may be called by any number.
TEST(NotTold, NamesZonesOfTheLargestNumbers) {
  EXPECT_EQ(not_told_words({"offset of zone 2147483646, °C", "offset of zone 2147483647, °C",
                            "offset of zone -2147483648, °C", "offset of zone 99999999999, °C"}),
            "by how much zones 2147483646, 2147483647, -2147483648 and 99999999999 are off their setpoints");
}

TEST(NotTold, CountsPlacementsAndWhatIsLeft) {
  EXPECT_EQ(not_told_words({"A: its radiation", "B: its radiation", "C: its radiation"}),
            "how it takes up radiation at 3 placements");
  const std::string words =
      not_told_words({"supply in the tunnels, ln", "exchange along the oven", "exchange in cooling zones, ln",
                      "exchange in the tunnels, ln", "share of radiation", "entry, s", "A: share of the top side"});
  EXPECT_TRUE(words.ends_with("; and 2 more")) << words;
  EXPECT_EQ(words.find(", ln"), std::string::npos) << words;
  EXPECT_EQ(not_told_words({}), "");
}

// A placement's name may hold what parts a name from its unit and its parameter.
TEST(NotTold, KeepsNamesOfPlacementsWhole) {
  EXPECT_EQ(not_told_words({"U1: pin, left: its radiation", "U1: pin, left: time constant, ln s"}),
            "how it takes up radiation at U1: pin, left; how fast it heats at U1: pin, left");
}

}  // namespace
}  // namespace ovenwright::report
