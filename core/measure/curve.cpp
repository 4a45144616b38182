#include "core/measure/curve.h"

#include <array>
#include <bit>
#include <cstdint>

namespace ovenwright::measure {
namespace {

constexpr std::size_t kShortestBlock = 32, kLongestBlock = 1024;

/// About √n samples a block: as many blocks to look at as samples in one.
std::size_t block_length(std::size_t samples) {
  const auto root = static_cast<std::size_t>(std::sqrt(static_cast<double>(samples)));
  return std::clamp(std::bit_ceil(root), kShortestBlock, kLongestBlock);
}

struct Extremes {
  double lowest, highest;
};

/// Four chains side by side, or each sample waits for the one before it.
Extremes extremes(std::span<const double> values) {
  constexpr std::size_t kChains = 4;
  std::array<double, kChains> lowest, highest;
  lowest.fill(values.front());
  highest.fill(values.front());
  std::size_t i = 0;
  for (; i + kChains <= values.size(); i += kChains)
    for (std::size_t k = 0; k < kChains; ++k) {
      lowest[k] = std::min(lowest[k], values[i + k]);
      highest[k] = std::max(highest[k], values[i + k]);
    }
  for (; i < values.size(); ++i) {
    lowest[0] = std::min(lowest[0], values[i]);
    highest[0] = std::max(highest[0], values[i]);
  }
  return {*std::ranges::min_element(lowest), *std::ranges::max_element(highest)};
}

}  // namespace

Blocks::Blocks(std::span<const double> temperature_C)
    : samples_(temperature_C.size()), length_(block_length(temperature_C.size())) {
  const std::size_t count = (samples_ - 1 + length_ - 1) / length_;
  lowest_.reserve(count);
  highest_.reserve(count);
  for (std::size_t block = 0; block < count; ++block) {
    const auto found = extremes(temperature_C.subspan(begin(block), end(block) - begin(block) + 1));
    lowest_.push_back(found.lowest);
    highest_.push_back(found.highest);
  }
  const auto top = static_cast<std::size_t>(std::ranges::max_element(highest_) - highest_.begin());
  const auto samples = temperature_C.subspan(begin(top), end(top) - begin(top) + 1);
  peak_ = begin(top) + static_cast<std::size_t>(std::ranges::find(samples, highest_[top]) - samples.begin());
}

double Curve::interpolated(double time_s) const noexcept {
  const auto after = std::upper_bound(time_s_.begin(), time_s_.end(), time_s);
  if (after == time_s_.end()) return at(last());
  const auto i = static_cast<std::size_t>(after - time_s_.begin());
  return std::lerp(at(i - 1), at(i), (time_s - time_s_[i - 1]) / (time_s_[i] - time_s_[i - 1]));
}

double Curve::lowest_on_rise_C() const noexcept {
  double lowest = peak_C();
  std::size_t block = 0;
  for (; block < blocks_->count() && blocks_->end(block) <= peak(); ++block)
    lowest = std::min(lowest, block_lowest_C(block));
  if (block < blocks_->count())
    for (std::size_t i = blocks_->begin(block); i <= peak(); ++i) lowest = std::min(lowest, at(i));
  return lowest;
}

}  // namespace ovenwright::measure
