#pragma once
#include <QWidget>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/units/result.h"

class QCheckBox;
class QLabel;
class QPrinter;
class QProgressBar;
class QPushButton;
class QStackedWidget;
class QToolButton;

namespace ovenwright::sheet {
enum class FileKind;
}

namespace ovenwright::desktop {

class ArchiveLink;
class Document;
class LotSheetJob;
class PageView;
class Settings;
class SheetFilesJob;
class PrintJob;
struct LotSheets;
struct SheetPages;

/// At the right of the Lots page: the sheet of the marked runs, page by page as it is printed; printed, written as PDF
/// or HTML, and noted in the record as printed. Runs of several lots have a sheet for each lot.
class LotSheetPanel : public QWidget {
  Q_OBJECT
 public:
  LotSheetPanel(ArchiveLink* archive, Settings* settings, QWidget* parent = nullptr);
  ~LotSheetPanel() override;

  /// Ids of the marked runs, the oldest run first; where none is marked, of the run that is looked at.
  void setRecords(std::vector<std::string> ids);
  const std::vector<std::string>& records() const { return m_ids; }
  /// Whose open logs no file takes the place of.
  void setDocument(const Document* document) { m_document = document; }

  /// Lays the sheets out anew after the settings changed what stands on them.
  void layOutAgain();
  PageView* view() { return m_view; }
  bool isMaking() const;  ///< the preview, a file or a print
  /// Prints the sheets on a printer that was set up; the paper is the printer's.
  void printOn(std::shared_ptr<QPrinter> printer);
  /// Writes the sheet of the one lot there is; the ending says what.
  void saveTo(const QString& path);
  void showSeveralLots();

 signals:
  void noted(const QString& text);  ///< for the status line
  void troubled(const QString& title, const ovenwright::Error& error);

 protected:
  void showEvent(QShowEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  QWidget* buildHead();
  QWidget* buildFoot();
  void make();  ///< the preview
  void take(const std::shared_ptr<const LotSheets>& sheets);
  void showTrouble(const Error& error);
  void refresh();
  void askPrint();
  void askSave(sheet::FileKind kind);
  void print(const std::shared_ptr<const SheetPages>& pages);
  void noteAsPrinted();
  void stop();
  void style();
  QString lotText() const;  ///< "QM-2298", "3 lots"

  ArchiveLink* m_archive;
  Settings* m_settings;
  const Document* m_document = nullptr;
  std::vector<std::string> m_ids;
  std::shared_ptr<const LotSheets> m_sheets;  ///< of m_ids, or of what was shown before while those are made
  bool m_wanted = false;                      ///< to be made when the panel is shown
  std::optional<std::pair<int, int>> m_judged;
  LotSheetJob *m_preview, *m_forPrint;
  SheetFilesJob* m_files;
  PrintJob* m_print = nullptr;
  std::shared_ptr<QPrinter> m_printer;
  std::vector<std::string> m_printing;

  QLabel *m_about, *m_message;
  QToolButton *m_back, *m_forward;
  QStackedWidget* m_stack;
  PageView* m_view;
  QWidget* m_busy;
  QProgressBar* m_progress;
  QPushButton *m_printButton, *m_pdf, *m_html, *m_several;
  QCheckBox *m_mark, *m_each;
};

}  // namespace ovenwright::desktop
