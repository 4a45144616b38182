#include <QWidget>
#include <algorithm>
#include <cmath>

#include "app/desktop/widgets/accessible_grid.h"
#include "app/desktop/widgets/board_picture.h"
#include "app/desktop/widgets/limit_lanes.h"
#include "app/desktop/widgets/lot_lane.h"
#include "app/desktop/widgets/run_chart.h"
#include "app/desktop/widgets/sentence.h"
#include "app/desktop/widgets/wording.h"
#include "app/desktop/widgets/zone_strip.h"

namespace ovenwright::widgets {
namespace {

/// Rows are requirements, columns thermocouples by track, and one column more for the board.
class LanesGrid : public AccessibleGrid {
 public:
  explicit LanesGrid(LimitLanes* lanes) : m_lanes(lanes) {}
  int rows() const override { return int(table().lanes.size()); }
  int columns() const override { return int(table().columns()); }
  QString rowHeader(int row) const override { return table().lanes[std::size_t(row)].title; }

  QString columnHeader(int column) const override {
    for (int row = 0; row < rows(); ++row)
      if (const LaneMark* mark = markAt(row, column))
        return table().pair ? sideLetter(mark->side) + QStringLiteral(", ") + mark->place : mark->place;
    return {};
  }
  QString cell(int row, int column) const override {
    const LaneMark* mark = markAt(row, column);
    return mark ? mark->spoken : QString();
  }
  QRect rect(int row, int column) const override {
    const LanesLayout layout = m_lanes->layoutNow();
    if (row < 0) return {0, 0, m_lanes->viewport()->width(), int(layout.headerHeight())};
    const auto lane = std::size_t(row);
    if (column < 0) {
      const QRectF titles(layout.columns().titleLeft, layout.row(lane).top(), layout.columns().titleRight,
                          layout.row(lane).height());
      return titles.translated(m_lanes->toViewport({0, 0})).toAlignedRect();
    }
    const auto index = indexAt(row, column);
    if (index < 0) return {};
    const qreal reach = layout.radius(lane);
    const QPointF center = m_lanes->toViewport(layout.center(lane, std::size_t(index)));
    return QRectF(center.x() - reach, center.y() - reach, 2 * reach, 2 * reach).toAlignedRect();
  }
  bool chosen(int row, int column) const override {
    const auto& chosen = m_lanes->state().chosen;
    return chosen && chosen->lane == std::size_t(row) && int(chosen->mark) == indexAt(row, column);
  }
  void press(int row, int column) override {
    if (const int index = indexAt(row, column); index >= 0) m_lanes->choose({std::size_t(row), std::size_t(index)});
  }

 private:
  const LaneTable& table() const { return m_lanes->table(); }
  int indexAt(int row, int column) const {
    const Lane& lane = table().lanes[std::size_t(row)];
    const auto found = std::ranges::find_if(
        lane.marks, [&](const LaneMark& mark) { return int(table().column(lane, mark)) == column; });
    return found == lane.marks.end() ? -1 : int(found - lane.marks.begin());
  }
  const LaneMark* markAt(int row, int column) const {
    const int index = indexAt(row, column);
    return index < 0 ? nullptr : &table().lanes[std::size_t(row)].marks[std::size_t(index)];
  }
  LimitLanes* m_lanes;
};

/// Two rows, top and bottom; a cooling zone has one cell, in the first.
class StripGrid : public AccessibleGrid {
 public:
  explicit StripGrid(ZoneStrip* strip) : m_strip(strip) {}
  int rows() const override { return cells().empty() ? 0 : m_strip->table().setpointRows(); }
  int columns() const override { return int(cells().size()); }
  QString rowHeader(int row) const override {
    if (m_strip->table().together()) return Wording::tr("Top and bottom");
    return row == 0 ? Wording::tr("Top") : Wording::tr("Bottom");
  }
  QString columnHeader(int column) const override { return Wording::tr("Zone %1").arg(at(column).name); }

