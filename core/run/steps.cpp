#include "core/run/steps.h"

#include <array>
#include <cstdint>

namespace ovenwright::run {

Steps steps_of(std::span<const double> values) noexcept {
  constexpr std::size_t kLanes = 4, kAhead = 512;  // the processor itself does not look ahead over the end of a page
  std::array<std::uint64_t, kLanes> up{}, level{};
  std::array<std::uint64_t, kLanes> down{};
  const double* const v = values.data();
  std::size_t i = 1;
  for (; i + kLanes <= values.size(); i += kLanes) {
    __builtin_prefetch(v + i + kAhead);
    for (std::size_t lane = 0; lane < kLanes; ++lane) {
      const double before = v[i + lane - 1], value = v[i + lane];
      up[lane] += value > before ? 1U : 0U;
      level[lane] += value == before ? 1U : 0U;
      down[lane] += value < before ? 1U : 0U;
    }
  }
  for (; i < values.size(); ++i) {
    up[0] += v[i] > v[i - 1] ? 1U : 0U;
    level[0] += v[i] == v[i - 1] ? 1U : 0U;
    down[0] += v[i] < v[i - 1] ? 1U : 0U;
  }
  const auto sum = [](const std::array<std::uint64_t, kLanes>& lanes) {
    return static_cast<std::size_t>(lanes[0] + lanes[1] + lanes[2] + lanes[3]);
  };
  return {sum(up), sum(level), sum(down)};
}

}  // namespace ovenwright::run
