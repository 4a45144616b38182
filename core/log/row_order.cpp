#include "core/log/row_order.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace ovenwright::log {
namespace {

/// Most steps between sorted times are like the middle one.
bool evenly_apart(const std::vector<double>& time_s, const std::vector<std::size_t>& order) {
  std::vector<double> steps;
  for (std::size_t i = 1; i < order.size(); ++i) steps.push_back(time_s[order[i]] - time_s[order[i - 1]]);
  auto sorted = steps;
  const auto middle = sorted.begin() + static_cast<std::ptrdiff_t>(sorted.size() / 2);
  std::nth_element(sorted.begin(), middle, sorted.end());
  const double usual = *middle;
  const auto alike =
      std::count_if(steps.begin(), steps.end(), [usual](double step) { return std::abs(step - usual) <= usual / 2; });
  return usual > 0 && static_cast<std::size_t>(alike) * 10 >= steps.size() * 8;
}

}  // namespace

RowOrder row_order(const std::vector<double>& time_s) {
  constexpr std::size_t kFewestRows = 10, kRowsOfARun = 20;
  constexpr double kNear = 0.05;  // of the whole log: rows of two loggers among each other
  double largest_back = 0;
  RowOrder result;
  const std::size_t n = time_s.size();
  std::vector<std::size_t> starts{0};  // rows at which time steps back, and the first
  for (std::size_t i = 1; i < n; ++i) {
    if (!(time_s[i] < time_s[i - 1])) continue;
    if (result.steps_back++ == 0) result.first_back = i;
    largest_back = std::max(largest_back, time_s[i - 1] - time_s[i]);
    starts.push_back(i);
  }
  if (result.steps_back < 3 || n < kFewestRows) return result;
  const auto sorted = [&] {
    std::vector<std::size_t> order(n);
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return time_s[a] < time_s[b]; });
    return order;
  };
  const bool all_finite = std::all_of(time_s.begin(), time_s.end(), [](double t) { return std::isfinite(t); });
  if (all_finite && result.steps_back * 5 >= n) {
    const auto [low, high] = std::minmax_element(time_s.begin(), time_s.end());
    auto order = sorted();
    if (largest_back <= kNear * (*high - *low) || evenly_apart(time_s, order)) {
      result.kind = RowOrder::Kind::kAny;
      result.order = std::move(order);
      return result;
    }
  }
  // Rows that are earlier than one before them, from the start of a run on. Equal times are a coarse clock's.
  std::size_t lost = 0;
  double latest = -std::numeric_limits<double>::infinity();
  starts.push_back(n);
  for (std::size_t block = 0; block + 1 < starts.size(); ++block) {
    const std::size_t from = starts[block], to = starts[block + 1];
    const bool run = block > 0 && to - from >= kRowsOfARun && from - starts[block - 1] >= kRowsOfARun;
    if (run) latest = -std::numeric_limits<double>::infinity();
    for (std::size_t i = from; i < to; ++i) {
      if (!std::isfinite(time_s[i])) continue;
      if (time_s[i] < latest) ++lost;
      latest = std::max(latest, time_s[i]);
    }
  }
  if (lost * 3 > n) result.kind = RowOrder::Kind::kRestarts;
  return result;
}

}  // namespace ovenwright::log
