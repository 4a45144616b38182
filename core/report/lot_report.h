#pragma once
#include <span>
#include <string>

#include "core/lot/lot.h"

namespace ovenwright::report {

/// ovenwright.lot/1, a line of JSON.
std::string lot_json(const std::string& name, const lot::Lot& lot);

/// The same for people: the sentence, the runs that are no pass, a table of the figures, the signals, why a result has
/// no index, and what the figures mean.
/// @param runs  those that `lot` sums up
std::string lot_text(const std::string& name, std::span<const lot::Run> runs, const lot::Lot& lot);

}  // namespace ovenwright::report
