#include "core/report/table.h"

#include <gtest/gtest.h>

namespace ovenwright::report {
namespace {

TEST(Width, CountsWhatATerminalShows) {
  EXPECT_EQ(width_of(""), 0U);
  EXPECT_EQ(width_of("peak"), 4U);
  EXPECT_EQ(width_of("±2 °C"), 5U);
  EXPECT_EQ(width_of("中心"), 4U);
  EXPECT_EQ(width_of("e\xCC\x81"), 1U);  // e with a combining acute
}

TEST(Table, AlignsColumnsAndDropsEmptyOnes) {
  Table table({{"on"}, {"value", Table::Align::kRight}, {"nothing"}, {"verdict"}});
  table.add({"U1", "1.5", "", "pass"});
  table.add({"中心", "−12.25", "", "fail"});
  table.add({"R118", "", "", ""});
  EXPECT_EQ(table.text(),
            "on     value  verdict\n"
            "U1       1.5  pass\n"
            "中心  −12.25  fail\n"
            "R118\n");
}

TEST(Wrapped, BreaksAtBlanks) {
  EXPECT_EQ(wrapped("aa bb cc dd", 2, 6), "aa bb\n  cc\n  dd\n");
  EXPECT_EQ(wrapped("averylongword x", 0, 5), "averylongword\nx\n");
  EXPECT_EQ(wrapped("", 0, 5), "\n");
}

}  // namespace
}  // namespace ovenwright::report
