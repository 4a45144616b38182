#include "app/desktop/window/sheet_menu.h"

#include <QDir>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QMenu>
#include <QPrintDialog>
#include <QPrintPreviewDialog>
#include <QPrinter>

#include "app/desktop/document/document.h"
#include "app/desktop/settings/settings.h"
#include "app/desktop/sheets/print_job.h"
#include "app/desktop/sheets/sheet_style.h"
#include "app/desktop/window/notice.h"
#include "app/sheet/export.h"
#include "app/sheet/files.h"
#include "core/files/text_file.h"

namespace ovenwright::desktop {

namespace {

constexpr double kPreviewShare = 0.9;  // of the window

}  // namespace

SheetMenu::SheetMenu(Document* document, Settings* settings, QWidget* window)
    : QObject(window), m_document(document), m_settings(settings), m_window(window) {}

void SheetMenu::addTo(QMenu* file) {
  const auto add = [&](const QString& text, const QKeySequence& keys, void (SheetMenu::*act)()) {
    QAction* action = file->addAction(text);
    action->setShortcut(keys);
    connect(action, &QAction::triggered, this, act);
    return action;
  };
  QAction* print = add(tr("Pr&int the sheet…"), QKeySequence::Print, &SheetMenu::print);
  QAction* preview = add(tr("Print pre&view…"), {}, &SheetMenu::showPreview);
  preview->setData(tr("Sheet…"));
  m_preview = preview;
  QAction* exported = add(tr("&Export the sheet…"), {}, &SheetMenu::askExport);
  m_actions = {print, preview, exported};
  for (const auto changed :
       {&Document::currentChanged, &Document::setupChanged, &Document::failureChanged, &Document::activityChanged})
    connect(m_document, changed, this, &SheetMenu::refresh);
  refresh();
}

void SheetMenu::setComparison(std::function<bool()> shown,
                              std::function<std::optional<sheet::ComparisonRecord>()> record) {
  m_isComparing = std::move(shown);
  m_comparison = std::move(record);
}

void SheetMenu::refresh() {
  const bool any = record().has_value() || comparison().has_value();
  for (QAction* action : m_actions) action->setEnabled(any);
}

std::optional<sheet::ComparisonRecord> SheetMenu::comparison() const {
  return m_isComparing && m_isComparing() ? m_comparison() : std::nullopt;
}

std::optional<sheet::RunRecord> SheetMenu::record() const {
  const OpenLog* log = m_document->current();
  if (m_isComparing && m_isComparing()) return std::nullopt;
  if (!log || !log->settled || log->error || !log->view()) return std::nullopt;
  sheet::RunRecord record;
  record.log = std::shared_ptr<const check::CheckedLog>(log->checked, &log->checked->log);
  record.run = log->run;
  record.request = std::make_shared<const check::Request>(log->setup);
  return record;
}

sheet::Style SheetMenu::style() {
  std::optional<Error> noLogo;
  auto style = sheetStyle(*m_settings, &noLogo);
  if (noLogo) emit failed(tr("The sheet has no logo. %1").arg(errorWithFile(*noLogo)));
  return style;
}

bool SheetMenu::paint(QPrinter& printer) {
  const auto shown = record();
  const auto pair = comparison();
  if (!shown && !pair) return false;
  auto how = style();
  how.paper = paperOf(printer);
  return PrintJob::paint(printer, {{pair ? sheet::compareSheet(*pair, how) : sheet::runSheet(*shown, how)}});
}

std::shared_ptr<QPrinter> SheetMenu::printer() const {
  auto printer = std::make_shared<QPrinter>(QPrinter::HighResolution);
  printer->setPageSize(pageSizeOf(m_settings->paper()));
  return printer;
}

void SheetMenu::print() {
  const auto onto = printer();
  auto* dialog = new QPrintDialog(onto.get(), m_window);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  connect(dialog, qOverload<QPrinter*>(&QPrintDialog::accepted), this, [this, onto] {
    if (paint(*onto)) {
      emit done(tr("The sheet was sent to the printer"));
    } else {
      emit failed(tr("The sheet could not be printed"));
    }
  });
  dialog->open();
}

void SheetMenu::showPreview() {
  const auto onto = printer();
  auto* dialog = new QPrintPreviewDialog(onto.get(), m_window);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->resize(m_window->size() * kPreviewShare);
  connect(dialog, &QPrintPreviewDialog::paintRequested, this, [this, onto](QPrinter* page) {
    if (!paint(*page)) emit failed(tr("The sheet could not be printed"));
  });
  dialog->open();
}

void SheetMenu::askExport() {
  const auto shown = record();
  const auto pair = comparison();
  if (!shown && !pair) return;
  const auto base = [](const sheet::RunRecord& of) {
    return QFileInfo(QString::fromStdString(of.reading().file.file)).completeBaseName();
  };
  const QString name = pair ? base(pair->a.front()) + u'_' + base(pair->b.front()) : base(*shown);
  const QString folder = m_settings->sheetFolder().isEmpty() ? m_settings->openFolder() : m_settings->sheetFolder();
  auto* dialog = new QFileDialog(m_window, tr("Export the sheet"), folder.isEmpty() ? QDir::homePath() : folder,
                                 tr("PDF (*.pdf);;One HTML file (*.html);;Table (*.csv);;JSON (*.json)"));
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->setAcceptMode(QFileDialog::AcceptSave);
  dialog->setDefaultSuffix(QStringLiteral("pdf"));  // by the dialog, so that it asks before a file is replaced
  connect(dialog, &QFileDialog::filterSelected, dialog, [dialog](const QString& chosen) {
    const auto dot = chosen.lastIndexOf(u'.') + 1;
    const QString ending = chosen.mid(dot, chosen.lastIndexOf(u')') - dot);
    dialog->setDefaultSuffix(ending);
    // The name that stands there follows, or the file would not be what was chosen.
    const QStringList named = dialog->selectedFiles();
    if (!named.isEmpty()) dialog->selectFile(QFileInfo(named.first()).completeBaseName() + u'.' + ending);
  });
  connect(dialog, &QFileDialog::fileSelected, this, [this](const QString& path) {
    m_settings->setSheetFolder(QFileInfo(path).absolutePath());
    exportTo(path);
  });
  dialog->selectFile(sheet::safeFileName(name) + QStringLiteral(".pdf"));
  dialog->open();
}

bool SheetMenu::exportTo(const QString& path) {
  const auto shown = record();
  const auto pair = comparison();
  if (!shown && !pair) return false;
  if (isOpenLog(*m_document, path)) {
    emit failed(tr("%1 is an open log: a sheet never takes a log’s place").arg(path));
    return false;
  }
  const auto kind = sheet::fileKindOf(path);
  if (!kind) {
    emit failed(tr("%1: a sheet is written as .pdf, .html, .csv or .json").arg(path));
    return false;
  }
  const std::string bytes =
      pair ? sheet::fileOf(*pair, style(), *kind) : sheet::fileOf(std::span(&*shown, 1), style(), *kind, false);
  const auto written = files::write_file(QFile::encodeName(path).toStdString(), bytes, files::Existing::kReplace);
  if (!written) {
    emit failed(errorWithFile(written.error()));
    return false;
  }
  emit done(tr("The sheet stands in %1").arg(path));
  return true;
}

}  // namespace ovenwright::desktop
