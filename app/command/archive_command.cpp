// archive add, judge and release: what writes.
#include <algorithm>
#include <functional>

#include "app/archive/keep.h"
#include "app/command/archive_open.h"
#include "app/command/archive_print.h"
#include "app/command/commands.h"
#include "app/command/inputs.h"
#include "app/command/output.h"
#include "core/units/parallel.h"

namespace ovenwright::command {
namespace {

/// Prints the lines of an add as they become true: each run's once it is on disk for good.
class AddReport {
 public:
  explicit AddReport(const Common& common) : common_(common) {
    if (json()) write("{\"schema\": \"ovenwright.archive/1\",\n\"added\": [");
  }

  void line(const AddedLine& line) {
    if (!json()) {
      write(added_text(line));
    } else if (line.already) {
      already_ += (already_.empty() ? "\n " : ",\n ") + added_json(line);
    } else {
      write((first_ ? "\n " : ",\n ") + added_json(line));
      first_ = false;
    }
  }
  void error(const Error& error) {
    report_error(error);
    errors_.push_back(error);
  }

  ExitStatus finish(ExitStatus status, const archive::State& state) {
    if (json()) {
      std::string end = first_ ? "]" : "\n]";
      end += ",\n\"already\": [" + already_ + (already_.empty() ? "]" : "\n]");
      if (!errors_.empty()) end += ",\n\"errors\": " + errors_json(errors_);
      if (state.kind != archive::State::Kind::kFile) end += ",\n\"waiting\": " + std::to_string(state.waiting);
      write(end + "}\n");
    }
    if (failed_) return ExitStatus::kUnwritable;
    return common_.output ? write_output(common_, held_, status) : status;
  }

 private:
  bool json() const { return common_.format == Format::kJson; }
  void write(const std::string& text) {
    if (common_.output) {
      held_ += text;
    } else if (!failed_) {
      failed_ = write_output(common_, text, ExitStatus::kDone) != ExitStatus::kDone;
    }
  }

