#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "core/log/grid.h"
#include "core/log/unpack_budget.h"
#include "core/log/zip_archive.h"

namespace ovenwright::log {

/// Whether the archive is a workbook of Office Open XML (ECMA-376), of OpenDocument (ISO/IEC 26300), or neither.
bool is_xlsx(const ZipArchive& archive);
bool is_ods(const ZipArchive& archive);

/// The worksheets in the order of the workbook, empty ones included. Shared and inline strings, numbers, booleans
/// (TRUE, FALSE), error values as they read ("#N/A"), results of formulas; a number whose format shows a date or time
/// becomes its ISO text. The value of merged cells stands in the first of them. A formula without a stored result is
/// empty, and noted. Errors: kParse (damaged, missing parts, over the budget, no workbook but a document of another
/// kind). Cost: one pass over each part; memory for the cells and the shared strings alone.
Result<std::vector<Grid>> read_xlsx(const ZipArchive& archive, UnpackBudget& budget, std::vector<std::string>& notes);

/// The same for OpenDocument spreadsheets: values as stored, not as shown; repeated cells and rows are written out.
/// Notes of cells, tracked changes and copies of other files' sheets are left out.
Result<std::vector<Grid>> read_ods(const ZipArchive& archive, UnpackBudget& budget);

/// OpenDocument spreadsheets in one plain XML document.
bool is_flat_ods(std::string_view bytes);
Result<std::vector<Grid>> read_flat_ods(std::string_view bytes, UnpackBudget& budget);

/// Workbooks in one plain XML document with Worksheet, Row, Cell and Data elements, as many instruments write them
/// under the name .xls.
bool is_xml_spreadsheet(std::string_view bytes);
Result<std::vector<Grid>> read_xml_spreadsheet(std::string_view bytes, UnpackBudget& budget);

}  // namespace ovenwright::log
