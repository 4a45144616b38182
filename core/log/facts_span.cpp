#include "core/log/facts_span.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>

#include "core/log/number.h"
#include "core/log/text.h"
#include "core/log/time_text.h"
#include "core/log/units.h"
#include "core/log/words.h"

namespace ovenwright::log {
namespace {

constexpr double kDay = 86400;
constexpr double kLongest_s = 6 * 3600;

using Labels = std::array<std::string_view, 20>;
constexpr Labels kStart{"start",     "start time",     "started",        "begin",    "begin time", "beginn",  "anfang",
                        "startzeit", "début",          "debut",          "inicio",   "comienzo",   "开始",    "開始",
                        "起始",      "heure de début", "hora de inicio", "开始时间", "開始時間",   "開始時刻"};
constexpr Labels kEnd{"end",          "end time",    "ended",      "stop",     "stop time", "stopped", "ende",
                      "endzeit",      "fin",         "final",      "结束",     "結束",      "終了",    "终止",
                      "heure de fin", "hora de fin", "hora final", "结束时间", "結束時間",  "終了時刻"};
constexpr Labels kDuration{"duration",   "dauer",       "durée",          "duree",       "duración",
                           "duracion",   "messdauer",   "run time",       "runtime",     "laufzeit",
                           "总时长",     "时长",        "時長",           "持续时间",    "測定時間",
                           "total time", "record time", "recording time", "gesamtdauer", "aufzeichnungsdauer"};

/// Whether a line is a bare label, a colon or the end of its cell behind it, and a value: "End of shift" is none.
bool begins_with(std::string_view small, const Labels& labels) {
  const auto end = std::min({small.find_first_of(":=;,\t|"), small.find("："), small.size()});
  auto label = trim(small.substr(0, end));
  while (!label.empty() && (label.front() == '"' || label.front() == '#')) label = trim(label.substr(1));
  while (!label.empty() && label.back() == '"') label = trim(label.substr(0, label.size() - 1));
  if (const auto open = label.find_first_of("(["); open != std::string_view::npos) label = trim(label.substr(0, open));
  return end < small.size() && std::find(labels.begin(), labels.end(), label) != labels.end();
}

/// What stands behind the label: from the first figure on, signs between cells made blanks.
std::string value_in(const Statement& statement) {
  std::string text = plain_forms(statement.text);
  const auto at = text.find_first_of("0123456789");
  if (at == std::string::npos) return {};
  text.erase(0, at);
  std::replace_if(
      text.begin(), text.end(), [](char c) { return c == ';' || c == '\t' || c == '|' || c == '"'; }, ' ');
  for (auto two = text.find("  "); two != std::string::npos; two = text.find("  ")) text.erase(two, 1);
  while (!text.empty() && (text.back() == ' ' || text.back() == ',')) text.pop_back();
  return text;
}

std::optional<TimeText> moment_in(const Statement& statement) {
  std::string text = value_in(statement);
  auto time = read_time_text(text);
  if (!time) {
    std::replace(text.begin(), text.end(), ',', ' ');
    time = read_time_text(text);
  }
  if (!time || !time->has_clock || time->full_stops) return std::nullopt;
  // Of two parts a time of day is hours and minutes: too coarse for a step.
  return time->parts == 3 ? time : std::nullopt;
}

/// Seconds between two moments; of dates in an order that is open the one that makes them closer.
std::optional<double> between(const TimeText& from, const TimeText& to) {
  if (from.has_date != to.has_date) return std::nullopt;
  double seconds = to.clock_s - from.clock_s;
  if (!from.has_date) return seconds < 0 ? seconds + kDay : seconds;
  std::optional<double> days;
  for (const DateOrder order : {DateOrder::kDayMonthYear, DateOrder::kMonthDayYear, DateOrder::kYearMonthDay}) {
    if (!valid_date(from, order) || !valid_date(to, order)) continue;
    const double apart = days_since_1970(to, order) - days_since_1970(from, order);
    if (!days || std::abs(apart) < std::abs(*days)) days = apart;
  }
  if (!days) return std::nullopt;
  return seconds + *days * kDay;
}

std::optional<double> duration_in(const Statement& statement) {
  const std::string text = value_in(statement);
  if (const auto clock = read_time_text(text); clock && clock->has_clock && !clock->has_date && clock->parts == 3)
    return clock->clock_s;
  auto number = read_number(text, '.');
  if (number && number->rest.starts_with(',')) number = read_number(text, ',');
  if (!number) return std::nullopt;
  auto unit = parse_unit(number->rest);
  if (!unit) {  // "Duration (s),240"
    const std::string label = plain_forms(statement.text.substr(0, statement.text.find_first_of("0123456789")));
    const auto open = label.find_first_of("(["), close = label.find_first_of(")]");
    if (open != std::string::npos && close != std::string::npos && close > open)
      unit = parse_unit(std::string_view{label}.substr(open + 1, close - open - 1));
  }
  if (!unit || unit->quantity != Quantity::kTime) return std::nullopt;
  return number->value * unit->factor;
}

}  // namespace

std::optional<StatedSpan> span_in(const std::vector<Statement>& statements) {
  std::optional<TimeText> from, to;
  std::string from_text, to_text;
  for (const Statement& statement : statements) {
    const std::string small = lower(trim(std::string_view{statement.text}.substr(0, 200)));
    if (begins_with(small, kDuration)) {
      if (const auto seconds = duration_in(statement); seconds && *seconds > 0 && *seconds <= kLongest_s)
        return StatedSpan{*seconds, std::string{trim(statement.text)}};
    } else if (begins_with(small, kEnd)) {
      if (!to) to = moment_in(statement);
      if (to && to_text.empty()) to_text = std::string{trim(statement.text)};
    } else if (begins_with(small, kStart)) {
      if (!from) from = moment_in(statement);
      if (from && from_text.empty()) from_text = std::string{trim(statement.text)};
    }
  }
  if (!from || !to) return std::nullopt;
  const auto seconds = between(*from, *to);
  if (!seconds || !(*seconds > 0) || *seconds > kLongest_s) return std::nullopt;
  return StatedSpan{*seconds, from_text + " … " + to_text};
}

std::optional<double> step_of_span(double span_s, double rows) {
  constexpr double kFewest = 20;
  if (rows < kFewest) return std::nullopt;
  // Both ends are whole seconds at worst, and the last row may stand a step before the end.
  const double low = (span_s - 1) / rows, high = (span_s + 1) / (rows - 1);
  std::optional<double> found;
  for (const double step :
       {0.01, 0.02, 0.05, 0.1, 0.2, 0.25, 0.3, 0.4, 0.5, 0.6, 0.8, 1.0, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 10.0}) {
    if (step < low || step > high) continue;
    if (found) return std::nullopt;
    found = step;
  }
  return found;
}

}  // namespace ovenwright::log
