#include "app/desktop/widgets/zone_strip_painter.h"

#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "app/desktop/widgets/glyphs.h"
#include "app/desktop/widgets/wording.h"

namespace ovenwright::widgets {
namespace {

/// Grey by the setpoint: 4 % of the text's colour at 120 °C, 14 % at 270 °C.
qreal tint(double setpoint_C) { return std::clamp(0.04 + 0.10 * (setpoint_C - 120) / 150, 0.02, 0.16); }

constexpr qreal kCoolingTint = 0.08;  // of the accent

QStringList rowNames(const ZoneTable& table) {
  const QString zone = Wording::tr("Zone");
  QStringList names{table.against && !table.against->side.isEmpty() ? table.against->side + QStringLiteral(": ") + zone
                                                                    : zone};
  if (table.together())
    names << Wording::tr("Set, %1", "setpoints, with their unit")
                 .arg(table.format.unit(desktop::Format::Quantity::kTemperature));
  else
    names << Wording::tr("Top") << Wording::tr("Bottom");
  if (table.against && table.against->framed) names << QStringLiteral("B − A");
  return names;
}

/// A difference of setpoints with its sign, as short as it can be.
QString changeText(double change_C, const desktop::Format& format) {
  const QString text = format.limit(change_C, desktop::Format::Quantity::kDifference);
  return change_C > 0 ? u'+' + text : text;
}

class StripPainter {
 public:
  StripPainter(QPainter& painter, const ZoneTable& table, const Theme& theme, const ZoneStripState& state,
               const ZoneStripLayout& layout)
      : m_painter(painter), m_table(table), m_theme(theme), m_state(state), m_layout(layout) {}

  void paintRowNames(const QRectF& area) {
    const QStringList names = rowNames(m_table);
    m_painter.setPen(m_theme.secondary);
    const qreal right = m_layout.axisRect().left() - m_theme.px(8);
    for (int row = 0; row < names.size(); ++row)
      text(QRectF(area.left() + m_theme.px(2), m_layout.rowTop(row), right - area.left() - m_theme.px(2),
                  m_layout.rowHeight()),
           Qt::AlignRight, names[row], m_theme.font(12));
  }

  void paintNote(const QRectF& area) {
    const qreal left = m_layout.axisRect().right() + m_theme.px(9);
    if (m_table.against) return paintSpeed(left, area.right() - m_theme.px(4));
    m_painter.setPen(m_theme.secondary);
    const QStringList lines = stripNote(m_table);
    for (int row = 0; row < lines.size(); ++row)
      text(QRectF(left, m_layout.rowTop(row), area.right() - left - m_theme.px(4), m_layout.rowHeight()), Qt::AlignLeft,
           lines[row], m_theme.font(12));
  }

  void paintCell(std::size_t index) {
    const ZoneCell& zone = m_table.cells[index];
    const QRectF cell = m_layout.cell(index);
    if (cell.isEmpty()) return;
    paintName(index);
    const auto look = [&](const std::optional<double>& change) {
      const bool marked = m_table.against && m_table.against->marked;
      if (change && (marked || m_table.against->framed)) return Look::kChanged;
      return zone.hatched ? Look::kHatched : Look::kPlain;
    };
    if (zone.cooling) {
      paintField(m_layout.topRect(index), zone.top_C, look(zone.topChange_C),
                 m_theme.tinted(m_theme.accent, kCoolingTint));
    } else {
      const auto ground = [&](const std::optional<double>& setpoint) {
        return m_theme.tinted(m_theme.text, tint(setpoint.value_or(120)));
      };
      paintField(m_layout.topRect(index), zone.top_C, look(zone.topChange_C), ground(zone.top_C));
      if (!m_table.together())
        paintField(m_layout.bottomRect(index), zone.bottom_C, look(zone.bottomChange_C), ground(zone.bottom_C));
    }
    if (m_table.against && m_table.against->framed) paintChange(index);
    if (m_state.hovered == index) paintHover(cell);
    const bool current = m_state.focused && m_state.current == index;
    if (current) paintFocusFrame(m_painter, cell.adjusted(-m_theme.px(1), 0, m_theme.px(1), m_theme.px(1)), m_theme);
  }

