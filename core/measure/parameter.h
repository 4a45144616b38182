#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/measure/definition.h"
#include "core/units/result.h"

namespace ovenwright::measure {

/// A parameter as files and the command write it: a number, or a word ("peak", "Tc", "Tc-5", a zone's name).
using ParameterValue = std::variant<double, std::string>;
struct Parameter {
  std::string name;  ///< as in measures: "level", "T1", "over", …
  ParameterValue value;
};

/// The parameters that are set, in the order of Description::parameters.
std::vector<Parameter> parameters_of(const Definition& definition);

/// Sets one parameter from a file's or the command's text.
/// Errors: kBadArgument where the measure knows no parameter of that name, or the value is of the wrong kind; found
/// and expected are filled, the definition stays as it was.
std::optional<Error> set_parameter(Definition& definition, std::string_view name, const ParameterValue& value);

/// The definition with every default filled in: level 25 °C for the peak time, offset 5 °C, reference the peak,
/// over 5 s; the level of time above, excursions, area and the wave's contacts is the liquidus, where one is given.
Definition with_defaults(Definition definition, std::optional<double> liquidus_C);

/// What keeps a definition from being measured: a required parameter that is absent, one the measure does not know,
/// a number that is not finite, T1 and T2 the wrong way round, a window that is not longer than 0, none or several of
/// time, position and zone. Empty where it is sound. Error: kBadArgument. A Tc not resolved yet is sound here.
std::optional<Error> problem(const Definition& definition);

/// The command's way to write a definition: "time between on rise, T1=150, T2=200". Defaults are filled in.
/// Errors: kBadArgument for a name or key that does not exist (naming those that do), a key given twice, a value that
/// cannot be read, and what problem() finds.
Result<Definition> parse_definition(std::string_view text);

/// The parameters for people, °C and s: "217 °C", "150 to 200 °C", "over 5 s, 100 to 150 °C", "within 5 °C of 260 °C",
/// "217 °C to the peak"; empty where the measure has none. It reads on from the measure's name.
std::string parameters_text(const Definition& definition);

}  // namespace ovenwright::measure
