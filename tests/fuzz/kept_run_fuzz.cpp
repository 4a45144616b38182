// What an archive holds of a judged run, read back for the statistics of its lot: any bytes are such a report, or an
// error with a message.
#include <cmath>
#include <cstdint>
#include <cstdlib>
#include <string_view>

#include "core/report/kept_run.h"

using namespace ovenwright;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string_view report{reinterpret_cast<const char*>(data), size};
  const auto run = report::kept_run("id", report);
  if (!run && run.error().message.empty()) std::abort();
  const auto zones = report::kept_run_with_zones("id", report);
  if (zones.has_value() != run.has_value() && !run) std::abort();
  return 0;
}
