#pragma once
#include <optional>
#include <string_view>

#include "core/log/time_text.h"
#include "core/log/units.h"

namespace ovenwright::log {

enum class CellKind { kEmpty, kOpen, kOver, kUnder, kNumber, kTime, kText };

/// What one cell of a table holds.
struct Cell {
  CellKind kind = CellKind::kEmpty;
  double value = 0;              ///< kNumber; of a packed date the figures as one number
  int decimals = -1;             ///< kNumber: digits after the sign, -1 without one
  char grouping = 0;             ///< kNumber: thousands separator
  std::optional<UnitText> unit;  ///< kNumber: "25.3 °C"
  bool tolerance = false;        ///< kNumber: "± 0.5" stood behind it
  TimeText time;                 ///< kTime

  bool number() const { return kind == CellKind::kNumber; }
  /// A number, or a date that is as well one.
  bool figures() const { return number() || (kind == CellKind::kTime && time.packed); }
  /// Nothing to measure, but at its place in a column of numbers.
  bool no_reading() const {
    return kind == CellKind::kEmpty || kind == CellKind::kOpen || kind == CellKind::kOver || kind == CellKind::kUnder;
  }
};

/// Reads a cell: a number (with its unit), a time or date, a word for no reading, or text.
/// @param text     trimmed, quotes taken off
/// @param decimal  '.' or ','
Cell read_cell(std::string_view text, char decimal);

}  // namespace ovenwright::log
