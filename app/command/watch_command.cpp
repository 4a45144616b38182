#include <chrono>
#include <thread>

#include "app/archive/watch.h"
#include "app/command/archive_open.h"
#include "app/command/archive_print.h"
#include "app/command/commands.h"
#include "app/command/output.h"

namespace ovenwright::command {

ExitStatus run(const WatchOptions& options) {
  const auto fail = [](const Error& error, ExitStatus status) {
    report_error(error);
    return status;
  };
  if (options.common.output && !options.once)
    return fail({ErrorCode::kBadArgument, "-o needs --once: without it there is no end to write at", {}, "", ""},
                ExitStatus::kUsage);
  auto rules = archive::loadWatchRules(options.rules);
  if (!rules) return fail(rules.error(), ExitStatus::kUnreadable);
  auto archive = open_archive(options.archive, archive::Access::kReadWrite);
  if (!archive) return fail(archive.error(), ExitStatus::kUnwritable);
  archive::FolderWatch watch(options.folder, *std::move(rules), *archive);
  Common lines = options.common;
  lines.output.reset();
  std::string held;  // with -o, until the end
  auto status = ExitStatus::kDone;
  std::optional<Error> last_error;
  bool was_away = false;
  for (;;) {
    const auto watched = watch.look();
    if (!watched) return fail(watched.error(), ExitStatus::kUnreadable);
    for (const auto& one : *watched) {
      if (one.error) {
        status = ExitStatus::kUnreadable;
        last_error = one.error;
      }
      const std::string line = watched_json(one);
      if (options.common.output) {
        held += line;
      } else if (const auto printed = write_output(lines, line, ExitStatus::kDone); printed != ExitStatus::kDone) {
        return printed;
      }
    }
    if (options.once && (!watch.isWaiting() || watch.isRefused())) break;
    const auto sent = archive->sendWaiting();  // what waits for a server that is back
    const bool away = !sent || archive->state().kind == archive::State::Kind::kServerAway;
    if (away && !was_away) report_waiting(*archive);
    was_away = away;
    std::this_thread::sleep_for(std::chrono::milliseconds{500});
  }
  report_waiting(*archive);
  if (watch.isRefused() && last_error) status = fail(*last_error, ExitStatus::kUnwritable);
  return options.common.output ? write_output(options.common, held, status) : status;
}

}  // namespace ovenwright::command
