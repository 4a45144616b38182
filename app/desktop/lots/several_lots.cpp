#include "app/desktop/lots/several_lots.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDir>
#include <QEvent>
#include <QFileDialog>
#include <QFormLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QTreeWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desktop/archive/archive_link.h"
#include "app/desktop/settings/settings.h"
#include "app/desktop/sheets/printed_note.h"
#include "app/desktop/sheets/sheet_style.h"
#include "app/desktop/text/paragraph.h"
#include "app/desktop/widgets/theme.h"
#include "app/desktop/window/appearance.h"
#include "app/desktop/window/notice.h"

namespace ovenwright::desktop {
namespace {

enum Column { kLot, kRuns, kLastRun };
constexpr double kWidth_px = 560, kHeight_px = 560;

}  // namespace

SeveralLots::SeveralLots(ArchiveLink* archive, Settings* settings, const Document* document,
                         std::vector<SheetFilesJob::Item> chosen, QWidget* parent)
    : QDialog(parent),
      m_archive(archive),
      m_settings(settings),
      m_document(document),
      m_given(std::move(chosen)),
      m_job(new SheetFilesJob(archive, this)),
      m_filter(new QLineEdit),
      m_folder(new QLineEdit(settings->sheetFolder())),
      m_lots(new QTreeWidget),
      m_all(new QPushButton(tr("&All shown"))),
      m_none(new QPushButton(tr("&None"))),
      m_browse(new QPushButton(tr("&Choose…"))),
      m_start(new QPushButton),
      m_stop(new QPushButton(tr("&Stop"))),
      m_close(new QPushButton(tr("Close"))),
      m_replace(new QPushButton(tr("&Replace them"))),
      m_leaveOut(new QPushButton(tr("&Leave them out"))),
      m_back(new QPushButton(tr("Change the folder"))),
      m_kind(new QComboBox),
      m_each(new QCheckBox(tr("One page for each run"))),
      m_mark(new QCheckBox(tr("Mark as printed in the record"))),
      m_progress(new QProgressBar),
      m_message(new QLabel),
      m_question(new QWidget) {
  setWindowTitle(tr("Sheets of several lots"));
  setModal(false);
  for (const auto& item : m_given) m_toChoose << item.lot;
  buildLayout();
  connect(m_filter, &QLineEdit::textChanged, this, &SeveralLots::filter);
  connect(m_all, &QPushButton::clicked, this, [this] { checkShown(true); });
  connect(m_none, &QPushButton::clicked, this, [this] { checkShown(false); });
  connect(m_browse, &QPushButton::clicked, this, &SeveralLots::askFolder);
  connect(m_start, &QPushButton::clicked, this, &SeveralLots::start);
  connect(m_stop, &QPushButton::clicked, m_job, &SheetFilesJob::cancel);
  connect(m_close, &QPushButton::clicked, this, &SeveralLots::close);
  connect(m_replace, &QPushButton::clicked, this, [this] { startWith(There::kReplace); });
  connect(m_leaveOut, &QPushButton::clicked, this, [this] { startWith(There::kLeaveOut); });
  connect(m_back, &QPushButton::clicked, this, [this] {
    m_question->hide();
    say({});
    refresh();
    m_folder->setFocus();
  });
  connect(m_lots, &QTreeWidget::itemChanged, this, &SeveralLots::refresh);
  connect(m_folder, &QLineEdit::textChanged, this, &SeveralLots::refresh);
  connect(m_kind, &QComboBox::currentIndexChanged, this, &SeveralLots::refresh);
  connect(m_each, &QCheckBox::toggled, this, [this](bool on) { m_settings->setPageForEachRun(on); });
  connect(m_mark, &QCheckBox::toggled, this, [this](bool on) { m_settings->setMarkPrinted(on); });
  connect(m_job, &SheetFilesJob::progressed, this, [this](int done, int of, const QString& lot) {
    m_progress->setRange(0, of);
    m_progress->setValue(done);
    say(tr("%1 of %2: lot %3").arg(done + 1).arg(of).arg(lot));
  });
  connect(m_job, &SheetFilesJob::finished, this, &SeveralLots::tell);
  connect(m_job, &SheetFilesJob::notNoted, this, [this](const QString& lot, const Error& error) {
    say(tr("Lot %1 is not marked as printed: %2").arg(lot, errorText(error)), true);
  });
  say(tr("The lots are listed…"));
  archive->lots(this, {}, [this](Result<std::vector<archive::LotSummary>> lots) {
    if (lots) {
      fill(*lots);
    } else {
      say(errorWithFile(lots.error()), true);
    }
  });
  style();
  refresh();
}

SeveralLots::~SeveralLots() = default;

void SeveralLots::buildLayout() {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  m_filter->setPlaceholderText(tr("Find a lot"));
  m_filter->setAccessibleName(tr("Find a lot"));
  m_filter->setClearButtonEnabled(true);
  m_lots->setAccessibleName(tr("Lots"));
  m_lots->setHeaderLabels({tr("Lot"), tr("Runs"), tr("Last run")});
  m_lots->setRootIsDecorated(false);
  m_lots->setUniformRowHeights(true);
  m_lots->header()->setStretchLastSection(false);
  m_lots->header()->setSectionResizeMode(kLot, QHeaderView::Stretch);
  for (const int column : {kRuns, kLastRun})
    m_lots->header()->setSectionResizeMode(column, QHeaderView::ResizeToContents);
  m_kind->addItem(tr("PDF"), int(sheet::FileKind::kPdf));
  m_kind->addItem(tr("One HTML file"), int(sheet::FileKind::kHtml));
  m_kind->addItem(tr("Table (CSV)"), int(sheet::FileKind::kCsv));
  m_kind->addItem(tr("JSON"), int(sheet::FileKind::kJson));
  m_each->setChecked(m_settings->pageForEachRun());
  m_mark->setChecked(m_settings->markPrinted());
  m_mark->setToolTip(tr("By %1").arg(whoPrints(*m_settings)));
  m_progress->setTextVisible(false);
  m_progress->setAccessibleName(tr("Progress"));
  m_message->setWordWrap(true);
  m_message->setTextInteractionFlags(Qt::TextSelectableByMouse);

  auto* find = new QHBoxLayout;
  find->addWidget(m_filter, 1);
  find->addWidget(m_all);
  find->addWidget(m_none);
  auto* folder = new QHBoxLayout;
  folder->addWidget(m_folder, 1);
  folder->addWidget(m_browse);
  auto* form = new QFormLayout;
  form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
  const auto row = [form](const QString& text, QWidget* field, QLayout* layout) {
    auto* label = new QLabel(text);
    label->setBuddy(field);
    field->setAccessibleName(QString(text).remove(u'&'));
    if (layout) {
      form->addRow(label, layout);
    } else {
      form->addRow(label, field);
    }
  };
  row(tr("In the &folder"), m_folder, folder);
  row(tr("A file for each lot, as"), m_kind, nullptr);
  auto* question = new QHBoxLayout(m_question);
  question->setContentsMargins({});
  for (QPushButton* button : {m_replace, m_leaveOut, m_back}) question->addWidget(button);
  question->addStretch(1);
  m_question->hide();
  auto* foot = new QHBoxLayout;
  foot->addWidget(m_progress, 1);
  foot->addWidget(m_stop);
  foot->addStretch(1);
  foot->addWidget(m_start);
  foot->addWidget(m_close);
  for (QPushButton* button : {m_all, m_none, m_browse, m_start, m_stop, m_close, m_replace, m_leaveOut, m_back})
    button->setAutoDefault(false);
  auto* layout = new QVBoxLayout(this);
  const int inset = int(theme.px(16));
  layout->setContentsMargins(inset, inset, inset, inset);
  layout->setSpacing(int(theme.px(8)));
  layout->addLayout(find);
  layout->addWidget(m_lots, 1);
  layout->addLayout(form);
  layout->addWidget(m_each);
  layout->addWidget(m_mark);
  layout->addWidget(m_message);
  layout->addWidget(m_question);
  layout->addLayout(foot);
  resize(int(theme.px(kWidth_px)), int(theme.px(kHeight_px)));
}

void SeveralLots::fill(const std::vector<archive::LotSummary>& lots) {
  const QLocale locale;
  QList<QTreeWidgetItem*> items;
  for (const auto& lot : lots) {
    if (lot.lot.empty()) continue;
    auto* item = new QTreeWidgetItem;
    item->setText(kLot, QString::fromStdString(lot.lot));
    item->setText(kRuns, locale.toString(qulonglong(lot.records)));
    item->setTextAlignment(kRuns, Qt::AlignRight | Qt::AlignVCenter);
    item->setText(kLastRun, locale.toString(QDateTime::fromMSecsSinceEpoch(lot.lastRunAt.time_since_epoch().count()),
                                            QLocale::ShortFormat));
    item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
    item->setCheckState(kLot, Qt::Unchecked);
    items << item;
  }
  m_lots->addTopLevelItems(items);
  m_listed = true;
  say(items.isEmpty() ? tr("The archive has no lot yet.") : QString());
  choose(m_toChoose);
}

void SeveralLots::choose(const QStringList& lots) {
  m_toChoose = lots;
  if (!m_listed) return;
  {
    const QSignalBlocker blocker(m_lots);
    for (int i = 0; i < m_lots->topLevelItemCount(); ++i) {
      auto* item = m_lots->topLevelItem(i);
      item->setCheckState(kLot, lots.contains(item->text(kLot)) ? Qt::Checked : Qt::Unchecked);
    }
  }
  refresh();
}

QStringList SeveralLots::chosen() const {
  QStringList lots;
  for (int i = 0; i < m_lots->topLevelItemCount(); ++i) {
    const auto* item = m_lots->topLevelItem(i);
    if (item->checkState(kLot) == Qt::Checked) lots << item->text(kLot);
  }
  return lots;
}

void SeveralLots::filter(const QString& text) {
  for (int i = 0; i < m_lots->topLevelItemCount(); ++i) {
    auto* item = m_lots->topLevelItem(i);
    item->setHidden(!item->text(kLot).contains(text.trimmed(), Qt::CaseInsensitive));
  }
}

void SeveralLots::checkShown(bool on) {
  {
    const QSignalBlocker blocker(m_lots);
    for (int i = 0; i < m_lots->topLevelItemCount(); ++i) {
      auto* item = m_lots->topLevelItem(i);
      if (!on || !item->isHidden()) item->setCheckState(kLot, on ? Qt::Checked : Qt::Unchecked);
    }
  }
  refresh();
}

void SeveralLots::setFolder(const QString& folder) { m_folder->setText(folder); }

void SeveralLots::askFolder() {
  auto* dialog = new QFileDialog(this, tr("Folder of the sheets"),
                                 m_folder->text().isEmpty() ? QDir::homePath() : m_folder->text());
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->setFileMode(QFileDialog::Directory);
  dialog->setOption(QFileDialog::ShowDirsOnly);
  connect(dialog, &QFileDialog::fileSelected, this, &SeveralLots::setFolder);
  dialog->open();
}

SheetFilesJob::Wish SeveralLots::wish() const {
  SheetFilesJob::Wish wish;
  for (const QString& lot : chosen()) {
    const auto given = std::ranges::find(m_given, lot, &SheetFilesJob::Item::lot);
    wish.items.push_back(given == m_given.end() ? SheetFilesJob::Item{lot, {}} : *given);
  }
  wish.kind = sheet::FileKind(m_kind->currentData().toInt());
  wish.paths = SheetFilesJob::paths(wish.items, m_folder->text().trimmed(), wish.kind);
  wish.style = sheetStyle(*m_settings);
  wish.each = m_each->isChecked();
  if (m_mark->isChecked() && wish.kind == sheet::FileKind::kPdf) wish.notedBy = whoPrints(*m_settings).toStdString();
  return wish;
}

void SeveralLots::start() {
  const auto wanted = wish();
  if (wanted.items.empty() || m_folder->text().trimmed().isEmpty() || m_job->isRunning()) return;
  m_settings->setSheetFolder(m_folder->text().trimmed());
  if (!QFileInfo(m_folder->text().trimmed()).isDir()) {
    say(tr("There is no folder %1.").arg(m_folder->text().trimmed()), true);
    return;
  }
  for (const QString& path : wanted.paths) {
    if (!m_document || !isOpenLog(*m_document, path)) continue;
    say(tr("%1 is an open log: a sheet never takes a log’s place").arg(path), true);
    return;
  }
  const auto there = std::ranges::count_if(wanted.paths, [](const QString& path) { return QFile::exists(path); });
  if (there == 0) return startWith(There::kLeaveOut);
  say(tr("%n of these files are in the folder already.", nullptr, int(there)));
  m_question->show();
  refresh();
}

void SeveralLots::startWith(There there) {
  m_question->hide();
  auto wanted = wish();
  wanted.existing = there == There::kReplace ? files::Existing::kReplace : files::Existing::kKeep;
  if (there == There::kLeaveOut) {
    for (std::size_t i = wanted.items.size(); i-- > 0;) {
      if (!QFile::exists(wanted.paths[qsizetype(i)])) continue;
      wanted.items.erase(wanted.items.begin() + std::ptrdiff_t(i));
      wanted.paths.removeAt(qsizetype(i));
    }
  }
  m_job->start(std::move(wanted));
  refresh();
}

void SeveralLots::tell(const SheetFilesJob::Outcome& outcome) {
  QStringList said{tr("%1 of %n sheets are written.", nullptr, outcome.of).arg(outcome.written)};
  if (outcome.cancelled) said << tr("Stopped.");
  if (outcome.stopped) said << errorWithFile(*outcome.stopped);
  constexpr qsizetype kMost = 4;
  said << outcome.notMade.mid(0, kMost);
  if (outcome.notMade.size() > kMost)
    said << tr("%n more could not be made.", nullptr, int(outcome.notMade.size() - kMost));
  say(paragraph(said), outcome.stopped || !outcome.notMade.isEmpty());
  emit noted(said.first());
  refresh();
}

bool SeveralLots::isAsking() const { return !m_question->isHidden(); }
QString SeveralLots::message() const { return m_message->text(); }

void SeveralLots::say(const QString& text, bool trouble) {
  m_message->setText(text);
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  Appearance::ink(m_message, trouble ? theme.signal : theme.secondary);
}

void SeveralLots::refresh() {
  const int lots = int(chosen().size());
  const bool running = m_job->isRunning();
  m_start->setText(lots > 0 ? tr("&Write %n sheet(s)", nullptr, lots) : tr("Write sheets"));
  m_start->setVisible(!running && m_question->isHidden());
  m_start->setEnabled(lots > 0 && !m_folder->text().trimmed().isEmpty());
  m_stop->setVisible(running);
  m_progress->setVisible(running);
  m_mark->setEnabled(sheet::FileKind(m_kind->currentData().toInt()) == sheet::FileKind::kPdf);
  for (QWidget* widget : std::initializer_list<QWidget*>{m_lots, m_folder, m_browse, m_kind, m_each, m_all, m_none})
    widget->setEnabled(!running && m_question->isHidden());
}

void SeveralLots::style() {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  Appearance::fillWithAccent(m_start, theme);
}

void SeveralLots::changeEvent(QEvent* event) {
  QDialog::changeEvent(event);
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) style();
}

}  // namespace ovenwright::desktop
