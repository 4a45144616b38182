#pragma once
#include <string>
#include <vector>

#include "core/judge/judgement.h"

namespace ovenwright::judge {

/// One reason for which results are undetermined, as the sentence words it.
struct SharedCause {
  std::string word;  ///< of the templates: "open", "ends_hot_more", "tc", …
  std::vector<Argument> arguments;
  std::vector<std::size_t> outcomes;  ///< indexes into Judgement::all()
};

/// The undetermined results by their reason, the one that took most first.
std::vector<SharedCause> causes_of(const Judgement& judgement, const std::vector<std::size_t>& undetermined);

}  // namespace ovenwright::judge
