#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "core/log/grid.h"
#include "core/log/unpack_budget.h"
#include "core/units/result.h"

namespace ovenwright::log {

bool is_gzip(std::string_view bytes);

/// Unpacks a gzip file (RFC 1952), also one of several members in a row; what stands behind them is noted, not read.
/// A text that promises to be long is shown to `check` once its head is unpacked, its size told from how far the head
/// was packed.
/// Errors: kParse (damaged, cut short, over the budget), and what `check` gives. Cost: O(n) time, memory as it grows,
/// at most the budget.
Result<std::string> gunzip(std::string_view bytes, UnpackBudget& budget, std::vector<std::string>& notes,
                           const HeadCheck& check = {});

}  // namespace ovenwright::log
