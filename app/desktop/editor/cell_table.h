#pragma once
#include <QTableView>

namespace ovenwright::desktop {

/// A table whose cells Tab goes through, and which it leaves behind the last cell, backwards before the first.
class CellTable : public QTableView {
  Q_OBJECT
 public:
  explicit CellTable(QWidget* parent = nullptr);

 protected:
  bool focusNextPrevChild(bool next) override;
  void closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) override;

 private:
  bool isAtEnd(bool next) const;
};

}  // namespace ovenwright::desktop
