#pragma once
#include <string>

#include "core/log/grid.h"
#include "core/units/result.h"

namespace ovenwright::log {

/// Where in a file its text or table stands: what an error's line and column count in.
struct PlaceInFile {
  std::string member;  ///< of an archive; else empty
  std::string sheet;   ///< the key of a sheet or of a page's table; else empty
  std::string kind;    ///< Content::kind
};

/// The error with that place behind its message, as people find it: cell C301 of sheet "Data", row 3 of table 2,
/// in "run7.csv". As it is where the file is a plain text, and where the message names the place already.
Error placed_in_file(Error error, const PlaceInFile& place);

/// "C" for 3, as spreadsheet programs name columns.
std::string column_letters(int column);

}  // namespace ovenwright::log
