#include <array>
#include <cstdint>
#include <cstdlib>
#include <string>
#include <string_view>
#include <vector>

#include "core/log/grid.h"
#include "tests/fuzz/grid_check.h"
#include "tests/unit/log/archive_builder.h"

using namespace ovenwright;

/// The input is one part of a workbook that is whole otherwise, so that a packed file's check sums do not keep the
/// fuzzer out; its first byte says which part. An error with a message, or grids that check_grid takes.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  static const std::array<std::string, 5> kParts = {"xl/worksheets/sheet1.xml", "xl/sharedStrings.xml", "xl/styles.xml",
                                                    "xl/workbook.xml", "xl/_rels/workbook.xml.rels"};
  if (size == 0) return 0;
  const std::string part{reinterpret_cast<const char*>(data + 1), size - 1};
  log::Members members;
  if (data[0] % 6 == 5) {
    members = {{"META-INF/manifest.xml", "<m/>"}, {"content.xml", part}};
  } else {
    members = {
        {"xl/worksheets/sheet1.xml",
         R"(<worksheet><sheetData><row><c s="1"><v>44000.5</v></c><c t="s"><v>0</v></c></row></sheetData></worksheet>)"},
        {"xl/workbook.xml", R"(<workbook><sheets><sheet name="One" id="r1"/></sheets></workbook>)"}};
    const auto& name = kParts[data[0] % 6];
    std::erase_if(members, [&](const auto& member) { return member.first == name; });
    members.emplace_back(name, part);
  }
  std::vector<std::string> notes;
  const auto content = log::open_container("fuzz", log::zip_of(members), 1 << 24, notes);
  if (!content) {
    if (content.error().message.empty()) std::abort();
    return 0;
  }
  for (const auto& grid : content->grids) check_grid(grid);
  return 0;
}
