// Who may read, add and release, by the database's own grants and the file system's rights.
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <unistd.h>

#include <filesystem>

#include "app/archive/archive.h"
#include "app/archive/database.h"
#include "tests/app/archive/child.h"
#include "tests/app/archive/place.h"
#include "tests/app/archive/runs.h"

namespace ovenwright::archive {
namespace {

using testing::HasSubstr;

NewFile window() { return madeUpRun(1).windows.front(); }

TEST(Roles, OnAServerAreItsGrants) {
  const TestPlace place{TestPlace::Kind::kServer};
  { ASSERT_TRUE(place.open().add(madeUpRuns(1, 2))); }
  place.execute(contents(OVENWRIGHT_SOURCE "/resources/archive/roles.sql"));
  place.execute(contents(OVENWRIGHT_SOURCE "/resources/archive/roles.sql"));  // may be run again
  const auto as = [&](const std::string& role) {
    const std::string user = "ow_test_" + role;
    place.execute("do $$ begin create role " + user + " login in role ovenwright_" + role +
                  "; exception when duplicate_object then null; end $$");
    std::string url = place.where();
    return url.replace(url.find("ow@"), 3, user + "@");
  };
  auto reading = place.options("reader");
  reading.access = Access::kReadOnly;
  auto reader = Archive::open(as("read"), reading);
  ASSERT_TRUE(reader) << reader.error().text();
  EXPECT_EQ(*reader->count({}), 2U);
  EXPECT_TRUE(reader->verify()->holds());
  const auto refused = Archive::open(as("read"), place.options("reader"));
  ASSERT_FALSE(refused);
  EXPECT_THAT(refused.error().message, HasSubstr("may only read"));

  auto adder = Archive::open(as("add"), place.options("adder"));
  ASSERT_TRUE(adder) << adder.error().text();
  ASSERT_TRUE(adder->add(madeUpRuns(10, 3)));
  EXPECT_EQ(adder->state().waiting, 0U) << adder->state().message;
  EXPECT_FALSE(adder->release(window(), "R. Quill"));
  EXPECT_TRUE(adder->verify()->holds());

  auto releaser = Archive::open(as("release"), place.options("releaser"));
  ASSERT_TRUE(releaser) << releaser.error().text();
  const auto released = releaser->release(window(), "R. Quill");
  ASSERT_TRUE(released) << released.error().text();
  EXPECT_EQ(reader->releasedWindows()->size(), 1U);
  // What it may not add stays here, and the state says why.
  const auto added = releaser->add(madeUpRuns(20, 1));
  ASSERT_TRUE(added) << added.error().text();
  EXPECT_EQ(releaser->state().waiting, 1U);
  EXPECT_THAT(releaser->state().message, HasSubstr("refuses"));

  EXPECT_EQ(
      place.value("select string_agg(privilege_type, ' ' order by privilege_type) from "
                  "information_schema.role_table_grants where grantee = 'ovenwright_add' and table_name = 'record'"),
      "INSERT");
}

/// Statements that change or take away what is kept.
const std::vector<const char*> kTampering{"update record set digest = 'x'",
                                          "delete from record",
                                          "update run set verdict = 'pass'",
                                          "delete from run",
                                          "update content set size = 1",
                                          "delete from content",
                                          "delete from superseded",
                                          "update repeated set of_number = 1",
                                          "delete from repeated",
                                          "update search set words = ''",
                                          "delete from search",
                                          "update released_window set released_by = 'x'",
                                          "delete from released_window",
                                          "update note set printed_by = 'x'",
                                          "delete from note",
                                          "update chain set id = 'x'",
                                          "delete from chain"};

/// Fills an archive with a row in every table that is kept.
void fill(Archive& archive) {
  const auto added = archive.add(madeUpRuns(1, 2));
  ASSERT_TRUE(added) << added.error().text();
  auto again = madeUpRun(1);
  again.judgedFrom = added->front().id;
  ASSERT_TRUE(archive.add({&again, 1}));
  ASSERT_TRUE(archive.notePrinted(std::vector{added->front().id}, "R. Quill"));
  ASSERT_TRUE(archive.release(window(), "R. Quill"));
  const TestPlace other{TestPlace::Kind::kFile};
  auto second = other.open("station B");
  ASSERT_TRUE(second.add(madeUpRuns(1, 1)));  // the same log once more
  ASSERT_TRUE(second.moveTo(archive));
}

TEST(Roles, OfNobodyChangeWhatAFileKeeps) {
  const TestPlace place{TestPlace::Kind::kFile};
  auto archive = place.open();
  fill(archive);
  const auto other = Database::openFile(place.where(), Database::Mode::kReadWrite, 1000);
  ASSERT_TRUE(other) << other.error().text();
  for (const char* sql : kTampering) {
    const auto error = (*other)->execute(QLatin1String(sql));
    ASSERT_TRUE(error) << sql;
    EXPECT_THAT(error->message, HasSubstr("nothing that it keeps")) << sql;
  }
  EXPECT_TRUE((*other)->execute(QStringLiteral("update chain set count = 1")));
  EXPECT_TRUE(archive.verify()->holds());
}

TEST(Roles, ThatAddChangeNothingThatAServerKeeps) {
  const TestPlace place{TestPlace::Kind::kServer};
  auto archive = place.open();
  fill(archive);
  place.execute(contents(OVENWRIGHT_SOURCE "/resources/archive/roles.sql"));
  for (const char* role : {"read", "add", "release"}) {
    const std::string user = std::string{"ow_test_"} + role;
    place.execute("do $$ begin create role " + user + " login in role ovenwright_" + role +
                  "; exception when duplicate_object then null; end $$");
    std::string url = place.where();
    url.replace(url.find("ow@"), 3, user + "@");
    auto trouble = Trouble::kNone;
    const auto other = Database::openServer(url, {}, trouble);
    ASSERT_TRUE(other) << other.error().text();
    for (const char* sql : kTampering) {
      EXPECT_TRUE((*other)->execute(QLatin1String(sql))) << role << ": " << sql;
      EXPECT_EQ((*other)->trouble(), Trouble::kRefused) << role << ": " << sql;
    }
  }
  EXPECT_TRUE(archive.verify()->holds());
}

TEST(Roles, WithoutAPasswordAreNamed) {
  const TestPlace place{TestPlace::Kind::kServer};
  std::string url = place.where();
  url.replace(url.find("ow@"), 3, "nobody_here@");
  const auto archive = Archive::open(url, place.options());
  ASSERT_FALSE(archive);
  EXPECT_THAT(archive.error().message, HasSubstr("refuses"));
  EXPECT_THAT(archive.error().message, HasSubstr("nobody_here"));
}

TEST(Roles, OfAFileAreTheFileSystems) {
  if (::geteuid() != 0) GTEST_SKIP() << "only root may give a file to another group";
  const TestPlace place{TestPlace::Kind::kFile};
  { ASSERT_TRUE(place.open().add(madeUpRuns(1, 2))); }
  ASSERT_EQ(Child({OVENWRIGHT_SOURCE "/resources/archive/roles_of_a_file", place.where(), "users"}).wait(), 0);
  const auto as = [&](const std::string& group, std::vector<std::string> command) {
    std::vector<std::string> whole{"setpriv", "--reuid=nobody", "--regid=" + group, "--clear-groups", "--"};
    whole.insert(whole.end(), command.begin(), command.end());
    return linesOf(whole).at(0);
  };
  const std::string writer = OVENWRIGHT_ARCHIVE_WRITER;
  EXPECT_THAT(as("users", {writer, "add", place.where(), "", "m", "10", "1", "1"}), HasSubstr("kept "));
  EXPECT_THAT(as("nogroup", {writer, "add", place.where(), "", "m", "20", "1", "1"}), HasSubstr("cannot be written"));
  EXPECT_EQ(as("nogroup", {writer, "verify", place.where()}), "holds 3");
}

}  // namespace
}  // namespace ovenwright::archive
