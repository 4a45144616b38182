#include "app/desktop/lots/lot_sheet_panel.h"

#include <QCheckBox>
#include <QDir>
#include <QEvent>
#include <QFileDialog>
#include <QLabel>
#include <QPrintDialog>
#include <QPrinter>
#include <QProgressBar>
#include <QPushButton>
#include <QStackedWidget>
#include <QToolButton>
#include <QVBoxLayout>

#include "app/desktop/archive/archive_link.h"
#include "app/desktop/lots/several_lots.h"
#include "app/desktop/settings/settings.h"
#include "app/desktop/sheets/lot_sheet_job.h"
#include "app/desktop/sheets/page_view.h"
#include "app/desktop/sheets/print_job.h"
#include "app/desktop/sheets/printed_note.h"
#include "app/desktop/sheets/sheet_files_job.h"
#include "app/desktop/sheets/sheet_style.h"
#include "app/desktop/tune/flow_row.h"
#include "app/desktop/widgets/theme.h"
#include "app/desktop/window/appearance.h"
#include "app/desktop/window/hairline.h"
#include "app/desktop/window/notice.h"

namespace ovenwright::desktop {

LotSheetPanel::LotSheetPanel(ArchiveLink* archive, Settings* settings, QWidget* parent)
    : QWidget(parent),
      m_archive(archive),
      m_settings(settings),
      m_preview(new LotSheetJob(archive, this)),
      m_forPrint(new LotSheetJob(archive, this)),
      m_files(new SheetFilesJob(archive, this)),
      m_about(new QLabel),
      m_message(new QLabel),
      m_back(new QToolButton),
      m_forward(new QToolButton),
      m_stack(new QStackedWidget),
      m_view(new PageView),
      m_busy(new QWidget),
      m_progress(new QProgressBar),
      m_printButton(new QPushButton(tr("Print…"))),
      m_pdf(new QPushButton(tr("Save as PDF…"))),
      m_html(new QPushButton(tr("HTML…"))),
      m_several(new QPushButton(tr("Several lots…"))),
      m_mark(new QCheckBox(tr("Mark as printed in the record"))),
      m_each(new QCheckBox(tr("One page for each run"))) {
  setAccessibleName(tr("Lot sheet"));
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  const int inset = int(theme.px(16));
  m_message->setWordWrap(true);
  m_message->setAlignment(Qt::AlignHCenter | Qt::AlignTop);
  m_message->setTextInteractionFlags(Qt::TextSelectableByMouse);
  for (QWidget* content : {static_cast<QWidget*>(m_view), static_cast<QWidget*>(m_message)}) {
    auto* room = new QWidget;
    auto* room_layout = new QVBoxLayout(room);
    room_layout->setContentsMargins(inset, inset, inset, inset);
    room_layout->addWidget(content);
    m_stack->addWidget(room);
  }
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins({});
  layout->setSpacing(0);
  layout->addWidget(buildHead());
  layout->addWidget(new Hairline);
  layout->addWidget(m_stack, 1);
  layout->addWidget(new Hairline);
  layout->addWidget(buildFoot());

  connect(m_back, &QToolButton::clicked, this, [this] { m_view->showPage(m_view->page() - 1); });
  connect(m_forward, &QToolButton::clicked, this, [this] { m_view->showPage(m_view->page() + 1); });
  connect(m_view, &PageView::pageChanged, this, &LotSheetPanel::refresh);
  connect(m_printButton, &QPushButton::clicked, this, &LotSheetPanel::askPrint);
  connect(m_pdf, &QPushButton::clicked, this, [this] { askSave(sheet::FileKind::kPdf); });
  connect(m_html, &QPushButton::clicked, this, [this] { askSave(sheet::FileKind::kHtml); });
  connect(m_several, &QPushButton::clicked, this, &LotSheetPanel::showSeveralLots);
  connect(m_mark, &QCheckBox::toggled, this, [this](bool on) { m_settings->setMarkPrinted(on); });
  connect(m_each, &QCheckBox::toggled, this, [this](bool on) {
    m_settings->setPageForEachRun(on);
    layOutAgain();
  });
  connect(m_preview, &LotSheetJob::made, this, &LotSheetPanel::take);
  connect(m_preview, &LotSheetJob::failed, this, &LotSheetPanel::showTrouble);
  connect(m_preview, &LotSheetJob::progressed, this, [this](int judged, int of) {
    m_judged = std::pair(judged, of);
    refresh();
  });
  connect(m_forPrint, &LotSheetJob::made, this,
          [this](const std::shared_ptr<const LotSheets>& sheets) { print(sheets->pages); });
  connect(m_forPrint, &LotSheetJob::failed, this, [this](const Error& error) {
    m_printer.reset();
    refresh();
    emit troubled(tr("The sheet could not be made."), error);
  });
  connect(m_files, &SheetFilesJob::finished, this, [this](const SheetFilesJob::Outcome& outcome) {
    refresh();
    if (outcome.stopped) {
      emit troubled(tr("The sheet was not written."), *outcome.stopped);
    } else if (!outcome.notMade.isEmpty()) {
      emit noted(outcome.notMade.first());
    } else if (!outcome.cancelled) {
      emit noted(tr("The sheet stands in %1").arg(m_files->property("path").toString()));
    }
  });
  connect(m_files, &SheetFilesJob::notNoted, this, [this](const QString&, const Error& error) {
    emit troubled(tr("The sheet is not marked as printed."), error);
  });
  connect(archive, &ArchiveLink::changed, this, &LotSheetPanel::make);  // the chain's head stands on the sheet
  style();
  refresh();
}

LotSheetPanel::~LotSheetPanel() = default;

QWidget* LotSheetPanel::buildHead() {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  auto* title = new QLabel(tr("Lot sheet"));
  title->setFont(theme.font(13, true));
  m_about->setFont(theme.font(12));
  m_about->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
  m_about->setMinimumWidth(1);
  const auto button = [](QToolButton* of, Qt::ArrowType arrow, const QString& name) {
    of->setArrowType(arrow);
    of->setAutoRaise(true);
    of->setAccessibleName(name);
    of->setToolTip(name);
  };
  button(m_back, Qt::LeftArrow, tr("Previous page"));
  button(m_forward, Qt::RightArrow, tr("Next page"));
  auto* head = new QWidget;
  head->setMinimumHeight(int(theme.px(34)));
  auto* row = new QHBoxLayout(head);
  row->setContentsMargins(int(theme.px(16)), 0, int(theme.px(16)), 0);
  row->setSpacing(int(theme.px(4)));
  row->addWidget(title);
  row->addWidget(m_about, 1);
  row->addWidget(m_back);
  row->addWidget(m_forward);
  return head;
}

QWidget* LotSheetPanel::buildFoot() {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  const auto flow = [&](std::initializer_list<QWidget*> widgets, int split) {
    auto* row = new QWidget;
    auto* row_layout = new FlowRow(row);
    row_layout->setContentsMargins({});
    row_layout->setSpacing(int(theme.px(8)));
    row_layout->setSplit(split);
    for (QWidget* widget : widgets) row_layout->addWidget(widget);
    return row;
  };
  for (QPushButton* button : {m_printButton, m_pdf, m_html, m_several}) button->setAutoDefault(false);
  m_mark->setChecked(m_settings->markPrinted());
  m_each->setChecked(m_settings->pageForEachRun());
  m_progress->setTextVisible(false);
  m_progress->setAccessibleName(tr("Progress"));
  auto* stop_button = new QPushButton(tr("Stop"));
  stop_button->setAutoDefault(false);
  connect(stop_button, &QPushButton::clicked, this, &LotSheetPanel::stop);
  auto* busy = new QHBoxLayout(m_busy);
  busy->setContentsMargins({});
  busy->addWidget(m_progress, 1);
  busy->addWidget(stop_button);
  auto* foot = new QWidget;
  auto* layout = new QVBoxLayout(foot);
  layout->setContentsMargins(int(theme.px(16)), int(theme.px(12)), int(theme.px(8)), int(theme.px(12)));
  layout->setSpacing(int(theme.px(8)));
  layout->addWidget(m_busy);
  layout->addWidget(flow({m_printButton, m_pdf, m_html, m_several}, 3));
  layout->addWidget(flow({m_mark, m_each}, 2));
  return foot;
}

void LotSheetPanel::setRecords(std::vector<std::string> ids) {
  if (ids == m_ids) return;
  m_ids = std::move(ids);
  make();
}

bool LotSheetPanel::isMaking() const {
  // What waits for the panel to be shown is not being made.
  return (m_wanted && isVisible()) || m_preview->isRunning() || m_printer || m_files->isRunning();
}

void LotSheetPanel::make() {
  m_judged.reset();
  m_wanted = !m_ids.empty();
  if (m_ids.empty()) {
    m_preview->cancel();
    m_sheets.reset();
    m_view->setSheets(nullptr);
  } else if (isVisible()) {
    m_wanted = false;
    m_view->setOutdated(true);
    m_preview->start({m_ids, sheetStyle(*m_settings), m_each->isChecked()});
  }
  refresh();
}

void LotSheetPanel::layOutAgain() {
  if (!m_sheets || m_preview->isRunning() || !isVisible()) return make();
  m_view->setOutdated(true);
  m_preview->layOut(m_sheets->lots, sheetStyle(*m_settings), m_each->isChecked());
  refresh();
}

void LotSheetPanel::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  m_mark->setToolTip(tr("After printing and saving as PDF, by %1").arg(whoPrints(*m_settings)));
  if (m_wanted) make();
}

