#include "app/desktop/tune/recipe_strip_layout.h"

#include <QFontMetricsF>
#include <algorithm>
#include <cmath>

#include "app/desktop/tune/field_format.h"
#include "app/desktop/widgets/wording.h"

namespace ovenwright::desktop {
namespace {

using Kind = RecipeField::Kind;
using widgets::Theme;
using widgets::Wording;

constexpr int kFont_px = 13, kLeastFont_px = 9;
constexpr double kPadding_px = 4, kArrow_px = 13;

qreal fieldHeight(const Theme& theme) {
  return std::max(theme.px(26), QFontMetricsF(theme.font(kFont_px)).height() + theme.px(6));
}
qreal textHeight(const Theme& theme) { return std::max(theme.px(16), QFontMetricsF(theme.font(12)).height()); }
qreal numberWidth(const Theme& theme, int font_px, const QString& number) {
  return QFontMetricsF(theme.font(font_px, true)).horizontalAdvance(number) + theme.px(kPadding_px);
}

/// As many digits as the longest setpoint has: whole °C are others in °F.
QString longestNumber(const RecipeStripTable& table) {
  QString longest = QStringLiteral("888");
  const FieldFormat format(table.format);
  for (const auto& column : table.columns) {
    if (!column.hasSetpoint) continue;
    for (const Kind kind : {Kind::kTop, Kind::kBottom}) {
      const RecipeField field{column.cooling ? Kind::kCooling : kind, column.index};
      const QString number = format.number(field, valueOf(table.edited, field));
      if (number.size() > longest.size()) longest = number;
    }
  }
  return longest;
}

}  // namespace

RecipeStripLayout::RecipeStripLayout(const RecipeStripTable& table, const widgets::StripAxis& axis, const Theme& theme,
                                     const QRectF& area)
    : m_table(table), m_theme(theme), m_area(area), m_axis(axis), m_number(longestNumber(table)) {
  m_top[0] = area.top() + theme.px(2);
  m_top[1] = m_top[0] + textHeight(theme);
  m_top[2] = m_top[1] + fieldHeight(theme) + theme.px(3);
  m_top[3] = m_top[2] + fieldHeight(theme) + theme.px(2);
  m_top[4] = m_top[3] + textHeight(theme);
  m_top[5] = m_top[4] + textHeight(theme);

  m_speedWidth = leastRightInset(theme) - theme.px(24);
  m_speedLeft = area.right() - axis.rightInset + theme.px(12);
  m_speedName = QRectF(m_speedLeft, m_top[0], m_speedWidth, textHeight(theme));

  const qreal left = area.left() + axis.leftInset, right = area.right() - axis.rightInset;
  const auto x = [&](double time_s) {
    return left + (time_s - axis.from_s) / (axis.to_s - axis.from_s) * (right - left);
  };
  const qreal least = numberWidth(theme, kFont_px, m_number);
  for (const auto& column : table.columns) {
    const qreal from = std::round(x(column.from_s)), to = std::round(x(column.to_s));
    m_columns.emplace_back(from, area.top(), to - from, area.height());
    if (to - from < least || from < left - 1 || to > right + 1) m_aligned = false;
  }
  if (m_aligned || table.columns.empty()) return;
  // Side by side over the whole width; smaller digits where even that is too little.
  const qreal width = (right - left) / qreal(table.columns.size());
  while (m_font_px > kLeastFont_px && numberWidth(theme, m_font_px, m_number) > width - theme.px(2)) --m_font_px;
  for (std::size_t i = 0; i < m_columns.size(); ++i)
    m_columns[i] = QRectF(left + qreal(i) * width + theme.px(1), area.top(), width - theme.px(2), area.height());
}

qreal RecipeStripLayout::height(const Theme& theme) {
  return theme.px(2) + textHeight(theme) + 2 * fieldHeight(theme) + theme.px(5) + 2 * textHeight(theme) + theme.px(4);
}

qreal RecipeStripLayout::leastLeftInset(const Theme& theme) {
  const QFontMetricsF metrics(theme.font(12));
  qreal widest = 0;
  for (const QString& name :
       {Wording::tr("Zone"), Wording::tr("Top"), Wording::tr("Bottom"), Wording::tr("now", "the recipe that was run")})
    widest = std::max(widest, metrics.horizontalAdvance(name));
  return widest + theme.px(28);
}

qreal RecipeStripLayout::leastRightInset(const Theme& theme) {
  const QFontMetricsF metrics(theme.font(12));
  const qreal text = std::max(metrics.horizontalAdvance(Wording::tr("now %1").arg(QStringLiteral("8888"))),
                              QFontMetricsF(theme.font(12, true)).horizontalAdvance(QStringLiteral("mm/min")));
  const qreal number =
      QFontMetricsF(theme.font(kFont_px, true)).horizontalAdvance(QStringLiteral("8888")) + theme.px(kArrow_px + 12);
  return std::max(text + theme.px(10), number) + theme.px(24);
}

std::optional<std::size_t> RecipeStripLayout::columnOf(const RecipeField& field) const {
  for (std::size_t i = 0; i < m_table.columns.size(); ++i)
    if (m_table.columns[i].index == field.index && m_table.columns[i].cooling == (field.kind == Kind::kCooling))
      return i;
  return std::nullopt;
}

QRectF RecipeStripLayout::name(std::size_t index) const {
  return {column(index).left(), m_top[0], column(index).width(), m_top[1] - m_top[0]};
}

QRectF RecipeStripLayout::field(const RecipeField& field) const {
  const qreal height = fieldHeight(m_theme);
  if (field.kind == Kind::kSpeed) return {m_speedLeft, m_top[1], m_speedWidth, height};
  const auto index = columnOf(field);
  if (!index) return {};
  const QRectF where = column(*index);
  if (field.kind == Kind::kCooling) return {where.left(), m_top[1], where.width(), m_top[2] + height - m_top[1]};
  return {where.left(), m_top[field.kind == Kind::kTop ? 1 : 2], where.width(), height};
}

QRectF RecipeStripLayout::nowText(std::size_t index) const {
  return {column(index).left(), m_top[3], column(index).width(), m_top[4] - m_top[3]};
}
QRectF RecipeStripLayout::differenceText(std::size_t index) const {
  return {column(index).left(), m_top[4], column(index).width(), m_top[5] - m_top[4]};
}
QRectF RecipeStripLayout::speedNow() const { return {m_speedLeft, m_top[2], m_speedWidth, textHeight(m_theme)}; }
QRectF RecipeStripLayout::speedDifference() const { return speedNow().translated(0, textHeight(m_theme)); }

QRectF RecipeStripLayout::rowName(int row) const {
  const qreal right = m_area.left() + m_axis.leftInset - m_theme.px(22);
  return {m_area.left(), m_top[row], right - m_area.left(),
          row == 1 || row == 2 ? fieldHeight(m_theme) : textHeight(m_theme)};
}

QRectF RecipeStripLayout::padlock() const {
  const qreal side = m_theme.px(13), x = m_area.left() + m_axis.leftInset - m_theme.px(18);
  return {x, m_top[2] - m_theme.px(1.5) - side / 2, side, side};
}

std::optional<RecipeField> RecipeStripLayout::fieldAt(const QPointF& point) const {
  for (const auto& column : m_table.columns) {
    if (column.cooling) {
      const RecipeField one{Kind::kCooling, column.index};
      if (column.hasSetpoint && field(one).contains(point)) return one;
      continue;
    }
    for (const Kind kind : {Kind::kTop, Kind::kBottom})
      if (field({kind, column.index}).contains(point)) return RecipeField{kind, column.index};
  }
  if (field({Kind::kSpeed, 0}).contains(point)) return RecipeField{Kind::kSpeed, 0};
  return std::nullopt;
}

std::optional<std::size_t> RecipeStripLayout::nameAt(const QPointF& point) const {
  for (std::size_t i = 0; i < m_columns.size(); ++i)
    if (name(i).contains(point)) return i;
  return std::nullopt;
}

bool RecipeStripLayout::hasArrows(const QRectF& field) const {
  return field.width() >= numberWidth(m_theme, m_font_px, m_number) + m_theme.px(kArrow_px);
}

QRectF RecipeStripLayout::arrow(const QRectF& field, bool up) const {
  const qreal width = m_theme.px(kArrow_px), half = std::min(field.height() / 2, m_theme.px(13));
  return {field.right() - width, up ? field.center().y() - half : field.center().y(), width, half};
}

int RecipeStripLayout::stepAt(const RecipeField& which, const QPointF& point) const {
  const QRectF rect = field(which);
  if (!hasArrows(rect)) return 0;
  if (arrow(rect, true).contains(point)) return 1;
  return arrow(rect, false).contains(point) ? -1 : 0;
}

std::vector<RecipeField> fieldOrder(const RecipeStripTable& table) {
  std::vector<RecipeField> order;
  for (const auto& column : table.columns) {
    if (column.cooling) {
      if (column.hasSetpoint) order.push_back({Kind::kCooling, column.index});
      continue;
    }
    order.push_back({Kind::kTop, column.index});
    if (!table.together) order.push_back({Kind::kBottom, column.index});
  }
  order.push_back({Kind::kSpeed, 0});
  return order;
}

}  // namespace ovenwright::desktop
