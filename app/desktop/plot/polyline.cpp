#include "app/desktop/plot/polyline.h"

#include <algorithm>
#include <cmath>

namespace ovenwright::desktop {
namespace {

constexpr double kOff_px = 0.25;  // a point nearer to the line through its neighbours cannot be seen

/// Takes points one by one and passes on only those that the picture needs: a cone from the last kept point holds all
/// points since; where the next one leaves it, the one before is kept (after Williams, 1978).
class Thinned {
 public:
  explicit Thinned(QPolygonF& out) : out_(out) {}

  void add(QPointF point) {
    if (out_.isEmpty()) {
      keep(point);
      return;
    }
    const QPointF step = point - out_.last();
    const double distance = std::hypot(step.x(), step.y());
    if (distance <= kOff_px && !has_candidate_) return;
    const double angle = std::atan2(step.y(), step.x());
    const double spread = distance > kOff_px ? std::asin(kOff_px / distance) : M_PI;
    if (!has_candidate_) {
      low_ = angle - spread;
      high_ = angle + spread;
    } else if (step.x() < furthest_.x() - out_.last().x() || angle < low_ || angle > high_ ||
               distance < std::hypot(furthest_.x() - out_.last().x(), furthest_.y() - out_.last().y()) - kOff_px) {
      keep(furthest_);
      add(point);
      return;
    } else {
      low_ = std::max(low_, angle - spread);
      high_ = std::min(high_, angle + spread);
    }
    furthest_ = point;
    has_candidate_ = true;
  }

  void finish() {
    if (has_candidate_) keep(furthest_);
  }

 private:
  void keep(QPointF point) {
    out_.append(point);
    has_candidate_ = false;
  }

  QPolygonF& out_;
  QPointF furthest_;
  bool has_candidate_ = false;
  double low_ = 0, high_ = 0;
};

/// The part of a segment inside a rectangle (Liang and Barsky, 1984); false where there is none.
bool clipped(QPointF& a, QPointF& b, const QRectF& clip) {
  const QPointF d = b - a;
  double from = 0, to = 1;
  const double p[4] = {-d.x(), d.x(), -d.y(), d.y()};
  const double q[4] = {a.x() - clip.left(), clip.right() - a.x(), a.y() - clip.top(), clip.bottom() - a.y()};
  for (int i = 0; i < 4; ++i) {
    if (p[i] == 0) {
      if (q[i] < 0) return false;
      continue;
    }
    const double r = q[i] / p[i];
    if (p[i] < 0) {
      from = std::max(from, r);
    } else {
      to = std::min(to, r);
    }
  }
  if (from > to) return false;
  if (to < 1) b = a + to * d;
  if (from > 0) a = a + from * d;
  return true;
}

std::vector<QPolygonF> clippedPieces(const QPolygonF& line, const QRectF& clip) {
  std::vector<QPolygonF> pieces;
  for (qsizetype i = 1; i < line.size(); ++i) {
    QPointF a = line[i - 1], b = line[i];
    if (!clipped(a, b, clip)) continue;
    if (pieces.empty() || pieces.back().last() != a) pieces.push_back(QPolygonF() << a);
    pieces.back() << b;
  }
  return pieces;
}

}  // namespace

std::vector<QPolygonF> visiblePolylines(std::span<const double> time_s, std::span<const double> temperature_C,
                                        const Pyramid& pyramid, const Mapping& mapping, const QRectF& clip) {
  const auto index = [&](double px) {
    return std::size_t(std::ranges::lower_bound(time_s, mapping.time_s(px)) - time_s.begin());
  };
  std::size_t first = index(clip.left()), last = index(clip.right());
  first -= first > 0;
  last = std::min(last + 1, time_s.size());
  if (last < first + 2) return {};

  const auto point = [&](std::size_t i) { return QPointF(mapping.x(time_s[i]), mapping.y(temperature_C[i])); };
  QPolygonF line;
  Thinned thinned(line);
  const int columns = int(std::ceil(clip.width()));
  if (last - first <= 2 * std::size_t(columns)) {
    for (std::size_t i = first; i < last; ++i) thinned.add(point(i));
  } else {
    thinned.add(point(first));
    for (int column = 0; column < columns; ++column) {
      const std::size_t from = std::max(first, index(clip.left() + column));
      const std::size_t to = std::min(last, index(clip.left() + column + 1));
      if (from >= to) continue;
      const auto [lowest, highest] = pyramid.extremes(temperature_C, from, to);
      const double x = clip.left() + column + 0.5;
      const double bottom = mapping.y(lowest), top = mapping.y(highest);
      if (bottom - top <= 0.5) {
        thinned.add({x, (bottom + top) / 2});
        continue;
      }
      const bool falling = temperature_C[from] > temperature_C[to - 1];
      thinned.add({x, falling ? top : bottom});
      thinned.add({x, falling ? bottom : top});
    }
    thinned.add(point(last - 1));
  }
  thinned.finish();
  return clippedPieces(line, clip);
}

}  // namespace ovenwright::desktop
