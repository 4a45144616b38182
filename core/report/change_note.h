#pragma once
#include <span>
#include <string>
#include <vector>

#include "core/heat/identify.h"
#include "core/judge/judgement.h"
#include "core/oven/oven.h"
#include "core/tune/forecast.h"
#include "core/tune/learn.h"

namespace ovenwright::report {

/// A measured run that the model was learned from, as a note names it.
struct NoteRun {
  std::string log, sha256;  ///< the raw log, and the digest of its bytes
  int part = 1, parts = 1;  ///< which pass of how many the log holds
  std::string recipe;
  std::string board;  ///< may be empty
};

/// What is to be changed on an oven, and what it rests on. Pointers and spans are not owned.
struct ChangeNote {
  const oven::Oven* oven = nullptr;
  const oven::Recipe* from = nullptr;          ///< that ran
  const oven::Recipe* to = nullptr;            ///< to be set; it may equal `from`
  std::string reason;                          ///< a suggestion's sentence; empty for a recipe set by hand
  std::span<const tune::Forecast> predicted;   ///< what `to` is predicted to do, with its band, one for each board
  std::vector<std::string> boards;             ///< their names in the same order; may be empty
  const judge::Judgement* measured = nullptr;  ///< what `from` was measured to do; may be null
  std::vector<NoteRun> learned_from;
  const heat::FitReport* fit = nullptr;  ///< may be null
  bool sides_untold = false;             ///< `to` parts top and bottom, which none of the runs learned from did
};

/// The note to carry to the oven, as plain text of at most 96 columns: what changes by zone, side and speed, the whole
/// recipe, the measured and the predicted verdict with margin, uncertainty and probability, the runs it was learned
/// from by digest, cautions, and lines to confirm it by an instrumented run and to sign. A recipe that is not predicted
/// to pass, or not sure to, says so first. Names from files are printed as text: their control characters become
/// blanks.
std::string change_note_text(const ChangeNote& note);

/// The runs that a model was learned from.
std::vector<NoteRun> note_runs(const tune::Learned& learned);

}  // namespace ovenwright::report
