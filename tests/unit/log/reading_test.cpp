#include "core/log/reading.h"

#include <gtest/gtest.h>

namespace ovenwright::log {
namespace {

// Source: the text itself.
TEST(LogRead, PlainCommaLog) {
  const auto reading =
      read_bytes("a.csv", "Time (s),U1 center (°C),U1 corner (°C)\n0,26.9,27.0\n0.5,27.1,\n1,27.1,26.5\n");
  ASSERT_TRUE(reading) << reading.error().text();
  ASSERT_EQ(reading->channels.size(), 2U);
  EXPECT_EQ(reading->channels[0].name, "U1 center");
  EXPECT_EQ(*reading->channels[0].time_s, (std::vector<double>{0, 0.5, 1}));
  EXPECT_EQ(reading->channels[0].temperature_C, (std::vector<double>{26.9, 27.1, 27.1}));
}

}  // namespace
}  // namespace ovenwright::log