  QString cell(int row, int column) const override {
    const ZoneCell& zone = at(column);
    if (zone.cooling && row == 1) return {};
    const auto& setpoint = row == 0 ? zone.top_C : zone.bottom_C;
    QStringList parts{columnHeader(column)};
    if (!zone.cooling && !m_strip->table().together()) parts << (row == 0 ? Wording::tr("top") : Wording::tr("bottom"));
    parts << (setpoint ? m_strip->table().format.temperatureWithUnit(*setpoint) : Wording::tr("no setpoint"));
    if (const auto& change = row == 0 ? zone.topChange_C : zone.bottomChange_C)
      parts << (*change > 0 ? Wording::tr("B is %1 higher") : Wording::tr("B is %1 lower"))
                   .arg(m_strip->table().format.limit(std::abs(*change), desktop::Format::Quantity::kDifference));
    for (const int disc : zone.discs) parts << Wording::tr("result %1 traces here").arg(disc);
    if (zone.hatched && zone.discs.empty()) parts << Wording::tr("a result that is out traces here");
    return parts.join(QStringLiteral(", "));
  }
  QRect rect(int row, int column) const override {
    const ZoneStripLayout layout = m_strip->layoutNow();
    if (column < 0)
      return QRectF(0, layout.rowTop(row + 1), layout.axisRect().left(), layout.rowHeight()).toAlignedRect();
    const auto index = std::size_t(column);
    if (row < 0) return layout.nameRect(index).toAlignedRect();
    return (row == 0 ? layout.topRect(index) : layout.bottomRect(index)).toAlignedRect();
  }
  bool chosen(int row, int column) const override {
    return row == 0 && m_strip->state().current == std::size_t(column);
  }
  void press(int, int column) override { m_strip->activate(std::size_t(column)); }
  QString line() const override { return stripLine(m_strip->table()); }
  void pressLine() override { m_strip->activateLine(); }

 private:
  const std::vector<ZoneCell>& cells() const { return m_strip->table().cells; }
  const ZoneCell& at(int column) const { return cells()[std::size_t(column)]; }
  ZoneStrip* m_strip;
};

/// A row for each thermocouple.
class BoardGrid : public AccessibleGrid {
 public:
  explicit BoardGrid(BoardPicture* board) : m_board(board) {}
  int rows() const override { return int(m_board->table().marks.size()); }
  int columns() const override { return 1; }
  QString rowHeader(int row) const override { return at(row).name; }
  QString columnHeader(int) const override { return m_board->table().title; }
  QString cell(int row, int) const override { return at(row).mark ? at(row).mark->spoken : at(row).name; }
  QRect rect(int row, int) const override {
    const BoardLayout layout = m_board->layoutNow();
    for (const auto& callout : layout.callouts())
      if (int(callout.mark) == row) return callout.rect.toAlignedRect();
    return {};
  }
  bool chosen(int row, int) const override { return m_board->state().chosen == std::size_t(row); }
  void press(int row, int) override { m_board->choose(std::size_t(row)); }
  QString line() const override { return m_board->line(); }
  void pressLine() override { emit m_board->boardWanted(); }

 private:
  const BoardMark& at(int row) const { return m_board->table().marks[std::size_t(row)]; }
  BoardPicture* m_board;
};

/// A part of the sentence that leads somewhere.
class AccessibleLink : public QAccessibleInterface, public QAccessibleActionInterface {
 public:
  AccessibleLink(Sentence* sentence, QAccessibleInterface* parent, int position)
      : m_sentence(sentence), m_parent(parent), m_position(position) {}
  bool isValid() const override { return m_parent->isValid() && link() >= 0; }
  QObject* object() const override { return nullptr; }
  QWindow* window() const override { return m_parent->window(); }
  QAccessibleInterface* parent() const override { return m_parent; }
  QAccessibleInterface* child(int) const override { return nullptr; }
  QAccessibleInterface* childAt(int, int) const override { return nullptr; }
  int childCount() const override { return 0; }
  int indexOfChild(const QAccessibleInterface*) const override { return -1; }
  QString text(QAccessible::Text kind) const override {
    return kind == QAccessible::Name && link() >= 0 ? m_sentence->content().linkText(link()) : QString();
  }
  void setText(QAccessible::Text, const QString&) override {}
  QRect rect() const override {
    QRectF all;
    if (link() >= 0)
      for (const QRectF& rect : m_sentence->layoutNow().linkRects(link())) all |= rect;
    return {m_sentence->mapToGlobal(all.toAlignedRect().topLeft()), all.toAlignedRect().size()};
  }
  QAccessible::Role role() const override { return QAccessible::Link; }
  QAccessible::State state() const override {
    QAccessible::State state;
    state.invalid = !isValid();
    state.linked = state.focusable = true;
    state.focused = m_sentence->hasFocus() && m_sentence->focusedLink() == link();
    return state;
  }
  void* interface_cast(QAccessible::InterfaceType type) override {
    return type == QAccessible::ActionInterface ? static_cast<QAccessibleActionInterface*>(this) : nullptr;
  }
  QStringList actionNames() const override { return {pressAction(), setFocusAction()}; }
  void doAction(const QString& action) override {
    if (!isValid()) return;
    if (action == pressAction()) m_sentence->activate(link());
    if (action == setFocusAction()) {
      m_sentence->setFocus();
      m_sentence->focusLink(link());
    }
  }
  QStringList keyBindingsForAction(const QString&) const override { return {}; }

