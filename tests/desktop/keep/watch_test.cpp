#include <QLabel>
#include <QSignalSpy>
#include <QTreeWidget>
#include <algorithm>

#include "app/archive/archive.h"
#include "app/desktop/text/language.h"
#include "app/desktop/watch/watch_service.h"
#include "app/desktop/watch/watch_window.h"
#include "tests/desktop/window/window_fixture.h"

namespace ovenwright::desktop {
namespace {

constexpr int kLongest_ms = 60000;  // only a bound against hanging

const char* const kRules =
    "[[rule]]\nfiles = \"QM-*.csv\"\nlot = \"(QM-[0-9]+)\"\nwindow = \"sac305\"\noperator = \"M. Kade\"\n";

class WatchTest : public WindowTest {
 protected:
  WatchTest() {
    EXPECT_TRUE(QDir(m_folder.path()).mkdir(QStringLiteral("incoming")));
    m_rules = write(QStringLiteral("rules.toml"), kRules);
    m_watch = std::make_unique<WatchWindow>(m_archive.get(), m_settings.get(), nullptr);
    m_watch->setFolder(folder());
    m_watch->setRules(m_rules);
    m_watch->show();
  }
  ~WatchTest() override { m_watch.reset(); }

  QString folder() const { return m_folder.filePath(QStringLiteral("incoming")); }
  WatchService* service() { return WatchService::of(m_archive.get()); }
  QByteArray bytesOf(const char* name) {
    QFile from(demo(name));
    EXPECT_TRUE(from.open(QIODevice::ReadOnly));
    return from.readAll();
  }
  void comesIn(const char* name, const QByteArray& bytes) {
    write(QStringLiteral("incoming/") + QLatin1String(name), bytes);
  }
  bool waitForLines(int count) {
    return QTest::qWaitFor([&] { return m_watch->lines()->topLevelItemCount() >= count; }, kLongest_ms);
  }
  /// The newest line stands on top.
  QString text(int line, int column) const { return m_watch->lines()->topLevelItem(line)->text(column); }

