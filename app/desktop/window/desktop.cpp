#include "app/desktop/window/desktop.h"

#include "app/desktop/archive/archive_link.h"
#include "app/desktop/settings/settings.h"
#include "app/desktop/text/language.h"
#include "app/desktop/window/focus_marker.h"
#include "app/desktop/window/main_window.h"

namespace ovenwright::desktop {

Desktop::Desktop(Document* document, Settings* settings, const QString& archive)
    : m_document(document), m_settings(settings), m_archive(std::make_unique<ArchiveLink>(archive)) {
  useLanguage(settings->language());
  new FocusMarker(this);
  make();
}

Desktop::~Desktop() = default;

void Desktop::make() {
  m_window = std::make_unique<MainWindow>(m_document, m_settings, m_archive.get());
  // Queued: the menu that says so belongs to the window that goes.
  connect(m_window.get(), &MainWindow::languageChosen, this, &Desktop::speak, Qt::QueuedConnection);
}

void Desktop::show() { m_window->show(); }

void Desktop::speak() {
  const bool visible = m_window->isVisible();
  const auto task = m_window->task();
  const auto page = m_window->shownPage();
  m_window->saveState();
  useLanguage(m_settings->language());
  auto before = std::move(m_window);
  make();
  m_window->goOnFrom(*before);
  before.reset();
  m_window->showTask(task);
  m_window->showPage(page);
  if (visible) m_window->show();
}

}  // namespace ovenwright::desktop
