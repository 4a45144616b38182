#include "app/desktop/window/sheet_menu.h"

#include <QDir>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QInputDialog>
#include <QLocale>
#include <QMenu>
#include <QPainter>
#include <QPrintDialog>
#include <QPrintPreviewDialog>
#include <QPrinter>
#include <algorithm>
#include <filesystem>
#include <system_error>

#include "app/desktop/document/document.h"
#include "app/desktop/settings/settings.h"
#include "app/sheet/export.h"
#include "app/sheet/logo.h"
#include "core/files/text_file.h"

namespace ovenwright::desktop {

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
  add(tr("Company &name on sheets…"), {}, &SheetMenu::askCompany);
  add(tr("Lo&go on sheets…"), {}, &SheetMenu::askLogo);
  QAction* noLogo = file->addAction(tr("No logo on sheets"), this, [this] { m_settings->setLogo({}); });
  const auto offerNoLogo = [this, noLogo] { noLogo->setVisible(!m_settings->logo().isEmpty()); };
  connect(file, &QMenu::aboutToShow, this, offerNoLogo);
  offerNoLogo();
  const auto enable = [this, print, preview, exported] {
    for (QAction* action : {print, preview, exported}) action->setEnabled(record().has_value());
  };
  for (const auto changed :
       {&Document::currentChanged, &Document::setupChanged, &Document::failureChanged, &Document::activityChanged})
    connect(m_document, changed, this, enable);
  enable();
}

std::optional<sheet::RunRecord> SheetMenu::record() const {
  const OpenLog* log = m_document->current();
  if (!log || !log->settled || log->error || !log->view()) return std::nullopt;
  sheet::RunRecord record;
  record.log = std::shared_ptr<const check::CheckedLog>(log->checked, &log->checked->log);
  record.run = log->run;
  record.request = std::make_shared<const check::Request>(log->setup);
  return record;
}

sheet::Style SheetMenu::style() {
  sheet::Style style;
  style.company = m_settings->company();
  style.locale = QLocale();
  style.printedAt = QDateTime::currentDateTime();
  if (!m_settings->logo().isEmpty()) {
    auto logo = sheet::readLogo(QFile::encodeName(m_settings->logo()).toStdString());
    if (logo)
      style.logo = *std::move(logo);
    else
      emit failed(tr("The sheet has no logo. %1").arg(QString::fromStdString(logo.error().text())));
  }
  style.paper = QLocale().measurementSystem() == QLocale::ImperialUSSystem ? sheet::Paper::kLetter : sheet::Paper::kA4;
  return style;
}

bool SheetMenu::paint(QPrinter& printer) {
  const auto shown = record();
  if (!shown) return false;
  auto how = style();
  const auto paper = printer.pageLayout().pageSize().id();
  const bool letter = paper == QPageSize::Letter;
  how.paper = letter ? sheet::Paper::kLetter : sheet::Paper::kA4;
  const auto document = sheet::runSheet(*shown, how);
  printer.setDocName(document.title);
  printer.setFullPage(true);  // the sheet has margins of its own
  QPainter painter(&printer);
  if (!painter.isActive()) return false;
  if (letter || paper == QPageSize::A4) {
    painter.scale(printer.logicalDpiX() / sheet::kUnitsPerInch, printer.logicalDpiY() / sheet::kUnitsPerInch);
  } else {
    const QSizeF whole = sheet::paperSize(sheet::Paper::kA4);
    const qreal fit = std::min(printer.width() / whole.width(), printer.height() / whole.height());
    painter.scale(fit, fit);
  }
  const int first = std::max(1, printer.fromPage()), pages = int(document.pages.size());
  const int last = printer.toPage() > 0 ? std::min(printer.toPage(), pages) : pages;
  for (int page = first; page <= last; ++page) {
    if (page > first && !printer.newPage()) return false;
    sheet::paintPage(painter, document, std::size_t(page - 1));
  }
  return painter.end();
}

void SheetMenu::print() {
  auto printer = std::make_shared<QPrinter>(QPrinter::HighResolution);
  printer->setPageSize(QPageSize(style().paper == sheet::Paper::kLetter ? QPageSize::Letter : QPageSize::A4));
  auto* dialog = new QPrintDialog(printer.get(), m_window);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  connect(dialog, qOverload<QPrinter*>(&QPrintDialog::accepted), this, [this, printer] {
    if (paint(*printer)) {
      emit done(tr("The sheet was sent to the printer"));
    } else {
      emit failed(tr("The sheet could not be printed"));
    }
  });
  dialog->open();
}

