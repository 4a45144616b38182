#pragma once
#include <string>
#include <vector>

#include "core/judge/judgement.h"
#include "core/judge/phrases.h"

namespace ovenwright::judge {

/// A sentence to be worded: its template and arguments, and where its links lead.
struct Planned {
  Clause clause = {};
  int count = 1;                           ///< what a plural goes by
  int disc = 0;                            ///< number of the disc before it; 0: none
  bool signal = false;                     ///< the verdict word is in the signal colour
  std::vector<std::size_t> outcomes = {};  ///< of all its links but zones
  std::vector<std::string> zones = {};
};

/// Fills the template and appends its parts, parted from what stands before by a blank. What a template does not close
/// or know stays as it stands in it, so a broken translation shows itself.
void append(Sentence& sentence, const Planned& planned, const Phrases& phrases);

}  // namespace ovenwright::judge
