#include "core/log/row_reader.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "core/log/cell.h"
#include "core/log/text.h"
#include "core/log/text_scanner.h"
#include "core/log/words.h"

namespace ovenwright::log {
namespace {

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();
constexpr double kInfinity = std::numeric_limits<double>::infinity();
constexpr std::size_t kMostKept = 8;

void keep(std::vector<Problem>& problems, Problem problem) {
  if (problems.size() < kMostKept) {
    problems.push_back(std::move(problem));
  } else {
    problems.back() = std::move(problem);
  }
}

std::string_view cell_at(const Row& row, int column) {
  const auto i = static_cast<std::size_t>(column);
  return i < row.cells.size() ? row.cells[i] : std::string_view{};
}

/// A number that is no date becomes one that no calendar has.
TimeText compact_date(double value) {
  TimeText date;
  if (!(value >= 0 && value < 1e8)) value = 0;
  const auto whole = static_cast<int>(value);
  date.has_date = true;
  date.first = whole / 10000;
  date.second = whole / 100 % 100;
  date.third = whole % 100;
  date.order = DateOrder::kYearMonthDay;
  return date;
}

/// "448.3°F" in a column of °C. A letter alone may be a mark of the instrument's.
double in_unit_of(const NumberColumn& column, const Cell& cell) {
  const auto& unit = *cell.unit;
  if (column.unit.empty() || unit.weak || unit.quantity != Quantity::kTemperature || unit.name == column.unit)
    return cell.value;
  constexpr double kZero_K = 273.15;
  const double celsius = unit.name == "degF" ? (cell.value - 32) / 1.8
                         : unit.name == "K"  ? cell.value - kZero_K
                                             : cell.value;
  return column.unit == "degF" ? celsius * 1.8 + 32 : column.unit == "K" ? celsius + kZero_K : celsius;
}

/// "222.6  # peak": what stands before a remark at the end of a line.
std::string_view without_remark(std::string_view text) {
  for (const std::string_view sign : {" #", " //", " <-", " !", "\t#"}) {
    const auto at = text.find(sign);
    if (at != std::string_view::npos && at > 0) return trim(text.substr(0, at));
  }
  return text;
}

/// "! sensor open", "# over range": a remark that says of the number before it that it is no reading.
bool doubts(std::string_view remark) {
  static constexpr std::array<std::string_view, 14> kFaults{"fault",  "error",   "fehler",  "defekt",  "defect",
                                                            "broken", "burnout", "range",   "bereich", "bruch",
                                                            "rango",  "gamme",   "invalid", "fail"};
  const std::string small = lower(remark);
  if (std::ranges::any_of(kFaults, [&](std::string_view word) { return small.find(word) != std::string::npos; }))
    return true;
  constexpr std::string_view kSigns = " \t#/<-!?.,;:()";
  std::string_view rest = small;
  while (true) {
    while (!rest.empty() && kSigns.find(rest.front()) != std::string_view::npos) rest.remove_prefix(1);
    if (rest.empty()) return false;
    if (means_open(rest) || means_over(rest) || means_under(rest)) return true;
    const auto end = std::min(rest.find_first_of(kSigns), rest.size());
    const auto word = rest.substr(0, end);
    if (means_open(word) || means_over(word) || means_under(word)) return true;
    rest.remove_prefix(end);
  }
}

/// The header once more, of channels that are called by numbers.
bool header_again(const Row& row, const WidePlan& plan) {
  const int time = plan.clocks.front().column;
  if (plan.names.empty() || time < 0) return false;
  const auto name = std::string_view{plan.names[static_cast<std::size_t>(time)]};
  return !name.empty() && cell_at(row, time) == name && read_cell(name, plan.decimal).kind == CellKind::kText;
}

/// "Page 2", split at blanks: a word, and not half as many cells as a row has.
bool title(const Row& row, const WidePlan& plan) {
  if (row.cells.size() >= plan.columns || row.cells.size() > 2 || row.cells.front().empty()) return false;
  return is_letter(lower(row.cells.front()).front()) &&
         read_cell(row.cells.front(), plan.decimal).kind == CellKind::kText;
}

std::string number_of_cells(std::size_t n) { return fmt::format("{} cell{}", n, n == 1 ? "" : "s"); }

}  // namespace

RowReader::TimeState RowReader::read_time(const Row& row, const TimePlan& clock, double& time) const {
  using enum TimeState;
  if (clock.column < 0) {
    time = 0;
    return kRead;
  }
  const auto text = cell_at(row, clock.column);
  if (text.empty()) return kEmpty;
  const Cell cell = read_cell(text, plan_.decimal);
  if (clock.minutes >= 0) {
    const Cell minutes = read_cell(cell_at(row, clock.minutes), plan_.decimal);
    const Cell hours = clock.hours >= 0 ? read_cell(cell_at(row, clock.hours), plan_.decimal) : minutes;
    if (!cell.number() || !minutes.number() || !hours.number()) return kUnreadable;
    time = (clock.hours >= 0 ? hours.value * 3600 : 0) + minutes.value * 60 + cell.value;
    return kRead;
  }
  const bool by_clock = clock.kind == TimeKind::kClock || clock.kind == TimeKind::kMoment;
  if (!by_clock) {
    if (!cell.figures() || (cell.unit && cell.unit->quantity != Quantity::kTime)) return kUnreadable;
    time = cell.value;
    return kRead;
  }
  if (cell.number() && clock.kind == TimeKind::kClock && clock.name == "clock m:s") {
    time = cell.value;  // seconds below the first minute
    return kRead;
  }
  TimeText date, at;
  if (cell.kind == CellKind::kTime) {
    if (clock.kind == TimeKind::kClock && cell.time.parts == 0) return kUnreadable;
    date = at = cell.time;
  } else if (cell.number() && clock.date >= 0 && cell.value == std::floor(cell.value) && cell.value >= 0 &&
             cell.value < 240000) {
    const auto packed = static_cast<int>(cell.value);  // 091422 beside a date
    at.has_clock = true;
    at.parts = 3;
    at.clock_s = packed / 10000 * 3600.0 + packed / 100 % 100 * 60.0 + packed % 100;
  } else {
    return kUnreadable;
  }
  if (clock.date >= 0) {
    const Cell day = read_cell(cell_at(row, clock.date), plan_.decimal);
    if (day.kind == CellKind::kTime && day.time.has_date) {
      date = day.time;
    } else if (day.number()) {
      date = compact_date(day.value);
    } else {
      return kUnreadable;
    }
  }
  time = clock.hours_and_minutes && at.parts == 2 ? at.clock_s * 60 : at.clock_s;
  if (clock.half >= 0) time = with_half_of_day(time, half_of_day(cell_at(row, clock.half)));
  if (clock.milliseconds >= 0) {
    const Cell part = read_cell(cell_at(row, clock.milliseconds), plan_.decimal);
    if (!part.number()) return kUnreadable;
    time += part.value / clock.parts_of_a_second;
  }
  if (clock.kind == TimeKind::kMoment) {
    if (!date.has_date || !valid_date(date, clock.order)) return kUnreadable;
    time += (days_since_1970(date, clock.order) - clock.base_days) * 86400;
    time -= at.offset_s.value_or(date.offset_s.value_or(0));
  }
  return kRead;
}

void RowReader::Account::shift(std::size_t lines) {
  if (first_data_line > 0) first_data_line += lines;
  if (last_data_line > 0) last_data_line += lines;
  for (auto* problems : {&unreadable, &timeless, &short_rows, &odd_rows}) {
    for (Problem& problem : *problems) problem.line += lines;
  }
  for (Statement& statement : last_skipped) statement.line += lines;
}

void RowReader::note_rows(std::size_t first_line, std::size_t last_line, std::size_t at) {
  constexpr std::size_t kMostBreaks = 16;
  if (break_pending_) {
    if (account.breaks.size() == kMostBreaks) account.breaks.erase(account.breaks.begin());
    account.breaks.push_back(at);
    break_pending_ = false;
  }
  if (account.first_data_line == 0) account.first_data_line = first_line;
  account.last_data_line = last_line;
  account.last_skipped.clear();
  account.timeless_behind = 0;
  other_table_ = 0;
}

void RowReader::skip(const Row& row) {
  ++account.skipped;
  break_pending_ = true;
  const bool header = row.cells.size() > 1 && row.cells.size() < plan_.columns && row.filled() == row.cells.size() &&
                      std::all_of(row.cells.begin(), row.cells.end(), [&](std::string_view cell) {
                        return read_cell(cell, plan_.decimal).kind == CellKind::kText;
                      });
  if (header) other_table_ = row.cells.size();
  if (account.last_skipped.size() < 60) {
    Statement statement;
    statement.line = row.line;
    for (const auto cell : row.cells) {
      if (statement.cells.size() >= 200) break;
      statement.cells.emplace_back(cell);
      if (cell.empty()) continue;
      if (!statement.text.empty()) statement.text += ' ';
      if (statement.text.size() < 500) statement.text += cell;
    }
    account.last_skipped.push_back(std::move(statement));
  }
}

/// Whether a row that no line end stands behind was cut before or within its last number: nothing stands there where
/// the others seldom lack it, or it has fewer digits than all others behind the sign, or than the row before it in
/// front of it.
bool RowReader::cut_off(const Row& row) const {
  if (row.ended || plan_.profile == nullptr) return false;
  if (row.cells.size() < plan_.columns) return true;
  const std::size_t last = plan_.columns - 1;
  const ColumnProfile& profile = (*plan_.profile)[last];
  if (profile.holds() != ColumnProfile::Holds::kNumbers) return false;
  const Cell cell = read_cell(row.cells[last], plan_.decimal);
  const bool seldom_empty = profile.empty * 20 <= profile.values.size();
  if (cell.kind == CellKind::kEmpty) return seldom_empty;
  if (!cell.number()) return cell.kind == CellKind::kText || cell.kind == CellKind::kOpen;
  if (profile.fewest_decimals > 0 && profile.fewest_decimals < 99)
    return std::max(0, cell.decimals) < profile.fewest_decimals;
  if (!profile.whole_numbers) return false;
  double before = kNaN;
  for (const double value : profile.values) before = std::isfinite(value) && value != cell.value ? value : before;
  return std::isfinite(before) && std::abs(before) >= 10 * std::max(1.0, std::abs(cell.value)) * 0.999;
}

bool RowReader::other_header(const Row& row, Problem& problem) const {
  if (plan_.names.empty() || plan_.clocks.front().column < 0 || row.cells.size() < plan_.columns) return false;
  const auto time = static_cast<std::size_t>(plan_.clocks.front().column);
  if (plan_.names[time].empty() || row.cells[time] != plan_.names[time]) return false;
  for (const NumberColumn& column : plan_.numbers) {
    const auto i = static_cast<std::size_t>(column.column);
    const auto cell = row.cells[i];
    if (!column.judged || cell.empty() || cell == plan_.names[i] || parse_unit(cell)) continue;
    problem = {row.line, column.column + 1, std::string{cell},
               fmt::format("the column \"{}\" of the header", plan_.names[i])};
    return true;
  }
  return false;
}

bool RowReader::line_of_words(const Row& row, std::size_t numbers, std::size_t texts) const {
  const auto first =
      std::find_if(row.cells.begin(), row.cells.end(), [](std::string_view cell) { return !cell.empty(); });
  if (first == row.cells.end() || texts <= numbers) return false;
  const auto letter = [](char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c & 0x80) != 0; };
  return std::all_of(first->begin(), first->end(), letter);
}

