#pragma once
#include <QObject>
#include <QPageSize>
#include <memory>

#include "app/desktop/sheets/sheet_pages.h"

class QPainter;
class QPrinter;

namespace ovenwright::desktop {

/// The printer's paper as sheets know it; on any other paper, or across it, the sheet is made to fit whole.
sheet::Paper paperOf(const QPrinter& printer);
QPageSize pageSizeOf(sheet::Paper paper);

/// Paints sheets onto a printer, one page for each turn of the event loop, so that the window stays alive.
class PrintJob : public QObject {
  Q_OBJECT
 public:
  /// The pages that the printer was told to print, from 1; all unless told otherwise.
  PrintJob(std::shared_ptr<QPrinter> printer, std::shared_ptr<const SheetPages> sheets, QObject* parent = nullptr);
  /// What was not painted yet is not printed.
  ~PrintJob() override;

  void start();  ///< deletes itself behind finished()
  /// All pages at once, as the print preview of the toolkit wants them. False: the printer took no more pages.
  static bool paint(QPrinter& printer, const SheetPages& sheets);

 signals:
  void progressed(int page, int of);
  void finished(bool whole);  ///< false: the printer took no more pages

 private:
  /// A painter whose unit is that of a sheet; null where the printer takes none.
  static std::unique_ptr<QPainter> begun(QPrinter& printer, const SheetPages& sheets);
  void step();
  void finish(bool whole);

  std::shared_ptr<QPrinter> m_printer;
  std::shared_ptr<const SheetPages> m_sheets;
  std::unique_ptr<QPainter> m_painter;
  int m_page = 1, m_last = 1, m_first = 1;
};

}  // namespace ovenwright::desktop
