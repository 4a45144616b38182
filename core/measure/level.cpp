#include "core/measure/level.h"

namespace ovenwright::measure {
namespace {

constexpr double kInfinity = std::numeric_limits<double>::infinity();
constexpr double kParts_C = 2;        // excursions: how far under the level parts two of them
constexpr double kShortest_s = 1;     // excursions: longer than this above the level
constexpr double kRounding_s = 1e-9;  // of sums of times

/// Walks a stretch block by block: `block(b)` is asked first for each block that lies wholly inside and returns
/// whether it dealt with it; the segments (i, i + 1) of all others go to `segment(i)`.
template <class Block, class Segment>
void walk(const Curve& curve, Stretch stretch, Block&& block, Segment&& segment) {
  const auto& blocks = curve.blocks();
  for (std::size_t i = stretch.first; i < stretch.last;) {
    const std::size_t b = blocks.block_of(i);
    const std::size_t end = std::min(blocks.end(b), stretch.last);
    const bool inside = i == blocks.begin(b) && end == blocks.end(b);
    if (!inside || !block(b))
      for (; i < end; ++i) segment(i);
    i = end;
  }
}

/// Adds pieces in order of time.
class Sum {
 public:
  void add(double from_s, double to_s) {
    if (!(to_s > from_s)) return;
    if (sum_.total_s == 0) sum_.from_s = from_s;
    sum_.total_s += to_s - from_s;
    sum_.to_s = to_s;
  }
  const Duration& result() const { return sum_; }

