#pragma once
#include <span>
#include <string_view>

#include "core/units/phrase.h"

// The English of the phrases, by what they are said of; phrase.cpp has those of logs.
namespace ovenwright {

/// Of measures, verdicts, boards and recipes; empty for other phrases.
std::string_view english_of_result(Phrase phrase);

/// Patterns that are no Phrase: whole messages and the usual words in them.
std::span<const std::string_view> words_of_files();

}  // namespace ovenwright
