#include "app/desktop/editor/cell_table.h"

namespace ovenwright::desktop {

CellTable::CellTable(QWidget* parent) : QTableView(parent) { setTabKeyNavigation(true); }

bool CellTable::isAtEnd(bool next) const {
  const QModelIndex at = currentIndex();
  if (!model() || !at.isValid()) return true;
  return next ? at.row() == model()->rowCount() - 1 && at.column() == model()->columnCount() - 1
              : at.row() == 0 && at.column() == 0;
}

bool CellTable::focusNextPrevChild(bool next) {
  return isAtEnd(next) ? QAbstractScrollArea::focusNextPrevChild(next) : QTableView::focusNextPrevChild(next);
}

void CellTable::closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) {
  const bool next = hint == QAbstractItemDelegate::EditNextItem;
  const bool leaves = (next || hint == QAbstractItemDelegate::EditPreviousItem) && isAtEnd(next);
  QTableView::closeEditor(editor, leaves ? QAbstractItemDelegate::NoHint : hint);
  if (leaves) QAbstractScrollArea::focusNextPrevChild(next);
}

}  // namespace ovenwright::desktop
