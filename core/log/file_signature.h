#pragma once
#include <string_view>

namespace ovenwright::log {

/// What a file is that holds no log this program can read, by its first bytes: "a PDF document"; empty where it may be
/// one.
std::string_view foreign_format(std::string_view bytes);

}  // namespace ovenwright::log
