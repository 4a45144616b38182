// The company's name and logo at the head of a sheet: what is no logo is refused by name, before anything is written.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cstdint>
#include <filesystem>

#include "tests/command/sheet_run.h"

namespace ovenwright {
namespace {

using testing::HasSubstr;

std::string svg(const std::string& inside, const std::string& attributes = {}) {
  return "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" width=\"80\" "
         "height=\"40\" " +
         attributes + ">" + inside + "</svg>";
}

/// A chunk of a PNG (PNG specification, 5.3): length, type, data, and the checksum of type and data.
std::string chunk(const std::string& type, const std::string& data) {
  const auto big_endian = [](std::uint32_t n) {
    std::string text;
    for (int shift = 24; shift >= 0; shift -= 8) text += static_cast<char>(n >> shift);
    return text;
  };
  std::uint32_t crc = 0xffffffff;
  for (const char c : type + data) {
    crc ^= static_cast<unsigned char>(c);
    for (int bit = 0; bit < 8; ++bit) crc = (crc >> 1) ^ (crc & 1 ? 0xedb88320U : 0U);
  }
  return big_endian(static_cast<std::uint32_t>(data.size())) + type + data + big_endian(~crc);
}

/// A PNG that says it is so large, with the data of one grey point.
std::string png(unsigned side) {
  std::string header;
  for (int i = 0; i < 2; ++i)
    for (int shift = 24; shift >= 0; shift -= 8) header += static_cast<char>(side >> shift);
  header += std::string("\x08\0\0\0\0", 5);
  // zlib's stream of two bytes 0: no filter, black
  return "\x89PNG\r\n\x1a\n" + chunk("IHDR", header) + chunk("IDAT", std::string("\x78\x9c\x63\x60\0\0\0\2\0\1", 10)) +
         chunk("IEND", "");
}

TEST(SheetLogo, ThatIsNoneIsNamed) {
  struct Case {
    const char* name;
    std::string bytes;
    const char* said;
  };
  const Folder folder;
  for (const auto& [name, bytes, said] :
       {Case{"empty.png", "", "no picture"},
        {"text.svg", "time,TC1\n0,25\n", "no picture"},
        {"cut.png", png(1).substr(0, 45), "damaged picture"},
        {"huge.png", png(20'000), "20000 × 20000 points"},
        {"large.svg", svg(std::string(5 << 20, ' ')), "larger than 4 MB"},
        {"cut.svg", svg("<rect width=\"9\" height=\"9\"/>").substr(0, 120), "damaged SVG drawing"},
        {"script.svg", svg("\n<script>alert(1)</script>"), "script.svg:2:9: found the element <script>"},
        {"handler.svg", svg("<rect width=\"9\" height=\"9\" onload=\"alert(1)\"/>"), "the handler onload"},
        {"page.svg", svg("<foreignObject><p/></foreignObject>"), "the element <foreignObject>"},
        {"link.svg", svg("<image xlink:href=\"http://127.0.0.1/a.png\" width=\"9\" height=\"9\"/>"), "a link to http"},
        {"file.svg", svg("<image href=\"/etc/hostname\" width=\"9\" height=\"9\"/>"), "a link to /etc/hostname"},
        {"style.svg", svg("<rect style=\"fill: url('http://127.0.0.1/a')\"/>"), "a link to http"},
        {"import.svg", svg("<style>@import 'http://127.0.0.1/a.css';</style>"), "a style that fetches"}}) {
    const std::string logo = folder.path(name), sheet = folder.path("sheet.pdf");
    write(logo, bytes);
    const auto finished = demo_sheet(sheet, {"--logo", logo});
    EXPECT_EQ(finished.status, 3) << name;
    EXPECT_THAT(finished.err, HasSubstr(said)) << name;
    EXPECT_THAT(finished.err, HasSubstr(logo));
    EXPECT_FALSE(std::filesystem::exists(sheet));
  }
  const auto missing = demo_sheet(folder.path("sheet.pdf"), {"--logo", folder.path("none.png")});
  EXPECT_EQ(missing.status, 3);
  EXPECT_THAT(missing.err, HasSubstr("none.png: cannot be read"));
}

TEST(SheetLogo, IsTakenAsSvgOrPng) {
  const Folder folder;
  const std::string drawing = folder.path("a.svg"), picture = folder.path("a.png");
  write(drawing, svg("<defs><linearGradient id=\"g\"/></defs><rect width=\"80\" height=\"40\" fill=\"url(#g)\"/>"));
  write(picture, png(1));
  for (const auto& logo : {drawing, picture, std::string{"resources/icons/ovenwright.svg"}}) {
    const auto finished = demo_sheet(folder.path("sheet.pdf"), {"--logo", logo});
    EXPECT_LT(finished.status, 2) << finished.err;
  }
}

TEST(SheetLogo, ACompanyOfAnyLengthLeavesOnePage) {
  const Folder folder;
  const std::string long_name = "Quillmarsh " + std::string(10'000, 'x');
  for (const char* ending : {"pdf", "html"}) {
    const auto finished =
        ovenwright_program({"sheet", "profiles/demo/tern_run1.csv", "--window", "profiles/demo/window.toml",
                            "--company", long_name, "-o", folder.path(std::string{"sheet."} + ending)});
    EXPECT_LT(finished.status, 2) << finished.err;
  }
  EXPECT_EQ(pdf_info(folder.path("sheet.pdf"), "Pages"), "1");
  EXPECT_THAT(pdf_text(folder.path("sheet.pdf")), HasSubstr("Quillmarsh xxxx"));
  EXPECT_THAT(contents(folder.path("sheet.html")), testing::Not(HasSubstr(long_name)));
}

}  // namespace
}  // namespace ovenwright
