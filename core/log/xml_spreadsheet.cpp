#include <algorithm>
#include <charconv>
#include <optional>

#include "core/log/cell_text.h"
#include "core/log/file_signature.h"
#include "core/log/grid_builder.h"
#include "core/log/workbook.h"
#include "core/log/xml_events.h"

namespace ovenwright::log {
namespace {

/// Places count from 1 in the document and from 0 here; absent: the next one.
std::size_t index_or(const XmlAttributes& attributes, std::size_t next) {
  const auto text = attributes.get("Index");
  std::size_t index = 0;
  std::from_chars(text.data(), text.data() + text.size(), index);
  return index > 0 ? index - 1 : next;
}

std::size_t count(const XmlAttributes& attributes, std::string_view name) {
  const auto text = attributes.get(name);
  std::size_t number = 0;
  std::from_chars(text.data(), text.data() + text.size(), number);
  return std::min(number, GridBuilder::kMostRows);
}

/// A moment on the day before the calendar begins is a time of day.
std::string moment_as_text(std::string_view moment) {
  constexpr std::string_view kNoDay = "1899-12-31T";
  auto text = trim_fraction(moment);
  if (!text.starts_with(kNoDay)) return text;
  text.erase(0, kNoDay.size());
  return text.starts_with('0') ? text.substr(1) : text;
}

class SpreadsheetHandler : public XmlHandler {
 public:
  explicit SpreadsheetHandler(UnpackBudget& budget) : budget_(budget) {}

  void start(std::string_view name, const XmlAttributes& attributes) override {
    if (name == "Worksheet") {
      grid_.emplace(std::string{attributes.get("Name")}, budget_);
      row_ = next_row_ = 0;
    } else if (!grid_) {
      return;
    } else if (name == "Row") {
      row_ = index_or(attributes, next_row_);
      next_row_ = row_ + 1 + count(attributes, "Span");
      next_column_ = 0;
    } else if (name == "Cell") {
      column_ = index_or(attributes, next_column_);
      next_column_ = column_ + 1 + count(attributes, "MergeAcross");
    } else if (name == "Data") {
      in_data_ = true;
      type_ = attributes.get("Type");
      text_.clear();
    }
  }

  void end(std::string_view name) override {
    if (name == "Worksheet" && grid_) {
      grids.push_back(grid_->take());
      grid_.reset();
    } else if (name == "Data" && grid_) {
      in_data_ = false;
      error = grid_->place(row_, column_, cell_text());
    }
  }

  void text(std::string_view piece) override {
    if (in_data_) text_ += piece;
  }

  std::vector<Grid> grids;

 private:
  std::string cell_text() const {
    if (type_ == "Number") return number_as_text(text_);
    if (type_ == "DateTime") return moment_as_text(text_);
    if (type_ == "Boolean") return text_ == "1" ? "TRUE" : "FALSE";
    return text_;
  }

  UnpackBudget& budget_;
  std::optional<GridBuilder> grid_;
  std::size_t row_ = 0, column_ = 0, next_row_ = 0, next_column_ = 0;
  std::string type_, text_;
  bool in_data_ = false;
};

}  // namespace

bool is_xml_spreadsheet(std::string_view bytes) {
  return markup_head(bytes).find("urn:schemas-microsoft-com:office:spreadsheet") != std::string::npos;
}

Result<std::vector<Grid>> read_xml_spreadsheet(std::string_view bytes, UnpackBudget& budget) {
  SpreadsheetHandler handler{budget};
  XmlParser parser{handler};
  parser.feed(bytes);
  if (auto error = parser.finish("the XML spreadsheet")) return *error;
  return std::move(handler.grids);
}

}  // namespace ovenwright::log
