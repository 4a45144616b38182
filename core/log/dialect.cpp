#include "core/log/dialect.h"

#include <algorithm>
#include <array>
#include <map>

#include "core/log/cell.h"
#include "core/log/text.h"

namespace ovenwright::log {
namespace {

constexpr std::size_t kWhole = 8U << 10;  // a text up to this size is its own sample
constexpr std::size_t kHead = 3U << 10, kPiece = 1000;
constexpr std::size_t kFewestLines = 40;  // a head with fewer lines is widened
constexpr std::size_t kMostHead = 8U << 20;
constexpr std::size_t kMostRows = 400;
constexpr std::size_t kMostCellsPerRow = 4000;  // a channel in a row: what the first cells show holds for the rest

/// What the rows of a sample look like when split and read in one way.
class Tally {
 public:
  Tally(char decimal, bool at_delimiters) : decimal_(decimal), at_delimiters_(at_delimiters) {}

  void add(const Row& row) {
    double good = 0, open = 0, bad = 0;
    std::size_t looked = 0;
    bool digits = false;
    for (const auto cell : row.cells) {
      if (++looked > kMostCellsPerRow) break;
      if (cell.empty()) continue;
      digits = digits || cell.find_first_of("0123456789") != std::string_view::npos;
      const Cell read = read_cell(cell, decimal_);
      if (read.number()) {
        good += 1;
        note_separators(cell);
      } else if (read.kind == CellKind::kTime) {
        good += read.time.has_date && read.time.has_clock ? 2 : 1;
      } else if (read.no_reading()) {
        open += 1;
      } else if (parse_unit(cell)) {
        open += 1;  // "25.3 °C" split at the blank, or a column of units
      } else {
        bad += 1;
      }
    }
    if (good + open + bad == 0) return;
    if (digits) ++lines_with_digits_;
    // Between delimiters a time and a value may stand beside a name and a word of state; between blanks that is prose.
    const bool row_of_data = good >= 1 && good >= bad && (good + open >= bad + 1 || (at_delimiters_ && good >= 2));
    if (!row_of_data) return;
    auto& width = widths_[row.cells.size()];
    width.purity += (good + 0.7 * open) / (good + open + bad);
    ++width.rows;
  }

  void merge(const Tally& other) {
    lines_with_digits_ += other.lines_with_digits_;
    separators_ = separators_ || other.separators_;
    for (const auto& [columns, width] : other.widths_) {
      widths_[columns].purity += width.purity;
      widths_[columns].rows += width.rows;
    }
  }

  std::size_t columns() const {
    const auto best = std::max_element(widths_.begin(), widths_.end(),
                                       [](const auto& a, const auto& b) { return a.second.purity < b.second.purity; });
    return best == widths_.end() ? 0 : best->first;
  }
  double score() const {
    const auto found = widths_.find(columns());
    if (found == widths_.end() || lines_with_digits_ == 0) return 0;
    return found->second.purity / static_cast<double>(lines_with_digits_);
  }
  std::size_t rows() const {
    const auto found = widths_.find(columns());
    return found == widths_.end() ? 0 : found->second.rows;
  }
  bool separators() const { return separators_; }

