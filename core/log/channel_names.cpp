#include "core/log/channel_names.h"

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

}  // namespace ovenwright::log
