#include "core/report/fit_words.h"
#include "core/units/listed.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <optional>
#include <span>
#include <string_view>
#include <utility>

namespace ovenwright::report {
namespace {

struct Word {
  const char* parameter;  // as the model's priors name it, without its unit
  const char* words;
};
constexpr Word kOven[] = {{"air mixing upstream", "how far air mixes against the belt's way"},
                          {"air mixing downstream", "how far air mixes along the belt's way"},
                          {"supply in the tunnels", "how the tunnels' air is fed"},
                          {"exchange along the oven", "how the heat exchange changes along the oven"},
                          {"exchange in cooling zones", "how strongly the cooling zones cool"},
                          {"exchange in the tunnels", "how strongly the tunnels' air heats or cools"},
                          {"share of radiation", "how much of the heat is radiation"},
                          {"heat capacity with temperature", "how the board's heat capacity grows with temperature"},
                          {"entry", "the moment of entry"}};
constexpr Word kPlacement[] = {{"time constant", "how fast it heats"},
                               {"heat to the part beside it", "heat exchanged with the part beside it"},
                               {"heat from the part beside it", "heat exchanged with the part beside it"},
                               {"share of the part in the reading", "the part's share in the reading"},
                               {"share of the air in the reading", "the air's share in the reading"},
                               {"heat through the board", "heat that comes through the board"},
                               {"less than the middle's air", "how the air at its place differs from the middle's"},
                               {"its radiation", "how it takes up radiation"},
                               {"its heat capacity with temperature", "how its heat capacity grows with temperature"},
                               {"heat of melting", "the heat that melting takes"},
                               {"behind the leading edge", "its distance from the leading edge"},
                               {"share of the top side", "how much of its heat comes from the top"}};
constexpr std::string_view kOffset = "offset of zone ", kExchange = "exchange in zone ";

/// A parameter's name without the unit it is worked out in. Names of placements may hold commas.
std::string without_unit(const std::string& parameter) {
  for (const std::string_view unit :
       {", °C", ", K", ", s", ", mm", ", ln", ", ln mm", ", ln s", ", ln 1/s", ", per 100 K"})
    if (parameter.ends_with(unit)) return parameter.substr(0, parameter.size() - unit.size());
  return parameter;
}

std::string in_words(const std::string& parameter, std::span<const Word> table) {
  const auto found = std::ranges::find_if(table, [&](const Word& word) { return parameter == word.parameter; });
  return found == table.end() ? parameter : found->words;
}

std::optional<long long> whole(const std::string& text) {
  int out = 0;  // one more fits what is returned
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), out);
  return error == std::errc() && end == text.data() + text.size() ? std::optional<long long>(out) : std::nullopt;
}

/// "zone 4", "zones 1 to 3 and 7"
std::string zones_in_words(const std::vector<std::string>& zones) {
  std::vector<std::string> parts;
  for (std::size_t i = 0; i < zones.size();) {
    std::size_t end = i + 1;
    while (end < zones.size() && whole(zones[end]) && whole(zones[end - 1]) &&
           *whole(zones[end]) == *whole(zones[end - 1]) + 1)
      ++end;
    if (end - i > 2)
      parts.push_back(zones[i] + " to " + zones[end - 1]);
    else
      parts.insert(parts.end(), zones.begin() + static_cast<std::ptrdiff_t>(i),
                   zones.begin() + static_cast<std::ptrdiff_t>(end));
    i = end;
  }
  return (zones.size() > 1 ? "zones " : "zone ") + listed(parts);
}

}  // namespace

std::string not_told_words(const std::vector<std::string>& parameters) {
  std::vector<std::string> parts, offsets, exchanges;
  std::vector<std::pair<std::string, std::vector<std::string>>> places;  // what, and the placements that miss it
  const auto take = [](const std::string& name, std::string_view what, std::vector<std::string>& zones) {
    if (!name.starts_with(what)) return false;
    zones.push_back(name.substr(what.size()));
    return true;
  };
  for (const auto& parameter : parameters) {
    const std::string name = without_unit(parameter);
    if (take(name, kOffset, offsets) || take(name, kExchange, exchanges)) continue;
    const auto colon = name.rfind(": ");
    if (colon == std::string::npos) {
      const std::string words = in_words(name, kOven);
      if (std::ranges::find(parts, words) == parts.end()) parts.push_back(words);
      continue;
    }
    const std::string words = in_words(name.substr(colon + 2), kPlacement), place = name.substr(0, colon);
    auto known = std::ranges::find_if(places, [&](const auto& one) { return one.first == words; });
    if (known == places.end()) known = places.insert(places.end(), {words, {}});
    if (std::ranges::find(known->second, place) == known->second.end()) known->second.push_back(place);
  }
  if (!offsets.empty())
    parts.push_back("by how much " + zones_in_words(offsets) + (offsets.size() > 1 ? " are" : " is") + " off " +
                    (offsets.size() > 1 ? "their setpoints" : "its setpoint"));
  if (!exchanges.empty())
    parts.push_back("how strongly " + zones_in_words(exchanges) + " heat" + (exchanges.size() > 1 ? "" : "s"));
  for (const auto& [words, at] : places)
    parts.push_back(words + (at.size() > 2 ? fmt::format(" at {} placements", at.size()) : " at " + listed(at)));
  constexpr std::size_t most = 5;  // in as much room as it is worth: the whole list stands in JSON
  std::string out;
  for (std::size_t i = 0; i < std::min(most, parts.size()); ++i) out += (i ? "; " : "") + parts[i];
  if (parts.size() > most) out += fmt::format("; and {} more", parts.size() - most);
  return out;
}

}  // namespace ovenwright::report
