#include "core/measure/uncertainty.h"

#include <cmath>
#include <numbers>

#include "core/measure/level.h"

namespace ovenwright::measure {
namespace {

constexpr double kCoverage = 2;      // U = 2u
constexpr double kSlopeNoise = 1.5;  // the largest of many windows reads high
constexpr double kPeakNoise = 3;     // σ below the peak within which its moment is not known
constexpr double kHangsOnPeak = 2;   // σ by which a level moves that hangs on the trace's own peak
const double kRectangle = std::sqrt(3.0);
const double kInterval = std::sqrt(12.0);

/// The larger of the two changes; a perturbed measure without a value says nothing.
double larger_change(const Figure& figure, const Figure& up, const Figure& down) {
  double change = 0;
  for (const auto* other : {&up, &down})
    if (other->value) change = std::max(change, std::abs(*other->value - *figure.value));
  return change;
}

/// The measure on the perturbed curve. A window that was the steepest stays so where the perturbation is a straight
/// line and every centre counts: then its slope is all that has to be found.
Figure measured_again(const Curve& curve, const Perturbation& perturbation, const Definition& definition,
                      const Setting& setting, const Figure& figure) {
  const auto& p = definition.parameters;
  const Curve perturbed = curve.under(perturbation);
  if (figure.slope && !p.from && !p.to) {
    const auto& blocks = curve.blocks();
    double lowest = blocks.lowest_C(0);
    for (std::size_t b = 0; b < blocks.count(); ++b) lowest = std::min(lowest, blocks.lowest_C(b));
    if (perturbation.straight(lowest, curve.peak_C())) {
      const auto slope = fitted(perturbed, figure.slope->centre, figure.slope->first, figure.slope->last);
      return valued(std::copysign(slope.per_s, *figure.value), {}, {});
    }
  }
  return measured(perturbed, definition, setting);
}

double change_under(const Curve& curve, const std::array<Perturbation, 2>& both, const Definition& definition,
                    const Setting& setting, const Figure& figure) {
  return larger_change(figure, measured_again(curve, both[0], definition, setting, figure),
                       measured_again(curve, both[1], definition, setting, figure));
}

/// How far a time or a mean rate goes when one of its levels moves up and down.
double change_moving(const Curve& curve, double Moves::*level, double by_C, const Definition& definition,
                     Setting setting, const Figure& figure) {
  setting.moves.*level = by_C;
  const auto up = measured(curve, definition, setting);
  setting.moves.*level = -by_C;
  return larger_change(figure, up, measured(curve, definition, setting));
}

/// Standard uncertainty of the moment of the peak: anywhere within the time spent close to it, a rectangle.
double peak_moment_s(const Curve& curve, double noise_C) {
  return time_at_or_above(curve, whole(curve), curve.peak_C() - kPeakNoise * noise_C).total_s / kInterval;
}

double noise_term(const Curve& curve, const Definition& definition, const Setting& setting, const Figure& figure,
                  const TraceErrors& errors) {
  const double sigma_C = errors.noise_C;
  const auto moving = [&](double Moves::*level, double by_C) {
    return change_moving(curve, level, by_C, definition, setting, figure);
  };
  const auto moment_s = [&] { return figure.counts_to_peak ? peak_moment_s(curve, sigma_C) : 0.0; };
  switch (definition.measure) {
    case Measure::kPeak:
    case Measure::kTemperatureAt:
    case Measure::kExitTemperature:
    case Measure::kWavePreheatTemperature:
      return sigma_C;
    case Measure::kWaveStep:
      return std::numbers::sqrt2 * sigma_C;
    case Measure::kTimeAbove:
      return moving(&Moves::level_C, sigma_C);
    case Measure::kPeakTime:
      return std::hypot(moving(&Moves::level_C, sigma_C), moment_s());
    case Measure::kTimeNearPeak: {
      const bool own_peak = std::holds_alternative<OwnPeak>(*definition.parameters.reference);
      return moving(&Moves::level_C, (own_peak ? kHangsOnPeak : 1) * sigma_C);
    }
    case Measure::kTimeBetweenOnRise:
      return std::hypot(moving(&Moves::T1_C, sigma_C), moving(&Moves::T2_C, sigma_C), moment_s());
    case Measure::kMeanRise:
    case Measure::kMeanFall: {
      // With the peak as one end the other level moves by twice σ, and the peak's moment shifts the time.
      if (!figure.counts_to_peak) return std::hypot(moving(&Moves::T1_C, sigma_C), moving(&Moves::T2_C, sigma_C));
      const auto other = definition.measure == Measure::kMeanRise ? &Moves::T1_C : &Moves::T2_C;
      return std::hypot(moving(other, kHangsOnPeak * sigma_C), *figure.value * moment_s() / figure.seconds);
    }
    case Measure::kAreaAbove:
      return sigma_C * std::sqrt(figure.seconds * curve.interval_s());
    case Measure::kSteepestRise:
    case Measure::kSteepestFall:
      return kSlopeNoise * sigma_C / std::sqrt(figure.slope->squares_s2);
    case Measure::kWaveContactTime:
    case Measure::kWaveLongestContact:
      return change_under(curve, errors.noise, definition, setting, figure);
    default:
      return 0;
  }
}

double sampling_term(const Curve& curve, const Definition& definition, const Figure& figure) {
  switch (definition.measure) {
    case Measure::kPeak: {
      const std::size_t p = curve.peak();
      if (p == 0 || p == curve.last()) return 0;
      return std::abs(curve.at(p - 1) - 2 * curve.at(p) + curve.at(p + 1)) / (8 * kRectangle);
    }
    case Measure::kWaveContactTime:
    case Measure::kWaveLongestContact:
      return curve.interval_s() * std::sqrt(static_cast<double>(figure.contacts) / 6);
    default:
      return 0;
  }
}

}  // namespace

TraceErrors trace_errors(const Subject& subject, double noise_C) {
  TraceErrors errors;
  errors.noise_C = noise_C;
  for (const std::size_t k : {0, 1}) {
    const double sign = k == 0 ? 1 : -1;
    errors.thermocouple_offset[k].sign = sign;
    errors.thermocouple_offset[k].floor_C = subject.tolerance.floor_C / kRectangle;
    errors.thermocouple_offset[k].fraction = subject.tolerance.fraction / kRectangle;
    errors.thermocouple_gain[k].gain = 1 + sign * subject.tolerance.fraction / kRectangle;
    errors.instrument[k].shift_C = sign * subject.instrument_C / kRectangle;
    errors.noise[k].shift_C = sign * noise_C;
  }
  return errors;
}

Terms trace_terms(const Curve& curve, const Definition& definition, const Setting& setting, const Figure& figure,
                  const TraceErrors& errors) {
  const auto under = [&](const std::array<Perturbation, 2>& both) {
    return change_under(curve, both, definition, setting, figure);
  };
  return {std::max(under(errors.thermocouple_offset), under(errors.thermocouple_gain)), under(errors.instrument),
          noise_term(curve, definition, setting, figure, errors), sampling_term(curve, definition, figure)};
}

Terms board_terms(std::span<const Curve> curves, std::span<const TraceErrors> errors, const Definition& definition,
                  const Figure& figure) {
  std::vector<Curve> perturbed(curves.begin(), curves.end());
  Terms squares;
  for (std::size_t k = 0; k < curves.size(); ++k) {
    const auto under = [&](const std::array<Perturbation, 2>& both) {
      perturbed[k] = curves[k].under(both[0]);
      const auto up = measured_on_board(perturbed, definition);
      perturbed[k] = curves[k].under(both[1]);
      const auto down = measured_on_board(perturbed, definition);
      perturbed[k] = curves[k];
      return larger_change(figure, up, down);
    };
    const double thermocouple = std::max(under(errors[k].thermocouple_offset), under(errors[k].thermocouple_gain));
    const double instrument = under(errors[k].instrument), noise = under(errors[k].noise);
    squares.thermocouple += thermocouple * thermocouple;
    squares.instrument += instrument * instrument;
    squares.noise += noise * noise;
  }
  return {std::sqrt(squares.thermocouple), std::sqrt(squares.instrument), std::sqrt(squares.noise), 0};
}

double expanded(const Terms& terms) {
  return kCoverage * std::sqrt(terms.thermocouple * terms.thermocouple + terms.instrument * terms.instrument +
                               terms.noise * terms.noise + terms.sampling * terms.sampling);
}

}  // namespace ovenwright::measure
