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
  if (text.size() > 1 && text.front() == '\'') return trim(text.substr(1));
  if (text.size() > 2 && text.front() == '"' && text.back() == '"') return trim(text.substr(1, text.size() - 2));
  return text;
}

bool may_start_number(char c) { return (c >= '0' && c <= '9') || c == '-' || c == '+' || c == '.' || c == ','; }

Cell plain_cell(std::string_view text, char decimal) {
  Cell cell;
  if (may_start_number(text.front())) {
    if (const auto number = read_number(text, decimal)) {
      cell.value = number->value;
      cell.decimals = number->decimals;
      cell.grouping = number->grouping;
      if (number->rest.empty() || number->rest == "°") {
        cell.kind = CellKind::kNumber;
        return cell;
      }
      if (auto unit = parse_unit(number->rest); unit && unit->quantity != Quantity::kClock) {
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
