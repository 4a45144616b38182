#include <gtest/gtest.h>

#include <clocale>

#include "core/judge/decide.h"

namespace ovenwright::judge {
namespace {

// Own rule of measures: enough digits that a failing value does not read as its limit.
TEST(NumberText, AFailingValueDoesNotReadAsItsLimit) {
  EXPECT_EQ(number_text(234.96, 1, 235, 250), "234.96");
  EXPECT_EQ(number_text(234.9996, 1, 235, 250), "234.9996");
  EXPECT_EQ(number_text(250.04, 1, 235, 250), "250.04");
  EXPECT_EQ(number_text(234.9, 1, 235, 250), "234.9");
  EXPECT_EQ(number_text(235.04, 1, 235.02, 250), "235.04");  // nor a passing one as failing
  EXPECT_EQ(number_text(249.96, 1, 235, 250), "250.0");
}

TEST(NumberText, RoundingInHandReadsAsTheLimit) { EXPECT_EQ(number_text(235 - 5e-7, 1, 235, 250), "235.0"); }

TEST(NumberText, MinusIsTheMathematicalOneAndZeroHasNone) {
  EXPECT_EQ(number_text(-39, 0), "\u221239");
  EXPECT_EQ(number_text(-0.01, 1), "0.0");
}

TEST(NumberText, DoesNotHangOnTheLocale) {
  const std::string before = std::setlocale(LC_ALL, nullptr);
  if (std::setlocale(LC_ALL, "de_DE.UTF-8")) {
    EXPECT_EQ(number_text(234.96, 1, 235, 250), "234.96");
    std::setlocale(LC_ALL, before.c_str());
  }
}

}  // namespace
}  // namespace ovenwright::judge
