#include "core/log/html_tables.h"

#include <fmt/format.h>
#include <libxml/HTMLparser.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <exception>
#include <iterator>
#include <limits>
#include <memory>
#include <optional>

#include "core/log/file_signature.h"
#include "core/log/grid_builder.h"

namespace ovenwright::log {
namespace {

/// Runs of blanks, no-break ones too, as one blank, none at the ends.
std::string joined_blanks(std::string_view text) {
  constexpr std::string_view kNoBreak = "\xC2\xA0";
  std::string joined;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const bool no_break = text.substr(i).starts_with(kNoBreak);
    if (no_break) ++i;
    if (no_break || text[i] == ' ' || (text[i] >= '\t' && text[i] <= '\r')) {
      if (!joined.empty() && joined.back() != ' ') joined += ' ';
    } else {
      joined += text[i];
    }
  }
  if (joined.ends_with(' ')) joined.pop_back();
  return joined;
}

/// One table while it is read.
struct OpenTable {
  OpenTable(UnpackBudget& budget, std::size_t begun_before) : grid("", budget), order(begun_before) {}
  GridBuilder grid;
  std::size_t order;                 ///< tables that begin before it
  std::size_t row = 0, column = 0;   ///< of the next cell
  std::vector<std::size_t> spanned;  ///< for each column, the first row that no cell above reaches into
  std::size_t row_span = 1, column_span = 1;
  std::string text;
  bool row_open = false, any_row = false, in_cell = false, any_text = false;
};

/// Builds the tables from the parser's elements; it closes what the document leaves open.
class TableHandler {
 public:
  explicit TableHandler(UnpackBudget& budget) : budget_(budget) {}

  void start(std::string_view name, const xmlChar** attributes) {
    if (name == "script" || name == "style") ++hidden_;
    if (name == "pre") ++preformatted_;
    if (name == "table") {
      open_.emplace_back(budget_, finished_.size() + open_.size());
    } else if (open_.empty()) {
      return;
    } else if (name == "tr") {
      end_row();
      open_.back().row_open = true;
    } else if (name == "td" || name == "th") {
      start_cell(attributes);
    } else if ((name == "br" || name == "p" || name == "div") && open_.back().in_cell) {
      open_.back().text += ' ';
    }
  }

  void end(std::string_view name) {
    if ((name == "script" || name == "style") && hidden_ > 0) --hidden_;
    if (name == "pre" && preformatted_ > 0) {
      --preformatted_;
      preformatted += '\n';
    }
    if (open_.empty()) return;
    if (name == "td" || name == "th") end_cell();
    if (name == "tr") end_row();
    if (name == "table") end_table();
  }

  void text(std::string_view piece) {
    if (hidden_ > 0) return;
    if (!open_.empty()) {
      if (open_.back().in_cell) open_.back().text += piece;
    } else if (preformatted_ > 0) {
      preformatted += piece;
    }
  }

  void finish() {
    while (!open_.empty()) end_table();
    std::ranges::sort(finished_, {}, &Finished::order);
    for (auto& table : finished_) {
      if (table.any_text) grids.push_back(std::move(table.grid));
    }
  }

  std::optional<Error> error;
  std::vector<Grid> grids;
  std::string preformatted;

 private:
  struct Finished {
    std::size_t order = 0;
    bool any_text = false;
    Grid grid;
  };

  static std::size_t span(const xmlChar** attributes, std::string_view wanted) {
    constexpr std::size_t kMostSpan = 1000;  // as in the HTML standard for columns
    for (; attributes != nullptr && attributes[0] != nullptr; attributes += 2) {
      if (wanted != reinterpret_cast<const char*>(attributes[0]) || attributes[1] == nullptr) continue;
      const std::string_view digits{reinterpret_cast<const char*>(attributes[1])};
      std::size_t count = 1;
      std::from_chars(digits.data(), digits.data() + digits.size(), count);
      return std::clamp<std::size_t>(count, 1, kMostSpan);
    }
    return 1;
  }

