#include "core/clean/rows.h"

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <memory>
#include <utility>
#include <vector>

#include "core/clean/clean.h"
#include "core/clean/track.h"
#include "tests/unit/clean/made_log.h"

namespace ovenwright::clean {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

std::shared_ptr<const std::vector<double>> shared(std::vector<double> times) {
  return std::make_shared<const std::vector<double>>(std::move(times));
}

// Expected values in this file: by hand.
std::vector<double> ordered(const std::vector<double>& time_s) {
  const auto rows = order_rows(shared(time_s));
  return {rows.clock->time_s().begin(), rows.clock->time_s().end()};
}

TEST(CleanRows, TimesInOrderAreLeftAlone) {
  const auto rows = order_rows(shared({0, 1, 2, 3}));
  EXPECT_FALSE(rows.kept);
  EXPECT_THAT(rows.faults, IsEmpty());
  EXPECT_EQ(rows.clock->size(), 4U);
}

TEST(CleanRows, RepeatedTimesLeaveTheFirst) {
  const auto rows = order_rows(shared({0, 1, 1, 1, 2}));
  ASSERT_TRUE(rows.kept);
  EXPECT_THAT(*rows.kept, ElementsAre(0, 1, 4));
  ASSERT_EQ(rows.faults.size(), 1U);
  EXPECT_EQ(rows.faults[0].kind, run::FaultKind::kTimeGoingBack);
  EXPECT_EQ(rows.faults[0].from_s, 1);
  EXPECT_EQ(rows.faults[0].to_s, 1);
  EXPECT_EQ(rows.faults[0].removed.size(), 2U);
}

TEST(CleanRows, OneMadTimeCostsOneRow) {
  EXPECT_THAT(ordered({0, 1, 99, 2, 3, 4}), ElementsAre(0, 1, 2, 3, 4));
  EXPECT_THAT(ordered({0, 1, -50, 2, 3, 4}), ElementsAre(0, 1, 2, 3, 4));
  EXPECT_THAT(ordered({0, 1, NAN, 2, INFINITY, 4}), ElementsAre(0, 1, 2, 4));
  EXPECT_THAT(ordered({99, 0, 1, 2}), ElementsAre(0, 1, 2));
}

// Source: time going back is flagged and left in: no row is lost, and the curve is that of a clock left alone.
TEST(CleanRows, BehindAClockThatWasSetBackTimesAreMovedOn) {
  MadeLog log;
  const auto right = log.time_s;
  for (auto& t : log.time_s)
    if (t >= 250) t -= 50;
  auto runs = clean(log.channels());
  ASSERT_TRUE(runs);
  ASSERT_EQ(runs->size(), 1U);
  EXPECT_THAT(faults_of((*runs)[0]), ElementsAre("log time going back 249.5 250.0 flagged"));
  EXPECT_EQ((*runs)[0].faults[0].detail, "the clock was set back by 50.0 s: later times are moved on");
  ASSERT_EQ((*runs)[0].channels[0].trace->size(), right.size());
  EXPECT_NEAR((*runs)[0].channels[0].trace->time_s().back(), right.back(), 1e-9);
  // Put right again after 40 s.
  log.time_s = right;
  for (auto& t : log.time_s)
    if (t >= 250 && t < 290) t -= 50;
  runs = clean(log.channels());
  ASSERT_TRUE(runs);
  EXPECT_THAT(faults_of((*runs)[0]), ElementsAre("log time going back 249.5 250.0 flagged"));
  EXPECT_EQ((*runs)[0].channels[0].trace->size(), right.size());
  EXPECT_NEAR((*runs)[0].channels[0].trace->time_s().back(), right.back(), 1e-9);
}

// Source: the times before they were set back. Tolerance: rounding of sums of decimals.
TEST(CleanRows, AClockThatIsPutRightIsFollowed) {
  for (const auto& [back_s, interval_s] :
       {std::pair{12.7, 0.1}, {12.3, 0.1}, {7.9, 0.2}, {33.3, 0.3}, {50.0, 0.5}, {12.7, 0.5}, {3600.0, 1.0}}) {
    std::vector<double> right, logged;
    for (int i = 0; i < 1500; ++i) {
      right.push_back(i * interval_s);
      const bool set_back = i >= 400 && i < 1000;
      logged.push_back(std::round((right.back() - (set_back ? back_s : 0)) * 10) / 10);
    }
    const auto moved = moved_on(logged, [](std::size_t) { return true; });
    ASSERT_TRUE(moved) << back_s;
    ASSERT_EQ(moved->faults.size(), 1u);
    EXPECT_EQ(moved->faults[0].detail,
              fmt::format("the clock was set back by {:.1f} s: later times are moved on", back_s));
    double most_s = 0;
    for (std::size_t i = 0; i < right.size(); ++i) most_s = std::max(most_s, std::abs(moved->time_s[i] - right[i]));
    EXPECT_LT(most_s, 1e-6) << back_s << " " << interval_s;
  }
}

TEST(CleanRows, NoUsableTimeGivesAnEmptyClock) {
  EXPECT_EQ(order_rows(shared({NAN, NAN})).clock->size(), 0U);
  EXPECT_EQ(order_rows(shared({})).clock->size(), 0U);
  EXPECT_EQ(order_rows(shared({7, 7, 7})).clock->size(), 1U);
}

TEST(CleanRows, NothingUsableIsAnError) {
  const auto times = std::make_shared<const std::vector<double>>(3, NAN);
  const auto runs = clean({{"TC1", 1, times, {25, 26, 27}}});
  ASSERT_FALSE(runs);
  EXPECT_EQ(runs.error().code, ErrorCode::kParse);
  EXPECT_FALSE(clean({}));
}

TEST(CleanRows, FewerThanThreeSamplesAreAFaultAndNoTrace) {
  for (std::size_t n = 1; n <= 2; ++n) {
    std::vector<double> time_s{0, 1}, T{25, 26};
    time_s.resize(n);
    T.resize(n);
    const auto runs = clean({{"TC1", 1, std::make_shared<const std::vector<double>>(time_s), T}});
    ASSERT_TRUE(runs);
    EXPECT_FALSE((*runs)[0].channels[0].trace);
    EXPECT_EQ((*runs)[0].channels[0].faults.size(), 1U);
  }
}

TEST(CleanRows, AClockGapIsFiveMediansAndMoreThanTwoSeconds) {
  MadeLog log;
  const auto drop = [](MadeLog& from, double start_s, double end_s) {
    const auto first = static_cast<std::ptrdiff_t>(from.row(start_s)),
               last = static_cast<std::ptrdiff_t>(from.row(end_s));
    from.time_s.erase(from.time_s.begin() + first, from.time_s.begin() + last);
    for (auto& T : from.temperature_C) T.erase(T.begin() + first, T.begin() + last);
  };
  drop(log, 100.5, 102.5);  // leaves 2.5 s, five medians and no more
  const auto none = clean(log.channels());
  ASSERT_TRUE(none);
  EXPECT_THAT(faults_of((*none)[0]), IsEmpty());
  drop(log, 200.5, 203);  // leaves 3 s
  const auto one = clean(log.channels());
  ASSERT_TRUE(one);
  EXPECT_THAT(faults_of((*one)[0]), ElementsAre("log clock gap 200.0 203.0 flagged"));
  MadeLog fast(0.1);
  drop(fast, 100.1, 101.5);  // 1.5 s is many medians but not 2 s
  const auto short_one = clean(fast.channels());
  ASSERT_TRUE(short_one);
  EXPECT_THAT(faults_of((*short_one)[0]), IsEmpty());
}

// Source: the values themselves. Lengths around what is looked at together; what is no number stands anywhere.
TEST(LookOver, FindsRangeStepsAndWhatIsNoNumber) {
  for (std::size_t n = 1; n < 24; ++n) {
    std::vector<double> values(n);
    for (std::size_t i = 0; i < n; ++i) values[i] = 20 + static_cast<double>(i * i % 7);
    for (std::size_t at = 0; at < n; ++at) {
      auto changed = values;
      changed[at] = -40;
      auto found = look_over(changed);
      EXPECT_TRUE(found.all_finite);
      EXPECT_EQ(found.lowest, -40);
      EXPECT_EQ(found.highest, *std::max_element(changed.begin(), changed.end()));
      double largest = 0;
      for (std::size_t i = 1; i < n; ++i) largest = std::max(largest, std::abs(changed[i] - changed[i - 1]));
      EXPECT_EQ(found.largest_step, largest);
      for (const double none : {std::nan(""), HUGE_VAL, -HUGE_VAL}) {
        changed[at] = none;
        EXPECT_FALSE(look_over(changed).all_finite) << n << " " << at;
      }
    }
  }
}

}  // namespace
}  // namespace ovenwright::clean
