#include "app/command/output.h"

#include <algorithm>
#include <cerrno>
#include <cstdio>
#include <filesystem>
#include <string>
#include <system_error>

#include "core/files/text_file.h"
#include "core/report/json.h"

namespace ovenwright::command {
namespace {

bool same_file(const std::string& a, const std::string& b) {
  std::error_code failed;
  return std::filesystem::equivalent(a, b, failed);
}

}  // namespace

ExitStatus write_output(const Common& common, std::string_view text, ExitStatus status) {
  if (common.output) {
    const auto written = files::write_file(*common.output, text, files::Existing::kReplace);
    if (written) return status;
    report_error(written.error());
    return ExitStatus::kUnwritable;
  }
  const bool written = std::fwrite(text.data(), 1, text.size(), stdout) == text.size() && std::fflush(stdout) == 0;
  if (written) return status;
  report_error({ErrorCode::kIo,
                "cannot be written: " + std::generic_category().message(errno),
                {"standard output", 0, 0},
                "",
                ""});
  return ExitStatus::kUnwritable;
}

void report_error(const Error& error) {
  const std::string line = "ovenwright: " + error.text() + "\n";
  std::fwrite(line.data(), 1, line.size(), stderr);
}

bool output_is_a_log(const Common& common, std::span<const std::string> logs) {
  const bool is_one = common.output &&
                      std::ranges::any_of(logs, [&](const std::string& log) { return same_file(log, *common.output); });
  if (is_one)
    report_error({ErrorCode::kBadArgument,
                  "is one of the logs: an output never takes a log's place",
                  {*common.output, 0, 0},
                  "",
                  ""});
  return is_one;
}

bool output_is_an_input(std::span<const std::string> outputs, std::span<const std::string> inputs) {
  const auto taken = std::ranges::find_if(outputs, [&](const std::string& output) {
    return std::ranges::any_of(inputs, [&](const std::string& input) { return same_file(input, output); });
  });
  if (taken == outputs.end()) return false;
  report_error({ErrorCode::kBadArgument,
                "is one of the inputs: an output never takes an input's place",
                {*taken, 0, 0},
                "",
                ""});
  return true;
}

ExitStatus exit_status(const Error& error) {
  switch (error.code) {
    case ErrorCode::kIo:
    case ErrorCode::kParse:
    case ErrorCode::kBadArgument:
    case ErrorCode::kCancelled:
      return ExitStatus::kUnreadable;
    case ErrorCode::kUndetermined:
    case ErrorCode::kNoConvergence:
      return ExitStatus::kUndetermined;
  }
  return ExitStatus::kUnreadable;
}

ExitStatus end_with(const Common& common, std::string_view schema, const Error& error) {
  report_error(error);
  if (common.format == Format::kText || common.output) return exit_status(error);
  return write_output(common, report::errors_json(schema, {&error, 1}), exit_status(error));
}

}  // namespace ovenwright::command
