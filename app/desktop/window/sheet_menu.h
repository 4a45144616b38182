#pragma once
#include <QObject>
#include <optional>

#include "app/sheet/sheet.h"

class QAction;
class QMenu;
class QPrinter;

namespace ovenwright::desktop {

class Document;
class Settings;

/// The actions of the File menu that print, preview and export the sheet of the run that is shown.
class SheetMenu : public QObject {
  Q_OBJECT
 public:
  /// @param window  parent of its dialogs
  SheetMenu(Document* document, Settings* settings, QWidget* window);

  void addTo(QMenu* file);
  QAction* preview() const { return m_preview; }  ///< its data is the short word for a button
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
};

}  // namespace ovenwright::desktop