void LotSheetPanel::take(const std::shared_ptr<const LotSheets>& sheets) {
  m_sheets = sheets;
  m_judged.reset();
  m_view->setSheets(sheets->pages);
  refresh();
}

void LotSheetPanel::showTrouble(const Error& error) {
  if (error.code == ErrorCode::kCancelled) return;
  m_sheets.reset();
  m_judged.reset();
  m_view->setSheets(nullptr);
  refresh();
  m_message->setText(tr("The sheet could not be made: %1").arg(errorWithFile(error)));
}

QString LotSheetPanel::lotText() const {
  const auto& lots = m_sheets->lots;
  if (lots.size() > 1) return tr("%n lots", nullptr, int(lots.size()));
  const QString lot = lots.front().front().labels.lot;
  return lot.isEmpty() ? tr("No lot") : lot;
}

void LotSheetPanel::refresh() {
  const bool ready = m_sheets && !m_preview->isRunning();
  const bool busy = m_printer || m_files->isRunning();
  m_stack->setCurrentIndex(m_sheets ? 0 : 1);
  if (!m_sheets)
    m_message->setText(m_ids.empty() ? tr("Mark runs in the list to put them on a sheet.") : tr("The sheet is made…"));
  QString about;
  if (m_judged && m_judged->second > 1) {
    about = tr("%1 of %2 runs are judged").arg(m_judged->first).arg(m_judged->second);
  } else if (m_sheets) {
    std::size_t runs = 0;
    for (const auto& lot : m_sheets->lots) runs += lot.size();
    about = tr("%1, %2, %3", "lot, runs, pages")
                .arg(lotText(), tr("%n run(s)", nullptr, int(runs)), tr("%n page(s)", nullptr, m_view->pages()));
  }
  m_about->setText(about);
  m_about->setToolTip(about);
  const bool several = m_view->pages() > 1;
  for (QToolButton* button : {m_back, m_forward}) button->setVisible(several);
  m_back->setEnabled(m_view->page() > 0);
  m_forward->setEnabled(m_view->page() + 1 < m_view->pages());
  m_view->setAccessibleDescription(m_sheets ? tr("Page %1 of %2").arg(m_view->page() + 1).arg(m_view->pages())
                                            : QString());
  for (QPushButton* button : {m_printButton, m_pdf, m_html}) button->setEnabled(ready && !busy);
  m_busy->setVisible(busy);
  if (busy && m_print == nullptr) m_progress->setRange(0, 0);
}

