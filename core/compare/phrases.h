#pragma once
#include <string>
#include <vector>

#include "core/judge/phrases.h"

namespace ovenwright::compare {

/// The words of the sentences about a comparison, in English. Another language overrides text(), margin() and speed()
/// besides the numbers of judge::Phrases; templates are written as there, and plurals go by the count.
class Phrases : public virtual judge::Phrases {
 public:
  std::string text(const std::string& id, int count) const override;
  /// "17 %", "at most −6 %".
  virtual std::string margin(double fraction, judge::MarginBound bound) const;
  /// "7 %": how many more or fewer; never 0.
  virtual std::string share(double fraction) const;
  /// "810 mm/min".
  virtual std::string speed(double mm_per_min) const;
};

/// Every id that compose() and compose_note() use, in a fixed order, for translators.
std::vector<std::string> sentence_ids();

}  // namespace ovenwright::compare
