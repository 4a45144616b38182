#include "core/run/median.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <memory>
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

/// Two quantiles of an evenly spread sample, between which the middle should lie.
struct Bracket {
  double low = 0, high = 0;
};

template <class ValueAt>
Bracket bracket_of(std::size_t count, const ValueAt& value_at) {
  std::array<double, kSample> sample{};
  for (std::size_t i = 0; i < kSample; ++i) sample[i] = value_at(i * (count / kSample));
  std::ranges::sort(sample);
  return {sample[kSample / 2 - kBracket], sample[kSample / 2 + kBracket]};
}

/// Values on either side of a bracket.
struct Outside {
  std::size_t below = 0, above = 0;
  void count(double value, const Bracket& bracket) {
    below += value < bracket.low ? 1 : 0;
    above += value > bracket.high ? 1 : 0;
  }
  /// Whether the middle of so many values, or both in the middle, are inside.
  bool holds_middle(std::size_t all) const { return (all - 1) / 2 >= below && all / 2 < all - above; }
};

/// Puts the values inside a bracket where `kept` is, one more than they are, and returns how many. Without a branch:
/// whether a value is kept cannot be guessed.
template <class ValueAt>
std::size_t keep_inside(std::size_t count, const ValueAt& value_at, const Bracket& bracket, double* kept) {
  std::size_t number = 0;
  for (std::size_t i = 0; i < count; ++i) {
    const double value = value_at(i);
    kept[number] = value;
    number += static_cast<std::size_t>(value >= bracket.low) & static_cast<std::size_t>(value <= bracket.high);
  }
  return number;
}

/// The median of so many values, of which those inside a bracket are kept.
double median_of_kept(std::span<double> kept, std::size_t below, std::size_t all) {
  const auto at = kept.begin() + static_cast<std::ptrdiff_t>(all / 2 - below);
  std::nth_element(kept.begin(), at, kept.end());
  return all % 2 == 1 ? *at : (*at + *std::max_element(kept.begin(), at)) / 2;
}

}  // namespace

double median(std::span<double> values) {
  if (values.empty()) return 0;
  if (values.size() < kLarge) return by_selection(values);
  const auto value_at = [values](std::size_t i) { return values[i]; };
  const Bracket bracket = bracket_of(values.size(), value_at);
  Outside outside;
  for (const double value : values) outside.count(value, bracket);
  if (!outside.holds_middle(values.size())) return by_selection(values);  // an order that fools the sample
  const std::size_t kept = keep_inside(values.size(), value_at, bracket, values.data());
  return median_of_kept(values.first(kept), outside.below, values.size());
}

double median_difference(std::span<const double> values) {
  if (values.size() < 2) return 0;
  const std::size_t count = values.size() - 1;
  const auto value_at = [values](std::size_t i) { return values[i + 1] - values[i]; };
  if (count >= kLarge) {
    const Bracket bracket = bracket_of(count, value_at);
    Outside outside;
    // Room for all, of which only what is kept is touched; so one pass will do.
    const auto room = std::make_unique_for_overwrite<double[]>(count + 1);
    const std::size_t kept = keep_inside(
        count,
        [&](std::size_t i) {
          const double value = value_at(i);
          outside.count(value, bracket);
          return value;
        },
        bracket, room.get());
    if (outside.holds_middle(count)) return median_of_kept({room.get(), kept}, outside.below, count);
  }
  std::vector<double> differences(count);
  for (std::size_t i = 0; i < count; ++i) differences[i] = value_at(i);
  return by_selection(differences);
}

}  // namespace ovenwright::run
