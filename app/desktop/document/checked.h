#pragma once
#include <QByteArray>
#include <QString>
#include <memory>
#include <vector>

#include "app/desktop/document/run_view.h"
#include "core/check/check.h"

namespace ovenwright::desktop {

/// Where a log came from: a file, or text that was pasted.
struct Source {
  QString path;  ///< empty for pasted text
  QByteArray pasted;
  QString name;  ///< for people: the file's name, "pasted text"
};

/// A log that was read and judged, with what drawing it needs. Made off the GUI thread, never changed afterwards.
struct Checked {
  std::shared_ptr<const log::Reading> reading;  ///< with its raw channels
  check::CheckedLog log;
  std::vector<RunView> views;  ///< by run
  int elapsed_ms = 0;
};

}  // namespace ovenwright::desktop
