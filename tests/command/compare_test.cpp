// Two logs held against each other, run as a process; what is printed is in the golden files.
#include <gtest/gtest.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "tests/command/process.h"

namespace ovenwright {
namespace {

using Json = nlohmann::json;

const std::string kWarm = "tests/data/command/passes.csv", kCold = "tests/data/command/too_cold.csv";

Json compared(std::vector<std::string> arguments) {
  arguments.insert(arguments.begin(), "compare");
  arguments.insert(arguments.end(), {"--format", "json"});
  const auto finished = ovenwright_program(arguments);
  EXPECT_EQ(finished.status, 0) << finished.err;  // whatever the verdicts are
  return Json::parse(finished.out, nullptr, false);
}

Json check_of(const std::string& log) {
  return Json::parse(ovenwright_program({"check", log, "--format", "json"}).out)["runs"][0];
}

// Source: the contract's keys; the values are those that `check` gives for each log alone.
TEST(Compare, HoldsTheValuesOfCheckAgainstEachOther) {
  const auto report = compared({kWarm, kCold});
  EXPECT_EQ(report["schema"], "ovenwright.compare/1");
  EXPECT_EQ(report["aligned_at"], "150 degC on rise");
  EXPECT_TRUE(report["recipes"]["changes"].is_null());
  const auto a = check_of(kWarm), b = check_of(kCold);
  EXPECT_EQ(report["margin"]["a"], a["margin"]);
  EXPECT_EQ(report["margin"]["b"], b["margin"]);
  ASSERT_EQ(report["results"].size(), a["results"].size() + a["board_results"].size());
  for (std::size_t i = 0; i < a["results"].size(); ++i) {
    const auto& result = report["results"][i];
    EXPECT_EQ(result["requirement"], a["results"][i]["requirement"]);
    EXPECT_EQ(result["trace"], a["results"][i]["trace"]);
    EXPECT_EQ(result["a"], a["results"][i]["value"]);
    EXPECT_EQ(result["b"], b["results"][i]["value"]);
    if (result["difference"].is_null()) continue;
    EXPECT_DOUBLE_EQ(result["difference"].get<double>(), result["b"].get<double>() - result["a"].get<double>());
    if (result["expanded_uncertainty"].is_null()) continue;
    EXPECT_EQ(result["significant"].get<bool>(),
              std::abs(result["difference"].get<double>()) > result["expanded_uncertainty"].get<double>());
    // Source: the rule for shared errors, U = 2·√(noise² + sampling²) over both, from the terms that `check` prints.
    double squares = 0;
    for (const auto* side : {&a, &b})
      for (const auto* term : {"noise", "sampling"}) {
        const double u = (*side)["results"][i]["uncertainty_terms"][term];
        squares += u * u;
      }
    EXPECT_NEAR(result["expanded_uncertainty"].get<double>(), 2 * std::sqrt(squares), 1e-12);
  }
}

TEST(Compare, DifferentThermocouplesAreLessCertain) {
  const auto same = compared({kWarm, kCold}), other = compared({kWarm, kCold, "--different-thermocouples"});
  EXPECT_TRUE(same["same_thermocouples"].get<bool>());
  EXPECT_FALSE(other["same_thermocouples"].get<bool>());
  for (std::size_t i = 0; i < same["results"].size(); ++i) {
    if (same["results"][i]["expanded_uncertainty"].is_null()) continue;
    EXPECT_LT(same["results"][i]["expanded_uncertainty"].get<double>(),
              other["results"][i]["expanded_uncertainty"].get<double>());
  }
}

TEST(Compare, ALevelThatIsNotReachedLinesNothingUp) {
  const auto report = compared({kWarm, kCold, "--align", "500"});
  EXPECT_TRUE(report["aligned_at"].is_null());
  EXPECT_FALSE(report["results"].empty());
}

TEST(Compare, NamesWhatIsWrong) {
  EXPECT_EQ(ovenwright_program({"compare", kWarm}).status, 2);
  EXPECT_EQ(ovenwright_program({"compare", kWarm, kCold, "--oven", "ten_zone"}).status, 2);
  EXPECT_EQ(ovenwright_program({"compare", kWarm, kCold, "--run", "1", "--run", "1", "--run", "1"}).status, 2);
  EXPECT_EQ(ovenwright_program({"compare", kWarm, "no such file"}).status, 3);
  EXPECT_EQ(ovenwright_program({"compare", kWarm, kCold, "--window", "no such window"}).status, 3);
  for (const std::vector<std::string>& more : std::vector<std::vector<std::string>>{{"--window", "sac305"},
                                                                                    {"--board", "b"},
                                                                                    {"--run", "1"},
                                                                                    {"--align", "217"},
                                                                                    {"--different-thermocouples"}}) {
    std::vector<std::string> groups{"compare", "--a", "x-1", "--b", "x-2"};
    groups.insert(groups.end(), more.begin(), more.end());
    EXPECT_EQ(ovenwright_program(groups).status, 2) << more.front();
  }
  const auto run = ovenwright_program({"compare", kWarm, kCold, "--run", "2"});
  EXPECT_EQ(run.status, 3);
  const auto over = ovenwright_program({"compare", kWarm, kCold, "-o", kCold});
  EXPECT_EQ(over.status, 2);
  EXPECT_NE(over.err.find("is one of the logs"), std::string::npos) << over.err;
}

}  // namespace
}  // namespace ovenwright
