#include "core/run/large_pages.h"

#include <gtest/gtest.h>
#include <sys/mman.h>
#include <unistd.h>

#include <cstdint>
#include <vector>

namespace ovenwright::run {
namespace {

constexpr std::size_t kRows = std::size_t{1} << 20;

/// The pages within the array's room that are in memory. Source: mincore(2).
std::size_t resident_pages(const std::vector<double>& array) {
  const auto page = static_cast<std::uintptr_t>(::sysconf(_SC_PAGESIZE));
  const auto begin = (reinterpret_cast<std::uintptr_t>(array.data()) / page + 1) * page;
  const auto end = reinterpret_cast<std::uintptr_t>(array.data() + array.capacity()) / page * page;
  std::vector<unsigned char> there((end - begin) / page);
  EXPECT_EQ(::mincore(reinterpret_cast<void*>(begin), end - begin, there.data()), 0);
  std::size_t resident = 0;
  for (const unsigned char one : there) resident += one & 1U;
  return resident;
}

TEST(PagesAhead, ClearNothingMoreOnceTheyHaveStopped) {
  std::vector<double> cleared, left;
  cleared.reserve(kRows);
  left.reserve(kRows);
  PagesAhead pages({&cleared});
  pages.before_row(kRows);
  if (resident_pages(cleared) < kRows * sizeof(double) / 8192) GTEST_SKIP() << "the system does not clear pages ahead";
  PagesAhead stopped({&left});
  const std::size_t before = resident_pages(left);
  stopped.stop();
  stopped.before_row(kRows);
  EXPECT_EQ(resident_pages(left), before);
}

}  // namespace
}  // namespace ovenwright::run
