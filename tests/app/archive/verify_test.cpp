// What verify() says of records that were changed, taken away or added behind the program's back.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "app/archive/archive.h"
#include "tests/app/archive/place.h"
#include "tests/app/archive/runs.h"

namespace ovenwright::archive {
namespace {

using testing::HasSubstr;

struct Tampering {
  const char* name;
  std::vector<const char*> statements;  ///< on an archive of one chain with five records
  int firstBad;                         ///< its number
  const char* reason;
};
void PrintTo(const Tampering& tampering, std::ostream* os) { *os << tampering.name; }

class Tampered : public testing::TestWithParam<std::tuple<TestPlace::Kind, Tampering>> {
 protected:
  TestPlace place{std::get<0>(GetParam())};
};

TEST_P(Tampered, IsFoundAndTheFirstNamed) {
  {
    auto archive = place.open();
    ASSERT_TRUE(archive.add(madeUpRuns(1, 5)));
    ASSERT_TRUE(archive.verify()->holds());
  }
  const auto& tampering = std::get<1>(GetParam());
  place.unlock();
  for (const char* sql : tampering.statements) place.execute(sql);
  auto archive = place.open();
  const auto found = archive.verify();
  ASSERT_TRUE(found) << found.error().text();
  EXPECT_FALSE(found->holds());
  EXPECT_THAT(found->firstBad, testing::EndsWith("-" + std::to_string(tampering.firstBad)));
  EXPECT_THAT(found->reason, HasSubstr(tampering.reason));
}

INSTANTIATE_TEST_SUITE_P(
    Archive, Tampered,
    testing::Combine(
        testing::Values(TestPlace::Kind::kFile, TestPlace::Kind::kServer),
        testing::Values(
            Tampering{"list", {"update run set lot = 'QM-1' where number = 2"}, 2, "lists say something else"},
            Tampering{"superseded",
                      {"insert into superseded(chain, number) select chain, number from run where number = 3"},
                      3,
                      "which judgement is the last"},
            Tampering{"verdict", {"update run set verdict = 'pass' where number = 4"}, 4, "lists say something else"},
            Tampering{"words", {"update search set words = 'x' where number = 1"}, 1, "lists say something else"},
            Tampering{"digest",
                      {"update record set digest = (select digest from record where number = 1) where number = 2"},
                      2,
                      "was changed"},
            Tampering{"exchanged",
                      {"update record set packed = (select packed from record where number = 1), digest = (select "
                       "digest from record where number = 1) where number = 3"},
                      3,
                      "was changed"},
            Tampering{"missing",
                      {"delete from search where number = 3", "delete from run where number = 3",
                       "delete from record where number = 3"},
                      3,
                      "missing"},
            Tampering{"first",
                      {"delete from search where number = 1", "delete from run where number = 1",
                       "delete from record where number = 1"},
                      1,
                      "missing"},
            Tampering{"tail",
                      {"delete from search where number >= 4", "delete from run where number >= 4",
                       "delete from record where number >= 4"},
                      4,
                      "missing"},
            Tampering{"unlisted", {"delete from run where number = 5"}, 5, "missing in the lists"},
            Tampering{"log",
                      {"update content set packed = (select packed from content where sha256 = (select log from "
                       "run where number = 3)) where sha256 = (select log from run where number = 2)"},
                      2,
                      "changed: the log"},
            Tampering{"head", {"update chain set head = (select digest from record where number = 1)"}, 5, "the end"},
            Tampering{"count",
                      {"update chain set count = 3, head = (select digest from record where number = 3)"},
                      4,
                      "behind the end"})),
    [](const auto& at) {
      return std::string{std::get<1>(at.param).name} +
             (std::get<0>(at.param) == TestPlace::Kind::kFile ? "_File" : "_Server");
    });

class Verified : public testing::TestWithParam<TestPlace::Kind> {
 protected:
  TestPlace place{GetParam()};
};
INSTANTIATE_TEST_SUITE_P(Archive, Verified, testing::Values(TestPlace::Kind::kFile, TestPlace::Kind::kServer),
                         [](const auto& at) { return at.param == TestPlace::Kind::kFile ? "File" : "Server"; });

TEST_P(Verified, ShowsACutTailAgainstPaper) {
  std::string head;
  {
    auto archive = place.open();
    ASSERT_TRUE(archive.add(madeUpRuns(1, 5)));
    const auto heads = archive.heads();
    ASSERT_TRUE(heads) << heads.error().text();
    ASSERT_EQ(heads->size(), 1U);
    EXPECT_EQ(heads->front().count, 5U);
    head = heads->front().digest;
    ASSERT_TRUE(archive.add(madeUpRuns(6, 2)));
    EXPECT_TRUE(archive.verify(head)->holds());  // an older sheet
  }
  place.unlock();
  for (const char* sql : {"delete from search where number >= 5", "delete from run where number >= 5",
                          "delete from record where number >= 5",
                          "update chain set count = 4, head = (select digest from record where number = 4)"})
    place.execute(sql);
  auto archive = place.open();
  EXPECT_TRUE(archive.verify()->holds());
  const auto found = archive.verify(head);
  EXPECT_FALSE(found->holds());
  EXPECT_THAT(found->reason, HasSubstr(head));
}

TEST_P(Verified, StopsWhenAsked) {
  auto archive = place.open();
  ASSERT_TRUE(archive.add(madeUpRuns(1, 5)));
  const auto found = archive.verify(std::nullopt, [](double) { return false; });
  ASSERT_FALSE(found);
  EXPECT_EQ(found.error().code, ErrorCode::kCancelled);
}

}  // namespace
}  // namespace ovenwright::archive
