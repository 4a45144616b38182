#pragma once
#include <QAccessibleWidget>
#include <QRect>
#include <QString>
#include <functional>
#include <memory>
#include <vector>

namespace ovenwright::widgets {

/// Makes the painted widgets known to screen readers; each of their constructors calls it, the first call counts.
void installAccessibility();

/// Children of a painted widget for screen readers: made when first asked for, gone with the widget or on reset().
class AccessibleChildren {
 public:
  AccessibleChildren() = default;
  ~AccessibleChildren() { reset(); }
  AccessibleChildren(const AccessibleChildren&) = delete;
  AccessibleChildren& operator=(const AccessibleChildren&) = delete;
  QAccessibleInterface* get(int index, const std::function<QAccessibleInterface*()>& make);
  void reset();

 private:
  std::vector<QAccessible::Id> m_ids;
};

/// What a painted table says about itself. Cells without text are not there (a requirement that does not bind).
class AccessibleGrid {
 public:
  virtual ~AccessibleGrid() = default;
  virtual int rows() const = 0;
  virtual int columns() const = 0;
  virtual QString rowHeader(int row) const = 0;
  virtual QString columnHeader(int column) const = 0;
  virtual QString cell(int row, int column) const = 0;
  virtual QRect rect(int row, int column) const = 0;  ///< in the widget's coordinates; −1: of the header
  virtual bool chosen(int row, int column) const = 0;
  virtual void press(int row, int column) = 0;
  /// Where there is no table but one line that leads to what is missing: a link. Else empty.
  virtual QString line() const { return {}; }
  virtual void pressLine() {}
};

/// A widget that paints a table, as a table, or as a link where it is one line. In the table children are counted row
/// by row with a header row and a header column.
class AccessibleTable : public QAccessibleWidget, public QAccessibleTableInterface {
 public:
  AccessibleTable(QWidget* widget, std::unique_ptr<AccessibleGrid> grid);
  ~AccessibleTable() override;

  const AccessibleGrid& grid() const { return *m_grid; }
  AccessibleGrid& grid() { return *m_grid; }
  QWidget* painted() const { return widget(); }
  int indexOf(int row, int column) const { return (row + 1) * (m_grid->columns() + 1) + column + 1; }

  void* interface_cast(QAccessible::InterfaceType type) override;
  QAccessible::Role role() const override;
  QString text(QAccessible::Text kind) const override;
  QStringList actionNames() const override;
  void doAction(const QString& action) override;
  int childCount() const override;
  QAccessibleInterface* child(int index) const override;
  int indexOfChild(const QAccessibleInterface* child) const override;
  QAccessibleInterface* childAt(int x, int y) const override;
  QAccessibleInterface* focusChild() const override;

  QAccessibleInterface* cellAt(int row, int column) const override;
  QAccessibleInterface* caption() const override { return nullptr; }
  QAccessibleInterface* summary() const override { return nullptr; }
  QString columnDescription(int column) const override { return m_grid->columnHeader(column); }
  QString rowDescription(int row) const override { return m_grid->rowHeader(row); }
  int columnCount() const override { return m_grid->columns(); }
  int rowCount() const override { return m_grid->rows(); }
  int selectedCellCount() const override { return int(selectedCells().size()); }
  int selectedColumnCount() const override { return 0; }
  int selectedRowCount() const override { return 0; }
  QList<QAccessibleInterface*> selectedCells() const override;
  QList<int> selectedColumns() const override { return {}; }
  QList<int> selectedRows() const override { return {}; }
  bool isColumnSelected(int) const override { return false; }
  bool isRowSelected(int) const override { return false; }
  bool selectRow(int) override { return false; }
  bool selectColumn(int) override { return false; }
  bool unselectRow(int) override { return false; }
  bool unselectColumn(int) override { return false; }
  void modelChange(QAccessibleTableModelChangeEvent* event) override;

 private:
  std::unique_ptr<AccessibleGrid> m_grid;
  mutable AccessibleChildren m_children;
};

/// Tells screen readers that a cell of a painted table has the focus. @param columns  of the table
void announceCell(QWidget* widget, int row, int column, int columns);

}  // namespace ovenwright::widgets
