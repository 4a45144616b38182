#include "core/report/spreadsheet.h"

#include <gtest/gtest.h>

namespace ovenwright::report {
namespace {

// Source of the cases: what spreadsheets calculate when a table is opened or pasted; common practice, no source.
TEST(Spreadsheet, ATextIsNoFormulaHoweverTheTableIsCut) {
  struct Case {
    const char *text, *want;
  };
  for (const auto& [text, want] : {Case{"U1 centre", "U1 centre"},
                                   {"", ""},
                                   {"=1+2", "'=1+2"},
                                   {"+1", "'+1"},
                                   {"-1", "'-1"},
                                   {"@SUM(A1)", "'@SUM(A1)"},
                                   {"|cmd", "'|cmd"},
                                   {"%x", "'%x"},
                                   {"\uff1d1", "'\uff1d1"},
                                   {"  =1+2", "'  =1+2"},
                                   {"\t=1+2", "\t'=1+2"},
                                   {"\u00a0=1", "'\u00a0=1"},
                                   {"\ufeff=1", "'\ufeff=1"},
                                   {"\"=1+2", "'\"=1+2"},
                                   {"a;=1+2", "a;'=1+2"},
                                   {"a; =1+2;b", "a;' =1+2;b"},
                                   {"a;\"=1+2\"", "a;'\"=1+2\""},
                                   {"a,@b", "a,'@b"},
                                   {"a\t+1", "a\t'+1"},
                                   {"a\n=1\r\n-2", "a\n'=1\r\n'-2"},
                                   {"a=1+2", "a=1+2"},
                                   {"QM-1001; 2 = 3", "QM-1001; 2 = 3"},
                                   {"'=1", "''=1"}}) {
    EXPECT_EQ(no_formula(text), want) << text;
    EXPECT_EQ(no_formula(std::string{"x;"} + text), std::string{"x;"} + want)
        << text;  // nothing new behind a separator
  }
}

TEST(Spreadsheet, ACellIsReadBackAsTheText) {
  EXPECT_EQ(csv_cell("a"), "a");
  EXPECT_EQ(csv_cell("a,\"b\""), "\"a,\"\"b\"\"\"");
  EXPECT_EQ(csv_cell("a;=1"), "\"a;'=1\"");
  EXPECT_EQ(csv_cell("=A1,2"), "\"'=A1,2\"");
}

TEST(Spreadsheet, ANumberIsKnown) {
  for (const char* text : {"5", "-39 %",
                           "\u2212"
                           "39 %",
                           "+3.0", "1\u2009000.5", "1.234,5"})
    EXPECT_TRUE(reads_as_number(text));
  for (const char* text : {"", "-", "-1+2", "=1", "1e5", "-1+cmd|'x'!A0", "3 K", "+A1"})
    EXPECT_FALSE(reads_as_number(text));
}

}  // namespace
}  // namespace ovenwright::report
