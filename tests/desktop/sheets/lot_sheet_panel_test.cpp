#include "app/desktop/lots/lot_sheet_panel.h"

#include <QAbstractButton>
#include <QAccessible>
#include <QCheckBox>
#include <QLabel>
#include <QPrinter>
#include <QRegularExpression>
#include <QSignalSpy>
#include <QThreadPool>

#include "app/archive/archive.h"
#include "app/desktop/lots/several_lots.h"
#include "app/desktop/sheets/page_view.h"
#include "app/desktop/text/language.h"
#include "app/sheet/record.h"
#include "tests/command/process.h"
#include "tests/desktop/sheets/demo_archive.h"
#include "tests/desktop/sheets/pdf_text.h"
#include "tests/desktop/window/window_fixture.h"

namespace ovenwright::desktop {
namespace {

constexpr int kLongest_ms = 60000;  // only a bound against hanging

class LotSheetPanelTest : public WindowTest {
 protected:
  LotSheetPanelTest() {
    useLanguage(QStringLiteral("en"));  // whose plurals and numbers the command has too
    m_settings->setPaper(sheet::Paper::kA4);
    m_settings->setOperatorName(QStringLiteral("M. Kade"));
    m_panel = std::make_unique<LotSheetPanel>(m_archive.get(), m_settings.get());
    m_panel->resize(432, 760);
    m_panel->show();
  }
  ~LotSheetPanelTest() override {
    m_panel.reset();
    QLocale::setDefault(QLocale::c());
  }

  QString path(const char* name) const { return m_folder.filePath(QLatin1String(name)); }
  std::vector<std::string> keep(const std::string& lot, const std::vector<std::string>& logs) {
    return keepDemo(m_archive->where(), lot, logs, m_folder.path());
  }
  void wait() {
    const auto* view = m_panel->view();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !m_panel->isMaking() && (view->pages() == 0 || view->isPainted()); },
                                kLongest_ms));
  }
  bool shows(const QString& text) {
    for (const auto* label : m_panel->findChildren<QLabel*>())
      if (label->isVisible() && label->text().contains(text)) return true;
    return false;
  }
  QAbstractButton* button(const char* text) {
    for (auto* each : m_panel->findChildren<QAbstractButton*>())
      if (each->text() == QString::fromUtf8(text) || each->accessibleName() == QString::fromUtf8(text)) return each;
    return nullptr;
  }
  /// When the sheet of a record was last noted as printed.
  bool isNoted(const std::string& id) {
    auto archive = archive::Archive::open(m_archive->where().toStdString(), {});
    EXPECT_TRUE(archive);
    const auto notes = archive->printedNotes(id);
    EXPECT_TRUE(notes) << notes.error().text();
    return !notes->empty() && notes->back().by == "M. Kade";
  }

  std::unique_ptr<LotSheetPanel> m_panel;
};

TEST_F(LotSheetPanelTest, NothingMarkedSaysWhatToDo) {
  EXPECT_TRUE(shows(QStringLiteral("Mark runs in the list")));
  for (const char* text : {"Print…", "Save as PDF…", "HTML…"}) EXPECT_FALSE(button(text)->isEnabled()) << text;
}

TEST_F(LotSheetPanelTest, ShowsTheSheetOfTheMarkedRuns) {
  const auto ids = keep("QM-2298", {"tern_run1.csv", "tern_run1.csv"});
  m_panel->setRecords(ids);
  EXPECT_TRUE(m_panel->isMaking());
  wait();
  EXPECT_TRUE(shows(QStringLiteral("QM-2298, 2 runs")));
  ASSERT_GT(m_panel->view()->pages(), 0);
  const QImage& picture = m_panel->view()->picture();
  ASSERT_FALSE(picture.isNull());
  EXPECT_NEAR(double(picture.height()) / picture.width(), 297.0 / 210.0, 0.01);  // A4, ISO 216; a pixel of 390
  int dark = 0;                                                                  // something is drawn on the white
  for (int y = 0; y < picture.height(); ++y)
    for (int x = 0; x < picture.width(); ++x) dark += qGray(picture.pixel(x, y)) < 128;
  EXPECT_GT(dark, 1000);
}

