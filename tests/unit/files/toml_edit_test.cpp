#include "core/files/toml_edit.h"

#include <gtest/gtest.h>

#include <string>

#include "core/files/toml_source.h"

namespace ovenwright::files {
namespace {

constexpr const char* kWindow = R"(# released by quality
name = "SAC"   # the alloy
liquidus_C = 217

[uncertainty]
instrument_C = 1.0   # half width

[[requirement]]
name = "peak"
lower = 235 # data sheet, page 4
upper = 250

# the second
[[requirement]]
name = "soak"
)";

TomlEdit opened(const std::string& text) {
  auto edit = TomlEdit::open("a.toml", text);
  EXPECT_TRUE(edit) << edit.error().text();
  return *std::move(edit);
}

TEST(TomlEdit, PutsAValueInItsPlaceAndKeepsAllElse) {
  auto edit = opened(kWindow);
  ASSERT_TRUE(edit.set({"requirement", 0}, "lower", "238.5"));
  ASSERT_TRUE(edit.set({"uncertainty"}, "instrument_C", "0.5"));
  ASSERT_TRUE(edit.set({""}, "name", "\"SAC, tight\""));
  std::string want = kWindow;
  want.replace(want.find("235"), 3, "238.5");
  want.replace(want.find("1.0"), 3, "0.5");
  want.replace(want.find("\"SAC\""), 5, "\"SAC, tight\"");
  EXPECT_EQ(edit.text(), want);
}

// Whoever writes a list over several lines says beside each number what it is.
TEST(TomlEdit, PutsTheNumbersOfAListInTheirPlaces) {
  auto edit =
      opened("top_C = [\n  150,   # zone 1\n  160.0, # zone 2: fan replaced in May\n]  # end\nmore = [1, [2]]\n");
  ASSERT_TRUE(edit.set({}, "top_C", "[150, 165]"));
  EXPECT_EQ(edit.text(),
            "top_C = [\n  150,   # zone 1\n  165, # zone 2: fan replaced in May\n]  # end\nmore = [1, [2]]\n");
  ASSERT_TRUE(edit.set({}, "top_C", "[150.0, 165, 170]"));  // of another length: as a whole
  EXPECT_EQ(edit.text(), "top_C = [150.0, 165, 170]  # end\nmore = [1, [2]]\n");
  ASSERT_TRUE(edit.set({}, "more", "[1, [3]]"));
  EXPECT_EQ(edit.text(), "top_C = [150.0, 165, 170]  # end\nmore = [1, [3]]\n");
}

TEST(TomlEdit, AddsAnAbsentKeyAfterTheTablesLast) {
  auto edit = opened(kWindow);
  ASSERT_TRUE(edit.set({"requirement", 0}, "target", "242"));
  ASSERT_TRUE(edit.set({"requirement", 1}, "upper", "120"));
  ASSERT_TRUE(edit.set({""}, "revision", "\"2\""));
  EXPECT_NE(edit.text().find("upper = 250\ntarget = 242\n"), std::string::npos);
  EXPECT_NE(edit.text().find("name = \"soak\"\nupper = 120\n"), std::string::npos);
  EXPECT_NE(edit.text().find("liquidus_C = 217\nrevision = \"2\"\n\n[uncertainty]"), std::string::npos);
}

TEST(TomlEdit, AddsAnAbsentTableAtTheEnd) {
  auto edit = opened("name = \"x\"");
  ASSERT_TRUE(edit.set({"uncertainty"}, "instrument_C", "0.5"));
  EXPECT_EQ(edit.text(), "name = \"x\"\n\n[uncertainty]\ninstrument_C = 0.5\n");
}

TEST(TomlEdit, TakesAKeyOutAndKeepsItsComment) {
  auto edit = opened(kWindow);
  const auto gone = edit.erase({"requirement", 0}, "lower");
  ASSERT_TRUE(gone);
  EXPECT_TRUE(*gone);
  EXPECT_NE(edit.text().find("name = \"peak\"\n# data sheet, page 4\nupper = 250\n"), std::string::npos);
  ASSERT_TRUE(edit.erase({"requirement", 0}, "upper"));
  EXPECT_EQ(edit.text().find("250"), std::string::npos);
  const auto absent = edit.erase({"requirement", 0}, "upper");
  ASSERT_TRUE(absent);
  EXPECT_FALSE(*absent);
}

TEST(TomlEdit, TakesATableOut) {
  auto edit = opened(kWindow);
  ASSERT_TRUE(edit.erase_table({"requirement", 0}));
  std::string want = kWindow;
  const auto begin = want.find("[[requirement]]\nname = \"peak\"");
  want.erase(begin, want.find("[[requirement]]\nname = \"soak\"") - begin);
  EXPECT_EQ(edit.text(), want);
}

TEST(TomlEdit, ReachesInlineAndDottedTables) {
  auto edit = opened("uncertainty = { instrument_C = 1.0, tolerance_C = 2 }\nlimits.a = 1\nz = 3\n");
  ASSERT_TRUE(edit.set({"uncertainty"}, "instrument_C", "0.5"));
  ASSERT_TRUE(edit.set({"uncertainty"}, "thermocouple", "\"T class 1\""));
  ASSERT_TRUE(edit.erase({"uncertainty"}, "tolerance_C"));
  ASSERT_TRUE(edit.set({"limits"}, "b", "2"));
  EXPECT_EQ(edit.text(),
            "uncertainty = { instrument_C = 0.5, thermocouple = \"T class 1\" }\nlimits.a = 1\nlimits.b = 2\nz = 3\n");
  ASSERT_TRUE(edit.erase({"uncertainty"}, "instrument_C"));
  EXPECT_EQ(edit.text().substr(0, edit.text().find('\n')), "uncertainty = { thermocouple = \"T class 1\" }");
}

TEST(TomlEdit, KeepsWindowsLineEnds) {
  auto edit = opened("name = \"x\"\r\n[a]\r\nb = 1 # why\r\n");
  ASSERT_TRUE(edit.set({"a"}, "c", "2"));
  EXPECT_EQ(edit.text(), "name = \"x\"\r\n[a]\r\nb = 1 # why\r\nc = 2\r\n");
}

TEST(TomlEdit, RefusesWhatWouldNotParse) {
  auto edit = opened(kWindow);
  EXPECT_FALSE(edit.set({""}, "name", "\"open"));
  EXPECT_EQ(edit.text(), kWindow);
}

TEST(TomlSource, FindsTheEndOfEveryKindOfValue) {
  const auto end = [](std::string_view text) { return value_end(text, 0); };
  EXPECT_EQ(end("250 # x"), 3U);
  EXPECT_EQ(end("250"), 3U);
  EXPECT_EQ(end(R"("a\"b" # x)"), 6U);
  EXPECT_EQ(end("'a\\' x"), 4U);
  EXPECT_EQ(end("[1, [2, \"]\"], # ]\n 3] x"), 21U);
  EXPECT_EQ(end("{ a = '}' }, 3"), 11U);
  EXPECT_EQ(end("\"\"\"a\"\"\"\" x"), 8U);
  EXPECT_EQ(end("'''a\n''' x"), 8U);
  EXPECT_EQ(offset_of("ä = 1\nö = 2", 2, 5), 12U);
}

}  // namespace
}  // namespace ovenwright::files
