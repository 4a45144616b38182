#pragma once
#include <QString>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "app/desktop/compare/compared.h"
#include "app/desktop/document/open_log.h"

namespace ovenwright::desktop {

/// A run that is compared: of a log that is open.
struct CompareSubject {
  std::shared_ptr<OpenLog> log;
  std::size_t run = 0;
  bool operator==(const CompareSubject&) const = default;
};

enum class CompareCurves { kSideBySide, kOverlaid };

/// One of the two that are compared: a run, or a group of several.
using CompareSubjects = std::vector<CompareSubject>;

/// Of more runs curves and ticks do not tell anything any more.
inline constexpr std::size_t kMostCompared = 60;

/// What a person chooses in Compare; undo goes from one to another.
struct CompareChoice {
  CompareSubjects a, b;                        ///< empty: the runs that are open, in their order
  std::vector<window::ProcessWindow> windows;  ///< both are judged against; empty: those that A was judged against
  std::optional<double> align_C;               ///< the level to line up at; absent: the oven entry
  CompareCurves curves = CompareCurves::kSideBySide;
};

/// The same files; windows that were edited here and have none are never taken for the same.
bool sameWindows(const std::vector<window::ProcessWindow>& a, const std::vector<window::ProcessWindow>& b);

/// What a comparison is made from.
struct CompareInput {
  struct Run {
    std::shared_ptr<const Checked> log;
    std::size_t run = 0;  ///< index into log->views
    std::shared_ptr<const check::Request> request;
  };
  std::vector<Run> a, b;                       ///< as they were judged
  std::vector<window::ProcessWindow> windows;  ///< one judged against others is judged anew against these
  bool windowAssumed = false;
  std::optional<double> align_C;
  bool operator==(const CompareInput& other) const;  ///< whether it would come to the same
};

/// A comparison with the judged logs that it is of.
struct ComparedLogs : Compared {
  std::vector<CompareInput::Run> from[2];
};

/// Errors: those of check::check, of a run that has to be judged anew.
Result<std::shared_ptr<const ComparedLogs>> compareNow(CompareInput input);

}  // namespace ovenwright::desktop
