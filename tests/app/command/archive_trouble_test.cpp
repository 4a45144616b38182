// The command where an archive cannot be written, and where its server is away.
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <stdlib.h>

#include <fstream>
#include <nlohmann/json.hpp>

#include "tests/app/archive/place.h"
#include "tests/command/process.h"

namespace ovenwright {
namespace {

using Json = nlohmann::json;
using testing::HasSubstr;

/// A folder of logs and the rules that judge them.
class ArchiveTrouble : public testing::Test {
 protected:
  void SetUp() override {
    std::ofstream(folder_.path("QM-1.csv"))
        << std::ifstream(std::string{OVENWRIGHT_TEST_DATA} + "/command/passes.csv").rdbuf();
    std::ofstream(folder_.path("rules.toml"))
        << "[[rule]]\nfiles = \"QM-*.csv\"\nlot = \"QM-1\"\nwindow = \"sac305\"\n";
  }
  Finished watch(const std::string& archive) {
    return ovenwright_program(
        {"watch", folder_.path(), "--rules", folder_.path("rules.toml"), "--archive", archive, "--once"});
  }
  Folder folder_;
};

TEST_F(ArchiveTrouble, WatchOnceEndsWhereTheArchiveTakesNothing) {
  const TestPlace place{TestPlace::Kind::kFile};
  { place.open(); }
  place.execute("create trigger refuses before insert on record begin select raise(abort, 'no room'); end");
  const auto watched = watch(place.where());
  EXPECT_EQ(watched.status, 4);
  EXPECT_THAT(watched.err, HasSubstr(place.where()));
  EXPECT_THAT(watched.err, HasSubstr("no room"));
  EXPECT_THAT(Json::parse(watched.out)["error"]["message"].get<std::string>(), HasSubstr("no room"));
  place.execute("drop trigger refuses");
  EXPECT_EQ(watch(place.where()).status, 0);
  EXPECT_EQ(watch(place.folder() + "/no/such/folder.sqlite").status, 4);
}

TEST_F(ArchiveTrouble, ListGivesTheOutboxWhileTheServerIsAway) {
  ::setenv("OVENWRIGHT_TEST_DATA_HOME", folder_.path().c_str(), 1);  // where the outbox is
  const std::string nowhere = "postgresql://ow@/nothing?host=/nonexistent";
  const auto list = [&](const std::string& format) {
    return ovenwright_program({"archive", "list", "--archive", nowhere, "--format", format});
  };
  const auto none = list("text");  // no outbox yet
  EXPECT_EQ(none.status, 3);
  EXPECT_EQ(none.out, "");
  const auto added =
      ovenwright_program({"archive", "add", folder_.path("QM-1.csv"), "--lot", "QM-1", "--archive", nowhere});
  EXPECT_EQ(added.status, 0) << added.err;
  EXPECT_THAT(added.err, HasSubstr("1 record waits in the outbox"));
  const auto listed = list("text");
  EXPECT_EQ(listed.status, 3);
  EXPECT_THAT(listed.err, HasSubstr("listed is what waits in the outbox of this machine alone"));
  EXPECT_THAT(listed.out, HasSubstr("QM-1"));
  const auto json = Json::parse(list("json").out);
  EXPECT_EQ(json["total"], 1);
  EXPECT_THAT(json["errors"][0]["message"].get<std::string>(), HasSubstr("waits in the outbox"));
  ::unsetenv("OVENWRIGHT_TEST_DATA_HOME");
}

}  // namespace
}  // namespace ovenwright
