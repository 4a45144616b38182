#pragma once
#include <optional>
#include <vector>

#include "core/measure/measure.h"

/// The measures once more, written down plainly from their definitions: every sample looked at, every window fitted
/// by itself, every perturbed trace made in full. Slow and short, to hold the product's shared and skipping code
/// against.
namespace ovenwright::measure::plain {

using Samples = std::vector<double>;

struct Trace {
  Samples t, T;
  double h = 0;  ///< median interval
};

struct Answer {
  std::optional<double> value;
  bool at_least = false;
  std::optional<NoValue> no_value;
  std::optional<double> from_s, to_s;
  std::optional<double> U;
};

Trace trace_of(const run::Channel& channel);

Answer answer(const Trace& trace, const Definition& definition, const Tolerance& tolerance, double instrument_C);
Answer board_answer(const std::vector<Trace>& traces, const Definition& definition,
                    const std::vector<Tolerance>& tolerances, double instrument_C);

}  // namespace ovenwright::measure::plain
