#pragma once
#include <cstddef>
#include <optional>
#include <string_view>

#include "core/log/reading.h"

namespace ovenwright::log {

/// A text longer than this is looked at before it is copied, decoded or unpacked: below it no log reaches the most
/// numbers that are allowed by default.
inline constexpr std::size_t kWorthACheck = std::size_t{48} << 20;
/// How much of such a text is looked at.
inline constexpr std::size_t kCheckedHead = std::size_t{1} << 20;

/// Refuses a log that holds more numbers than `options.most_samples`, judged by its head: the rows there, times how
/// often the head goes into the whole. Nothing where the head shows no table: its numbers are counted later.
/// @param head         the first bytes of the text, in its own encoding
/// @param whole_bytes  of the text, stated or estimated
/// Errors: kParse with about how many were found and how many are allowed, or where the head is no text.
std::optional<Error> too_many_numbers(std::string_view head, double whole_bytes, const Options& options);

/// The error itself, without a place.
Error too_many_numbers_error(double rows, double numbers_per_row, std::size_t most_numbers);

}  // namespace ovenwright::log
