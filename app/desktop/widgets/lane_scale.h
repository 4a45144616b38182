#pragma once
#include <QRectF>
#include <optional>

namespace ovenwright::widgets {

/// Where a value lies between its limits: s = −1 at the lower limit, 0 at the target, 1 at the upper limit, on straight
/// lines, so that margin = 1 − |s| on a side that has a limit. A side without limit takes the other side's scale.
class LaneScale {
 public:
  /// @param target  given, else the middle of two limits, else half of an upper limit that stands alone.
  /// Empty where there is no limit, or a lower limit alone without a target: no window file says so.
  /// A target on its limit (a count of at most 0) leaves no scale: there one unit is the width.
  static std::optional<LaneScale> make(std::optional<double> lower, std::optional<double> upper,
                                       std::optional<double> target);
  double position(double value) const;
  double target() const { return m_target; }

 private:
  LaneScale(double target, double below, double above) : m_target(target), m_below(below), m_above(above) {}
  double m_target;
  double m_below, m_above;  ///< width of one s under and over the target
};

/// Half the body in units of the distance from the target to a limit; what lies beyond is off the scale.
constexpr double kLaneReach = 1.62;

/// The x of a position s on a lane's body: the limits stand at the same two places in every lane.
struct LaneBody {
  qreal left = 0;
  qreal right = 0;
  qreal center() const { return (left + right) / 2; }
  qreal half() const { return (right - left) / (2 * kLaneReach); }
  qreal x(double s) const { return center() + half() * s; }
  qreal clampedX(double s) const { return qBound(left, x(s), right); }
};

}  // namespace ovenwright::widgets
