#pragma once
#include <nlohmann/json_fwd.hpp>
#include <optional>
#include <string>
#include <vector>

#include "core/board/board.h"
#include "core/check/check.h"
#include "core/files/identity.h"
#include "core/log/reading.h"
#include "core/measure/measure.h"
#include "core/oven/oven.h"
#include "core/run/run.h"
#include "core/tune/tune.h"

namespace ovenwright::report {

/// Pieces of JSON that several reports share.
nlohmann::ordered_json log_part(const log::Reading& reading, const run::Run& run);
nlohmann::ordered_json entry_part(const std::optional<oven::Entry>& entry);
nlohmann::ordered_json identity_part(const files::Identity* identity);  ///< null for null
/// Name, revision, digest, decision rule and `assumed` of each window.
nlohmann::ordered_json windows_part(const judge::Judgement& judgement);
nlohmann::ordered_json traces_part(const run::Run& run, const board::Board* board);
nlohmann::ordered_json parameters_part(const measure::Definition& definition);
nlohmann::ordered_json number_part(const std::optional<double>& value);
/// Adds value, unit, uncertainty and, where they apply, bound, no_value, reason, note and range.
void add_value(nlohmann::ordered_json& result, const measure::Value& value);
/// Adds from_s and to_s.
void add_interval(nlohmann::ordered_json& result, const measure::Value& value);
/// "at most" or "at least".
const char* margin_bound_name(judge::MarginBound bound);
/// One entry of `results` or `board_results`.
nlohmann::ordered_json outcome_part(const judge::Outcome& outcome, const judge::Judgement& judgement);
/// [{"zone", "side", "from_C", "to_C"}, …, {"speed_from_mm_per_min", "speed_to_mm_per_min"}]
nlohmann::ordered_json changes_part(const std::vector<tune::Change>& changes);
/// One entry of `errors`.
nlohmann::ordered_json error_part(const Error& error);
/// One line of JSON; bytes that are no UTF-8, as file names may have, become U+FFFD.
std::string dumped(const nlohmann::ordered_json& json);

}  // namespace ovenwright::report
