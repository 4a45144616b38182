#include "app/desktop/window/screenshot.h"

#include <QApplication>
#include <QPixmap>
#include <QTimer>
#include <cstdio>

#include "app/desktop/document/document.h"
#include "app/desktop/plot/curve_plot.h"
#include "app/desktop/widgets/sentence.h"
#include "app/desktop/window/check_page.h"
#include "app/desktop/window/main_window.h"
#include "app/desktop/window/sentence_states.h"

namespace ovenwright::desktop {
namespace {

constexpr int kPoll_ms = 30, kDrawn_ms = 350;
constexpr int kNotWritten = 4;

}  // namespace

QStringList Screenshot::states() {
  return {QStringLiteral("chosen"), QStringLiteral("table"),   QStringLiteral("board"), QStringLiteral("import"),
          QStringLiteral("window"), QStringLiteral("reading"), QStringLiteral("drop"),  QStringLiteral("cursor"),
          QStringLiteral("zoomed"), QStringLiteral("raw"),     QStringLiteral("panel")};
}

Screenshot::Screenshot(Document* document, MainWindow* window, Request request)
    : QObject(window), m_document(document), m_window(window), m_request(std::move(request)) {
  m_window->resize(m_request.size);
  QTimer::singleShot(kPoll_ms, this, &Screenshot::whenReady);
}

void Screenshot::whenReady() {
  if (m_document->isBusy()) {
    QTimer::singleShot(kPoll_ms, this, &Screenshot::whenReady);
    return;
  }
  enterState();
  QTimer::singleShot(kDrawn_ms, this, &Screenshot::take);
}

void Screenshot::enterState() {
  const QString& state = m_request.state;
  CheckPage* page = m_window->checkPage();
  const auto view = m_document->view();
  if (state == u"chosen" || state == u"panel") page->stepProblem(1);
  if (state == u"panel") page->setPanelShown(true);
  if (state == u"table") page->showTab(CheckPage::kTable);
  if (state == u"board") page->showTab(CheckPage::kBoard);
  if (state == u"import") m_window->showImport();
  if (state == u"window") m_window->showWindowEditor();
  if (state == u"reading")
    m_window->sentence()->setContent(readingSentence({tr("a large log"), 0.62, 41200}, Format()));
  if (state == u"drop") m_window->showDropFrame(3);
  if (state == u"zoomed") page->plot()->zoomBy(4, view ? std::optional(0.75 * view->run().to_s) : std::nullopt);
  if (state == u"raw") page->plot()->setRawSamplesShown(true);
  if (state == u"cursor" && view) page->plot()->setCursor_s(0.6 * view->run().to_s);
}

void Screenshot::take() {
  if (!m_window->grab().save(m_request.file)) {
    std::fprintf(stderr, "ovenwright-desktop: %s cannot be written\n", qPrintable(m_request.file));
    QApplication::exit(kNotWritten);
    return;
  }
  QApplication::exit(0);
}

}  // namespace ovenwright::desktop
