// The loaders of files that people edit: any bytes either load or give an error with its place, and a window that
// loads can be written and read back the same.
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>

#include "core/board/board_file.h"
#include "core/log/layout_file.h"
#include "core/oven/oven_file.h"
#include "core/window/window_file.h"

using namespace ovenwright;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string_view text{reinterpret_cast<const char*>(data), size};
  if (const auto window = window::parse("a", text)) {
    const auto written = window::window_text(*window, text);
    const auto again = window::parse("a", written);
    if (!again || window::window_text(*again) != window::window_text(*window)) std::abort();
  }
  const auto oven = oven::parse_oven("a", text);
  const auto recipe = oven::parse_recipe("a", text);
  if (oven && recipe) static_cast<void>(oven::check_recipe(*recipe, *oven));
  static_cast<void>(board::parse("a", text));
  if (const auto layout = log::parse_layout("a", text)) {
    if (!log::parse_layout("a", log::layout_text(*layout))) std::abort();
  }
  return 0;
}
