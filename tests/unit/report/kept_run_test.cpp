#include "core/report/kept_run.h"

#include <gtest/gtest.h>

#include <array>

#include "core/judge/decide_run.h"
#include "core/report/json.h"
#include "core/window/window_file.h"

namespace ovenwright::report {
namespace {

// Source: what the statistics take of the run itself, without its report in between.
TEST(KeptRun, IsTheRunThatWasJudged) {
  const auto window = window::load(std::string{OVENWRIGHT_PROFILES} + "/windows/sac305.toml");
  ASSERT_TRUE(window) << window.error().text();
  for (const char* log : {"too_cold.csv", "ends_rising.csv", "passes.csv"}) {
    check::Request request;
    request.windows = {*window};
    const auto checked = check::check(std::string{OVENWRIGHT_TEST_DATA} + "/command/" + log, request);
    ASSERT_TRUE(checked) << checked.error().text();
    const auto want = lot::run_of("id", checked->runs[0].judgement);
    const auto got =
        kept_run("id", check_json(std::array{check_run_json(checked->reading, checked->runs[0], request)}, {}));
    ASSERT_TRUE(got) << got.error().text();
    EXPECT_EQ(got->id, want.id);
    EXPECT_EQ(got->verdict, want.verdict);
    EXPECT_EQ(got->margin, want.margin);
    EXPECT_EQ(got->margin_bound, want.margin_bound);
    ASSERT_EQ(got->results.size(), want.results.size());
    for (std::size_t i = 0; i < want.results.size(); ++i) {
      const auto &a = got->results[i], &b = want.results[i];
      EXPECT_EQ(a.window, b.window);
      EXPECT_EQ(a.requirement, b.requirement);
      EXPECT_EQ(a.trace, b.trace);
      EXPECT_EQ(a.measure, b.measure);
      EXPECT_EQ(a.parameters, b.parameters);
      EXPECT_EQ(a.unit, b.unit);
      EXPECT_EQ(a.value, b.value);
      EXPECT_EQ(a.at_least, b.at_least);
      EXPECT_EQ(a.lower, b.lower);
      EXPECT_EQ(a.upper, b.upper);
      EXPECT_EQ(a.required, b.required);
      EXPECT_EQ(a.verdict, b.verdict);
      EXPECT_EQ(a.margin, b.margin);
      EXPECT_EQ(a.target, b.target);
    }
    // Source: what the verdict's own summary calls the smallest margin.
    const auto decides = lot::deciding_result(*got);
    ASSERT_TRUE(decides);
    const auto summary = judge::summarise(checked->runs[0].judgement);
    if (!summary.of_the_other && !summary.smallest.empty()) {
      EXPECT_EQ(*decides, summary.smallest[0].outcome);
    }
  }
}

TEST(KeptRun, NoReportIsAnError) {
  EXPECT_FALSE(kept_run("id", ""));
  EXPECT_FALSE(kept_run("id", "[]"));
  EXPECT_FALSE(kept_run("id", R"({"runs": []})"));
  const auto unknown = kept_run("id", R"({"runs": [{"verdict": "fine"}]})");
  ASSERT_FALSE(unknown);
  EXPECT_EQ(unknown.error().code, ErrorCode::kParse);
  EXPECT_NE(unknown.error().message.find("unknown verdict \"fine\""), std::string::npos);
}

}  // namespace
}  // namespace ovenwright::report
