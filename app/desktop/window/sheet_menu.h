#pragma once
#include <QObject>
#include <optional>

#include "app/sheet/sheet.h"

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
  /// The sheet of the run that is shown for the printer's paper, onto it; nothing where no run is open.
  void paint(QPrinter& printer) const;
  /// Writes the sheet of the run that is shown; the ending says what: .pdf, .html, .csv, .json. False: failed() says
  /// why.
  bool exportTo(const QString& path);

 signals:
  void done(const QString& text);    ///< for the status line
  void failed(const QString& text);  ///< one sentence

 private:
  std::optional<sheet::RunRecord> record() const;
  sheet::Style style() const;
  void print();
  void preview();
  void askExport();
  void askCompany();
  void askLogo();

  Document* m_document;
  Settings* m_settings;
  QWidget* m_window;
};

}  // namespace ovenwright::desktop
