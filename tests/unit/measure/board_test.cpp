#include <cmath>

#include "tests/unit/measure/subject.h"

namespace ovenwright::measure {
namespace {

const std::vector<double> kClock{0, 10, 20, 30, 40};

TEST(SpreadOfPeaks, IsLargestLessSmallestWhereverTheyAreInTime) {
  const Sampled a(kClock, {20, 200, 240, 200, 100}), b(kClock, {20, 150, 220, 231, 100});
  const auto spread = on_board({&a, &b}, "spread of peaks");
  EXPECT_NEAR(*spread.value, 9, 1e-12);
  EXPECT_EQ(*spread.from_s, 20);
  EXPECT_EQ(*spread.to_s, 30);
  // Source: root sum of squares over the traces, each perturbed by itself: a(T) is 1.5 °C below 375 °C.
  EXPECT_NEAR(spread.terms.thermocouple, std::sqrt(2.0) * 1.5 / std::sqrt(3.0), 1e-9);
  EXPECT_NEAR(spread.terms.instrument, std::sqrt(2.0) * 1.0 / std::sqrt(3.0), 1e-9);
  EXPECT_EQ(spread.terms.sampling, 0);
}

TEST(SpreadOfPeaks, IsNotKnownWhereATraceStillRises) {
  const Sampled a(kClock, {20, 200, 240, 200, 100}), b(kClock, {20, 150, 220, 231, 235});
  EXPECT_EQ(on_board({&a, &b}, "spread of peaks").no_value, NoValue::kUndetermined);
}

TEST(BoardMeasures, LeaveOutAirAndTracesThatAreFaults) {
  const Sampled a(kClock, {20, 200, 240, 200, 100}), b(kClock, {20, 150, 230, 200, 100});
  Sampled air(kClock, {20, 290, 300, 200, 100});
  air.subject().air = true;
  Sampled open(kClock, {20, 20, 20, 20, 20});
  open.channel().trace.reset();
  EXPECT_NEAR(*on_board({&a, &b, &air, &open}, "spread of peaks").value, 10, 1e-12);
  EXPECT_EQ(on_board({&air, &open}, "spread of peaks").no_value, NoValue::kUndetermined);
}

// Source: linear interpolation by hand. a crosses 110 °C at 5 s, when b, on another clock, is at 60 °C.
TEST(SpreadWhenHottestReaches, IsTakenAtTheEarliestCrossingOnTheirOwnClocks) {
  const Sampled a(kClock, {20, 200, 240, 200, 100}), b({-3, 7, 20, 41}, {20, 70, 230, 100});
  const auto spread = on_board({&a, &b}, "spread when hottest reaches, level=110");
  EXPECT_NEAR(*spread.from_s, 5, 1e-12);
  EXPECT_NEAR(*spread.value, 50, 1e-12);
  EXPECT_EQ(on_board({&a, &b}, "spread when hottest reaches, level=250").no_value, NoValue::kNotReached);
  const Sampled late({6, 10, 20, 30}, {20, 30, 200, 100});
  EXPECT_EQ(on_board({&a, &late}, "spread when hottest reaches, level=110").no_value, NoValue::kUndetermined);
  const Sampled rising(kClock, {20, 50, 60, 70, 80});
  EXPECT_EQ(on_board({&rising}, "spread when hottest reaches, level=110").no_value, NoValue::kUndetermined);
}

TEST(SpreadWhenHottestReaches, ATraceThatStartsAboveHasNotCrossed) {
  const Sampled hot(kClock, {120, 200, 240, 200, 100}), cold(kClock, {20, 100, 230, 200, 100});
  const auto spread = on_board({&hot, &cold}, "spread when hottest reaches, level=110");
  EXPECT_NEAR(*spread.from_s, 10 + 10.0 / 13, 1e-12);
  EXPECT_FALSE(spread.note.empty());
}

// Source: the definition: counted at the sample times of any trace, where the lowest trace is not past its own peak.
TEST(LargestSpread, CountsUntilTheColdestTraceIsPastItsPeak) {
  // At 40 s the spread is 90 °C, but the coldest has peaked at 20 s; at 20 s it is 40 °C, at 10 s 50 °C.
  const Sampled a(kClock, {20, 200, 240, 245, 200}), b(kClock, {20, 150, 200, 180, 110});
  const auto spread = on_board({&a, &b}, "largest spread");
  EXPECT_NEAR(*spread.value, 50, 1e-12);
  EXPECT_EQ(*spread.from_s, 10);
  EXPECT_FALSE(spread.at_least);
  EXPECT_NEAR(*on_board({&a, &b}, "largest spread, from=160, to=210").value, 40, 1e-12);
  EXPECT_NEAR(*on_board({&a, &b}, "largest spread, from=210, to=160").value, 40, 1e-12);
  EXPECT_EQ(on_board({&a, &b}, "largest spread, from=201").no_value, NoValue::kNotReached);
}

TEST(LargestSpread, LooksAtTheSampleTimesOfEveryTrace) {
  const Sampled a({0, 10, 20, 30}, {20, 20, 240, 100}), b({0, 15, 20, 30}, {20, 20, 240, 100});
  const auto spread = on_board({&a, &b}, "largest spread");
  EXPECT_EQ(*spread.from_s, 15);
  EXPECT_NEAR(*spread.value, 110, 1e-12);
}

TEST(LargestSpread, IsABoundWhereCountingWasStillOpen) {
  const Sampled a({0, 10, 20}, {20, 100, 200}), b({0, 10, 20}, {20, 80, 150});
  EXPECT_TRUE(on_board({&a, &b}, "largest spread").at_least);
  EXPECT_FALSE(on_board({&a, &b}, "largest spread, from=20, to=100").at_least);
  EXPECT_TRUE(on_board({&a, &b}, "largest spread, from=10, to=100").at_least);
}

TEST(Lag, IsFromTheFirstToTheLastFirstCrossing) {
  const Sampled a(kClock, {20, 200, 240, 200, 100}), b(kClock, {20, 110, 230, 200, 100});
  const auto lag = on_board({&a, &b}, "lag, level=200");
  EXPECT_NEAR(*lag.from_s, 10, 1e-12);
  EXPECT_NEAR(*lag.value, 7.5, 1e-12);
  EXPECT_EQ(on_board({&a, &b}, "lag, level=235").no_value, NoValue::kNotReached);
  const Sampled rising(kClock, {20, 50, 100, 150, 190});
  EXPECT_EQ(on_board({&a, &rising}, "lag, level=200").no_value, NoValue::kUndetermined);
}

TEST(BoardMeasures, OfOneTraceAreZeroAndSaySo) {
  const Sampled a(kClock, {20, 200, 240, 200, 100});
  const auto spread = on_board({&a}, "spread of peaks");
  EXPECT_EQ(*spread.value, 0);
  EXPECT_EQ(spread.note, "one trace only");
}

TEST(EvaluateAll, GivesTheSameOnAnyNumberOfThreads) {
  const Sampled a(kClock, {20, 200, 240, 200, 100}), b({0, 9, 21, 33}, {20, 150, 231, 100});
  const std::vector<Definition> single{*parse_definition("peak"), *parse_definition("time above, level=217")};
  const std::vector<Definition> board{*parse_definition("spread of peaks"), *parse_definition("lag, level=100")};
  const std::vector<Request> requests{{a.subject(), single}, {b.subject(), single}, {a.subject(), {}}};
  const auto all = evaluate_all(requests, board, std::nullopt, {true, 3});
  ASSERT_EQ(all.by_request.size(), 3u);
  EXPECT_TRUE(all.by_request[2].empty());
  for (std::size_t k = 0; k < 2; ++k) {
    const auto alone = evaluate(requests[k].subject, single, std::nullopt);
    for (std::size_t m = 0; m < single.size(); ++m) {
      EXPECT_EQ(all.by_request[k][m].value, alone[m].value);
      EXPECT_EQ(all.by_request[k][m].expanded_uncertainty, alone[m].expanded_uncertainty);
    }
  }
  EXPECT_EQ(*all.board[0].value, 9);
}

}  // namespace
}  // namespace ovenwright::measure
