#pragma once
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

#include "core/log/dialect.h"

namespace ovenwright::log {

/// A text in which some columns write decimals with a point and others with a comma ("0.5;25,3"), made alike.
struct AlikeDecimals {
  std::string text;       ///< as long as the original, so that lines and places stay
  char decimal = '.';     ///< in all columns now
  std::size_t point = 0;  ///< columns that had a point, and those that had a comma
  std::size_t comma = 0;
};

/// Exchanges point and comma in the columns whose sign is not that of the most. Where `fixed` states the decimal sign
/// all others are made like it. Nothing where the columns agree, where one column holds both, and where a comma may be
/// the delimiter itself.
/// @param guess  what a first look made of the text; its delimiter is tried before the others
/// Cost: one look at the sample; a copy and a pass where the columns differ.
std::optional<AlikeDecimals> with_alike_decimals(std::string_view text, const DialectGuess& guess, const Layout& fixed);

}  // namespace ovenwright::log
