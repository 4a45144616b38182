#pragma once
#include <span>
#include <string_view>

namespace ovenwright::log {

/// Words and signs with characters beyond ASCII that stand in the heads of temperature logs, in lower case: what tells
/// one encoding from another.
std::span<const std::u16string_view> encoding_words();

}  // namespace ovenwright::log
