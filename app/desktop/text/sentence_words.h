#pragma once
#include <QString>
#include <array>
#include <span>

namespace ovenwright::desktop {

/// What one measure of a placement is called in the verdict sentence of a language; as core/judge/english.cpp.
struct PlacementWords {
  const char* key;
  const char* does;           ///< after the placement's name: "peaks at {value}"
  const char* low;            ///< how far below: "{distance} short"
  const char* high;           ///< "{distance} too hot"
  const char* low_together;   ///< of several placements: "peak too low"
  const char* high_together;  ///< "peak too high"
  const char* at_least;       ///< "peaks at {value} or more"
  bool level = false;         ///< zones set it, rather than being where it happens
};

struct BoardWords {
  const char* key;
  const char* noun;  ///< with its article at the start of a sentence: "The largest spread"
  const char* does;  ///< "is {value}"
  const char* at_least;
  const char* low;
  const char* high;
  bool level = false;
};

/// A cause or a fixed sentence by its key, for one and for more.
struct KeyWords {
  const char* key;
  const char* one;
  const char* more;  ///< null: as for one
};

/// The verdict sentence of one language: templates by id are put together from these and leave as whole sentences.
/// %1 to %4 are filled by each other; {fields} and [links:] stay, as in core/judge/phrases.h. Between ⟨ and ⟩ stands
/// what is said only where moments count on the log's clock.
struct SentenceWords {
  std::span<const PlacementWords> placements;
  std::span<const BoardWords> boards;
  std::span<const KeyWords> causes;  ///< keys of core/judge/english.cpp
  std::span<const KeyWords> cuts;    ///< "; the log ends before it cools"
  std::span<const KeyWords> fixed;
  std::span<const KeyWords> verdicts;  ///< "predicted_pass": of a run that is predicted
  std::span<const KeyWords> together;  ///< several placements as a subject, by who
  std::span<const KeyWords> none_of;   ///< the same where none of them does it
  std::array<const char*, 13> counts;  ///< "no" to "twelve"

  const char* verdict;          ///< %1 the word
  const char* verdict_assumed;  ///< with {window}
  const char* closest;          ///< %1 statement with U, %2 distance to the limit
  const char* tightest;
  const char* tight;
  const char* above_lower;
  const char* below_upper;
  const char* problem;           ///< %1 statement, %2 how far out
  const char* problem_within;    ///< with U
  const char* problem_at_least;  ///< %1 statement at least, %2 how far out
  const char* problem_together;  ///< %1 who, %2 what they do, %3 by how much
  const char* by_two;
  const char* by_up_to;
  const char* by_or_more;  ///< %1 by how much
  const char* within_their;
  const char* zones_set;
  const char* zones_in;
  const char* zones_set_within;
  const char* zones_in_within;
  const char* never_one;
  const char* never_more;  ///< %1 who
  const char* never_none;  ///< %1 none of whom
  const char* never_time;
  const char* never_both_one;
  const char* never_both_two;
  const char* never_both_more;
  const char* never_zones;
  const char* no_value;         ///< after never_*: the requirement has none
  const char* no_value_other;   ///< one placement, with {requirement} and {reason}
  const char* no_value_others;  ///< %1 who
  const char* no_value_board;   ///< %1 noun, %2 why
  const char* not_reached_by;   ///< %1 who
  const char* not_reached_any;
  KeyWords has_none, is_undetermined;          ///< of {n} requirements {k}
  KeyWords more_have_none, more_undetermined;  ///< {k} more
  const char* because;                         ///< %1 what has none, %2 cause
  const char* for_some;                        ///< %1 cause, {k}
  const char* once;                            ///< {value.times}
  const char* times;                           ///< %1 how many
  const char* stop;                            ///< what ends a sentence
  const char* zone;                            ///< %1 name
  const char* zones;                           ///< %1 names
  const char* and_;                            ///< between the last two of a list
  const char* comma;                           ///< between others
};

/// The words of a language's code; null for English, whose templates are core's.
const SentenceWords* sentenceWords(const QString& language);

extern const SentenceWords kGermanSentence, kSpanishSentence, kTaiwanSentence, kMainlandSentence;

/// The template of a sentence id; empty where the id is not known.
/// @param on_log  moments count on the log's clock and say so
QString sentenceTemplate(const SentenceWords& words, const QString& id, int count, bool on_log);

}  // namespace ovenwright::desktop
