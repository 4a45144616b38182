#pragma once
#include <QMenu>
#include <QTableView>
#include <QTimer>

#include "app/desktop/lots/runs_model.h"
#include "app/desktop/table/type_to_find.h"
#include "app/desktop/widgets/theme.h"

namespace ovenwright::desktop {

/// The runs as a table: Space marks, Ctrl+A takes all of them, Ctrl+C copies with headings, Enter opens.
class RunsTable : public QTableView {
  Q_OBJECT
 public:
  explicit RunsTable(RunsModel* model, QWidget* parent = nullptr);

  void setTheme(const widgets::Theme& theme);
  void fitColumns();  ///< to what the first rows hold
  /// The selected rows, or all that were fetched where one or none is, tab separated with headings.
  QString asText() const;
  std::optional<std::string> currentRun() const;
  void setCurrentRun(const std::string& id);
  void markAll(bool marked);
  /// Lists by the column; where it is listed by it already, the other way round. Of other columns nothing happens.
  void sortBy(int column);
  QByteArray columns() const;  ///< their order and widths; empty before there was anything to fit them to
  void restoreColumns(const QByteArray& state);
  /// The columns that can be sorted by, the one that is checked, and the other way round: for keyboards.
  QMenu* sortMenu() { return m_sortMenu; }

 public slots:
  void copy();

 signals:
  void openWanted(const QString& id);
  void currentRunChanged();
  void copied();

 protected:
  void keyboardSearch(const QString& typed) override;
  void keyPressEvent(QKeyEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void selectAll() override;
  void contextMenuEvent(QContextMenuEvent* event) override;

 private:
  void buildSortMenu();
  void showOrder();
  void openCurrent();
  void toggleMarks();
  void showSeen();
  std::vector<int> selectedRows() const;

  RunsModel* m_model;
  QMenu* m_sortMenu;
  TypeToFind m_find;
  QTimer m_seen;                                                               // until the scrolling pauses
  enum class Then { kNothing, kSelectAll, kMarkAll } m_then = Then::kNothing;  // once all rows are fetched
  bool m_fitted = false;
};

}  // namespace ovenwright::desktop
