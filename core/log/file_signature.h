#pragma once
#include <string>
#include <string_view>

namespace ovenwright::log {

/// What a file is that holds no log this program can read, by its first bytes: "a PDF document"; empty where it may be
/// one.
std::string_view foreign_format(std::string_view bytes);

/// The first 8 kB from the first '<' on, in lower case, where nothing but blanks and a byte order mark stand before it;
/// empty elsewhere. Zero bytes are left out, so that UTF-16 reads alike.
std::string markup_head(std::string_view bytes);

}  // namespace ovenwright::log