 private:
  Duration sum_;
};

/// Where the segment from (t0, off0) to (t1, off1) crosses zero; the signs must differ, or one be zero.
double crossing_s(double t0, double off0, double t1, double off1) { return t0 + (t1 - t0) * (off0 / (off0 - off1)); }

bool block_above(const Curve& curve, std::size_t block, double level_C) {
  return above_by(curve.block_lowest_C(block), level_C) > 0;
}
bool block_not_above(const Curve& curve, std::size_t block, double level_C) {
  return above_by(curve.block_highest_C(block), level_C) <= 0;
}

/// The piece of segment i with T > level (or >= where `or_on`), as [from, to]; empty where to <= from.
struct Piece {
  double from_s, to_s;
};
Piece piece_above(const Curve& curve, std::size_t i, double level_C, bool or_on = false) {
  const double t0 = curve.time_s(i), t1 = curve.time_s(i + 1);
  const double off0 = above_by(curve.at(i), level_C), off1 = above_by(curve.at(i + 1), level_C);
  if (off0 >= 0 && off1 >= 0) return {t0, off0 > 0 || off1 > 0 || or_on ? t1 : t0};
  if (off0 <= 0 && off1 <= 0) return {t0, t0};
  const double crossing = crossing_s(t0, off0, t1, off1);
  return off0 > 0 ? Piece{t0, crossing} : Piece{crossing, t1};
}

}  // namespace

Duration time_above(const Curve& curve, Stretch stretch, double level_C) {
  Sum sum;
  walk(
      curve, stretch,
      [&](std::size_t b) {
        if (block_above(curve, b, level_C)) {
          sum.add(curve.time_s(curve.blocks().begin(b)), curve.time_s(curve.blocks().end(b)));
          return true;
        }
        return block_not_above(curve, b, level_C);
      },
      [&](std::size_t i) {
        const auto piece = piece_above(curve, i, level_C);
        sum.add(piece.from_s, piece.to_s);
      });
  return sum.result();
}

Duration time_at_or_above(const Curve& curve, Stretch stretch, double level_C) {
  Sum sum;
  walk(
      curve, stretch,
      [&](std::size_t b) {
        if (above_by(curve.block_lowest_C(b), level_C) >= 0) {
          sum.add(curve.time_s(curve.blocks().begin(b)), curve.time_s(curve.blocks().end(b)));
          return true;
        }
        return above_by(curve.block_highest_C(b), level_C) < 0;
      },
      [&](std::size_t i) {
        const auto piece = piece_above(curve, i, level_C, true);
        sum.add(piece.from_s, piece.to_s);
      });
  return sum.result();
}

Duration time_between(const Curve& curve, Stretch stretch, double lower_C, double upper_C) {
  if (upper_C == kInfinity) return time_above(curve, stretch, lower_C);
  if (upper_C <= lower_C) return {};
  Sum sum;
  walk(
      curve, stretch,
      [&](std::size_t b) {
        if (block_above(curve, b, lower_C) && block_not_above(curve, b, upper_C)) {
          sum.add(curve.time_s(curve.blocks().begin(b)), curve.time_s(curve.blocks().end(b)));
          return true;
        }
        return block_not_above(curve, b, lower_C) || block_above(curve, b, upper_C);
      },
      [&](std::size_t i) {
        // Above the lower level, less above the upper one: what is left lies before or after the upper piece.
        const auto outer = piece_above(curve, i, lower_C);
        const auto inner = piece_above(curve, i, upper_C);
        if (!(inner.to_s > inner.from_s)) {
          sum.add(outer.from_s, outer.to_s);
        } else {
          sum.add(outer.from_s, inner.from_s);
          sum.add(inner.to_s, outer.to_s);
        }
      });
  return sum.result();
}

double area_above(const Curve& curve, Stretch stretch, double level_C) {
  double area = 0;
  walk(
      curve, stretch, [&](std::size_t b) { return block_not_above(curve, b, level_C); },
      [&](std::size_t i) {
        const double interval_s = curve.time_s(i + 1) - curve.time_s(i);
        const double off0 = above_by(curve.at(i), level_C), off1 = above_by(curve.at(i + 1), level_C);
        const double highest = std::max(off0, off1), lowest = std::min(off0, off1);
        if (lowest >= 0) {
          area += interval_s * (off0 + off1) / 2;
        } else if (highest > 0) {
          area += interval_s * highest * highest / (highest - lowest) / 2;
        }
      });
  return area;
}

std::optional<double> first_upward_crossing_s(const Curve& curve, Stretch stretch, double level_C) {
  const auto& blocks = curve.blocks();
  for (std::size_t i = stretch.first; i < stretch.last;) {
    const std::size_t b = blocks.block_of(i);
    const std::size_t end = std::min(blocks.end(b), stretch.last);
    if (!block_above(curve, b, level_C) && !block_not_above(curve, b, level_C))
      for (; i < end; ++i) {
        const double off0 = above_by(curve.at(i), level_C), off1 = above_by(curve.at(i + 1), level_C);
        if (off0 <= 0 && off1 > 0) return crossing_s(curve.time_s(i), off0, curve.time_s(i + 1), off1);
      }
    i = end;
  }
  return std::nullopt;
}

std::optional<double> last_upward_crossing_s(const Curve& curve, Stretch stretch, double level_C) {
  const auto& blocks = curve.blocks();
  for (std::size_t i = stretch.last; i > stretch.first;) {  // segments end at sample i, going back
    const std::size_t b = blocks.block_of(i - 1);
    const std::size_t begin = std::max(blocks.begin(b), stretch.first);
    if (!block_above(curve, b, level_C) && !block_not_above(curve, b, level_C))
      for (; i > begin; --i) {
        const double off0 = above_by(curve.at(i - 1), level_C), off1 = above_by(curve.at(i), level_C);
        if (off0 <= 0 && off1 > 0) return crossing_s(curve.time_s(i - 1), off0, curve.time_s(i), off1);
      }
    i = begin;
  }
  return std::nullopt;
}

std::optional<double> last_at_or_above_s(const Curve& curve, Stretch stretch, double level_C) {
  if (above_by(curve.at(stretch.last), level_C) >= 0) return curve.time_s(stretch.last);
  const auto& blocks = curve.blocks();
  for (std::size_t i = stretch.last; i > stretch.first;) {
    const std::size_t b = blocks.block_of(i - 1);
    const std::size_t begin = std::max(blocks.begin(b), stretch.first);
    if (above_by(curve.block_highest_C(b), level_C) >= 0)
      for (; i > begin; --i) {
        const double off0 = above_by(curve.at(i - 1), level_C), off1 = above_by(curve.at(i), level_C);
        if (off0 >= 0) return crossing_s(curve.time_s(i - 1), off0, curve.time_s(i), off1);
      }
    i = begin;
  }
  return std::nullopt;
}

Excursions excursions(const Curve& curve, double level_C) {
  Excursions found;
  Sum above;
  const auto part = [&](double temperature_C) {
    if (above_by(temperature_C, level_C - kParts_C) > 0) return;
    const Duration& one = above.result();
    if (one.total_s > kShortest_s + kRounding_s) {
      if (found.count++ == 0) found.from_s = one.from_s;
      found.to_s = one.to_s;
    }
    above = {};
  };
  walk(
      curve, whole(curve),
      [&](std::size_t b) {
        if (block_above(curve, b, level_C)) {
          above.add(curve.time_s(curve.blocks().begin(b)), curve.time_s(curve.blocks().end(b)));
          return true;
        }
        if (!block_not_above(curve, b, level_C)) return false;
        part(curve.block_lowest_C(b));
        return true;
      },
      [&](std::size_t i) {
        const auto piece = piece_above(curve, i, level_C);
        above.add(piece.from_s, piece.to_s);
        part(curve.at(i + 1));
      });
  part(-kInfinity);
  return found;
}

}  // namespace ovenwright::measure
