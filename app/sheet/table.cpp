#include "app/sheet/table.h"

#include <QPainter>
#include <algorithm>
#include <memory>

#include "app/desktop/widgets/glyphs.h"
#include "app/sheet/paragraph.h"

namespace ovenwright::sheet {
namespace {

constexpr qreal kGap = 10, kMarker = 34, kRowPad = 2;
constexpr qreal kLeastGap = 4;  // between columns, where that spares a further table
constexpr int kMostLines = 3;   // of a cell

struct Fonts {
  explicit Fonts(const widgets::Theme& theme)
      : body(theme.font(12)), bold(theme.font(12, true)), minor(theme.font(11)), head(theme.font(11)) {}
  QFont body, bold, minor, head;
  const QFont& of(const Cell& cell) const { return cell.bold ? bold : body; }
};

qreal signWidth(const widgets::Theme& theme) { return theme.px(11) * widgets::kSignAspect + theme.px(5); }

qreal leadWidth(const Cell& cell, const widgets::Theme& theme) {
  return (cell.marker ? kMarker : 0) + (cell.sign ? signWidth(theme) : 0);
}

qreal minorWidth(const Cell& cell, const Fonts& fonts) {
  return cell.minor.isEmpty() ? 0 : lineWidth(cell.minor, fonts.minor) + 3;
}

/// Columns that stand beside each other, with their left edges and widths.
struct Group {
  QList<int> columns;
  QList<qreal> lefts, widths;
};

class Plan {
 public:
  Plan(const Table& table, const widgets::Theme& theme, qreal width) : m_table(table), m_theme(theme), m_fonts(theme) {
    QList<qreal> wanted;
    for (int column = 0; column < table.columns.size(); ++column) wanted << wantedWidth(column);
    m_groups = grouped(wanted, width, kGap);
    const auto closer = grouped(wanted, width, kLeastGap);
    if (closer.size() < m_groups.size()) m_groups = closer;
  }

  const QList<Group>& groups() const { return m_groups; }
  qreal headHeight() const {
    return std::ranges::any_of(m_table.columns, [](const auto& column) { return !column.unit.isEmpty(); })
               ? 2 * lineHeight(m_fonts.head) + kRowPad
               : lineHeight(m_fonts.head) + kRowPad;
  }

  qreal rowHeight(const Group& group, int row) const {
    qreal height = lineHeight(m_fonts.body);
    for (int at = 0; at < group.columns.size(); ++at) height = std::max(height, paragraph(group, at, row).height());
    return height + 2 * kRowPad;
  }

  void paintHead(QPainter& painter, const Group& group, const QRectF& rect) const {
    for (int at = 0; at < group.columns.size(); ++at) {
      const Column& column = m_table.columns[group.columns[at]];
      const auto side = column.left ? Qt::AlignLeft : Qt::AlignRight;
      const QRectF cell(rect.left() + group.lefts[at], rect.top(), group.widths[at], rect.height());
      paintLine(painter, cell, column.title, m_fonts.head, m_theme.secondary, side);
      paintLine(painter, cell.translated(0, lineHeight(m_fonts.head)), column.unit, m_fonts.head, m_theme.secondary,
                side);
    }
    painter.setPen(QPen(m_theme.frame, m_theme.line(1)));
    painter.drawLine(rect.bottomLeft(), rect.bottomRight());
  }

  void paintRow(QPainter& painter, const Group& group, int row, const QRectF& rect) const {
    for (int at = 0; at < group.columns.size(); ++at) paintCell(painter, group, at, row, rect);
    painter.setPen(QPen(m_theme.hairline, m_theme.line(1)));
    painter.drawLine(rect.bottomLeft(), rect.bottomRight());
  }

 private:
  qreal wantedWidth(int column) const {
    const Column& head = m_table.columns[column];
    qreal width = std::max(lineWidth(head.title, m_fonts.head), lineWidth(head.unit, m_fonts.head));
    width = std::min(width, head.most);
    for (const auto& row : m_table.rows) {
      const Cell& cell = row[column];
      width = std::max(width, leadWidth(cell, m_theme) + minorWidth(cell, m_fonts) +
                                  std::min(head.most, lineWidth(cell.text, m_fonts.of(cell))));
    }
    return width + 1;
  }

  /// As many columns beside each other as the width holds, the first one repeated.
  QList<Group> grouped(const QList<qreal>& wanted, qreal width, qreal gap) const {
    QList<Group> groups;
    int next = 1;
    do {
      Group group;
      group.columns << 0;
      qreal used = wanted[0];
      while (next < wanted.size() && (group.columns.size() == 1 || used + gap + wanted[next] <= width)) {
        used += gap + wanted[next];
        group.columns << next++;
      }
      place(group, wanted, width, used, gap);
      groups << group;
    } while (next < wanted.size());
    return groups;
  }

