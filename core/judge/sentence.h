#pragma once
#include "core/judge/judgement.h"
#include "core/judge/phrases.h"

namespace ovenwright::judge {

/// The verdict as one paragraph: verdict word, count, problems in order of margin, what has no value, what was not
/// judged.
///
/// Pure: the same judgement and phrases give the same sentence. Named results and "N more" add up to the counts.
Sentence compose(const Judgement& judgement, const Phrases& phrases = Phrases());

}  // namespace ovenwright::judge
