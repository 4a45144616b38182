#include "core/report/text_parts.h"

#include <fmt/format.h>

#include <cmath>

#include "core/judge/decide.h"
#include "core/report/table.h"

namespace ovenwright::report {
namespace {

std::string seconds(double time_s) { return judge::number_text(time_s, 1); }

std::string fault_text(const run::Fault& fault) {
  std::string text = run::fault_name(fault.kind);
  text += fault.from_s == fault.to_s ? " at " + seconds(fault.from_s)
                                     : " from " + seconds(fault.from_s) + " to " + seconds(fault.to_s);
  text += fault.action == run::FaultAction::kRemoved ? " s, removed" : " s, left in";
  return fault.detail.empty() ? text : text + ": " + fault.detail;
}

/// A delimiter as a word where it does not show.
std::string delimiter_text(const std::string& delimiter) {
  if (delimiter == "\t") return "tabs between cells";
  if (delimiter == " ") return "blanks between cells";
  return delimiter.size() == 1 ? "\"" + delimiter + "\" between cells" : delimiter;
}

/// A layout's unit as people write it.
std::string unit_text(const std::string& unit) { return unit == "degC" ? "°C" : unit == "degF" ? "°F" : unit; }

}  // namespace

std::string value_text(const measure::Definition& definition, const measure::Value& value, std::optional<double> lower,
                       std::optional<double> upper) {
  if (!value.value) return value.no_value == measure::NoValue::kNotReached ? "not reached" : "undetermined";
  const auto number = judge::number_text(*value.value, judge::usual_digits(definition.measure), lower, upper);
  return value.at_least ? "at least " + number : number;
}

std::string uncertainty_text(const measure::Definition& definition, const measure::Value& value) {
  if (!value.value || !value.expanded_uncertainty) return {};
  const double u = *value.expanded_uncertainty;
  int digits = judge::usual_digits(definition.measure);
  while (u > 0 && digits < 6 && u < 0.5 * std::pow(10.0, -digits)) ++digits;
  return "± " + fmt::format("{:.{}f}", u, digits);
}

std::string margin_text(std::optional<double> margin, judge::MarginBound bound) {
  if (!margin) return {};
  const std::string text = judge::number_text(*margin * 100, 0, 0.0) + " %";
  if (bound == judge::MarginBound::kAtMost) return "at most " + text;
  return bound == judge::MarginBound::kAtLeast ? "at least " + text : text;
}

std::string run_name(const log::Reading& reading, const run::Run& run) {
  if (run.parts <= 1) return reading.file.file;
  return fmt::format("{}, run {} of {}", reading.file.file, run.part, run.parts);
}

std::string list_of(const std::string& heading, const std::vector<std::string>& items) {
  if (items.empty()) return {};
  std::string text = "\n" + heading + "\n";
  for (const auto& item : items) text += "  " + wrapped(item, 4);
  return text;
}

std::vector<std::string> fault_items(const run::Run& run) {
  std::vector<std::string> items;
  for (const auto& fault : run.faults) items.push_back("the log: " + fault_text(fault));
  for (const auto& channel : run.channels) {
    for (const auto& fault : channel.faults) items.push_back(channel.name + ": " + fault_text(fault));
  }
  return items;
}

std::string faults_text(const run::Run& run) { return list_of("Faults", fault_items(run)); }

std::vector<std::string> read_as_pieces(const log::Reading& reading, const run::Run& run) {
  const auto& read_as = reading.read_as;
  std::vector<std::string> pieces;
  const auto add = [&](std::string text) {
    if (!text.empty()) pieces.push_back(std::move(text));
  };
  add(read_as.encoding);
  if (!reading.file.member.empty()) add("from \"" + reading.file.member + "\"");
  if (!read_as.delimiter.empty()) add(delimiter_text(read_as.delimiter));
  if (read_as.decimal == ",") add("decimal comma");
  add("time as " + read_as.time);
  add(unit_text(read_as.unit));
  add(read_as.header_line > 0 ? fmt::format("header in line {}", read_as.header_line) : "no header");
  add(fmt::format("{} {}", read_as.rows, read_as.rows == 1 ? "row" : "rows"));
  if (read_as.rows_skipped > 0) add(fmt::format("{} skipped", read_as.rows_skipped));
  add("one every " + judge::number_text(run.sample_interval_s, 2) + " s");
  return pieces;
}

std::vector<std::string> read_as_items(const log::Reading& reading, const run::Run& run) {
  std::vector<std::string> items{""};
  for (const auto& piece : read_as_pieces(reading, run)) items[0] += (items[0].empty() ? "" : ", ") + piece;
  items.insert(items.end(), reading.read_as.notes.begin(), reading.read_as.notes.end());
  return items;
}

/// What `--table` picks from.
std::vector<std::string> table_items(const log::Reading& reading) {
  std::vector<std::string> items;
  for (const auto& table : reading.read_as.tables) {
    std::string item = fmt::format("{}  {}", items.size() + 1, table.name());
    if (table.rows > 0) item += fmt::format(", {} rows", table.rows);
    items.push_back(item + (table.read ? ", read" : ""));
  }
  return items;
}

std::string reading_text(const log::Reading& reading, const run::Run& run) {
  std::vector<std::string> assumed;
  for (const auto& assumption : reading.read_as.assumed) assumed.push_back(assumption.text);
  return list_of("Assumed", assumed) + list_of("Read as", read_as_items(reading, run)) +
         list_of("Tables in the file, one of which --table picks", table_items(reading));
}

}  // namespace ovenwright::report