  void start_cell(const xmlChar** attributes) {
    auto& table = open_.back();
    end_cell();
    table.row_open = true;
    while (table.column < table.spanned.size() && table.spanned[table.column] > table.row) ++table.column;
    table.row_span = span(attributes, "rowspan");
    table.column_span = span(attributes, "colspan");
    table.in_cell = true;
    table.text.clear();
  }

  void end_cell() {
    auto& table = open_.back();
    if (!table.in_cell) return;
    table.in_cell = false;
    auto cell = joined_blanks(table.text);
    table.any_text |= !cell.empty();
    if (auto refused = table.grid.place(table.row, table.column, std::move(cell))) error = std::move(refused);
    const std::size_t end = std::min(table.column + table.column_span, GridBuilder::kMostColumns);
    if (table.row_span > 1 && table.spanned.size() < end) table.spanned.resize(end, 0);
    for (std::size_t i = table.column; table.row_span > 1 && i < end; ++i)
      table.spanned[i] = table.row + table.row_span;
    table.column = std::max(table.column, end);
  }

  void end_row() {
    auto& table = open_.back();
    end_cell();
    if (!table.row_open) return;
    table.row_open = false;
    ++table.row;
    table.column = 0;
  }

  void end_table() {
    end_row();
    auto& table = open_.back();
    finished_.push_back({table.order, table.any_text, table.grid.take()});
    open_.pop_back();
  }

  UnpackBudget& budget_;
  std::vector<OpenTable> open_;
  std::vector<Finished> finished_;
  int hidden_ = 0, preformatted_ = 0;
};

struct Parse {
  TableHandler handler;
  htmlParserCtxtPtr context = nullptr;

  /// No exception may pass through the C library.
  template <class Event>
  void guard(Event event) noexcept {
    if (!handler.error) {
      try {
        event();
      } catch (const std::exception& e) {
        handler.error = Error{ErrorCode::kParse, e.what(), {}, {}, {}};
      }
    }
    if (handler.error) xmlStopParser(context);
  }
};

void set_events(xmlSAXHandler& events) {
  events = {};
  events.startElement = [](void* parse, const xmlChar* name, const xmlChar** attributes) {
    auto& self = *static_cast<Parse*>(parse);
    self.guard([&] { self.handler.start(reinterpret_cast<const char*>(name), attributes); });
  };
  events.endElement = [](void* parse, const xmlChar* name) {
    auto& self = *static_cast<Parse*>(parse);
    self.guard([&] { self.handler.end(reinterpret_cast<const char*>(name)); });
  };
  events.characters = [](void* parse, const xmlChar* text, int length) {
    auto& self = *static_cast<Parse*>(parse);
    self.guard([&] { self.handler.text({reinterpret_cast<const char*>(text), static_cast<std::size_t>(length)}); });
  };
  events.ignorableWhitespace = events.characters;
  events.cdataBlock = events.characters;
}

using Cells = std::vector<std::string>;

const Cells* first_row(const Grid& grid) {
  const auto row = std::ranges::find_if(grid.rows, [](const Cells& cells) { return !cells.empty(); });
  return row == grid.rows.end() ? nullptr : &*row;
}

bool words_alone(const Cells& row) {
  return row.size() > 1 && std::ranges::none_of(row, [](const std::string& cell) {
           return !cell.empty() && (cell[0] == '-' || cell[0] == '+' || (cell[0] >= '0' && cell[0] <= '9'));
         });
}

/// A page may part a table: the same header begins each part, or the header is a table of its own, above one that
/// scrolls. The parts are one table, as they would be in a text.
bool goes_on(const Grid& table, const Grid& next) {
  const auto *header = first_row(table), *first = first_row(next);
  if (header == nullptr || first == nullptr || !words_alone(*header) || header->size() != first->size()) return false;
  const auto filled = std::ranges::count_if(table.rows, [](const Cells& cells) { return !cells.empty(); });
  const bool digit = !first->front().empty() && first->front()[0] >= '0' && first->front()[0] <= '9';
  return *header == *first ? filled > 1 : filled == 1 && digit;
}

std::vector<Grid> joined(std::vector<Grid> parts) {
  std::vector<Grid> tables;
  for (Grid& part : parts) {
    if (tables.empty() || !goes_on(tables.back(), part)) {
      tables.push_back(std::move(part));
    } else {
      auto& rows = tables.back().rows;
      rows.insert(rows.end(), std::make_move_iterator(part.rows.begin()), std::make_move_iterator(part.rows.end()));
    }
  }
  return tables;
}

/// Where this begins for the last time, upper and lower case alike; npos: nowhere.
std::size_t last_place(std::string_view text, std::string_view lower) {
  const auto same = [](char a, char b) { return (a >= 'A' && a <= 'Z' ? static_cast<char>(a + 32) : a) == b; };
  const auto found = std::find_end(text.begin(), text.end(), lower.begin(), lower.end(), same);
  return found == text.end() ? std::string_view::npos : static_cast<std::size_t>(found - text.begin());
}

/// A document that is cut off in a row of a table: its last cell is a part of one. The parser closes what stands open.
bool ends_in_row(std::string_view text) {
  constexpr auto kNowhere = std::string_view::npos;
  const auto open_behind = [&](const char* begin, const char* end) {
    const auto begun = last_place(text, begin), ended = last_place(text, end);
    return begun != kNowhere && (ended == kNowhere || ended < begun);
  };
  return open_behind("<table", "</table") && open_behind("<tr", "</tr");
}

/// The encoding that the document declares near its start; empty where it declares none.
std::string declared_encoding(std::string_view bytes) {
  const auto head = markup_head(bytes);
  auto at = head.find("charset=");
  if (at == std::string::npos) return {};
  at = head.find_first_not_of("\"' ", at + 8);
  if (at == std::string::npos) return {};
  return head.substr(at, head.find_first_of("\"' ;>/\r\n", at) - at);
}

}  // namespace

