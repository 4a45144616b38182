#pragma once
#include "core/judge/judgement.h"

namespace ovenwright::command {

/// What the program's exit status says; part of the contract with scripts.
enum class ExitStatus {
  kDone = 0,         ///< done, and in the window where there was something to judge
  kOut = 1,          ///< done, out of the window
  kUsage = 2,        ///< the command line could not be understood
  kUnreadable = 3,   ///< an input could not be read
  kUnwritable = 4,   ///< an output could not be written
  kUndetermined = 5  ///< the log does not show enough for a verdict
};

constexpr ExitStatus exit_status(judge::Verdict verdict) {
  switch (verdict) {
    case judge::Verdict::kPass:
    case judge::Verdict::kConditionalPass:
      return ExitStatus::kDone;
    case judge::Verdict::kUndetermined:
      return ExitStatus::kUndetermined;
    case judge::Verdict::kConditionalFail:
    case judge::Verdict::kFail:
      return ExitStatus::kOut;
  }
  return ExitStatus::kUndetermined;
}

}  // namespace ovenwright::command
