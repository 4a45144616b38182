// The PDF of a sheet, read back by poppler: text is text, fonts are inside, nothing stands beyond the margins.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <regex>
#include <sstream>

#include "tests/command/sheet_run.h"

namespace ovenwright {
namespace {

using testing::HasSubstr;

class SheetPdf : public testing::Test {
 protected:
  Folder folder;
  std::string file = folder.path("sheet.pdf");

  /// Words whose box leaves the margins of 12 mm (12 · 72/25.4 = 34 points).
  std::string words_outside(const std::string& pdf) const {
    const std::string boxes = printed("pdftotext -bbox '" + pdf + "' -");
    const std::regex word{
        R"re(<word xMin="([-0-9.]+)" yMin="([-0-9.]+)" xMax="([-0-9.]+)" yMax="([-0-9.]+)">([^<]*)<)re"};
    const std::regex page{R"re(<page width="([0-9.]+)" height="([0-9.]+)">)re"};
    std::smatch size;
    if (!std::regex_search(boxes, size, page)) return "no pages";
    const double width = std::stod(size[1]), height = std::stod(size[2]);
    constexpr double kMargin = 34, kRounding = 1.5;
    std::string outside;
    for (std::sregex_iterator it{boxes.begin(), boxes.end(), word}, end; it != end; ++it) {
      const auto& m = *it;
      if (std::stod(m[1]) < kMargin - kRounding || std::stod(m[3]) > width - kMargin + kRounding ||
          std::stod(m[2]) < kMargin - kRounding || std::stod(m[4]) > height - kMargin + kRounding) {
        outside += m[5].str() + " ";
      }
    }
    return outside;
  }
};

TEST_F(SheetPdf, SaysEverythingThatASheetMustSay) {
  const auto finished = demo_sheet(file);
  EXPECT_EQ(finished.status, 1) << finished.err;  // the run fails its window
  const std::string text = pdf_text(file);
  const std::string digest = printed("sha256sum " OVENWRIGHT_SOURCE "/profiles/demo/tern_run1.csv").substr(0, 64);
  std::string grouped = digest;
  for (std::size_t at = 16; at < grouped.size(); at += 17) grouped.insert(at, " ");
  for (const std::string& part :
       {std::string("Lot QM-2298"), std::string("Quillmarsh Assembly, Line 2"),
        std::string("Thermal profile, Tern, main side"), std::string("2 of 45 requirements are out."),
        std::string("U12 centre peaks at 232.2 °C, 2.8 °C short"), std::string("Tern SAC305, revision C"),
        std::string("Guarded, w = U (ILAC-G8:09/2019)"),
        std::string("K class 1 (IEC 60584-1), instrument ± 1.0 °C, U = 2u"), std::string("LF main board, revision 7"),
        std::string("T-0417"), std::string("M. Kade"), grouped, std::string("found from the curves"),
        std::string("Checked by, date"), std::string("Released by, date"), std::string("Page 1 of 1"),
        std::string("Read as: UTF-8"), std::string("Made 12 March 2026, 10:42 UTC")}) {
    EXPECT_THAT(text, HasSubstr(part));
  }
}

TEST_F(SheetPdf, CarriesAllCautions) {
  demo_sheet(file);
  const std::string text = pdf_text(file);
  // Source: the cautions that the program and the sheet carry, README.md and `ovenwright --help`.
  for (const char* part :
       {"a qualified person confirms it with an instrumented run before production",
        "Hot surfaces, moving conveyor, flux fumes: site safety rules, local codes and the makers’ data sheets",
        "Windows shipped with the program are general; the paste’s own data sheet is the authority."}) {
    EXPECT_THAT(text, HasSubstr(part));
  }
}

TEST_F(SheetPdf, EmbedsItsFontsWithTheirText) {
  demo_sheet(file);
  std::istringstream lines{printed("pdffonts '" + file + "'")};
  std::string line;
  std::getline(lines, line);
  const auto embedded = line.find("emb"), unicode = line.find("uni");
  ASSERT_NE(embedded, std::string::npos);
  std::getline(lines, line);
  int fonts = 0;
  while (std::getline(lines, line)) {
    EXPECT_EQ(line.substr(embedded, 3), "yes") << line;
    EXPECT_EQ(line.substr(unicode, 3), "yes") << line;
    ++fonts;
  }
  EXPECT_GT(fonts, 0);
}

TEST_F(SheetPdf, DrawsCurvesAsLinesAndNoPicture) {
  const auto finished =
      ovenwright_program({"sheet", "profiles/demo/tern_run1.csv", "--window", "profiles/demo/window.toml", "-o", file});
  EXPECT_EQ(finished.status, 1) << finished.err;
  std::istringstream lines{printed("pdfimages -list '" + file + "'")};
  int count = 0;
  for (std::string line; std::getline(lines, line);) ++count;
  EXPECT_EQ(count, 2);  // its two lines of headings: no image in the file
}

TEST_F(SheetPdf, HasTheSizeOfItsPaperAndSaysWhatItIs) {
  demo_sheet(file);
  EXPECT_THAT(pdf_info(file, "Page size"), HasSubstr("595 x 842"));  // A4 in points: 210 · 72/25.4, 297 · 72/25.4
  EXPECT_EQ(pdf_info(file, "Title"), "Lot QM-2298, Thermal profile, Tern, main side");
  EXPECT_THAT(pdf_info(file, "Creator"), HasSubstr("Ovenwright"));
  demo_sheet(file, {"--paper", "Letter"});
  EXPECT_THAT(pdf_info(file, "Page size"), HasSubstr("612 x 792"));  // 8.5 · 72, 11 · 72
  EXPECT_EQ(words_outside(file), "");
}

TEST_F(SheetPdf, ClipsNothingWithManyChannelsAndLongNames) {
  std::vector<std::string> names;
  for (int i = 1; i <= 32; ++i) names.push_back("U" + std::to_string(i) + " corner ball under the large heat spreader");
  const std::string log = folder.path("many.csv");
  write(log, made_log(names));
  const auto finished = ovenwright_program({"sheet", log, "--window", "sac305", "-o", file});
  EXPECT_LT(finished.status, 3) << finished.err;
  EXPECT_GE(std::stoi(pdf_info(file, "Pages")), 2);
  EXPECT_EQ(words_outside(file), "");
  const std::string text = pdf_text(file);
  for (int i = 1; i <= 32; ++i) EXPECT_THAT(text, HasSubstr("U" + std::to_string(i) + " corner ball"));
  EXPECT_THAT(text, HasSubstr("On the next page: results by thermocouple"));
  EXPECT_THAT(text, HasSubstr("continued from page 1"));
}

TEST_F(SheetPdf, SumsUpALotOnItsFirstPage) {
  std::vector<std::string> arguments{"sheet"};
  for (int run = 1; run <= 6; ++run) {
    const std::string log = folder.path("qm_" + std::to_string(run) + ".csv");
    std::string text = contents(OVENWRIGHT_SOURCE "/profiles/demo/tern_run2.csv");
    write(log, text.substr(0, text.size() - std::size_t(run) * 200));  // as many logs that end a little earlier
    arguments.push_back(log);
  }
  for (const char* more : {"--window", "profiles/demo/window.toml", "--lot", "QM-2301", "--each", "-o"})
    arguments.emplace_back(more);
  arguments.push_back(file);
  const auto finished = ovenwright_program(arguments);
  EXPECT_LT(finished.status, 3) << finished.err;
  const std::string text = pdf_text(file);
  EXPECT_THAT(text, HasSubstr("Lot QM-2301"));
  EXPECT_THAT(text, HasSubstr("6 runs"));
  EXPECT_THAT(text, HasSubstr("Ppk"));
  for (int run = 1; run <= 6; ++run) {
    const std::string digest =
        printed("sha256sum '" + folder.path("qm_" + std::to_string(run) + ".csv") + "'").substr(0, 64);
    EXPECT_THAT(text, HasSubstr(digest.substr(0, 16) + " " + digest.substr(16, 16)));
  }
  EXPECT_GE(std::stoi(pdf_info(file, "Pages")), 7);
  EXPECT_EQ(words_outside(file), "");
}

}  // namespace
}  // namespace ovenwright
