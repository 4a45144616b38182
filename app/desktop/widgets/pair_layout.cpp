#include <algorithm>
#include <cmath>

#include "app/desktop/widgets/glyphs.h"
#include "app/desktop/widgets/lanes_layout.h"
#include "app/desktop/widgets/wording.h"

// The columns of lanes that compare two runs.
namespace ovenwright::widgets {

void LanesLayout::placePairColumns(qreal width) {
  const auto px = [this](qreal design) { return m_theme.px(design); };
  const QFontMetricsF body(m_theme.bodyFont()), bold(m_theme.bodyFont(true)), small(m_theme.font(11));
  qreal titles = 0, bareTitles = 0, lower = 0, upper = 0, names = 0, margins = px(40), values = 0, units = 0;
  qreal counts = 0;
  qreal more = std::max(small.horizontalAdvance(Wording::tr("more margin")), px(30));
  for (const Lane& lane : m_table.lanes) {
    bareTitles = std::max(bareTitles, bold.horizontalAdvance(lane.title));
    titles = std::max(titles, bold.horizontalAdvance(lane.title) +
                                  (lane.note.isEmpty() ? 0 : px(8) + small.horizontalAdvance(lane.note)));
    lower = std::max(lower, body.horizontalAdvance(lane.lower));
    upper = std::max(upper, body.horizontalAdvance(lane.upper));
    const auto name = [&](const std::optional<std::size_t>& mark) {
      if (mark) names = std::max(names, bold.horizontalAdvance(lane.marks[*mark].place));
    };
    for (const auto& worst : lane.pair.worst) {
      name(worst.mark);
      margins = std::max(margins, bold.horizontalAdvance(worst.margin));
    }
    name(lane.pair.change);
    qreal value = body.horizontalAdvance(lane.pair.difference);
    if (!lane.pair.uncertainty.isEmpty())
      value += body.horizontalAdvance(QStringLiteral(" ± ") + lane.pair.uncertainty);
    values = std::max(values, value);
    units = std::max(units, small.horizontalAdvance(lane.pair.unit));
    counts = std::max(counts, small.horizontalAdvance(lane.pair.counts) + px(10));
    more = std::max(more, bold.horizontalAdvance(lane.pair.more));
  }
  margins = std::min(margins, px(110));
  const qreal lowerWidth = std::max(px(46), lower + px(14)) + px(16);  // with the letters of the sides
  const qreal upperWidth = std::max(px(46), upper + px(14));
  const qreal sign = px(15 * kSignAspect), gap = px(6), inset = px(16), apart = px(14), marker = px(14);
  const qreal leastBody = px(230);
  const qreal worstFixed = sign + gap + marker + gap + margins + apart;
  const qreal changeFixed = marker + gap + values + px(4) + units + (m_table.groups ? counts : 0) + apart;
  const qreal fixed = inset + lowerWidth + upperWidth + 2 * worstFixed + changeFixed + more + px(12);
  const qreal natural = std::max(px(170), titles);
  qreal title = natural, name = names, changed = names;
  const auto bodyNow = [&] { return width - fixed - title - 2 * name - changed; };
  const auto give = [&](qreal& column, qreal least, int count) {
    const qreal missing = (leastBody - bodyNow()) / count;
    if (missing > 0 && column > least) column = std::max(least, column - missing);
  };
  // Room is found in this order: titles to their design width and then some, the name of what changed most, names. The
  // marker says which.
  give(title, px(170), 1);
  give(title, std::min(px(170), std::max(px(120), bareTitles)), 1);
  give(changed, 0, 1);
  if (changed < px(40)) changed = 0;
  give(name, std::min(names, px(50)), 2);
  give(title, px(110), 1);
  give(name, 0, 2);
  if (name < px(44)) name = 0;
  give(title, px(80), 1);
  // What is left over is the titles' again.
  title = std::min(natural, title + std::max(0.0, bodyNow() - leastBody));

  LaneColumns& c = m_columns;
  c.left = 0;
  c.right = width;
  c.titleLeft = inset;
  c.titleRight = inset + title;
  c.lowerRight = c.titleRight + lowerWidth - px(22);
  c.body.left = std::round(c.titleRight + lowerWidth);
  c.marginRight = width - px(12);
  const qreal summary = 2 * worstFixed + changeFixed + 2 * name + changed + more + px(12);
  c.body.right = std::round(std::max(c.body.left + 1, width - summary - upperWidth));
  c.upperLeft = c.body.right + px(7);
  c.signLeft = c.body.right + upperWidth;
  qreal x = c.signLeft;
  for (LaneColumns::Worst& worst : c.pair.worst) {
    worst.signLeft = x;
    worst.markerCenter = x + sign + gap + marker / 2;
    worst.nameLeft = worst.markerCenter + marker / 2 + px(2);
    worst.nameRight = worst.nameLeft + name;
    worst.marginRight = x + worstFixed + name - apart;
    x += worstFixed + name;
  }
  c.pair.changeLeft = x;
  c.pair.markerCenter = x + marker / 2;
  c.pair.nameLeft = x + marker + px(2);
  c.pair.nameRight = c.pair.nameLeft + changed;
  c.pair.valueRight = c.pair.nameRight + gap + values;
  c.pair.unitLeft = c.pair.valueRight + px(4);
  c.pair.countsRight = c.pair.unitLeft + units + counts;
  c.pair.moreLeft = c.marginRight - more;
}

}  // namespace ovenwright::widgets
