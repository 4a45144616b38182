#include "app/desktop/window/main_window.h"

#include <QApplication>
#include <QCloseEvent>
#include <QDragEnterEvent>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QMimeData>
#include <QPainter>
#include <QScreen>
#include <QStackedWidget>
#include <QStatusBar>
#include <QStyle>
#include <QStyledItemDelegate>
#include <QTimer>
#include <QVBoxLayout>

#include "app/desktop/compare/compare_bar.h"
#include "app/desktop/compare/compare_page.h"
#include "app/desktop/document/layout_memory.h"
#include "app/desktop/editor/window_page.h"
#include "app/desktop/import/import_page.h"
#include "app/desktop/import/reading_panel.h"
#include "app/desktop/lots/lots_page.h"
#include "app/desktop/plot/curve_plot.h"
#include "app/desktop/settings/settings.h"
#include "app/desktop/tune/tune_page.h"
#include "app/desktop/widgets/glyphs.h"
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

namespace ovenwright::desktop {
namespace {

constexpr double kTwoLines_px = 88;
constexpr int kSlow_ms = 200, kNote_ms = 5000;
constexpr double kRailWidth_px = 104, kRailInset_px = 36;
constexpr int kFirstWidth_px = 1440, kFirstHeight_px = 900, kLeastWidth_px = 1024, kLeastHeight_px = 700;

/// A task of the rail: on the panel's ground with an accent bar where it is the one that is shown.
class RailDelegate : public QStyledItemDelegate {
 public:
  using QStyledItemDelegate::QStyledItemDelegate;
  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    const auto theme = widgets::Theme::fromPalette(option.palette, QApplication::font());
    return {QStyledItemDelegate::sizeHint(option, index).width(), int(theme.px(38))};
  }
  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    const auto theme = widgets::Theme::fromPalette(QApplication::palette(), QApplication::font());
    const bool shown = option.state.testFlag(QStyle::State_Selected);
    painter->save();
    if (shown) {
      painter->fillRect(option.rect, theme.panel);
      painter->fillRect(QRectF(option.rect.left(), option.rect.top(), theme.px(3), option.rect.height()), theme.accent);
    }
    painter->setPen(shown ? theme.text : theme.secondary);
    painter->setFont(theme.font(15, shown));
    painter->drawText(QRectF(option.rect).adjusted(theme.px(20), 0, 0, 0), Qt::AlignVCenter, index.data().toString());
    if (option.state.testFlag(QStyle::State_HasFocus)) widgets::paintFocusFrame(*painter, option.rect, theme);
    painter->restore();
  }
};

QStringList localFiles(const QMimeData& data) {
  QStringList files;
  for (const QUrl& url : data.urls()) {
    if (url.isLocalFile()) files << url.toLocalFile();
  }
  return files;
}

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
      m_rail(new QListWidget),
      m_railNote(new QLabel(tr("Drop a log anywhere in this window"))),
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
  connect(m_import->readingPanel(), &ReadingPanel::troubled, this, [this](const QString& title, const Error& error) {
    showNotice(noticeOf(title, error));
  });
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
  connect(m_tune, &TunePage::troubled, this, [this](const QString& title, const Error& error) {
    showNotice(noticeOf(title, error));
  });
  connectCompare();
  connectLots();
  connect(m_tune, &TunePage::undone, this, [this] { showTask(Task::kTune); });
  connect(m_rail, &QListWidget::currentRowChanged, this, [this](int row) {
    if (row >= 0) showTask(Task(row));
  });
  connect(m_profiles, &ProfileMenus::editWindowWanted, this, [this] { showWindowEditor(); });
  connect(m_editor, &WindowPage::done, this, &MainWindow::showResult);
  connect(m_editor, &WindowPage::noted, this, &MainWindow::note);
  connect(m_editor, &WindowPage::troubled, this, [this](const QString& title, const Error& error) {
    showNotice(noticeOf(title, error));
  });
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
  style();
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
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  m_rail->addItems({tr("Check"), tr("Tune"), tr("Compare"), tr("Lots")});
  m_rail->setCurrentRow(0);
  m_rail->setItemDelegate(new RailDelegate(m_rail));
  m_rail->setAccessibleName(tr("Tasks"));
  m_rail->setFrameShape(QFrame::NoFrame);
  m_rail->setFont(theme.font(15));
  m_rail->setFocusPolicy(Qt::StrongFocus);
  m_railNote->setWordWrap(true);
  m_railNote->setFont(theme.font(12));
  m_railNote->setContentsMargins(int(theme.px(16)), 0, int(theme.px(8)), int(theme.px(12)));
  auto* rail = new QWidget;
  rail->setObjectName(QStringLiteral("rail"));
  rail->setAutoFillBackground(true);
  // As wide as the longest name of a task needs.
  double widest = theme.px(kRailWidth_px);
  const QFontMetricsF names(theme.font(15, true));
  for (int task = 0; task < m_rail->count(); ++task)
    widest = std::max(widest, names.horizontalAdvance(m_rail->item(task)->text()) + theme.px(kRailInset_px));
  rail->setFixedWidth(int(widest));
  auto* rail_layout = new QVBoxLayout(rail);
  rail_layout->setContentsMargins(0, int(theme.px(8)), 0, 0);
  rail_layout->addWidget(m_rail, 1);
  rail_layout->addWidget(m_railNote);

  m_pages->addWidget(m_empty);
  m_pages->addWidget(m_check);
  m_pages->addWidget(m_tune);
  m_pages->addWidget(m_compare);
  m_pages->addWidget(m_lots);
  m_pages->addWidget(m_import);
  m_pages->addWidget(m_editor);
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
  layout->addWidget(rail);
  layout->addWidget(new RoomyArea(content), 1);
  setCentralWidget(central);

  m_readAs->setTextInteractionFlags(Qt::LinksAccessibleByMouse | Qt::LinksAccessibleByKeyboard);
  statusBar()->setContentsMargins(int(theme.px(10)), 0, int(theme.px(10)), 0);
  statusBar()->addWidget(m_status);
  statusBar()->addWidget(m_readAs);
  statusBar()->addPermanentWidget(m_rule);
  statusBar()->setSizeGripEnabled(false);
}

