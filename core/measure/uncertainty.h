#pragma once
#include <array>
#include <span>
#include <vector>

#include "core/measure/figure.h"
#include "core/measure/value.h"

namespace ovenwright::measure {

/// The common errors of one trace, each up and down, at one standard uncertainty.
struct TraceErrors {
  std::array<Perturbation, 2> thermocouple_offset;  ///< T ± a(T)/√3
  std::array<Perturbation, 2> thermocouple_gain;    ///< T·(1 ± fraction/√3)
  std::array<Perturbation, 2> instrument;           ///< T ± half width/√3
  std::array<Perturbation, 2> noise;                ///< T ± σ
  double noise_C = 0;                               ///< σ
};

/// The errors of a subject. `noise_C` is run::noise_C() of its trace.
TraceErrors trace_errors(const Subject& subject, double noise_C);

/// Standard uncertainties of one measure of one trace; `figure` is what measured() gave on the curve without error.
/// A perturbed trace without a value says nothing: the other direction counts alone.
Terms trace_terms(const Curve& curve, const Definition& definition, const Setting& setting, const Figure& figure,
                  const TraceErrors& errors);

/// Standard uncertainties of a board measure: one trace perturbed at a time, squares summed over the traces.
Terms board_terms(std::span<const Curve> curves, std::span<const TraceErrors> errors, const Definition& definition,
                  const Figure& figure);

/// U = 2u, u the root sum of squares.
double expanded(const Terms& terms);

}  // namespace ovenwright::measure
