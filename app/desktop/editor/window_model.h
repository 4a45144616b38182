#pragma once
#include <QAbstractTableModel>
#include <map>

#include "app/desktop/editor/requirement_fields.h"
#include "core/units/result.h"

namespace ovenwright::desktop {

/// A window while it is edited: one row for each requirement. What is typed is kept even where it breaks a rule, and
/// what is wrong with it is said; only a sound window is handed on.
class WindowModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  using QAbstractTableModel::QAbstractTableModel;

  void setWindow(const window::ProcessWindow& window);
  const window::ProcessWindow& draft() const { return m_draft; }
  /// What keeps the draft from being used; empty where every rule is met.
  QString problem() const { return m_problem; }
  /// The problem there would be with this text in a cell: for every keystroke.
  QString problemWith(const QModelIndex& cell, const QString& text) const;
  /// Any other change of the draft, told by signal as those of cells are.
  void change(const QString& what, const std::function<void(window::ProcessWindow&)>& change, int mergeKey = -1);
  void addRequirement();
  void removeRequirement(int row);

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
  bool setData(const QModelIndex& index, const QVariant& value, int role) override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;

 signals:
  void problemChanged();
  void edited(const QString& what, int mergeKey);  ///< the draft is sound and another than before

 private:
  void check();
  window::ProcessWindow m_draft;
  std::map<std::pair<int, int>, QString> m_unread;  // cells whose text is no value
  QString m_problem;
};

/// What keeps a window from being used, as one sentence; empty where every rule is met.
QString windowProblem(const window::ProcessWindow& window);

}  // namespace ovenwright::desktop
