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

// A note that no unit is stated would be wrong: it is the whole name.
TEST(LogRead, AUnitOfTimeMayBeTheWholeNameOfTheColumn) {
  const auto seconds = read_bytes("a.csv", "s,TC1 (°C)\n0,25\n1,26\n2,27\n3,28\n");
  ASSERT_TRUE(seconds) << seconds.error().text();
  EXPECT_TRUE(seconds->read_as.notes.empty());
  EXPECT_EQ(*seconds->channels[0].time_s, (std::vector<double>{0, 1, 2, 3}));
}

}  // namespace
}  // namespace ovenwright::log
