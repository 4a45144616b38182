#pragma once
#include <QString>
#include <memory>
#include <optional>
#include <string>

#include "app/archive/record.h"
#include "core/judge/judgement.h"
#include "core/measure/definition.h"

namespace ovenwright::desktop {

/// What a row shows only once it is seen: it takes the record's report.
struct RunDetails {
  int runOfLot = 0;  ///< from 1, in order of time, new judgements not counted; 0: in no lot
  std::string recipeRevision;
  std::string requirement, trace;  ///< of the smallest margin, or of what has no value; empty: of neither
  measure::Measure measure = measure::Measure::kPeak;
  std::optional<double> value;
  bool at_least = false;
};

/// A run as it stands in the list. Texts are shared between rows, so that a list of 100 000 stays small.
struct RunRow {
  std::string id;
  archive::Moment runAt{};
  archive::RunAtFrom runAtFrom = archive::RunAtFrom::kFileTime;
  QString lot, board, window, windowRevision, recipe, oven;
  judge::Verdict verdict = judge::Verdict::kUndetermined;
  std::optional<double> margin;
  std::optional<archive::Moment> printedAt;
  std::unique_ptr<const RunDetails> details;  ///< null: not seen yet
};

}  // namespace ovenwright::desktop
