#include "core/files/nearest.h"

#include <gtest/gtest.h>

#include <array>
#include <vector>

namespace ovenwright::files {
namespace {

// By hand, from the definition of the distance.
TEST(EditDistance, CountsInsertionsDeletionsReplacementsAndSwaps) {
  EXPECT_EQ(edit_distance("", ""), 0U);
  EXPECT_EQ(edit_distance("lower", "lower"), 0U);
  EXPECT_EQ(edit_distance("Lower", "lOWER"), 0U);
  EXPECT_EQ(edit_distance("lowr", "lower"), 1U);
  EXPECT_EQ(edit_distance("lowwer", "lower"), 1U);
  EXPECT_EQ(edit_distance("lawer", "lower"), 1U);
  EXPECT_EQ(edit_distance("lwoer", "lower"), 1U);
  EXPECT_EQ(edit_distance("kitten", "sitting"), 3U);
  EXPECT_EQ(edit_distance("", "abc"), 3U);
}

TEST(Nearest, FindsTheKeyThatWasMeant) {
  constexpr std::array<std::string_view, 6> keys{"lower", "upper", "target", "tolerance_C", "T1", "applies_to"};
  EXPECT_EQ(nearest("lowr", keys), "lower");
  EXPECT_EQ(nearest("uper", keys), "upper");
  EXPECT_EQ(nearest("tolerance", keys), "tolerance_C");
  EXPECT_EQ(nearest("applies", keys), "applies_to");
  EXPECT_EQ(nearest("appliesto", keys), "applies_to");
  EXPECT_EQ(nearest("t1", keys), "T1");
  EXPECT_EQ(nearest("colour", keys), "");
  EXPECT_EQ(nearest("", keys), "");
  EXPECT_EQ(nearest("x", std::array<std::string_view, 2>{".", ","}), "");
  EXPECT_EQ(nearest(std::string(5000, 'x'), keys), "");
}

TEST(Suggestion, NamesTheNearestOrAll) {
  constexpr std::array<std::string_view, 3> keys{"lower", "upper", "target"};
  EXPECT_EQ(suggestion("lowr", keys), R"(, did you mean "lower"?)");
  EXPECT_EQ(suggestion("zzz", keys), R"(, expected "lower", "upper" or "target")");
  EXPECT_EQ(suggestion("zzz", {}), ", expected none");
}

}  // namespace
}  // namespace ovenwright::files
