#include "core/log/channel_names.h"

#include <algorithm>
#include <unordered_set>

namespace ovenwright::log {

std::vector<std::string> unique_names(std::vector<std::string> names) {
  const std::unordered_set<std::string> given(names.begin(), names.end());
  std::unordered_set<std::string> taken;
  for (std::size_t i = 0; i < names.size(); ++i) {
    if (names[i].empty()) names[i] = "channel " + std::to_string(i + 1);
    std::string name = names[i];
    // A name that another channel has by itself is left to it.
    for (int count = 2; taken.contains(name) || (name != names[i] && given.contains(name)); ++count) {
      name = names[i] + " (" + std::to_string(count) + ")";
    }
    taken.insert(name);
    names[i] = std::move(name);
  }
  return names;
}

bool one_of_a_series(const std::string& name, const std::vector<std::string>& names) {
  const auto letters = [](const std::string& text) {
    const auto digit = text.find_first_of("0123456789");
    const bool plain = digit != std::string::npos && digit > 0 &&
                       text.find_first_not_of("0123456789", digit) == std::string::npos &&
                       text.find_first_of(" _-.") == std::string::npos;
    return plain ? text.substr(0, digit) : std::string{};
  };
  const std::string own = letters(name);
  return !own.empty() && std::any_of(names.begin(), names.end(),
                                     [&](const std::string& other) { return other != name && letters(other) == own; });
}

}  // namespace ovenwright::log
