#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <charconv>

#include "core/log/cell_text.h"
#include "core/log/file_signature.h"
#include "core/log/grid_builder.h"
#include "core/log/workbook.h"
#include "core/log/xml_events.h"

namespace ovenwright::log {
namespace {

constexpr std::string_view kTableSpace = ":table:", kOfficeSpace = ":office:", kTextSpace = ":text:",
                           kStyleSpace = ":style:";

std::size_t repeats(const XmlAttributes& attributes, std::string_view name) {
  const auto text = attributes.get(name, kTableSpace);
  std::size_t count = 1;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), count);
  return error == std::errc::result_out_of_range ? GridBuilder::kMostRows : std::max<std::size_t>(count, 1);
}

/// Builds the grids of all tables from the elements of content.xml.
class ContentHandler : public XmlHandler {
 public:
  explicit ContentHandler(UnpackBudget& budget) : budget_(budget) {}

  void start(std::string_view name, const XmlAttributes& attributes) override {
    if (skipping_ > 0 || is_left_out(name)) {
      ++skipping_;
    } else if (name == "table") {
      start_table(attributes);
    } else if (name == "style") {
      style_ = attributes.get("name", kStyleSpace);
    } else if (name == "table-properties") {
      if (attributes.get("display", kTableSpace) == "false") hidden_styles_.push_back(style_);
    } else if (!grid_) {
      return;
    } else if (name == "table-row") {
      row_repeats_ = repeats(attributes, "number-rows-repeated");
      column_ = 0;
    } else if (name == "table-cell" || name == "covered-table-cell") {
      start_cell(attributes);
    } else if (in_cell_) {
      start_text(name, attributes);
    }
  }

  void end(std::string_view name) override {
    if (skipping_ > 0) {
      --skipping_;
    } else if (!grid_) {
      return;
    } else if (name == "table") {
      grids.push_back(grid_->take());
      grids.back().hidden = hidden_;
      grid_.reset();
    } else if (name == "table-row") {
      end_row();
    } else if (name == "table-cell" || name == "covered-table-cell") {
      end_cell();
    } else if (name == "p" && in_cell_) {
      in_paragraph_ = false;
    }
  }

  void text(std::string_view piece) override {
    if (skipping_ == 0 && in_paragraph_) text_ += piece;
  }

  std::vector<Grid> grids;

 private:
  /// Elements whose tables, cells and paragraphs are none of the sheet's; also a table inside a cell.
  bool is_left_out(std::string_view name) const {
    static constexpr std::array<std::string_view, 6> kNames = {"annotation", "tracked-changes", "dde-links",
                                                               "shapes",     "frame",           "named-expressions"};
    return std::ranges::find(kNames, name) != kNames.end() || (name == "table" && grid_.has_value());
  }

  void start_table(const XmlAttributes& attributes) {
    const auto name = attributes.get("name", kTableSpace);
    if (name.starts_with("'file:")) {  // a copy of a sheet of another file
      skipping_ = 1;
      return;
    }
    grid_.emplace(std::string{name}, budget_);
    hidden_ = std::ranges::find(hidden_styles_, attributes.get("style-name", kTableSpace)) != hidden_styles_.end();
    row_ = 0;
  }

  void start_cell(const XmlAttributes& attributes) {
    in_cell_ = true;
    cell_repeats_ = repeats(attributes, "number-columns-repeated");
    text_.clear();
    value_ = {};
    const auto type = attributes.get("value-type", kOfficeSpace);
    const auto stored = [&](std::string_view name) { return attributes.get(name, kOfficeSpace); };
    if (type == "float" || type == "percentage" || type == "currency") {
      value_ = number_as_text(stored("value"));
    } else if (type == "date") {
      value_ = trim_fraction(stored("date-value"));
    } else if (type == "time") {
      value_ = duration_as_text(stored("time-value"));
    } else if (type == "boolean") {
      value_ = stored("boolean-value") == "true" ? "TRUE" : "FALSE";
    } else if (type == "string") {
      value_ = stored("string-value");
    }
  }

