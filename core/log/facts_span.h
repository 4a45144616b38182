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

/// Nothing where neither a duration nor both ends are stated.
std::optional<StatedSpan> span_in(const std::vector<Statement>& statements);

/// The step between rows that fills a span: round where the span's whole seconds leave that open. Nothing where none
/// of 0.01 to 60 s does.
std::optional<double> step_of_span(double span_s, double rows);

}  // namespace ovenwright::log
