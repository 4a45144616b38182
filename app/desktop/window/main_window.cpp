#include "app/desktop/window/main_window.h"

#include <QApplication>
#include <QHBoxLayout>
#include <QMenuBar>
#include <QScreen>
#include <QStackedWidget>
#include <QStatusBar>
#include <QStyle>
#include <QTimer>
#include <QVBoxLayout>

#include "app/desktop/compare/compare_bar.h"
#include "app/desktop/compare/compare_page.h"
#include "app/desktop/document/layout_memory.h"
#include "app/desktop/editor/oven_page.h"
#include "app/desktop/editor/window_page.h"
#include "app/desktop/import/import_page.h"
#include "app/desktop/import/reading_panel.h"
#include "app/desktop/lots/lots_page.h"
#include "app/desktop/plot/curve_plot.h"
#include "app/desktop/settings/settings.h"
#include "app/desktop/table/results_table.h"
#include "app/desktop/tune/model_words.h"
#include "app/desktop/tune/tune_page.h"
#include "app/desktop/widgets/limit_lanes.h"
#include "app/desktop/widgets/sentence.h"
#include "app/desktop/window/appearance.h"
#include "app/desktop/window/check_page.h"
#include "app/desktop/window/chooser_bar.h"
#include "app/desktop/window/drop_frame.h"
#include "app/desktop/window/elided_label.h"
#include "app/desktop/window/empty_page.h"
#include "app/desktop/window/hairline.h"
#include "app/desktop/window/profile_menus.h"
#include "app/desktop/window/roomy_area.h"
#include "app/desktop/window/task_rail.h"

