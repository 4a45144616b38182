#pragma once
#include <QDialog>
#include <QStringList>
#include <optional>
#include <vector>

#include "core/judge/judgement.h"

class QComboBox;
class QLabel;
class QPushButton;
class QTableWidget;
class QTableWidgetItem;

namespace ovenwright::desktop {

/// A run that may belong to a group; what is not known of it is empty.
struct GroupMember {
  QString key;  ///< what it is told apart by
  QString name;
  QString recipe, lot, oven, board;
  judge::Verdict verdict = judge::Verdict::kUndetermined;
};

/// Puts runs into two groups to be compared: all of one recipe, lot, oven or board into A and all of another into B, or
/// each by its own mark. A run may stay out; none is in both.
class GroupPicker : public QDialog {
  Q_OBJECT
 public:
  explicit GroupPicker(QWidget* parent = nullptr);

  /// Asks about these, in order of time. Without sides they are divided by the first of recipe, lot, oven and board in
  /// which they differ, the oldest run's into A and the newest run's into B; where they differ in none, the older half
  /// into A. @param sides  by run, 0 for A, 1 for B; empty: not said
  void ask(std::vector<GroupMember> members, const std::vector<std::optional<std::size_t>>& sides = {});

  QComboBox* by() { return m_by; }  ///< what the runs are divided by
  QComboBox* value(std::size_t side) { return m_values[side]; }
  QTableWidget* table() { return m_table; }
  int markColumn(std::size_t side) const;
  QStringList group(std::size_t side) const;  ///< keys, in order of time

 public slots:
  void take();  ///< as the button does

 signals:
  void picked(const QStringList& a, const QStringList& b);

 private:
  void fillTable();
  void fillProperties();
  void fillValues();
  void divide();
  void setSide(int row, std::optional<std::size_t> side);
  void itemChanged(QTableWidgetItem* item);
  void refresh();

  std::vector<GroupMember> m_members;
  QComboBox* m_by;
  QComboBox* m_values[2];
  QTableWidget* m_table;
  QLabel* m_state;
  QPushButton* m_take;
  bool m_quiet = false;  // marks are set by what the runs are divided by
};

}  // namespace ovenwright::desktop
