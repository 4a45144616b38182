#include "app/desktop/editor/typed_delegate.h"

#include <QComboBox>
#include <QLineEdit>

namespace ovenwright::desktop {

QWidget* TypedDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                                     const QModelIndex& index) const {
  const QStringList choices = m_cells.choices ? m_cells.choices(index) : QStringList{};
  if (!choices.isEmpty()) {
    auto* box = new QComboBox(parent);
    box->addItems(choices);
    box->setAccessibleName(m_cells.title(index));
    return box;
  }
  QWidget* editor = QStyledItemDelegate::createEditor(parent, option, index);
  editor->setAccessibleName(m_cells.title(index));
  if (auto* line = qobject_cast<QLineEdit*>(editor)) {
    line->setAlignment(Qt::Alignment(index.data(Qt::TextAlignmentRole).toInt()));
    const QPersistentModelIndex cell(index);
    connect(line, &QLineEdit::textEdited, this, [this, cell](const QString& text) { m_cells.typed(cell, text); });
  }
  return editor;
}

void TypedDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const {
  auto* box = qobject_cast<QComboBox*>(editor);
  if (!box) {
    QStyledItemDelegate::setEditorData(editor, index);
    return;
  }
  box->setCurrentText(index.data(Qt::EditRole).toString());
}

void TypedDelegate::setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const {
  if (const auto* box = qobject_cast<QComboBox*>(editor)) {
    model->setData(index, box->currentText(), Qt::EditRole);
    return;
  }
  QStyledItemDelegate::setModelData(editor, model, index);
}

}  // namespace ovenwright::desktop
