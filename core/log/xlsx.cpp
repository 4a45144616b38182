#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cmath>

#include "core/log/cell_text.h"
#include "core/log/grid_builder.h"
#include "core/log/place_in_file.h"
#include "core/log/workbook.h"
#include "core/log/xlsx_parts.h"
#include "core/units/phrase.h"

namespace ovenwright::log {
namespace {

/// A cell's place, from 0, of a reference such as "C5"; SIZE_MAX for what is no reference.
struct CellPlace {
  std::size_t row = SIZE_MAX, column = SIZE_MAX;
};

CellPlace place_of(std::string_view reference) {
  std::size_t column = 0, letters = 0;
  for (; letters < reference.size() && letters < 4; ++letters) {
    const char c = reference[letters];
    const bool upper = c >= 'A' && c <= 'Z', lower = c >= 'a' && c <= 'z';
    if (!upper && !lower) break;
    column = column * 26 + static_cast<std::size_t>(c - (upper ? 'A' : 'a')) + 1;
  }
  std::size_t row = 0;
  const auto digits = reference.substr(letters);
  const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), row);
  if (letters == 0 || error != std::errc{} || end != digits.data() + digits.size() || row == 0) return {};
  return {row - 1, column - 1};
}

/// Builds the grid of one worksheet from its elements.
class SheetHandler : public XmlHandler {
 public:
  SheetHandler(const std::string& name, const XlsxParts& parts, UnpackBudget& budget)
      : grid(name, budget), parts_(parts) {}

  void start(std::string_view name, const XmlAttributes& attributes) override {
    if (name == "row") {
      start_row(attributes);
    } else if (name == "c") {
      start_cell(attributes);
    } else if (name == "v") {
      in_value_ = true;
    } else if (name == "f") {
      formula_ = true;
    } else if (name == "is") {
      in_string_ = true;
    } else if (in_string_) {
      string_.start(name);
    }
  }

  void end(std::string_view name) override {
    if (name == "c") {
      end_cell();
    } else if (name == "v") {
      in_value_ = false;
    } else if (name == "is") {
      in_string_ = false;
    } else if (name == "row") {
      ++next_row_;
    } else if (in_string_) {
      string_.end(name);
    }
  }

  void text(std::string_view piece) override {
    if (in_value_) value_ += piece;
    if (in_string_) string_.text(piece);
  }

  GridBuilder grid;
  std::size_t formulas_without_result = 0;

 private:
  void start_row(const XmlAttributes& attributes) {
    const auto number = attributes.get("r");
    std::size_t row = 0;
    std::from_chars(number.data(), number.data() + number.size(), row);
    if (row > 0) next_row_ = row - 1;
    place_ = {next_row_, SIZE_MAX};
  }

  void start_cell(const XmlAttributes& attributes) {
    const auto stated = place_of(attributes.get("r"));
    // A cell without a reference follows the one before it.
    place_ = stated.row != SIZE_MAX ? stated : CellPlace{next_row_, place_.column + 1};
    type_ = attributes.get("t");
    const auto style = attributes.get("s");
    style_ = 0;
    std::from_chars(style.data(), style.data() + style.size(), style_);
    value_.clear();
    formula_ = false;
  }

  void end_cell() {
    auto text = cell_text();
    if (formula_ && text.empty() && type_ != "str") ++formulas_without_result;
    if (auto refused = grid.place(place_.row, place_.column, std::move(text))) error = std::move(refused);
  }

  std::string cell_text() {
    auto inline_text = string_.take();
    if (type_ == "inlineStr") return inline_text;
    if (value_.empty()) return inline_text;
    if (type_ == "s") {
      std::size_t index = SIZE_MAX;
      std::from_chars(value_.data(), value_.data() + value_.size(), index);
      if (index < parts_.shared_strings.size()) return parts_.shared_strings[index];
      error = no_such_text();
      return {};
    }
    if (type_ == "b") return value_ == "1" || value_ == "true" ? "TRUE" : "FALSE";
    if (type_ == "d") return trim_fraction(value_);
    if (type_ == "str" || type_ == "e") return value_;
    auto number = number_as_text(value_);
    const auto kind = style_ < parts_.styles.size() ? parts_.styles[style_] : NumberKind::kNumber;
    if (kind == NumberKind::kNumber) return number;
    double serial = NAN;
    const auto [end, failed] = std::from_chars(number.data(), number.data() + number.size(), serial);
    if (failed != std::errc{} || end != number.data() + number.size()) return number;
    return serial_as_text(serial, kind, parts_.from_1904);
  }

  /// A name or a unit would be lost without a word.
  Error no_such_text() const {
    const std::string found = parts_.shared_strings.empty() ? "a workbook without its texts (sharedStrings.xml)"
                                                            : "a text that the workbook does not hold";
    return {ErrorCode::kParse,
            fmt::format("found {}, expected a whole .xlsx workbook", found),
            {"", static_cast<int>(place_.row + 1), static_cast<int>(place_.column + 1)},
            found,
            "a whole .xlsx workbook"};
  }

  const XlsxParts& parts_;
  std::size_t next_row_ = 0;
  CellPlace place_{0, SIZE_MAX};
  std::string type_, value_;
  std::size_t style_ = 0;
  StringItem string_;
  bool in_value_ = false, in_string_ = false, formula_ = false;
};

Error not_a_workbook(std::string_view found) {
  return {ErrorCode::kParse,
          fmt::format("found {}, expected a workbook (.xlsx, .ods), an HTML table or a text log", found),
          {},
          std::string{found},
          "a workbook (.xlsx, .ods), an HTML table or a text log"};
}

}  // namespace

bool is_xlsx(const ZipArchive& archive) {
  return archive.find("[Content_Types].xml") != nullptr || archive.find("xl/workbook.xml") != nullptr;
}

Result<std::vector<Grid>> read_xlsx(const ZipArchive& archive, UnpackBudget& budget, std::vector<std::string>& notes) {
  if (archive.find("xl/workbook.bin") != nullptr) return not_a_workbook("a binary workbook (.xlsb)");
  if (archive.find("word/document.xml") != nullptr) return not_a_workbook("a word processor's document");
  if (archive.find("ppt/presentation.xml") != nullptr) return not_a_workbook("a presentation");
  const auto parts = read_xlsx_parts(archive, budget);
  if (!parts) return parts.error();
  std::vector<Grid> grids;
  for (const auto& sheet : parts->sheets) {
    const auto* const member = archive.find(sheet.part);
    SheetHandler handler{sheet.name, *parts, budget};
    if (auto error = parse_part(archive, *member, budget, handler)) return placed_in_file(*error, {"", sheet.name, ""});
    if (handler.formulas_without_result > 0) {
      notes.push_back(say(Phrase::kFormulas, {sheet.name, std::to_string(handler.formulas_without_result)}));
    }
    grids.push_back(handler.grid.take());
    grids.back().hidden = sheet.hidden;
    grids.back().formulas_without_result = handler.formulas_without_result;
  }
  return grids;
}

}  // namespace ovenwright::log
