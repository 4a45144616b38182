#include "core/files/nearest.h"

#include <algorithm>
#include <vector>

namespace ovenwright::files {
namespace {

char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

bool starts(std::string_view whole, std::string_view start) {
  return whole.size() >= start.size() && edit_distance(whole.substr(0, start.size()), start) == 0;
}

}  // namespace

std::size_t edit_distance(std::string_view a, std::string_view b) {
  std::vector<std::size_t> before(b.size() + 1), previous(b.size() + 1), current(b.size() + 1);
  for (std::size_t j = 0; j <= b.size(); ++j) previous[j] = j;
  for (std::size_t i = 1; i <= a.size(); ++i) {
    current[0] = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const bool same = lower(a[i - 1]) == lower(b[j - 1]);
      current[j] = std::min({previous[j] + 1, current[j - 1] + 1, previous[j - 1] + (same ? 0U : 1U)});
      if (i > 1 && j > 1 && lower(a[i - 1]) == lower(b[j - 2]) && lower(a[i - 2]) == lower(b[j - 1])) {
        current[j] = std::min(current[j], before[j - 2] + 1);
      }
    }
    std::swap(before, previous);
    std::swap(previous, current);
  }
  return previous[b.size()];
}

std::string_view nearest(std::string_view word, std::span<const std::string_view> candidates) {
  constexpr std::size_t kMostCompared = 64;  // a longer word is no slip of the finger
  if (word.empty() || word.size() > kMostCompared) return {};
  std::string_view best;
  std::size_t least = 0;
  for (const std::string_view candidate : candidates) {
    const std::size_t allowed = std::max<std::size_t>(1, std::max(word.size(), candidate.size()) / 3);
    const std::size_t distance = edit_distance(word, candidate);
    const bool near =
        (distance <= allowed && distance < std::max(word.size(), candidate.size())) ||
        (word.size() >= 3 && candidate.size() >= 3 && (starts(candidate, word) || starts(word, candidate)));
    if (near && (best.empty() || distance < least)) {
      best = candidate;
      least = distance;
    }
  }
  return best;
}

std::string listed(std::span<const std::string_view> words) {
  std::string text;
  for (std::size_t i = 0; i < words.size(); ++i) {
    if (i > 0) text += i + 1 == words.size() ? " or " : ", ";
    text += '"';
    text += words[i];
    text += '"';
  }
  return text;
}

std::string suggestion(std::string_view word, std::span<const std::string_view> candidates) {
  const std::string_view meant = nearest(word, candidates);
  if (!meant.empty()) return ", did you mean \"" + std::string{meant} + "\"?";
  return candidates.empty() ? ", expected none" : ", expected " + listed(candidates);
}

}  // namespace ovenwright::files
