#include "core/log/place_in_file.h"

#include <fmt/format.h>

#include <algorithm>

namespace ovenwright::log {
namespace {

std::string place_in_sheet(const Place& where, const PlaceInFile& place) {
  if (place.kind == "html")
    return where.line > 0 ? fmt::format("row {} of table {}", where.line, place.sheet.empty() ? "1" : place.sheet) : "";
  if (place.sheet.empty()) return {};
  if (where.line <= 0) return fmt::format("sheet \"{}\"", place.sheet);
  if (where.column <= 0) return fmt::format("row {} of sheet \"{}\"", where.line, place.sheet);
  return fmt::format("cell {}{} of sheet \"{}\"", column_letters(where.column), where.line, place.sheet);
}

}  // namespace

std::string column_letters(int column) {
  std::string letters;
  for (; column > 0; column = (column - 1) / 26) letters += static_cast<char>('A' + (column - 1) % 26);
  std::ranges::reverse(letters);
  return letters;
}

Error placed_in_file(Error error, const PlaceInFile& place) {
  const auto names = [&error](const std::string& text) {
    return text.empty() || error.message.find("\"" + text + "\"") != std::string::npos;
  };
  std::string where = names(place.sheet) && place.kind != "html" ? "" : place_in_sheet(error.where, place);
  if (!names(place.member)) where += fmt::format("{}in \"{}\"", where.empty() ? "" : " ", place.member);
  if (!where.empty()) error.message += " (" + where + ")";
  return error;
}

}  // namespace ovenwright::log
