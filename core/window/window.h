#pragma once
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/board/board.h"
#include "core/files/identity.h"
#include "core/measure/definition.h"

namespace ovenwright::window {

enum class Process { kReflow, kWave };
enum class DecisionRule { kSimple, kGuarded };
enum class Classification { kLeadFree, kTinLead };  ///< "Pb-free", "SnPb": which J-STD-020 table gives Tc

/// A limit: a temperature written as Tc plus an offset ("Tc", "Tc-5"), or a number.
struct TcOffset {
  double offset_C = 0;
};
using Limit = std::variant<double, TcOffset>;

/// Which traces a requirement binds.
struct AppliesTo {
  enum class Kind { kAll, kJoint, kBody, kChannels, kBoard } kind = Kind::kAll;
  std::vector<std::string> channels;  ///< for kChannels
};

/// One requirement of a window. Its measure's `reference` may also be Tc, see measure::Parameters.
struct Requirement {
  std::string name;
  measure::Definition measure;
  std::optional<Limit> lower, upper, target;
  AppliesTo applies_to;
  std::optional<board::Side> side;
  bool required = true;
  std::string source, lower_source, upper_source;  ///< the side's own, else `source`
  int line = 0;                                    ///< of [[requirement]] in the file
};

struct UncertaintyBudget {
  std::string thermocouple = "K class 1";
  std::optional<double> tolerance_C;  ///< in place of the class
  double instrument_C = 1.0;          ///< half width
  bool defaulted = true;
};

/// window.toml of contracts.md; holding one means that every rule of measures.md for windows was checked.
struct ProcessWindow {
  files::Identity identity;
  Process process = Process::kReflow;
  std::optional<std::string> alloy;
  std::optional<double> liquidus_C, solidus_C;
  std::optional<Classification> classification;
  DecisionRule decision_rule = DecisionRule::kSimple;
  UncertaintyBudget uncertainty;
  std::vector<Requirement> requirements;
};

}  // namespace ovenwright::window
