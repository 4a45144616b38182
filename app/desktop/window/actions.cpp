#include <QActionGroup>
#include <QApplication>
#include <QClipboard>
#include <QFileDialog>
#include <QFileInfo>
#include <QMenuBar>
#include <QMessageBox>
#include <QMimeData>
#include <algorithm>

#include "app/desktop/compare/compare_bar.h"
#include "app/desktop/compare/compare_page.h"
#include "app/desktop/editor/oven_page.h"
#include "app/desktop/editor/window_page.h"
#include "app/desktop/import/import_page.h"
#include "app/desktop/keep/keep_form.h"
#include "app/desktop/lots/lot_sheet_panel.h"
#include "app/desktop/lots/lots_page.h"
#include "app/desktop/lots/runs_table.h"
#include "app/desktop/panels/derivation_panel.h"
#include "app/desktop/plot/curve_plot.h"
#include "app/desktop/settings/settings.h"
#include "app/desktop/settings/settings_window.h"
#include "app/desktop/table/results_table.h"
#include "app/desktop/text/language.h"
#include "app/desktop/tune/tune_page.h"
#include "app/desktop/watch/watch_window.h"
#include "app/desktop/widgets/board_picture.h"
#include "app/desktop/widgets/limit_lanes.h"
#include "app/desktop/widgets/sentence.h"
#include "app/desktop/widgets/zone_strip.h"
#include "app/desktop/window/check_page.h"
#include "app/desktop/window/chooser_bar.h"
#include "app/desktop/window/help_window.h"
#include "app/desktop/window/main_window.h"
#include "app/desktop/window/profile_menus.h"
#include "app/desktop/window/sheet_menu.h"
#include "core/board/board_file.h"
#include "core/files/profiles.h"
#include "core/oven/oven_file.h"
#include "core/window/window_file.h"

