#include <cstdint>
#include <cstdlib>
#include <string_view>

#include "core/log/html_tables.h"
#include "core/log/workbook.h"
#include "tests/fuzz/grid_check.h"

using namespace ovenwright;

namespace {

template <class Grids>
void check_all(const Result<Grids>& grids) {
  if (!grids) {
    if (grids.error().message.empty()) std::abort();
    return;
  }
  for (const auto& grid : *grids) check_grid(grid);
}

}  // namespace

/// A document as one of the three kinds of markup that hold tables; its first byte says which.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  if (size == 0) return 0;
  const std::string_view bytes{reinterpret_cast<const char*>(data + 1), size - 1};
  log::UnpackBudget budget{bytes.size(), 1 << 24};
  if (data[0] % 3 == 0) {
    const auto tables = log::read_html(bytes, budget);
    if (!tables && tables.error().message.empty()) std::abort();
    if (tables) {
      for (const auto& grid : tables->grids) check_grid(grid);
    }
  } else if (data[0] % 3 == 1) {
    check_all(log::read_xml_spreadsheet(bytes, budget));
  } else {
    check_all(log::read_flat_ods(bytes, budget));
  }
  return 0;
}