 private:
  int link() const {
    const auto& order = m_sentence->layoutNow().linkOrder();
    return m_position < int(order.size()) ? order[std::size_t(m_position)] : -1;
  }
  Sentence* m_sentence;
  QAccessibleInterface* m_parent;
  int m_position;
};

/// A static text with a child for each link.
class AccessibleSentence : public QAccessibleWidget {
 public:
  explicit AccessibleSentence(Sentence* sentence)
      : QAccessibleWidget(sentence, QAccessible::StaticText), m_sentence(sentence) {}
  int childCount() const override { return int(m_sentence->layoutNow().linkOrder().size()); }
  QAccessibleInterface* child(int index) const override {
    if (index < 0 || index >= childCount()) return nullptr;
    return m_children.get(index,
                          [&] { return new AccessibleLink(m_sentence, const_cast<AccessibleSentence*>(this), index); });
  }
  int indexOfChild(const QAccessibleInterface* child) const override {
    for (int i = 0; i < childCount(); ++i)
      if (this->child(i) == child) return i;
    return -1;
  }
  QAccessibleInterface* childAt(int x, int y) const override {
    for (int i = 0; i < childCount(); ++i)
      if (child(i)->rect().contains(x, y)) return child(i);
    return nullptr;
  }
  QAccessibleInterface* focusChild() const override {
    for (int i = 0; i < childCount(); ++i)
      if (child(i)->state().focused) return child(i);
    return nullptr;
  }

 private:
  Sentence* m_sentence;
  mutable AccessibleChildren m_children;
};

/// A chart whose value is the run that is looked at, in words.
class AccessibleRunChart : public QAccessibleWidget, public QAccessibleValueInterface {
 public:
  explicit AccessibleRunChart(RunChart* chart) : QAccessibleWidget(chart, QAccessible::Chart), m_chart(chart) {}
  void* interface_cast(QAccessible::InterfaceType type) override {
    if (type == QAccessible::ValueInterface) return static_cast<QAccessibleValueInterface*>(this);
    return QAccessibleWidget::interface_cast(type);
  }
  QString text(QAccessible::Text kind) const override {
    return kind == QAccessible::Value ? m_chart->chosenText() : QAccessibleWidget::text(kind);
  }
  QVariant currentValue() const override { return m_chart->chosenText(); }
  void setCurrentValue(const QVariant&) override {}
  QVariant maximumValue() const override { return {}; }
  QVariant minimumValue() const override { return {}; }
  QVariant minimumStepSize() const override { return {}; }

 private:
  RunChart* m_chart;
};

QAccessibleInterface* makeInterface(const QString&, QObject* object) {
  if (auto* lanes = qobject_cast<LimitLanes*>(object))
    return new AccessibleTable(lanes, std::make_unique<LanesGrid>(lanes));
  if (auto* strip = qobject_cast<ZoneStrip*>(object))
    return new AccessibleTable(strip, std::make_unique<StripGrid>(strip));
  if (auto* board = qobject_cast<BoardPicture*>(object))
    return new AccessibleTable(board, std::make_unique<BoardGrid>(board));
  if (auto* sentence = qobject_cast<Sentence*>(object)) return new AccessibleSentence(sentence);
  if (auto* chart = qobject_cast<RunChart*>(object)) return new AccessibleRunChart(chart);
  if (auto* lane = qobject_cast<LotLane*>(object)) return new QAccessibleWidget(lane, QAccessible::Graphic);
  return nullptr;
}

}  // namespace

void installAccessibility() {
  [[maybe_unused]] static const bool installed = (QAccessible::installFactory(makeInterface), true);
}

}  // namespace ovenwright::widgets
