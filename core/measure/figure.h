#pragma once
#include <cstddef>
#include <optional>
#include <span>
#include <string>

#include "core/measure/curve.h"
#include "core/measure/measure.h"
#include "core/measure/slope.h"
#include "core/units/phrase.h"

namespace ovenwright::measure {

/// By how much the levels of a definition are moved, °C, to find what noise does to a time or a mean rate.
struct Moves {
  double level_C = 0;  ///< of time above, peak time and time near the peak
  double T1_C = 0, T2_C = 0;
};

/// Where a measure is taken: what it needs besides the curve.
struct Setting {
  const Place* place = nullptr;  ///< null where no oven is given
  double x_mm = 0;
  Moves moves;
};

/// A measure taken on one course of a trace, without uncertainty, and what its uncertainty needs.
struct Figure {
  std::optional<double> value;
  bool at_least = false;
  std::optional<NoValue> no_value;
  std::string reason, note;
  std::optional<double> from_s, to_s;
  std::optional<Slope> slope;   ///< of a steepest slope
  std::size_t contacts = 0;     ///< that were added up
  double seconds = 0;           ///< that a mean rate was divided by, or an area was taken over
  bool counts_to_peak = false;  ///< the moment of the peak enters
};

/// One measure of one curve. The definition must be sound: problem() finds nothing, defaults filled in.
Figure measured(const Curve& curve, const Definition& definition, const Setting& setting);

/// One board measure over all curves: those of the valid traces that are not air.
Figure measured_on_board(std::span<const Curve> curves, const Definition& definition);

/// A temperature as part of a sentence: "216.98 °C", with so many digits that it does not read as `other`.
std::string temperature_text(double temperature_C, double other_C);
std::string temperature_text(double temperature_C);
std::string seconds_text(double time_s);

Figure valued(double value, std::optional<double> from_s, std::optional<double> to_s);
/// Without value, and why.
Figure not_reached(Phrase reason, std::initializer_list<std::string> arguments = {});
Figure undetermined(Phrase reason, std::initializer_list<std::string> arguments = {});

}  // namespace ovenwright::measure
