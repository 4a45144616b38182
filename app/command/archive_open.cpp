#include "app/command/archive_open.h"

#include <QCoreApplication>
#include <algorithm>
#include <chrono>
#include <clocale>
#include <cstdio>

#include "app/command/output.h"

namespace ovenwright::command {
namespace {

void need_application() {
  if (QCoreApplication::instance() != nullptr) return;  // `sheet` has one that draws
  static int count = 1;
  static char name[] = "ovenwright";
  static char* arguments[] = {name, nullptr};
  static const QCoreApplication application(count, arguments);
  // What drivers print when a server goes away; the errors of the archive say it.
  qInstallMessageHandler([](QtMsgType, const QMessageLogContext&, const QString&) {});
  std::setlocale(LC_ALL, "C");  // Qt takes the user's locale; files and JSON are written in this one
}

}  // namespace

Result<archive::Archive> open_archive(const std::optional<std::string>& where, archive::Access access) {
  need_application();
  archive::Options options;
  options.access = access;
  return archive::Archive::open(where.value_or(archive::defaultArchive()), options);
}

Result<std::string> one_id(archive::Archive& archive, const std::string& id_or_digest) {
  auto ids = archive.idsOf(id_or_digest);
  if (!ids) return ids.error();
  if (ids->size() == 1) return std::move(ids->front());
  constexpr std::size_t kMostNamed = 10;
  std::string names;
  for (std::size_t i = 0; i < std::min(ids->size(), kMostNamed); ++i) names += (i == 0 ? "" : ", ") + (*ids)[i];
  if (ids->size() > kMostNamed) names += ", …";
  return Error{ErrorCode::kBadArgument,
               "the digest " + id_or_digest + " is of " + std::to_string(ids->size()) + " records: " + names,
               {archive.state().where, 0, 0},
               id_or_digest,
               "an id"};
}

void report_waiting(archive::Archive& archive) {
  const auto state = archive.state();
  for (const auto& one : archive.takeRepeated()) {
    report_error({ErrorCode::kIo,
                  one.id + " is of a log that " + one.station + " had kept already with the same judgement, as " +
                      one.of + " in lot " + one.lot + ": lists show that record",
                  {state.where, 0, 0},
                  "",
                  ""});
  }
  if (state.waiting == 0) return;
  report_error({ErrorCode::kIo,
                std::to_string(state.waiting) + (state.waiting == 1 ? " record waits" : " records wait") +
                    " in the outbox" + (state.message.empty() ? "" : ": " + state.message),
                {state.where, 0, 0},
                "",
                ""});
}

std::function<bool(double)> told_progress(const Common& common, const std::string& what) {
  if (common.quiet) return {};
  using Clock = std::chrono::steady_clock;
  return [what, last = Clock::now()](double done) mutable {
    if (Clock::now() - last < std::chrono::seconds{1}) return true;
    last = Clock::now();
    const std::string line = what + " " + std::to_string(static_cast<int>(100 * done)) + " %\n";
    std::fwrite(line.data(), 1, line.size(), stderr);
    return true;
  };
}

}  // namespace ovenwright::command