 private:
  void paintHover(const QRectF& cell) {
    m_painter.save();
    QPen pen(m_theme.secondary, m_theme.line(1));
    pen.setJoinStyle(Qt::MiterJoin);
    m_painter.setPen(pen);
    m_painter.setBrush(Qt::NoBrush);
    const qreal half = pen.widthF() / 2;
    m_painter.drawRect(
        QRectF(QPointF(cell.left(), m_layout.rowTop(1)), cell.bottomRight()).adjusted(half, half, -half, -half));
    m_painter.restore();
  }

  void paintName(std::size_t index) {
    const ZoneCell& zone = m_table.cells[index];
    const QRectF rect = m_layout.nameRect(index);
    const QFont font = m_theme.font(12, true);
    const qreal disc = m_theme.px(14);
    const qreal gap = m_theme.px(3);
    const qreal width = QFontMetricsF(font).horizontalAdvance(zone.name);
    qreal discs = double(zone.discs.size()) * (disc + gap);
    const bool roomForDiscs = width + discs <= m_layout.cell(index).width() + m_theme.px(4);
    if (!roomForDiscs) discs = 0;
    m_painter.setPen(m_theme.text);
    if (width > rect.width() + m_theme.px(6)) return;
    const qreal left = rect.center().x() - (width + discs) / 2;
    text(QRectF(left, rect.top(), width + 1, rect.height()), Qt::AlignLeft, zone.name, font);
    if (!roomForDiscs) return;
    qreal x = left + width + gap + disc / 2;
    for (const int number : zone.discs) {
      paintDisc(m_painter, QPointF(x, rect.center().y()), disc, number, m_theme);
      x += disc + gap;
    }
  }

  enum class Look { kPlain, kHatched, kChanged };

  /// What the recipe that this one is held against has less; both sides where they differ.
  void paintChange(std::size_t index) {
    const ZoneCell& zone = m_table.cells[index];
    if (!zone.changed()) return;
    const auto shown = [&](const std::optional<double>& change) {
      return change ? changeText(*change, m_table.format) : QStringLiteral("0");
    };
    const bool split = !zone.cooling && zone.topChange_C != zone.bottomChange_C;
    const QString what =
        split ? shown(zone.topChange_C) + QStringLiteral(" / ") + shown(zone.bottomChange_C) : shown(zone.topChange_C);
    const QRectF rect = m_layout.changeRect(index);
    const auto widthIn = [&](const QFont& in) { return QFontMetricsF(in).horizontalAdvance(what); };
    const qreal room = rect.width() + m_theme.px(2);
    QFont font = m_theme.font(12, true);
    for (const int px : {11, 10, 9, 8})
      if (widthIn(font) > room) font = m_theme.font(px, true);
    if (widthIn(font) > room) return;  // the tool tip has it
    m_painter.setPen(m_theme.accent);
    text(rect.adjusted(-m_theme.px(4), 0, m_theme.px(4), 0), Qt::AlignHCenter, what, font);
  }

  void paintSpeed(qreal left, qreal right) {
    const auto line = [&](int row) { return QRectF(left, m_layout.rowTop(row), right - left, m_layout.rowHeight()); };
    m_painter.setPen(m_theme.text);
    text(line(1), Qt::AlignLeft, m_table.format.speed(m_table.speed_mm_per_min), m_theme.font(12, true));
    if (!m_table.against->speedChange_mm_per_min) return;
    const double change = m_table.format.shownSpeed(*m_table.against->speedChange_mm_per_min);
    const int digits = m_table.format.speedUnit() == desktop::SpeedUnit::kMillimetresPerMinute ? 0 : 1;
    m_painter.setPen(m_theme.accent);
    text(line(1 + m_table.setpointRows()), Qt::AlignLeft, m_table.format.signedNumber(change, digits),
         m_theme.font(12, true));
  }

