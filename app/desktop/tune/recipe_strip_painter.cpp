#include <QPainter>
#include <algorithm>

#include "app/desktop/tune/field_format.h"
#include "app/desktop/tune/recipe_strip_layout.h"
#include "app/desktop/widgets/glyphs.h"
#include "app/desktop/widgets/wording.h"

namespace ovenwright::desktop {
namespace {

using Kind = RecipeField::Kind;
using widgets::Theme;
using widgets::Wording;

class StripPainter {
 public:
  StripPainter(QPainter& painter, const RecipeStripTable& table, const Theme& theme, const RecipeStripLayout& layout,
               const RecipeStripState& state)
      : m_painter(painter), m_table(table), m_theme(theme), m_layout(layout), m_state(state), m_field(table.format) {}

  void paint() {
    QStringList rows{Wording::tr("Zone"), Wording::tr("Top"), Wording::tr("Bottom"),
                     Wording::tr("now", "the recipe that was run")};
    if (m_table.format.temperatureUnit() == TemperatureUnit::kFahrenheit)
      rows.back() += QStringLiteral(", °F");  // the scale that an oven's screen seldom has is said
    m_painter.setFont(m_theme.font(12));
    m_painter.setPen(m_theme.secondary);
    for (int row = 0; row < rows.size(); ++row)
      m_painter.drawText(m_layout.rowName(row), Qt::AlignRight | Qt::AlignVCenter, rows[row]);
    paintTogether();
    for (std::size_t i = 0; i < m_table.columns.size(); ++i) paintColumn(i);
    paintSpeed();
  }

 private:
  double now(const RecipeField& field) const { return valueOf(m_table.measured, field); }
  double edited(const RecipeField& field) const { return valueOf(m_table.edited, field); }

  void paintPadlock(const QRectF& rect, const QColor& color, bool open = false) {
    const qreal body = rect.height() * 0.55;
    const QRectF box(rect.left() + rect.width() * 0.12, rect.bottom() - body, rect.width() * 0.76, body);
    m_painter.setPen(QPen(color, m_theme.line(1.4)));
    m_painter.setBrush(Qt::NoBrush);
    const qreal inset = rect.width() * 0.26;
    QPainterPath bow(QPointF(rect.left() + inset, box.top()));
    bow.lineTo(rect.left() + inset, rect.top() + inset);
    bow.arcTo(QRectF(rect.left() + inset, rect.top() + m_theme.px(0.5), rect.width() - 2 * inset, 2 * inset), 180,
              -180);
    if (!open) bow.lineTo(rect.right() - inset, box.top());
    m_painter.drawPath(bow);
    m_painter.fillRect(box, color);
  }

  /// The padlock between the rows' names, with a line to each; open where the sides move apart.
  void paintTogether() {
    const QRectF lock = m_layout.padlock();
    paintPadlock(lock, m_table.together ? m_theme.secondary : m_theme.quiet, !m_table.together);
    if (!m_table.together) return;
    m_painter.setPen(QPen(m_theme.secondary, m_theme.line(1)));
    for (const int row : {1, 2}) {
      const qreal y = m_layout.rowName(row).center().y(), x = lock.center().x(), half = m_theme.px(4);
      m_painter.drawLine(QPointF(x - half, y), QPointF(x + half, y));
      m_painter.drawLine(QPointF(x, y),
                         QPointF(x, row == 1 ? lock.top() - m_theme.px(2) : lock.bottom() + m_theme.px(2)));
    }
  }

  void paintColumn(std::size_t index) {
    const StripColumn& column = m_table.columns[index];
    const QRectF name = m_layout.name(index);
    m_painter.setFont(m_theme.font(12, true));
    m_painter.setPen(m_theme.text);
    const QFontMetricsF metrics(m_painter.font());
    const qreal width = metrics.horizontalAdvance(column.name), lock = m_theme.px(10);
    const qreal all = column.locked ? width + lock + m_theme.px(3) : width;
    const qreal left = name.center().x() - all / 2;
    m_painter.drawText(QRectF(left, name.top(), width + 1, name.height()), Qt::AlignLeft | Qt::AlignVCenter,
                       column.name);
    if (column.locked)
      paintPadlock(QRectF(left + width + m_theme.px(3), name.center().y() - lock / 2 - m_theme.px(1), lock, lock),
                   m_theme.accent);
    const RecipeField first{column.cooling ? Kind::kCooling : Kind::kTop, column.index};
    const RecipeField second{Kind::kBottom, column.index};
    if (!column.hasSetpoint) return;
    paintField(first, m_layout.fontSize_px());
    if (!column.cooling) {
      if (m_table.together) paintTies(m_layout.field(first), m_layout.field(second));
      paintField(second, m_layout.fontSize_px());
    }
    paintNow(m_layout.nowText(index), m_layout.differenceText(index), first,
             column.cooling ? std::nullopt : std::optional(second));
  }

  void paintTies(const QRectF& top, const QRectF& bottom) {
    m_painter.setPen(QPen(m_theme.secondary, m_theme.line(1.4)));
    for (const double at : {0.3, 0.7}) {
      const qreal x = std::round(top.left() + at * top.width()) + 0.5;
      m_painter.drawLine(QPointF(x, top.bottom()), QPointF(x, bottom.top()));
    }
  }

