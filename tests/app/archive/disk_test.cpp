// Disks that are full or cannot be written: one clear error, nothing half-written.
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/stat.h>

#include <QByteArray>
#include <cctype>
#include <filesystem>
#include <random>
#include <string>

#include "app/archive/archive.h"
#include "core/files/digest.h"
#include "tests/app/archive/child.h"
#include "tests/app/archive/place.h"
#include "tests/app/archive/runs.h"

namespace ovenwright::archive {
namespace {

namespace fs = std::filesystem;
using testing::HasSubstr;

/// What was printed as kept is kept, and no more than what was written whole.
void expectWhole(const TestPlace& place, const std::vector<std::string>& lines) {
  auto archive = place.open();
  const auto found = archive.verify();
  ASSERT_TRUE(found) << found.error().text();
  EXPECT_TRUE(found->holds()) << found->firstBad << ": " << found->reason;
  std::size_t kept = 0;
  for (const auto& line : lines) {
    if (!line.starts_with("kept ")) continue;
    ++kept;
    EXPECT_TRUE(archive.load(line.substr(5)));
  }
  EXPECT_EQ(found->records, kept);
}

TEST(Disk, ThatIsFullIsNamedAndNothingIsHalfWritten) {
  // A limit on the size of files stands for a full disk. The shell counts it in kB.
  for (const int limit_kB : {8, 100, 200, 400, 1000}) {
    const TestPlace place{TestPlace::Kind::kFile};
    const auto options = place.options();
    const auto lines =
        linesOf({"bash", "-c", "trap '' XFSZ; ulimit -f \"$0\"; exec \"$@\"", std::to_string(limit_kB),
                 OVENWRIGHT_ARCHIVE_WRITER, "add", place.where(), options.outbox, options.machine, "1", "5000", "10"});
    ASSERT_FALSE(lines.empty());
    EXPECT_THAT(lines.back(), HasSubstr("error: ")) << limit_kB;
    EXPECT_THAT(lines.back(), HasSubstr(place.where())) << limit_kB;
    expectWhole(place, lines);
  }
}

TEST(Disk, ThatCannotBeWrittenIsNamedAndCanBeRead) {
  const TestPlace place{TestPlace::Kind::kFile};
  { ASSERT_TRUE(place.open().add(madeUpRuns(1, 3))); }
  const auto options = place.options();
  fs::permissions(place.where(), fs::perms::owner_read | fs::perms::group_read | fs::perms::others_read);
  fs::permissions(place.folder(),
                  fs::perms::owner_read | fs::perms::owner_exec | fs::perms::others_read | fs::perms::others_exec);
  const auto lines = linesOf(withoutPrivileges(
      {OVENWRIGHT_ARCHIVE_WRITER, "add", place.where(), options.outbox, options.machine, "10", "1", "1"}));
  ASSERT_EQ(lines.size(), 1U);
  EXPECT_THAT(lines[0], HasSubstr("cannot be written"));
  const auto read = linesOf(withoutPrivileges({OVENWRIGHT_ARCHIVE_WRITER, "verify", place.where()}));
  ASSERT_EQ(read.size(), 1U);
  EXPECT_EQ(read[0], "holds 3");
  fs::permissions(place.folder(), fs::perms::owner_all);
}

TEST(Disk, OfARunIsAtMostItsGzippedLogAndEightKilobytes) {
  const TestPlace place{TestPlace::Kind::kFile};
  auto archive = place.open();
  const auto demo = demoRuns({"QM-2201", "0007", "R. Quill", std::nullopt}).front();
  std::mt19937 random{1};
  std::size_t gzipped = 0;
  const auto add = [&](int count) {
    std::vector<NewRun> runs(static_cast<std::size_t>(count), demo);
    for (auto& run : runs) {
      // Some last digits are others, so that each log packs by itself as a log of its own.
      std::string bytes = *demo.log.bytes;
      for (std::size_t i = bytes.find("\n0"); i + 1 < bytes.size(); ++i) {
        const bool last =
            std::isdigit(static_cast<unsigned char>(bytes[i])) && (bytes[i + 1] == ';' || bytes[i + 1] == '\n');
        if (last && random() % 8 == 0) bytes[i] = static_cast<char>('0' + random() % 10);
      }
      // zlib at its highest level; gzip's header and trailer are 18 bytes, those of zlib 6, and Qt adds 4.
      gzipped += static_cast<std::size_t>(qCompress(QByteArray::fromStdString(bytes), 9).size()) + 8;
      run.log.sha256 = files::sha256_hex(bytes);
      run.log.bytes = std::make_shared<const std::string>(std::move(bytes));
    }
    const auto added = archive.add(runs);
    ASSERT_TRUE(added) << added.error().text();
  };
  const auto bytes = [&] {
    return std::stoull(place.value("select page_count * page_size from pragma_page_count, pragma_page_size"));
  };
  add(20);  // what every archive needs once is not a run's
  gzipped = 0;
  const auto before = bytes();
  add(100);
  const std::size_t perRun = (bytes() - before) / 100, log = gzipped / 100;
  EXPECT_LE(perRun, log + 8 * 1024) << "log " << demo.log.bytes->size() << ", gzipped " << log << ", report "
                                    << demo.report.size() << ", text " << demo.text.size();
  RecordProperty("bytes_per_run", static_cast<int>(perRun));
  RecordProperty("gzipped_log", static_cast<int>(log));
}

}  // namespace
}  // namespace ovenwright::archive
