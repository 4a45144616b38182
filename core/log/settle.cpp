#include <fmt/format.h>

#include <algorithm>
#include <limits>

#include "core/log/cell.h"
#include "core/log/row_reader.h"
#include "core/units/phrase.h"

namespace ovenwright::log {
namespace {

bool of_a_cell(const Problem& problem) {
  return problem.expected.starts_with("a time") || problem.expected == "a temperature";
}

int as_int(std::size_t value) {
  return static_cast<int>(std::min<std::size_t>(value, std::numeric_limits<int>::max()));
}

Place place_of(const Problem& problem, const WidePlan& plan, const std::string& file) {
  if (plan.lines_of_columns.empty()) return {file, as_int(problem.line), problem.column};
  const auto column = static_cast<std::size_t>(std::max(0, problem.column - 1));
  const std::size_t line = column < plan.lines_of_columns.size() ? plan.lines_of_columns[column] : 0;
  return {file, as_int(line), as_int(problem.line)};
}

Error error_of(const Problem& problem, const WidePlan& plan, const std::string& file) {
  const bool cell = of_a_cell(problem);
  const std::string found = cell ? fmt::format("\"{}\"", problem.found) : problem.found;
  const char* why = cell ? "" : problem.expected.starts_with("the column") ? "" : " as in the other rows";
  return {ErrorCode::kParse, fmt::format("found {}, expected {}{}", found, problem.expected, why),
          place_of(problem, plan, file), problem.found, problem.expected};
}

/// A word that no list knows, but that stands in many cells where readings belong, and no other does: the instrument's
/// own for a channel that is open.
/// So is "-999.9" between decimal commas: a number with the other sign that is no temperature.
std::optional<std::string> word_for_no_reading(const std::vector<RowReader::Account>& accounts, char decimal) {
  constexpr std::size_t kOften = 5, kLongest = 16, kMostDigits = 2, kOftenAsNumber = 2;
  constexpr double kLowest_C = -270, kHighest_C = 1850;
  std::optional<std::string> word;
  std::size_t count = 0;
  for (const auto& account : accounts) {
    if (account.unreadable.empty()) continue;
    const std::string& found = account.unreadable.front().found;
    if (!account.unreadable_alike || (word && *word != found)) return std::nullopt;
    word = found;
    count += account.unreadable_count;
  }
  if (!word) return std::nullopt;
  const Cell with_other_sign = read_cell(*word, decimal == '.' ? ',' : '.');
  if (with_other_sign.number() && (with_other_sign.value < kLowest_C || with_other_sign.value > kHighest_C))
    return count >= kOftenAsNumber ? word : std::nullopt;
  if (count < kOften || word->size() > kLongest) return std::nullopt;
  const auto digit = [](char c) { return c >= '0' && c <= '9'; };
  const auto letter = [](char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c & 0x80) != 0; };
  const auto digits = static_cast<std::size_t>(std::count_if(word->begin(), word->end(), digit));
  if (digits > kMostDigits || digit(word->front()) || std::none_of(word->begin(), word->end(), letter))
    return std::nullopt;
  return word;
}

void warn_of_cut(WideResult& result, const std::string& file, std::size_t line) {
  const std::string text = say(Phrase::kCutRow);
  result.notes.push_back(text);
  result.warnings.push_back({text, {file, as_int(line), 0}});
}

/// What was left empty because the layout says so: each is told with its first place.
void note_left_empty(const std::vector<RowReader::Account>& accounts, bool by_word, std::size_t last_data,
                     const WidePlan& plan, const std::string& file, WideResult& result) {
  std::size_t cells = 0, rows = 0;
  bool behind = false;
  const Problem* first_cell = nullptr;
  const Problem* first_row = nullptr;
  for (const auto& account : accounts) {
    if (!by_word) cells += account.unreadable_count;
    if (first_cell == nullptr && !by_word && !account.unreadable.empty()) first_cell = &account.unreadable.front();
    if (!behind) rows += account.timeless_count;
    if (account.last_data_line == last_data) {  // behind it stand sums and the like
      rows -= account.timeless_behind;
      behind = true;
    }
    for (const Problem& problem : account.timeless) {
      if (first_row == nullptr && problem.line < last_data) first_row = &problem;
    }
  }
  if (first_cell != nullptr) {
    const auto line = std::to_string(place_of(*first_cell, plan, file).line);
    result.notes.push_back(cells == 1 ? say(Phrase::kOneLeftEmpty, {first_cell->found, line})
                                      : say(Phrase::kLeftEmpty, {std::to_string(cells), first_cell->found, line}));
  }
  if (first_row != nullptr) {
    const auto line = std::to_string(place_of(*first_row, plan, file).line);
    result.notes.push_back(rows == 1 ? say(Phrase::kOneRowLeftOut, {line})
                                     : say(Phrase::kRowsLeftOut, {std::to_string(rows), line}));
  }
}

}  // namespace

