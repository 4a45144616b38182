#include <QAction>
#include <QDir>
#include <QFileInfo>
#include <QStatusBar>
#include <QVBoxLayout>

#include "app/desktop/keep/keep_form.h"
#include "app/desktop/lots/archive_words.h"
#include "app/desktop/lots/lot_sheet_panel.h"
#include "app/desktop/lots/lots_page.h"
#include "app/desktop/settings/settings_window.h"
#include "app/desktop/watch/watch_service.h"
#include "app/desktop/watch/watch_window.h"
#include "app/desktop/widgets/sentence.h"
#include "app/desktop/window/chooser_bar.h"
#include "app/desktop/window/elided_label.h"
#include "app/desktop/window/main_window.h"

// Keeping runs in the window: the form under the choosers, where records go in the status line, the watched folder, the
// settings.
namespace ovenwright::desktop {

void MainWindow::buildKeep() {
  m_keepForm = new KeepForm(m_document, m_settings, m_archive, m_chooserBlock);
  m_chooserBlock->layout()->addWidget(m_keepForm);
  m_choosers->addButton(m_keep);
  connect(m_keep, &QAction::triggered, this, [this] {
    if (m_shown) showResult();
    if (areLotsShown()) showTask(Task::kCheck);
    m_keepForm->open();
  });
  connect(m_keepForm, &KeepForm::noted, this, &MainWindow::note);
  connect(m_keepForm, &KeepForm::closed, this, [this] { m_sentence->setFocus(Qt::OtherFocusReason); });
  const auto enable = [this] {
    m_keep->setEnabled(m_document->view() != nullptr);
    if (!m_document->current()) m_keepForm->close();
  };
  connect(m_document, &Document::currentChanged, this, enable);
  enable();
  m_lots->panel()->setDocument(m_document);

  for (ElidedLabel* label : {m_watching, m_where}) {
    label->setTextFormat(Qt::RichText);
    label->setTextInteractionFlags(Qt::LinksAccessibleByMouse | Qt::LinksAccessibleByKeyboard);
    statusBar()->addPermanentWidget(label);
  }
  connect(m_where, &QLabel::linkActivated, this, [this] { settingsWindow()->showArchive(); });
  connect(m_watching, &QLabel::linkActivated, this, [this] { watchWindow()->show(); });
  connect(m_archive, &ArchiveLink::statusChanged, this, &MainWindow::refreshWhere);
  connect(m_archive, &ArchiveLink::repeated, this,
          [this](const std::vector<archive::Repeated>& records) { note(repeatedText(records)); });
  connect(WatchService::of(m_archive), &WatchService::stateChanged, this, &MainWindow::refreshWhere);
  refreshWhere();
  m_archive->look();
}

void MainWindow::refreshWhere() {
  const auto link = [](ElidedLabel* label, const QString& text) {
    label->setWords(text, true);
    label->setAccessibleName(text);
  };
  const QString where = desktop::archiveText(m_archive->status(), m_format);
  m_where->setVisible(!where.isEmpty());
  link(m_where, where);
  const auto& error = m_archive->status().error;
  m_where->setTip(tr("%1: choose where runs are kept").arg(m_archive->where()) +
                  (error ? QStringLiteral("\n") + errorText(*error) : QString()));
  const auto* service = WatchService::of(m_archive);
  m_watching->setVisible(service->isRunning());
  QString text = tr("Watching %1: %n kept", nullptr, service->kept()).arg(QDir(service->folder()).dirName());
  if (service->failed() > 0) text += QStringLiteral(", ") + tr("%n not judged", nullptr, service->failed());
  link(m_watching, text);
  fitStatus();
}

SettingsWindow* MainWindow::settingsWindow() {
  if (!m_settingsWindow) {
    m_settingsWindow = new SettingsWindow(m_archive, m_settings, this);
    connect(m_settingsWindow, &SettingsWindow::sheetsChanged, m_lots->panel(), &LotSheetPanel::layOutAgain);
  }
  return m_settingsWindow;
}

WatchWindow* MainWindow::watchWindow() {
  if (!m_watchWindow) m_watchWindow = new WatchWindow(m_archive, m_settings, this);
  return m_watchWindow;
}

}  // namespace ovenwright::desktop
