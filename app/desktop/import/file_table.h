#pragma once
#include <QAbstractTableModel>
#include <QTableView>
#include <memory>

#include "app/desktop/document/run_view.h"
#include "app/desktop/import/fault_lines.h"
#include "app/desktop/widgets/theme.h"

namespace ovenwright::desktop {

class PlainHeader;

/// What stands in the file: the lines that the reader shows, in their cells, with what each column was taken for.
class FileModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  enum class Role { kTime, kChannel, kOther };
  static constexpr int kHeaderRole = Qt::UserRole;      ///< the row is the header
  static constexpr int kFaultRole = Qt::UserRole + 1;   ///< the cell was taken out as a fault
  static constexpr int kWholeRole = Qt::UserRole + 3;   ///< the line is one text over all columns: a comment, a gap
  static constexpr int kGapRole = Qt::UserRole + 2;     ///< "212 rows more" stands here
  static constexpr int kColumnRole = Qt::UserRole + 4;  ///< of a heading: the column's Role

  using QAbstractTableModel::QAbstractTableModel;
  void setRun(std::shared_ptr<const RunView> view, FaultLines faults);
  /// Lines of a file that could not be read, the failing one in the middle.
  void setPlainLines(std::vector<log::ShownLine> lines, std::size_t failing_line);

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
  Role role(int column) const;  ///< column from 0
  QString cell(int row, int column) const;

 private:
  struct Row {
    const log::ShownLine* line = nullptr;  ///< null: a gap
    std::size_t missing = 0;
  };
  void arrange();

  std::shared_ptr<const RunView> m_view;
  std::vector<log::ShownLine> m_lines;
  std::vector<FaultLines::Cell> m_faults;
  std::size_t m_failing = 0;
  std::vector<Row> m_rows;
  int m_columns = 0;
};

class FileTable : public QTableView {
  Q_OBJECT
 public:
  explicit FileTable(QWidget* parent = nullptr);
  FileModel* fileModel() { return m_model; }
  void setTheme(const widgets::Theme& theme);
  void fitColumns();  ///< to the cells of the table; comments run over all columns
  bool eventFilter(QObject* object, QEvent* event) override;

 signals:
  /// A heading was pressed: what else the column (from 1) could be.
  void columnPressed(int column, const QPoint& at);

 private:
  FileModel* m_model;
  PlainHeader *m_columns, *m_lines;
  QWidget* m_corner = nullptr;  // between both headers: plain ground as they are
};

}  // namespace ovenwright::desktop