void LotSheetPanel::askPrint() {
  auto printer = std::make_shared<QPrinter>(QPrinter::HighResolution);
  printer->setPageSize(pageSizeOf(m_settings->paper()));
  auto* dialog = new QPrintDialog(printer.get(), this);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  connect(dialog, qOverload<QPrinter*>(&QPrintDialog::accepted), this, [this, printer] { printOn(printer); });
  dialog->open();
}

void LotSheetPanel::printOn(std::shared_ptr<QPrinter> printer) {
  m_printer = std::move(printer);
  m_printing = m_ids;
  auto style = sheetStyle(*m_settings);
  style.paper = paperOf(*m_printer);
  m_forPrint->start({m_ids, style, m_each->isChecked()});
  refresh();
}

void LotSheetPanel::print(const std::shared_ptr<const SheetPages>& pages) {
  const bool all =  // pages that were left out are not printed: then no run is
      m_printer->fromPage() <= 1 && (m_printer->toPage() == 0 || m_printer->toPage() >= pages->count());
  m_print = new PrintJob(m_printer, pages, this);
  connect(m_print, &PrintJob::progressed, this, [this](int page, int of) {
    m_progress->setRange(0, of);
    m_progress->setValue(page);
  });
  connect(m_print, &PrintJob::finished, this, [this, all](bool whole) {
    m_print = nullptr;
    m_printer.reset();
    refresh();
    if (!whole) {
      emit noted(tr("The sheet could not be printed"));
      return;
    }
    if (all) noteAsPrinted();
    emit noted(tr("The sheet was sent to the printer"));
  });
  m_print->start();
}

