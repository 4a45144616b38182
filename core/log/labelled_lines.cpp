#include "core/log/labelled_lines.h"

#include <algorithm>
#include <string>
#include <unordered_map>
#include <vector>

#include "core/log/cell.h"
#include "core/log/dialect.h"
#include "core/log/text.h"
#include "core/log/text_scanner.h"
#include "core/log/wide.h"

namespace ovenwright::log {
namespace {

constexpr auto kNone = std::string_view::npos;
constexpr std::string_view kBlanks = " \t";
constexpr int kMostWords = 6;  // of a value: "12 Mar 2031 10:22:01.5 am"; each is tried

struct Pair {
  std::string_view label, value;
};

struct Line {
  std::string_view stamp;  ///< a time that stands before the first label
  std::vector<Pair> pairs;
};

bool number_or_time(std::string_view text) {
  const Cell cell = read_cell(text, '.');
  return cell.number() || cell.kind == CellKind::kTime || read_cell(text, ',').number();
}

bool no_text(std::string_view text) { return number_or_time(text) || read_cell(text, '.').no_reading(); }

bool is_sign(char c) { return std::string_view{",;|[](){}<>-:#"}.find(c) != kNone; }

char small_letter(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

std::string_view without_signs(std::string_view text) {
  text = trim(text);
  while (!text.empty() && is_sign(text.front())) text = trim(text.substr(1));
  return text;
}

std::string_view without_signs_behind(std::string_view text) {
  text = trim(text);
  while (!text.empty() && std::string_view{",;|"}.find(text.back()) != kNone)
    text = trim(text.substr(0, text.size() - 1));
  return text;
}

/// Where labels end: at '=', where there is one, else at colons that are not those of a clock.
std::vector<std::size_t> marks_in(std::string_view line) {
  std::vector<std::size_t> marks;
  const bool equal_signs = line.find('=') != kNone;
  for (std::size_t i = 0; i < line.size(); ++i) {
    if (equal_signs ? line[i] == '=' : line[i] == ':') {
      // The word that the sign stands behind.
      const auto before = trim(line.substr(0, i));
      const auto start = before.find_last_of(equal_signs ? "=,;|\t" : " \t,;|:=");
      const auto word = trim(before.substr(start == kNone ? 0 : start + 1));
      const bool named = std::any_of(word.begin(), word.end(), [](char c) {
        return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c & 0x80) != 0;
      });
      if (named && (equal_signs || !is_digit(word.front()))) marks.push_back(i);
    }
  }
  return marks;
}

/// The next word at blanks; takes it from the front.
std::string_view take_word(std::string_view& text) {
  text = trim(text);
  const auto end = std::min(text.find_first_of(kBlanks), text.size());
  const auto word = text.substr(0, end);
  text = trim(text.substr(end));
  return word;
}

/// "25.3 °C TC2" between two marks: the value and the next label.
Pair value_and_label(std::string_view between) {
  for (std::size_t i = between.size(); i-- > 0;) {
    const char c = between[i];
    const bool comma =
        c == ',' && !(i > 0 && i + 1 < between.size() && is_digit(between[i - 1]) && is_digit(between[i + 1]));
    if (c != ';' && c != '|' && c != '\t' && !comma) continue;
    return {trim(between.substr(i + 1)), without_signs_behind(between.substr(0, i))};
  }
  std::string_view rest = between;
  const std::string_view first = take_word(rest);
  std::string_view value = first;
  // What goes on the value: a clock behind a date, a tolerance, a unit; something has to be left for the label.
  for (int words = 1; words < kMostWords && !rest.empty(); ++words) {
    std::string_view behind = rest;
    const std::string_view word = take_word(behind);
    if (behind.empty()) break;
    const auto longer =
        std::string_view{first.data(), static_cast<std::size_t>(word.data() + word.size() - first.data())};
    const bool half_tolerance = word == "±" || word == "+/-";
    if (!half_tolerance && !number_or_time(longer)) break;
    value = longer;
    rest = behind;
  }
  return {rest, value};
}

/// A time before the first label, in brackets or not: "[10:22:01] ", "2031-03-12 10:22:01.5 ".
std::string_view take_stamp(std::string_view& text) {
  std::string_view rest = without_signs(text);
  const std::string_view first = take_word(rest);
  if (first.empty()) return {};
  const auto bare = [](std::string_view stamp) {
    while (!stamp.empty() && is_sign(stamp.back())) stamp.remove_suffix(1);
    return stamp;
  };
  std::string_view stamp, left = rest;
  if (number_or_time(bare(first))) stamp = bare(first);
  std::string_view behind = rest;
  const std::string_view second = take_word(behind);
  if (!second.empty()) {
    const auto both = bare({first.data(), static_cast<std::size_t>(second.data() + second.size() - first.data())});
    if (read_cell(both, '.').kind == CellKind::kTime) {
      stamp = both;
      left = behind;
    }
  }
  // "Mar 12 10:22:01 rig7 logger[311]: T1": the clock among words that every line has.
  std::string_view among = rest;
  for (int words = 0; words < kMostWords && stamp.empty(); ++words) {
    const std::string_view word = take_word(among);
    if (among.empty()) break;
    const auto clock = bare(word);
    if (std::count(clock.begin(), clock.end(), ':') < 2 || read_cell(clock, '.').kind != CellKind::kTime) continue;
    stamp = clock;
    left = among;
  }
  if (!stamp.empty()) text = without_signs(left);
  return stamp;
}

/// "TC1 25.3 °C": a name, and behind a blank the longest number of a few words that ends the text.
std::optional<Pair> named_number(std::string_view text) {
  if (text.empty() || is_digit(text.front()) || !is_letter(small_letter(text.front()))) return std::nullopt;
  std::optional<Pair> longest;
  std::string_view left = text;
  for (int words = 0; words < kMostWords; ++words) {
    const auto blank = left.find_last_of(kBlanks);
    if (blank == kNone) break;
    left = trim(left.substr(0, blank));
    const auto value = text.substr(blank + 1);
    if (read_cell(value, '.').number() || read_cell(value, ',').number()) longest = Pair{left, value};
  }
  return longest;
}

/// "12.5 s; TC1 25.3 °C; TC2 24.9 °C": between separators a time, then a name and a number in each.
std::optional<Line> named_by_blanks(std::string_view text) {
  const char separator = text.find(';') != kNone ? ';' : text.find('|') != kNone ? '|' : '\t';
  Line line;
  for (bool first = true; !text.empty(); first = false) {
    const auto end = std::min(text.find(separator), text.size());
    const auto part = without_signs(text.substr(0, end));
    text.remove_prefix(std::min(end + 1, text.size()));
    if (const auto pair = named_number(part)) {
      line.pairs.push_back(*pair);
    } else if (first && number_or_time(part)) {
      line.stamp = part;
    } else {
      return std::nullopt;
    }
  }
  return line.pairs.size() > 1 || (line.pairs.size() == 1 && !line.stamp.empty()) ? std::optional{line} : std::nullopt;
}

/// "<row t="0.5" tc1="25.0"/>": what stands between the name of the element and its end.
std::string_view without_tag(std::string_view text) {
  text = trim(text);
  if (!text.starts_with('<') || !text.ends_with('>')) return text;
  const auto name = text.find_first_of(kBlanks), end = text.find('>');
  if (name == kNone || name > end) return text;
  text = text.substr(name, end - name);
  if (text.ends_with('/')) text.remove_suffix(1);
  return trim(text);
}

std::optional<Line> labelled(std::string_view text) {
  constexpr std::size_t kLongestLabel = 60, kLongestLine = 16384;
  text = without_signs_behind(without_tag(text));
  if (text.size() < 3 || text.size() > kLongestLine) return std::nullopt;
  const auto marks = marks_in(text);
  if (marks.empty()) return text.find_first_of(";|\t") == kNone ? std::nullopt : named_by_blanks(text);
  Line line;
  std::string_view label = trim(text.substr(0, marks.front()));
  const std::string_view whole = label;
  line.stamp = take_stamp(label);
  if (label.empty()) {  // "5=…": the number is the label
    label = whole;
    line.stamp = {};
  }
  std::size_t numbers = 0, texts = 0;
  for (std::size_t k = 0; k < marks.size(); ++k) {
    const std::size_t end = k + 1 < marks.size() ? marks[k + 1] : text.size();
    const auto between = trim(text.substr(marks[k] + 1, end - marks[k] - 1));
    Pair next{{}, between};
    if (k + 1 < marks.size()) next = value_and_label(between);
    label = without_signs(label);
    if (label.empty() || label.size() > kLongestLabel) return std::nullopt;
    line.pairs.push_back({label, next.value});
    (no_text(next.value) ? numbers : texts) += next.value.empty() ? 0 : 1;
    label = next.label;
  }
  const bool enough = line.pairs.size() > 1 || !line.stamp.empty();
  return enough && numbers > texts ? std::optional{std::move(line)} : std::nullopt;
}

/// Calls `use` with each line of a text, without its end.
template <class Use>
void for_each_line(std::string_view text, const Use& use) {
  while (!text.empty()) {
    const auto end = std::min(text.find_first_of("\r\n"), text.size());
    use(text.substr(0, end));
    text.remove_prefix(end);
    while (text.starts_with("\r\r") || text.starts_with("\r\n")) text.remove_prefix(1);
    if (!text.empty()) text.remove_prefix(1);
  }
}

bool looks_labelled(std::string_view text) {
  constexpr std::size_t kFewest = 3, kMostLooked = 60;
  const auto sample = sample_of(text);
  return std::any_of(sample.begin(), sample.end(), [](std::string_view piece) {
    std::size_t all = 0, found = 0, in_a_row = 0;
    for_each_line(piece, [&](std::string_view line) {
      if (all >= kMostLooked || line.find_first_of("0123456789") == kNone) return;
      const bool is = labelled(line).has_value();
      in_a_row = is ? in_a_row + 1 : 0;
      if (in_a_row == kFewest && found + 1 == kFewest) all = kFewest - 1;  // what stands above is metadata
      ++all;
      found += is ? 1 : 0;
    });
    return found >= kFewest && 10 * found >= 8 * all;
  });
}

class Builder {
 public:
  explicit Builder(std::string_view text)
      : ended_(text.ends_with('\n') || text.ends_with('\r')),
        most_cells_(std::min(std::size_t{32} << 20, (std::size_t{1} << 20) + 4 * text.size())) {}