// The menus of the main window and what they do.
namespace ovenwright::desktop {

QAction* MainWindow::addAction(QMenu* menu, const QString& text, const QKeySequence& keys, std::function<void()> act) {
  QAction* action = menu->addAction(text);
  action->setShortcut(keys);
  connect(action, &QAction::triggered, this, std::move(act));
  return action;
}

void MainWindow::buildActions() {
  QMenu* file = menuBar()->addMenu(tr("&File"));
  addAction(file, tr("&Open a log…"), QKeySequence::Open, [this] { openLogs(); });
  addAction(file, tr("&Paste a log"), Qt::CTRL | Qt::SHIFT | Qt::Key_V, [this] { paste(); });
  m_recent = file->addMenu(tr("&Recent logs"));
  connect(m_recent, &QMenu::aboutToShow, this, &MainWindow::fillRecent);
  addAction(file, tr("Look at the &demo run"), {}, [this] { openDemo(); });
  file->addSeparator();
  auto* sheets = new SheetMenu(m_document, m_settings, this);
  sheets->addTo(file);
  m_choosers->addButton(sheets->preview());
  sheets->setComparison([this] { return isCompareShown(); }, [this] { return m_compare->sheetRecord(); });
  m_compare->bar()->setPrintActions(sheets->actions());
  connect(m_compare, &ComparePage::sentenceChanged, sheets, &SheetMenu::refresh);
  connect(this, &MainWindow::taskChanged, sheets, &SheetMenu::refresh);
  connect(sheets, &SheetMenu::done, this, &MainWindow::note);
  connect(sheets, &SheetMenu::failed, this, &MainWindow::note);
  file->addSeparator();
  addAction(file, tr("Se&ttings…"), Qt::CTRL | Qt::Key_Comma, [this] {
    settingsWindow()->show();
    settingsWindow()->raise();
    settingsWindow()->activateWindow();
  });
  QAction* close_log = addAction(file, tr("&Close this log"), QKeySequence::Close, [this] { closeLog(); });
  addAction(file, tr("&Quit"), QKeySequence::Quit, [this] { close(); });

  QMenu* edit = menuBar()->addMenu(tr("&Edit"));
  edit->addAction(m_undo);
  edit->addAction(m_redo);
  edit->addSeparator();
  QAction* copy_table = addAction(edit, tr("Copy the &table"), {}, [this] { copyText(); });
  QAction* copy_picture =
      addAction(edit, tr("Copy the &picture"), Qt::CTRL | Qt::SHIFT | Qt::Key_C, [this] { copyPicture(); });
  QAction* find = addAction(edit, tr("&Find in the table"), QKeySequence::Find, [this] {
    if (areLotsShown()) {
      m_lots->find();
      return;
    }
    showTask(Task::kCheck);
    m_check->find();
  });

  QMenu* view = menuBar()->addMenu(tr("&View"));
  addAction(view, tr("&Check"), Qt::CTRL | Qt::Key_1, [this] { showTask(Task::kCheck); });
  addAction(view, tr("T&une"), Qt::CTRL | Qt::Key_2, [this] { showTask(Task::kTune); });
  addAction(view, tr("C&ompare"), Qt::CTRL | Qt::Key_3, [this] { showTask(Task::kCompare); });
  addAction(view, tr("&Lots"), Qt::CTRL | Qt::Key_4, [this] { showTask(Task::kLots); });
  view->addSeparator();
  QAction* zoom_in = addAction(view, tr("Zoom &in"), QKeySequence::ZoomIn, [this] { plot()->zoomBy(1.5); });
  QAction* zoom_out = addAction(view, tr("Zoom &out"), QKeySequence::ZoomOut, [this] { plot()->zoomBy(1 / 1.5); });
  QAction* whole = addAction(view, tr("&Whole run"), Qt::CTRL | Qt::Key_0, [this] { plot()->showWhole(); });
  QAction* raw = view->addAction(tr("&Raw samples"));
  raw->setCheckable(true);
  connect(raw, &QAction::toggled, this, [this](bool on) { m_check->plot()->setRawSamplesShown(on); });
  view->addSeparator();
  QAction* panel = addAction(view, tr("Panel at the rig&ht"), Qt::Key_F9, [this] {
    if (areLotsShown()) {
      m_lots->setPanelShown(!m_lots->isPanelShown());
    } else if (m_task == Task::kTune) {
      m_tune->setPanelShown(!m_tune->isPanelShown());
    } else {
      m_check->setPanelShown(!m_check->isPanelShown());
    }
  });
  panel->setCheckable(true);
  const auto sync_panel = [this, panel] {
    panel->setChecked(areLotsShown()          ? m_lots->isPanelShown()
                      : m_task == Task::kTune ? m_tune->isPanelShown()
                                              : m_check->isPanelShown());
  };
  sync_panel();
  connect(m_check, &CheckPage::panelShownChanged, panel, sync_panel);
  connect(m_tune, &TunePage::panelShownChanged, panel, sync_panel);
  connect(m_lots, &LotsPage::panelShownChanged, panel, sync_panel);
  connect(this, &MainWindow::taskChanged, panel, sync_panel);
  connect(view, &QMenu::aboutToShow, panel, sync_panel);  // the panel also comes and goes with the window's width
  const auto step_problem = [this](int by) {
    if (isCompareShown()) {
      m_compare->stepProblem(by);
    } else if (m_task == Task::kTune && !m_shown) {
      m_tune->stepProblem(by);
    } else {
      m_check->stepProblem(by);
    }
  };
  QAction* sort = view->addMenu(m_lots->table()->sortMenu());
  QAction* next = addAction(view, tr("&Next result that is not a pass"), Qt::Key_F8, [=] { step_problem(1); });
  QAction* previous =
      addAction(view, tr("&Previous result that is not a pass"), Qt::SHIFT | Qt::Key_F8, [=] { step_problem(-1); });
  QAction* nothing = addAction(view, tr("Choose nothin&g"), Qt::Key_Escape, [this] {
    m_notice.reset();
    m_document->dismissFailure();
    m_document->chooseChannel(std::nullopt);
    m_compare->chooseNothing();
    refreshSentence();
  });
  addAction(view, tr("Next pa&rt"), Qt::Key_F6, [this] { stepPart(1); });
  addAction(view, tr("Previous p&art"), Qt::SHIFT | Qt::Key_F6, [this] { stepPart(-1); });
  view->addSeparator();
  const auto choose = [this](QMenu* menu, const QStringList& texts, int now, std::function<void(int)> set) {
    auto* group = new QActionGroup(menu);
    for (int i = 0; i < texts.size(); ++i) {
      QAction* action = group->addAction(menu->addAction(texts[i]));
      action->setCheckable(true);
      action->setChecked(i == now);
      connect(action, &QAction::triggered, this, [this, i, set] {
        set(i);
        setFormat();
      });
    }
  };
  choose(view->addMenu(tr("&Temperature in")), {tr("°C"), tr("°F")}, int(m_settings->temperatureUnit()),
         [this](int i) { m_settings->setTemperatureUnit(TemperatureUnit(i)); });
  choose(view->addMenu(tr("&Speed in")), {tr("mm/min"), tr("cm/min"), tr("in/min")}, int(m_settings->speedUnit()),
         [this](int i) { m_settings->setSpeedUnit(SpeedUnit(i)); });

  QMenu* language = view->addMenu(tr("&Language"));
  auto* spoken = new QActionGroup(language);
  const auto speak = [this, language, spoken](const QString& name, const QString& code) {
    QAction* action = spoken->addAction(language->addAction(name));
    action->setCheckable(true);
    action->setChecked(m_settings->language() == code);
    connect(action, &QAction::triggered, this, [this, code] {
      m_settings->setLanguage(code);
      emit languageChosen();
    });
  };
  speak(tr("As the &system says"), {});
  language->addSeparator();
  for (const Language& each : languages()) speak(each.name, each.code);

  QMenu* run = menuBar()->addMenu(tr("&Run"));
  run->addMenu(m_choosers->runs());
  const auto step_run = [this](int by) {
    std::vector<std::pair<Document::LogPointer, std::size_t>> runs;
    std::size_t now = 0;
    for (const auto& log : m_document->logs()) {
      for (std::size_t i = 0; i < log->checked->views.size(); ++i) {
        if (log == m_document->currentPointer() && i == log->run) now = runs.size();
        runs.emplace_back(log, i);
      }
    }
    if (runs.empty()) return;
    const auto& [log, index] = runs[(now + runs.size() + std::size_t(by + int(runs.size()))) % runs.size()];
    m_document->dismissFailure();
    m_document->setCurrent(log, index);
  };
  addAction(run, tr("&Next run"), Qt::CTRL | Qt::Key_PageDown, [step_run] { step_run(1); });
  addAction(run, tr("&Previous run"), Qt::CTRL | Qt::Key_PageUp, [step_run] { step_run(-1); });
  run->addSeparator();
  run->addAction(m_keep);
  addAction(run, tr("Watch a &folder…"), {}, [this] {
    watchWindow()->show();
    watchWindow()->raise();
    watchWindow()->activateWindow();
  });
  run->addSeparator();
  QAction* import = addAction(run, tr("&How the log was read"), Qt::CTRL | Qt::Key_I, [this] {
    if (m_shown == m_import) {
      showResult();
    } else {
      showImport();
    }
  });
  run->addMenu(m_profiles->boards());
  run->addMenu(m_profiles->windows());
  addAction(run, tr("&Edit the window"), Qt::CTRL | Qt::Key_E, [this] {
    if (m_shown == m_editor) {
      showResult();
    } else {
      showWindowEditor();
    }
  });

  QMenu* oven = menuBar()->addMenu(tr("&Oven"));
  oven->addMenu(m_profiles->ovens());
  QAction* edit_oven = addAction(oven, tr("&Edit the oven"), Qt::CTRL | Qt::SHIFT | Qt::Key_E, [this] {
    if (m_shown == m_ovenEditor) {
      showResult();
    } else if (m_document->setup().oven) {
      showOvenEditor();
    } else {
      note(tr("No oven is chosen: there is none to edit."));
    }
  });
  connect(oven, &QMenu::aboutToShow, this,
          [this, edit_oven] { edit_oven->setEnabled(m_document->setup().oven.has_value()); });
  connect(oven, &QMenu::aboutToHide, edit_oven, [edit_oven] { edit_oven->setEnabled(true); });

  QMenu* help = menuBar()->addMenu(tr("&Help"));
  addAction(help, tr("&Help on what has the focus"), Qt::Key_F1, [this] {
    if (!m_help) m_help = new HelpWindow(this);
    QString part = QStringLiteral("start");
    const QWidget* focus = QApplication::focusWidget();
    const auto inside = [focus](const QWidget* of) { return focus && (focus == of || of->isAncestorOf(focus)); };
    if (inside(m_sentence)) part = QStringLiteral("sentence");
    if (inside(m_check->plot())) part = QStringLiteral("plot");
    if (inside(m_check->strip())) part = QStringLiteral("strip");
    if (inside(m_check->lanes())) part = QStringLiteral("lanes");
    if (inside(m_lots)) part = QStringLiteral("lots");
    if (inside(m_check->table())) part = QStringLiteral("table");
    if (inside(m_check->board())) part = QStringLiteral("board");
    if (inside(m_check->panel())) part = QStringLiteral("panel");
    if (inside(m_lots->panel())) part = QStringLiteral("lotsheet");
    if (inside(m_keepForm)) part = QStringLiteral("keep");
    if (inside(m_tune)) part = QStringLiteral("tune");
    if (inside(m_compare) || inside(m_compare->bar())) part = QStringLiteral("compare");
    if (inside(m_import)) part = QStringLiteral("import");
    if (inside(m_editor)) part = QStringLiteral("window");
    if (inside(m_ovenEditor)) part = QStringLiteral("oven");
    m_help->showAbout(part);
  });
  addAction(help, tr("&About Ovenwright"), {}, [this] {
    auto* about = new QMessageBox(QMessageBox::NoIcon, tr("About Ovenwright"), aboutText(), QMessageBox::Close, this);
    about->setAttribute(Qt::WA_DeleteOnClose);
    about->setModal(false);
    about->show();
  });

  const auto enable = [=, this] {
    const bool any = m_document->current() != nullptr && !areLotsShown(), lots = areLotsShown();
    // What acts on curves, lanes, table or panel is there while they are: not beside an editor or how a log was read.
    const bool result = any && !m_shown;
    const bool check = result && m_task == Task::kCheck, tune = result && m_task == Task::kTune;
    sort->setEnabled(lots);
    for (QAction* action : {import, close_log}) action->setEnabled(any);
    for (QAction* action : {zoom_in, zoom_out, whole, next, previous}) action->setEnabled(result);
    for (QAction* action : {copy_table, copy_picture}) action->setEnabled(result || lots);
    find->setEnabled(any || lots);
    nothing->setEnabled(any || lots || m_notice);
    raw->setEnabled(check);
    panel->setEnabled(check || tune || lots);
  };
  enable();
  connect(m_document, &Document::currentChanged, this, enable);
  connect(this, &MainWindow::pageChanged, this, enable);
}

void MainWindow::fillRecent() {
  m_recent->clear();
  const QStringList paths = m_settings->recentLogs();
  for (const QString& path : paths) {
    QAction* action = m_recent->addAction(QFileInfo(path).fileName().replace(u'&', QStringLiteral("&&")));
    action->setToolTip(path);
    action->setStatusTip(path);
    connect(action, &QAction::triggered, this, [this, path] { m_document->openFiles({path}); });
  }
  m_recent->addSeparator();
  QAction* forget = addAction(m_recent, tr("&Forget these"), {}, [this] { m_settings->clearRecentLogs(); });
  forget->setEnabled(!paths.isEmpty());
}

void MainWindow::openLogs() {
  const QStringList files =
      QFileDialog::getOpenFileNames(this, tr("Open logs"), m_settings->openFolder(), tr("All files (*)"));
  if (files.isEmpty()) return;
  m_settings->setOpenFolder(QFileInfo(files.first()).absolutePath());
  if (isCompareShown()) m_compare->session()->takeOpened();
  m_document->openFiles(files);
}

void MainWindow::paste() {
  const QMimeData* pasted = QApplication::clipboard()->mimeData();
  if (!pasted || (!pasted->hasText() && !pasted->hasUrls())) {
    showNotice({tr("Nothing was pasted."), tr("The clipboard holds no text and no file."), {}});
    return;
  }
  openMime(*pasted);
}

void MainWindow::openDemo() { openDemoRun(QStringLiteral("tern_run1.csv"), "recipe.toml"); }

void MainWindow::openDemoRun(const QString& log, const char* recipe_name) {
  const QString folder = QFileInfo(QString::fromStdString(files::shipped_folder(files::Kind::kWindow))).absolutePath() +
                         QStringLiteral("/demo/");
  const auto path = [&folder](const char* name) { return (folder + QLatin1String(name)).toStdString(); };
  auto window = window::load(path("window.toml"));
  auto board = board::load(path("board.toml"));
  auto oven = oven::load_oven(path("oven.toml"));
  auto recipe = oven::load_recipe(path(recipe_name));
  for (const Error* error : {window ? nullptr : &window.error(), board ? nullptr : &board.error(),
                             oven ? nullptr : &oven.error(), recipe ? nullptr : &recipe.error()}) {
    if (!error) continue;
    showNotice(noticeOf(tr("The demo run cannot be opened."), *error));
    return;
  }
  check::Request setup;
  setup.windows.push_back(std::move(*window));
  setup.board = std::move(*board);
  setup.oven = std::move(*oven);
  setup.recipe = std::move(*recipe);
  m_document->open({folder + log, {}, log}, std::move(setup));
}

CurvePlot* MainWindow::plot() {
  if (isCompareShown()) return m_compare->focusedPlot();
  return m_task == Task::kTune ? m_tune->plot() : m_check->plot();
}

void MainWindow::copyText() {
  if (areLotsShown()) {
    m_lots->copy();
    return;
  }
  QApplication::clipboard()->setText(isCompareShown()        ? m_compare->copyText()
                                     : m_task == Task::kTune ? m_tune->copyText()
                                                             : m_check->copyText());
  note(tr("The table is on the clipboard, with headings."));
}

void MainWindow::copyPicture() {
  QApplication::clipboard()->setPixmap(areLotsShown()          ? m_lots->picture()
                                       : isCompareShown()      ? m_compare->picture()
                                       : m_task == Task::kTune ? m_tune->picture()
                                                               : m_check->picture());
  note(tr("The picture is on the clipboard."));
}

void MainWindow::stepPart(int by) {
  QList<QWidget*> parts;
  if (isCompareShown()) parts << m_compare->bar();
  if (m_choosers->isVisible()) parts << m_choosers;
  if (m_sentence->isVisible()) parts << m_sentence;
  if (areLotsShown()) {
    parts << m_lots->parts();
  } else if (isCompareShown()) {
    parts << m_compare->parts();
  } else if (m_document->current()) {
    parts << (m_shown == m_import       ? m_import->parts()
              : m_shown == m_editor     ? m_editor->parts()
              : m_shown == m_ovenEditor ? m_ovenEditor->parts()
              : m_task == Task::kTune   ? m_tune->parts()
                                        : m_check->parts());
  } else {
    parts << static_cast<QWidget*>(m_pages->currentWidget());
  }
  const QWidget* focus = QApplication::focusWidget();
  qsizetype now = by > 0 ? -1 : 0;
  for (qsizetype i = 0; i < parts.size(); ++i) {
    if (focus && (parts[i] == focus || parts[i]->isAncestorOf(focus))) now = i;
  }
  for (qsizetype tried = 0; tried < parts.size(); ++tried) {
    now = (now + by + parts.size()) % parts.size();
    QWidget* part = parts[now];
    if (part->focusPolicy() & Qt::TabFocus) {
      part->setFocus(Qt::ShortcutFocusReason);
      return;
    }
    // The first thing inside that takes the focus.
    const auto inside = part->findChildren<QWidget*>();
    const auto first = std::ranges::find_if(inside, [part](const QWidget* child) {
      return (child->focusPolicy() & Qt::TabFocus) && child->isVisibleTo(part) && child->isEnabled();
    });
    if (first == inside.end()) continue;
    (*first)->setFocus(Qt::ShortcutFocusReason);
    return;
  }
}

}  // namespace ovenwright::desktop
