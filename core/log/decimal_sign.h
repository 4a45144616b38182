#pragma once
#include <optional>
#include <string>

#include "core/log/dialect.h"
#include "core/log/layout.h"
#include "core/log/reading.h"
#include "core/log/rows.h"

namespace ovenwright::log {

/// What settled the decimal sign where the sample allowed both.
struct DecimalChoice {
  char decimal = '.';
  std::optional<Assumption> assumed;  ///< where the file leaves both open and both make a run
};

/// Looks through the whole file for a number that only one sign allows ("12,5", "0,512", "1.234,5"); where there is
/// none ("1,234" throughout) the reading in which times go forward and temperatures are those of an oven is taken.
/// Cost: up to the first number that settles it, else one pass.
DecimalChoice settle_decimal(RowSource& rows, const DialectGuess& guess);

}  // namespace ovenwright::log
