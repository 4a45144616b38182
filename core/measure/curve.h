#pragma once
#include <cstddef>
#include <span>
#include <vector>

#include "core/measure/perturbation.h"
#include "core/run/trace.h"

namespace ovenwright::measure {

/// Temperatures this close to a level are on it, so that logs converted from °F do not flip.
inline constexpr double kOnLevel_C = 1e-6;

/// How far a temperature is above a level, exactly 0 where it is on it.
inline double above_by(double temperature_C, double level_C) noexcept {
  const double off = temperature_C - level_C;
  return std::abs(off) <= kOnLevel_C ? 0 : off;
}

/// The extremes of a trace in blocks of samples, found in one pass and shared by every measure and perturbation: a
/// level or a range then needs a look at the samples of few blocks only. Block b has the segments between samples
/// begin(b) and end(b), both ends included in its extremes.
class Blocks {
 public:
  explicit Blocks(std::span<const double> temperature_C);
  std::size_t count() const noexcept { return lowest_.size(); }
  std::size_t begin(std::size_t block) const noexcept { return block * length_; }
  std::size_t end(std::size_t block) const noexcept { return std::min((block + 1) * length_, samples_ - 1); }
  std::size_t block_of(std::size_t sample) const noexcept { return std::min(sample / length_, count() - 1); }
  double lowest_C(std::size_t block) const noexcept { return lowest_[block]; }
  double highest_C(std::size_t block) const noexcept { return highest_[block]; }
  std::size_t peak() const noexcept { return peak_; }  ///< the first sample with the largest value

 private:
  std::size_t samples_, length_;
  std::vector<double> lowest_, highest_;
  std::size_t peak_ = 0;
};

/// A trace under a perturbation, as the measures see it: samples, linear between them. Holds no samples of its own:
/// trace and blocks must outlive it.
class Curve {
 public:
  Curve(const run::Trace& trace, const Blocks& blocks, const Perturbation& perturbation = {})
      : trace_(&trace),
        blocks_(&blocks),
        time_s_(trace.time_s()),
        temperature_C_(trace.temperature_C()),
        perturbation_(perturbation) {}

  std::size_t size() const noexcept { return time_s_.size(); }
  std::size_t last() const noexcept { return time_s_.size() - 1; }
  double time_s(std::size_t sample) const noexcept { return time_s_[sample]; }
  double at(std::size_t sample) const noexcept { return perturbation_(temperature_C_[sample]); }
  double start_s() const noexcept { return time_s_.front(); }
  double end_s() const noexcept { return time_s_.back(); }
  /// The temperature between samples; the time must lie inside the log. Cost: O(log n).
  double interpolated(double time_s) const noexcept;
  double interval_s() const noexcept { return trace_->median_interval_s(); }
  std::size_t peak() const noexcept { return blocks_->peak(); }
  double peak_C() const noexcept { return at(peak()); }
  bool ends_on_rise() const noexcept { return peak() == last(); }
  bool starts_at_peak() const noexcept { return peak() == 0; }
  /// The lowest temperature from the first sample to the peak.
  double lowest_on_rise_C() const noexcept;

  const Blocks& blocks() const noexcept { return *blocks_; }
  double block_lowest_C(std::size_t block) const noexcept { return perturbation_(blocks_->lowest_C(block)); }
  double block_highest_C(std::size_t block) const noexcept { return perturbation_(blocks_->highest_C(block)); }
  const run::Trace& trace() const noexcept { return *trace_; }
  const Perturbation& perturbation() const noexcept { return perturbation_; }
  Curve under(const Perturbation& perturbation) const { return Curve(*trace_, *blocks_, perturbation); }

 private:
  const run::Trace* trace_;
  const Blocks* blocks_;
  std::span<const double> time_s_, temperature_C_;
  Perturbation perturbation_;
};

}  // namespace ovenwright::measure
