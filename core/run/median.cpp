#include "core/run/median.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <memory>
#include <optional>
#include <vector>

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

/// Two quantiles of an evenly spread sample, between which the middle should lie, and how many values lie outside.
struct Bracket {
  double low = 0, high = 0;
  std::size_t below = 0, above = 0;
};

template <class ValueAt>
Bracket bracket_of(std::size_t count, const ValueAt& value_at) {
  std::array<double, kSample> sample{};
  for (std::size_t i = 0; i < kSample; ++i) sample[i] = value_at(i * (count / kSample));
  std::ranges::sort(sample);
  Bracket bracket{sample[kSample / 2 - kBracket], sample[kSample / 2 + kBracket]};
  for (std::size_t i = 0; i < count; ++i) {
    const double value = value_at(i);
    bracket.below += value < bracket.low ? 1 : 0;
    bracket.above += value > bracket.high ? 1 : 0;
  }
  return bracket;
}

/// The median from the few values inside a bracket, which are put where `kept` is, one more than they are; absent where
/// the middle is not among them (values in an order that fools the sample).
template <class ValueAt>
std::optional<double> by_bracket(std::size_t count, const ValueAt& value_at, const Bracket& bracket, double* kept) {
  const std::size_t upper = count / 2, lower = count % 2 == 1 ? upper : upper - 1;
  if (lower < bracket.below || upper >= count - bracket.above) return std::nullopt;
  std::size_t number = 0;  // kept without a branch: whether a value is kept cannot be guessed
  for (std::size_t i = 0; i < count; ++i) {
    const double value = value_at(i);
    kept[number] = value;
    number += static_cast<std::size_t>(value >= bracket.low) & static_cast<std::size_t>(value <= bracket.high);
  }
  const std::span between(kept, number);
  const auto at = between.begin() + static_cast<std::ptrdiff_t>(upper - bracket.below);
  std::nth_element(between.begin(), at, between.end());
  return lower == upper ? *at : (*at + *std::max_element(between.begin(), at)) / 2;
}

}  // namespace

double median(std::span<double> values) {
  if (values.empty()) return 0;
  if (values.size() < kLarge) return by_selection(values);
  const auto value_at = [values](std::size_t i) { return values[i]; };
  const auto quick = by_bracket(values.size(), value_at, bracket_of(values.size(), value_at), values.data());
  return quick ? *quick : by_selection(values);
}

double median_difference(std::span<const double> values) {
  if (values.size() < 2) return 0;
  const std::size_t count = values.size() - 1;
  const auto value_at = [values](std::size_t i) { return values[i + 1] - values[i]; };
  if (count >= kLarge) {
    const Bracket bracket = bracket_of(count, value_at);
    const auto kept = std::make_unique_for_overwrite<double[]>(count - bracket.below - bracket.above + 1);
    if (const auto quick = by_bracket(count, value_at, bracket, kept.get())) return *quick;
  }
  std::vector<double> differences(count);
  for (std::size_t i = 0; i < count; ++i) differences[i] = value_at(i);
  return by_selection(differences);
}

}  // namespace ovenwright::run
