#pragma once
#include <algorithm>
#include <cmath>
#include <cstddef>

namespace ovenwright::lot {

/// Mean of value(0) … value(n − 1), n >= 1. Taken from the first value on, so that equal values give exactly it.
template <class ValueOf>
double mean_of(std::size_t n, ValueOf value) {
  const double first = value(0);
  double sum = 0;
  for (std::size_t i = 0; i < n; ++i) sum += value(i) - first;
  return first + sum / static_cast<double>(n);
}

/// Standard deviation with n − 1, n >= 2; exactly 0 for equal values.
template <class ValueOf>
double sd_of(std::size_t n, ValueOf value) {
  const double mean = mean_of(n, value);
  double squares = 0;
  for (std::size_t i = 0; i < n; ++i) squares += (value(i) - mean) * (value(i) - mean);
  return std::sqrt(squares / static_cast<double>(n - 1));
}

/// Largest minus smallest, n >= 1.
template <class ValueOf>
double range_of(std::size_t n, ValueOf value) {
  double low = value(0), high = value(0);
  for (std::size_t i = 1; i < n; ++i) {
    low = std::min(low, value(i));
    high = std::max(high, value(i));
  }
  return high - low;
}

}  // namespace ovenwright::lot
