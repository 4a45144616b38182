#include <array>
#include <cstdint>
#include <cstdlib>
#include <string>
#include <string_view>

#include "core/log/grid.h"
#include "core/log/text_scan.h"

using namespace ovenwright;

namespace {

/// Whatever the bytes are: an error with a message, or well-formed UTF-8.
void check(std::string_view bytes, const std::string& encoding) {
  const auto decoded = log::decode(bytes, encoding);
  if (!decoded) {
    if (decoded.error().message.empty()) std::abort();
    return;
  }
  if (decoded->unchanged && decoded->skip > bytes.size()) std::abort();
  const auto text = decoded->unchanged ? bytes.substr(decoded->skip) : std::string_view{decoded->utf8};
  const auto scan = log::scan_text(text);
  if (!scan.utf8() || scan.cut_tail > 0) std::abort();
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  static const std::array<std::string, 6> kForced = {"UTF-8",   "UTF-16LE",     "UTF-16",
                                                     "GB18030", "windows-1252", "Shift_JIS"};
  const std::string_view bytes{reinterpret_cast<const char*>(data), size};
  check(bytes, {});
  check(bytes, kForced[size % kForced.size()]);
  return 0;
}
