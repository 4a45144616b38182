#pragma once
#include "core/compare/compare.h"
#include "core/compare/phrases.h"
#include "core/judge/judgement.h"

namespace ovenwright::compare {

/// A result on one of the sides as one number, as the links of sentences name it: its index in Comparison::results,
/// B's behind all of A's.
struct Mark {
  Side side = Side::kA;
  std::size_t result = 0;
};
Mark mark_of(const Comparison& comparison, std::size_t number);

/// Which has more margin, what is out on either side, which makes more boards, how many results differ by more than
/// their uncertainty and which most clearly. Links lead to marks.
judge::Sentence compose(const Comparison& comparison, const Phrases& phrases = Phrases());

/// What the uncertainties hold, and what differs in the recipes: a link with the zones that do; where only the speed
/// does, or the speed too, an empty name stands behind them.
judge::Sentence compose_note(const Comparison& comparison, const Phrases& phrases = Phrases());

}  // namespace ovenwright::compare
