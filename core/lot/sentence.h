#pragma once
#include <string>

#include "core/lot/lot.h"

namespace ovenwright::lot {

/// English: how many runs are out, the smallest margin, the least capable requirement with its limits and that the runs
/// are few, the first signal of the control charts, what was not measured alike in all runs, and how many results have
/// no index.
std::string sentence_of(const Lot& lot);

/// "soak time"; with its measure and parameters where the lot has it with others too: "soak time (time between on rise,
/// 150 to 200 °C)".
std::string requirement_of(const Series& series);

/// "peak on U1 centre", "spread of peaks".
std::string subject_of(const Series& series);

}  // namespace ovenwright::lot
