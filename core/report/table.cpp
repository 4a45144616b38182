#include "core/report/table.h"

#include <unicode/uchar.h>
#include <unicode/unistr.h>

#include <algorithm>

namespace ovenwright::report {
namespace {

std::size_t width_of_character(UChar32 character) {
  if (character < 0x80) return 1;
  const auto type = u_charType(character);
  if (type == U_NON_SPACING_MARK || type == U_ENCLOSING_MARK || type == U_FORMAT_CHAR) return 0;
  const auto width = u_getIntPropertyValue(character, UCHAR_EAST_ASIAN_WIDTH);
  return width == U_EA_WIDE || width == U_EA_FULLWIDTH ? 2 : 1;
}

}  // namespace

std::size_t width_of(std::string_view text) {
  const bool ascii = std::ranges::all_of(text, [](char c) { return static_cast<unsigned char>(c) < 0x80; });
  if (ascii) return text.size();
  const auto characters =
      icu::UnicodeString::fromUTF8(icu::StringPiece{text.data(), static_cast<int32_t>(text.size())});
  std::size_t width = 0;
  for (int32_t at = 0; at < characters.length(); at = characters.moveIndex32(at, 1)) {
    width += width_of_character(characters.char32At(at));
  }
  return width;
}

std::string Table::text() const {
  std::vector<std::size_t> widths;
  for (std::size_t i = 0; i < columns_.size(); ++i) {
    std::size_t width = 0;
    for (const auto& row : rows_) width = std::max(width, width_of(row[i]));
    widths.push_back(width == 0 ? 0 : std::max(width, width_of(columns_[i].title)));
  }
  std::string text;
  const auto add_line = [&](const auto& cell_of) {
    std::string line;
    std::string between;
    for (std::size_t i = 0; i < columns_.size(); ++i) {
      if (widths[i] == 0) continue;
      const std::string& cell = cell_of(i);
      const std::string padding(widths[i] - width_of(cell), ' ');
      line += between + (columns_[i].align == Align::kRight ? padding + cell : cell + padding);
      between = "  ";
    }
    line.erase(line.find_last_not_of(' ') + 1);
    text += line + "\n";
  };
  add_line([&](std::size_t i) -> const std::string& { return columns_[i].title; });
  for (const auto& row : rows_) add_line([&](std::size_t i) -> const std::string& { return row[i]; });
  return text;
}

std::string wrapped(std::string_view text, std::size_t indent, std::size_t most) {
  std::string lines;
  std::size_t column = 0;
  bool begun = false;  // whether the line has a word
  while (!text.empty()) {
    const std::size_t blank = std::min(text.find(' '), text.size());
    const std::string_view word = text.substr(0, blank);
    text.remove_prefix(std::min(blank + 1, text.size()));
    const std::size_t width = width_of(word);
    if (begun && column + 1 + width > most) {
      lines += "\n" + std::string(indent, ' ');
      column = indent;
    } else if (begun) {
      lines += ' ';
      ++column;
    }
    lines += word;
    column += width;
    begun = true;
  }
  return lines + "\n";
}

}  // namespace ovenwright::report
