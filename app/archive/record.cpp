#include "app/archive/record.h"

namespace ovenwright::archive {

const char* runAtFromName(RunAtFrom from) {
  switch (from) {
    case RunAtFrom::kGiven:
      return "given";
    case RunAtFrom::kLogClock:
      return "log clock";
    case RunAtFrom::kFileTime:
      break;
  }
  return "file time";
}

RunTime runTime(const NewRun& run) {
  if (run.labels.runAt) return {*run.labels.runAt, RunAtFrom::kGiven};
  if (run.startedAt) return {*run.startedAt, RunAtFrom::kLogClock};
  return {run.fileTime, RunAtFrom::kFileTime};
}

}  // namespace ovenwright::archive