TEST_F(LotSheetPanelTest, TheFileIsThatOfTheCommand) {
  const auto ids = keep("QM-2298", {"tern_run1.csv", "tern_run1.csv"});
  m_panel->setRecords(ids);
  wait();
  QSignalSpy noted(m_panel.get(), &LotSheetPanel::noted);
  m_panel->saveTo(path("panel.pdf"));
  wait();
  ASSERT_EQ(noted.count(), 1) << "says that it is there";
  const auto made = ovenwright_program({"sheet", "--lot", "QM-2298", "--archive", m_archive->where().toStdString(),
                                        "-o", path("command.pdf").toStdString()});
  ASSERT_LT(made.status, 3) << made.err;
  const QRegularExpression when(QStringLiteral("Made .*? Page"));
  EXPECT_EQ(pdfText(path("panel.pdf")).remove(when).toStdString(),
            pdfText(path("command.pdf")).remove(when).toStdString());
}

TEST_F(LotSheetPanelTest, PrintsAndNotesIt) {
  const auto ids = keep("QM-2298", {"tern_run1.csv"});
  m_panel->setRecords(ids);
  wait();
  auto printer = std::make_shared<QPrinter>(QPrinter::HighResolution);
  printer->setOutputFormat(QPrinter::PdfFormat);
  printer->setOutputFileName(path("printed.pdf"));
  printer->setPageSize(QPageSize(QPageSize::Letter));
  m_panel->printOn(printer);
  printer.reset();
  wait();
  EXPECT_TRUE(pdfText(path("printed.pdf")).contains(QStringLiteral("QM-2298")));
  EXPECT_TRUE(pdfInfo(path("printed.pdf"), QStringLiteral("Page size")).contains(QStringLiteral("letter")));
  EXPECT_TRUE(QTest::qWaitFor([&] { return isNoted(ids.front()); }, kLongest_ms));
}

TEST_F(LotSheetPanelTest, DoesNotNoteWhatIsNotToBeNoted) {
  const auto ids = keep("QM-2298", {"tern_run1.csv"});
  qobject_cast<QCheckBox*>(button("Mark as printed in the record"))->setChecked(false);
  m_panel->setRecords(ids);
  wait();
  m_panel->saveTo(path("sheet.pdf"));
  wait();
  EXPECT_TRUE(QFile::exists(path("sheet.pdf")));
  EXPECT_FALSE(isNoted(ids.front()));
}

TEST_F(LotSheetPanelTest, AnotherWishReplacesTheOneBefore) {
  const auto first = keep("QM-2298", {"tern_run1.csv", "tern_run1.csv", "tern_run1.csv"});
  const auto second = keep("QM-2301", {"tern_run2.csv"});
  m_panel->setRecords(first);
  m_panel->setRecords(second);
  wait();
  EXPECT_TRUE(shows(QStringLiteral("QM-2301, 1 run")));
}

TEST_F(LotSheetPanelTest, SeveralLotsHaveASheetEach) {
  auto ids = keep("QM-2298", {"tern_run1.csv"});
  for (const auto& id : keep("QM-2301", {"tern_run2.csv"})) ids.push_back(id);
  m_panel->setRecords(ids);
  wait();
  EXPECT_TRUE(shows(QStringLiteral("2 lots, 2 runs")));
  ASSERT_GT(m_panel->view()->pages(), 1);
  EXPECT_FALSE(button("Previous page")->isEnabled());
  button("Next page")->click();
  EXPECT_EQ(m_panel->view()->page(), 1);
  EXPECT_TRUE(button("Previous page")->isEnabled());
  while (m_panel->view()->page() + 1 < m_panel->view()->pages()) button("Next page")->click();
  EXPECT_FALSE(button("Next page")->isEnabled());
  wait();
}

TEST_F(LotSheetPanelTest, OnePageForEachRunAddsPages) {
  m_panel->setRecords(keep("QM-2298", {"tern_run1.csv", "tern_run1.csv"}));
  wait();
  const int pages = m_panel->view()->pages();
  qobject_cast<QCheckBox*>(button("One page for each run"))->setChecked(true);
  wait();
  EXPECT_GE(m_panel->view()->pages(), pages + 2);
  EXPECT_TRUE(m_settings->pageForEachRun());
}

