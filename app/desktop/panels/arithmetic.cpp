#include <QCoreApplication>

#include "app/desktop/panels/derivation_panel.h"
#include "app/desktop/widgets/wording.h"
#include "core/judge/decide.h"

namespace ovenwright::desktop {

QString marginArithmetic(const judge::Outcome& outcome, const Format& format) {
  const auto& value = outcome.value.value;
  const auto target = judge::effective_target(outcome.lower, outcome.upper, outcome.target, outcome.measure.measure);
  if (!value || !outcome.margin || !target) return {};
  const auto quantity = Format::quantity(outcome.measure.measure);
  const QString v = format.number(format.shown(*value, quantity), widgets::Wording::digits(outcome));
  const QString t = format.limit(*target, quantity);
  if (*value >= *target && outcome.upper) {
    const QString upper = format.limit(*outcome.upper, quantity);
    return QStringLiteral("(%1 − %2) ÷ (%1 − %3)").arg(upper, v, t);
  }
  if (*value < *target && outcome.lower) {
    const QString lower = format.limit(*outcome.lower, quantity);
    return QStringLiteral("(%1 − %2) ÷ (%3 − %2)").arg(v, lower, t);
  }
  return DerivationPanel::tr("no limit on this side of the target %1").arg(t);
}

QString decisionArithmetic(const judge::Outcome& outcome, window::DecisionRule rule, const Format& format) {
  const auto& value = outcome.value.value;
  if (!value || (!outcome.lower && !outcome.upper)) return {};
  // The limit that decides is the nearer one.
  double inside = 1e300;
  if (outcome.lower) inside = std::min(inside, *value - *outcome.lower);
  if (outcome.upper) inside = std::min(inside, *outcome.upper - *value);
  const QString verdict = widgets::Wording::verdict(outcome.verdict);
  const auto quantity = Format::quantity(outcome.measure.measure);
  const auto difference = Format::difference(quantity);
  const auto& uncertainty = outcome.value.expanded_uncertainty;
  if (rule == window::DecisionRule::kSimple || !uncertainty) {
    return inside >= 0 ? DerivationPanel::tr("inside: %1").arg(verdict)
                       : DerivationPanel::tr("outside: %1").arg(verdict);
  }
  // So many decimals that the larger of the two reads as the larger.
  const int digits = judge::digits_needed(std::abs(inside), widgets::Wording::digits(outcome), *uncertainty, {});
  const QString distance = format.distance(std::abs(inside), difference, digits);
  const QString w = format.distance(*uncertainty, difference, digits);
  const QString sign = std::abs(inside) > *uncertainty ? QStringLiteral(">") : QStringLiteral("≤");
  return QStringLiteral("%1 %2 %3: %4").arg(distance, sign, w, verdict);
}

}  // namespace ovenwright::desktop
