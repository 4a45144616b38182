#include "core/run/median.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <optional>

namespace ovenwright::run {
namespace {

constexpr std::size_t kLarge = 20000, kSample = 999,
                      kBracket = 60;  // places of the sample on either side of its middle

double by_selection(std::span<double> values) {
  const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
  std::nth_element(values.begin(), middle, values.end());
  if (values.size() % 2 == 1) return *middle;
  return (*middle + *std::max_element(values.begin(), middle)) / 2;
}

/// The same from the few values between two quantiles of an evenly spread sample; absent where the middle does not lie
/// there (values in an order that fools the sample).
std::optional<double> by_bracket(std::span<double> values) {
  std::array<double, kSample> sample{};
  for (std::size_t i = 0; i < kSample; ++i) sample[i] = values[i * (values.size() / kSample)];
  std::ranges::sort(sample);
  const double low = sample[kSample / 2 - kBracket], high = sample[kSample / 2 + kBracket];
  std::size_t below = 0, above = 0;
  for (const double value : values) {
    below += value < low ? 1 : 0;
    above += value > high ? 1 : 0;
  }
  const std::size_t upper = values.size() / 2, lower = values.size() % 2 == 1 ? upper : upper - 1;
  if (lower < below || upper >= values.size() - above) return std::nullopt;
  std::size_t kept = 0;  // moved to the front without a branch: whether a value is kept cannot be guessed
  for (const double value : values) {
    values[kept] = value;
    kept += static_cast<std::size_t>(value >= low) & static_cast<std::size_t>(value <= high);
  }
  const auto between = values.first(kept);
  const auto at = between.begin() + static_cast<std::ptrdiff_t>(upper - below);
  std::nth_element(between.begin(), at, between.end());
  return lower == upper ? *at : (*at + *std::max_element(between.begin(), at)) / 2;
}

}  // namespace

double median(std::span<double> values) {
  if (values.empty()) return 0;
  if (values.size() < kLarge) return by_selection(values);
  const auto quick = by_bracket(values);
  return quick ? *quick : by_selection(values);
}

}  // namespace ovenwright::run