void LotSheetPanel::noteAsPrinted() {
  if (!m_mark->isChecked()) return;
  notePrinted(m_archive, this, m_printing, whoPrints(*m_settings).toStdString(),
              [this](const Error& error) { emit troubled(tr("The sheet is not marked as printed."), error); });
}

void LotSheetPanel::askSave(sheet::FileKind kind) {
  if (!m_sheets) return;
  if (m_sheets->lots.size() > 1) return showSeveralLots();  // a file for each
  const QString folder = m_settings->sheetFolder();
  auto* dialog = new QFileDialog(this, tr("Save the lot sheet"), folder.isEmpty() ? QDir::homePath() : folder,
                                 kind == sheet::FileKind::kPdf ? tr("PDF (*.pdf)") : tr("One HTML file (*.html)"));
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->setAcceptMode(QFileDialog::AcceptSave);
  dialog->setDefaultSuffix(sheet::fileEnding(kind));  // by the dialog, so that it asks before a file is replaced
  dialog->selectFile(sheet::fileNames({lotText()}, kind).constFirst());
  connect(dialog, &QFileDialog::fileSelected, this, &LotSheetPanel::saveTo);
  dialog->open();
}

void LotSheetPanel::saveTo(const QString& path) {
  const auto kind = sheet::fileKindOf(path);
  if (!kind || !m_sheets || m_files->isRunning()) return;
  if (m_document && isOpenLog(*m_document, path)) {
    emit noted(tr("%1 is an open log: a sheet never takes a log’s place").arg(path));
    return;
  }
  m_settings->setSheetFolder(QFileInfo(path).absolutePath());
  m_files->setProperty("path", path);
  SheetFilesJob::Wish wish;
  wish.items = {{lotText(), m_ids}};
  wish.paths = {path};
  wish.kind = *kind;
  wish.style = sheetStyle(*m_settings);
  wish.each = m_each->isChecked();
  wish.existing = files::Existing::kReplace;  // the dialog has asked
  if (m_mark->isChecked() && *kind == sheet::FileKind::kPdf) wish.notedBy = whoPrints(*m_settings).toStdString();
  m_files->start(std::move(wish));
  refresh();
}

void LotSheetPanel::showSeveralLots() {
  std::vector<SheetFilesJob::Item> marked;
  if (m_sheets) {
    for (const auto& lot : m_sheets->lots) {
      SheetFilesJob::Item item{lot.front().labels.lot, {}};
      for (const auto& run : lot) item.ids.push_back(run.archive->id.toStdString());
      marked.push_back(std::move(item));
    }
  }
  auto* window = new SeveralLots(m_archive, m_settings, m_document, std::move(marked), this);
  window->setAttribute(Qt::WA_DeleteOnClose);
  connect(window, &SeveralLots::noted, this, &LotSheetPanel::noted);
  window->show();
}

void LotSheetPanel::stop() {
  m_files->cancel();
  m_forPrint->cancel();
  delete m_print;
  m_print = nullptr;
  m_printer.reset();
  refresh();
}

void LotSheetPanel::style() {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  Appearance::fillWithAccent(m_printButton, theme);
  Appearance::ink(m_about, theme.secondary);
  Appearance::ink(m_message, theme.secondary);
}

void LotSheetPanel::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) style();
}

}  // namespace ovenwright::desktop
