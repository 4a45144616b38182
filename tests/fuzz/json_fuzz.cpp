#include <cstdint>
#include <cstdlib>
#include <string_view>

#include "core/log/json_tables.h"
#include "tests/fuzz/grid_check.h"

using namespace ovenwright;

/// Any bytes as a JSON document of readings: a table within the cap, or an error with a message.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string_view bytes{reinterpret_cast<const char*>(data), size};
  static_cast<void>(log::is_json(bytes));
  log::UnpackBudget budget{bytes.size(), 1 << 24};
  const auto grid = log::read_json(bytes, budget);
  if (!grid && grid.error().message.empty()) std::abort();
  if (grid) check_grid(*grid);
  return 0;
}
