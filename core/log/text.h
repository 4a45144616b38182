#pragma once
#include <cstddef>
#include <string>
#include <string_view>

namespace ovenwright::log {

/// The text without blanks at both ends: ASCII white space, no-break, thin and ideographic spaces, marks without width
/// such as those of writing from right to left.
std::string_view trim(std::string_view text);

/// One UTF-8 character from the front; `length` takes its bytes (1 for a byte that starts none, value U+FFFD).
char32_t decode_character(std::string_view text, std::size_t& length);
void append_character(std::string& out, char32_t character);

/// Full-width forms and Arabic figures to ASCII, all kinds of minus to '-', all kinds of blank to ' ', ring-like signs
/// to '°', '℃' to "°C", '℉' to "°F"; everything else as it stands. What a cell means does not hang on these.
std::string plain_forms(std::string_view text);

/// plain_forms, and letters of ASCII and Latin-1 in lower case.
std::string lower(std::string_view text);

/// At most `most` bytes of the text, cut between characters, with "…" where something was cut; control characters
/// become blanks. For messages.
std::string quoted_for_message(std::string_view text, std::size_t most = 40);

}  // namespace ovenwright::log