  void start_text(std::string_view name, const XmlAttributes& attributes) {
    if (name == "p") {
      if (!text_.empty()) text_ += '\n';
      in_paragraph_ = true;
    } else if (name == "s" && in_paragraph_) {
      std::size_t spaces = 1;
      const auto count = attributes.get("c", kTextSpace);
      std::from_chars(count.data(), count.data() + count.size(), spaces);
      constexpr std::size_t kMostSpaces = 1000;
      text_.append(std::min(spaces, kMostSpaces), ' ');
    } else if (name == "tab" && in_paragraph_) {
      text_ += '\t';
    } else if (name == "line-break" && in_paragraph_) {
      text_ += '\n';
    }
  }

  void end_cell() {
    in_cell_ = false;
    in_paragraph_ = false;
    const auto& content = value_.empty() ? text_ : value_;
    if (!content.empty()) {
      for (std::size_t i = 0; i < cell_repeats_ && !error; ++i) error = grid_->place(row_, column_ + i, content);
    }
    column_ += std::min(cell_repeats_, GridBuilder::kMostRows);
  }

  void end_row() {
    if (grid_->has_row(row_) && row_repeats_ > 1) error = grid_->repeat_row(row_, row_repeats_ - 1);
    row_ += std::min(row_repeats_, GridBuilder::kMostRows);
  }

  UnpackBudget& budget_;
  std::optional<GridBuilder> grid_;
  std::string style_;
  std::vector<std::string> hidden_styles_;
  bool hidden_ = false;
  std::size_t row_ = 0, column_ = 0, row_repeats_ = 1, cell_repeats_ = 1;
  std::string value_, text_;
  int skipping_ = 0;
  bool in_cell_ = false, in_paragraph_ = false;
};

/// Sees whether the list of parts says that they are encrypted.
class ManifestHandler : public XmlHandler {
 public:
  void start(std::string_view name, const XmlAttributes&) override { encrypted |= name == "encryption-data"; }
  void end(std::string_view) override {}
  bool encrypted = false;
};

Result<std::vector<Grid>> tables_of(ContentHandler& handler) {
  if (!handler.grids.empty()) return std::move(handler.grids);
  return Error{ErrorCode::kParse,
               "found an OpenDocument file without a table, expected a spreadsheet",
               {},
               "no table",
               "a spreadsheet"};
}

}  // namespace

bool is_ods(const ZipArchive& archive) {
  const int parts = (archive.find("content.xml") != nullptr) + (archive.find("META-INF/manifest.xml") != nullptr) +
                    (archive.find("mimetype") != nullptr);
  return parts >= 2;
}

Result<std::vector<Grid>> read_ods(const ZipArchive& archive, UnpackBudget& budget) {
  const auto parse = [&](const ZipArchive::Member& member, XmlHandler& handler) -> std::optional<Error> {
    XmlParser parser{handler};
    if (auto error = archive.read(member, budget, [&](std::string_view piece) { return parser.feed(piece); }))
      return error;
    return parser.finish(member.name);
  };
  if (const auto* const manifest = archive.find("META-INF/manifest.xml")) {
    ManifestHandler handler;
    if (auto error = parse(*manifest, handler)) return *error;
    if (handler.encrypted) {
      return Error{ErrorCode::kParse,
                   "found a workbook with a password, expected one that can be read without",
                   {},
                   "a workbook with a password",
                   "one that can be read without"};
    }
  }
  ContentHandler handler{budget};
  if (const auto* const content = archive.find("content.xml")) {
    if (auto error = parse(*content, handler)) return *error;
  }
  return tables_of(handler);
}

bool is_flat_ods(std::string_view bytes) {
  return markup_head(bytes).find("urn:oasis:names:tc:opendocument:xmlns:office") != std::string::npos;
}

Result<std::vector<Grid>> read_flat_ods(std::string_view bytes, UnpackBudget& budget) {
  ContentHandler handler{budget};
  XmlParser parser{handler};
  parser.feed(bytes);
  if (auto error = parser.finish("the OpenDocument spreadsheet")) return *error;
  return tables_of(handler);
}

}  // namespace ovenwright::log