void MainWindow::setFormat() {
  m_format = Format(m_settings->temperatureUnit(), m_settings->speedUnit(), QLocale());
  m_check->setFormat(m_format);
  m_tune->setFormat(m_format);
  m_compare->setFormat(m_format);
  m_lots->setFormat(m_format);
  m_import->setFormat(m_format);
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
  Appearance::shrinkHiddenPages(m_pages, page);
  // What had the focus is going away: the verdict has it then, without a frame until the keyboard is used.
  const QWidget* going = m_pages->currentWidget();
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
  m_editor->show(window, requirement);
}

void MainWindow::showResult() {
  m_shown = nullptr;
  refreshPage();
  refreshSentence();
  refreshStatus();
}

void MainWindow::showTask(Task task) {
  m_rail->setCurrentRow(int(task));
  if (m_task == task && !m_shown) return;
  m_task = task;
  m_shown = nullptr;
  // Room for two lines, so that the strip stays under the mouse while the sentence changes.
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  m_sentence->setMinimumHeight(task == Task::kTune ? int(theme.px(kTwoLines_px)) : 0);
  refreshPage();
  refreshSentence();
  refreshStatus();
  emit taskChanged();
}

MainWindow::Page MainWindow::shownPage() const {
  return m_shown == m_import ? Page::kImport : m_shown == m_editor ? Page::kWindowEditor : Page::kResult;
}

void MainWindow::showPage(Page page) {
  if (page == Page::kImport) showImport();
  if (page == Page::kWindowEditor) showWindowEditor();
  if (page == Page::kResult) showResult();
}

void MainWindow::showDropFrame(int logs) { m_dropFrame->showFor(logs); }

void MainWindow::note(const QString& text) { statusBar()->showMessage(text, kNote_ms); }

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

void MainWindow::saveState() {
  m_settings->setWindowGeometry(saveGeometry());
  m_check->saveState();
  m_tune->saveState();
  m_compare->saveState();
  m_lots->saveState();
  m_import->saveState();
}

void MainWindow::closeEvent(QCloseEvent* event) {
  saveState();
  QMainWindow::closeEvent(event);
}

bool MainWindow::event(QEvent* event) {
  if (event->type() == QEvent::ThemeChange) Appearance::followSystem();
  return QMainWindow::event(event);
}

void MainWindow::changeEvent(QEvent* event) {
  QMainWindow::changeEvent(event);
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) style();
}

void MainWindow::style() {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  if (auto* rail = findChild<QWidget*>(QStringLiteral("rail"))) {
    QPalette ground = rail->palette();
    ground.setColor(QPalette::Window, theme.rail);
    ground.setColor(QPalette::Base, theme.rail);
    ground.setColor(QPalette::WindowText, theme.secondary);
    rail->setPalette(ground);
    m_rail->setPalette(ground);
  }
}

}  // namespace ovenwright::desktop
