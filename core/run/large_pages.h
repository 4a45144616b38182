#pragma once
#include <vector>

namespace ovenwright::run {

/// Asks the system to back the room that arrays have reserved, and not yet touched, with large pages: a log of a
/// million rows otherwise spends more time on page faults than on its numbers. Small arrays stay as they are; where the
/// system has no such pages nothing happens.
void ask_for_large_pages(const std::vector<const std::vector<double>*>& reserved);

}  // namespace ovenwright::run
