#include <QCloseEvent>
#include <algorithm>

#include "app/desktop/tune/tune_page.h"
#include "app/desktop/widgets/sentence.h"
#include "app/desktop/window/main_window.h"

// What is said before edits that no file holds would go with the window.
namespace ovenwright::desktop {

std::vector<MainWindow::Unsaved> MainWindow::unsavedEdits() {
  std::vector<Unsaved> all;
  const auto add = [&all](const QString& name, const Document::LogPointer& log, std::function<void()> show) {
    if (std::ranges::find(all, name, &Unsaved::name) == all.end()) all.push_back({name, log, std::move(show)});
  };
  const auto look = [&](const check::Request& setup, const Document::LogPointer& log) {
    for (std::size_t i = 0; i < setup.windows.size(); ++i)
      if (setup.windows[i].identity.sha256.empty())
        add(tr("the window %1").arg(QString::fromStdString(setup.windows[i].identity.name)), log,
            [this, i] { showWindowEditor(i); });
    if (setup.oven && setup.oven->identity.sha256.empty())
      add(tr("the oven %1").arg(QString::fromStdString(setup.oven->identity.name)), log, [this] { showOvenEditor(); });
  };
  for (const auto& log : m_document->logs()) look(log->setup, log);
  if (!m_document->current()) look(m_document->setup(), nullptr);
  for (const auto& [log, recipe] : m_tune->session()->unsaved())
    add(tr("the recipe %1 in Tune").arg(recipe), log, [this] { showTask(Task::kTune); });
  return all;
}

bool MainWindow::askAboutUnsaved() {
  const auto unsaved = m_leaving ? std::vector<Unsaved>() : unsavedEdits();
  if (unsaved.empty()) return false;
  QStringList names;
  for (const auto& one : unsaved) names << one.name;
  Notice notice{tr("Not closed yet."), tr("Changes that are not saved: %1.").arg(names.join(QStringLiteral(", "))), {}};
  notice.cures.push_back({tr("Show the changes"), [this, first = unsaved.front()] {
                            if (first.log != m_document->currentPointer()) m_document->setCurrent(first.log);
                            first.show();
                          }});
  notice.cures.push_back({tr("Close without saving"), [this] {
                            m_leaving = true;
                            close();
                          }});
  showNotice(notice);
  m_sentence->setFocus(Qt::ShortcutFocusReason);
  return true;
}

void MainWindow::closeEvent(QCloseEvent* event) {
  if (askAboutUnsaved()) {
    event->ignore();
    return;
  }
  saveState();
  QMainWindow::closeEvent(event);
}

}  // namespace ovenwright::desktop
