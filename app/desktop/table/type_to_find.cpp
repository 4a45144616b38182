#include "app/desktop/table/type_to_find.h"

#include <QApplication>

namespace ovenwright::desktop {

QModelIndex TypeToFind::next(const QAbstractItemModel& model, const QModelIndex& current, const QString& typed) {
  const bool fresh = !m_since.isValid() || m_since.elapsed() > QApplication::keyboardInputInterval();
  if (fresh && typed.trimmed().isEmpty()) return {};
  m_since.start();
  m_text = fresh ? typed : m_text + typed;
  const bool again = m_text.size() > 1 && m_text.count(m_text.front(), Qt::CaseInsensitive) == m_text.size();
  const QString wanted = again ? m_text.left(1) : m_text;
  const int rows = model.rowCount(), columns = model.columnCount();
  const int first = current.isValid() ? current.row() + (fresh || again ? 1 : 0) : 0;
  for (int tried = 0; tried < rows; ++tried) {
    const int row = (first + tried) % rows;
    for (int column = 0; column < columns; ++column) {
      if (model.index(row, column).data().toString().startsWith(wanted, Qt::CaseInsensitive))
        return model.index(row, current.isValid() ? current.column() : 0);
    }
  }
  return current;
}

}  // namespace ovenwright::desktop
