#pragma once
#include <string>
#include <vector>

#include "core/judge/judgement.h"

namespace ovenwright::judge {

/// The words of the verdict sentence. This class speaks English on the log's clock; another language, unit or clock
/// overrides what it words differently, and gets the same sentence with the same links.
///
/// A template is a whole sentence. In it stand
/// - {name}, an argument with its unit; {name.number} without it; {value.U} the value ± uncertainty; {n.word} a count
///   as a word; {value.times} how often;
/// - [link:text], the part that leads somewhere: outcome, zones, window, more, board, fault; and [verdict:text], the
///   verdict word. Links do not nest.
class Phrases {
 public:
  virtual ~Phrases() = default;

  /// The template of an id.
  /// @param count  what a plural goes by: the number of results that the sentence counts; 1 where it counts none
  virtual std::string text(const std::string& id, int count) const;

  /// "232.1 °C", "0.9 °C", "2".
  virtual std::string quantity(const Argument& argument) const;
  /// "232.1"
  virtual std::string number(const Argument& argument) const;
  /// "232.1 ± 2.1 °C"
  virtual std::string with_uncertainty(const Argument& value, const Argument& uncertainty) const;
  /// A moment of the log, "330.1" (seconds on the log's clock).
  virtual std::string moment(const Argument& argument) const;
  /// "six"; figures above twelve.
  virtual std::string count_word(int count) const;
  /// "once", "twice", "3 times".
  virtual std::string times(const Argument& argument) const;
  /// "zone 1", "zones 8–10", "zones 1, 3 and 5–7", in the oven's order.
  virtual std::string zones(const std::vector<std::string>& names) const;

  /// "8–10", "3", "4": three or more in a row become a range.
  static std::vector<std::string> zone_ranges(const std::vector<std::string>& names);
};

/// Before the id of a template that has a second one for predicted runs: "predicted.met.all".
inline constexpr const char* kOfPredictions = "predicted.";
bool is_told_of_predictions(const std::string& id);

/// Every id that compose() uses, in a fixed order, for translators: Phrases().text(id, 1 or 2) is its English.
std::vector<std::string> sentence_ids();

}  // namespace ovenwright::judge
