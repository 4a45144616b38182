#pragma once
#include <cstddef>
#include <optional>

namespace ovenwright::lot {

/// Index of performance or capability with its confidence limits; absent where there is none.
struct Capability {
  std::optional<double> pp, pp_low, pp_high;     ///< by the standard deviation of all values; needs both limits
  std::optional<double> ppk, ppk_low, ppk_high;  ///< likewise; takes the limit there is
  std::optional<double> cp, cpk;                 ///< by the short-term standard deviation
};

/// An estimate with its two-sided limits.
struct Limits {
  double low = 0, high = 0;
};

/// (upper − lower)/6σ, and the smaller of (upper − mean)/3σ and (mean − lower)/3σ; negative where the mean is outside.
/// @param sigma  > 0, the overall or the short-term standard deviation
/// Source: NIST/SEMATECH e-Handbook 6.1.6.
double capability(double lower, double upper, double sigma);
double centred_capability(double mean, double sigma, std::optional<double> lower, std::optional<double> upper);

/// Limits of Pp or Cp with the confidence, from χ² with n − 1 degrees of freedom; exact for normal values.
/// @param n  >= 2
Limits capability_limits(double estimate, std::size_t n, double confidence = 0.95);
/// Limits of Ppk or Cpk: estimate ± z·√(1/(9n) + estimate²/(2(n − 1))), a normal approximation: for 95 %
/// it holds 96 % at 5 values and 95 % from 20 on (simulated).
/// @param n  >= 2
Limits centred_capability_limits(double estimate, std::size_t n, double confidence = 0.95);

}  // namespace ovenwright::lot
