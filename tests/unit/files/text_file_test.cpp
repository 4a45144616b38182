#include "core/files/text_file.h"

#include <gtest/gtest.h>
#include <sys/stat.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>

namespace ovenwright::files {
namespace {

namespace fs = std::filesystem;

class TextFile : public testing::Test {
 protected:
  void SetUp() override {
    folder_ = fs::temp_directory_path() / ("ovenwright_text_file_" + std::to_string(::getpid()));
    fs::create_directories(folder_);
  }
  void TearDown() override { fs::remove_all(folder_); }
  std::string path(const char* name) const { return (folder_ / name).string(); }
  std::size_t entries() const {
    return static_cast<std::size_t>(std::distance(fs::directory_iterator{folder_}, fs::directory_iterator{}));
  }
  fs::path folder_;
};

TEST_F(TextFile, WritesAndReadsBack) {
  const std::string bytes = std::string("a\0b\r\n", 5) + "°";
  ASSERT_TRUE(write_file(path("a"), bytes, Existing::kKeep));
  const auto read = read_text(path("a"));
  ASSERT_TRUE(read) << read.error().text();
  EXPECT_EQ(*read, bytes);
  EXPECT_EQ(entries(), 1U);
}

TEST_F(TextFile, ReplacesOnlyWhenAsked) {
  ASSERT_TRUE(write_file(path("a"), "one", Existing::kKeep));
  EXPECT_FALSE(write_file(path("a"), "two", Existing::kKeep));
  EXPECT_EQ(*read_text(path("a")), "one");
  ASSERT_TRUE(write_file(path("a"), "two", Existing::kReplace));
  EXPECT_EQ(*read_text(path("a")), "two");
  EXPECT_EQ(entries(), 1U);
}

TEST_F(TextFile, KeepsTheModeOfWhatItReplaces) {
  ASSERT_TRUE(write_file(path("a"), "one", Existing::kReplace));
  ASSERT_EQ(::chmod(path("a").c_str(), 0640), 0);
  ASSERT_TRUE(write_file(path("a"), "two", Existing::kReplace));
  struct stat status {};
  ASSERT_EQ(::stat(path("a").c_str(), &status), 0);
  EXPECT_EQ(status.st_mode & 07777, 0640U);
}

TEST_F(TextFile, WritesThroughALink) {
  ASSERT_TRUE(write_file(path("a"), "one", Existing::kReplace));
  fs::create_symlink(path("a"), path("link"));
  ASSERT_TRUE(write_file(path("link"), "two", Existing::kReplace));
  EXPECT_TRUE(fs::is_symlink(path("link")));
  EXPECT_EQ(*read_text(path("a")), "two");
}

TEST_F(TextFile, AFailedWriteLeavesNothing) {
  EXPECT_FALSE(write_file(path("missing/a"), "x", Existing::kReplace));
  EXPECT_FALSE(write_file(folder_.string(), "x", Existing::kReplace));
  EXPECT_FALSE(write_file("/dev/full", "x", Existing::kReplace));
  EXPECT_EQ(entries(), 0U);
}

TEST_F(TextFile, NamesWhatCannotBeRead) {
  const auto missing = read_text(path("missing"));
  ASSERT_FALSE(missing);
  EXPECT_EQ(missing.error().code, ErrorCode::kIo);
  EXPECT_EQ(missing.error().where.file, path("missing"));
  const auto folder = read_text(folder_.string());
  ASSERT_FALSE(folder);
  EXPECT_EQ(folder.error().expected, "a file");
  ASSERT_EQ(::mkfifo(path("pipe").c_str(), 0600), 0);
  const auto pipe = read_text(path("pipe"));
  ASSERT_FALSE(pipe);
  EXPECT_EQ(pipe.error().found, "a pipe");
  std::ofstream{path("long")} << std::string(5'000'000, 'x');
  EXPECT_FALSE(read_text(path("long")));
}

}  // namespace
}  // namespace ovenwright::files
