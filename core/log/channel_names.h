#pragma once
#include <string>
#include <vector>

namespace ovenwright::log {

/// Names of channels as the program uses them: a nameless one is "channel 3", its number from 1; a repeated one gets
/// " (2)", " (3)" behind it. No two are equal.
std::vector<std::string> unique_names(std::vector<std::string> names);

/// "N2" beside "N1" or "N3": letters and a number, and the same letters with another number elsewhere. Such a name is
/// one of a series of channels, whatever else it stands for.
bool one_of_a_series(const std::string& name, const std::vector<std::string>& names);

}  // namespace ovenwright::log