  void paintField(const RecipeField& which, int font_px) {
    const QRectF rect = m_layout.field(which).adjusted(0.5, 0.5, -0.5, -0.5);
    const bool changed = edited(which) != now(which);
    const bool hovered = m_state.hovered == which && m_table.enabled;
    const qreal radius = m_theme.px(3);
    m_painter.setRenderHint(QPainter::Antialiasing);
    m_painter.setBrush(changed ? m_theme.accentSoft : m_theme.panel);
    m_painter.setPen(QPen(changed   ? m_theme.accent
                          : hovered ? m_theme.secondary
                                    : m_theme.frame,
                          m_theme.line(changed ? 1.6 : 1)));
    m_painter.drawRoundedRect(rect, radius, radius);
    m_painter.setRenderHint(QPainter::Antialiasing, false);
    QRectF text = rect;
    if (m_table.enabled && m_layout.hasArrows(rect)) {
      paintArrows(rect, hovered);
      text.setRight(m_layout.arrow(rect, true).left() + m_theme.px(3));
    }
    m_painter.setFont(m_theme.font(font_px, changed));
    m_painter.setPen(m_table.enabled ? m_theme.text : m_theme.quiet);
    m_painter.drawText(text, Qt::AlignCenter, m_field.number(which, edited(which)));
    if (m_state.focused && m_state.current == which)
      widgets::paintFocusFrame(m_painter, rect.adjusted(-m_theme.px(1), -m_theme.px(1), m_theme.px(1), m_theme.px(1)),
                               m_theme);
  }

  void paintArrows(const QRectF& rect, bool hovered) {
    m_painter.setRenderHint(QPainter::Antialiasing);
    m_painter.setPen(QPen(hovered ? m_theme.text : m_theme.quiet, m_theme.line(1.2)));
    for (const bool up : {true, false}) {
      const QRectF arrow = m_layout.arrow(rect, up);
      const qreal half = m_theme.px(2.8), y = up ? arrow.bottom() - m_theme.px(3.2) : arrow.top() + m_theme.px(3.2);
      const qreal tip = up ? y - half : y + half, x = arrow.center().x() - m_theme.px(1);
      m_painter.drawPolyline(QPolygonF({{x - half, y}, {x, tip}, {x + half, y}}));
    }
    m_painter.setRenderHint(QPainter::Antialiasing, false);
  }

  /// What was run, and what the edit adds to it; both sides where they differ.
  void paintNow(const QRectF& above, const QRectF& below, const RecipeField& first,
                const std::optional<RecipeField>& second) {
    const bool now_split = second && now(first) != now(*second);
    const bool by_split = second && edited(first) - now(first) != edited(*second) - now(*second);
    const auto both = [](bool split, const QString& a, const QString& b) {
      return split ? a + QStringLiteral(" / ") + b : a;
    };
    const auto difference = [&](const RecipeField& field) {
      return m_field.difference(field, edited(field) - now(field));
    };
    m_painter.setFont(m_theme.font(std::min(now_split ? 10 : 12, m_layout.fontSize_px())));
    m_painter.setPen(m_theme.secondary);
    m_painter.drawText(
        above, Qt::AlignCenter | Qt::TextDontClip,
        both(now_split, m_field.number(first, now(first)), second ? m_field.number(*second, now(*second)) : QString()));
    if (edited(first) == now(first) && (!second || edited(*second) == now(*second))) return;
    m_painter.setFont(m_theme.font(std::min(by_split ? 10 : 12, m_layout.fontSize_px()), true));
    m_painter.setPen(m_theme.accent);
    m_painter.drawText(below, Qt::AlignCenter | Qt::TextDontClip,
                       both(by_split, difference(first), second ? difference(*second) : QString()));
  }

  void paintSpeed() {
    const RecipeField speed{Kind::kSpeed, 0};
    m_painter.setFont(m_theme.font(12, true));
    m_painter.setPen(m_theme.text);
    m_painter.drawText(m_layout.speedName(), Qt::AlignLeft | Qt::AlignVCenter, m_field.unit(speed));
    paintField(speed, 13);
    const double by = edited(speed) - now(speed);
    const qreal inset = m_theme.px(8);
    m_painter.setFont(m_theme.font(12));
    m_painter.setPen(m_theme.secondary);
    m_painter.drawText(m_layout.speedNow().adjusted(inset, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter,
                       Wording::tr("now %1").arg(m_field.number(speed, now(speed))));
    if (by == 0) return;
    m_painter.setFont(m_theme.font(12, true));
    m_painter.setPen(m_theme.accent);
    m_painter.drawText(m_layout.speedDifference().adjusted(inset, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter,
                       m_field.difference(speed, by));
  }

  QPainter& m_painter;
  const RecipeStripTable& m_table;
  const Theme& m_theme;
  const RecipeStripLayout& m_layout;
  const RecipeStripState& m_state;
  const FieldFormat m_field;
};

}  // namespace

void paintRecipeStrip(QPainter& painter, const RecipeStripTable& table, const Theme& theme,
                      const RecipeStripLayout& layout, const RecipeStripState& state) {
  painter.save();
  StripPainter(painter, table, theme, layout, state).paint();
  painter.restore();
}

}  // namespace ovenwright::desktop
