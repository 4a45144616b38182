#include "core/compare/sentence.h"

#include <fmt/format.h>

#include <cmath>

#include "core/judge/decide.h"

namespace ovenwright::compare {
namespace {

std::string margin_text(double margin, judge::MarginBound bound) {
  const char* word = bound == judge::MarginBound::kAtMost    ? "at most "
                     : bound == judge::MarginBound::kAtLeast ? "at least "
                                                             : "";
  return word + judge::number_text(100 * margin, 0, 0.0) + " %";
}

std::string margin_part(const Comparison& comparison) {
  const auto& m = comparison.margins;
  if (!m.a || !m.b) {
    const char* who = !m.a && !m.b ? "Neither A nor B has" : !m.a ? "A has" : "B has";
    return fmt::format("{} {} margin to compare.", who, !m.a && !m.b ? "a" : "no");
  }
  const std::string a = margin_text(*m.a, m.a_bound), b = margin_text(*m.b, m.b_bound);
  const char* mean = comparison.of_groups ? ", means of their runs" : "";
  if (m.more) {
    const bool more_b = *m.more == Side::kB;
    return fmt::format("{} has more margin: {} against {}{}.", more_b ? "B" : "A", more_b ? b : a, more_b ? a : b,
                       mean);
  }
  if (comparison.of_groups && !m.expanded_uncertainty)
    return fmt::format("A has a margin of {}, B of {}{}; an interval needs two runs on each side.", a, b, mean);
  return fmt::format("The margins do not differ by more than their uncertainty: A {}, B {}{}.", a, b, mean);
}

/// The significant difference that is the most times its uncertainty; null without any.
const Difference* clearest(const Comparison& comparison) {
  const Difference* best = nullptr;
  // Products, not quotients: an uncertainty may be 0.
  const auto clearer = [](const Difference& x, const Difference& y) {
    return std::abs(*x.difference) * *y.expanded_uncertainty > std::abs(*y.difference) * *x.expanded_uncertainty;
  };
  for (const auto& result : comparison.results)
    if (result.significant.value_or(false) && (best == nullptr || clearer(result, *best))) best = &result;
  return best;
}

std::string results_part(const Comparison& comparison) {
  std::size_t known = 0, significant = 0;
  for (const auto& result : comparison.results) {
    known += result.significant ? 1 : 0;
    significant += result.significant.value_or(false) ? 1 : 0;
  }
  if (known == 0) return " No result can be compared.";
  const auto* most = clearest(comparison);
  if (most == nullptr) return fmt::format(" None of {} results differs by more than its uncertainty.", known);
  const int digits = judge::usual_digits(most->measure);
  const std::string by = judge::number_text(*most->difference, digits);
  return fmt::format(" {} of {} results {} by more than {} uncertainty, most clearly {}: {} to {} {} ({}{} ± {}).",
                     significant, known, significant == 1 ? "differs" : "differ", significant == 1 ? "its" : "their",
                     subject_of(*most), judge::number_text(*most->a, digits, most->lower, most->upper),
                     judge::number_text(*most->b, digits, most->lower, most->upper), unit_symbol(most->unit),
                     *most->difference > 0 ? "+" : "", by, judge::number_text(*most->expanded_uncertainty, digits + 1));
}

std::string speed_part(const Comparison& comparison) {
  if (!comparison.speed_a_mm_per_min || !comparison.speed_b_mm_per_min) return {};
  const double a = *comparison.speed_a_mm_per_min, b = *comparison.speed_b_mm_per_min;
  if (!comparison.faster) return fmt::format(" Both run at {} mm/min.", a);
  const bool faster_b = *comparison.faster == Side::kB;
  return fmt::format(" {} is faster: {} against {} mm/min.", faster_b ? "B" : "A", faster_b ? b : a, faster_b ? a : b);
}

}  // namespace

std::string sentence_of(const Comparison& comparison) {
  return margin_part(comparison) + results_part(comparison) + speed_part(comparison);
}

}  // namespace ovenwright::compare