  const Common& common_;
  bool first_ = true, failed_ = false;
  std::string already_, held_;
  std::vector<Error> errors_;
};

using Runs = Result<std::vector<archive::NewRun>>;

/// Does `judge` for numbers 0 to count − 1, on all cores.
std::vector<Runs> on_all_cores(std::size_t count, const std::function<Runs(std::size_t)>& judge) {
  std::vector<Runs> all(count, Runs{std::vector<archive::NewRun>{}});
  for_each_index(count, all_cores(), [&](std::size_t i) { all[i] = judge(i); });
  return all;
}

/// Keeps what was judged, in one transaction, and prints a line for each run. The worst verdict; an archive that cannot
/// be written is an error.
Result<judge::Verdict> keep_all(archive::Archive& archive, const std::vector<archive::NewRun>& runs,
                                const std::vector<std::string>& names, AddReport& report) {
  const auto added = archive.add(runs);
  if (!added) return added.error();
  auto worst = judge::Verdict::kPass;
  for (std::size_t i = 0; i < runs.size(); ++i) {
    worst = std::max(worst, runs[i].verdict);
    report.line({(*added)[i].id, names[i], runs[i].log.sha256, (*added)[i].already, runs[i].verdict, runs[i].margin,
                 runs[i].judgedFrom, archive::runTime(runs[i])});
  }
  return worst;
}

}  // namespace

ExitStatus run(const ArchiveAddOptions& options) {
  const auto fail = [](const Error& error, ExitStatus status) {
    report_error(error);
    return status;
  };
  if (output_is_a_log(options.common, options.logs)) return ExitStatus::kUsage;
  if (options.common.output &&
      output_is_an_input({&*options.common.output, 1}, profiles_named(options.windows, options.log)))
    return ExitStatus::kUsage;
  archive::Labels labels{options.lot, options.serial, options.operator_name, std::nullopt};
  if (options.run_at) {
    const auto moment = archive::parseMoment(*options.run_at);
    if (!moment) return fail(moment.error(), ExitStatus::kUsage);
    labels.runAt = *moment;
  }
  check::Request request;
  auto error = read_windows(options.windows, request);
  if (!error) error = read_inputs(options.log, request);
  if (error) return fail(*error, ExitStatus::kUnreadable);
  if (options.logs.size() > 1) request.log.threads = 1;
  auto archive = open_archive(options.archive, archive::Access::kReadWrite);
  if (!archive) return fail(archive.error(), ExitStatus::kUnwritable);

  constexpr std::size_t kAtOnce = 32;
  AddReport report(options.common);
  auto worst = judge::Verdict::kPass;
  bool unread = false;
  for (std::size_t from = 0; from < options.logs.size(); from += kAtOnce) {
    const std::size_t count = std::min(kAtOnce, options.logs.size() - from);
    const auto judged = on_all_cores(count, [&](std::size_t i) -> Runs {
      const std::string& log = options.logs[from + i];
      const auto checked = check::check(log, request);
      if (!checked) {
        Error unreadable = checked.error();
        if (unreadable.where.file.empty()) unreadable.where.file = log;
        return unreadable;
      }
      return archive::keep(log, request, *checked, labels);
    });
    std::vector<archive::NewRun> runs;
    std::vector<std::string> names;
    for (std::size_t i = 0; i < count; ++i) {
      if (!judged[i]) {
        report.error(judged[i].error());
        unread = true;
        continue;
      }
      runs.insert(runs.end(), judged[i]->begin(), judged[i]->end());
      names.insert(names.end(), judged[i]->size(), options.logs[from + i]);
    }
    const auto kept = keep_all(*archive, runs, names, report);
    if (!kept) {
      report.error(kept.error());
      return report.finish(ExitStatus::kUnwritable, archive->state());
    }
    worst = std::max(worst, *kept);
  }
  report_waiting(*archive);
  return report.finish(unread ? ExitStatus::kUnreadable : exit_status(worst), archive->state());
}

ExitStatus run(const ArchiveJudgeOptions& options) {
  std::vector<window::ProcessWindow> windows;
  for (const auto& name : options.windows) {
    auto window = window::find(name);
    if (!window) {
      report_error(window.error());
      return ExitStatus::kUnreadable;
    }
    windows.push_back(*std::move(window));
  }
  auto archive = open_archive(options.archive, archive::Access::kReadWrite);
  if (!archive) {
    report_error(archive.error());
    return ExitStatus::kUnwritable;
  }
  AddReport report(options.common);
  auto worst = judge::Verdict::kPass;
  bool unread = false;
  for (const auto& asked : options.ids) {
    const auto id = one_id(*archive, asked);
    const auto run = id ? archive::judgeAgain(*archive, *id, windows) : Result<archive::NewRun>(id.error());
    if (!run) {
      report.error(run.error());
      unread = true;
      continue;
    }
    const auto kept = keep_all(*archive, {*run}, {run->log.name}, report);
    if (!kept) {
      report.error(kept.error());
      return report.finish(ExitStatus::kUnwritable, archive->state());
    }
    worst = std::max(worst, *kept);
  }
  report_waiting(*archive);
  return report.finish(unread ? ExitStatus::kUnreadable : exit_status(worst), archive->state());
}

ExitStatus run(const ArchiveReleaseOptions& options) {
  const auto fail = [](const Error& error, ExitStatus status) {
    report_error(error);
    return status;
  };
  std::vector<archive::NewFile> windows;
  for (const auto& name : options.windows) {
    const auto window = window::find(name);
    if (!window) return fail(window.error(), ExitStatus::kUnreadable);
    windows.push_back(archive::windowFile(*window));
  }
  auto archive =
      open_archive(options.archive, windows.empty() ? archive::Access::kReadOnly : archive::Access::kReadWrite);
  if (!archive) return fail(archive.error(), windows.empty() ? ExitStatus::kUnreadable : ExitStatus::kUnwritable);
  for (const auto& window : windows) {
    if (const auto released = archive->release(window, options.by); !released)
      return fail(released.error(), ExitStatus::kUnwritable);
  }
  const auto released = archive->releasedWindows();
  if (!released) return fail(released.error(), ExitStatus::kUnreadable);
  return write_output(options.common,
                      options.common.format == Format::kJson ? released_json(*released) : released_text(*released),
                      ExitStatus::kDone);
}

}  // namespace ovenwright::command
