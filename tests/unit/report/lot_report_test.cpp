#include "core/report/lot_report.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "tests/unit/lot/made_lot.h"

namespace ovenwright::report {
namespace {

using testing::HasSubstr;
using Json = nlohmann::json;

lot::Lot lot_of(const std::vector<lot::Run>& runs) { return *lot::summarise(runs); }

// Source: the contract's keys; figures by hand: 240 to 244 have the mean 242, sd √2.5 and moving ranges of 1.
TEST(LotJson, HasTheAgreedKeys) {
  const auto runs = lot::runs_of({240, 241, 242, 243, 244});
  const auto report = Json::parse(lot_json("QM-4712", lot_of(runs)));
  EXPECT_EQ(report["schema"], "ovenwright.lot/1");
  EXPECT_EQ(report["lot"], "QM-4712");
  EXPECT_EQ(report["runs"], 5);
  EXPECT_EQ(report["verdict"], "pass");
  const auto& result = report["results"].at(0);
  for (const char* key : {"requirement", "trace", "n", "mean", "sd", "minimum", "maximum", "pp", "ppk", "ppk_low",
                          "ppk_high", "sd_short_term", "cp", "cpk", "tolerance_interval", "control", "spread"})
    EXPECT_TRUE(result.contains(key)) << key;
  EXPECT_EQ(result["mean"], 242);
  EXPECT_EQ(result["control"]["chart"], "individuals");
  EXPECT_EQ(result["control"]["centre"], 242);
  EXPECT_EQ(result["spread"]["chart"], "moving range");
  EXPECT_TRUE(result["spread"]["signals"].empty());
  EXPECT_EQ(result["tolerance_interval"].size(), 2U);
}

TEST(LotJson, WhatThereIsNotIsNull) {
  auto runs = lot::runs_of({240});
  runs[0].results[0].trace.clear();
  const auto result = Json::parse(lot_json("QM-4712", lot_of(runs)))["results"][0];
  for (const char* key :
       {"trace", "sd", "pp", "ppk", "ppk_low", "cp", "cpk", "sd_short_term", "tolerance_interval", "control", "spread"})
    EXPECT_TRUE(result[key].is_null()) << key;
  EXPECT_EQ(result["note"], "1 run, an index needs 5");
}

TEST(LotJson, ASignalNamesItsRuleAndRun) {
  std::vector<double> values(20);
  for (std::size_t i = 0; i < values.size(); ++i) values[i] = i % 2 == 0 ? 240 : 241;
  values[12] = 249;
  const auto report = Json::parse(lot_json("\"; drop table", lot_of(lot::runs_of(values))));
  EXPECT_EQ(report["lot"], "\"; drop table");
  const auto& signals = report["results"][0]["control"]["signals"];
  ASSERT_EQ(signals.size(), 1U);
  EXPECT_EQ(signals[0]["rule"], "Western Electric 1: 1 point beyond 3 sigma");
  EXPECT_EQ(signals[0]["run"], "r13");
  EXPECT_EQ(report["results"][0]["spread"]["signals"][0]["rule"], "beyond the limits");
}

TEST(LotText, SaysTheSentenceFirstAndNamesRunsThatAreNoPass) {
  auto runs = lot::runs_of({240, 241, 242, 243, 234});
  runs[4].verdict = judge::Verdict::kFail;
  runs[4].margin = -0.133;
  const auto text = lot_text("QM-4712", runs, lot_of(runs));
  EXPECT_EQ(text.find("Lot QM-4712: Fail. 1 of 5 runs is out; the smallest margin is \u221213 %."), 0U) << text;
  EXPECT_THAT(text, HasSubstr("r5   fail      \u221213 %"));
  EXPECT_THAT(text, HasSubstr("peak         U1  5  240.00"));
}

}  // namespace
}  // namespace ovenwright::report