 private:
  void note_separators(std::string_view cell) {
    separators_ = separators_ || cell.find_first_of(".,") != std::string_view::npos;
  }
  struct Width {
    double purity = 0;
    std::size_t rows = 0;
  };
  char decimal_;
  bool at_delimiters_;
  std::size_t lines_with_digits_ = 0;
  bool separators_ = false;
  std::map<std::size_t, Width> widths_;
};

Tally tally(const std::vector<std::string_view>& sample, const Dialect& dialect, char decimal, double& best_piece) {
  const bool at_delimiters = dialect.split == Dialect::Split::kDelimiter;
  Tally result(decimal, at_delimiters);
  Row row;
  for (const auto piece : sample) {
    TextRows source(piece, dialect);
    Tally of_piece(decimal, at_delimiters);
    for (std::size_t here = 0; here < kMostRows && source.next(row); ++here) of_piece.add(row);
    result.merge(of_piece);
    const bool enough = of_piece.rows() > 1 || of_piece.score() > 0.3;  // one row: said to be one sample later
    if (enough) best_piece = std::max(best_piece, of_piece.score());
  }
  return result;
}

/// Where numbers that stand at fixed places touch those before them, as 103.6 does in "42.0103.6": all lines have
/// their decimal points at the same places, and behind the fewest decimals digits go on up to the next point.
void add_touching(const std::vector<std::string_view>& lines, std::vector<std::size_t>& starts) {
  std::vector<std::size_t> points;
  for (std::size_t i = 0; i < lines.front().size(); ++i) {
    if (lines.front()[i] == '.') points.push_back(i);
  }
  for (const auto line : lines) {
    if (std::count(line.begin(), line.end(), '.') != static_cast<std::ptrdiff_t>(points.size())) return;
    if (!std::all_of(points.begin(), points.end(), [line](std::size_t p) { return p < line.size() && line[p] == '.'; }))
      return;
  }
  const auto digit = [](char c) { return c >= '0' && c <= '9'; };
  for (std::size_t k = 0; k + 1 < points.size(); ++k) {
    std::size_t end = points[k + 1];
    for (const auto line : lines) {
      std::size_t at = points[k] + 1;
      while (at < line.size() && digit(line[at])) ++at;
      end = std::min(end, at);
    }
    bool touches = false;
    const bool fits =
        end < points[k + 1] && std::all_of(lines.begin(), lines.end(), [&](std::string_view line) {
          if (line[end] == ' ') return true;
          const auto number = line.substr(end, points[k + 1] - end);
          touches = touches || digit(line[end - 1]);
          return std::all_of(number.begin() + 1, number.end(), digit) && (digit(number[0]) || number[0] == '-');
        });
    if (fits && touches) starts.push_back(end);
  }
  std::sort(starts.begin(), starts.end());
  starts.erase(std::unique(starts.begin(), starts.end()), starts.end());
}

/// Where columns start in aligned text: places that are blank in every line of numbers. Nothing where lines are no
/// such table.
std::vector<std::size_t> aligned_columns(const std::vector<std::string_view>& sample) {
  std::vector<bool> filled;
  std::vector<std::string_view> lines;
  for (const auto piece : sample) {
    TextRows source(piece, {Dialect::Split::kBlanks, ' ', {}});
    Row row;
    while (source.next(row)) {
      const auto numbers = std::count_if(row.cells.begin(), row.cells.end(), [](std::string_view cell) {
        return cell.find_first_of("0123456789") != std::string_view::npos &&
               cell.find_first_not_of("0123456789.,:-+") == std::string_view::npos;
      });
      const bool plain = std::all_of(row.text.begin(), row.text.end(),
                                     [](char c) { return static_cast<unsigned char>(c) < 0x80 && c != '\t'; });
      const bool touching = numbers == 1 && std::count(row.text.begin(), row.text.end(), '.') > 2;
      if ((numbers < 2 && !touching) || !plain || 2 * static_cast<std::size_t>(numbers) < row.cells.size() ||
          row.text.size() > 4096)
        continue;
      lines.push_back(row.text);
      if (filled.size() < row.text.size()) filled.resize(row.text.size(), false);
      for (std::size_t i = 0; i < row.text.size(); ++i) filled[i] = filled[i] || row.text[i] != ' ';
    }
  }
  if (lines.size() < 3) return {};
  std::vector<std::size_t> starts;
  for (std::size_t i = 0; i < filled.size(); ++i) {
    // A column starts behind the last blank before it; the first one at the line's start.
    if (filled[i] && (i == 0 || !filled[i - 1])) starts.push_back(starts.empty() ? 0 : i);
  }
  add_touching(lines, starts);
  return starts;
}

/// Signs that may delimit, the usual ones first.
constexpr std::array kDelimiters{'\t', ';', '|', ',', '\x1F', '^', '~', '!', '&', '#'};

/// Share of the lines that hold a sign, in the piece of the sample where it is largest: metadata can be longer than the
/// table. Every line is walked once for all signs.
class Shares {
 public:
  explicit Shares(const std::vector<std::string_view>& sample) {
    constexpr std::size_t kFewest = 4;
    for (const auto piece : sample) {
      std::array<std::size_t, 256> with{};
      std::size_t lines = 0;
      TextRows source(piece, {Dialect::Split::kWhole, '\n', {}});
      Row row;
      while (source.next(row)) {
        if (row.cells[0].empty()) continue;
        ++lines;
        std::array<bool, 256> here{};
        for (const char c : row.text) here[static_cast<unsigned char>(c)] = true;
        for (const char c : kLookedFor) with[static_cast<unsigned char>(c)] += here[static_cast<unsigned char>(c)];
      }
      if (lines < kFewest && (sample.size() > 1 || lines == 0)) continue;
      for (const char c : kLookedFor) {
        auto& most = most_[static_cast<unsigned char>(c)];
        most = std::max(most, static_cast<double>(with[static_cast<unsigned char>(c)]) / static_cast<double>(lines));
      }
    }
  }
  double of(char c) const { return most_[static_cast<unsigned char>(c)]; }

