#pragma once
#include <cstddef>
#include <span>
#include <string>
#include <string_view>

namespace ovenwright::files {

/// Insertions, deletions, replacements and swaps of neighbours that turn one word into the other (optimal string
/// alignment), upper and lower case alike, over bytes. Cost: O(n·m).
std::size_t edit_distance(std::string_view a, std::string_view b);

/// The candidate that was most likely meant by a mistyped word: the nearest within a third of its length, or one that
/// the word starts or that starts the word ("tolerance" for "tolerance_C"). Empty where none is near.
std::string_view nearest(std::string_view word, std::span<const std::string_view> candidates);

/// `, did you mean "lower"?`, or where nothing is near `, expected "a", "b" or "c"`: the end of a message.
std::string suggestion(std::string_view word, std::span<const std::string_view> candidates);

/// `"a", "b" or "c"`.
std::string listed(std::span<const std::string_view> words);

}  // namespace ovenwright::files
