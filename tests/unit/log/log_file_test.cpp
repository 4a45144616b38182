#include "core/log/log_file.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <string>

namespace ovenwright::log {
namespace {

/// A file with these bytes, gone behind the test.
class TemporaryFile {
 public:
  explicit TemporaryFile(const std::string& bytes)
      : path_(std::filesystem::path(testing::TempDir()) /
              ("ovenwright_" + std::string(testing::UnitTest::GetInstance()->current_test_info()->name()) + ".csv")) {
    std::ofstream(path_, std::ios::binary) << bytes;
  }
  TemporaryFile(const TemporaryFile&) = delete;
  TemporaryFile& operator=(const TemporaryFile&) = delete;
  ~TemporaryFile() { std::filesystem::remove(path_); }
  const std::filesystem::path& path() const { return path_; }

 private:
  std::filesystem::path path_;
};

// An instrument begins its file anew while it is read: what was there is read to its end. As a mapped file it would end
// the program with SIGBUS.
TEST(LogBytes, StandWhereTheFileIsCutShortMeanwhile) {
  const std::string text(1'000'000, 'x');
  const TemporaryFile file(text);
  const auto bytes = LogBytes::open(file.path().string());
  ASSERT_TRUE(bytes) << bytes.error().text();
  std::filesystem::resize_file(file.path(), 0);
  EXPECT_TRUE((*bytes)->bytes() == text);
}

TEST(LogBytes, OfAnEmptyFileAreNone) {
  const TemporaryFile file("");
  const auto bytes = LogBytes::open(file.path().string());
  ASSERT_TRUE(bytes) << bytes.error().text();
  EXPECT_TRUE((*bytes)->bytes().empty());
}

TEST(LogBytes, AreTheSameOnBothSidesOfTheSizeFromWhichAFileIsMapped) {
  for (const std::size_t size : {LogBytes::kMostCopied, LogBytes::kMostCopied + 1}) {
    std::string text(size, 'y');
    text.back() = 'z';
    const TemporaryFile file(text);
    const auto bytes = LogBytes::open(file.path().string());
    ASSERT_TRUE(bytes) << bytes.error().text();
    EXPECT_TRUE((*bytes)->bytes() == text) << size;
  }
}

}  // namespace
}  // namespace ovenwright::log
