#include "core/judge/fitting_window.h"

#include <gtest/gtest.h>

namespace ovenwright::judge {
namespace {

window::ProcessWindow window_of(const char* name, double lower, double upper) {
  window::ProcessWindow one;
  one.identity.name = name;
  one.requirements.resize(1);
  one.requirements[0].measure.measure = measure::Measure::kPeak;
  one.requirements[0].lower = lower;
  one.requirements[0].upper = upper;
  return one;
}

run::Run run_of(const std::vector<double>& peaks_C) {
  run::Run run;
  for (const double peak_C : peaks_C) {
    run.channels.emplace_back();
    run.channels.back().trace = *run::Trace::make(*run::Clock::make({0, 1, 2}), {25, peak_C, 25});
  }
  return run;
}

// Peak limits as the general windows carry them.
const auto kLeadFree = window_of("SAC305", 235, 250);
const std::vector kOthers{window_of("Sn63Pb37", 205, 225), window_of("Bi58Sn42", 160, 185), kLeadFree};

TEST(FittingWindow, NamesTheOneThatFitsWhereTheAssumedIsFar) {
  EXPECT_EQ(fitting_window(run_of({210, 216}), nullptr, kLeadFree, kOthers), "Sn63Pb37");
  EXPECT_EQ(fitting_window(run_of({170, 182}), nullptr, kLeadFree, kOthers), "Bi58Sn42");
}

TEST(FittingWindow, IsSilentWhereTheAssumedIsPlausibleOrNoneFits) {
  EXPECT_EQ(fitting_window(run_of({210, 226}), nullptr, kLeadFree, kOthers), "");
  EXPECT_EQ(fitting_window(run_of({240}), nullptr, kLeadFree, kOthers), "");
  EXPECT_EQ(fitting_window(run_of({100}), nullptr, kLeadFree, kOthers), "");
  EXPECT_EQ(fitting_window(run_of({}), nullptr, kLeadFree, kOthers), "");
}

}  // namespace
}  // namespace ovenwright::judge
