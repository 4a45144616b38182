#include "app/desktop/widgets/accessible_grid.h"

#include <QWidget>
#include <algorithm>

namespace ovenwright::widgets {
namespace {

/// A cell or a header of an AccessibleTable; row or column −1: header.
class AccessibleCell : public QAccessibleInterface,
                       public QAccessibleTableCellInterface,
                       public QAccessibleActionInterface {
 public:
  AccessibleCell(AccessibleTable* table, int row, int column) : m_table(table), m_row(row), m_column(column) {}

  bool isValid() const override {
    return m_table->isValid() && m_row < m_table->rowCount() && m_column < m_table->columnCount();
  }
  QObject* object() const override { return nullptr; }
  QWindow* window() const override { return m_table->window(); }
  QAccessibleInterface* parent() const override { return m_table; }
  QAccessibleInterface* child(int) const override { return nullptr; }
  QAccessibleInterface* childAt(int, int) const override { return nullptr; }
  int childCount() const override { return 0; }
  int indexOfChild(const QAccessibleInterface*) const override { return -1; }

  QString text(QAccessible::Text kind) const override {
    if (kind != QAccessible::Name || !isValid()) return {};
    const AccessibleGrid& grid = m_table->grid();
    if (m_row < 0) return m_column < 0 ? QString() : grid.columnHeader(m_column);
    return m_column < 0 ? grid.rowHeader(m_row) : grid.cell(m_row, m_column);
  }
  void setText(QAccessible::Text, const QString&) override {}

  QRect rect() const override {
    if (!isValid()) return {};
    const QRect rect = m_table->grid().rect(m_row, m_column);
    return {m_table->painted()->mapToGlobal(rect.topLeft()), rect.size()};
  }

  QAccessible::Role role() const override {
    if (m_row < 0) return QAccessible::ColumnHeader;
    return m_column < 0 ? QAccessible::RowHeader : QAccessible::Cell;
  }

  QAccessible::State state() const override {
    QAccessible::State state;
    if (!isValid()) {
      state.invalid = true;
      return state;
    }
    const bool isCell = m_row >= 0 && m_column >= 0;
    state.invisible = isCell && text(QAccessible::Name).isEmpty();
    state.selectable = state.focusable = isCell && !state.invisible;
    state.selected = isCell && m_table->grid().chosen(m_row, m_column);
    state.focused = state.selected && m_table->painted()->hasFocus();
    return state;
  }

  void* interface_cast(QAccessible::InterfaceType type) override {
    if (type == QAccessible::TableCellInterface) return static_cast<QAccessibleTableCellInterface*>(this);
    if (type == QAccessible::ActionInterface && m_row >= 0 && m_column >= 0)
      return static_cast<QAccessibleActionInterface*>(this);
    return nullptr;
  }

  bool isSelected() const override { return state().selected; }
  int columnIndex() const override { return m_column; }
  int rowIndex() const override { return m_row; }
  int columnExtent() const override { return 1; }
  int rowExtent() const override { return 1; }
  QList<QAccessibleInterface*> columnHeaderCells() const override { return {m_table->child(m_column + 1)}; }
  QList<QAccessibleInterface*> rowHeaderCells() const override {
    return {m_table->child((m_row + 1) * (m_table->columnCount() + 1))};
  }
  QAccessibleInterface* table() const override { return m_table; }

  QStringList actionNames() const override { return {pressAction()}; }
  void doAction(const QString& action) override {
    if (action == pressAction() && isValid() && !state().invisible) m_table->grid().press(m_row, m_column);
  }
  QStringList keyBindingsForAction(const QString&) const override { return {}; }

 private:
  AccessibleTable* m_table;
  int m_row, m_column;
};

}  // namespace

QAccessibleInterface* AccessibleChildren::get(int index, const std::function<QAccessibleInterface*()>& make) {
  if (index < 0) return nullptr;
  const auto at = static_cast<std::size_t>(index);
  if (at >= m_ids.size()) m_ids.resize(at + 1, 0);
  if (m_ids[at] == 0) m_ids[at] = QAccessible::registerAccessibleInterface(make());
  return QAccessible::accessibleInterface(m_ids[at]);
}

void AccessibleChildren::reset() {
  for (const QAccessible::Id id : m_ids)
    if (id != 0) QAccessible::deleteAccessibleInterface(id);
  m_ids.clear();
}

AccessibleTable::AccessibleTable(QWidget* widget, std::unique_ptr<AccessibleGrid> grid)
    : QAccessibleWidget(widget, QAccessible::Table), m_grid(std::move(grid)) {}

AccessibleTable::~AccessibleTable() = default;

void* AccessibleTable::interface_cast(QAccessible::InterfaceType type) {
  if (type == QAccessible::TableInterface) return static_cast<QAccessibleTableInterface*>(this);
  return QAccessibleWidget::interface_cast(type);
}

QAccessible::Role AccessibleTable::role() const {
  return m_grid->line().isEmpty() ? QAccessible::Table : QAccessible::Link;
}

QString AccessibleTable::text(QAccessible::Text kind) const {
  const QString line = m_grid->line();
  return kind == QAccessible::Name && !line.isEmpty() ? line : QAccessibleWidget::text(kind);
}

QStringList AccessibleTable::actionNames() const {
  QStringList names = QAccessibleWidget::actionNames();
  if (!m_grid->line().isEmpty()) names.prepend(pressAction());
  return names;
}

void AccessibleTable::doAction(const QString& action) {
  if (action == pressAction() && !m_grid->line().isEmpty()) return m_grid->pressLine();
  QAccessibleWidget::doAction(action);
}

int AccessibleTable::childCount() const {
  return m_grid->rows() == 0 ? 0 : (m_grid->rows() + 1) * (m_grid->columns() + 1);
}

QAccessibleInterface* AccessibleTable::child(int index) const {
  if (index < 0 || index >= childCount()) return nullptr;
  const int across = m_grid->columns() + 1;
  return m_children.get(index, [&] {
    return new AccessibleCell(const_cast<AccessibleTable*>(this), index / across - 1, index % across - 1);
  });
}

int AccessibleTable::indexOfChild(const QAccessibleInterface* child) const {
  for (int i = 0; i < childCount(); ++i)
    if (this->child(i) == child) return i;
  return -1;
}

QAccessibleInterface* AccessibleTable::childAt(int x, int y) const {
  for (int i = 0; i < childCount(); ++i) {
    QAccessibleInterface* one = child(i);
    if (!one->state().invisible && one->rect().contains(x, y)) return one;
  }
  return nullptr;
}

QAccessibleInterface* AccessibleTable::focusChild() const {
  if (!widget()->hasFocus()) return nullptr;
  const auto cells = selectedCells();
  return cells.isEmpty() ? nullptr : cells.first();
}

QAccessibleInterface* AccessibleTable::cellAt(int row, int column) const {
  if (row < 0 || column < 0 || row >= m_grid->rows() || column >= m_grid->columns()) return nullptr;
  return child(indexOf(row, column));
}

QList<QAccessibleInterface*> AccessibleTable::selectedCells() const {
  QList<QAccessibleInterface*> cells;
  for (int row = 0; row < m_grid->rows(); ++row)
    for (int column = 0; column < m_grid->columns(); ++column)
      if (m_grid->chosen(row, column)) cells.append(cellAt(row, column));
  return cells;
}

void AccessibleTable::modelChange(QAccessibleTableModelChangeEvent*) { m_children.reset(); }

void announceCell(QWidget* widget, int row, int column, int columns) {
  if (!QAccessible::isActive()) return;
  QAccessibleEvent event(widget, QAccessible::Focus);
  event.setChild((row + 1) * (columns + 1) + column + 1);
  QAccessible::updateAccessibility(&event);
}

}  // namespace ovenwright::widgets
