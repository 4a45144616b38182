#include "core/judge/verdict_named.h"

namespace ovenwright::judge {

std::optional<Verdict> verdict_named(std::string_view name) {
  for (const auto verdict :
       {Verdict::kPass, Verdict::kConditionalPass, Verdict::kUndetermined, Verdict::kConditionalFail, Verdict::kFail})
    if (name == verdict_name(verdict)) return verdict;
  return std::nullopt;
}

}  // namespace ovenwright::judge
