#include <fmt/format.h>

#include <charconv>
#include <cmath>

#include "core/judge/decide.h"

namespace ovenwright::judge {

int usual_digits(measure::Measure measure) {
  using measure::Measure;
  switch (measure) {
    case Measure::kSteepestRise:
    case Measure::kMeanRise:
    case Measure::kSteepestFall:
    case Measure::kMeanFall:
      return 2;
    case Measure::kAreaAbove:
    case Measure::kExcursionsAbove:
    case Measure::kPeakTime:
      return 0;
    default:
      return 1;
  }
}

namespace {

/// The value that a reader takes from the text; independent of the program's locale.
double as_read(double value, int digits) {
  const std::string text = fmt::format("{:.{}f}", value, digits);
  double read = value;
  std::from_chars(text.data(), text.data() + text.size(), read);
  return read;
}

}  // namespace

int digits_needed(double value, int digits, std::optional<double> lower, std::optional<double> upper) {
  constexpr double in_hand = 1e-6;  // what decide() lets pass as rounding
  constexpr int most = 9;           // more than 1e-6 needs
  if (!std::isfinite(value)) return digits;
  const bool below = lower && value < *lower - in_hand, above = upper && value > *upper + in_hand;
  for (; digits < most; ++digits) {
    const double shown = as_read(value, digits);
    if ((lower && shown < *lower - in_hand) == below && (upper && shown > *upper + in_hand) == above) break;
  }
  return digits;
}

std::string number_text(double value, int digits, std::optional<double> lower, std::optional<double> upper) {
  std::string text = fmt::format("{:.{}f}", value, digits_needed(value, digits, lower, upper));
  if (text.front() != '-') return text;
  text.erase(0, 1);
  return text.find_first_not_of("0.") == std::string::npos ? text : "\u2212" + text;
}

}  // namespace ovenwright::judge
