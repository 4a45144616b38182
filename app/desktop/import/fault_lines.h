#pragma once
#include <vector>

#include "app/desktop/document/checked.h"

namespace ovenwright::desktop {

/// Lines of the file with a cell that was taken out as a fault.
struct FaultLines {
  struct Cell {
    std::size_t line = 0;  ///< from 1
    int column = 0;        ///< from 0
  };
  std::vector<log::ShownLine> lines;  ///< in the file's order
  std::vector<Cell> cells;
};

/// At most two lines of each fault and some twenty in all, read from the file anew with the layout it was read by:
/// text, sheets of workbooks, tables of pages, also packed, in every form. Empty where reading anew gives other
/// samples, and for files above 16 MB.
FaultLines faultLines(const Source& source, const RunView& view);

}  // namespace ovenwright::desktop