bool RowReader::other_decimal(const Row& row) const {
  if (row.cells.size() != plan_.columns) return false;
  const char other = plan_.decimal == '.' ? ',' : '.';
  std::size_t fits = 0, filled = 0;
  for (const NumberColumn& column : plan_.numbers) {
    const auto cell = row.cells[static_cast<std::size_t>(column.column)];
    if (!column.judged || cell.empty()) continue;
    ++filled;
    const Cell as_other = read_cell(cell, other);
    fits += as_other.number() && as_other.decimals > 0 ? 1 : 0;
  }
  return fits > 0 && 2 * fits > filled;
}

bool RowReader::take(const Row& row, std::size_t at) {
  if (row.blank()) {
    break_pending_ = true;
    return false;
  }
  if (is_rule(row)) {
    ++account.comments;
    skip(row);
    return false;
  }
  if (row.cells.size() == other_table_) {  // "150,80.0" under "Level (°C),Time above (s)"
    ++account.statistics;
    ++account.other_rows;
    skip(row);
    return false;
  }
  if (row.cells.size() < plan_.columns && title(row, plan_)) {
    ++account.repeated_headers;
    skip(row);
    return false;
  }
  bool any_time = false, unreadable_time = false;
  int time_column = 0;
  for (std::size_t c = 0; c < plan_.clocks.size(); ++c) {
    double time = kNaN;
    const TimeState state = read_time(row, plan_.clocks[c], time);
    any_time = any_time || state == TimeState::kRead;
    if (state == TimeState::kUnreadable || (state == TimeState::kEmpty && plan_.clocks.size() == 1)) {
      unreadable_time = true;
      if (time_column == 0) time_column = plan_.clocks[c].column + 1;
    }
    times_[c][at] = state == TimeState::kRead ? time : kNaN;
  }
  std::size_t numbers = 0, texts = 0, judged = 0;
  bool texts_alike = true;
  Problem unreadable;
  for (std::size_t i = 0; i < plan_.numbers.size(); ++i) {
    const NumberColumn& column = plan_.numbers[i];
    double& value = values_[i][at];
    value = kNaN;
    const auto text = cell_at(row, column.column);
    if (text.empty()) continue;
    Cell cell = read_cell(text, plan_.decimal);
    if (cell.kind == CellKind::kText && static_cast<std::size_t>(column.column) + 1 == row.cells.size()) {
      if (const auto before = without_remark(text); before.size() < text.size()) {
        const Cell number = read_cell(before, plan_.decimal);
        if (number.number()) {
          const std::string remark{trim(text.substr(before.size()))};
          cell = number;
          if (doubts(remark)) {
            cell.kind = CellKind::kOpen;
            const auto same = std::ranges::find(account.doubts, remark, &std::pair<std::string, std::size_t>::first);
            if (same != account.doubts.end()) {
              ++same->second;
            } else if (account.doubts.size() < kMostKept) {
              account.doubts.emplace_back(remark, 1);
            }
          } else {
            ++account.comments;
          }
        }
      }
    }
    if (cell.figures()) {
      value = cell.unit ? in_unit_of(column, cell) : cell.value;
      ++numbers;
      judged += column.judged ? 1 : 0;
    } else if (cell.kind == CellKind::kOver || cell.kind == CellKind::kUnder) {
      value = cell.kind == CellKind::kOver ? kInfinity : -kInfinity;
      ++numbers;
      judged += column.judged ? 1 : 0;
    } else if (cell.kind == CellKind::kOpen) {
      judged += column.judged ? 1 : 0;
    } else if (column.judged) {
      ++texts;
      texts_alike = texts_alike && (unreadable.line == 0 || unreadable.found == text);
      if (unreadable.line == 0) unreadable = {row.line, column.column + 1, std::string{text}, "a temperature"};
    }
  }
  // "#N/A" and "***" for a reading in the first column.
  const bool reading_first = any_time && !unreadable_time && numbers > 0 && !row.cells.empty() &&
                             row.cells.size() >= plan_.columns &&
                             read_cell(row.cells.front(), plan_.decimal).no_reading();
  const bool comment = is_comment(row) && !reading_first;
  if (!any_time || unreadable_time || comment) {
    Problem other;
    if (!comment && numbers == 0 && other_header(row, other)) {
      keep(account.odd_rows, std::move(other));
    } else if (!comment && numbers == 0 && time_column > 0 && other_decimal(row)) {
      // Not "a time", which can be left out: these rows hold readings.
      keep(account.odd_rows, {row.line, time_column, std::string{cell_at(row, time_column - 1)},
                              plan_.decimal == '.' ? "a time with a decimal point" : "a time with a decimal comma"});
    } else if (comment || numbers == 0 || line_of_words(row, numbers, texts) || header_again(row, plan_)) {
      ++(comment ? account.comments : account.repeated_headers);
    } else {
      const auto first =
          std::find_if(row.cells.begin(), row.cells.end(), [](std::string_view cell) { return !cell.empty(); });
      const Cell label = first == row.cells.end() ? Cell{} : read_cell(*first, plan_.decimal);
      const Words words = label.kind == CellKind::kText ? words_in(*first) : kNoWord;
      if ((words & (kStatisticWord | kUnitWord | kDescriptionWord | kNameWord | kTypeWord | kChannelWord | kZoneWord |
                    kSetpointWord | kTimeWord)) != 0) {
        ++account.statistics;
      } else if ((words & kTextWord) != 0 && texts > 0) {  // "EVENT,105.0,door open"
        ++account.comments;
      } else {
        ++account.timeless_count;
        ++account.timeless_behind;
        keep(account.timeless,
             {row.line, time_column, std::string{cell_at(row, std::max(0, time_column - 1))}, "a time"});
      }
    }
    skip(row);
    return false;
  }
  if (judged == 0 && texts > 0) {  // an event, a section's title
    ++account.comments;
    skip(row);
    return false;
  }
  if (cut_off(row)) {
    account.last_row_cut = true;
    skip(row);
    return false;
  }
  if (row.cells.size() < plan_.columns) {
    ++account.short_count;
    keep(account.short_rows, {row.line, 0, number_of_cells(row.cells.size()), number_of_cells(plan_.columns)});
  }
  for (std::size_t i = plan_.columns; i < row.cells.size(); ++i) {
    if (row.cells[i].empty() || read_cell(row.cells[i], plan_.decimal).kind == CellKind::kText) continue;
    keep(account.odd_rows,
         {row.line, static_cast<int>(i) + 1, number_of_cells(row.cells.size()), number_of_cells(plan_.columns)});
    break;
  }
  if (unreadable.line > 0) {
    account.unreadable_count += texts;
    account.unreadable_alike = account.unreadable_alike && texts_alike &&
                               (account.unreadable.empty() || account.unreadable.front().found == unreadable.found);
    keep(account.unreadable, std::move(unreadable));
  }
  if (plan_.keep_lines) values_.back()[at] = static_cast<double>(row.line);
  note_rows(row.line, row.line, at);
  return true;
}

}  // namespace ovenwright::log
