#include "app/desktop/watch/watch_window.h"

#include <QDir>
#include <QEvent>
#include <QFileDialog>
#include <QGridLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTreeWidget>
#include <QVBoxLayout>

#include "app/desktop/archive/archive_link.h"
#include "app/desktop/settings/settings.h"
#include "app/desktop/text/format.h"
#include "app/desktop/text/paragraph.h"
#include "app/desktop/watch/watch_service.h"
#include "app/desktop/widgets/theme.h"
#include "app/desktop/widgets/wording.h"
#include "app/desktop/window/appearance.h"
#include "app/desktop/window/notice.h"
#include "app/desktop/window/sign_icon.h"

namespace ovenwright::desktop {
namespace {

enum Column { kTime, kFile, kVerdict, kMargin, kResult };
constexpr double kWidth_px = 820, kHeight_px = 520;

}  // namespace

WatchWindow::WatchWindow(ArchiveLink* link, Settings* settings, QWidget* parent)
    : QDialog(parent),
      m_link(link),
      m_settings(settings),
      m_service(WatchService::of(link)),
      m_folder(new QLineEdit(settings->watchedFolder())),
      m_rules(new QLineEdit(settings->watchRules())),
      m_browseFolder(new QPushButton(tr("&Choose…"))),
      m_browseRules(new QPushButton(tr("C&hoose…"))),
      m_start(new QPushButton(tr("&Watch"))),
      m_stop(new QPushButton(tr("&Stop"))),
      m_close(new QPushButton(tr("Close"))),
      m_state(new QLabel),
      m_about(new QLabel(tr("Each log that appears in the folder is judged and kept by the first rule that matches its "
                            "name. Files stay where they are; one that is still being written is waited for. Nothing "
                            "is watched before you say so, and watching goes on when this window is closed."))),
      m_lines(new QTreeWidget),
      m_detail(new QLabel) {
  setWindowTitle(tr("Watch a folder"));
  setModal(false);
  buildLayout();
  connect(m_browseFolder, &QPushButton::clicked, this, &WatchWindow::askFolder);
  connect(m_browseRules, &QPushButton::clicked, this, &WatchWindow::askRules);
  connect(m_start, &QPushButton::clicked, this, &WatchWindow::start);
  connect(m_stop, &QPushButton::clicked, m_service, &WatchService::stop);
  connect(m_close, &QPushButton::clicked, this, &WatchWindow::close);
  connect(m_folder, &QLineEdit::textChanged, this, &WatchWindow::refresh);
  connect(m_rules, &QLineEdit::textChanged, this, &WatchWindow::refresh);
  connect(m_lines, &QTreeWidget::currentItemChanged, this, &WatchWindow::showDetail);
  connect(m_service, &WatchService::linesAdded, this, &WatchWindow::addLines);
  connect(m_service, &WatchService::stateChanged, this, &WatchWindow::refresh);
  connect(link, &ArchiveLink::statusChanged, this, &WatchWindow::refresh);
  addLines(int(m_service->lines().size()));
  style();
  refresh();
}

void WatchWindow::buildLayout() {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  auto* grid = new QGridLayout;
  const auto row = [&](int at, const QString& text, QLineEdit* field, QPushButton* browse) {
    auto* label = new QLabel(text);
    label->setBuddy(field);
    field->setAccessibleName(QString(text).remove(u'&'));
    browse->setAccessibleName(tr("Choose: %1").arg(QString(text).remove(u'&')));
    browse->setAutoDefault(false);
    grid->addWidget(label, at, 0);
    grid->addWidget(field, at, 1);
    grid->addWidget(browse, at, 2);
  };
  row(0, tr("&Folder"), m_folder, m_browseFolder);
  row(1, tr("&Rules"), m_rules, m_browseRules);
  m_rules->setPlaceholderText(tr("rules.toml: which lot, window, board, oven and recipe belong to which file names"));
  m_about->setWordWrap(true);
  m_about->setFont(theme.font(12));
  m_detail->setWordWrap(true);
  m_detail->setTextFormat(Qt::PlainText);
  m_detail->setTextInteractionFlags(Qt::TextSelectableByMouse);
  m_detail->hide();
  m_state->setWordWrap(true);
  m_state->setTextInteractionFlags(Qt::TextSelectableByMouse);
  m_lines->setAccessibleName(tr("Logs that came"));
  m_lines->setHeaderLabels({tr("Time"), tr("File"), tr("Verdict"), tr("Margin"), tr("What became of it")});
  m_lines->setRootIsDecorated(false);
  m_lines->setUniformRowHeights(true);
  m_lines->setAllColumnsShowFocus(true);
  m_lines->setTextElideMode(Qt::ElideRight);
  m_lines->setIconSize(QSize(int(theme.px(24)), int(theme.px(14))));
  m_lines->setColumnWidth(kTime, int(theme.px(86)));
  m_lines->setColumnWidth(kFile, int(theme.px(190)));
  m_lines->setColumnWidth(kVerdict, int(theme.px(150)));
  m_lines->setColumnWidth(kMargin, int(theme.px(70)));
  for (QPushButton* button : {m_start, m_stop, m_close}) button->setAutoDefault(false);
  auto* foot = new QHBoxLayout;
  foot->addWidget(m_state, 1);
  for (QPushButton* button : {m_start, m_stop, m_close}) foot->addWidget(button);
  auto* layout = new QVBoxLayout(this);
  const int inset = int(theme.px(16));
  layout->setContentsMargins(inset, inset, inset, inset);
  layout->setSpacing(int(theme.px(8)));
  layout->addWidget(m_about);
  layout->addLayout(grid);
  layout->addWidget(m_lines, 1);
  layout->addWidget(m_detail);
  layout->addLayout(foot);
  resize(int(theme.px(kWidth_px)), int(theme.px(kHeight_px)));
}

void WatchWindow::setFolder(const QString& folder) { m_folder->setText(folder); }
void WatchWindow::setRules(const QString& path) { m_rules->setText(path); }

void WatchWindow::askFolder() {
  auto* dialog =
      new QFileDialog(this, tr("Folder to watch"), m_folder->text().isEmpty() ? QDir::homePath() : m_folder->text());
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->setFileMode(QFileDialog::Directory);
  dialog->setOption(QFileDialog::ShowDirsOnly);
  connect(dialog, &QFileDialog::fileSelected, this, &WatchWindow::setFolder);
  dialog->open();
}

void WatchWindow::askRules() {
  const QString now = m_rules->text().isEmpty() ? m_folder->text() : QFileInfo(m_rules->text()).absolutePath();
  auto* dialog =
      new QFileDialog(this, tr("Rules"), now.isEmpty() ? QDir::homePath() : now, tr("Rules (*.toml);;All files (*)"));
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->setFileMode(QFileDialog::ExistingFile);
  connect(dialog, &QFileDialog::fileSelected, this, &WatchWindow::setRules);
  dialog->open();
}

void WatchWindow::start() {
  m_settings->setWatchedFolder(m_folder->text().trimmed());
  m_settings->setWatchRules(m_rules->text().trimmed());
  m_service->start(m_folder->text().trimmed(), m_rules->text().trimmed());
}

void WatchWindow::addLines(int count) {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  const auto& lines = m_service->lines();
  const QLocale locale;
  for (std::size_t i = lines.size() - std::min(lines.size(), std::size_t(count)); i < lines.size(); ++i) {
    const auto& one = lines[i].watched;
    auto* item = new QTreeWidgetItem;
    item->setText(kTime, locale.toString(lines[i].at.time(), QStringLiteral("HH:mm:ss")));
    item->setToolTip(kTime, locale.toString(lines[i].at, QLocale::LongFormat));
    const QString path = QFile::decodeName(one.file.c_str());
    item->setText(kFile, QFileInfo(path).fileName());
    item->setToolTip(kFile, path);
    if (one.error) {
      item->setText(kVerdict, tr("not judged"));
      item->setText(kResult, errorText(*one.error));
      item->setForeground(kResult, theme.signal);
    } else {
      item->setText(kVerdict, widgets::Wording::verdictTitle(one.verdict));
      item->setIcon(kVerdict, signIcon(one.verdict, theme, devicePixelRatioF()));
      if (judge::is_out(one.verdict)) item->setForeground(kVerdict, theme.signal);
      if (one.margin) item->setText(kMargin, Format::inDefaultLocale().percent(*one.margin));
      const QString id = QString::fromStdString(one.id);
      item->setText(kResult, one.already ? tr("kept already, as %1").arg(id) : tr("kept as %1").arg(id));
    }
    item->setTextAlignment(kMargin, Qt::AlignRight | Qt::AlignVCenter);
    item->setToolTip(kResult, item->text(kResult));
    m_lines->insertTopLevelItem(0, item);
    if (one.error && !m_lines->currentItem()) showDetail(item);
  }
  while (m_lines->topLevelItemCount() > int(WatchService::kMostLines))
    delete m_lines->takeTopLevelItem(m_lines->topLevelItemCount() - 1);
}

void WatchWindow::showDetail(const QTreeWidgetItem* item) {
  m_detail->setText(item ? item->text(kFile) + QStringLiteral(": ") + item->text(kResult) : QString());
  m_detail->setVisible(item);
}

QString WatchWindow::stateText() const { return m_state->text(); }

void WatchWindow::refresh() {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  const bool running = m_service->isRunning();
  QStringList said;
  if (running) said << tr("Watching %1.").arg(m_service->folder());
  if (m_service->kept() + m_service->failed() > 0) {
    said << tr("%n run(s) kept", nullptr, m_service->kept()) + QStringLiteral(", ") +
                tr("%n file(s) not judged.", nullptr, m_service->failed());
  }
  if (running && m_service->isRefused()) {
    said << tr("Some files wait until the archive can take them.");
  } else if (running && m_service->isWaiting()) {
    said << tr("Some files are still being written.");
  }
  const auto& status = m_link->status();
  if (running && status.reach == ArchiveStatus::Reach::kAway)
    said << tr("The server is away: what is kept waits on this computer.");
  if (m_service->trouble())
    said << (running ? errorWithFile(*m_service->trouble())
                     : tr("Nothing is watched: %1").arg(errorWithFile(*m_service->trouble())));
  if (said.isEmpty()) said << tr("Nothing is watched.");
  m_state->setText(paragraph(said));
  Appearance::ink(m_state, m_service->trouble() ? theme.signal : theme.secondary);
  m_start->setVisible(!running);
  m_stop->setVisible(running);
  m_start->setEnabled(!m_folder->text().trimmed().isEmpty() && !m_rules->text().trimmed().isEmpty());
  for (QWidget* widget : std::initializer_list<QWidget*>{m_folder, m_rules, m_browseFolder, m_browseRules})
    widget->setEnabled(!running);
}

void WatchWindow::style() {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  Appearance::fillWithAccent(m_start, theme);
  Appearance::ink(m_about, theme.secondary);
}

void WatchWindow::changeEvent(QEvent* event) {
  QDialog::changeEvent(event);
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) style();
}

}  // namespace ovenwright::desktop