  /// False where this is no log: more names than channels can be, or hardly any of them in a row.
  bool add(std::string_view text, bool last) {
    const auto line = labelled(text);
    if (!line || (last && !ended_ && !whole_.empty() && line->pairs.size() < whole_.size())) {
      grid_.rows.push_back(trim(text).empty() ? std::vector<std::string>{} : std::vector{std::string{trim(text)}});
      return true;
    }
    if (first_ == kNone) {
      first_ = grid_.rows.size();
      grid_.rows.emplace_back();  // the names
    }
    const std::string stamp{line->stamp};
    std::vector<std::size_t> columns;
    if (!stamp.empty()) stamped_ = true;
    for (const Pair& pair : line->pairs) columns.push_back(column_of(pair.label));
    if (names_.size() > kMostChannels + 1) return false;  // and the time
    whole_ = columns;
    const bool goes_on = can_go_on(stamp, *line, columns);
    grid_.rows.emplace_back();  // where the line goes on the row before, its own stays empty
    if (!goes_on) {
      open_ = grid_.rows.size() - 1;
      grid_.rows.back().push_back(stamp);
    }
    auto& row = grid_.rows[open_];
    const std::size_t widest = 1 + *std::max_element(columns.begin(), columns.end());
    if (row.size() < widest) {
      cells_ += widest - row.size();
      if (cells_ > most_cells_) return false;
      row.resize(widest);
    }
    for (std::size_t i = 0; i < columns.size(); ++i) row[columns[i]] = std::string{line->pairs[i].value};
    return true;
  }