 private:
  static constexpr std::string_view kLookedFor = "\t;|,\x1F^~!&# \"";
  std::array<double, 256> most_{};
};

struct Candidate {
  Dialect dialect;
  double bonus = 0;  ///< breaks ties: a delimiter that stands there beats blanks, which may stand within cells
};

/// The columns of fixed places are left to be found: few texts are looked at that long.
std::vector<Candidate> candidates(const Shares& shares, const Layout& fixed) {
  using Split = Dialect::Split;
  std::vector<Candidate> list;
  if (fixed.delimiter) {
    const std::string& name = *fixed.delimiter;
    if (name == kFixedWidth) {
      list.push_back({{Split::kColumns, ' ', {}}, 0});
    } else if (name == " ") {
      list.push_back({{Split::kBlanks, ' ', {}}, 0});
    } else if (name.empty()) {
      list.push_back({{Split::kWhole, '\n', {}}, 0});
    } else {
      list.push_back({{Split::kDelimiter, name[0], {}}, 0});
    }
    return list;
  }
  constexpr double kSeldom = 0.2;
  for (const char delimiter : kDelimiters) {
    if (shares.of(delimiter) >= kSeldom) {
      const bool usual = delimiter == '\t' || delimiter == ';' || delimiter == ',' || delimiter == '|';
      list.push_back({{Split::kDelimiter, delimiter, {}}, usual ? 0.06 : 0.03});
    }
  }
  if (shares.of(' ') >= kSeldom || shares.of('\t') >= kSeldom) {
    list.push_back({{Split::kBlanks, ' ', {}}, 0.02});
    list.push_back({{Split::kColumns, ' ', {}}, 0});
  }
  list.push_back({{Split::kWhole, '\n', {}}, -0.2});
  return list;
}

}  // namespace

std::vector<std::string_view> sample_of(std::string_view text) {
  if (text.size() <= kWhole) return {text};
  std::size_t head = kHead;
  while (head < text.size() && head < kMostHead) {
    const auto part = text.substr(0, head);
    const auto ends = std::count(part.begin(), part.end(), '\n') + std::count(part.begin(), part.end(), '\r');
    if (static_cast<std::size_t>(ends) >= kFewestLines) break;
    head *= 4;
  }
  head = std::min(head, text.size());
  if (head == text.size()) return {text};
  // A piece starts and ends with whole lines, where lines are short enough to allow it.
  const auto whole_lines = [&](std::size_t from, std::size_t size) {
    const auto to = std::min(from + size, text.size());
    auto start = from == 0 ? 0 : text.find_first_of("\r\n", from);
    if (start == std::string_view::npos || start >= to) return std::string_view{};
    if (from > 0) start = text.find_first_not_of("\r\n", start);
    if (start == std::string_view::npos || start >= to) return std::string_view{};
    const auto piece = text.substr(start, to - start);
    const auto end = to == text.size() ? piece.size() : piece.find_last_of("\r\n");
    return end == std::string_view::npos ? std::string_view{} : piece.substr(0, end);
  };
  std::vector<std::string_view> sample{whole_lines(0, head)};
  const std::size_t piece = std::max(kPiece, head / 4);
  for (int i = 1; i <= 4; ++i) {
    const std::size_t from = head + (text.size() - head) / 5 * static_cast<std::size_t>(i);
    if (from + piece < text.size()) sample.push_back(whole_lines(from, piece));
  }
  sample.push_back(whole_lines(text.size() - std::min(piece, text.size() - head), piece));
  std::erase_if(sample, [](std::string_view part) { return part.empty(); });
  return sample;
}

DialectGuess guess_dialect(std::string_view text, const Layout& fixed) {
  const auto sample = sample_of(text);
  DialectGuess best;
  double best_rank = -1;
  std::vector<char> decimals{'.', ','};
  if (fixed.decimal && !fixed.decimal->empty()) decimals = {fixed.decimal->front()};
  const Shares shares(sample);
  for (Candidate& candidate : candidates(shares, fixed)) {
    if (candidate.dialect.split == Dialect::Split::kColumns) {
      candidate.dialect.starts = aligned_columns(sample);
      if (candidate.dialect.starts.size() < 2 && !fixed.delimiter) continue;
    }
    std::array<double, 2> scores{-1, -1};
    for (std::size_t i = 0; i < decimals.size(); ++i) {
      const char decimal = decimals[i];
      const bool own = candidate.dialect.split == Dialect::Split::kDelimiter && candidate.dialect.delimiter == decimal;
      if (own && shares.of('"') == 0 && !fixed.decimal) continue;
      double best_piece = 0;
      const Tally result = tally(sample, candidate.dialect, decimal, best_piece);
      scores[i] = result.score();
      const double alone = result.columns() < 2 ? 0.5 : 1.0;  // one column is what is left where nothing splits
      const double rank =
          result.score() * alone + (result.score() > 0 ? candidate.bonus : 0) + (decimal == '.' ? 0.005 : 0);
      if (result.columns() == 0 || rank <= best_rank) continue;
      best_rank = rank;
      best.dialect = candidate.dialect;
      best.decimal = decimal;
      best.columns = result.columns();
      best.score = result.score();
      best.best_piece = best_piece;
      best.decimal_open = result.separators();
    }
    const bool is_best = best.dialect.name() == candidate.dialect.name();
    if (is_best && decimals.size() == 2) {
      const double difference = std::abs(scores[0] - scores[1]);
      best.other_decimal_possible = scores[0] >= 0 && scores[1] >= 0 && difference < 0.1;
      best.decimal_open = best.decimal_open && scores[0] >= 0 && scores[1] >= 0 && difference < 1e-9;
    }
    // A delimiter that makes a table of nearly every line leaves nothing to look for.
    constexpr double kClear = 0.93;
    if (is_best && best.columns > 1 && best.score >= kClear && candidate.dialect.split == Dialect::Split::kDelimiter)
      break;
  }
  if (best.columns == 0) best.decimal_open = false;
  return best;
}

DialectGuess guess_grid(const Grid& grid, const Layout& fixed) {
  DialectGuess best;
  double best_rank = 0;
  std::array<double, 2> scores{0, 0};
  constexpr std::array<char, 2> kSigns{'.', ','};
  const std::size_t step = std::max<std::size_t>(1, grid.rows.size() / (2 * kMostRows));
  for (std::size_t sign = 0; sign < kSigns.size(); ++sign) {
    if (fixed.decimal && !fixed.decimal->empty() && fixed.decimal->front() != kSigns[sign]) continue;
    Tally result(kSigns[sign], true);
    Row row;
    GridRows source(grid);
    for (std::size_t i = 0; i < grid.rows.size(); i += i < kMostRows ? 1 : step) {
      source.seek({i, 0});
      if (source.next(row)) result.add(row);
    }
    scores[sign] = result.score();
    const double rank = result.score() + (sign == 0 ? 0.005 : 0);
    if (result.columns() == 0 || rank <= best_rank) continue;
    best_rank = rank;
    best.dialect = {Dialect::Split::kDelimiter, ' ', {}};
    best.decimal = kSigns[sign];
    best.columns = result.columns();
    best.score = result.score();
    best.decimal_open = false;
  }
  return best;
}

}  // namespace ovenwright::log
