#pragma once
#include <string_view>

#include "core/units/result.h"

namespace ovenwright::files {

/// What a TOML parser says of a text it cannot parse, in the words of someone who edits the file: what stands at
/// `place` and what was expected there. `description` is the parser's; a slip that it does not tell apart keeps its
/// words.
Error in_plain_words(std::string_view description, Place place, std::string_view text);

}  // namespace ovenwright::files
