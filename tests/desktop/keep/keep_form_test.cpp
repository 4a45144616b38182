#include "app/desktop/keep/keep_form.h"

#include <QAction>
#include <QComboBox>
#include <QDateTimeEdit>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QStatusBar>

#include "app/archive/archive.h"
#include "tests/desktop/window/window_fixture.h"

namespace ovenwright::desktop {
namespace {

constexpr int kLongest_ms = 60000;  // only a bound against hanging

class KeepFormTest : public WindowTest {
 protected:
  KeepForm* form() { return m_window->findChild<KeepForm*>(); }
  QAction* action() {
    for (QAction* each : m_window->findChildren<QAction*>())
      if (each->text().remove(u'&') == QStringLiteral("Keep in the record…")) return each;
    return nullptr;
  }
  template <class Field>
  Field* field(const char* name) {
    for (auto* each : form()->findChildren<Field*>())
      if (each->accessibleName() == QString::fromUtf8(name)) return each;
    return nullptr;
  }
  void finish() {
    ASSERT_TRUE(QTest::qWaitFor([this] { return !form()->job()->isRunning(); }, kLongest_ms));
    QApplication::processEvents();
  }
  bool says(const QString& text) {
    for (const auto* label : form()->findChildren<QLabel*>())
      if (label->text().contains(text)) return true;
    return false;
  }
  std::vector<archive::Summary> runs(const std::string& lot) {
    auto archive = archive::Archive::open(m_archive->where().toStdString(), {});
    EXPECT_TRUE(archive) << archive.error().text();
    const auto all = archive->runsOfLot(lot);
    EXPECT_TRUE(all);
    return *all;
  }
  void open() {
    openDemo();
    action()->trigger();
    ASSERT_TRUE(form()->isVisible());
  }
};

TEST_F(KeepFormTest, NothingOpenKeepsNothing) { EXPECT_FALSE(action()->isEnabled()); }

TEST_F(KeepFormTest, AsksWhatToKeepOnlyWhereThereIsAChoice) {
  open();
  auto* what = form()->findChild<QComboBox*>();
  ASSERT_NE(what, nullptr);
  EXPECT_FALSE(what->isVisible());
  drop({demo("tern_run2.csv")});
  settle();
  EXPECT_TRUE(what->isVisible());
  EXPECT_EQ(what->count(), 2);  // this run, all that are open
}

TEST_F(KeepFormTest, ProposesWhatTheLogSays) {
  open();
  EXPECT_EQ(field<QLineEdit>("Lot")->text(), QStringLiteral("QM-2291"));  // a line of the demo's log
  EXPECT_TRUE(says(QStringLiteral("no date stands in the log")));
}

TEST_F(KeepFormTest, KeepsTheRunAsItIsOnScreen) {
  open();
  field<QLineEdit>("Board serial")->setText(QStringLiteral("T-0417"));
  field<QLineEdit>("Operator")->setText(QStringLiteral("M. Kade"));
  const auto view = m_document->view();
  form()->keep();
  finish();
  const auto kept = runs("QM-2291");
  ASSERT_EQ(kept.size(), 1u);
  EXPECT_EQ(kept[0].serial, "T-0417");
  EXPECT_EQ(kept[0].operatorName, "M. Kade");
  EXPECT_EQ(kept[0].logName, "tern_run1.csv");
  EXPECT_EQ(kept[0].verdict, view->judgement().verdict);
  EXPECT_EQ(kept[0].logSha256, view->reading().file.sha256);
  EXPECT_EQ(m_document->view(), view) << "the document stays";
  EXPECT_FALSE(form()->isVisible());
  EXPECT_EQ(m_window->statusBar()->currentMessage().toStdString(), "Kept as " + kept[0].id + " in lot QM-2291.");
  EXPECT_EQ(m_settings->operatorName(), QStringLiteral("M. Kade"));
}

TEST_F(KeepFormTest, KeepsTheBoardsPictureAsTheCommandDoes) {
  open();
  ASSERT_TRUE(m_document->setup().board->picture) << "the demo's board has one";
  form()->keep();
  finish();
  auto archive = archive::Archive::open(m_archive->where().toStdString(), {});
  const auto record = archive->load(runs("QM-2291").at(0).id);
  ASSERT_TRUE(record);
  ASSERT_EQ(record->attachments.size(), 1u);
  QFile picture(QString::fromStdString(*m_document->setup().board->picture));
  ASSERT_TRUE(picture.open(QIODevice::ReadOnly));
  EXPECT_EQ(*archive->content(record->attachments[0].sha256), picture.readAll().toStdString());
}

TEST_F(KeepFormTest, ALotIsNeeded) {
  open();
  field<QLineEdit>("Lot")->setText(QStringLiteral("  "));
  form()->keep();
  EXPECT_FALSE(form()->job()->isRunning());
  EXPECT_TRUE(says(QStringLiteral("Which lot is it?")));
  EXPECT_TRUE(form()->isVisible());
}

TEST_F(KeepFormTest, TheSamePassIsNotKeptTwice) {
  open();
  form()->keep();
  finish();
  action()->trigger();
  field<QLineEdit>("Lot")->setText(QStringLiteral("QM-9999"));
  form()->keep();
  finish();
  EXPECT_TRUE(form()->isVisible());
  EXPECT_TRUE(says(QStringLiteral("This pass of tern_run1.csv is kept already, in lot QM-2291")));
  EXPECT_TRUE(runs("QM-9999").empty());
}

TEST_F(KeepFormTest, AllOpenLogsAreKeptAtOnce) {
  openDemo();
  QFile run2(demo("tern_run2.csv"));
  ASSERT_TRUE(run2.open(QIODevice::ReadOnly));
  drop({demo("tern_run2.csv"), write(QStringLiteral("another.csv"), "# another pass\n" + run2.readAll())});
  settle();
  ASSERT_EQ(m_document->logs().size(), 3u);
  action()->trigger();
  auto* what = field<QComboBox>("What");
  what->setCurrentIndex(what->findText(QStringLiteral("all 3 open logs")));
  field<QLineEdit>("Lot")->setText(QStringLiteral("QM-2298"));
  form()->keep();
  finish();
  EXPECT_EQ(runs("QM-2298").size(), 3u);
}

TEST_F(KeepFormTest, APastedLogIsKept) {
  QFile log(demo("tern_run2.csv"));
  ASSERT_TRUE(log.open(QIODevice::ReadOnly));
  const QByteArray text = log.readAll();
  m_document->openPasted(text);
  settle();
  action()->trigger();
  field<QLineEdit>("Lot")->setText(QStringLiteral("QM-2298"));
  form()->keep();
  finish();
  const auto kept = runs("QM-2298");
  ASSERT_EQ(kept.size(), 1u);
  auto archive = archive::Archive::open(m_archive->where().toStdString(), {});
  EXPECT_EQ(*archive->rawLog(kept[0].id), text.toStdString());
}

TEST_F(KeepFormTest, ATimeThatWasTypedHolds) {
  open();
  const QDateTime typed(QDate(2026, 3, 11), QTime(13, 22, 5), Qt::LocalTime);
  field<QDateTimeEdit>("Time of run")->setDateTime(typed);
  EXPECT_TRUE(says(QStringLiteral("as typed")));
  form()->keep();
  finish();
  const auto kept = runs("QM-2291");
  ASSERT_EQ(kept.size(), 1u);
  EXPECT_EQ(kept[0].runAt.time_since_epoch().count(), typed.toMSecsSinceEpoch());
}

TEST_F(KeepFormTest, ALogThatChangedMeanwhileIsNotKept) {
  QFile from(demo("tern_run2.csv"));
  ASSERT_TRUE(from.open(QIODevice::ReadOnly));
  const QByteArray bytes = from.readAll();
  const QString log = write(QStringLiteral("run.csv"), bytes);
  drop({log});
  settle();
  write(QStringLiteral("run.csv"), bytes + "400.0,25,25,25,25,25,25\n");
  action()->trigger();
  field<QLineEdit>("Lot")->setText(QStringLiteral("QM-2298"));
  form()->keep();
  finish();
  EXPECT_TRUE(says(QStringLiteral("Nothing was kept")));
  EXPECT_FALSE(QFile::exists(m_archive->where()));
}

TEST_F(KeepFormTest, ADamagedArchiveIsOneNoticeAndStaysAsItIs) {
  const QByteArray damaged = "this is no database, whatever its name says, and it is long enough to be looked at";
  write(QStringLiteral("archive.sqlite"), damaged);
  open();
  form()->keep();
  finish();
  EXPECT_TRUE(says(QStringLiteral("Nothing was kept")));
  EXPECT_TRUE(form()->isVisible()) << "so that it can be tried again";
  QFile archive(m_archive->where());
  ASSERT_TRUE(archive.open(QIODevice::ReadOnly));
  EXPECT_EQ(archive.readAll(), damaged);
  EXPECT_NE(m_document->view(), nullptr);
}

TEST_F(KeepFormTest, AFolderThatIsNotThereIsOneNotice) {
  open();
  m_archive->setWhere(m_folder.filePath(QStringLiteral("no such folder/archive.sqlite")));
  form()->keep();
  finish();
  EXPECT_TRUE(says(QStringLiteral("Nothing was kept")));
}

TEST_F(KeepFormTest, EscapeClosesIt) {
  open();
  QTest::keyClick(field<QLineEdit>("Lot"), Qt::Key_Escape);
  EXPECT_FALSE(form()->isVisible());
}

}  // namespace
}  // namespace ovenwright::desktop