  void place(Group& group, const QList<qreal>& wanted, qreal width, qreal used, qreal gap) const {
    // What is left over goes between the columns, so that a table always spans its page.
    const qreal more = group.columns.size() > 1 ? std::max(0.0, width - used) / qreal(group.columns.size() - 1) : 0;
    qreal left = 0;
    for (const int column : group.columns) {
      const bool first = left == 0;
      const qreal own = std::min(wanted[column], width) + (first ? 0 : more);
      group.lefts << left;
      group.widths << own;
      left += own + gap;
    }
  }

  Paragraph paragraph(const Group& group, int at, int row) const {
    const Cell& cell = m_table.rows[row][group.columns[at]];
    const qreal room = group.widths[at] - leadWidth(cell, m_theme) - minorWidth(cell, m_fonts);
    return Paragraph(cell.text, m_fonts.of(cell), std::max(20.0, room), kMostLines);
  }

  void paintCell(QPainter& painter, const Group& group, int at, int row, const QRectF& rect) const {
    const Cell& cell = m_table.rows[row][group.columns[at]];
    const bool left = m_table.columns[group.columns[at]].left;
    const Paragraph text = paragraph(group, at, row);
    const qreal minor = minorWidth(cell, m_fonts), lead = leadWidth(cell, m_theme);
    const qreal whole = lead + text.width() + minor;
    qreal x = rect.left() + group.lefts[at] + (left ? 0 : std::max(0.0, group.widths[at] - whole));
    const qreal top = rect.top() + kRowPad, line = lineHeight(m_fonts.body);
    if (cell.marker) {
      // The line as on the curves: in black and white its dashes and the shape are what tells them apart.
      constexpr qreal kSample = 28;
      painter.setPen(m_theme.curvePen(*cell.marker));
      painter.drawLine(QLineF(x, top + line / 2, x + kSample, top + line / 2));
      widgets::paintMarker(painter, {x + kSample / 2, top + line / 2}, m_theme.px(3.6),
                           m_theme.thermocouple(*cell.marker), true, m_theme.panel, m_theme);
      x += kMarker;
    }
    if (cell.sign) {
      const qreal height = m_theme.px(11);
      widgets::paintVerdictSign(painter, QRectF(x, top + (line - height) / 2, height * widgets::kSignAspect, height),
                                *cell.sign, m_theme, cell.informative);
      x += signWidth(m_theme);
    }
    text.paint(painter, {x, top}, m_theme.text);
    if (minor > 0)
      paintLine(painter, QRectF(x + text.width() + 3, top, minor, line), cell.minor, m_fonts.minor, m_theme.secondary);
  }

  const Table& m_table;
  const widgets::Theme& m_theme;
  Fonts m_fonts;
  QList<Group> m_groups;
};

/// The plan with its own copies, for paint functions that outlive the call.
struct Kept {
  Kept(const Table& given, const widgets::Theme& givenTheme, qreal width)
      : table(given), theme(givenTheme), plan(table, theme, width) {}
  Table table;
  widgets::Theme theme;
  Plan plan;
};

}  // namespace

void addTable(Flow& flow, const Table& table, const widgets::Theme& theme, qreal width) {
  if (table.rows.isEmpty()) return;
  const auto kept = std::make_shared<const Kept>(table, theme, width);
  for (int index = 0; index < kept->plan.groups().size(); ++index) {
    const Group& group = kept->plan.groups()[index];
    const qreal head = kept->plan.headHeight();
    for (int row = 0; row < table.rows.size(); ++row) {
      const qreal height = kept->plan.rowHeight(group, row);
      const bool first = row == 0;
      const bool heads = first || flow.room() < height;  // the row begins a page
      Block block;
      block.before = first ? kGap : 0;
      block.height = height + (heads ? head : 0);
      block.paint = [kept, index, row, heads, head](QPainter& painter, const QRectF& rect) {
        const Group& own = kept->plan.groups()[index];
        if (heads) kept->plan.paintHead(painter, own, QRectF(rect.left(), rect.top(), rect.width(), head));
        kept->plan.paintRow(painter, own, row, rect.adjusted(0, heads ? head : 0, 0, 0));
      };
      flow.add(block);
    }
  }
}

qreal tableHeight(const Table& table, const widgets::Theme& theme, qreal width) {
  if (table.rows.isEmpty()) return 0;
  const Plan plan(table, theme, width);
  qreal height = 0;
  for (const Group& group : plan.groups()) {
    height += kGap + plan.headHeight();
    for (int row = 0; row < table.rows.size(); ++row) height += plan.rowHeight(group, row);
  }
  return height;
}

}  // namespace ovenwright::sheet
