#include "core/log/layout_file.h"

#include <gtest/gtest.h>
#include <unistd.h>

#include <filesystem>
#include <string>

namespace ovenwright::log {
namespace {

constexpr const char* kLayout = R"(name = "line 2 logger"
encoding = "UTF-8"
delimiter = ";"
decimal = ","
header_line = 3
unit = "mV"
thermocouple_type = "K"
cold_junction_C = 23.5
cold_junction_column = 9
scale = 0.1
form = "long"
member = "lot/run1.xlsx"
sheet = "Run 1"
date_order = "dmy"

[time]
columns = [1, 2]
kind = "date and time"
interval_s = 0.5

[[channel]]
column = 3
name = "TC1"
time_column = 4

[[channel]]
column = 5
use = false
reversed = true
)";

TEST(LayoutFile, ReadsEveryKey) {
  const auto layout = parse_layout("l.toml", kLayout);
  ASSERT_TRUE(layout) << layout.error().text();
  EXPECT_EQ(layout->name, "line 2 logger");
  EXPECT_EQ(layout->delimiter, ";");
  EXPECT_EQ(layout->decimal, ",");
  EXPECT_EQ(layout->header_line, 3);
  EXPECT_EQ(layout->unit, "mV");
  EXPECT_EQ(layout->cold_junction_C, 23.5);
  EXPECT_EQ(layout->cold_junction_column, 9);
  EXPECT_EQ(layout->scale, 0.1);
  EXPECT_EQ(layout->form, Form::kLong);
  EXPECT_EQ(layout->member, "lot/run1.xlsx");
  EXPECT_EQ(layout->sheet, "Run 1");
  EXPECT_EQ(layout->time.columns, (std::vector<int>{1, 2}));
  EXPECT_EQ(layout->time.kind, "date and time");
  EXPECT_EQ(layout->time.interval_s, 0.5);
  ASSERT_EQ(layout->channels.size(), 2U);
  EXPECT_EQ(layout->channels[0].column, 3);
  EXPECT_EQ(layout->channels[0].name, "TC1");
  EXPECT_EQ(layout->channels[0].time_column, 4);
  EXPECT_TRUE(layout->channels[0].use);
  EXPECT_FALSE(layout->channels[1].use);
  EXPECT_FALSE(layout->channels[0].reversed);
  EXPECT_TRUE(layout->channels[1].reversed);
}

TEST(LayoutFile, WritesWhatItReads) {
  const auto layout = parse_layout("l.toml", kLayout);
  ASSERT_TRUE(layout);
  EXPECT_EQ(layout_text(*layout), kLayout);
  EXPECT_EQ(layout_text(Layout{}), "");
}

TEST(LayoutFile, SavesIntoANewFileOnly) {
  const auto layout = parse_layout("l.toml", kLayout);
  ASSERT_TRUE(layout);
  const auto path = std::filesystem::temp_directory_path() / ("ovenwright_layout_" + std::to_string(::getpid()));
  ASSERT_TRUE(save_layout(*layout, path.string()));
  EXPECT_FALSE(save_layout(*layout, path.string()));
  const auto read = load_layout(path.string());
  std::filesystem::remove(path);
  ASSERT_TRUE(read) << read.error().text();
  EXPECT_EQ(layout_text(*read), kLayout);
}

struct Case {
  const char* name;
  const char* text;
  const char* want;
};
void PrintTo(const Case& c, std::ostream* os) { *os << c.name; }
class LayoutErrors : public testing::TestWithParam<Case> {};

TEST_P(LayoutErrors, SayWhereWhatWasFoundAndWhatWasExpected) {
  const auto layout = parse_layout("l.toml", GetParam().text);
  ASSERT_FALSE(layout);
  EXPECT_EQ(layout.error().text(), GetParam().want);
}

INSTANTIATE_TEST_SUITE_P(
    Table, LayoutErrors,
    testing::Values(Case{"unknown_key", "delimeter = \";\"\n",
                         R"(l.toml:1:1: found the unknown key "delimeter", did you mean "delimiter"?)"},
                    Case{"unknown_key_of_time", "[time]\ncolumn = 1\n",
                         R"(l.toml:2:1: found the unknown key "column" in [time], did you mean "columns"?)"},
                    Case{"decimal", "decimal = \";\"\n",
                         R"(l.toml:1:11: found ";" for "decimal", expected "." or ",")"},
                    Case{"encoding", "encoding = \"UTF-99\"\n",
                         R"(l.toml:1:12: found "UTF-99" for "encoding", expected the name of a character encoding)"},
                    Case{"delimiter", "delimiter = \";;\"\n",
                         R"(l.toml:1:13: found ";;" for "delimiter", expected one character, or "fixed width")"},
                    Case{"unit", "unit = \"degc\"\n", R"(l.toml:1:8: found "degc" for "unit", did you mean "degC"?)"},
                    Case{"kind", "[time]\nkind = \"clock\"\n",
                         R"(l.toml:2:8: found "clock" for "kind", did you mean "clock m:s"?)"},
                    Case{"column", "[[channel]]\ncolumn = 0\n",
                         R"(l.toml:2:10: found 0 for "column", expected a whole number from 1 to 100000)"},
                    Case{"no_column", "[[channel]]\nname = \"a\"\n",
                         R"(l.toml:1:1: missing "column" in [[channel]], expected the column's number from 1)"},
                    Case{"column_twice", "[[channel]]\ncolumn = 2\n[[channel]]\ncolumn = 2\n",
                         R"(l.toml:4:10: found column 2 a second time, first in line 1)"},
                    Case{"time_columns", "[time]\ncolumns = [1.5]\n",
                         R"(l.toml:2:11: found 1.5 for "columns", expected whole numbers from 1)"},
                    Case{"five_time_columns", "[time]\ncolumns = [1, 2, 3, 4, 5]\n",
                         R"(l.toml:2:11: found 5 time columns, expected at most four)"},
                    Case{"scale", "scale = 0\n", R"(l.toml:1:9: found 0 for "scale", expected a factor above 0)"}),
    [](const auto& c) { return std::string{c.param.name}; });

}  // namespace
}  // namespace ovenwright::log
