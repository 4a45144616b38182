#include "app/desktop/widgets/lane_scale.h"

namespace ovenwright::widgets {

std::optional<LaneScale> LaneScale::make(std::optional<double> lower, std::optional<double> upper,
                                         std::optional<double> target) {
  if (!target && lower && upper) target = (*lower + *upper) / 2;
  if (!target && upper) target = *upper / 2;
  if (!target || (!lower && !upper)) return std::nullopt;
  double below = lower ? *target - *lower : *upper - *target;
  double above = upper ? *upper - *target : *target - *lower;
  if (!(below > 0)) below = 1;
  if (!(above > 0)) above = 1;
  return LaneScale(*target, below, above);
}

double LaneScale::position(double value) const { return (value - m_target) / (value >= m_target ? m_above : m_below); }

}  // namespace ovenwright::widgets
