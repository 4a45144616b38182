#pragma once
#include <QWidget>

#include "app/desktop/archive/archive_link.h"
#include "app/desktop/text/format.h"
#include "app/desktop/window/notice.h"

class QSplitter;
class QStackedWidget;

namespace ovenwright::widgets {
class Sentence;
}

namespace ovenwright::desktop {

class FiguresPane;
class FilterBar;
class LotSheetPanel;
class RunsModel;
class RunsTable;
class Settings;
class SidePanel;

/// The archive: its runs as a table that can be filtered, control charts of the runs that are shown, and the sheet of
/// those that are marked.
class LotsPage : public QWidget {
  Q_OBJECT
 public:
  LotsPage(ArchiveLink* archive, Settings* settings, QWidget* parent = nullptr);
  ~LotsPage() override;

  void setFormat(const Format& format);
  LotSheetPanel* panel() { return m_panel; }
  FilterBar* filterBar() { return m_filter; }
  RunsModel* model() { return m_model; }
  RunsTable* table() { return m_table; }
  FiguresPane* figures() { return m_figures; }
  /// The parts that F6 goes through, in order.
  QList<QWidget*> parts() const;
  bool isPanelShown() const;
  void setPanelShown(bool shown);
  void find();              ///< the field for words
  void copy();              ///< the table, with headings
  QPixmap picture() const;  ///< of the statistics
  void exportTableTo(const QString& path);
  bool isBusy() const;  ///< the list or its statistics are not there yet
  void saveState();
  QString statusText() const;   ///< for the left of the status line
  QString archiveText() const;  ///< for its right
  /// What stands in place of the list; empty where the list is shown.
  const std::optional<Notice>& notice() const { return m_notice; }

 signals:
  void statusChanged();
  void openWanted(const QString& id);
  void compareWanted(const std::vector<std::string>& ids);  ///< the marked runs, the oldest first
  void noted(const QString& text);
  void troubled(const QString& title, const ovenwright::Error& error);
  void panelShownChanged(bool shown);

 protected:
  void showEvent(QShowEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  void build();
  void connectParts();
  void reload();
  void refreshNames();
  void refreshMarks();
  void exportTable();
  void style();
  void refreshNotice();

  ArchiveLink* m_archive;
  Settings* m_settings;
  Format m_format;
  QWidget* m_left;
  FilterBar* m_filter;
  RunsModel* m_model;
  RunsTable* m_table;
  QStackedWidget* m_content;
  widgets::Sentence* m_message;
  FiguresPane* m_figures;
  QSplitter* m_rows;
  LotSheetPanel* m_panel;
  QSplitter* m_columns;
  SidePanel* m_side = nullptr;
  QString m_where;  // the archive whose runs can be marked
  std::optional<Notice> m_notice;
  std::optional<Error> m_failure;        // of the last list
  std::optional<std::string> m_current;  // kept over a new list
  bool m_busy = false;
};

}  // namespace ovenwright::desktop
