#pragma once
#include <span>
#include <string_view>

namespace ovenwright::log {

/// Words and signs with characters beyond ASCII that stand in the heads of temperature logs, in lower case: what tells
/// one encoding from another.
std::span<const std::u16string_view> encoding_words();

/// The syllables that most Korean words are made of: text of another encoding read as Korean gives rare ones.
std::u16string_view common_korean_syllables();

}  // namespace ovenwright::log