void SheetMenu::showPreview() {
  auto printer = std::make_shared<QPrinter>(QPrinter::HighResolution);
  printer->setPageSize(QPageSize(style().paper == sheet::Paper::kLetter ? QPageSize::Letter : QPageSize::A4));
  auto* dialog = new QPrintPreviewDialog(printer.get(), m_window);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  connect(dialog, &QPrintPreviewDialog::paintRequested, this, [this, printer](QPrinter* onto) {
    if (!paint(*onto)) emit failed(tr("The sheet could not be printed"));
  });
  dialog->open();
}

void SheetMenu::askExport() {
  const auto shown = record();
  if (!shown) return;
  const QString name = QFileInfo(QString::fromStdString(shown->reading().file.file)).completeBaseName();
  const QString folder = m_settings->openFolder();
  QFileDialog dialog(m_window, tr("Export the sheet"), folder.isEmpty() ? QDir::homePath() : folder,
                     tr("PDF (*.pdf);;One HTML file (*.html);;Table (*.csv);;JSON (*.json)"));
  dialog.setAcceptMode(QFileDialog::AcceptSave);
  dialog.setDefaultSuffix(QStringLiteral("pdf"));  // by the dialog, so that it asks before a file is replaced
  connect(&dialog, &QFileDialog::filterSelected, &dialog, [&dialog](const QString& chosen) {
    const auto dot = chosen.lastIndexOf(u'.') + 1;
    dialog.setDefaultSuffix(chosen.mid(dot, chosen.lastIndexOf(u')') - dot));
  });
  dialog.selectFile(sheet::safeFileName(name) + QStringLiteral(".pdf"));
  if (dialog.exec() == QDialog::Accepted) exportTo(dialog.selectedFiles().constFirst());
}

bool SheetMenu::isOpenLog(const QString& path) const {
  return std::ranges::any_of(m_document->logs(), [&](const Document::LogPointer& log) {
    std::error_code failed;
    return std::filesystem::equivalent(QFile::encodeName(log->source.path).toStdString(),
                                       QFile::encodeName(path).toStdString(), failed);
  });
}

bool SheetMenu::exportTo(const QString& path) {
  const auto shown = record();
  if (!shown) return false;
  if (isOpenLog(path)) {
    emit failed(tr("%1 is an open log: a sheet never takes a log’s place").arg(path));
    return false;
  }
  const QString ending = QFileInfo(path).suffix().toLower();
  const std::span<const sheet::RunRecord> one(&*shown, 1);
  std::string bytes;
  if (ending == u"pdf") {
    bytes = sheet::toPdf(sheet::runSheet(*shown, style())).toStdString();
  } else if (ending == u"html") {
    bytes = sheet::toHtml(one, style());
  } else if (ending == u"csv") {
    bytes = sheet::toCsv(one);
  } else if (ending == u"json") {
    bytes = sheet::toJson(one, style()) + "\n";
  } else {
    emit failed(tr("%1: a sheet is written as .pdf, .html, .csv or .json").arg(path));
    return false;
  }
  const auto written = files::write_file(QFile::encodeName(path).toStdString(), bytes, files::Existing::kReplace);
  if (!written) {
    emit failed(QString::fromStdString(written.error().text()));
    return false;
  }
  emit done(tr("The sheet stands in %1").arg(path));
  return true;
}

void SheetMenu::askCompany() {
  bool accepted = false;
  const QString name = QInputDialog::getText(m_window, tr("Company name"), tr("Stands at the head of each sheet:"),
                                             QLineEdit::Normal, m_settings->company(), &accepted);
  if (accepted) m_settings->setCompany(name);
}

void SheetMenu::askLogo() {
  const QString path =
      QFileDialog::getOpenFileName(m_window, tr("Logo at the head of each sheet"), m_settings->openFolder(),
                                   tr("Pictures (*.svg *.png *.jpg *.jpeg)"));
  if (path.isEmpty()) return;
  if (const auto logo = sheet::readLogo(QFile::encodeName(path).toStdString()); !logo)
    emit failed(QString::fromStdString(logo.error().text()));
  else
    m_settings->setLogo(path);
}

}  // namespace ovenwright::desktop
