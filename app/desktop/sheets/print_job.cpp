#include "app/desktop/sheets/print_job.h"

#include <QPainter>
#include <QPrinter>
#include <QTimer>
#include <algorithm>

namespace ovenwright::desktop {
namespace {

/// First and last page to print, from 1.
std::pair<int, int> range(const QPrinter& printer, const SheetPages& sheets) {
  const int pages = sheets.count();
  const int first = std::clamp(printer.fromPage(), 1, pages);
  return {first, printer.toPage() > 0 ? std::clamp(printer.toPage(), first, pages) : pages};
}

/// @param page  from 1
void paintOne(QPainter& painter, const SheetPages& sheets, int page) {
  const auto at = sheets.at(page - 1);
  sheet::paintPage(painter, at.sheet, at.page);
}

}  // namespace

sheet::Paper paperOf(const QPrinter& printer) {
  return printer.pageLayout().pageSize().id() == QPageSize::Letter ? sheet::Paper::kLetter : sheet::Paper::kA4;
}

QPageSize pageSizeOf(sheet::Paper paper) {
  return QPageSize(paper == sheet::Paper::kLetter ? QPageSize::Letter : QPageSize::A4);
}

std::unique_ptr<QPainter> PrintJob::begun(QPrinter& printer, const SheetPages& sheets) {
  printer.setDocName(sheets.sheets.front().title);
  printer.setFullPage(true);  // the sheet has margins of its own
  auto painter = std::make_unique<QPainter>(&printer);
  if (!painter->isActive()) return nullptr;
  const QPageLayout layout = printer.pageLayout();
  const auto paper = layout.pageSize().id();
  const bool upright = layout.orientation() == QPageLayout::Portrait;
  if (upright && (paper == QPageSize::Letter || paper == QPageSize::A4)) {
    painter->scale(printer.logicalDpiX() / sheet::kUnitsPerInch, printer.logicalDpiY() / sheet::kUnitsPerInch);
  } else {
    const QSizeF whole = sheet::paperSize(sheets.sheets.front().paper);
    const qreal fit = std::min(printer.width() / whole.width(), printer.height() / whole.height());
    painter->translate((printer.width() - fit * whole.width()) / 2, 0);
    painter->scale(fit, fit);
  }
  return painter;
}

bool PrintJob::paint(QPrinter& printer, const SheetPages& sheets) {
  const auto painter = begun(printer, sheets);
  if (!painter) return false;
  const auto [first, last] = range(printer, sheets);
  for (int page = first; page <= last; ++page) {
    if (page > first && !printer.newPage()) return false;
    paintOne(*painter, sheets, page);
  }
  return painter->end();
}

PrintJob::PrintJob(std::shared_ptr<QPrinter> printer, std::shared_ptr<const SheetPages> sheets, QObject* parent)
    : QObject(parent), m_printer(std::move(printer)), m_sheets(std::move(sheets)) {}

PrintJob::~PrintJob() {
  if (m_painter) m_printer->abort();
}

void PrintJob::start() {
  std::tie(m_first, m_last) = range(*m_printer, *m_sheets);
  m_page = m_first;
  m_painter = begun(*m_printer, *m_sheets);
  if (!m_painter) return finish(false);
  QTimer::singleShot(0, this, &PrintJob::step);
}

void PrintJob::step() {
  if (m_page > m_first && !m_printer->newPage()) return finish(false);
  paintOne(*m_painter, *m_sheets, m_page);
  emit progressed(m_page - m_first + 1, m_last - m_first + 1);
  if (++m_page <= m_last) {
    QTimer::singleShot(0, this, &PrintJob::step);
    return;
  }
  finish(m_painter->end());
}

void PrintJob::finish(bool whole) {
  m_painter.reset();
  emit finished(whole);
  deleteLater();
}

}  // namespace ovenwright::desktop
