#include "core/log/cell.h"

#include <string>

#include "core/log/number.h"
#include "core/log/text.h"
#include "core/log/text_scan.h"
#include "core/log/words.h"

namespace ovenwright::log {
namespace {

/// What spreadsheets put around a number that is to stay text: '25.3, ="25.3".
std::string_view without_wrapping(std::string_view text) {
  if (text.size() > 3 && text.starts_with("=\"") && text.ends_with("\"")) return text.substr(2, text.size() - 3);
  if (text.size() > 2 && text.front() == '\'' && text.back() == '\'') return trim(text.substr(1, text.size() - 2));
  if (text.size() > 1 && text.front() == '\'') return trim(text.substr(1));
  if (text.size() > 2 && text.front() == '"' && text.back() == '"') return trim(text.substr(1, text.size() - 2));
  return text;
}

bool may_start_number(char c) { return (c >= '0' && c <= '9') || c == '-' || c == '+' || c == '.' || c == ','; }

/// Whether a unit may start so: ",4" and ":14:22" behind a number are none.
bool may_start_unit(char c) { return std::string_view{",.:;-/+'"}.find(c) == std::string_view::npos; }

bool is_digit(char c) { return c >= '0' && c <= '9'; }

/// "9:14:22", "09:14:22.500": the clock of most logs, without the search for all that a time may be.
bool plain_clock(std::string_view text, TimeText& time) {
  const std::size_t hours = text.size() > 1 && text[1] == ':' ? 1 : 2;
  if (text.size() < hours + 6 || text[hours] != ':' || text[hours + 3] != ':') return false;
  const auto two = [text](std::size_t at) { return (text[at] - '0') * 10 + (text[at + 1] - '0'); };
  for (const std::size_t i : {hours - 1, std::size_t{0}, hours + 1, hours + 2, hours + 4, hours + 5}) {
    if (!is_digit(text[i])) return false;
  }
  const int minutes = two(hours + 1), seconds = two(hours + 4);
  if (minutes > 59 || seconds > 60) return false;
  double fraction = 0, power = 1;
  std::size_t i = hours + 6;
  if (i < text.size()) {
    if ((text[i] != '.' && text[i] != ',') || i + 1 == text.size() || text.size() - i > 13) return false;
    for (++i; i < text.size(); ++i, ++time.fraction_digits) {
      if (!is_digit(text[i])) return false;
      fraction = fraction * 10 + (text[i] - '0');
      power *= 10;
    }
  }
  time.has_clock = true;
  time.parts = 3;
  time.lead = hours == 1 ? text[0] - '0' : two(0);
  time.clock_s = time.lead * 3600.0 + minutes * 60.0 + seconds + fraction / power;
  return true;
}

/// "*5A" behind the last number of a line.
bool checksum(std::string_view rest) {
  const auto hex = [](char c) { return is_digit(c) || (c >= 'A' && c <= 'F') || (c >= 'a' && c <= 'f'); };
  return rest.size() == 3 && rest[0] == '*' && hex(rest[1]) && hex(rest[2]);
}

/// "± 0.5 °C", "°C +/- 0.5 °C": how sure the number before it is, which is no part of it, is taken out of `rest`, and a
/// unit left in it. False, and nothing taken, where something else stands there.
bool take_tolerance(std::string_view& rest, char decimal) {
  for (const std::string_view sign : {"±", "+/-", "+-"}) {
    const auto at = rest.find(sign);
    if (at == std::string_view::npos) continue;
    const auto behind = trim(rest.substr(at + sign.size()));
    const auto number = !behind.empty() && is_digit(behind.front()) ? read_number(behind, decimal) : std::nullopt;
    if (!number) return false;
    auto before = trim(rest.substr(0, at));
    rest = number->rest;
    if (before.ends_with('(') && rest.ends_with(')')) {  // "25.0 °C (± 0.5)"
      before = trim(before.substr(0, before.size() - 1));
      rest = trim(rest.substr(0, rest.size() - 1));
    }
    if (!before.empty()) rest = before;
    return true;
  }
  return false;
}

Cell plain_cell(std::string_view text, char decimal) {
  Cell cell;
  if (plain_clock(text, cell.time)) {
    cell.kind = CellKind::kTime;
    return cell;
  }
  cell.time = {};
  if (text.size() >= 12 && text.size() <= 17 && is_digit(text.front())) {
    if (const auto packed = packed_moment(text)) {
      cell.kind = CellKind::kTime;
      cell.time = *packed;
      if (text.find_first_not_of("0123456789") == std::string_view::npos) {
        const auto number = read_number(text, decimal);
        cell.time.packed = number.has_value();
        cell.value = number ? number->value : 0;
      }
      return cell;
    }
  }
  if (may_start_number(text.front())) {
    if (const auto number = read_number(text, decimal)) {
      cell.value = number->value;
      cell.decimals = number->decimals;
      cell.grouping = number->grouping;
      std::string_view rest = number->rest;
      if (!rest.empty()) cell.tolerance = take_tolerance(rest, decimal);
      if (rest.empty() || rest == "°" || checksum(rest)) {
        cell.kind = CellKind::kNumber;
        return cell;
      }
      if (auto unit = may_start_unit(rest.front()) ? parse_unit(rest) : std::nullopt;
          unit && unit->quantity != Quantity::kClock) {
        cell.kind = CellKind::kNumber;
        cell.unit = std::move(unit);
        return cell;
      }
    }
  }
  if (const auto time = read_time_text(text)) {
    cell.kind = CellKind::kTime;
    cell.time = *time;
    return cell;
  }
  constexpr std::size_t kLongestWord = 48;
  const bool figures = is_digit(text.front()) && text.find_first_not_of("0123456789.,:;/+- ") == std::string_view::npos;
  if (text.size() > kLongestWord || figures) {
    cell.kind = CellKind::kText;
    return cell;
  }
  const std::string small = lower(text);
  cell.kind = means_open(small)    ? CellKind::kOpen
              : means_over(small)  ? CellKind::kOver
              : means_under(small) ? CellKind::kUnder
                                   : CellKind::kText;
  return cell;
}

}  // namespace

Cell read_cell(std::string_view text, char decimal) {
  text = without_wrapping(text);
  if (text.empty()) return {};
  if (is_ascii(text)) return plain_cell(text, decimal);
  const std::string plain = plain_forms(text);
  const auto trimmed = trim(plain);
  return trimmed.empty() ? Cell{} : plain_cell(trimmed, decimal);
}

}  // namespace ovenwright::log
