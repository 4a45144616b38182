#include "core/exposure/exposure.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>

namespace ovenwright::exposure {
namespace {

using judge::Verdict;
using testing::HasSubstr;

/// A run of traces, every half second, straight from 25 °C at 0 s to a shoulder at 100 s, the peak at 130 s, the
/// shoulder at 160 s and 25 °C at 300 s; above 217 °C for the 60 s between the shoulders where the peak is 245 °C.
run::Run run_of(const std::vector<std::pair<std::string, double>>& peaks) {
  run::Run run;
  std::vector<double> time_s;
  for (int i = 0; i <= 600; ++i) time_s.push_back(0.5 * i);
  const auto clock = *run::Clock::make(time_s);
  for (const auto& [name, peak_C] : peaks) {
    run::Channel channel;
    channel.name = name;
    channel.number = static_cast<int>(run.channels.size()) + 1;
    const double shoulder_C = 217.0 / 245 * peak_C;
    std::vector<double> temperature_C;
    for (const double t : time_s)
      temperature_C.push_back(t < 100   ? std::lerp(25, shoulder_C, t / 100)
                              : t < 130 ? std::lerp(shoulder_C, peak_C, (t - 100) / 30)
                              : t < 160 ? std::lerp(peak_C, shoulder_C, (t - 130) / 30)
                                        : std::lerp(shoulder_C, 25, (t - 160) / 140));
    channel.trace = *run::Trace::make(clock, std::move(temperature_C));
    run.channels.push_back(std::move(channel));
  }
  return run;
}

window::ProcessWindow window_of(window::Process process) {
  window::ProcessWindow window;
  window.identity.name = "SAC305";
  window.process = process;
  window.liquidus_C = 217;
  return window;
}

class Passes : public testing::Test {
 protected:
  Exposure added(const std::vector<Pass>& passes) {
    auto exposure = add_up(passes);
    EXPECT_TRUE(exposure);
    return *std::move(exposure);
  }
  static const Finding* finding(const Exposure& exposure, Finding::Kind kind, const std::string& name) {
    for (const auto& one : exposure.findings)
      if (one.kind == kind && one.name == name) return &one;
    return nullptr;
  }
  window::ProcessWindow reflow_ = window_of(window::Process::kReflow), wave_ = window_of(window::Process::kWave);
  run::Run first_ = run_of({{"J9", 245}}), second_ = run_of({{"J9", 245}, {"R118", 245}});
};

// Source: by hand. A triangle from 217 to 245 °C and back in 60 s has an area of ½·28·60 = 840 °C·s; two of them 120 s
// and 1680 °C·s. Errors of wire and instrument are the same in both and double; noise adds in squares.
TEST_F(Passes, AddUp) {
  const auto exposure = added({{"under side", &first_, &reflow_}, {"main side", &second_, &reflow_}});
  ASSERT_EQ(exposure.placements.size(), 2U);
  const auto& j9 = exposure.placements[0];
  EXPECT_EQ(j9.heats, 2U);
  EXPECT_NEAR(j9.time_above_s->value, 120, 1e-9);
  EXPECT_NEAR(j9.area_above_Cs->value, 1680, 1e-9);
  EXPECT_FALSE(j9.time_above_s->at_least);
  const auto& terms = j9.passes[0]->time_above.terms;
  EXPECT_NEAR(j9.time_above_s->expanded_uncertainty,
              2 * std::sqrt(4 * terms.thermocouple * terms.thermocouple + 4 * terms.instrument * terms.instrument +
                            2 * terms.noise * terms.noise),
              1e-9);
  const auto& r118 = exposure.placements[1];
  EXPECT_EQ(r118.first, 1U);
  EXPECT_EQ(r118.heats, 1U);
  EXPECT_FALSE(r118.passes[0]);
  EXPECT_NEAR(r118.time_above_s->value, 60, 1e-9);
  EXPECT_EQ(exposure.verdict, Verdict::kPass);
  EXPECT_THAT(exposure.sentence, HasSubstr("Longest total above liquidus: J9, 120.0 ± "));
}

TEST_F(Passes, APassNotMeasuredMakesTheTotalABound) {
  const auto exposure = added({{"1", &second_, &reflow_}, {"2", &first_, &reflow_}});
  const auto& r118 = exposure.placements[1];
  EXPECT_EQ(r118.heats, 2U);
  EXPECT_TRUE(r118.time_above_s->at_least);
  EXPECT_NEAR(r118.time_above_s->value, 60, 1e-9);
}

// Source: the rule that a joint made before stays below its solidus on the wave. Peak 222.5 °C against 217 °C.
TEST_F(Passes, AJointMeltsAgainOnTheWave) {
  const auto wave = run_of({{"J9", 222.5}, {"R118", 140}, {"J2 pin 4", 247}});
  const auto exposure = added({{"main side", &second_, &reflow_}, {"the wave", &wave, &wave_}});
  EXPECT_EQ(exposure.verdict, Verdict::kFail);
  const auto* j9 = finding(exposure, Finding::Kind::kMeltsAgain, "J9");
  ASSERT_TRUE(j9);
  EXPECT_EQ(j9, &exposure.findings.front());
  EXPECT_EQ(j9->verdict, Verdict::kFail);
  EXPECT_EQ(j9->value, 222.5);
  EXPECT_EQ(j9->limit, 217);
  EXPECT_THAT(exposure.sentence, HasSubstr("J9 melts again in the wave: it reaches 222.5 ± 2.1 °C, 5.5 °C above"));
  EXPECT_EQ(finding(exposure, Finding::Kind::kMeltsAgain, "R118")->verdict, Verdict::kPass);
  // The wave makes this joint, it does not melt it again.
  EXPECT_FALSE(finding(exposure, Finding::Kind::kMeltsAgain, "J2 pin 4"));
}

TEST_F(Passes, TheDecisionRuleAndTheSolidusAreTheWindows) {
  const auto wave = run_of({{"J9", 216.5}});
  wave_.decision_rule = window::DecisionRule::kGuarded;
  auto exposure = added({{"1", &first_, &reflow_}, {"2", &wave, &wave_}});
  EXPECT_EQ(finding(exposure, Finding::Kind::kMeltsAgain, "J9")->verdict, Verdict::kConditionalPass);
  reflow_.solidus_C = 210;
  exposure = added({{"1", &first_, &reflow_}, {"2", &wave, &wave_}});
  EXPECT_EQ(finding(exposure, Finding::Kind::kMeltsAgain, "J9")->verdict, Verdict::kFail);
}

TEST_F(Passes, ABodyDoesNotMelt) {
  board::Board board;
  board.placements.emplace_back().channel = "J9";
  board.placements[0].kind = board::Kind::kBody;
  const auto wave = run_of({{"J9", 230}});
  const auto exposure = added({{"1", &first_, &reflow_, &board}, {"2", &wave, &wave_, &board}});
  EXPECT_FALSE(finding(exposure, Finding::Kind::kMeltsAgain, "J9"));
}

/// A board with one part on its under side.
board::Board board_with(double mass_g, double wetted_mm2, int max_passes = 3) {
  board::Board board;
  board::Part part;
  part.name = "T1";
  part.side = board::Side::kBottom;
  part.mass_g = mass_g;
  part.wetted_pad_area_mm2 = wetted_mm2;
  part.max_passes = max_passes;
  board.parts = {part};
  board.placements.emplace_back().channel = "J9";
  board.placements[0].part = "T1";
  return board;
}

// Source: two computed examples of the rule of thumb, 30 g per square inch = 46.5 mg/mm²: a transformer of 7.3 g on
// 60 mm² has 121.7 mg/mm² and fails, a package of 0.30 g on 50 mm² has 6.0 and passes.
TEST_F(Passes, AHeavyPartHangs) {
  EXPECT_NEAR(kHeaviest_mg_per_mm2, 46.5, 5e-3);
  const auto heavy = board_with(7.3, 60), light = board_with(0.30, 50);
  auto exposure = added({{"1", &first_, &reflow_}, {"pass 2", &second_, &reflow_, &heavy}});
  const auto* hangs = finding(exposure, Finding::Kind::kHangs, "T1");
  ASSERT_TRUE(hangs);
  EXPECT_EQ(hangs->verdict, Verdict::kFail);
  EXPECT_NEAR(*hangs->value, 121.67, 5e-3);
  EXPECT_EQ(hangs->placement, 0U);
  EXPECT_THAT(exposure.sentence, HasSubstr("T1 hangs under the board in pass 2: 7.30 g on 60 mm² of wetted pad, 121.7 "
                                           "mg/mm², more than 46.5 mg/mm²"));
  EXPECT_THAT(exposure.sentence, HasSubstr("it may drop"));
  exposure = added({{"1", &first_, &reflow_}, {"pass 2", &second_, &reflow_, &light}});
  EXPECT_EQ(finding(exposure, Finding::Kind::kHangs, "T1")->verdict, Verdict::kPass);
  // In the first pass nothing hangs yet, and a wave holds the board the other way round in no rule.
  exposure = added({{"1", &first_, &reflow_, &heavy}, {"2", &second_, &wave_, &heavy}});
  EXPECT_FALSE(finding(exposure, Finding::Kind::kHangs, "T1"));
}

// Source: the part's own limit, else three (J-STD-020).
TEST_F(Passes, TooManyHeatsForAPart) {
  const auto board = board_with(0.1, 50, 2);
  const std::vector<Pass> three{
      {"1", &first_, &reflow_, &board}, {"2", &second_, &reflow_, &board}, {"3", &second_, &reflow_, &board}};
  auto exposure = added(three);
  const auto* many = finding(exposure, Finding::Kind::kTooMany, "T1");
  ASSERT_TRUE(many);
  EXPECT_EQ(many->verdict, Verdict::kFail);
  EXPECT_EQ(many->pass, 2U);
  EXPECT_THAT(exposure.sentence, HasSubstr("T1 goes through 3 soldering heats; 2 are allowed."));
  EXPECT_EQ(finding(exposure, Finding::Kind::kTooMany, "R118")->verdict, Verdict::kPass);
}

TEST_F(Passes, NothingToAddUpIsAnError) {
  EXPECT_FALSE(add_up({}));
  reflow_.liquidus_C.reset();
  const std::vector<Pass> passes{{"1", &first_, &reflow_}};
  EXPECT_FALSE(add_up(passes));
}

}  // namespace
}  // namespace ovenwright::exposure
