#pragma once
#include <cstddef>
#include <optional>

namespace ovenwright::compare {

/// Mean and standard deviation (n − 1) of a sample.
struct Sample {
  std::size_t n = 0;
  double mean = 0, sd = 0;
};

/// The two-sample interval for a difference of means where the standard deviations may differ.
struct TwoSampleInterval {
  double difference = 0;  ///< b − a
  double half_width = 0;
  double freedom = 0;  ///< Welch and Satterthwaite's degrees of freedom; 0 where neither sample scatters
};

/// Empty where a sample has fewer than 2 values.
/// Source: Welch, Biometrika 34 (1947) 28; NIST/SEMATECH e-Handbook 7.3.1.
std::optional<TwoSampleInterval> welch_interval(const Sample& a, const Sample& b, double confidence = 0.95);

}  // namespace ovenwright::compare
