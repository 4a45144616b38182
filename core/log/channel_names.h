#pragma once
#include <string>
#include <vector>

namespace ovenwright::log {

/// Names of channels as the program uses them: a nameless one is "channel 3", its number from 1; a repeated one gets
/// " (2)", " (3)" behind it. No two are equal.
std::vector<std::string> unique_names(std::vector<std::string> names);

}  // namespace ovenwright::log
