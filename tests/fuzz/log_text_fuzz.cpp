// Any bytes as a log: read, or refused with an error; what was read is read again the same way by its own layout.
#include <cmath>
#include <cstdint>
#include <cstdlib>
#include <string_view>

#include "core/log/reading.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace ovenwright;
  const std::string_view bytes{reinterpret_cast<const char*>(data), size};
  log::Options options;
  options.threads = 1;
  options.digest = false;
  options.most_unpacked_bytes = std::size_t{1} << 24;
  const auto reading = log::read_bytes("fuzz", bytes, options);
  if (!reading) {
    if (reading.error().message.empty()) std::abort();
    return 0;
  }
  if (reading->channels.empty()) std::abort();
  for (const auto& channel : reading->channels) {
    if (!channel.time_s || channel.time_s->size() != channel.temperature_C.size() || channel.name.empty()) std::abort();
  }
  options.layout = reading->layout;
  const auto again = log::read_bytes("fuzz", bytes, options);
  if (again && again->channels.empty()) std::abort();
  return 0;
}
