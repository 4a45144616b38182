// Names from logs are data on every sheet: no markup, no formula, no page that one name fills.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <sstream>

#include "tests/command/sheet_run.h"

namespace ovenwright {
namespace {

using testing::HasSubstr;
using testing::Not;

const std::string kLong(10'000, 'x');
const std::vector<std::string> kNames{"=cmd()",
                                      "<script>alert(1)</script>",
                                      "+1+1",
                                      "@SUM(A1)",
                                      "-2",
                                      kLong,
                                      "\xE2\x80\xAE"
                                      "edis thgir",
                                      "\xD7\xA9\xD7\x9C\xD7\x95\xD7\x9D",
                                      "hot \xF0\x9F\x94\xA5 corner",
                                      "a & b 'c'"};

class SheetNames : public testing::Test {
 protected:
  void SetUp() override { write(log, made_log(kNames)); }
  std::string made(const std::string& ending) const {
    const std::string file = folder.path("sheet." + ending);
    const auto finished = ovenwright_program({"sheet", log, "--window", "sac305", "--lot", "=HYPERLINK(\"x\")",
                                              "--serial", "<b>7</b>", "--operator",
                                              "\xE2\x80\xAE"
                                              "edaK",
                                              "-o", file});
    EXPECT_LT(finished.status, 3) << finished.err;
    return file;
  }
  Folder folder;
  std::string log = folder.path("names.csv");
};

/// Cells of RFC 4180, read by its grammar.
std::vector<std::vector<std::string>> cells_of(const std::string& csv) {
  std::vector<std::vector<std::string>> rows(1, std::vector<std::string>(1));
  bool quoted = false;
  for (std::size_t i = 0; i < csv.size(); ++i) {
    std::string& cell = rows.back().back();
    if (quoted) {
      if (csv[i] != '"')
        cell += csv[i];
      else if (i + 1 < csv.size() && csv[i + 1] == '"')
        cell += csv[++i];
      else
        quoted = false;
    } else if (csv[i] == '"') {
      quoted = true;
    } else if (csv[i] == ',') {
      rows.back().emplace_back();
    } else if (csv[i] == '\n') {
      rows.emplace_back(1);
    } else if (csv[i] != '\r') {
      cell += csv[i];
    }
  }
  rows.pop_back();  // behind the last line end
  return rows;
}

TEST_F(SheetNames, AreNoFormulasInCsv) {
  const auto rows = cells_of(contents(made("csv")));
  ASSERT_GT(rows.size(), 1U);
  bool seen = false;
  for (const auto& row : rows) {
    EXPECT_EQ(row.size(), rows.front().size());
    for (const auto& cell : row) {
      seen |= cell == "'=cmd()";
      if (cell.empty() || std::string("=+-@\t\r").find(cell[0]) == std::string::npos) continue;
      char* end = nullptr;
      std::strtod(cell.c_str(), &end);
      EXPECT_EQ(*end, '\0') << cell;  // a number may begin with a minus, a text may not
    }
  }
  EXPECT_TRUE(seen);
}

TEST_F(SheetNames, AreNoMarkupInHtmlWhichFetchesNothing) {
  const std::string html = contents(made("html"));
  EXPECT_THAT(html, Not(HasSubstr("<script")));
  EXPECT_THAT(html, Not(HasSubstr("<b>7</b>")));
  EXPECT_THAT(html, HasSubstr("&lt;script&gt;alert(1)&lt;/script&gt;"));
  EXPECT_THAT(html, HasSubstr(kLong));
  for (const char* fetch : {"src=\"http", "href=", "url(", "@import", "<link", "<iframe"})
    EXPECT_THAT(html, Not(HasSubstr(fetch)));
  EXPECT_THAT(html, HasSubstr("default-src 'none'"));
}

TEST_F(SheetNames, StandInFullInJson) {
  const auto json = nlohmann::json::parse(contents(made("json")));
  EXPECT_EQ(json["schema"], "ovenwright.sheet/1");
  EXPECT_EQ(json["runs"][0]["lot"], "=HYPERLINK(\"x\")");
  std::vector<std::string> names;
  for (const auto& trace : json["runs"][0]["check"]["traces"]) names.push_back(trace["name"]);
  EXPECT_THAT(names, testing::Contains(kLong));
  EXPECT_THAT(names, testing::Contains("<script>alert(1)</script>"));
}

TEST_F(SheetNames, DoNotFillAPage) {
  const std::string file = made("pdf");
  EXPECT_LE(std::stoi(pdf_info(file, "Pages")), 3);
  const std::string text = pdf_text(file);
  EXPECT_THAT(text, HasSubstr("=cmd()"));
  EXPECT_THAT(text, HasSubstr("<script>alert(1)</script>"));
  EXPECT_THAT(text, HasSubstr("Page 1 of"));
  EXPECT_THAT(text, Not(HasSubstr(std::string(60, 'x'))));
}

}  // namespace
}  // namespace ovenwright
