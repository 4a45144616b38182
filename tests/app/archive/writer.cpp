// Adds made-up runs to an archive, or moves one into another, to be killed or starved while it does so. A line is
// printed for each record that is on disk: what a reader of these lines believes must be true.
//   archive_writer add ARCHIVE OUTBOX STATION FROM COUNT AT_ONCE
//   archive_writer move ARCHIVE TO OUTBOX
//   archive_writer verify ARCHIVE
#include <QCoreApplication>
#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <string>

#include "tests/app/archive/runs.h"

namespace {

using namespace ovenwright;

int failed(const Error& error) {
  std::printf("error: %s\n", error.text().c_str());
  return 1;
}

int add(char** arguments) {
  archive::Options options;
  options.outbox = arguments[1];
  options.machine = arguments[2];
  auto opened = archive::Archive::open(arguments[0], options);
  if (!opened) return failed(opened.error());
  const int from = std::atoi(arguments[3]), count = std::atoi(arguments[4]), atOnce = std::atoi(arguments[5]);
  for (int next = from; next < from + count; next += atOnce) {
    const auto added = opened->add(madeUpRuns(next, std::min(atOnce, from + count - next), options.machine));
    if (!added) return failed(added.error());
    for (const auto& one : *added) std::printf("kept %s\n", one.id.c_str());
    std::fflush(stdout);
  }
  return 0;
}

int move(char** arguments) {
  archive::Options options;
  options.outbox = arguments[2];
  auto from = archive::Archive::open(arguments[0]);
  if (!from) return failed(from.error());
  auto to = archive::Archive::open(arguments[1], options);
  if (!to) return failed(to.error());
  std::printf("open\n");
  std::fflush(stdout);
  const auto moved = from->moveTo(*to);
  if (!moved) return failed(moved.error());
  std::printf("moved %zu\n", *moved);
  return 0;
}

int verify(char** arguments) {
  archive::Options options;
  options.access = archive::Access::kReadOnly;
  auto opened = archive::Archive::open(arguments[0], options);
  if (!opened) return failed(opened.error());
  const auto found = opened->verify();
  if (!found) return failed(found.error());
  std::printf("%s %zu\n", found->holds() ? "holds" : found->reason.c_str(), found->records);
  return 0;
}

}  // namespace

int main(int count, char** arguments) {
  const QCoreApplication application(count, arguments);
  const std::string what = count > 1 ? arguments[1] : "";
  if (what == "add" && count == 8) return add(arguments + 2);
  if (what == "move" && count == 5) return move(arguments + 2);
  if (what == "verify" && count == 3) return verify(arguments + 2);
  return 2;
}
