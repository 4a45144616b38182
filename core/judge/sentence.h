#pragma once
#include <optional>

#include "core/judge/judgement.h"
#include "core/judge/phrases.h"

namespace ovenwright::judge {

/// How a verdict is told: of a run that was measured, or of one that is predicted.
struct Telling {
  bool predicted = false;
  std::optional<double> pass_probability = {};  ///< of a predicted run, 0 to 1; said last where it is given
  bool fall_unseen = false;  ///< of a predicted run: the log ends too early to tell that probability, which is said
};

/// The verdict as one paragraph: verdict word, count, problems in order of margin, what has no value, what was not
/// judged. A predicted run's has templates of its own where it says what is: "Predicted pass. All 30 requirements are
/// expected to be met."
///
/// Pure: the same judgement and phrases give the same sentence. Named results and "N more" add up to the counts.
Sentence compose(const Judgement& judgement, const Phrases& phrases = Phrases(), const Telling& telling = {});

}  // namespace ovenwright::judge
