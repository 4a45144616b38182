#include "core/window/limit.h"

#include <charconv>
#include <cmath>
#include <tuple>

#include "core/files/toml.h"

namespace ovenwright::window {
namespace {

std::string_view trimmed(std::string_view text) {
  const auto first = text.find_first_not_of(" \t");
  if (first == std::string_view::npos) return {};
  return text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

bool is_tc(const std::optional<Limit>& limit) { return limit && std::holds_alternative<TcOffset>(*limit); }

/// Below, where the two can be compared before Tc is known: both numbers, or both Tc.
bool not_below(const std::optional<Limit>& a, const std::optional<Limit>& b) {
  if (!a || !b || a->index() != b->index()) return false;
  if (is_tc(a)) return std::get<TcOffset>(*a).offset_C >= std::get<TcOffset>(*b).offset_C;
  return std::get<double>(*a) >= std::get<double>(*b);
}

bool same(const std::optional<Limit>& a, const std::optional<Limit>& b) { return not_below(a, b) && not_below(b, a); }

std::optional<LimitProblem> tc_problem(const ProcessWindow& window, const Requirement& requirement) {
  const auto& reference = requirement.measure.parameters.reference;
  const bool limit_is_tc = is_tc(requirement.lower) || is_tc(requirement.upper) || is_tc(requirement.target);
  const bool reference_is_tc = reference && std::holds_alternative<measure::TcReference>(*reference);
  if (!limit_is_tc && !reference_is_tc) return std::nullopt;
  const auto& description = measure::describe(requirement.measure.measure);
  const bool temperature = description.unit == Unit::kCelsius && !counts_from_zero(requirement.measure.measure);
  const std::string key = is_tc(requirement.upper)   ? "upper"
                          : is_tc(requirement.lower) ? "lower"
                          : limit_is_tc              ? "target"
                                                     : "reference";
  if (limit_is_tc && !temperature) {
    return LimitProblem{key, "Tc is a temperature, \"" + std::string{description.name} + "\" is none", "a number"};
  }
  const auto kind = requirement.applies_to.kind;
  if (kind == AppliesTo::Kind::kJoint || kind == AppliesTo::Kind::kBoard) {
    return LimitProblem{"applies_to", "Tc binds the bodies of parts, but \"applies_to\" leaves them out",
                        "\"body\", \"all\" or a list of channels"};
  }
  if (!window.classification) {
    return LimitProblem{key, "found Tc for \"" + key + "\", but the window has no \"classification\" to take it from",
                        "classification = \"Pb-free\" or \"SnPb\""};
  }
  return std::nullopt;
}

}  // namespace

std::optional<Limit> limit_of(std::string_view text) {
  text = trimmed(text);
  if (!text.starts_with("Tc")) return std::nullopt;
  text = trimmed(text.substr(2));
  if (text.empty()) return TcOffset{};
  const char sign = text.front();
  text = trimmed(text.substr(1));
  double offset_C = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), offset_C);
  const bool whole = error == std::errc{} && end == text.data() + text.size() && std::isfinite(offset_C);
  if ((sign != '+' && sign != '-') || !whole || text.front() == '-') return std::nullopt;
  return TcOffset{sign == '-' ? -offset_C : offset_C};
}

std::string limit_text(const Limit& limit) {
  if (const auto* number = std::get_if<double>(&limit)) return files::toml_number(*number);
  const double offset_C = std::get<TcOffset>(limit).offset_C;
  if (offset_C == 0) return "\"Tc\"";
  return std::string{"\"Tc"} + (offset_C < 0 ? "-" : "+") + files::toml_number(std::abs(offset_C)) + "\"";
}

bool counts_from_zero(measure::Measure measure) {
  switch (measure) {
    case measure::Measure::kPeak:
    case measure::Measure::kTemperatureAt:
    case measure::Measure::kExitTemperature:
    case measure::Measure::kWavePreheatTemperature:
    case measure::Measure::kExcursionsAbove:
      return false;
    default:
      return true;
  }
}

std::optional<LimitProblem> limit_problem(const ProcessWindow& window, const Requirement& requirement) {
  const auto& [lower, upper, target] = std::tie(requirement.lower, requirement.upper, requirement.target);
  const bool count = requirement.measure.measure == measure::Measure::kExcursionsAbove;
  if (!lower && !upper) return LimitProblem{"", "has no limit", "\"lower\", \"upper\" or both"};
  if (auto problem = tc_problem(window, requirement)) return problem;
  if (not_below(lower, upper) && !(count && same(lower, upper))) {
    return LimitProblem{"upper", "limits crossed: lower " + limit_text(*lower) + ", upper " + limit_text(*upper),
                        "an upper limit above the lower one"};
  }
  if (target && (not_below(lower, target) || not_below(target, upper))) {
    const std::string inside = lower && upper ? "strictly between " + limit_text(*lower) + " and " + limit_text(*upper)
                               : lower        ? "above " + limit_text(*lower)
                                              : "below " + limit_text(*upper);
    return LimitProblem{"target", "found " + limit_text(*target) + " for \"target\", expected a target " + inside,
                        "a target " + inside};
  }
  if (count || target || (lower && upper)) return std::nullopt;
  const bool from_zero = counts_from_zero(requirement.measure.measure);
  if (upper && from_zero) {
    if (std::get<double>(*upper) > 0) return std::nullopt;
    return LimitProblem{"upper", "found " + limit_text(*upper) + " for \"upper\", expected a limit above 0 or a target",
                        "a limit above 0 or a target"};
  }
  return LimitProblem{upper ? "upper" : "lower",
                      "The window \"" + window.identity.name + "\" gives \"" + requirement.name + "\" " +
                          (upper ? "an upper" : "a lower") + " limit but no target",
                      "a target"};
}

}  // namespace ovenwright::window
