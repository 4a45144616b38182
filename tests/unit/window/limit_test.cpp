#include "core/window/limit.h"

#include <gtest/gtest.h>

namespace ovenwright::window {
namespace {

TEST(Limit, IsReadAsTcWithAnOffset) {
  const auto offset = [](std::string_view text) { return std::get<TcOffset>(*limit_of(text)).offset_C; };
  EXPECT_EQ(offset("Tc"), 0);
  EXPECT_EQ(offset("Tc-5"), -5);
  EXPECT_EQ(offset(" Tc + 2.5 "), 2.5);
  for (const char* text : {"", "T", "tc", "Tc5", "Tc-", "Tc--5", "Tc-5x", "Tc-inf", "Tc-nan", "250"}) {
    EXPECT_FALSE(limit_of(text)) << text;
  }
}

TEST(Limit, IsWrittenAsItIsRead) {
  EXPECT_EQ(limit_text(250.0), "250");
  EXPECT_EQ(limit_text(2.5), "2.5");
  EXPECT_EQ(limit_text(TcOffset{}), "\"Tc\"");
  EXPECT_EQ(limit_text(TcOffset{-5}), "\"Tc-5\"");
  EXPECT_EQ(limit_text(TcOffset{2.5}), "\"Tc+2.5\"");
}

// A lone upper limit of these has half of it as its target; of the others a target must be stated.
TEST(CountsFromZero, HoldsForRatesTimesAreasSpreadsAndSteps) {
  using measure::Measure;
  for (const auto& description : measure::descriptions()) {
    const bool temperature = description.measure == Measure::kPeak || description.measure == Measure::kTemperatureAt ||
                             description.measure == Measure::kExitTemperature ||
                             description.measure == Measure::kWavePreheatTemperature;
    EXPECT_EQ(counts_from_zero(description.measure), !temperature && description.unit != Unit::kCount)
        << description.name;
  }
}

}  // namespace
}  // namespace ovenwright::window
