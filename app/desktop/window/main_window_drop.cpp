#include <QDragEnterEvent>
#include <QMimeData>

#include "app/desktop/compare/compare_page.h"
#include "app/desktop/document/document.h"
#include "app/desktop/window/drop_frame.h"
#include "app/desktop/window/main_window.h"

// Logs that are dropped on the window or pasted into it.
namespace ovenwright::desktop {
namespace {

QStringList localFiles(const QMimeData& data) {
  QStringList files;
  for (const QUrl& url : data.urls()) {
    if (url.isLocalFile()) files << url.toLocalFile();
  }
  return files;
}

}  // namespace

void MainWindow::openMime(const QMimeData& dropped) {
  const QStringList files = localFiles(dropped);
  if (isCompareShown()) m_compare->session()->takeOpened();
  if (!files.isEmpty()) {
    m_document->openFiles(files);
  } else if (dropped.hasText()) {
    m_document->openPasted(dropped.text().toUtf8());
  }
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
  const QStringList files = localFiles(*event->mimeData());
  if (files.isEmpty() && !event->mimeData()->hasText()) return;
  m_dropFrame->showFor(files.isEmpty() ? 1 : int(files.size()));
  event->acceptProposedAction();
}

void MainWindow::dragLeaveEvent(QDragLeaveEvent*) { m_dropFrame->hide(); }

void MainWindow::dropEvent(QDropEvent* event) {
  m_dropFrame->hide();
  openMime(*event->mimeData());
  event->acceptProposedAction();
}

}  // namespace ovenwright::desktop
