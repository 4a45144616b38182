#include "app/desktop/window/chooser_bar.h"

#include <QAction>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QMenu>

#include "app/desktop/widgets/wording.h"
#include "app/desktop/window/chooser_button.h"
#include "app/desktop/window/sign_icon.h"

namespace ovenwright::desktop {
QString runTitle(const OpenLog& log, std::size_t run) {
  const QString name = log.source.path.isEmpty() ? log.source.name : QFileInfo(log.source.name).completeBaseName();
  if (!log.checked || log.checked->views.size() < 2) return name;
  return ChooserBar::tr("%1, run %2 of %3").arg(name).arg(run + 1).arg(log.checked->views.size());
}

ChooserBar::ChooserBar(Document* document, ProfileMenus* menus, QAction* undo, QAction* redo, QWidget* parent)
    : ChooserRow(parent), m_document(document), m_runs(new QMenu(tr("&Run"), this)) {
  m_run = add(tr("Run"), m_runs);
  m_board = add(tr("Board"), menus->boards());
  m_window = add(tr("Window"), menus->windows());
  m_oven = add(tr("Oven and recipe"), menus->ovens());
  row()->addStretch(1);
  addButton(undo);
  addButton(redo);
  connect(m_runs, &QMenu::aboutToShow, this, &ChooserBar::fillRuns);
  connect(document, &Document::logsChanged, this, &ChooserBar::refresh);
  connect(document, &Document::setupChanged, this, &ChooserBar::refresh);
  connect(document, &Document::currentChanged, this, &ChooserBar::refresh);
  refresh();
}

void ChooserBar::addButton(QAction* action) {
  auto* button = new QPushButton(this);
  button->setAutoDefault(false);
  const auto sync = [button, action] {
    button->setText(action->data().toString());  // the short word; the action's text names the edit
    button->setEnabled(action->isEnabled());
    const QString keys = action->shortcut().toString(QKeySequence::NativeText);
    const QString name = action->text().remove(u'&');
    button->setToolTip(keys.isEmpty() ? name : QStringLiteral("%1 (%2)").arg(name, keys));
    button->setAccessibleName(action->text().remove(u'&'));
  };
  sync();
  connect(action, &QAction::changed, button, sync);
  connect(button, &QPushButton::clicked, action, &QAction::trigger);
  ChooserRow::addButton(button);
}

void ChooserBar::fillRuns() {
  m_runs->clear();
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  for (const auto& log : m_document->logs()) {
    for (std::size_t run = 0; run < log->checked->views.size(); ++run) {
      const auto verdict = log->checked->views[run].judgement().verdict;
      QAction* action = m_runs->addAction(signIcon(verdict, theme, devicePixelRatioF()),
                                          tr("%1: %2").arg(runTitle(*log, run).replace(u'&', QStringLiteral("&&")),
                                                           widgets::Wording::verdict(verdict)));
      const bool current = log == m_document->currentPointer() && run == log->run;
      if (current) {
        QFont bold = action->font();
        bold.setBold(true);
        action->setFont(bold);
      }
      connect(action, &QAction::triggered, this, [this, log, run] {
        m_document->dismissFailure();
        m_document->setCurrent(log, run);
      });
    }
  }
  if (!m_document->logs().empty()) m_runs->addSeparator();
  connect(m_runs->addAction(tr("&Open a log…")), &QAction::triggered, this, &ChooserBar::openWanted);
  if (m_document->current()) {
    connect(m_runs->addAction(tr("&Close %1").arg(m_document->current()->source.name)), &QAction::triggered, this,
            &ChooserBar::closeWanted);
  }
}

void ChooserBar::refresh() {
  const auto* log = m_document->current();
  const auto& setup = m_document->setup();
  m_run->setChosen(log ? runTitle(*log, log->run) : tr("None open"));
  m_board->setChosen(setup.board ? titleOf(setup.board->identity) : tr("None"));
  m_window->setChosen(titleOf(setup.windows));
  m_oven->setChosen(setup.oven && setup.recipe ? tr("%1, %2").arg(QString::fromStdString(setup.oven->identity.name),
                                                                  titleOf(setup.recipe->identity))
                                               : tr("None"));
  fitLabels();
}

void ChooserBar::showRun() { m_run->showMenu(); }
void ChooserBar::showWindow() { m_window->showMenu(); }
void ChooserBar::showBoard() { m_board->showMenu(); }
void ChooserBar::showOven() { m_oven->showMenu(); }

}  // namespace ovenwright::desktop
