#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <random>

#include "core/log/grid.h"
#include "tests/unit/log/archive_builder.h"

namespace ovenwright::log {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

constexpr std::size_t kMost = std::size_t{1} << 30;
const std::string kLog = "time,TC1,TC2\n0,25.0,25.1\n0.5,25.2,25.3\n1.0,25.4,25.5\n";

Result<Content> opened(const std::string& bytes, std::vector<std::string>& notes, std::size_t most = kMost) {
  return open_container("a.bin", bytes, most, notes);
}

struct Opened {
  Result<Content> content;
  std::vector<std::string> notes;
};
Opened opened(const std::string& bytes, std::size_t most = kMost) {
  std::vector<std::string> notes;
  auto content = opened(bytes, notes, most);
  return {std::move(content), std::move(notes)};
}

TEST(Container, LeavesPlainTextWhereItIs) {
  for (const auto& text : {kLog, std::string{}, std::string{"<5 readings\n1,2\n"}, std::string{"PK,1\n2,3\n"}}) {
    const auto result = opened(text);
    ASSERT_TRUE(result.content) << result.content.error().message;
    EXPECT_EQ(result.content->kind, "text");
    EXPECT_TRUE(result.content->plain);
    EXPECT_THAT(result.content->bytes, IsEmpty());
  }
}

TEST(Container, OpensGzip) {
  const auto result = opened(gzip_of(kLog));
  ASSERT_TRUE(result.content) << result.content.error().message;
  EXPECT_EQ(result.content->kind, "text");
  EXPECT_FALSE(result.content->plain);
  EXPECT_EQ(result.content->bytes, kLog);
}

TEST(Container, OpensGzipOfSeveralMembersAndNotesWhatStandsBehind) {
  const auto result = opened(gzip_of("a,b\n") + gzip_of("1,2\n") + "tail");
  ASSERT_TRUE(result.content) << result.content.error().message;
  EXPECT_EQ(result.content->bytes, "a,b\n1,2\n");
  EXPECT_THAT(result.notes, ElementsAre("4 bytes behind the gzip data were not read"));
}

TEST(Container, OpensTheMemberOfAZipThatLooksMostLikeALog) {
  std::string prose = "Board 7 ran on 12 March 2031 at 9 o'clock.\n";
  const auto bytes = zip_of({{"__MACOSX/log.csv", kLog + kLog},
                             {"readme.txt", prose},
                             {"data/log.csv", kLog},
                             {"x.png", "\x89PNG\r\n\x1A\n"}});
  const auto result = opened(bytes);
  ASSERT_TRUE(result.content) << result.content.error().message;
  EXPECT_EQ(result.content->member, "data/log.csv");
  EXPECT_EQ(result.content->bytes, kLog);
  EXPECT_THAT(result.notes, ElementsAre("the archive holds data/log.csv and also readme.txt, x.png, not read"));
}

TEST(Container, OpensArchivesInArchives) {
  const auto result = opened(zip_of({{"a.gz", gzip_of(zip_of({{"log.csv", kLog}}))}}));
  ASSERT_TRUE(result.content) << result.content.error().message;
  EXPECT_EQ(result.content->member, "a.gz/log.csv");
  EXPECT_EQ(result.content->bytes, kLog);
}

TEST(Container, RefusesNestsThatAreTooDeep) {
  auto bytes = gzip_of(kLog);
  for (int i = 0; i < 10; ++i) bytes = gzip_of(bytes);
  const auto result = opened(bytes);
  ASSERT_FALSE(result.content);
  EXPECT_EQ(result.content.error().code, ErrorCode::kParse);
}

TEST(Container, NamesAnEncryptedMember) {
  const auto result = opened(zip_of({{"log.csv", kLog}}, "secret"));
  ASSERT_FALSE(result.content);
  EXPECT_EQ(result.content.error().code, ErrorCode::kParse);
  EXPECT_EQ(result.content.error().where.file, "a.bin");
  EXPECT_THAT(result.content.error().message,
              HasSubstr("\"log.csv\" in the zip archive cannot be unpacked: it is encrypted"));
}

TEST(Container, RefusesAZipWithoutLogs) {
  for (const auto& bytes : {zip_of({{"x.png", "\x89PNG\r\n\x1A\n"}}), zip_of({{"folder/", ""}})}) {
    const auto result = opened(bytes);
    ASSERT_FALSE(result.content);
    EXPECT_THAT(result.content.error().message, HasSubstr("expected a zip archive with a log in it"));
  }
}

TEST(Container, RefusesMoreUnpackedBytesThanAllowed) {
  const std::string text(100'000, '1');
  for (const auto& bytes : {gzip_of(text), zip_of({{"log.csv", text}})}) {
    EXPECT_TRUE(opened(bytes, 300'000).content);
    const auto result = opened(bytes, 99'999);
    ASSERT_FALSE(result.content);
    EXPECT_THAT(result.content.error().message, HasSubstr("unpacks to too much"));
  }
}

TEST(Container, RefusesABombWhateverIsAllowed) {
  const auto bomb = gzip_of(std::string(std::size_t{100} << 20, '0'));  // packs to a thousandth
  for (const auto& bytes : {bomb, gzip_of(bomb), zip_of({{"a.gz", bomb}})}) {
    const auto result = opened(bytes);
    ASSERT_FALSE(result.content);
    EXPECT_THAT(result.content.error().message, HasSubstr("expected at most 64 MiB for a file of this size"));
  }
}

// Every truncation and many single damaged bytes give an error or content, and never a crash.
TEST(Container, SurvivesDamage) {
  std::string numbers = kLog;
  for (int i = 0; i < 40; ++i) numbers += std::to_string(i) + ",25." + std::to_string(i * i) + ",26\n";
  for (const auto& whole : {gzip_of(numbers), zip_of({{"log.csv", numbers}, {"b.csv", kLog}})}) {
    for (std::size_t size = 0; size < whole.size(); ++size) {
      const auto result = opened(whole.substr(0, size));
      EXPECT_TRUE(size <= 4 || !result.content) << size;
    }
    std::mt19937 random{7};
    for (int i = 0; i < 500; ++i) {
      auto damaged = whole;
      damaged[random() % damaged.size()] = static_cast<char>(random());
      const auto result = opened(damaged);
      EXPECT_TRUE(result.content || !result.content.error().message.empty());
    }
  }
}

}  // namespace
}  // namespace ovenwright::log
