#include <QAbstractItemView>
#include <QCloseEvent>
#include <algorithm>

#include "app/desktop/editor/oven_page.h"
#include "app/desktop/editor/window_page.h"
#include "app/desktop/text/paragraph.h"
#include "app/desktop/tune/tune_page.h"
#include "app/desktop/widgets/sentence.h"
#include "app/desktop/window/main_window.h"
#include "core/oven/oven_file.h"
#include "core/window/window_file.h"

// What is said before edits that no file holds would go with the window.
namespace ovenwright::desktop {

namespace {

/// What is typed in a cell of a table right now counts as typed.
void commitCell(const QWidget* window) {
  QWidget* typed = window->focusWidget();
  const QWidget* viewport = typed ? typed->parentWidget() : nullptr;
  if (viewport && qobject_cast<QAbstractItemView*>(viewport->parentWidget())) typed->clearFocus();
}

}  // namespace

std::vector<MainWindow::Unsaved> MainWindow::unsavedEdits(const Document::LogPointer& of) {
  std::vector<Unsaved> all;
  // The same edit in several runs is told once, two of one name are both told.
  const auto add = [&](Unsaved one) {
    const auto same = [&](const Unsaved& other) {
      return other.name == one.name && (other.log == one.log || other.text == one.text);
    };
    if ((!of || one.log == of) && std::ranges::none_of(all, same)) all.push_back(std::move(one));
  };
  const auto look = [&](const check::Request& setup, const Document::LogPointer& log) {
    for (std::size_t i = 0; i < setup.windows.size(); ++i) {
      const auto& window = setup.windows[i];
      const bool held_back = m_editor->isHeldBack(log, i);
      if (window.identity.sha256.empty() || held_back)
        add({tr("the window %1").arg(QString::fromStdString(window.identity.name)),
             held_back ? std::string() : window::window_text(window), log, [this, i] { showWindowEditor(i); }});
    }
    const bool held_back = m_ovenEditor->isHeldBack(log);
    if (setup.oven && (setup.oven->identity.sha256.empty() || held_back))
      add({tr("the oven %1").arg(QString::fromStdString(setup.oven->identity.name)),
           held_back ? std::string() : oven::oven_text(*setup.oven), log, [this] { showOvenEditor(); }});
  };
  for (const auto& log : m_document->logs()) look(log->setup, log);
  if (!m_document->current()) look(m_document->setup(), nullptr);
  for (const auto& [log, recipe] : m_tune->session()->unsaved())
    add({tr("the recipe %1 in Tune").arg(QString::fromStdString(recipe.identity.name)), oven::recipe_text(recipe), log,
         [this] { showTask(Task::kTune); }});
  return all;
}

bool MainWindow::askAboutUnsaved(std::vector<Unsaved> unsaved, std::function<void()> closeAnyway) {
  if (unsaved.empty()) return false;
  QStringList names;
  for (const auto& one : unsaved) {
    const bool alone = std::ranges::count(unsaved, one.name, &Unsaved::name) < 2;
    names << (alone || !one.log ? one.name : withBrackets(one.name, one.log->source.name));
  }
  Notice notice{tr("Not closed yet."), tr("Changes that are not saved: %1.").arg(enumerated(names)), {}};
  notice.cures.push_back({tr("Show the changes"), [this, first = unsaved.front()] {
                            if (first.log != m_document->currentPointer()) m_document->setCurrent(first.log);
                            first.show();
                          }});
  notice.cures.push_back({tr("Close without saving"), std::move(closeAnyway)});
  showNotice(notice);
  m_sentence->setFocus(Qt::ShortcutFocusReason);
  return true;
}

void MainWindow::closeLog() {
  const auto log = m_document->currentPointer();
  if (!log) return;
  commitCell(this);
  const auto closing = [this, log] {
    if (std::ranges::find(m_document->logs(), log) != m_document->logs().end()) m_document->close(log);
  };
  if (!askAboutUnsaved(unsavedEdits(log), closing)) closing();
}

void MainWindow::closeEvent(QCloseEvent* event) {
  commitCell(this);
  const auto leaving = [this] {
    m_leaving = true;
    close();
  };
  if (!m_leaving && askAboutUnsaved(unsavedEdits(), leaving)) {
    event->ignore();
    return;
  }
  saveState();
  QMainWindow::closeEvent(event);
}

}  // namespace ovenwright::desktop
