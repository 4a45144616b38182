#include "core/tune/start.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "core/window/window_file.h"
#include "tests/unit/judge/simulated.h"

// A first recipe is held against a simulated oven and boards that the model does not know (simulated.h: zones as smooth
// boxes, one mass with one beside it, no radiation, no melting).
namespace ovenwright::tune {
namespace {

constexpr const char* kWindow = R"(
name = "lead-free"
liquidus_C = 217
source = "invented for this test"
[[requirement]]
name = "peak"
measure = "peak"
lower = 235
upper = 250
applies_to = "all"
[[requirement]]
name = "time above"
measure = "time above"
level = 217
lower = 45
upper = 90
applies_to = "all"
)";

double peak_C(const run::Channel& channel) { return *std::ranges::max_element(channel.trace->temperature_C()); }

// Source: the simulation. A bare board of 1.6 mm has a time constant of about 30 s by the textbook; ovens and copper
// spread it over a third and more each way. Each such board must peak inside the band that is stated for it.
TEST(Start, TheTruePeakOfABoardThatNeverRanLiesInTheBand) {
  const auto oven = judge::ten_zones();
  board::Board board;
  board.identity.name = "Godwit";
  board.thickness_mm = 1.6;
  const auto window = window::parse("window.toml", kWindow);
  ASSERT_TRUE(window) << window.error().text();
  const auto started = start(oven, board, {*window}, nullptr);
  ASSERT_TRUE(started) << started.error().text();
  ASSERT_EQ(started->predicted.run.channels.size(), 1U);
  const auto& predicted = started->predicted.run.channels.front();
  const auto T = predicted.trace->temperature_C();
  const auto top = static_cast<std::size_t>(std::ranges::max_element(T) - T.begin());
  const double band_C = started->predicted.band_C.front()[top];
  EXPECT_GT(band_C, 5);
  EXPECT_LT(band_C, 40);
  auto recipe = started->recipe;
  recipe.cooling_C = {70, 45};
  for (const double tau_s : {21.0, 26.0, 32.0, 40.0})
    EXPECT_NEAR(peak_C(judge::simulate(oven, recipe, {tau_s, 40})), T[top], band_C) << tau_s;
  EXPECT_NE(started->sentence.find("has not been measured"), std::string::npos);
  EXPECT_LT(*started->predicted.pass_probability, 0.9);
}

TEST(Start, RefusesABoardOfUnknownWeight) {
  const auto window = window::parse("window.toml", kWindow);
  const auto started = start(judge::ten_zones(), {}, {*window}, nullptr);
  ASSERT_FALSE(started);
  EXPECT_EQ(started.error().code, ErrorCode::kUndetermined);
}

}  // namespace
}  // namespace ovenwright::tune
