#include "app/desktop/window/sheet_menu.h"

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

#include "app/desktop/document/document.h"
#include "app/desktop/settings/settings.h"
#include "app/sheet/export.h"
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
  QAction* preview = add(tr("Print pre&view…"), {}, &SheetMenu::preview);
  QAction* exported = add(tr("&Export the sheet…"), {}, &SheetMenu::askExport);
  add(tr("Company &name on sheets…"), {}, &SheetMenu::askCompany);
  add(tr("Lo&go on sheets…"), {}, &SheetMenu::askLogo);
  const auto enable = [this, print, preview, exported] {
    for (QAction* action : {print, preview, exported}) action->setEnabled(m_document->view() != nullptr);
  };
  connect(m_document, &Document::currentChanged, this, enable);
  enable();
}

std::optional<sheet::RunRecord> SheetMenu::record() const {
  const OpenLog* log = m_document->current();
  if (!log || !log->view()) return std::nullopt;
  sheet::RunRecord record;
  record.log = std::shared_ptr<const check::CheckedLog>(log->checked, &log->checked->log);
  record.run = log->run;
  record.request = std::make_shared<const check::Request>(log->setup);
  return record;
}

sheet::Style SheetMenu::style() const {
  sheet::Style style;
  style.company = m_settings->company();
  style.locale = QLocale();
  style.printedAt = QDateTime::currentDateTime();
  if (QFile logo(m_settings->logo()); !logo.fileName().isEmpty() && logo.open(QIODevice::ReadOnly))
    style.logo = logo.readAll();
  style.paper = QLocale().measurementSystem() == QLocale::ImperialUSSystem ? sheet::Paper::kLetter : sheet::Paper::kA4;
  return style;
}

void SheetMenu::paint(QPrinter& printer) const {
  const auto shown = record();
  if (!shown) return;
  auto how = style();
  const bool letter = printer.pageLayout().pageSize().id() == QPageSize::Letter;
  how.paper = letter ? sheet::Paper::kLetter : sheet::Paper::kA4;
  const auto document = sheet::runSheet(*shown, how);
  printer.setDocName(document.title);
  printer.setFullPage(true);  // the sheet has margins of its own
  QPainter painter(&printer);
  painter.scale(printer.logicalDpiX() / sheet::kUnitsPerInch, printer.logicalDpiY() / sheet::kUnitsPerInch);
  const int first = std::max(1, printer.fromPage()), pages = int(document.pages.size());
  const int last = printer.toPage() > 0 ? std::min(printer.toPage(), pages) : pages;
  for (int page = first; page <= last; ++page) {
    if (page > first) printer.newPage();
    sheet::paintPage(painter, document, std::size_t(page - 1));
  }
}

void SheetMenu::print() {
  auto printer = std::make_shared<QPrinter>(QPrinter::HighResolution);
  printer->setPageSize(QPageSize(style().paper == sheet::Paper::kLetter ? QPageSize::Letter : QPageSize::A4));
  auto* dialog = new QPrintDialog(printer.get(), m_window);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  connect(dialog, qOverload<QPrinter*>(&QPrintDialog::accepted), this, [this, printer] {
    paint(*printer);
    emit done(tr("The sheet was sent to the printer"));
  });
  dialog->open();
}

void SheetMenu::preview() {
  auto printer = std::make_shared<QPrinter>(QPrinter::HighResolution);
  printer->setPageSize(QPageSize(style().paper == sheet::Paper::kLetter ? QPageSize::Letter : QPageSize::A4));
  auto* dialog = new QPrintPreviewDialog(printer.get(), m_window);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  connect(dialog, &QPrintPreviewDialog::paintRequested, this, [this, printer](QPrinter* onto) { paint(*onto); });
  dialog->open();
}

void SheetMenu::askExport() {
  const auto shown = record();
  if (!shown) return;
  const QString name = QFileInfo(QString::fromStdString(shown->reading().file.file)).completeBaseName();
  const QString folder = m_settings->openFolder();
  QString chosen;
  QString path = QFileDialog::getSaveFileName(
      m_window, tr("Export the sheet"), folder + u'/' + sheet::safeFileName(name) + QStringLiteral(".pdf"),
      tr("PDF (*.pdf);;One HTML file (*.html);;Table (*.csv);;JSON (*.json)"), &chosen);
  if (path.isEmpty()) return;
  if (QFileInfo(path).suffix().isEmpty())
    path += chosen.mid(chosen.indexOf(u'.'), chosen.indexOf(u')') - chosen.indexOf(u'.'));
  exportTo(path);
}

bool SheetMenu::exportTo(const QString& path) {
  const auto shown = record();
  if (!shown) return false;
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
  if (!path.isEmpty()) m_settings->setLogo(path);
}

}  // namespace ovenwright::desktop
