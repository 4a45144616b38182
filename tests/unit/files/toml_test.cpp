#include "core/files/toml.h"

#include <gtest/gtest.h>

#include <array>
#include <functional>
#include <string>

namespace ovenwright::files {
namespace {

/// A file read as a small profile is read: one of each kind of value.
Result<std::string> read(const std::string& text) {
  auto file = TomlFile::parse("a.toml", text);
  if (!file) return file.error();
  auto root = file->root();
  const std::string name = root.needed_text("name");
  root.number("length_mm", kPositive);
  root.integer("line", 1, 9);
  root.boolean("required");
  root.numbers("top_C", kTemperature);
  root.interval("speed_mm_per_min", kPositive);
  root.texts("channels");
  constexpr std::array<std::string_view, 2> kinds{"heat", "cool"};
  root.one_of("kind", kinds);
  root.number_or_text("upper");
  if (auto limits = root.table("limits")) limits->needed_number("step_C", kNotNegative);
  for (auto& zone : root.tables("zone")) zone.needed_number("length_mm", kPositive);
  if (auto error = file->finish()) return *error;
  return name;
}

TEST(Toml, ReadsEveryKindOfValue) {
  const auto name = read(R"(name = "x"
length_mm = 3
line = 4
required = true
top_C = [1, 2.5]
speed_mm_per_min = [400, 1500.0]
channels = ["a", "b"]
kind = "heat"
upper = "Tc-5"
[limits]
step_C = 0
[[zone]]
length_mm = 1
[[zone]]
length_mm = 2e3
)");
  ASSERT_TRUE(name) << name.error().text();
  EXPECT_EQ(*name, "x");
}

TEST(Toml, TakesAByteOrderMarkAndWindowsLineEnds) {
  const auto name = read("\xEF\xBB\xBFname = \"x\"\r\nline = 4\r\n");
  ASSERT_TRUE(name) << name.error().text();
}

struct Case {
  const char* name;
  const char* text;
  const char* want;
};
void PrintTo(const Case& c, std::ostream* os) { *os << c.name; }
class TomlErrors : public testing::TestWithParam<Case> {};

// Places counted by hand.
TEST_P(TomlErrors, SayWhereWhatWasFoundAndWhatWasExpected) {
  const auto got = read(GetParam().text);
  ASSERT_FALSE(got);
  EXPECT_EQ(got.error().code, ErrorCode::kParse);
  EXPECT_EQ(got.error().text(), GetParam().want);
}

INSTANTIATE_TEST_SUITE_P(
    Table, TomlErrors,
    testing::Values(
        Case{"unknown_key", "name = \"x\"\nlenght_mm = 3\n",
             R"(a.toml:2:1: found the unknown key "lenght_mm", did you mean "length_mm"?)"},
        Case{"unknown_key_in_table", "name = \"x\"\n[limits]\nstep_C = 1\n  colour = 3\n",
             R"(a.toml:4:3: found the unknown key "colour" in [limits], expected "step_C")"},
        Case{"unknown_key_explains_the_missing_one", "nme = \"x\"\n",
             R"(a.toml:1:1: found the unknown key "nme", did you mean "name"?)"},
        Case{"unknown_table", "name = \"x\"\n[limit]\nstep_C = 1\n",
             R"(a.toml:2:2: found the unknown key "limit", did you mean "limits"?)"},
        Case{"missing", "line = 3\n", R"(a.toml:1:1: missing "name", expected a text in quotes)"},
        Case{"missing_in_second_zone", "name = \"x\"\n[[zone]]\nlength_mm = 1\n[[zone]]\n",
             R"(a.toml:4:1: missing "length_mm" in [[zone]], expected a number above 0)"},
        Case{"text_for_number", "name = \"x\"\nlength_mm = \"3 mm\"\n",
             R"(a.toml:2:13: found "3 mm" for "length_mm", expected a number above 0)"},
        Case{"number_for_text", "name = 7\n", R"(a.toml:1:8: found 7 for "name", expected a text in quotes)"},
        Case{"out_of_range", "name = \"x\"\nlength_mm = -3.50\n",
             R"(a.toml:2:13: found -3.50 for "length_mm", expected a number above 0)"},
        Case{"not_finite", "name = \"x\"\nlength_mm = inf\n",
             R"(a.toml:2:13: found inf for "length_mm", expected a number above 0)"},
        Case{"integer_range", "name = \"x\"\nline = 10\n",
             R"(a.toml:2:8: found 10 for "line", expected a whole number from 1 to 9)"},
        Case{"integer_fraction", "name = \"x\"\nline = 1.0\n",
             R"(a.toml:2:8: found 1.0 for "line", expected a whole number from 1 to 9)"},
        Case{"boolean", "name = \"x\"\nrequired = \"yes\"\n",
             R"(a.toml:2:12: found "yes" for "required", expected true or false)"},
        Case{"element_of_array", "name = \"x\"\ntop_C = [150,\n  \"hot\"]\n",
             R"(a.toml:3:3: found "hot" for "top_C", expected a temperature in °C)"},
        Case{"array_expected", "name = \"x\"\ntop_C = 150\n",
             R"(a.toml:2:9: found 150 for "top_C", expected an array of numbers)"},
        Case{"interval_crossed", "name = \"x\"\nspeed_mm_per_min = [1500, 400]\n",
             R"(a.toml:2:20: found [1500, 400] for "speed_mm_per_min", expected two numbers, the lower one first)"},
        Case{"one_of", "name = \"x\"\nkind = \"het\"\n", R"(a.toml:2:8: found "het" for "kind", did you mean "heat"?)"},
        Case{"texts", "name = \"x\"\nchannels = [\"a\", 2]\n",
             R"(a.toml:2:18: found 2 for "channels", expected a text in quotes)"},
        Case{"number_or_text", "name = \"x\"\nupper = true\n",
             R"(a.toml:2:9: found true for "upper", expected a number or a text in quotes)"},
        Case{"table_expected", "name = \"x\"\nlimits = 3\n",
             R"(a.toml:2:10: found 3 for "limits", expected a table: [limits])"},
        Case{"tables_expected", "name = \"x\"\nzone = 3\n",
             R"(a.toml:2:8: found 3 for "zone", expected tables: [[zone]])"},
        Case{"columns_count_characters", "name = \"x\"\nkind = { \"°°\" = 1 }\n",
             R"(a.toml:2:8: found { "°°" = 1 } for "kind", expected a text in quotes)"},
        Case{"first_in_file_order", "name = \"x\"\nline = 0\nlength_mm = 0\n",
             R"(a.toml:2:8: found 0 for "line", expected a whole number from 1 to 9)"}),
    [](const auto& c) { return std::string{c.param.name}; });

TEST(Toml, SyntaxErrorsHaveTheirPlace) {
  const auto got = read("name = \"x\"\nline = = 3\n");
  ASSERT_FALSE(got);
  EXPECT_EQ(got.error().where.file, "a.toml");
  EXPECT_EQ(got.error().where.line, 2);
  const auto repeated = read("name = \"x\"\nname = \"y\"\n");
  ASSERT_FALSE(repeated);
  EXPECT_EQ(repeated.error().where.line, 2);
  const auto binary = read(std::string("\xFF\xFE\x00\x01", 4));
  ASSERT_FALSE(binary);
  EXPECT_EQ(binary.error().where.line, 1);
}

TEST(Toml, UsualSlipsAreToldInPlainWords) {
  const auto message = [](const std::string& text) {
    const auto got = read(text);
    EXPECT_FALSE(got) << text;
    return got ? std::string{} : got.error().message;
  };
  EXPECT_EQ(message("line = 1\nname = \"x\"\nline = 2\n"), "found \"line\" a second time, expected each key once");
  EXPECT_EQ(message("name = SAC305\n"),
            "found a text without quotes, expected a number, true, false, or a text in quotes");
  EXPECT_EQ(message("upper = 3,5\n"), "found a comma behind a value, expected a decimal point, or the end of the line");
  EXPECT_EQ(message("[zone]\nname = \"1\"\n[[zone]]\nname = \"2\"\n"),
            "found [zone] and [[zone]], expected [[zone]] each time");
  EXPECT_EQ(message("name = \"S\xE4\"\n"), "found bytes that are no UTF-8, expected a text in UTF-8");
  const std::string value = "a number, true, false, or a text in quotes";
  EXPECT_EQ(message("name = \"x\n"), "found the end of the line, expected a closing quote");
  EXPECT_EQ(message("name = \"x"), "found the end of the file, expected a closing quote");
  EXPECT_EQ(message("name = \"C:\\reflow\\my.svg\"\n"), "found \"my.svg\"\", expected \\\\ or / in place of \\");
  EXPECT_EQ(message("name = 'x\n"), "found the end of the line, expected a closing quote");
  EXPECT_EQ(message("name\nline = 1\n"), "found the end of the line, expected \"=\" behind the key");
  EXPECT_EQ(message("name: \"x\"\n"), "found \":\", expected \"=\" behind the key");
  EXPECT_EQ(message("Dear colleague\n"), "found \"colleague\", expected \"=\" behind the key");
  EXPECT_EQ(message("name"), "found the end of the file, expected \"=\" and a value");
  EXPECT_EQ(message("line = \n"), "found the end of the line, expected a value");
  EXPECT_EQ(message("line = 5 mm\n"), "found \"mm\", expected the end of the line");
  EXPECT_EQ(message("name = tall\n"), "found a text without quotes, expected " + value);
  EXPECT_EQ(message("name = True\n"), "found a text without quotes, expected " + value);
  EXPECT_EQ(message("name = near\n"), "found a text without quotes, expected " + value);
  EXPECT_EQ(message("name = 2024-13-01\n"), "found a text without quotes, expected " + value);
  EXPECT_EQ(message("numbers = [1, 2"), "found the end of the file, expected a closing ]");
  EXPECT_EQ(message("numbers = [1 2]"), "found \"2]\", expected a comma or a closing ]");
  EXPECT_EQ(message("[limits\nstep_C = 1\n"), "found the end of the line, expected a closing ]");
  EXPECT_EQ(message("{\"name\": 1}"), "found \"{\"name\":\", expected a key, \"=\" and a value");
  EXPECT_EQ(message(std::string("line\0 = 1\n", 10)), "found a control character, expected \"=\" behind the key");
}

TEST(Toml, LongValuesAreShortenedInMessages) {
  const auto got = read("name = \"x\"\nline = \"" + std::string(5000, 'y') + "\"\n");
  ASSERT_FALSE(got);
  EXPECT_LT(got.error().message.size(), 200U);
}

TEST(TomlWriting, TextsAndNumbersReadBackTheSame) {
  const std::string text = "a \"b\" \\ \n\t\x01 °C \x7F";
  auto file = TomlFile::parse("a", "x = " + toml_text(text));
  ASSERT_TRUE(file) << file.error().text();
  EXPECT_EQ(file->root().text("x"), text);
  for (const double number : {0.0, 250.0, 0.1, 1e-7, 1e300, -3.25, 1.0 / 3}) {
    auto numbers = TomlFile::parse("a", "x = " + toml_number(number));
    ASSERT_TRUE(numbers) << numbers.error().text();
    EXPECT_EQ(numbers->root().number("x"), number);
  }
  EXPECT_EQ(toml_number(250), "250");
}

}  // namespace
}  // namespace ovenwright::files
