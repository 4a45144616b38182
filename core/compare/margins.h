#pragma once
#include <span>

#include "core/compare/compare.h"

namespace ovenwright::compare {

/// The margins of two judged runs; the difference's uncertainty comes from the results that are nearest to a limit: of
/// one result in both as its own difference, else all terms of both.
Margins margins_of(const judge::Judgement& a, const judge::Judgement& b, bool same_thermocouples);

/// Which of two results has more margin, by the same rule; empty where neither has, or one has none.
std::optional<Side> more_margin(const judge::Outcome& a, const judge::Outcome& b, bool same_thermocouples);

/// The means of the runs' margins with the interval of Welch; absent where a run has none or only a bound.
Margins margins_of(std::span<const lot::Run> a, std::span<const lot::Run> b);

/// The same of margins that are at hand: means, and the smallest of each; nothing where a side has none.
Margins margins_of(std::span<const double> a, std::span<const double> b);

/// U of the difference of two values: only noise and sampling where they share the other errors. Absent where one has
/// no uncertainty.
std::optional<double> difference_uncertainty(const measure::Value& a, const measure::Value& b, bool shared_errors);

}  // namespace ovenwright::compare
