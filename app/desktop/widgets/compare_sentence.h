#pragma once
#include "app/desktop/widgets/sentence_content.h"
#include "app/desktop/widgets/wording.h"
#include "core/compare/compare.h"

namespace ovenwright::widgets {

/// The sentence about a comparison and, under it, what its uncertainties hold and what differs in the recipes. Its sign
/// is that of the side with more margin, of two alike the worse one. Links carry marks (compare::mark_of) as outcomes,
/// and the zones that differ, an empty name for the speed.
SentenceContent compareSentence(const compare::Comparison& comparison, const Wording& wording = Wording());

}  // namespace ovenwright::widgets
