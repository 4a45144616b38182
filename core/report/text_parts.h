#pragma once
#include <optional>
#include <string>
#include <vector>

#include "core/check/check.h"
#include "core/log/reading.h"
#include "core/measure/measure.h"
#include "core/run/run.h"

namespace ovenwright::report {

/// "232.1", "at least 53.0", "not reached", "undetermined": a value without unit.
std::string value_text(const measure::Definition& definition, const measure::Value& value, std::optional<double> lower,
                       std::optional<double> upper);
/// "± 2.1" with the value's decimals, or more where it would read as 0; empty without one.
std::string uncertainty_text(const measure::Definition& definition, const measure::Value& value);
/// "−39 %", "at most 12 %"; a margin below 0 never reads as 0.
std::string margin_text(std::optional<double> margin, judge::MarginBound bound);
/// "a.csv" or "a.csv, run 1 of 2".
std::string run_name(const log::Reading& reading, const run::Run& run);
/// "U1 corner: spike at 75.0 s, removed", for the log and each channel.
std::vector<std::string> fault_items(const run::Run& run);
/// How the log was read, piece by piece: "UTF-8", "decimal comma", "header in line 3".
std::vector<std::string> read_as_pieces(const log::Reading& reading, const run::Run& run);
/// These pieces in one line, then each note of the reading.
std::vector<std::string> read_as_items(const log::Reading& reading, const run::Run& run);
/// "Faults:" with a line for each, of the log and of each channel; empty where there are none.
std::string faults_text(const run::Run& run);
/// "Assumed:", "Read as: …" and the notes of the reading.
std::string reading_text(const log::Reading& reading, const run::Run& run);
/// A heading with one indented item a line; empty where there are no items.
std::string list_of(const std::string& heading, const std::vector<std::string>& items);

}  // namespace ovenwright::report
