#pragma once
#include <optional>
#include <string>
#include <vector>

#include "core/log/table.h"

namespace ovenwright::log {

/// How long the log took, as the lines around the table say: a start and an end, or a duration.
struct StatedSpan {
  double seconds = 0;
  std::string text;  ///< the lines that say so
};

/// Nothing where neither a duration nor both ends are stated, each under a label that says no more than that.
std::optional<StatedSpan> span_in(const std::vector<Statement>& statements);

/// The round step between rows, of 0.01 to 10 s, that fills a span to within its whole seconds. Nothing where none
/// does, or more than one: the file may hold a part of what it speaks of.
std::optional<double> step_of_span(double span_s, double rows);

}  // namespace ovenwright::log
