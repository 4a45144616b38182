#pragma once
#include <QPointer>
#include <optional>

#include "app/desktop/document/check_job.h"

namespace ovenwright::desktop {

/// What a log is judged with and, once it is known, the result: an edit replaces the one, a job brings the other.
struct LogState {
  check::Request setup;
  std::shared_ptr<const Checked> checked;  ///< the result for `setup`; null: not known yet
};

/// A log that is open in the document. Views read it, only the document changes it.
struct OpenLog {
  Source source;
  int number = 0;  ///< in the order of opening
  check::Request setup;
  std::shared_ptr<const Checked> checked;  ///< the last result; stands while a new one is worked out
  std::optional<Error> error;              ///< why the setup as it is now has no result
  std::size_t run = 0;                     ///< which pass of the log is looked at
  bool settled = false;                    ///< `checked` is the result for `setup`
  QPointer<CheckJob> job;

  /// The run that is looked at, holding its log alive; null before the first result.
  std::shared_ptr<const RunView> view() const {
    if (!checked || run >= checked->views.size()) return nullptr;
    return {checked, &checked->views[run]};
  }
};

}  // namespace ovenwright::desktop
