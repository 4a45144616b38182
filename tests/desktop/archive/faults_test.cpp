// Archives that fail, on the real window: each trouble is named in one sentence in every language, the document stays,
// the window goes on meanwhile, and what was kept meanwhile reaches the server by itself.
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/resource.h>

#include <QAction>
#include <QLabel>
#include <QLineEdit>
#include <csignal>
#include <fstream>

#include "app/archive/database.h"
#include "app/desktop/keep/keep_form.h"
#include "app/desktop/lots/archive_words.h"
#include "app/desktop/lots/lots_page.h"
#include "app/desktop/lots/runs_model.h"
#include "app/desktop/text/language.h"
#include "app/desktop/text/said.h"
#include "tests/app/archive/own_server.h"
#include "tests/app/archive/place.h"
#include "tests/app/archive/proxy.h"
#include "tests/app/archive/runs.h"
#include "tests/desktop/window/window_fixture.h"

namespace ovenwright::desktop {
namespace {

using testing::HasSubstr;
using Reach = ArchiveStatus::Reach;
constexpr int kLongest_ms = 60000;  // only a bound against hanging

class FaultsTest : public WindowTest {
 protected:
  FaultsTest() {
    ArchiveLink::Pace pace;
    pace.againAway_ms = 200;
    pace.slow_ms = 100;
    pace.answer_s = 2;
    m_archive->setPace(pace);
  }
  LotsPage* page() { return m_window->lotsPage(); }
  KeepForm* form() { return m_window->findChild<KeepForm*>(); }
  const ArchiveStatus& status() const { return m_archive->status(); }
  template <class Condition>
  bool comesTrue(const Condition& condition) {
    return QTest::qWaitFor(condition, kLongest_ms);
  }
  void use(const std::string& where) {
    m_archive->setWhere(QString::fromStdString(where));
    m_archive->look();
  }
  void showLots() {
    m_window->showTask(MainWindow::Task::kLots);
    ASSERT_TRUE(comesTrue([this] { return status().reach != Reach::kNotLooked && !page()->isBusy(); }));
  }
  void openForm() {
    m_window->showTask(MainWindow::Task::kCheck);
    for (QAction* each : m_window->findChildren<QAction*>())
      if (each->text().remove(u'&') == QStringLiteral("Keep in the record…")) each->trigger();
    ASSERT_TRUE(form()->isVisible());
  }
  /// Keeps the demo run as somebody would; what the form says of it in the end.
  QString keep() {
    if (!m_document->view()) openDemo();
    const auto view = m_document->view();
    openForm();
    QString noted;
    const auto listening = QObject::connect(form(), &KeepForm::noted, [&noted](const QString& text) { noted = text; });
    form()->keep();
    EXPECT_TRUE(comesTrue([this] { return !form()->job()->isRunning(); }));
    QObject::disconnect(listening);
    EXPECT_EQ(m_document->view(), view) << "the document stays";
    if (!noted.isEmpty()) return noted;
    for (const auto* label : form()->findChildren<QLabel*>())
      if (label->text().startsWith(QStringLiteral("Nothing was kept"))) return label->text();
    return {};
  }
  /// The error is a sentence of its own in every language, with the notice that shows it.
  void expectNamed(const std::string& words) {
    ASSERT_TRUE(status().error);
    EXPECT_THAT(status().error->message, HasSubstr(words));
    const auto notice = archiveNotice(status(), {});
    ASSERT_TRUE(notice);
    for (const char* code : {"de", "es", "zh_TW", "zh_CN"}) {
      useLanguage(QLatin1String(code));
      const QString text = inWords(status().error->message, QLocale(QLatin1String(code)));
      EXPECT_NE(text.toStdString(), status().error->message) << code;
      const auto there = archiveNotice(status(), {});
      EXPECT_TRUE((there->title + there->text).contains(text.mid(1), Qt::CaseInsensitive)) << code;
      EXPECT_NE(there->title, notice->title) << code;
    }
    useLanguage(QStringLiteral("en"));
  }
  /// What waits goes to the server without anybody asking, and the list shows it.
  void expectEmptiesByItself(std::size_t records) {
    EXPECT_TRUE(comesTrue([&] { return status().reach == Reach::kOpen && status().state.waiting == 0; }))
        << status().state.message;
    EXPECT_TRUE(comesTrue([&] { return status().records == records; })) << status().records;
    showLots();
    EXPECT_TRUE(comesTrue([&] { return page()->model()->rowCount() == int(records); }));
    EXPECT_FALSE(page()->notice());
  }
};

class ServerFaults : public FaultsTest {
 protected:
  TestPlace m_place{TestPlace::Kind::kServer};
  Proxy m_proxy{m_place.where()};
};

TEST_F(ServerFaults, AwayAtTheStart) {
  m_proxy.setAway(true);
  use(m_proxy.url());
  showLots();
  EXPECT_EQ(status().reach, Reach::kAway);
  ASSERT_TRUE(page()->notice());
  EXPECT_EQ(page()->notice()->title, "The server does not answer: none runs there.");
  expectNamed("the server does not answer");
  EXPECT_THAT(keep().toStdString(), HasSubstr("waits on this computer"));
  EXPECT_TRUE(comesTrue([this] { return status().state.waiting == 1; }));
  EXPECT_THAT(page()->archiveText().toStdString(), HasSubstr("1 record waits here"));
  m_proxy.setAway(false);
  expectEmptiesByItself(1);
}

TEST_F(ServerFaults, GoesAwayWhileSomebodyWorks) {
  use(m_proxy.url());
  showLots();
  EXPECT_EQ(status().reach, Reach::kNone);  // the server answers, and no run is kept there yet
  m_archive->add(m_window.get(), madeUpRuns(1, 3), [](const auto&) {});
  EXPECT_TRUE(comesTrue([this] { return page()->model()->rowCount() == 3; }));
  m_proxy.setAway(true);
  EXPECT_THAT(keep().toStdString(), HasSubstr("Kept as"));
  EXPECT_TRUE(comesTrue([this] { return status().reach == Reach::kAway && status().state.waiting == 1; }));
  expectNamed("the server");
  m_proxy.setAway(false);
  expectEmptiesByItself(4);
}

TEST_F(ServerFaults, SilentServerHoldsNobodyUp) {
  use(m_proxy.url());
  showLots();
  m_archive->add(m_window.get(), madeUpRuns(1, 2), [](const auto&) {});
  EXPECT_TRUE(comesTrue([this] { return page()->model()->rowCount() == 2; }));
  m_proxy.setSilent(true);
  bool answered = false;
  m_archive->count(m_window.get(), {}, [&answered](const auto&) { answered = true; });
  EXPECT_TRUE(comesTrue([this] { return status().slow; }));
  EXPECT_THAT(page()->archiveText().toStdString(), HasSubstr("is slow to answer"));
  // A log is read and judged while the archive waits for its answer.
  openDemo();
  EXPECT_NE(m_document->view(), nullptr);
  EXPECT_THAT(keep().toStdString(), HasSubstr("waits on this computer"));
  EXPECT_TRUE(comesTrue([&] { return answered && status().reach == Reach::kAway; }));
  expectNamed("the server takes too long to answer");
  m_proxy.setSilent(false);
  expectEmptiesByItself(3);
}

TEST_F(ServerFaults, SlowServerIsWaitedForAndSaidToBeSlow) {
  use(m_place.where());
  showLots();
  m_proxy.setDelay(std::chrono::milliseconds{150});
  use(m_proxy.url());
  m_window->showTask(MainWindow::Task::kLots);
  EXPECT_TRUE(comesTrue([this] { return status().slow; }));
  EXPECT_TRUE(comesTrue([this] { return status().reach == Reach::kNone; }));
  EXPECT_THAT(keep().toStdString(), HasSubstr("Kept as"));
  m_proxy.setDelay({});
  expectEmptiesByItself(1);
  EXPECT_TRUE(comesTrue([this] { return !status().slow; }));
}

TEST_F(ServerFaults, TheWindowClosesWhileAServerIsSilentAndNothingIsLost) {
  use(m_proxy.url());
  showLots();
  m_archive->add(m_window.get(), madeUpRuns(1, 1), [](const auto&) {});
  EXPECT_TRUE(comesTrue([this] { return page()->model()->rowCount() == 1; }));
  ArchiveLink::Pace pace = m_archive->pace();
  pace.answer_s = 3600;  // nobody would wait for this
  pace.close_ms = 200;
  m_archive->setPace(pace);
  use(m_place.where());
  use(m_proxy.url());
  EXPECT_TRUE(comesTrue([this] { return status().reach == Reach::kOpen; }));
  m_proxy.setSilent(true);
  m_archive->add(m_window.get(), madeUpRuns(2, 3), [](const auto&) {});
  m_window.reset();
  m_archive.reset();  // comes back
  m_proxy.setSilent(false);
  ArchiveLink again(QString::fromStdString(m_proxy.url()));
  again.look();
  EXPECT_TRUE(comesTrue([&] { return again.status().records == 4 && again.status().state.waiting == 0; }))
      << again.status().records;
}

TEST_F(ServerFaults, AUserWhoMayOnlyReadIsToldAtKeeping) {
  { ASSERT_TRUE(m_place.open().add(madeUpRuns(1, 2))); }
  m_place.execute(contents(OVENWRIGHT_SOURCE "/resources/archive/roles.sql"));
  m_place.execute(
      "do $$ begin create role ow_test_read login in role ovenwright_read; exception when duplicate_object then null; "
      "end $$");
  std::string url = m_place.where();
  use(url.replace(url.find("ow@"), 3, "ow_test_read@"));
  showLots();
  EXPECT_TRUE(comesTrue([this] { return page()->model()->rowCount() == 2; }));
  EXPECT_EQ(keep(), "Nothing was kept: " + QString::fromStdString(url) +
                        ": The server refuses: this user may only read the archive.");
  EXPECT_TRUE(form()->isVisible());
}

TEST_F(ServerFaults, AnUnknownUserAndAnUnknownDatabaseAreNamed) {
  std::string url = m_place.where();
  use(url.replace(url.find("ow@"), 3, "nobody_here@"));
  showLots();
  expectNamed("the server refuses: it knows no user nobody_here");
  EXPECT_THAT(keep().toStdString(), HasSubstr("knows no user nobody_here"));
  url = m_place.where();
  const auto at = url.find("ow@/") + 4;
  use(url.replace(at, url.find('?') - at, "nothing"));
  showLots();
  expectNamed("the server refuses: it has no database nothing");
}

TEST_F(ServerFaults, ALogThatAnotherStationKeptMeanwhileIsSaid) {
  use(m_proxy.url());
  showLots();
  m_archive->add(m_window.get(), madeUpRuns(50, 1), [](const auto&) {});
  EXPECT_TRUE(comesTrue([this] { return page()->model()->rowCount() == 1; }));
  m_proxy.setAway(true);
  m_archive->add(m_window.get(), madeUpRuns(1, 1), [](const auto&) {});
  EXPECT_TRUE(comesTrue([this] { return status().state.waiting == 1; }));
  std::string others;
  {
    auto other = m_place.open("station B");
    others = other.add(madeUpRuns(1, 1, "QM-2002"))->front().id;
  }
  std::vector<archive::Repeated> told;
  QObject::connect(m_archive.get(), &ArchiveLink::repeated, [&told](const auto& records) { told = records; });
  m_proxy.setAway(false);
  EXPECT_TRUE(comesTrue([&] { return !told.empty(); }));
  ASSERT_EQ(told.size(), 1u);
  EXPECT_EQ(told[0].of, others);
  EXPECT_THAT(repeatedText(told).toStdString(), HasSubstr("as " + others + " in lot QM-2002"));
  expectEmptiesByItself(2);
}

class OwnServerFaults : public FaultsTest {
 protected:
  OwnServer m_server;
};

TEST_F(OwnServerFaults, ARestartIsGotOver) {
  use(m_server.url());
  showLots();
  m_archive->add(m_window.get(), madeUpRuns(1, 2), [](const auto&) {});
  EXPECT_TRUE(comesTrue([this] { return page()->model()->rowCount() == 2; }));
  m_server.halt();
  EXPECT_THAT(keep().toStdString(), HasSubstr("waits on this computer"));
  EXPECT_TRUE(comesTrue([this] { return status().reach == Reach::kAway; }));
  m_server.resume();
  expectEmptiesByItself(3);
}

TEST_F(OwnServerFaults, APasswordThatNoLongerServesIsNamedAndWhatIsKeptWaits) {
  m_server.execute("create role station login superuser password 'right'");
  std::string url = m_server.url();
  url.replace(url.find("ow@"), 3, "station@");
  use(url);
  showLots();
  m_archive->add(m_window.get(), madeUpRuns(1, 1), [](const auto&) {});
  EXPECT_TRUE(comesTrue([this] { return page()->model()->rowCount() == 1; }));
  const std::string passwords = m_folder.filePath(QStringLiteral("passwords")).toStdString();
  std::ofstream(passwords) << "*:*:*:station:wrong\n";
  QFile::setPermissions(QString::fromStdString(passwords), QFile::ReadOwner | QFile::WriteOwner);
  qputenv("PGPASSFILE", passwords.c_str());
  m_server.setAccess("local all ow trust\nlocal all station scram-sha-256\n");
  m_server.restart();
  EXPECT_THAT(keep().toStdString(), HasSubstr("waits on this computer"));
  EXPECT_TRUE(comesTrue([this] { return status().state.refused; }));
  expectNamed("the server refuses: the password of station is wrong");
  EXPECT_THAT(page()->archiveText().toStdString(), HasSubstr("refuses, 1 record waits here"));
  std::ofstream(passwords) << "*:*:*:station:right\n";
  expectEmptiesByItself(2);
  qunsetenv("PGPASSFILE");
}

TEST_F(OwnServerFaults, TooManyConnectionsAreNamedAndGotOver) {
  m_server.execute("create role station login connection limit 1; grant create on database postgres to station");
  std::string url = m_server.url();
  url.replace(url.find("ow@"), 3, "station@");
  archive::Options options;
  options.outbox = m_server.outbox(1);
  auto other = std::make_unique<archive::Archive>(*archive::Archive::open(url, options));
  use(url);
  showLots();
  EXPECT_EQ(status().reach, Reach::kAway);
  expectNamed("the server has no connection free");
  EXPECT_THAT(keep().toStdString(), HasSubstr("waits on this computer"));
  other.reset();
  expectEmptiesByItself(1);
}

TEST_F(FaultsTest, ADiskThatIsFullIsNamedAndNothingIsHalfKept) {
  m_archive->add(m_window.get(), madeUpRuns(1, 2), [](const auto&) {});
  EXPECT_TRUE(comesTrue([this] { return status().records == 2; }));
  openDemo();
  // A limit on the size of files stands for a full disk.
  rlimit before{};
  ASSERT_EQ(::getrlimit(RLIMIT_FSIZE, &before), 0);
  const auto handler = std::signal(SIGXFSZ, SIG_IGN);
  rlimit small = before;
  small.rlim_cur = 8192;
  ASSERT_EQ(::setrlimit(RLIMIT_FSIZE, &small), 0);
  const QString said = keep();
  ::setrlimit(RLIMIT_FSIZE, &before);
  std::signal(SIGXFSZ, handler);
  EXPECT_THAT(said.toStdString(), HasSubstr("Nothing was kept: " + m_archive->where().toStdString()));
  EXPECT_THAT(said.toStdString(), testing::AnyOf(HasSubstr("disk is full"), HasSubstr("does not read or write")));
  EXPECT_TRUE(form()->isVisible());
  EXPECT_THAT(keep().toStdString(), HasSubstr("Kept as"));  // once there is room
  EXPECT_TRUE(comesTrue([this] { return status().records == 3; }));
  auto archive = archive::Archive::open(m_archive->where().toStdString(), {});
  EXPECT_TRUE(archive->verify()->holds());
}

struct File {
  const char* name;
  std::function<void(const std::string& path)> make;
  const char* said;
};
void PrintTo(const File& file, std::ostream* os) { *os << file.name; }

void makeNewer(const std::string& path) {
  { ASSERT_TRUE(archive::Archive::open(path, {})->add(madeUpRuns(1, 1))); }
  auto database = archive::Database::openFile(path, archive::Database::Mode::kReadWrite, 1000);
  ASSERT_TRUE(database) << database.error().text();
  ASSERT_FALSE((*database)->execute(QStringLiteral("update archive set value = '99' where name = 'schema'")));
}
void makeForeign(const std::string& path) {
  auto database = archive::Database::openFile(path, archive::Database::Mode::kCreate, 1000);
  ASSERT_TRUE(database) << database.error().text();
  ASSERT_FALSE((*database)->execute(QStringLiteral("create table notes(text)")));
}
void makeText(const std::string& path) { std::ofstream(path) << std::string(4096, 'x'); }

class FileFaults : public FaultsTest, public testing::WithParamInterface<File> {};

TEST_P(FileFaults, AreNamedInTheListAndAtKeepingAndTheFileStays) {
  const std::string path = m_folder.filePath(QStringLiteral("strange.sqlite")).toStdString();
  GetParam().make(path);
  const std::string bytes = contents(path);
  use(path);
  showLots();
  EXPECT_EQ(status().reach, Reach::kTrouble);
  expectNamed(GetParam().said);
  const QString said = keep();
  EXPECT_THAT(said.toStdString(), HasSubstr("Nothing was kept: " + path));
  EXPECT_THAT(said.toStdString(), HasSubstr(std::string(GetParam().said).substr(1)));
  EXPECT_EQ(contents(path), bytes);
}
INSTANTIATE_TEST_SUITE_P(All, FileFaults,
                         testing::Values(File{"newer", makeNewer, "it takes a newer program"},
                                         File{"foreign", makeForeign, "it is a database of another program"},
                                         File{"no_database", makeText, "it is damaged, or no database"}),
                         [](const auto& tested) { return std::string{tested.param.name}; });

}  // namespace
}  // namespace ovenwright::desktop
