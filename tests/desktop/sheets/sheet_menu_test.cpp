#include "app/desktop/window/sheet_menu.h"

#include <QAction>
#include <QFileDialog>
#include <QPrintPreviewDialog>
#include <QPrintPreviewWidget>
#include <QPrinter>
#include <QSignalSpy>
#include <QStatusBar>

#include "app/sheet/record.h"
#include "tests/desktop/sheets/pdf_text.h"
#include "tests/desktop/window/window_fixture.h"

namespace ovenwright::desktop {
namespace {

class SheetMenuTest : public WindowTest {
 protected:
  SheetMenu* menu() { return m_window->findChild<SheetMenu*>(); }
  QAction* action(const QString& text) {
    for (QAction* each : m_window->findChildren<QAction*>())
      if (each->text().remove(u'&') == text) return each;
    return nullptr;
  }
  QString path(const char* name) const { return m_folder.filePath(QLatin1String(name)); }
  QByteArray bytes(const QString& file) {
    QFile from(file);
    EXPECT_TRUE(from.open(QIODevice::ReadOnly)) << file.toStdString();
    return from.readAll();
  }
  /// The file a printer would get, as a PDF.
  void printTo(QPrinter& printer, const QString& file) {
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(file);
    ASSERT_TRUE(menu()->paint(printer));
  }
};

/// What must stand on the sheet of the demo's first run: what the screen says, the log and its digest, the cautions.
void expectTheDemosFirstRun(const QString& text) {
  for (const char* part : {"Fail. 2 of 45 requirements are out.", "U12 centre peaks at", "tern_run1.csv", "SHA-256",
                           "a qualified person confirms it", "Page 1 of"})
    EXPECT_TRUE(text.contains(QLatin1String(part))) << part << " in " << text.toStdString();
}

TEST_F(SheetMenuTest, NothingOpenOffersNoSheet) {
  for (const char* text : {"Print the sheet…", "Print preview…", "Export the sheet…"}) {
    ASSERT_NE(action(QString::fromUtf8(text)), nullptr) << text;
    EXPECT_FALSE(action(QString::fromUtf8(text))->isEnabled()) << text;
  }
  QPrinter printer;
  EXPECT_FALSE(menu()->paint(printer));
  EXPECT_FALSE(menu()->exportTo(path("sheet.pdf")));
  openDemo();
  for (const char* text : {"Print the sheet…", "Print preview…", "Export the sheet…"})
    EXPECT_TRUE(action(QString::fromUtf8(text))->isEnabled()) << text;
}

TEST_F(SheetMenuTest, PrintsOntoAPrinter) {
  openDemo();
  QPrinter printer(QPrinter::HighResolution);
  printer.setPageSize(QPageSize(QPageSize::A4));
  printTo(printer, path("printed.pdf"));
  expectTheDemosFirstRun(pdfText(path("printed.pdf")));
  EXPECT_TRUE(pdfInfo(path("printed.pdf"), QStringLiteral("Page size")).contains(QStringLiteral("A4")));
}

TEST_F(SheetMenuTest, TakesThePaperOfThePrinter) {
  openDemo();
  QPrinter printer(QPrinter::HighResolution);
  printer.setPageSize(QPageSize(QPageSize::Letter));
  printTo(printer, path("printed.pdf"));
  expectTheDemosFirstRun(pdfText(path("printed.pdf")));
  EXPECT_TRUE(pdfInfo(path("printed.pdf"), QStringLiteral("Page size")).contains(QStringLiteral("letter")));
}

TEST_F(SheetMenuTest, OnOtherPaperAndAcrossItTheSheetIsMadeToFit) {
  openDemo();
  for (const auto& layout : {QPageLayout(QPageSize(QPageSize::A5), QPageLayout::Portrait, {}),
                             QPageLayout(QPageSize(QPageSize::A4), QPageLayout::Landscape, {})}) {
    QPrinter printer(QPrinter::HighResolution);
    ASSERT_TRUE(printer.setPageLayout(layout));
    printTo(printer, path("printed.pdf"));
    expectTheDemosFirstRun(pdfText(path("printed.pdf")));  // pdftotext leaves out what lies beyond the page
    EXPECT_TRUE(pdfText(path("printed.pdf")).contains(QStringLiteral("Checked by, date"))) << "at the foot";
  }
}

TEST_F(SheetMenuTest, APageThatTheSheetDoesNotHaveIsNoCrash) {
  openDemo();
  QPrinter printer(QPrinter::HighResolution);
  printer.setFromTo(3, 4);
  printTo(printer, path("printed.pdf"));
  EXPECT_EQ(pdfInfo(path("printed.pdf"), QStringLiteral("Pages")), QStringLiteral("1"));
}

TEST_F(SheetMenuTest, ThePreviewShowsThePages) {
  openDemo();
  action(QStringLiteral("Print preview…"))->trigger();
  auto* dialog = m_window->findChild<QPrintPreviewDialog*>();
  ASSERT_NE(dialog, nullptr);
  ASSERT_TRUE(QTest::qWaitForWindowExposed(dialog));
  auto* pages = dialog->findChild<QPrintPreviewWidget*>();
  ASSERT_NE(pages, nullptr);
  EXPECT_TRUE(QTest::qWaitFor([pages] { return pages->pageCount() > 0; }));
  dialog->close();
}

TEST_F(SheetMenuTest, ExportsTheSheetAsWhatTheEndingSays) {
  openDemo();
  m_settings->setCompany(QStringLiteral("Quillmarsh Assembly"));
  QSignalSpy done(menu(), &SheetMenu::done);
  for (const char* name : {"sheet.pdf", "sheet.html", "sheet.csv", "sheet.JSON"})
    EXPECT_TRUE(menu()->exportTo(path(name))) << name;
  EXPECT_EQ(done.count(), 4);
  expectTheDemosFirstRun(pdfText(path("sheet.pdf")));
  EXPECT_TRUE(pdfText(path("sheet.pdf")).contains(QStringLiteral("Quillmarsh Assembly")));
  EXPECT_TRUE(bytes(path("sheet.html")).startsWith("<!DOCTYPE html>"));
  EXPECT_TRUE(bytes(path("sheet.csv")).contains("U12 centre"));
  EXPECT_TRUE(bytes(path("sheet.JSON")).contains("\"ovenwright.sheet/1\""));
}

TEST_F(SheetMenuTest, TheNameFollowsTheKindThatIsChosen) {
  openDemo();
  m_settings->setSheetFolder(m_folder.path());
  action(QStringLiteral("Export the sheet…"))->trigger();
  auto* dialog = m_window->findChild<QFileDialog*>();
  ASSERT_NE(dialog, nullptr);
  EXPECT_EQ(QFileInfo(dialog->selectedFiles().value(0)).fileName(), QStringLiteral("tern_run1.pdf"));
  const QString html = dialog->nameFilters().value(1);
  dialog->selectNameFilter(html);
  emit dialog->filterSelected(html);  // as a choice in its list does
  EXPECT_EQ(QFileInfo(dialog->selectedFiles().value(0)).fileName(), QStringLiteral("tern_run1.html"));
  QMetaObject::invokeMethod(dialog, "accept");
  EXPECT_TRUE(bytes(path("tern_run1.html")).startsWith("<!DOCTYPE html>"));
}

TEST_F(SheetMenuTest, WhatIsPrintedIsWhatIsExported) {
  openDemo();
  QPrinter printer(QPrinter::HighResolution);
  printer.setPageSize(QPageSize(QPageSize::A4));
  m_settings->setPaper(sheet::Paper::kA4);
  printTo(printer, path("printed.pdf"));
  ASSERT_TRUE(menu()->exportTo(path("exported.pdf")));
  // But for the minute in which each was made.
  const QRegularExpression made(QStringLiteral("Made .*? Page"));
  EXPECT_EQ(pdfText(path("printed.pdf")).remove(made).toStdString(),
            pdfText(path("exported.pdf")).remove(made).toStdString());
}

TEST_F(SheetMenuTest, AnUnknownEndingWritesNothing) {
  openDemo();
  QSignalSpy failed(menu(), &SheetMenu::failed);
  EXPECT_FALSE(menu()->exportTo(path("sheet.doc")));
  ASSERT_EQ(failed.count(), 1);
  EXPECT_TRUE(failed[0][0].toString().contains(QStringLiteral(".pdf, .html, .csv")));
  EXPECT_FALSE(QFile::exists(path("sheet.doc")));
}

TEST_F(SheetMenuTest, NeverTakesTheLogsPlace) {
  const QString log = write(QStringLiteral("run.csv"), bytes(demo("tern_run2.csv")));
  drop({log});
  settle();
  const QByteArray before = bytes(log);
  EXPECT_FALSE(menu()->exportTo(log));
  EXPECT_FALSE(menu()->exportTo(m_folder.filePath(QStringLiteral("./run.csv"))));
  EXPECT_EQ(bytes(log), before);
}

TEST_F(SheetMenuTest, AFolderThatCannotBeWrittenIsOneSentence) {
  openDemo();
  QSignalSpy failed(menu(), &SheetMenu::failed);
  EXPECT_FALSE(menu()->exportTo(path("no such folder/sheet.pdf")));
  ASSERT_EQ(failed.count(), 1);
  EXPECT_TRUE(failed[0][0].toString().contains(QStringLiteral("no such folder")));
}

}  // namespace
}  // namespace ovenwright::desktop
