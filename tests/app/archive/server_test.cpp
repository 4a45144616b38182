// Servers that are silent, slow, full of connections, refuse or are brought forward: named in one sentence, nothing
// lost.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <memory>
#include <thread>

#include "app/archive/archive.h"
#include "app/archive/archive_data.h"
#include "app/archive/database.h"
#include "app/archive/patience.h"
#include "app/archive/schema.h"
#include "core/units/phrase.h"
#include "tests/app/archive/own_server.h"
#include "tests/app/archive/place.h"
#include "tests/app/archive/proxy.h"
#include "tests/app/archive/runs.h"

namespace ovenwright::archive {
namespace {

using testing::HasSubstr;
using Kind = State::Kind;

/// Whether the window can say it in every language.
bool isKnown(const std::string& message) { return said(message).has_value(); }

/// A result that there is, and is this.
MATCHER_P(Gives, wanted, "") {
  if (arg) return *arg == wanted;
  *result_listener << arg.error().text();
  return false;
}

class Silent : public testing::Test {
 protected:
  /// With time enough for whatever must succeed.
  Options options() const {
    auto options = place.options();
    options.answerTimeout_s = 20;
    return options;
  }
  /// For one that meets a silence.
  Options impatient() const {
    auto options = place.options();
    options.answerTimeout_s = 1;
    options.connectTimeout_s = 2;  // the least that the server's library takes
    return options;
  }
  TestPlace place{TestPlace::Kind::kServer};
  Proxy proxy{place.where()};
};

TEST_F(Silent, ServerCountsAsAwayAndWhatIsKeptWaits) {
  auto patient = Archive::open(proxy.url(), options());
  ASSERT_TRUE(patient) << patient.error().text();
  ASSERT_TRUE(patient->add(madeUpRuns(1, 2)));
  EXPECT_EQ(patient->state().waiting, 0U) << patient->state().message;
  auto archive = Archive::open(proxy.url(), impatient());
  ASSERT_TRUE(archive) << archive.error().text();
  proxy.setSilent(true);
  const auto page = archive->find({}, 10);
  ASSERT_FALSE(page);
  EXPECT_EQ(page.error().code, ErrorCode::kIo);
  EXPECT_EQ(archive->state().kind, Kind::kServerAway);
  EXPECT_TRUE(isKnown(archive->state().message)) << archive->state().message;
  const auto added = archive->add(madeUpRuns(3, 2));
  ASSERT_TRUE(added) << added.error().text();
  EXPECT_EQ(archive->state().waiting, 2U);
  proxy.setSilent(false);
  // Of its own accord; where a machine is too slow for its second, in one of several turns.
  for (int turn = 0; turn < 20 && archive->state().waiting > 0; ++turn) (void)archive->sendWaiting();
  EXPECT_EQ(archive->state().waiting, 0U) << archive->state().message;
  EXPECT_EQ(archive->state().kind, Kind::kServer);
  EXPECT_TRUE(archive->state().message.empty()) << archive->state().message;
  EXPECT_THAT(patient->count({}), Gives(4U));
}

TEST_F(Silent, ServerInTheMiddleOfAnAddLosesAndDoublesNothing) {
  auto patient = Archive::open(proxy.url(), options());
  ASSERT_TRUE(patient) << patient.error().text();
  ASSERT_TRUE(patient->add(madeUpRuns(1, 1)));
  const int before = proxy.answers();
  ASSERT_TRUE(patient->add(madeUpRuns(2, 99)));
  const int answers = proxy.answers() - before;  // that such an add takes
  int inTheMiddle = 0;
  for (int turn = 1; turn <= 4; ++turn) {
    auto archive = Archive::open(proxy.url(), impatient());
    ASSERT_TRUE(archive) << archive.error().text();
    proxy.setSilentAfter(answers * turn / 4 - 1);
    const auto added = archive->add(madeUpRuns(1 + 100 * turn, 100));
    ASSERT_TRUE(added) << added.error().text();
    inTheMiddle += proxy.isSilent() ? 1 : 0;
    proxy.setSilent(false);
    const auto sent = patient->sendWaiting();
    ASSERT_TRUE(sent) << sent.error().text();
    EXPECT_EQ(patient->state().waiting, 0U) << patient->state().message;
  }
  EXPECT_GT(inTheMiddle, 0) << "of " << answers << " answers";
  EXPECT_THAT(patient->count({}), Gives(500U));
  const auto found = patient->verify();
  ASSERT_TRUE(found) << found.error().text();
  EXPECT_TRUE(found->holds()) << found->firstBad << found->reason;
}

TEST_F(Silent, ServerIsLeftFromAnotherThread) {
  auto patient = options();
  patient.answerTimeout_s = 3600;
  patient.patience = std::make_shared<Patience>();
  auto opened = Archive::open(proxy.url(), patient);
  ASSERT_TRUE(opened) << opened.error().text();
  auto& archive = *opened;
  ASSERT_TRUE(archive.add(madeUpRuns(1, 1)));
  proxy.setSilent(true);
  {
    std::jthread leaver([&] {
      std::this_thread::sleep_for(std::chrono::milliseconds{50});
      patient.patience->leave();
    });
    const auto added = archive.add(madeUpRuns(2, 1));  // else it would wait for an hour
    ASSERT_TRUE(added) << added.error().text();
  }
  EXPECT_EQ(archive.state().kind, Kind::kServerAway);
  EXPECT_EQ(archive.state().waiting, 1U);
  const int before = proxy.connections();
  EXPECT_THAT(archive.sendWaiting(), Gives(0U));
  EXPECT_EQ(proxy.connections(), before) << "no connection is tried any more";
}

TEST_F(Silent, ServerThatIsSlowServesAllTheSame) {
  proxy.setDelay(std::chrono::milliseconds{40});
  auto patient = options();
  patient.answerTimeout_s = 30;
  auto archive = Archive::open(proxy.url(), patient);
  ASSERT_TRUE(archive) << archive.error().text();
  ASSERT_TRUE(archive->add(madeUpRuns(1, 2)));
  EXPECT_EQ(archive->state().waiting, 0U) << archive->state().message;
  EXPECT_THAT(archive->count({}), Gives(2U));
}

TEST_F(Silent, ConnectionThatBrokeWhileNobodyUsedItIsMadeAnew) {
  auto opened = Archive::open(proxy.url(), options());
  ASSERT_TRUE(opened) << opened.error().text();
  auto& archive = *opened;
  ASSERT_TRUE(archive.add(madeUpRuns(1, 2)));
  proxy.setAway(true);
  proxy.setAway(false);
  std::this_thread::sleep_for(std::chrono::milliseconds{kMayBeGone_ms + 100});
  const auto count = archive.count({});
  ASSERT_TRUE(count) << count.error().text();
  EXPECT_EQ(*count, 2U);
}

TEST_F(Silent, ServerThatIsAwayIsNotTriedAtEveryCall) {
  auto seldom = options();
  seldom.retryAfter_ms = 3'600'000;
  auto opened = Archive::open(proxy.url(), seldom);
  ASSERT_TRUE(opened) << opened.error().text();
  auto& archive = *opened;
  ASSERT_TRUE(archive.add(madeUpRuns(1, 1)));
  proxy.setAway(true);
  (void)archive.count({});
  (void)archive.count({});  // finds it gone
  proxy.setAway(false);
  const int before = proxy.connections();
  ASSERT_TRUE(archive.add(madeUpRuns(2, 1)));
  ASSERT_TRUE(archive.sendWaiting());
  EXPECT_EQ(archive.state().waiting, 1U);
  EXPECT_EQ(proxy.connections(), before);
  archive.tryAgain();
  EXPECT_THAT(archive.sendWaiting(), Gives(1U));
}

struct Refusal {
  const char* name;
  std::string rules;  ///< of pg_hba.conf, for the user "station"
  const char* said;
};

TEST(Server, ThatRefusesIsNamedAndWhatIsKeptWaits) {
  const OwnServer server;
  server.execute("create role station login superuser password 'right'");
  const auto url = [&](const std::string& user) {
    std::string text = server.url();
    return text.replace(text.find("ow@"), 3, user + "@");
  };
  Options options;
  options.machine = "station A";
  options.outbox = server.outbox(1);
  options.retryAfter_ms = 0;
  {
    auto first = Archive::open(url("station"), options);
    ASSERT_TRUE(first) << first.error().text();
    ASSERT_TRUE(first->add(madeUpRuns(1, 1)));
  }
  const std::string file = server.outbox(7), owner = "local all ow trust\n";
  std::size_t waiting = 0;
  for (const auto& [name, rules, said] :
       {Refusal{"wrong password", "local all station scram-sha-256\n", "the password of station is wrong"},
        Refusal{"no entry", "", "may not connect from this computer"}}) {
    server.setAccess(owner + rules);
    std::ofstream(file) << "*:*:*:station:wrong\n";
    std::filesystem::permissions(file, std::filesystem::perms::owner_read | std::filesystem::perms::owner_write);
    ::setenv("PGPASSFILE", file.c_str(), 1);
    auto archive = Archive::open(url("station"), options);
    ASSERT_TRUE(archive) << name << archive.error().text();
    const auto added = archive->add(madeUpRuns(10 + static_cast<int>(waiting), 1));
    ASSERT_TRUE(added) << added.error().text();
    const auto state = archive->state();
    EXPECT_EQ(state.kind, Kind::kServerAway) << name;
    EXPECT_TRUE(state.refused) << name;
    EXPECT_EQ(state.waiting, ++waiting) << name;
    EXPECT_THAT(state.message, HasSubstr(said)) << name;
    EXPECT_TRUE(isKnown(state.message)) << state.message;
    // One that never added to it collects nothing: it is told at once.
    auto stranger = options;
    stranger.outbox = server.outbox(2);
    EXPECT_THAT(Archive::open(url("station"), stranger).error().message, HasSubstr(said));
  }
  // No password at all, an unknown user, a database that is not there: never added to, so an error.
  std::ofstream(file) << "";
  server.setAccess(owner + "local all all scram-sha-256\n");
  auto stranger = options;
  stranger.outbox = server.outbox(3);
  EXPECT_THAT(Archive::open(url("station"), stranger).error().message, HasSubstr("wants a password"));
  server.setAccess("local all all trust\n");
  EXPECT_THAT(Archive::open(url("nobody_here"), stranger).error().message, HasSubstr("knows no user nobody_here"));
  std::string elsewhere = server.url();
  elsewhere.replace(elsewhere.find("/postgres?"), 10, "/nothing?");
  EXPECT_THAT(Archive::open(elsewhere, stranger).error().message, HasSubstr("no database nothing"));
  ::unsetenv("PGPASSFILE");
  auto archive = Archive::open(url("station"), options);
  ASSERT_TRUE(archive) << archive.error().text();
  EXPECT_EQ(archive->state().waiting, 0U) << archive->state().message;
  EXPECT_FALSE(archive->state().refused);
  EXPECT_THAT(archive->count({}), Gives(3U));
}

TEST(Server, WithoutAFreeConnectionIsAwayForAWhile) {
  const OwnServer server;
  server.execute("create role station login connection limit 1; grant create on database postgres to station");
  std::string url = server.url();
  url.replace(url.find("ow@"), 3, "station@");
  Options options;
  options.machine = "station A";
  options.outbox = server.outbox(1);
  options.retryAfter_ms = 0;
  auto first = std::make_unique<Result<Archive>>(Archive::open(url, options));
  ASSERT_TRUE(*first) << first->error().text();
  ASSERT_TRUE((*first)->add(madeUpRuns(1, 1)));
  options.machine = "station B";
  options.outbox = server.outbox(2);
  auto second = Archive::open(url, options);
  ASSERT_TRUE(second) << second.error().text();
  EXPECT_EQ(second->state().kind, Kind::kServerAway);
  EXPECT_FALSE(second->state().refused);
  EXPECT_EQ(second->state().message, "the server has no connection free");
  ASSERT_TRUE(second->add(madeUpRuns(2, 1)));
  first.reset();
  EXPECT_THAT(second->sendWaiting(), Gives(1U));
  EXPECT_THAT(second->count({}), Gives(2U));
}

TEST(Server, ThatIsSwitchedOffAndOnGoesOn) {
  OwnServer server;
  Options options;
  options.machine = "station A";
  options.outbox = server.outbox(1);
  options.retryAfter_ms = 0;
  auto opened = Archive::open(server.url(), options);
  ASSERT_TRUE(opened) << opened.error().text();
  auto& archive = *opened;
  ASSERT_TRUE(archive.add(madeUpRuns(1, 2)));
  server.halt();
  const auto added = archive.add(madeUpRuns(3, 2));
  ASSERT_TRUE(added) << added.error().text();
  EXPECT_EQ(archive.state().kind, Kind::kServerAway);
  EXPECT_EQ(archive.state().waiting, 2U);
  EXPECT_TRUE(isKnown(archive.state().message)) << archive.state().message;
  EXPECT_THAT(archive.sendWaiting(), Gives(0U));
  EXPECT_EQ(archive.state().message, "the server does not answer: none runs there");
  server.resume();
  EXPECT_THAT(archive.sendWaiting(), Gives(2U));
  EXPECT_THAT(archive.count({}), Gives(4U));
}

/// As version 4 left it.
void setBack(const TestPlace& place) {
  place.execute("drop table repeated");
  place.execute("update archive set value = '4' where name = 'schema'");
}

TEST(Server, BroughtForwardGivesItsRolesWhatNewTablesNeed) {
  const TestPlace place{TestPlace::Kind::kServer};
  { ASSERT_TRUE(place.open().add(madeUpRuns(1, 2))); }
  place.execute(contents(OVENWRIGHT_SOURCE "/resources/archive/roles.sql"));
  const auto as = [&](const std::string& role) {
    const std::string user = "ow_test_" + role;
    place.execute("do $$ begin create role " + user + " login in role ovenwright_" + role +
                  "; exception when duplicate_object then null; end $$");
    std::string url = place.where();
    return url.replace(url.find("ow@"), 3, user + "@");
  };
  {
    auto adder = Archive::open(as("add"), place.options("adder"));
    ASSERT_TRUE(adder) << adder.error().text();
    ASSERT_TRUE(adder->add(madeUpRuns(10, 1)));
  }
  setBack(place);
  // A newer station comes first, which may not bring it forward: told whose work it is, and what it keeps waits.
  {
    auto early = Archive::open(as("add"), place.options("adder"));
    ASSERT_TRUE(early) << early.error().text();
    EXPECT_TRUE(early->state().refused);
    EXPECT_THAT(early->state().message, HasSubstr("the owner of its tables brings it forward"));
    EXPECT_THAT(early->state().message, HasSubstr("ovenwright archive list"));
    EXPECT_TRUE(isKnown(early->state().message)) << early->state().message;
    ASSERT_TRUE(early->add(madeUpRuns(11, 1)));
    EXPECT_EQ(early->state().waiting, 1U);
  }
  EXPECT_EQ(place.value("select value from archive where name = 'schema'"), "4");
  // The owner opens it, and no more is needed.
  {
    auto owner = place.open();
    EXPECT_THAT(owner.count({}), Gives(3U));
  }
  EXPECT_EQ(place.value("select value from archive where name = 'schema'"), std::to_string(newestSchema()));
  auto adder = Archive::open(as("add"), place.options("adder"));
  ASSERT_TRUE(adder) << adder.error().text();
  EXPECT_EQ(adder->state().waiting, 0U) << adder->state().message;
  EXPECT_THAT(adder->count({}), Gives(4U));
  auto reading = place.options("reader");
  reading.access = Access::kReadOnly;
  auto reader = Archive::open(as("read"), reading);
  ASSERT_TRUE(reader) << reader.error().text();
  EXPECT_THAT(reader->count({}), Gives(4U));
  const auto found = reader->verify();
  ASSERT_TRUE(found) << found.error().text();
  EXPECT_TRUE(found->holds()) << found->firstBad << found->reason;
}

TEST(Server, OfAnOwnerWithoutRolesIsBroughtForwardWithoutThem) {
  const TestPlace place{TestPlace::Kind::kServer};
  { ASSERT_TRUE(place.open().add(madeUpRuns(1, 2))); }
  setBack(place);
  EXPECT_THAT(place.open().count({}), Gives(2U));
  // Roles of another archive on the same server get nothing here.
  EXPECT_EQ(
      place.value("select count(*) from information_schema.role_table_grants where grantee like 'ovenwright_%' and "
                  "table_schema = 'ovenwright'"),
      "0");
}

}  // namespace
}  // namespace ovenwright::archive