  void paintField(const QRectF& rect, const std::optional<double>& setpoint, Look look, const QColor& ground) {
    const bool hatched = look == Look::kHatched, changed = look == Look::kChanged;
    const qreal line = m_theme.line(changed ? 1.6 : 1);
    m_painter.fillRect(rect, hatched ? m_theme.panel : changed ? m_theme.accentSoft : ground);
    if (hatched) paintHatching(m_painter, rect, m_theme);
    m_painter.save();
    QPen pen(hatched ? m_theme.signal : changed ? m_theme.accent : m_theme.frame, line);
    pen.setJoinStyle(Qt::MiterJoin);
    m_painter.setPen(pen);
    m_painter.setBrush(Qt::NoBrush);
    m_painter.drawRect(rect.adjusted(line / 2, line / 2, -line / 2, -line / 2));
    m_painter.restore();
    if (!setpoint) return;
    const QString number = m_table.format.limit(*setpoint, desktop::Format::Quantity::kTemperature);
    const auto widthIn = [&](const QFont& in) { return QFontMetricsF(in).horizontalAdvance(number); };
    const qreal room = rect.width() - m_theme.px(2);
    QFont font = m_theme.font(12, changed);
    // Small figures say more than none.
    for (const int px : {11, 10, 9, 8})
      if (widthIn(font) > room) font = m_theme.font(px, changed);
    const qreal width = widthIn(font);
    if (width > room) return;  // the tool tip has it
    if (hatched) {
      const qreal half = std::min(width / 2 + m_theme.px(4), rect.width() / 2 - line);
      // In a narrow cell the hatching shows above and below the number.
      constexpr qreal kWide = 0.8;
      const bool narrow = 2 * half > kWide * rect.width();
      const qreal high = narrow ? QFontMetricsF(font).capHeight() + m_theme.px(2) : rect.height() - 2 * line;
      m_painter.fillRect(QRectF(rect.center().x() - half, rect.center().y() - high / 2, 2 * half, high), m_theme.panel);
    }
    m_painter.setPen(m_theme.text);
    text(rect, Qt::AlignHCenter, number, font);
  }

  void text(const QRectF& rect, Qt::Alignment alignment, const QString& what, const QFont& font) {
    m_painter.setFont(font);
    const QString shown = QFontMetricsF(font).elidedText(what, Qt::ElideMiddle, rect.width() + 1);
    m_painter.drawText(rect, int(alignment | Qt::AlignVCenter) | Qt::TextSingleLine, shown);
  }

