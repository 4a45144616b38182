#pragma once
#include <QAbstractTableModel>
#include <memory>

#include "app/desktop/document/run_view.h"
#include "app/desktop/text/format.h"

namespace ovenwright::desktop {

/// All results of a run as a table: one row for each, in the order of Judgement::all().
class ResultsModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  enum Column {
    kVerdict,
    kRequirement,
    kPlacement,
    kValue,
    kUncertainty,
    kUnit,
    kLower,
    kUpper,
    kMargin,
    kProbability,
    kFrom,
    kTo,
    kZones,
    kSource,
    kColumns
  };
  static constexpr int kSortRole = Qt::UserRole;         ///< a number where the column is one
  static constexpr int kVerdictRole = Qt::UserRole + 1;  ///< judge::Verdict as int, in every column
  static constexpr int kInformativeRole = Qt::UserRole + 2;

  using QAbstractTableModel::QAbstractTableModel;
  void setRun(std::shared_ptr<const RunView> view, const Format& format);

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

 private:
  QVariant text(const judge::Outcome& outcome, int column) const;
  QVariant number(const judge::Outcome& outcome, int column) const;

  std::shared_ptr<const RunView> m_view;
  Format m_format;
};

}  // namespace ovenwright::desktop