TEST_F(LotSheetPanelTest, AFolderThatIsAwayIsOneNotice) {
  m_panel->setRecords(keep("QM-2298", {"tern_run1.csv"}));
  wait();
  QSignalSpy troubled(m_panel.get(), &LotSheetPanel::troubled);
  m_panel->saveTo(path("no such folder/sheet.pdf"));
  wait();
  ASSERT_EQ(troubled.count(), 1);
  EXPECT_TRUE(button("Print…")->isEnabled()) << "it can be tried again";
}

TEST_F(LotSheetPanelTest, ARecordThatIsDamagedIsSaid) {
  m_panel->setRecords({"nothing-1"});
  ASSERT_TRUE(QTest::qWaitFor([this] { return shows(QStringLiteral("could not be made")); }, kLongest_ms));
}

TEST_F(LotSheetPanelTest, EveryControlHasAName) {
  m_panel->setRecords(keep("QM-2298", {"tern_run1.csv"}));
  wait();
  for (QWidget* widget : m_panel->findChildren<QWidget*>()) {
    if (widget->focusPolicy() == Qt::NoFocus || !widget->isVisible() ||
        widget->objectName().startsWith(QStringLiteral("qt_")))
      continue;
    const auto* heard = QAccessible::queryAccessibleInterface(widget);
    ASSERT_NE(heard, nullptr);
    EXPECT_FALSE(heard->text(QAccessible::Name).isEmpty()) << widget->metaObject()->className();
  }
}

class SeveralLotsTest : public LotSheetPanelTest {
 protected:
  void openWindow() {
    m_lots = std::make_unique<SeveralLots>(m_archive.get(), m_settings.get(), m_document.get(),
                                           std::vector<SheetFilesJob::Item>{}, nullptr);
    m_lots->show();
    ASSERT_TRUE(QTest::qWaitFor([this] { return m_lots->message().isEmpty(); }, kLongest_ms));
  }
  void finish() {
    ASSERT_TRUE(QTest::qWaitFor([this] { return !m_lots->job()->isRunning(); }, kLongest_ms));
  }
  /// Behind it nothing that was begun is under way any more.
  void drain() {
    bool answered = false;
    m_archive->count(m_lots.get(), {}, [&](const auto&) { answered = true; });
    ASSERT_TRUE(QTest::qWaitFor([&] { return answered; }, kLongest_ms));
    QThreadPool::globalInstance()->waitForDone();
    QCoreApplication::processEvents();
  }
  std::unique_ptr<SeveralLots> m_lots;
};

TEST_F(SeveralLotsTest, WritesAFileForEachLotUnderASafeName) {
  const auto first = keep("QM-2298", {"tern_run1.csv"});
  const auto second = keep("QM/2298: b?", {"tern_run2.csv"});
  keep("QM-2301", {"tern_run2.csv"});
  openWindow();
  m_lots->choose({QStringLiteral("QM-2298"), QStringLiteral("QM/2298: b?")});
  m_lots->setFolder(m_folder.filePath(QStringLiteral(".")));
  m_lots->start();
  finish();
  const QStringList files = QDir(m_folder.path()).entryList({QStringLiteral("*.pdf")});
  ASSERT_EQ(files.size(), 2) << files.join(u' ').toStdString();
  EXPECT_TRUE(pdfText(path("QM-2298.pdf")).contains(QStringLiteral("Lot QM-2298")));
  EXPECT_TRUE(isNoted(first.front()));
  EXPECT_TRUE(QTest::qWaitFor([&] { return isNoted(second.front()); }, kLongest_ms));
}

