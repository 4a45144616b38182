#pragma once
#include <QObject>
#include <functional>
#include <optional>

#include "app/sheet/compare_sheet.h"
#include "app/sheet/sheet.h"

class QAction;
class QMenu;
class QPrinter;

namespace ovenwright::desktop {

class Document;
class Settings;

/// The actions of the File menu that print, preview and export the sheet of what is shown: a run, or a comparison.
class SheetMenu : public QObject {
  Q_OBJECT
 public:
  /// @param window  parent of its dialogs
  SheetMenu(Document* document, Settings* settings, QWidget* window);

  void addTo(QMenu* file);
  QAction* preview() const { return m_preview; }  ///< its data is the short word for a button
  /// Print, preview and export, for other menus.
  QList<QAction*> actions() const { return m_actions; }
  /// While `shown` says so, sheets are of the comparison that `record` gives, and there is none where it gives none.
  void setComparison(std::function<bool()> shown, std::function<std::optional<sheet::ComparisonRecord>()> record);
  void refresh();  ///< whether there is something to print may have changed
  /// The sheet of the run that is shown for the printer's paper, onto it. False: no result to show, or the printer
  /// took no more pages.
  bool paint(QPrinter& printer);
  /// Writes the sheet of the run that is shown; the ending says what: .pdf, .html, .csv, .json. Never over an open log.
  /// False: failed() says why, unless there is no result to show.
  bool exportTo(const QString& path);

 signals:
  void done(const QString& text);    ///< for the status line
  void failed(const QString& text);  ///< one sentence

 private:
  /// Nothing while the result for the present setup is not known.
  std::optional<sheet::RunRecord> record() const;
  std::optional<sheet::ComparisonRecord> comparison() const;
  /// Says so where the logo of the settings is none.
  sheet::Style style();
  std::shared_ptr<QPrinter> printer() const;
  void print();
  void showPreview();
  void askExport();

  Document* m_document;
  Settings* m_settings;
  QWidget* m_window;
  QAction* m_preview = nullptr;
  QList<QAction*> m_actions;
  std::function<bool()> m_isComparing;
  std::function<std::optional<sheet::ComparisonRecord>()> m_comparison;
};

}  // namespace ovenwright::desktop
