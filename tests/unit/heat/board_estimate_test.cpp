#include "core/heat/board_estimate.h"

#include <gtest/gtest.h>

#include <cmath>

namespace ovenwright::heat {
namespace {

// Source: algebra on the values that the header states: 1850 kg/m³ · 1.6 mm · 1100 J/(kg·K) · 1.25 = 4070 J/(m²·K);
// with h = 136 W/(m²·K) a time constant of 29.9 s (50 W/(m²·K) of convection and 18 of radiation on each side).
TEST(BoardEstimate, OfABareBoardIsItsLaminate) {
  board::Board board;
  board.thickness_mm = 1.6;
  const auto bare = estimate(board, "");
  ASSERT_TRUE(bare);
  EXPECT_NEAR(std::exp(bare->ln_capacity), 4070, 1e-6);
  EXPECT_NEAR(std::exp(bare->ln_capacity - usual_exchange_level().ln_W_per_m2K), 29.926, 1e-3);
}

// A board of 100 mm × 100 mm × 1.6 mm has 29.6 g of laminate: at 49.6 g without its part there are 20 g more over
// 0.01 m², 2 kg/m² of 500 J/(kg·K).
TEST(BoardEstimate, WhatABoardWeighsMoreThanItsLaminateCounts) {
  board::Board board;
  board.thickness_mm = 1.6;
  board.length_mm = board.width_mm = 100;
  board.mass_g = 59.6;
  board::Part block;
  block.name = "T1";
  block.length_mm = block.width_mm = 20;
  block.mass_g = 10;
  board.parts.push_back(block);
  const auto bare = estimate(board, "");
  ASSERT_TRUE(bare);
  EXPECT_NEAR(std::exp(bare->ln_capacity), 4070 + 1000, 1e-6);
  EXPECT_LT(bare->board_sd, 0.15);  // copper is known where the mass is

  // The part's 10 g · 850 J/(kg·K) · 1.25 over its footprint and half of √(20·0.0016/136) = 15.34 mm on each side.
  const auto part = estimate(board, "T1");
  ASSERT_TRUE(part);
  const double side_m = 0.020 + std::sqrt(20 * 0.0016 / 136);
  EXPECT_NEAR(std::exp(part->ln_capacity), 5070 + 10.625 / (side_m * side_m), 1e-6);
  EXPECT_GT(part->own_sd, bare->own_sd);
}

TEST(BoardEstimate, NeedsThicknessOrMassWithSize) {
  board::Board board;
  board.length_mm = 100;
  EXPECT_FALSE(estimate(board, ""));
  board.width_mm = 100;
  board.mass_g = 50;
  EXPECT_TRUE(estimate(board, ""));
}

}  // namespace
}  // namespace ovenwright::heat
