#pragma once
#include <cstddef>
#include <string_view>

namespace ovenwright::files {

/// The byte at a line and column (characters, from 1) of UTF-8 text; the text's size past its end.
std::size_t offset_of(std::string_view text, std::size_t line, std::size_t column);

/// One past the last byte of the TOML value that begins at `begin`: string of any kind, array, inline table or bare
/// word. The text must be valid TOML there.
std::size_t value_end(std::string_view text, std::size_t begin);

}  // namespace ovenwright::files