  QPainter& m_painter;
  const ZoneTable& m_table;
  const Theme& m_theme;
  const ZoneStripState& m_state;
  const ZoneStripLayout& m_layout;
};

}  // namespace

ZoneStripLayout::ZoneStripLayout(const ZoneTable& table, const StripAxis& axis, const Theme& theme, const QRectF& area)
    : m_table(table), m_axis(axis), m_area(area), m_gap(theme.px(1)) {
  m_axisRect = area.adjusted(axis.leftInset, 0, -axis.rightInset, 0);
  m_rowHeight = height(theme, table) / rows(table);
}

int ZoneStripLayout::rows(const ZoneTable& table) {
  // Side by side both keep the row of differences, so that their plots are equally high.
  const bool differences = table.against && (table.against->framed || table.against->side.isEmpty());
  return 1 + table.setpointRows() + (differences ? 1 : 0);
}

qreal ZoneStripLayout::height(const Theme& theme, const ZoneTable& table) {
  return rows(table) * std::max(theme.px(18), std::ceil(QFontMetricsF(theme.font(12, true)).height()));
}

qreal ZoneStripLayout::leastLeftInset(const Theme& theme, const ZoneTable& table) {
  const QFontMetricsF metrics(theme.font(12));
  qreal widest = theme.px(48);
  for (const QString& name : rowNames(table)) widest = std::max(widest, metrics.horizontalAdvance(name));
  return widest + theme.px(10);
}

qreal ZoneStripLayout::leastRightInset(const Theme& theme, const ZoneTable& table) {
  const QFontMetricsF metrics(theme.font(12));
  qreal widest = table.against ? 0 : theme.px(106);
  const QStringList note = stripNote(table);
  if (table.against) return QFontMetricsF(theme.font(12, true)).horizontalAdvance(note.value(0)) + theme.px(16);
  for (const QString& line : note.mid(0, 2)) widest = std::max(widest, metrics.horizontalAdvance(line));
  // A long name of a placement is cut: it stands in full in the tool tip.
  if (!note.isEmpty()) widest = std::max(widest, std::min(metrics.horizontalAdvance(note.last()), theme.px(180)));
  return widest + theme.px(16);
}

qreal ZoneStripLayout::x(double time_s) const {
  return m_axisRect.left() + (time_s - m_axis.from_s) / (m_axis.to_s - m_axis.from_s) * m_axisRect.width();
}

qreal ZoneStripLayout::rowTop(int row) const { return m_area.top() + row * m_rowHeight; }

QRectF ZoneStripLayout::cell(std::size_t index) const {
  const ZoneCell& zone = m_table.cells[index];
  const qreal left = std::max(m_axisRect.left(), x(zone.from_s));
  const qreal right = std::min(m_axisRect.right(), x(zone.to_s));
  if (!(right > left)) return {};
  return QRectF(std::round(left), m_area.top(), std::round(right) - std::round(left),
                (1 + m_table.setpointRows()) * m_rowHeight);
}

QRectF ZoneStripLayout::nameRect(std::size_t index) const {
  QRectF rect = cell(index);
  rect.setHeight(m_rowHeight);
  return rect;
}

QRectF ZoneStripLayout::topRect(std::size_t index) const {
  QRectF rect = cell(index);
  rect.setTop(rowTop(1));
  if (!m_table.cells[index].cooling && !m_table.together()) rect.setBottom(rowTop(2) - m_gap / 2);
  return rect;
}

QRectF ZoneStripLayout::changeRect(std::size_t index) const {
  QRectF rect = cell(index);
  rect.setTop(rect.bottom());
  rect.setHeight(m_rowHeight);
  return rect;
}

QRectF ZoneStripLayout::bottomRect(std::size_t index) const {
  QRectF rect = cell(index);
  rect.setTop(rowTop(2) + m_gap / 2);
  return rect;
}

std::optional<std::size_t> ZoneStripLayout::cellAt(const QPointF& point) const {
  for (std::size_t i = 0; i < m_table.cells.size(); ++i)
    if (cell(i).contains(point)) return i;
  return std::nullopt;
}

QString stripLine(const ZoneTable& table) {
  switch (table.state) {
    case ZoneTable::State::kNoOven:
      return Wording::tr("Choose an oven and recipe to see the zones");
    case ZoneTable::State::kNoEntry:
      return Wording::tr("Say when the board entered the oven to see the zones");
    case ZoneTable::State::kSeveral:
      return Wording::tr("Not all of these runs had the same recipe, so no zones stand here");
    case ZoneTable::State::kZones:
      return {};
  }
  return {};
}

QStringList stripNote(const ZoneTable& table) {
  if (table.state != ZoneTable::State::kZones) return {};
  if (table.against) return {table.format.speed(table.speed_mm_per_min)};
  return {table.format.speed(table.speed_mm_per_min), Wording::tr("Times as met"),
          Wording::tr("by %1", "the placement that meets the zones").arg(table.placement)};
}

void paintZoneStrip(QPainter& painter, const QRectF& area, const ZoneTable& table, const StripAxis& axis,
                    const Theme& theme, const ZoneStripState& state) {
  painter.save();
  painter.setClipRect(area, Qt::IntersectClip);
  if (table.state == ZoneTable::State::kZones) {
    const ZoneStripLayout layout(table, axis, theme, area);
    StripPainter strip(painter, table, theme, state, layout);
    strip.paintRowNames(area);
    for (std::size_t i = 0; i < table.cells.size(); ++i) strip.paintCell(i);
    strip.paintNote(area);
  } else {
    QFont font = theme.font(12);
    const bool link = table.state != ZoneTable::State::kSeveral;
    font.setUnderline(link);
    painter.setFont(font);
    painter.setPen(link ? theme.accent : theme.secondary);
    painter.drawText(area.adjusted(axis.leftInset, 0, 0, 0), int(Qt::AlignLeft | Qt::AlignVCenter), stripLine(table));
  }
  painter.restore();
}

}  // namespace ovenwright::widgets