namespace ovenwright::desktop {
namespace {

constexpr double kOneLine_px = 72, kTwoLines_px = 96;
constexpr double kRoomy_px = 760, kLow_px = 620;  // heights of the window at which its head is smaller
constexpr int kSlow_ms = 200, kNote_ms = 5000;
constexpr int kFirstWidth_px = 1440, kFirstHeight_px = 900, kLeastWidth_px = 1024, kLeastHeight_px = 700;

}  // namespace

MainWindow::MainWindow(Document* document, Settings* settings, ArchiveLink* archive)
    : m_document(document),
      m_settings(settings),
      m_archive(archive),
      m_profiles(new ProfileMenus(document, this)),
      m_undo(document->undoStack()->createUndoAction(this, tr("Undo"))),
      m_redo(document->undoStack()->createRedoAction(this, tr("Redo"))),
      m_keep(new QAction(tr("&Keep in the record…"), this)),
      m_sentence(new widgets::Sentence),
      m_rail(new TaskRail({tr("Check"), tr("Tune"), tr("Compare"), tr("Lots")})),
      m_status(new ElidedLabel),
      m_readAs(new ElidedLabel),
      m_rule(new ElidedLabel),
      m_watching(new ElidedLabel),
      m_where(new ElidedLabel),
      m_pages(new RoomyPages),
      m_empty(new EmptyPage(document, m_profiles)),
      m_check(new CheckPage(document, settings)),
      m_tune(new TunePage(document, settings)),
      m_compare(new ComparePage(document, settings, m_profiles)),
      m_lots(new LotsPage(archive, settings)),
      m_layouts(std::make_unique<LayoutMemory>(settings)),
      m_import(new ImportPage(document, m_layouts.get(), settings)),
      m_editor(new WindowPage(document)),
      m_ovenEditor(new OvenPage(document)),
      m_dropFrame(new DropFrame(this)),
      m_slow(new QTimer(this)) {
  m_undo->setData(tr("Undo"));
  m_undo->setShortcut(QKeySequence::Undo);
  m_redo->setData(tr("Redo"));
  m_redo->setShortcut(Qt::CTRL | Qt::SHIFT | Qt::Key_Z);
  m_keep->setData(tr("Keep…"));
  m_keep->setShortcut(Qt::CTRL | Qt::Key_K);
  m_choosers = new ChooserBar(document, m_profiles, m_undo, m_redo);
  setAcceptDrops(true);
  buildLayout();
  buildActions();
  buildKeep();
  m_slow->setSingleShot(true);
  m_slow->setInterval(kSlow_ms);
  connect(m_slow, &QTimer::timeout, this, &MainWindow::refreshSentence);
  connect(m_profiles, &ProfileMenus::troubled, this, &MainWindow::showNotice);
  connect(m_choosers, &ChooserBar::openWanted, this, &MainWindow::openLogs);
  connect(m_choosers, &ChooserBar::closeWanted, this, &MainWindow::closeLog);
  connect(m_empty, &EmptyPage::openWanted, this, &MainWindow::openLogs);
  connect(m_empty, &EmptyPage::pasteWanted, this, &MainWindow::paste);
  connect(m_empty, &EmptyPage::demoWanted, this, &MainWindow::openDemo);
  connect(m_check, &CheckPage::ovenWanted, m_choosers, &ChooserBar::showOven);
  connect(m_check, &CheckPage::entryWanted, this, [this] {
    showImport();
    m_import->readingPanel()->focusEntry();
  });
  connect(m_import, &ImportPage::boardWanted, m_choosers, &ChooserBar::showBoard);
  connect(m_import, &ImportPage::showWanted, this, [this](std::size_t channel, double from_s, double to_s) {
    showResult();
    m_document->chooseChannel(channel);
    m_check->plot()->setRawSamplesShown(true);
    m_check->plot()->showStretch(from_s, to_s);
  });
  connect(m_import->readingPanel(), &ReadingPanel::done, this, &MainWindow::showResult);
  connect(m_import->readingPanel(), &ReadingPanel::noted, this, &MainWindow::note);
  connect(m_import->readingPanel(), &ReadingPanel::troubled, this,
          [this](const QString& title, const Error& error) { showNotice(noticeOf(title, error)); });
  connect(m_check, &CheckPage::boardWanted, m_choosers, &ChooserBar::showBoard);
  connect(m_check, &CheckPage::tuneWanted, this, [this] { showTask(Task::kTune); });
  connect(m_check, &CheckPage::windowWanted, this,
          [this](std::size_t of, std::size_t requirement) { showWindowEditor(of, int(requirement)); });
  connect(m_tune, &TunePage::sentenceChanged, this, [this] {
    if (m_task == Task::kTune) refreshSentence();
  });
  connect(m_tune->session(), &TuneSession::stateChanged, this, &MainWindow::refreshStatus);
  connect(m_tune, &TunePage::ovenWanted, m_choosers, &ChooserBar::showOven);
  connect(m_tune, &TunePage::entryWanted, this, [this] {
    showImport();
    m_import->readingPanel()->focusEntry();
  });
  connect(m_tune, &TunePage::noted, this, &MainWindow::note);
  connect(m_tune, &TunePage::troubled, this,
          [this](const QString& title, const Error& error) { showNotice(noticeOf(title, error)); });
  connectCompare();
  connectLots();
  connect(m_tune, &TunePage::undone, this, [this] { showTask(Task::kTune); });
  connect(m_rail, &TaskRail::taskPressed, this, [this](int task) { showTask(Task(task)); });
  connect(m_profiles, &ProfileMenus::editWindowWanted, this, [this] { showWindowEditor(); });
  connect(m_editor, &WindowPage::done, this, &MainWindow::showResult);
  connect(m_editor, &WindowPage::restored, this, [this] {
    if (!m_editor->isVisible()) showWindowEditor(m_editor->window());
  });
  connect(m_editor, &WindowPage::noted, this, &MainWindow::note);
  connect(m_editor, &WindowPage::troubled, this,
          [this](const QString& title, const Error& error) { showNotice(noticeOf(title, error)); });
  connect(m_profiles, &ProfileMenus::editOvenWanted, this, &MainWindow::showOvenEditor);
  connect(m_ovenEditor, &OvenPage::done, this, &MainWindow::showResult);
  connect(m_ovenEditor, &OvenPage::noted, this, &MainWindow::note);
  connect(m_ovenEditor, &OvenPage::troubled, this,
          [this](const QString& title, const Error& error) { showNotice(noticeOf(title, error)); });
  const auto told = [this](const char* words) { return [this, words] { note(tr(words)); }; };
  for (auto* lanes : findChildren<widgets::LimitLanes*>()) {
    connect(lanes, &widgets::LimitLanes::rowCopied, this, told(QT_TR_NOOP("The row is on the clipboard.")));
    connect(lanes, &widgets::LimitLanes::pictureCopied, this, told(QT_TR_NOOP("The picture is on the clipboard.")));
  }
  connect(m_check->table(), &ResultsTable::copied, this,
          told(QT_TR_NOOP("The rows are on the clipboard, with headings.")));
  connect(m_readAs, &QLabel::linkActivated, this, &MainWindow::showImport);
  document->setRememberedLayouts(m_layouts->snapshot());
  connect(m_sentence, &widgets::Sentence::activated, this, &MainWindow::followLink);
  connect(document, &Document::currentChanged, this, [this] {
    dropNotice();
    if (!m_document->current()) m_shown = nullptr;
    refreshPage();
    refreshSentence();
    refreshStatus();
  });
  connect(document, &Document::setupChanged, this, [this] {
    dropNotice();
    refreshSentence();
  });
  connect(document, &Document::activityChanged, this, [this] {
    if (m_document->activity() && !m_slow->isActive() && m_slow->property("running").toBool() == false) {
      m_slow->setProperty("running", true);
      m_slow->start();
    } else if (!m_document->activity()) {
      m_slow->setProperty("running", false);
      m_slow->stop();
    }
    refreshSentence();
  });
  connect(document, &Document::failureChanged, this, &MainWindow::showFailure);
  connect(document, &Document::opened, this, [this](const QString& name) {
    for (const auto& log : m_document->logs()) {
      if (log->source.name == name && !log->source.path.isEmpty()) m_settings->addRecentLog(log->source.path);
    }
  });
  setFormat();
  refreshPage();
  refreshSentence();
  refreshStatus();
  m_sentence->setFocus();
  placeOnScreen();
}

MainWindow::~MainWindow() = default;

void MainWindow::placeOnScreen() {
  const QSize most = screen()->availableSize();
  setMinimumSize(QSize(kLeastWidth_px, kLeastHeight_px).boundedTo(most));
  if (restoreGeometry(m_settings->windowGeometry())) return;
  // Whether a frame comes around it is not known yet: where the screen is small, room for its title is left.
  const QRect room =
      screen()->availableGeometry().adjusted(0, 0, 0, -QWidget::style()->pixelMetric(QStyle::PM_TitleBarHeight));
  const QSize size = QSize(kFirstWidth_px, kFirstHeight_px).boundedTo(room.size()).expandedTo(minimumSize());
  resize(size);
  move(room.topLeft() +
       QPoint(std::max(0, room.width() - size.width()), std::max(0, room.height() - size.height())) / 2);
}

void MainWindow::buildLayout() {
  m_pages->addWidget(m_empty);
  m_pages->addWidget(m_check);
  m_pages->addWidget(m_tune);
  m_pages->addWidget(m_compare);
  m_pages->addWidget(m_lots);
  m_pages->addWidget(m_import);
  m_pages->addWidget(m_editor);
  m_pages->addWidget(m_ovenEditor);
  m_sentenceBlock = new QWidget;
  m_sentenceBlock->setAutoFillBackground(true);
  m_sentenceBlock->setBackgroundRole(QPalette::Base);
  auto* sentence_layout = new QVBoxLayout(m_sentenceBlock);
  sentence_layout->setContentsMargins({});
  sentence_layout->setSpacing(0);
  sentence_layout->addWidget(m_sentence);
  sentence_layout->addWidget(new Hairline);
  m_chooserBlock = new QWidget;
  auto* chooser_layout = new QVBoxLayout(m_chooserBlock);
  chooser_layout->setContentsMargins({});
  chooser_layout->setSpacing(0);
  chooser_layout->addWidget(m_choosers);
  chooser_layout->addWidget(m_compare->bar());
  chooser_layout->addWidget(new Hairline);

  auto* content = new QWidget;
  auto* right = new QVBoxLayout(content);
  right->setContentsMargins({});
  right->setSpacing(0);
  right->addWidget(m_chooserBlock);
  right->addWidget(m_sentenceBlock);
  right->addWidget(m_pages, 1);
  auto* central = new QWidget;
  auto* layout = new QHBoxLayout(central);
  layout->setContentsMargins({});
  layout->setSpacing(0);
  layout->addWidget(m_rail);
  m_area = new RoomyArea(content);
  layout->addWidget(m_area, 1);
  setCentralWidget(central);

  buildStatusBar();
}

void MainWindow::setFormat() {
  m_format = Format(m_settings->temperatureUnit(), m_settings->speedUnit(), QLocale());
  m_check->setFormat(m_format);
  m_tune->setFormat(m_format);
  m_compare->setFormat(m_format);
  m_lots->setFormat(m_format);
  m_import->setFormat(m_format);
  m_ovenEditor->setFormat(m_format);
  refreshSentence();
  refreshStatus();
  refreshWhere();
}

void MainWindow::refreshPage() {
  QWidget* page = m_empty;
  if (m_document->current()) page = m_task == Task::kTune ? static_cast<QWidget*>(m_tune) : m_check;
  if (m_task == Task::kCompare) page = m_compare;
  if (m_task == Task::kLots) page = m_lots;
  if (m_shown) page = m_shown;
  placeHead();
  if (page == m_empty) fitHead();
  Appearance::shrinkHiddenPages(m_pages, page);
  // What had the focus is going away: the verdict has it then, without a frame until the keyboard is used.
  const QWidget* going = m_pages->currentWidget();
  if (going != page) m_area->showTop();
  if (going != page && going->isAncestorOf(QApplication::focusWidget())) {
    QWidget* next = areLotsShown() ? m_lots->parts().at(1) : m_sentence;
    next->setFocus(Qt::OtherFocusReason);
  }
  m_pages->setCurrentWidget(page);
  const auto* log = m_document->current();
  QString title = tr("Ovenwright");
  if (areLotsShown()) {
    title = tr("Lots") + QStringLiteral(" – ") + title;
  } else if (isCompareShown()) {
    title = m_compare->title() + QStringLiteral(" – ") + title;
  } else if (log) {
    title = runTitle(*log, log->run);
    if (m_document->setup().board)
      title += QStringLiteral(" – ") + QString::fromStdString(m_document->setup().board->identity.name);
    title += QStringLiteral(" – ") + tr("Ovenwright");
  }
  setWindowTitle(title);
  emit pageChanged();
}

void MainWindow::showImport() {
  if (!m_document->current()) return;
  m_import->showFailure(std::nullopt);
  m_shown = m_import;
  refreshPage();
  refreshSentence();
  refreshStatus();
}

void MainWindow::showWindowEditor(std::size_t window, int requirement) {
  m_shown = m_editor;
  refreshPage();
  refreshSentence();
  refreshStatus();
  m_editor->show(window, requirement);
}

void MainWindow::showOvenEditor() {
  if (!m_document->setup().oven) return;
  QStringList doubts;
  const auto* bench = m_tune->session()->bench();
  if (bench && bench->model && bench->model->measuredView() == m_document->view())
    for (const auto& warning : bench->model->fit().warnings) doubts << modelText(warning);
  m_shown = m_ovenEditor;
  refreshPage();
  refreshSentence();
  refreshStatus();
  m_ovenEditor->show(doubts);
}

void MainWindow::showResult() {
  m_shown = nullptr;
  refreshPage();
  refreshSentence();
  refreshStatus();
}

void MainWindow::showTask(Task task) {
  m_rail->setTask(int(task));
  if (m_task == task && !m_shown) return;
  m_task = task;
  m_shown = nullptr;
  fitHead();
  refreshPage();
  refreshSentence();
  refreshStatus();
  emit taskChanged();
}

MainWindow::Page MainWindow::shownPage() const {
  if (m_shown == m_ovenEditor) return Page::kOvenEditor;
  return m_shown == m_import ? Page::kImport : m_shown == m_editor ? Page::kWindowEditor : Page::kResult;
}

void MainWindow::showPage(Page page) {
  if (page == Page::kImport) showImport();
  if (page == Page::kWindowEditor) showWindowEditor(m_editor->window());
  if (page == Page::kOvenEditor) showOvenEditor();
  if (page == Page::kResult) showResult();
}

void MainWindow::goOnFrom(const MainWindow& before) {
  m_editor->goOnFrom(*before.m_editor);
  m_ovenEditor->goOnFrom(*before.m_ovenEditor);
}

void MainWindow::showDropFrame(int logs) { m_dropFrame->showFor(logs); }

void MainWindow::note(const QString& text) { statusBar()->showMessage(text, kNote_ms); }

void MainWindow::saveState() {
  m_settings->setWindowGeometry(saveGeometry());
  m_check->saveState();
  m_tune->saveState();
  m_compare->saveState();
  m_lots->saveState();
  m_import->saveState();
}

bool MainWindow::event(QEvent* event) {
  if (event->type() == QEvent::ThemeChange) Appearance::followSystem();
  return QMainWindow::event(event);
}

void MainWindow::changeEvent(QEvent* event) {
  QMainWindow::changeEvent(event);
  if (event->type() == QEvent::FontChange) fitHead();
}

void MainWindow::resizeEvent(QResizeEvent* event) {
  QMainWindow::resizeEvent(event);
  fitHead();
  fitStatus();
}

void MainWindow::fitHead() {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  const bool roomy = height() >= theme.px(kRoomy_px), low = height() < theme.px(kLow_px);
  m_sentence->setMostHeight(roomy ? 0 : theme.px(kOneLine_px));
  // In Tune room for two lines, so that the strip stays under the mouse while the sentence changes.
  m_sentence->setMinimumHeight(m_task == Task::kTune && roomy ? int(theme.px(kTwoLines_px)) : 0);
  m_rail->setLow(low);
  if (m_document->current()) return;
  const int page = width() - m_rail->width();
  const int head = menuBar()->sizeHint().height() + statusBar()->sizeHint().height() +
                   m_chooserBlock->sizeHint().height() + m_sentence->heightForWidth(page);
  constexpr int kLines = 4;  // between them
  m_empty->setRoom({page, height() - head - kLines});
}

}  // namespace ovenwright::desktop
