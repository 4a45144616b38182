#pragma once
#include <QAbstractTableModel>
#include <map>
#include <utility>

#include "app/desktop/editor/typed_number.h"
#include "core/oven/oven.h"

namespace ovenwright::desktop {

/// What an oven has beside its zones. The two ends of a range are fields of their own.
enum class OvenField {
  kName,
  kAmbient,
  kEntrance,
  kExit,
  kLeastSetpoint,
  kMostSetpoint,
  kLeastSpeed,
  kMostSpeed,
  kStep,
  kSides,
  kCount
};

/// An oven while it is edited: one row for each zone. What is typed is kept even where it breaks a rule, and what is
/// wrong with it is said; only a sound oven is handed on. Numbers stand in the units of the file.
class OvenModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  enum Column { kZone, kKind, kBegins, kLength, kGap, kTimes, kColumns };

  using QAbstractTableModel::QAbstractTableModel;

  /// A number as it stands in its field, and what it means.
  struct Typed {
    QString text;
    TypedNumber number;
  };
  /// An oven as it is typed, with the texts that are no value or wait for their other end.
  struct State {
    oven::Oven draft;
    std::map<OvenField, Typed> typed = {};
    std::map<std::pair<int, int>, QString> unread = {};  ///< cells by row and column
  };

  void setOven(const oven::Oven& oven);
  const State& state() const { return m_state; }
  void restore(const State& state);  ///< what was typed from the oven that was set
  void setTimes(QStringList times);  ///< when the board is in each zone, as it is shown
  const oven::Oven& draft() const { return m_state.draft; }
  /// What keeps the draft from being used; empty where every rule is met.
  QString problem() const { return m_problem; }
  /// The problem there would be with this text in a cell: for every keystroke.
  QString problemWith(const QModelIndex& cell, const QString& text) const;
  QString text(OvenField field) const;  ///< as it was typed, else as the file would have it
  /// Whether a text means what text() does: what is typed stands as it is typed.
  bool says(OvenField field, const QString& typed) const;
  void type(OvenField field, const QString& text);
  static QString title(OvenField field);  ///< with its unit

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
  bool setData(const QModelIndex& index, const QVariant& value, int role) override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;

 signals:
  void problemChanged();
  /// The draft is sound and another than before. @param mergeKey  of edits that are one step back, −1: none
  void edited(const QString& what, int mergeKey);

 private:
  QString cellText(const oven::Zone& zone, int row, int column) const;
  std::optional<double> endOf(OvenField field) const;  ///< of a limit that has two, in the draft
  void check();
  void handOn(const QString& what, int mergeKey);  ///< where it is sound

  State m_state;
  std::string m_handedOn;  // the draft that was sound last
  std::vector<QString> m_times;
  QString m_problem;
};

/// What keeps an oven from being used, as one sentence; empty where every rule is met.
QString ovenProblem(const oven::Oven& oven);

}  // namespace ovenwright::desktop
