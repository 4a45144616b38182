#pragma once
#include <QElapsedTimer>
#include <QModelIndex>
#include <QString>

namespace ovenwright::desktop {

/// What is typed over a table goes to a row by any of its cells, whatever column is current: nobody knows of a current
/// column who looks for a name. The same key again goes to the next row, and so does a pause and a new start.
class TypeToFind {
 public:
  /// The cell in `current`'s column of the next row that has a cell beginning with what was typed so far, case aside;
  /// `current` where there is none. None where a blank would begin it: that marks. Cost: O(cells).
  QModelIndex next(const QAbstractItemModel& model, const QModelIndex& current, const QString& typed);

 private:
  QElapsedTimer m_since;
  QString m_text;
};

}  // namespace ovenwright::desktop
