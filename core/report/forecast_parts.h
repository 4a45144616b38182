#pragma once
#include <string>

#include "core/tune/forecast.h"

namespace ovenwright::report {

enum class Rows {
  kAll,
  kTightest  ///< of each requirement the result with the smallest margin; those without margin stand all
};

/// The results of a forecast with half width, margin and verdict.
std::string forecast_table(const tune::Forecast& forecast, Rows rows);

/// "predicted pass, smallest margin 22 % ± 9 %, passes with a probability of 97 %": never quite 0 or 100 %, since no
/// prediction is certain.
std::string forecast_summary(const tune::Forecast& forecast);

}  // namespace ovenwright::report
