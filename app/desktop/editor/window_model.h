#pragma once
#include <QAbstractTableModel>
#include <map>

#include "app/desktop/editor/requirement_fields.h"
#include "core/units/result.h"

namespace ovenwright::desktop {

/// The numbers of a window beside its requirements.
enum class WindowNumber { kLiquidus, kSolidus, kInstrument };

/// A window while it is edited: one row for each requirement. What is typed is kept even where it breaks a rule, and
/// what is wrong with it is said; the document takes a sound window alone.
class WindowModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  using QAbstractTableModel::QAbstractTableModel;

  /// A window as it is typed, with the texts that are no value.
  struct State {
    window::ProcessWindow draft;
    std::map<std::pair<int, int>, QString> unread = {};  ///< by row and column
    std::map<WindowNumber, QString> unread_numbers = {};
  };

  void setWindow(const window::ProcessWindow& window) { restore({window}); }
  const window::ProcessWindow& draft() const { return m_state.draft; }
  const State& state() const { return m_state; }
  /// As it was before the change that edited() told last.
  const State& before() const { return m_before; }
  void restore(const State& state);
  /// What keeps the draft from being used; empty where every rule is met.
  QString problem() const { return m_problem; }
  /// The problem there would be with this text in a cell: for every keystroke.
  QString problemWith(const QModelIndex& cell, const QString& text) const;
  /// Any other change of the draft, told by signal as those of cells are.
  void change(const QString& what, const std::function<void(window::ProcessWindow&)>& change, int mergeKey = -1);
  /// What is typed for a number of the window; a text that is none stays, and is told.
  void type(WindowNumber number, const QString& text, int mergeKey);
  /// As it was typed, else as the draft has it.
  QString text(WindowNumber number) const;
  static QString title(WindowNumber number);
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
  void edited(const QString& what, int mergeKey);  ///< the draft is another than before, sound or not

 private:
  void check();
  State m_state, m_before;
  QString m_problem;
};

/// What keeps a window from being used, as one sentence; empty where every rule is met.
QString windowProblem(const window::ProcessWindow& window);
QString windowProblem(const WindowModel::State& state);

}  // namespace ovenwright::desktop