TEST_F(SeveralLotsTest, ReplacesNothingWithoutAsking) {
  keep("QM-2298", {"tern_run1.csv"});
  keep("QM-2301", {"tern_run2.csv"});
  openWindow();
  write(QStringLiteral("QM-2298.pdf"), "of yesterday");
  m_lots->choose({QStringLiteral("QM-2298"), QStringLiteral("QM-2301")});
  m_lots->setFolder(m_folder.path());
  m_lots->start();
  EXPECT_TRUE(m_lots->isAsking());
  EXPECT_FALSE(m_lots->job()->isRunning());
  m_lots->startWith(SeveralLots::There::kLeaveOut);
  finish();
  EXPECT_TRUE(QFile::exists(path("QM-2301.pdf")));
  QFile there(path("QM-2298.pdf"));
  ASSERT_TRUE(there.open(QIODevice::ReadOnly));
  EXPECT_EQ(there.readAll(), "of yesterday");
  m_lots->start();
  EXPECT_TRUE(m_lots->isAsking());
  m_lots->startWith(SeveralLots::There::kReplace);
  finish();
  EXPECT_TRUE(pdfText(path("QM-2298.pdf")).contains(QStringLiteral("QM-2298")));
}

TEST_F(SeveralLotsTest, StopsBetweenTwoFiles) {
  for (int lot = 0; lot < 5; ++lot) keep("QM-230" + std::to_string(lot), {"tern_run1.csv"});
  openWindow();
  QStringList lots;
  for (int lot = 0; lot < 5; ++lot) lots << QStringLiteral("QM-230%1").arg(lot);
  m_lots->choose(lots);
  m_lots->setFolder(m_folder.path());
  QSignalSpy finished(m_lots->job(), &SheetFilesJob::finished);
  QObject::connect(m_lots->job(), &SheetFilesJob::progressed, m_lots->job(), [this](int done) {
    if (done == 2) m_lots->job()->cancel();
  });
  m_lots->start();
  finish();
  drain();
  ASSERT_EQ(finished.count(), 1);
  const auto outcome = finished[0][0].value<SheetFilesJob::Outcome>();
  EXPECT_TRUE(outcome.cancelled);
  EXPECT_LT(outcome.written, 5);
  EXPECT_EQ(QDir(m_folder.path()).entryList({QStringLiteral("*.pdf")}).size(), outcome.written)
      << "no half of a file is left";
}

// A file is there, and the window has not heard of it yet; on a slow machine it may be any of them.
TEST_F(SeveralLotsTest, AStopJustBehindAFileIsToldOnce) {
  QStringList lots;
  for (int lot = 0; lot < 5; ++lot) {
    keep("QM-230" + std::to_string(lot), {"tern_run1.csv"});
    lots << QStringLiteral("QM-230%1").arg(lot);
  }
  openWindow();
  m_lots->choose(lots);
  m_lots->setFolder(m_folder.path());
  QSignalSpy finished(m_lots->job(), &SheetFilesJob::finished);
  m_lots->start();
  ASSERT_TRUE(QTest::qWaitFor([&] { return QFile::exists(path("QM-2300.pdf")); }, kLongest_ms));
  QThreadPool::globalInstance()->waitForDone();
  m_lots->job()->cancel();
  finish();
  drain();
  ASSERT_EQ(finished.count(), 1);
  EXPECT_EQ(QDir(m_folder.path()).entryList({QStringLiteral("*.pdf")}).size(),
            finished[0][0].value<SheetFilesJob::Outcome>().written);
}

TEST_F(SeveralLotsTest, AnOpenLogIsNeverReplaced) {
  keep("QM-2298", {"tern_run1.csv"});
  openWindow();
  QFile demo_log(demo("tern_run2.csv"));
  ASSERT_TRUE(demo_log.open(QIODevice::ReadOnly));
  const QByteArray log = demo_log.readAll();
  drop({write(QStringLiteral("QM-2298.pdf"), log)});  // whatever its name, a log
  settle();
  m_lots->choose({QStringLiteral("QM-2298")});
  m_lots->setFolder(m_folder.path());
  m_lots->start();
  EXPECT_FALSE(m_lots->isAsking());
  EXPECT_TRUE(m_lots->message().contains(QStringLiteral("open log"))) << m_lots->message().toStdString();
}

TEST_F(SeveralLotsTest, AMissingFolderIsSaid) {
  keep("QM-2298", {"tern_run1.csv"});
  openWindow();
  m_lots->choose({QStringLiteral("QM-2298")});
  m_lots->setFolder(path("no such folder"));
  m_lots->start();
  EXPECT_TRUE(m_lots->message().contains(QStringLiteral("no such folder")));
}

}  // namespace
}  // namespace ovenwright::desktop
