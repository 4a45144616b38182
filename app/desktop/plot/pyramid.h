#pragma once
#include <cstddef>
#include <span>
#include <vector>

namespace ovenwright::desktop {

/// Smallest and largest value over blocks of a trace and over blocks of blocks, so that drawing any stretch of it
/// costs its pixels and not its samples. Built once, off the GUI thread; memory is a sixteenth of the trace's.
/// Cost: O(n) to build, O(log n) for a range.
class Pyramid {
 public:
  struct Extremes {
    double lowest = 0, highest = 0;
  };

  Pyramid() = default;
  /// `values` must outlive nothing: it is handed in again at each question, so the trace is held in one place only.
  explicit Pyramid(std::span<const double> values);

  /// Extremes of values[first, last), first < last <= values.size(); `values` as at construction.
  Extremes extremes(std::span<const double> values, std::size_t first, std::size_t last) const;

 private:
  static constexpr std::size_t kBlock = 32;
  std::vector<std::vector<Extremes>> levels_;  // levels_[k][i]: values[i·32^(k+1), (i+1)·32^(k+1))
};

}  // namespace ovenwright::desktop