  std::optional<Grid> take() {
    if (first_ == kNone) return std::nullopt;
    drop_words_before_names();
    grid_.rows[first_] = names_;
    grid_.rows[first_].insert(grid_.rows[first_].begin(), "time");
    if (!stamped_) {
      for (std::size_t i = first_; i < grid_.rows.size(); ++i) {
        if (grid_.rows[i].size() > 1 && (i == first_ || grid_.rows[i].front().empty()))
          grid_.rows[i].erase(grid_.rows[i].begin());
      }
    }
    grid_.made_row = first_;
    return std::move(grid_);
  }

 private:
  /// "rig7 INFO T1" beside "T2" and "T3": what stands before the first name in every line is no part of it.
  void drop_words_before_names() {
    const auto stem = [](std::string_view name) {
      const auto digit = name.find_first_of("0123456789");
      return digit == kNone || digit == 0 ? std::string_view{} : name.substr(0, digit);
    };
    for (std::string& name : names_) {
      const auto blank = name.find_last_of(' ');
      if (blank == kNone) continue;
      const auto last = std::string_view{name}.substr(blank + 1);
      const bool one_of_others =
          !stem(last).empty() && std::any_of(names_.begin(), names_.end(), [&](const auto& other) {
            return other != last && other.find(' ') == kNone && stem(other) == stem(last);
          });
      if (one_of_others && std::find(names_.begin(), names_.end(), last) == names_.end()) name = std::string{last};
    }
  }
  /// Column 0 is that of the times without a name.
  std::size_t column_of(std::string_view label) {
    const auto [at, added] = columns_.try_emplace(std::string{label}, names_.size() + 1);
    if (added) names_.emplace_back(label);
    return at->second;
  }
  /// The same time and other names than in the row before; without a stamp the time is the first pair.
  bool can_go_on(const std::string& stamp, const Line& line, const std::vector<std::size_t>& columns) const {
    if (open_ == kNone) return false;
    const auto& row = grid_.rows[open_];
    std::size_t from = 0;
    if (stamp.empty()) {
      from = 1;
      const std::size_t time = columns.front();
      if (columns.size() < 2 || time >= row.size() || row[time] != line.pairs.front().value) return false;
    } else if (row.front() != stamp) {
      return false;
    }
    return std::none_of(columns.begin() + static_cast<std::ptrdiff_t>(from), columns.end(),
                        [&row](std::size_t column) { return column < row.size() && !row[column].empty(); });
  }

  const bool ended_;
  const std::size_t most_cells_;
  std::size_t cells_ = 0;
  Grid grid_;
  std::vector<std::string> names_;
  std::unordered_map<std::string, std::size_t> columns_;
  std::vector<std::size_t> whole_;
  std::size_t first_ = kNone, open_ = kNone;
  bool stamped_ = false;
};

}  // namespace

std::optional<Grid> labelled_lines(std::string_view text) {
  constexpr std::size_t kMostBytes = std::size_t{256} << 20;
  if (text.size() > kMostBytes || !looks_labelled(text)) return std::nullopt;
  Builder builder(text);
  bool fits = true;
  for_each_line(text, [&](std::string_view line) {
    fits = fits && builder.add(line, line.data() + line.size() == text.data() + text.size());
  });
  return fits ? builder.take() : std::nullopt;
}

}  // namespace ovenwright::log
