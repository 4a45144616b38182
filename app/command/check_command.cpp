#include <algorithm>
#include <string>
#include <vector>

#include "app/command/commands.h"
#include "app/command/inputs.h"
#include "app/command/output.h"
#include "core/check/check.h"
#include "core/report/json.h"
#include "core/report/text.h"
#include "core/units/parallel.h"

namespace ovenwright::command {
namespace {

/// What is kept of a log once it is judged: its lines, not its samples.
struct Answer {
  std::vector<std::string> json, text;
  std::vector<report::OverviewLine> overview;
  std::optional<Error> error;
};

Answer answer(const std::string& log, const check::Request& request, const CheckOptions& options) {
  Answer answer;
  const auto checked = check::check(log, request);
  if (!checked) {
    answer.error = checked.error();
    if (answer.error->where.file.empty()) answer.error->where.file = log;
    return answer;
  }
  const bool several = options.logs.size() > 1 || checked->runs.size() > 1;
  const auto detail = options.common.quiet ? report::Detail::kSentence
                      : several            ? report::Detail::kOutside
                                           : report::Detail::kAll;
  for (const auto& run : checked->runs) {
    answer.overview.push_back(report::overview_line(checked->reading, run));
    if (options.common.format == Format::kJson) {
      answer.json.push_back(report::check_run_json(checked->reading, run, request));
    } else {
      answer.text.push_back(report::check_run_text(checked->reading, run, request, detail));
    }
  }
  return answer;
}

/// Judges every log, on all cores where there are several; the answers stand in the order of the logs.
std::vector<Answer> answers(check::Request& request, const CheckOptions& options) {
  std::vector<Answer> all(options.logs.size());
  if (all_cores() > 1 && all.size() > 1) request.log.threads = 1;
  for_each_index(all.size(), all_cores(), [&](std::size_t i) { all[i] = answer(options.logs[i], request, options); });
  return all;
}

std::string in_text(const std::vector<Answer>& answers, const CheckOptions& options) {
  std::vector<report::OverviewLine> overview;
  std::string sections;
  std::size_t unread = 0;
  for (const auto& answer : answers) {
    unread += answer.error ? 1 : 0;
    for (std::size_t i = 0; i < answer.text.size(); ++i) {
      overview.push_back(answer.overview[i]);
      const std::string& name = answer.overview[i].name;
      sections += options.common.quiet ? name + ": " + answer.text[i] : "\n" + name + "\n" + answer.text[i];
    }
  }
  if (options.logs.size() == 1 && overview.size() <= 1) return overview.empty() ? "" : answers.front().text.front();
  return report::overview_text(overview, unread) + (options.common.quiet ? "\n" : "") + sections;
}

}  // namespace

ExitStatus run(const CheckOptions& options) {
  if (output_is_a_log(options.common, options.logs)) return ExitStatus::kUsage;
  if (options.common.output &&
      output_is_an_input({&*options.common.output, 1}, profiles_named(options.windows, options.log)))
    return ExitStatus::kUsage;
  const bool json = options.common.format == Format::kJson;
  check::Request request;
  auto error = read_windows(options.windows, request);
  if (!error) error = read_inputs(options.log, request);
  if (error) {
    report_error(*error);
    if (!json) return ExitStatus::kUnreadable;
    return write_output(options.common, report::check_json({}, std::vector{*error}), ExitStatus::kUnreadable);
  }

  const auto all = answers(request, options);
  std::vector<std::string> runs;
  std::vector<Error> errors;
  auto worst = judge::Verdict::kPass;
  for (const auto& answer : all) {
    if (answer.error) errors.push_back(*answer.error);
    runs.insert(runs.end(), answer.json.begin(), answer.json.end());
    for (const auto& line : answer.overview) worst = std::max(worst, line.verdict);
  }
  for (const auto& each : errors) report_error(each);
  const auto status = errors.empty() ? exit_status(worst) : ExitStatus::kUnreadable;
  const std::string output = json ? report::check_json(runs, errors) : in_text(all, options);
  return output.empty() ? status : write_output(options.common, output, status);
}

}  // namespace ovenwright::command
