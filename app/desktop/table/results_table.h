#pragma once
#include <QTableView>
#include <memory>

#include "app/desktop/document/run_view.h"
#include "app/desktop/table/type_to_find.h"
#include "app/desktop/text/format.h"
#include "app/desktop/widgets/theme.h"

class QSortFilterProxyModel;

namespace ovenwright::desktop {

class ResultsModel;

/// The results as a sortable, filterable table that a spreadsheet takes over with its headings. Space marks rows: they
/// stay marked while the arrows go on.
class ResultsTable : public QTableView {
  Q_OBJECT
 public:
  explicit ResultsTable(QWidget* parent = nullptr);
  void setRun(std::shared_ptr<const RunView> view, const Format& format);
  void setTheme(const widgets::Theme& theme);
  void setFilter(const QString& text);
  /// Chosen elsewhere; emits nothing.
  void setChosen(std::optional<std::size_t> outcome);
  /// The selected rows, or all that are shown where none or one is, tab separated with headings.
  QString asText() const;
  QByteArray columns() const;  ///< their order and widths
  void restoreColumns(const QByteArray& state);

 public slots:
  void copy();

 signals:
  void chosen(std::size_t outcome);
  void activatedOutcome(std::size_t outcome);
  void copied();

 protected:
  void keyboardSearch(const QString& typed) override;
  void keyPressEvent(QKeyEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  QItemSelectionModel::SelectionFlags selectionCommand(const QModelIndex& index, const QEvent* event) const override;

 private:
  ResultsModel* m_model;
  QSortFilterProxyModel* m_sorted;
  TypeToFind m_find;
  bool m_quiet = false;
  bool m_marking = false;   // since Space was pressed
  bool m_restored = false;  // columns are as they were left, not as wide as their texts
};

}  // namespace ovenwright::desktop