std::optional<Error> settle(std::vector<RowReader::Account>& accounts, std::size_t rows, const WidePlan& plan,
                            const std::string& file, WideResult& result, bool& drop_last) {
  std::size_t last_data = 0, short_count = 0;
  const Problem* first_short = nullptr;
  for (const auto& account : accounts) {
    last_data = std::max(last_data, account.last_data_line);
    short_count += account.short_count;
    if (first_short == nullptr && !account.short_rows.empty()) first_short = &account.short_rows.front();
  }
  const Problem* earliest = nullptr;
  const auto consider = [&earliest](const Problem& problem) {
    if (earliest == nullptr || problem.line < earliest->line) earliest = &problem;
  };
  const auto word = word_for_no_reading(accounts, plan.decimal);
  for (const auto& account : accounts) {
    if (!word && !plan.leave_empty) {
      for (const Problem& problem : account.unreadable) consider(problem);
    }
    for (const Problem& problem : account.odd_rows) consider(problem);
    for (const Problem& problem : account.timeless) {
      if (problem.line < last_data && !plan.leave_empty) consider(problem);  // behind it stand sums and the like
    }
  }
  drop_last = false;
  if (first_short != nullptr) {
    const bool many =
        plan.ragged_rows_can_be_read && (plan.leave_empty || short_count >= std::max<std::size_t>(3, rows / 50));
    if (short_count == 1 && first_short->line == last_data && rows > 1) {
      drop_last = true;
    } else if (many) {
      result.notes.push_back(short_count == 1 ? say(Phrase::kOneShortRow)
                                              : say(Phrase::kShortRows, {std::to_string(short_count)}));
    } else {
      consider(*first_short);
    }
  }
  if (earliest != nullptr) return error_of(*earliest, plan, file);
  if (word) {
    std::size_t count = 0;
    for (const auto& account : accounts) count += account.unreadable_count;
    result.notes.push_back(say(Phrase::kOwnWord, {*word, std::to_string(count)}));
  }
  if (plan.leave_empty) note_left_empty(accounts, word.has_value(), last_data, plan, file, result);
  std::size_t headers = 0, statistics = 0, comments = 0;
  std::vector<std::pair<std::string, std::size_t>> doubts;
  for (auto& account : accounts) {
    result.skipped += account.skipped;
    result.other_rows += account.other_rows;
    headers += account.repeated_headers;
    statistics += account.statistics;
    comments += account.comments;
    for (const auto& [remark, cells] : account.doubts) {
      const auto same = std::ranges::find(doubts, remark, &std::pair<std::string, std::size_t>::first);
      if (same == doubts.end()) {
        doubts.emplace_back(remark, cells);
      } else {
        same->second += cells;
      }
    }
    if (account.last_data_line > 0) result.below.clear();
    if (account.last_row_cut)
      warn_of_cut(result, file, account.last_skipped.empty() ? last_data + 1 : account.last_skipped.back().line);
    result.below.insert(result.below.end(), account.last_skipped.begin(), account.last_skipped.end());
  }
  if (drop_last) {
    ++result.skipped;
    warn_of_cut(result, file, last_data);
  }
  const auto note = [&result](std::size_t count, Phrase one, Phrase many) {
    if (count == 1) result.notes.push_back(say(one));
    if (count > 1) result.notes.push_back(say(many, {std::to_string(count)}));
  };
  note(headers, Phrase::kOneHeaderLine, Phrase::kHeaderLines);
  note(statistics, Phrase::kOneLabelledLine, Phrase::kLabelledLines);
  note(comments, Phrase::kOneCommentLine, Phrase::kCommentLines);
  for (const auto& [remark, cells] : doubts)
    result.notes.push_back(say(Phrase::kOwnWord, {remark, std::to_string(cells)}));
  result.last_line = last_data;
  return std::nullopt;
}

}  // namespace ovenwright::log
