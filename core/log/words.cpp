#include "core/log/words.h"

#include <array>
#include <string>
#include <vector>

#include "core/log/text.h"
#include "core/log/word_list.h"

namespace ovenwright::log {
namespace {

bool letter(char c) {
  const auto byte = static_cast<unsigned char>(c);
  return (c >= 'a' && c <= 'z') || byte >= 0x80;
}

bool stands_alone(std::string_view text, std::size_t at, std::size_t length) {
  const bool before = at > 0 && letter(text[at - 1]);
  const bool after = at + length < text.size() && letter(text[at + length]);
  return !before && !after;
}

/// Entries by their first byte, so that a text is walked once.
const std::array<std::vector<const WordEntry*>, 256>& by_first_byte() {
  static const auto table = [] {
    std::array<std::vector<const WordEntry*>, 256> made;
    for (const auto list : {words_of_columns(), words_of_metadata(), words_of_further_languages()}) {
      for (const WordEntry& entry : list) made[static_cast<unsigned char>(entry.text.front())].push_back(&entry);
    }
    return made;
  }();
  return table;
}

}  // namespace

Words words_in(std::string_view original) {
  const std::string text = lower(original);
  const std::string_view view = text;
  const auto& table = by_first_byte();
  Words words = kNoWord;
  for (std::size_t at = 0; at < view.size(); ++at) {
    for (const WordEntry* entry : table[static_cast<unsigned char>(view[at])]) {
      if (!view.substr(at).starts_with(entry->text)) continue;
      if (!entry->whole || stands_alone(view, at, entry->text.size())) words |= entry->words;
    }
  }
  return words;
}

}  // namespace ovenwright::log
