#include "app/desktop/plot/pyramid.h"

#include <algorithm>
#include <cassert>
#include <limits>

namespace ovenwright::desktop {
namespace {

constexpr Pyramid::Extremes kNothing{std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity()};

Pyramid::Extremes over(std::span<const double> values) {
  Pyramid::Extremes result = kNothing;
  for (const double value : values) {
    result.lowest = std::min(result.lowest, value);
    result.highest = std::max(result.highest, value);
  }
  return result;
}

void take(Pyramid::Extremes& into, const Pyramid::Extremes& more) {
  into.lowest = std::min(into.lowest, more.lowest);
  into.highest = std::max(into.highest, more.highest);
}

}  // namespace

Pyramid::Pyramid(std::span<const double> values) {
  std::vector<Extremes> level;
  level.reserve(values.size() / kBlock);
  for (std::size_t i = 0; i + kBlock <= values.size(); i += kBlock) level.push_back(over(values.subspan(i, kBlock)));
  while (!level.empty()) {
    std::vector<Extremes> next;
    next.reserve(level.size() / kBlock);
    for (std::size_t i = 0; i + kBlock <= level.size(); i += kBlock) {
      Extremes block = kNothing;
      for (std::size_t j = i; j < i + kBlock; ++j) take(block, level[j]);
      next.push_back(block);
    }
    levels_.push_back(std::move(level));
    level = std::move(next);
  }
}

Pyramid::Extremes Pyramid::extremes(std::span<const double> values, std::size_t first, std::size_t last) const {
  assert(first < last && last <= values.size());
  Extremes result = kNothing;
  // The ragged ends are read from the finer level, whole blocks from the coarser one.
  std::size_t inner_first = (first + kBlock - 1) / kBlock, inner_last = last / kBlock;
  if (levels_.empty() || inner_first >= inner_last) return over(values.subspan(first, last - first));
  take(result, over(values.subspan(first, inner_first * kBlock - first)));
  take(result, over(values.subspan(inner_last * kBlock, last - inner_last * kBlock)));
  for (std::size_t k = 0;; ++k) {
    const auto& level = levels_[k];
    const std::size_t outer_first = (inner_first + kBlock - 1) / kBlock, outer_last = inner_last / kBlock;
    if (k + 1 == levels_.size() || outer_first >= outer_last) {
      for (std::size_t i = inner_first; i < inner_last; ++i) take(result, level[i]);
      return result;
    }
    for (std::size_t i = inner_first; i < outer_first * kBlock; ++i) take(result, level[i]);
    for (std::size_t i = outer_last * kBlock; i < inner_last; ++i) take(result, level[i]);
    inner_first = outer_first;
    inner_last = outer_last;
  }
}

}  // namespace ovenwright::desktop
