#pragma once
#include <QStyledItemDelegate>
#include <functional>

namespace ovenwright::desktop {

/// Cells of an editor's table: a list where a cell is a choice, else a line that tells every keystroke.
class TypedDelegate : public QStyledItemDelegate {
 public:
  struct Cells {
    std::function<QString(const QModelIndex&)> title;        ///< for screen readers
    std::function<QStringList(const QModelIndex&)> choices;  ///< empty where a cell is typed; may be null
    std::function<void(const QModelIndex&, const QString&)> typed;
  };
  TypedDelegate(Cells cells, QObject* parent) : QStyledItemDelegate(parent), m_cells(std::move(cells)) {}

  QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  void setEditorData(QWidget* editor, const QModelIndex& index) const override;
  void setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const override;

 private:
  Cells m_cells;
};

}  // namespace ovenwright::desktop
