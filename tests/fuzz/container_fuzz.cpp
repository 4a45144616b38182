#include <cstdint>
#include <cstdlib>
#include <string>
#include <string_view>
#include <vector>

#include "core/log/grid.h"

using namespace ovenwright;

/// Whatever the bytes are: an error with a message, or content within the cap.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  constexpr std::size_t kMost = 1 << 20;
  std::vector<std::string> notes;
  const auto content = log::open_container("fuzz", {reinterpret_cast<const char*>(data), size}, kMost, notes);
  if (!content) {
    if (content.error().message.empty()) std::abort();
    return 0;
  }
  if (content->bytes.size() > kMost || (content->plain && content->kind != "text")) std::abort();
  return 0;
}