bool is_html(std::string_view bytes) {
  const auto head = markup_head(bytes);
  return std::ranges::any_of(std::array{"<html", "<!doctype html", "<table", "<body"},
                             [&](const char* tag) { return head.find(tag) != std::string::npos; });
}

Result<HtmlTables> read_html(std::string_view bytes, UnpackBudget& budget) {
  auto decoded = decode(bytes, declared_encoding(bytes));
  if (!decoded) decoded = decode(bytes);
  if (!decoded) return decoded.error();
  const std::string_view text = decoded->unchanged ? bytes.substr(decoded->skip) : std::string_view{decoded->utf8};
  if (text.size() > static_cast<std::size_t>(std::numeric_limits<int>::max()) || !budget.take(text.size())) {
    return budget.exceeded("the HTML document");
  }
  static const bool initialised = (xmlInitParser(), true);  // once, before any thread parses
  (void)initialised;
  Parse parse{TableHandler{budget}};
  struct Free {
    void operator()(htmlParserCtxtPtr context) const {
      xmlFreeDoc(context->myDoc);
      htmlFreeParserCtxt(context);
    }
  };
  const std::unique_ptr<xmlParserCtxt, Free> context{htmlNewParserCtxt()};
  if (!context) return budget.exceeded("the HTML document");
  parse.context = context.get();
  set_events(*context->sax);
  context->userData = &parse;
  htmlCtxtReadMemory(context.get(), text.data(), static_cast<int>(text.size()), nullptr, "UTF-8",
                     HTML_PARSE_RECOVER | HTML_PARSE_NOERROR | HTML_PARSE_NOWARNING | HTML_PARSE_NONET);
  parse.handler.finish();
  if (parse.handler.error) return *parse.handler.error;
  HtmlTables tables{std::move(parse.handler.grids), std::move(parse.handler.preformatted), ends_in_row(text)};
  if (tables.cut_off && !tables.grids.empty()) tables.grids.back().rows.pop_back();
  tables.grids = joined(std::move(tables.grids));
  return tables;
}

}  // namespace ovenwright::log