  QString m_rules;
  std::unique_ptr<WatchWindow> m_watch;
};

TEST_F(WatchTest, NeverStartsByItself) {
  m_settings->setWatchedFolder(folder());
  m_settings->setWatchRules(m_rules);
  comesIn("QM-2298_run1.csv", bytesOf("tern_run1.csv"));
  const WatchWindow again(m_archive.get(), m_settings.get(), nullptr);
  EXPECT_FALSE(service()->isRunning());
  EXPECT_TRUE(again.stateText().contains(QStringLiteral("Nothing is watched")));
}

TEST_F(WatchTest, EachLogIsKeptAndHasALine) {
  comesIn("QM-2298_run1.csv", bytesOf("tern_run2.csv"));
  comesIn("notes.txt", "no rule is for this one");
  m_watch->start();
  EXPECT_TRUE(service()->isRunning());
  ASSERT_TRUE(waitForLines(1));
  EXPECT_EQ(text(0, 1), QStringLiteral("QM-2298_run1.csv"));
  EXPECT_FALSE(m_watch->lines()->topLevelItem(0)->icon(2).isNull()) << "the verdict's sign";
  EXPECT_TRUE(text(0, 4).startsWith(QStringLiteral("kept as ")));
  auto archive = archive::Archive::open(m_archive->where().toStdString(), {});
  ASSERT_TRUE(archive);
  const auto runs = archive->runsOfLot("QM-2298");
  ASSERT_TRUE(runs);
  ASSERT_EQ(runs->size(), 1u);
  EXPECT_EQ((*runs)[0].operatorName, "M. Kade");
  EXPECT_EQ(m_watch->lines()->topLevelItemCount(), 1);
  EXPECT_EQ(m_settings->watchedFolder(), folder()) << "for the next time";
}

TEST_F(WatchTest, ErrorsAreInTheLanguageThatIsShown) {
  useLanguage(QStringLiteral("de"));
  m_watch = std::make_unique<WatchWindow>(m_archive.get(), m_settings.get(), nullptr);
  m_watch->setRules(m_rules);
  m_watch->setFolder(m_folder.filePath(QStringLiteral("away")));
  m_watch->start();
  ASSERT_TRUE(QTest::qWaitFor([this] { return service()->trouble().has_value(); }, kLongest_ms));
  EXPECT_TRUE(m_watch->stateText().contains(QStringLiteral("nicht lesen: Datei oder Ordner nicht vorhanden")))
      << m_watch->stateText().toStdString();
  service()->stop();
  m_watch->setRules(write(QStringLiteral("odd.toml"), "[[rule]]\nfiles = \"*\"\nlot = \"(QM\"\n"));
  m_watch->setFolder(folder());
  m_watch->start();
  ASSERT_TRUE(QTest::qWaitFor([this] { return !service()->isRunning(); }, kLongest_ms));
  EXPECT_TRUE(m_watch->stateText().contains(QStringLiteral("ein regulärer Ausdruck erwartet")))
      << m_watch->stateText().toStdString();
  m_watch->setRules(write(QStringLiteral("strict.toml"),
                          "[[rule]]\nfiles = \"*.csv\"\nlot = \"(QM-[0-9]+)\"\nwindow = \"sac305\"\n"));
  comesIn("tern.csv", bytesOf("tern_run2.csv"));
  m_watch->start();
  ASSERT_TRUE(waitForLines(1));
  EXPECT_TRUE(text(0, 4).startsWith(QStringLiteral("Sein Name passt nicht"))) << text(0, 4).toStdString();
  useLanguage(QStringLiteral("en"));
}

TEST_F(WatchTest, AFileThatCannotBeReadIsNamedWithItsError) {
  comesIn("QM-2299_run1.csv", "Nothing but words stands in this file.\nNot a number in it.\n");
  m_watch->start();
  ASSERT_TRUE(waitForLines(1));
  const auto labels = m_watch->findChildren<QLabel*>();
  EXPECT_TRUE(std::any_of(labels.begin(), labels.end(), [this](const QLabel* label) {
    return !label->isHidden() && label->text() == QStringLiteral("QM-2299_run1.csv: ") + text(0, 4);
  })) << "in full, whatever the width of the column";
  EXPECT_EQ(text(0, 1), QStringLiteral("QM-2299_run1.csv"));
  EXPECT_EQ(text(0, 2), QStringLiteral("not judged"));
  EXPECT_FALSE(text(0, 4).isEmpty());
  EXPECT_EQ(service()->failed(), 1);
  EXPECT_TRUE(service()->isRunning()) << "goes on with the others";
}

TEST_F(WatchTest, AFileThatIsStillWrittenIsWaitedFor) {
  const QByteArray whole = bytesOf("tern_run2.csv");
  comesIn("QM-2300_run1.csv", whole.left(whole.size() / 2));
  m_watch->start();
  ASSERT_TRUE(QTest::qWaitFor([this] { return service()->isWaiting(); }, kLongest_ms));
  comesIn("QM-2300_run1.csv", whole);
  ASSERT_TRUE(waitForLines(1));
  auto archive = archive::Archive::open(m_archive->where().toStdString(), {});
  const auto runs = archive->runsOfLot("QM-2300");
  ASSERT_EQ(runs->size(), 1u);
  EXPECT_EQ(*archive->rawLog((*runs)[0].id), whole.toStdString());
}

TEST_F(WatchTest, RulesThatCannotBeReadAreSaidWithTheirPlace) {
  write(QStringLiteral("rules.toml"), "[[rule]]\nfiles = \"*.csv\"\nloot = \"QM-1\"\n");
  m_watch->start();
  ASSERT_TRUE(QTest::qWaitFor([this] { return !service()->isRunning(); }, kLongest_ms));
  EXPECT_TRUE(m_watch->stateText().contains(QStringLiteral("rules.toml"))) << m_watch->stateText().toStdString();
  EXPECT_TRUE(m_watch->stateText().contains(QStringLiteral("Line 3"))) << m_watch->stateText().toStdString();
}

TEST_F(WatchTest, GoesOnWhenTheWindowIsClosedAndIsThereAgain) {
  m_watch->start();
  m_watch.reset();
  EXPECT_TRUE(service()->isRunning());
  comesIn("QM-2298_run1.csv", bytesOf("tern_run2.csv"));
  ASSERT_TRUE(QTest::qWaitFor([this] { return service()->kept() == 1; }, kLongest_ms));
  m_watch = std::make_unique<WatchWindow>(m_archive.get(), m_settings.get(), nullptr);
  EXPECT_EQ(m_watch->lines()->topLevelItemCount(), 1);
}

TEST_F(WatchTest, StopsWhenToldTo) {
  m_watch->start();
  service()->stop();
  comesIn("QM-2298_run1.csv", bytesOf("tern_run2.csv"));
  QTest::qWait(200);
  EXPECT_FALSE(service()->isRunning());
  EXPECT_TRUE(service()->lines().empty());
}

TEST_F(WatchTest, AFolderThatIsNotThereIsSaidAndLookedForAgain) {
  m_watch->setFolder(m_folder.filePath(QStringLiteral("later")));
  m_watch->start();
  ASSERT_TRUE(QTest::qWaitFor([this] { return service()->trouble().has_value(); }, kLongest_ms));
  EXPECT_TRUE(m_watch->stateText().contains(QStringLiteral("later")));
  ASSERT_TRUE(QDir(m_folder.path()).mkdir(QStringLiteral("later")));
  write(QStringLiteral("later/QM-2298_run1.csv"), bytesOf("tern_run2.csv"));
  ASSERT_TRUE(waitForLines(1));
  EXPECT_FALSE(service()->trouble());
}

}  // namespace
}  // namespace ovenwright::desktop
