#include <filesystem>
#include <system_error>

#include "app/command/commands.h"
#include "app/command/inputs.h"
#include "app/command/output.h"
#include "core/check/measure_log.h"
#include "core/measure/parameter.h"
#include "core/report/json.h"
#include "core/report/text.h"

namespace ovenwright::command {

ExitStatus run(const MeasureOptions& options) {
  const bool json = options.common.format == Format::kJson;
  if (options.list) {
    return write_output(options.common, json ? report::measures_json() : report::measures_text(), ExitStatus::kDone);
  }
  check::MeasureRequest request;
  for (const auto& text : options.measures) {
    auto definition = measure::parse_definition(text);
    if (!definition) {
      Error error = definition.error();
      error.message =
          "--measure '" + text + "': " + error.message + (error.expected.empty() ? "" : "; expected " + error.expected);
      report_error(error);
      return ExitStatus::kUsage;
    }
    request.definitions.push_back(*std::move(definition));
  }
  if (request.definitions.empty()) request.definitions = check::usual_measures();
  std::error_code failed;
  if (options.common.output && std::filesystem::equivalent(options.log_file, *options.common.output, failed)) {
    report_error({ErrorCode::kBadArgument,
                  "is the log: an output never takes a log's place",
                  {*options.common.output, 0, 0},
                  "",
                  ""});
    return ExitStatus::kUsage;
  }
  if (options.common.output && output_is_an_input({&*options.common.output, 1}, profiles_named({}, options.log)))
    return ExitStatus::kUsage;
  const auto fail = [&options](const Error& error) { return end_with(options.common, "ovenwright.measure/1", error); };
  if (const auto error = read_inputs(options.log, request)) return fail(*error);
  const auto measured = check::measure_log(options.log_file, request);
  if (!measured) return fail(measured.error());
  const auto detail = options.common.quiet ? report::Detail::kSentence : report::Detail::kAll;
  return write_output(
      options.common,
      json ? report::measure_json(*measured, request) : report::measure_text(*measured, request, detail),
      ExitStatus::kDone);
}

}  // namespace ovenwright::command
