#pragma once
#include <span>
#include <string>
#include <vector>

#include "core/check/check.h"
#include "core/check/measure_log.h"
#include "core/files/profiles.h"

namespace ovenwright::report {

/// One entry of `runs` of the check report, as JSON text without a newline at its end. Numbers read back the same;
/// what has no value is null.
std::string check_run_json(const log::Reading& reading, const check::CheckedRun& run, const check::Request& request);
/// The whole check report, ovenwright.check/1, from its runs; `errors` stands in it where there are some.
std::string check_json(std::span<const std::string> runs, std::span<const Error> errors);
/// What stands in place of a report that could not be made: its schema, the program and `errors`.
std::string errors_json(std::string_view schema, std::span<const Error> errors);

/// The whole report ovenwright.measure/1.
std::string measure_json(const check::MeasuredLog& measured, const check::MeasureRequest& request);
/// The table of measures, ovenwright.measures/1.
std::string measures_json();

/// {"windows": […]}: what there is of a kind.
std::string list_json(files::Kind kind, std::span<const files::Listed> listed);

}  // namespace ovenwright::report
