#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/log/units.h"
#include "core/log/words.h"

namespace ovenwright::log {

/// One header cell taken apart: "U1 center (°C)" is the name "U1 center" with a unit.
struct HeaderText {
  std::string whole;  ///< as it stood, trimmed, line breaks as blanks
  std::string name;   ///< without the unit
  std::optional<UnitText> unit;
  std::string bracket;             ///< what stands in brackets and is no known unit: perhaps one after all
  std::optional<UnitText> ending;  ///< a plain letter at the end ("TC1 C"): a unit where all columns have it
  std::string name_before_ending;
  Words words = kNoWord;
  char thermocouple = 0;  ///< "type K", "(K-type)": the letter
};

HeaderText read_header_text(std::string_view cell);

/// The letter of a thermocouple type named in the text ("Type K", "Typ-K", "K型", "TC type: N"); 0: none.
char thermocouple_named(std::string_view text);

}  // namespace ovenwright::log
