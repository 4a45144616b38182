#include "core/log/rows.h"

#include <algorithm>
#include <cstring>

#include "core/log/text.h"
#include "core/log/text_scan.h"

namespace ovenwright::log {
namespace {

/// A quoted cell longer than this, or over more lines, is an unbalanced quote.
constexpr std::size_t kMostQuotedBytes = 1U << 16;
constexpr std::size_t kMostQuotedLines = 40;

constexpr auto kNone = std::string_view::npos;

bool is_blank(char c) { return c == ' ' || c == '\t'; }

/// Columns that a character takes on a screen of characters.
std::size_t width_of(char32_t c) {
  const bool wide = (c >= 0x1100 && c <= 0x115F) || (c >= 0x2E80 && c <= 0xA4CF) || (c >= 0xAC00 && c <= 0xD7A3) ||
                    (c >= 0xF900 && c <= 0xFAFF) || (c >= 0xFE30 && c <= 0xFE6F) || (c >= 0xFF01 && c <= 0xFF60) ||
                    (c >= 0xFFE0 && c <= 0xFFE6);
  return wide ? 2 : 1;
}

/// Byte offsets of the given places in a line.
void split_columns(std::string_view line, const std::vector<std::size_t>& starts,
                   std::vector<std::string_view>& cells) {
  std::size_t column = 0, byte = 0, cell_start = 0;
  std::size_t next = 1;
  const bool plain = is_ascii(line);
  while (next < starts.size()) {
    if (plain) {
      byte = std::min(starts[next], line.size());
    } else {
      while (byte < line.size() && column < starts[next]) {
        std::size_t length = 1;
        column += width_of(decode_character(line.substr(byte), length));
        byte += length;
      }
    }
    cells.push_back(trim(line.substr(cell_start, byte - cell_start)));
    cell_start = byte;
    ++next;
  }
  cells.push_back(trim(line.substr(std::min(cell_start, line.size()))));
}

}  // namespace

std::string Dialect::name() const {
  switch (split) {
    case Split::kDelimiter:
      return std::string(1, delimiter);
    case Split::kBlanks:
      return " ";
    case Split::kColumns:
      return kFixedWidth;
    case Split::kWhole:
      return "";
  }
  return "";
}

bool Row::blank() const {
  return std::all_of(cells.begin(), cells.end(), [](std::string_view cell) { return cell.empty(); });
}

std::size_t Row::filled() const {
  return static_cast<std::size_t>(
      std::count_if(cells.begin(), cells.end(), [](std::string_view cell) { return !cell.empty(); }));
}

void TextRows::seek(Position position) {
  at_ = position.offset;
  line_ = position.line;
  line_feed_known_ = false;
}

std::size_t TextRows::end_of_line(std::size_t from) {
  if (!line_feed_known_ || line_feed_ < from) {
    const auto found = text_.find('\n', from);
    line_feed_ = found == kNone ? text_.size() : found;
    line_feed_known_ = true;
  }
  const void* carriage = line_feed_ > from ? std::memchr(text_.data() + from, '\r', line_feed_ - from) : nullptr;
  return carriage == nullptr ? line_feed_ : static_cast<std::size_t>(static_cast<const char*>(carriage) - text_.data());
}

/// Behind the line end that stands at `at`.
std::size_t TextRows::behind_line_end(std::size_t at) const {
  constexpr std::size_t kMostReturns = 4;
  if (at >= text_.size()) return at;
  std::size_t behind = at;
  while (behind < text_.size() && behind - at < kMostReturns && text_[behind] == '\r') ++behind;
  return behind < text_.size() && text_[behind] == '\n' ? behind + 1 : at + 1;
}

bool TextRows::delimits(std::size_t at) const {
  if (at >= text_.size() || text_[at] == '\n' || text_[at] == '\r') return true;
  return dialect_.split == Dialect::Split::kDelimiter ? text_[at] == dialect_.delimiter : is_blank(text_[at]);
}

/// From an opening quote on. `at` moves to the delimiter or line end behind the cell.
bool TextRows::quoted_cell(std::size_t& at, std::size_t limit, std::string_view& cell) {
  std::size_t i = at + 1, lines = 0;
  bool doubled = false;
  for (;; ++i) {
    if (i >= text_.size() || i >= limit) return false;
    if (text_[i] == '\n' && ++lines > kMostQuotedLines) return false;
    if (text_[i] != '"') continue;
    if (i + 1 < text_.size() && text_[i + 1] == '"') {
      doubled = true;
      ++i;
      continue;
    }
    std::size_t behind = i + 1;
    while (behind < text_.size() && is_blank(text_[behind]) && !delimits(behind)) ++behind;
    if (!delimits(behind)) return false;
    cell = text_.substr(at + 1, i - at - 1);
    at = behind;
    break;
  }
  if (doubled) {
    std::string plain;
    for (std::size_t k = 0; k < cell.size(); ++k) {
      plain += cell[k];
      if (cell[k] == '"') ++k;
    }
    unquoted_.push_back(std::move(plain));
    cell = unquoted_.back();
  }
  cell = trim(cell);
  return true;
}

void TextRows::split_plain(std::string_view line, std::vector<std::string_view>& cells) const {
  switch (dialect_.split) {
    case Dialect::Split::kDelimiter:
      while (true) {
        const auto end = line.find(dialect_.delimiter);
        cells.push_back(trim(line.substr(0, end)));
        if (end == kNone) return;
        line.remove_prefix(end + 1);
      }
    case Dialect::Split::kBlanks: {
      std::string_view rest = trim(line);
      while (!rest.empty()) {
        const auto end = rest.find_first_of(" \t");
        cells.push_back(rest.substr(0, end));
        rest = end == kNone ? std::string_view{} : trim(rest.substr(end));
      }
      return;
    }
    case Dialect::Split::kColumns:
      return split_columns(line, dialect_.starts, cells);
    case Dialect::Split::kWhole:
      cells.push_back(trim(line));
      return;
  }
}

/// The row that starts at at_ where it holds quotes; moves at_ to its end.
bool TextRows::split_quoted(Row& row) {
  const std::size_t start = at_;
  std::size_t at = at_, line_end = end_of_line(at_);
  const bool by_character = dialect_.split == Dialect::Split::kDelimiter;
  while (true) {
    while (at < line_end && is_blank(text_[at]) && !(by_character && text_[at] == dialect_.delimiter)) ++at;
    std::string_view cell;
    if (at < line_end && text_[at] == '"' && quoted_cell(at, start + kMostQuotedBytes, cell)) {
      row.cells.push_back(cell);
      if (at > line_end) line_end = end_of_line(at);
    } else if (by_character || at < line_end) {
      std::size_t end = at;
      while (end < line_end && !delimits(end)) ++end;
      row.cells.push_back(trim(text_.substr(at, end - at)));
      at = end;
    }
    if (at >= line_end) break;
    if (by_character) {
      ++at;
    } else {
      while (at < line_end && is_blank(text_[at])) ++at;
      if (at >= line_end) break;
    }
  }
  row.text = text_.substr(start, line_end - start);
  row.lines = 1 + static_cast<std::size_t>(std::count(row.text.begin(), row.text.end(), '\n'));
  at_ = line_end;
  // A whole line in quotes.
  if (row.cells.size() == 1 && row.lines == 1 && by_character && row.cells[0].find(dialect_.delimiter) != kNone) {
    const std::string inner{row.cells[0]};
    unquoted_.push_back(inner);
    row.cells.clear();
    split_plain(unquoted_.back(), row.cells);
    for (auto& cell : row.cells) {
      if (cell.size() > 1 && cell.front() == '"' && cell.back() == '"') cell = trim(cell.substr(1, cell.size() - 2));
    }
  }
  return true;
}

void TextRows::split(std::string_view line, std::vector<std::string_view>& cells) {
  cells.clear();
  split_plain(line, cells);
}

bool TextRows::next(Row& row) {
  row.cells.clear();
  unquoted_.clear();
  if (at_ >= text_.size()) return false;
  row.line = line_;
  row.lines = 1;
  const std::size_t end = end_of_line(at_);
  const bool may_quote = dialect_.split == Dialect::Split::kDelimiter || dialect_.split == Dialect::Split::kBlanks;
  if (may_quote && std::memchr(text_.data() + at_, '"', end - at_) != nullptr) {
    split_quoted(row);
  } else {
    row.text = text_.substr(at_, end - at_);
    at_ = end;
    split_plain(row.text, row.cells);
  }
  row.ended = at_ < text_.size();
  at_ = behind_line_end(at_);
  line_ += row.lines;
  return true;
}

GridRows::GridRows(const Grid& grid) : grid_(&grid) {
  for (const auto& row : grid.rows) width_ = std::max(width_, row.size());
}

bool GridRows::next(Row& row) {
  row.cells.clear();
  if (at_ >= grid_->rows.size()) return false;
  row.line = grid_->line_of(at_);
  row.lines = 1;
  row.text = {};
  row.ended = true;
  for (const std::string& cell : grid_->rows[at_]) {
    const auto text = trim(cell);
    // Quotes that came with a text that was pasted or opened in the wrong way.
    const bool quoted = text.size() > 1 && text.front() == '"' && text.back() == '"';
    row.cells.push_back(quoted ? trim(text.substr(1, text.size() - 2)) : text);
  }
  if (!row.cells.empty()) row.cells.resize(width_);
  ++at_;
  return true;
}

}  // namespace ovenwright::log
