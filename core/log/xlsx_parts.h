#pragma once
#include <string>
#include <vector>

#include "core/log/cell_text.h"
#include "core/log/unpack_budget.h"
#include "core/log/xml_events.h"
#include "core/log/zip_archive.h"

namespace ovenwright::log {

/// What the sheets of an Office Open XML workbook refer to.
struct XlsxParts {
  struct Sheet {
    std::string name;
    std::string part;  ///< its path in the archive
    bool hidden = false;
  };
  std::vector<Sheet> sheets;
  bool from_1904 = false;
  std::vector<std::string> shared_strings;
  std::vector<NumberKind> styles;  ///< by the number in a cell's attribute s
};

/// Errors: kParse.
Result<XlsxParts> read_xlsx_parts(const ZipArchive& archive, UnpackBudget& budget);

/// Unpacks one part straight into a handler.
std::optional<Error> parse_part(const ZipArchive& archive, const ZipArchive::Member& member, UnpackBudget& budget,
                                XmlHandler& handler);

/// The text of a string item: its runs joined, phonetic guides left out, "_x000D_" and its like decoded.
class StringItem {
 public:
  void start(std::string_view name);
  void end(std::string_view name);
  void text(std::string_view piece);
  std::string take();

 private:
  std::string text_;
  bool in_text_ = false;
  int phonetic_ = 0;
};

}  // namespace ovenwright::log
