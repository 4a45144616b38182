#include "core/log/layout_file.h"

#include <array>
#include <map>
#include <optional>

#include "core/files/profiles.h"
#include "core/files/text_file.h"
#include "core/files/toml.h"
#include "core/log/encoding_guess.h"
#include "core/log/rows.h"

namespace ovenwright::log {
namespace {

constexpr int kMostColumns = 100000;

constexpr std::array<std::string_view, 4> kUnits{"degC", "degF", "K", "mV"};
constexpr std::array<std::string_view, 2> kDecimals{".", ","};
constexpr std::array<std::string_view, 3> kForms{"wide", "long", "rows"};
constexpr std::array<std::string_view, 3> kDateOrders{"dmy", "mdy", "ymd"};
constexpr std::array<std::string_view, 2> kUnreadable{"refuse", "empty"};
constexpr std::array<std::string_view, 8> kThermocouples{"K", "J", "T", "E", "N", "R", "S", "B"};
constexpr std::array<std::string_view, 18> kTimeKinds{"seconds",
                                                      "tenths of a second",
                                                      "hundredths of a second",
                                                      "milliseconds",
                                                      "microseconds",
                                                      "minutes",
                                                      "hours",
                                                      "days",
                                                      "clock m:s",
                                                      "clock h:m",
                                                      "clock h:m:s",
                                                      "date and time",
                                                      "serial days",
                                                      "seconds since 1970",
                                                      "milliseconds since 1970",
                                                      "microseconds since 1970",
                                                      "nanoseconds since 1970",
                                                      "index"};

constexpr files::Range kScale{0, 1e9, true, "a factor above 0"};
constexpr files::Range kInterval{0, 1e6, true, "seconds above 0"};

Layout::TimeColumns time_of(files::TomlTable& table) {
  Layout::TimeColumns time;
  for (const double column :
       table.numbers("columns", {1, kMostColumns, false, "a column from 1"}).value_or(std::vector<double>{})) {
    if (column != static_cast<int>(column)) {
      table.fail("columns", "found " + files::toml_number(column) + " for \"columns\", expected whole numbers from 1",
                 files::toml_number(column), "whole numbers from 1");
      break;
    }
    time.columns.push_back(static_cast<int>(column));
  }
  constexpr std::size_t kMostTimeColumns = 4;  // date, time of day, half of the day, milliseconds
  if (time.columns.size() > kMostTimeColumns) {
    table.fail("columns", "found " + std::to_string(time.columns.size()) + " time columns, expected at most four",
               std::to_string(time.columns.size()), "at most four");
  }
  time.kind = table.one_of("kind", kTimeKinds);
  time.interval_s = table.number("interval_s", kInterval);
  return time;
}

Layout::ChannelColumn channel_of(files::TomlTable& table, bool long_form) {
  Layout::ChannelColumn channel;
  channel.column = table.integer("column", long_form ? 0 : 1, kMostColumns).value_or(0);
  if (!long_form && !table.has("column")) table.missing("column", "the column's number from 1");
  channel.name = table.text("name").value_or("");
  channel.time_column = table.integer("time_column", 0, kMostColumns).value_or(0);
  channel.use = table.boolean("use").value_or(true);
  channel.reversed = table.boolean("reversed").value_or(false);
  channel.unit = table.one_of("unit", kUnits);
  return channel;
}

std::optional<std::string> encoding_of(files::TomlTable& root) {
  auto name = root.text("encoding");
  if (name && canonical_encoding(*name).empty()) {
    const std::string expected = "the name of a character encoding";
    root.fail("encoding", "found " + root.written("encoding") + " for \"encoding\", expected " + expected,
              root.written("encoding"), expected);
  }
  return name;
}

std::optional<std::string> delimiter_of(files::TomlTable& root) {
  auto delimiter = root.text("delimiter");
  if (delimiter && delimiter->size() > 1 && *delimiter != kFixedWidth) {
    const std::string expected = "one character, or \"" + std::string{kFixedWidth} + "\"";
    root.fail("delimiter", "found " + root.written("delimiter") + " for \"delimiter\", expected " + expected,
              root.written("delimiter"), expected);
  }
  return delimiter;
}

std::optional<Form> form_of(files::TomlTable& root) {
  const auto form = root.one_of("form", kForms);
  if (!form) return std::nullopt;
  return *form == "wide" ? Form::kWide : *form == "long" ? Form::kLong : Form::kRows;
}

std::string form_name(Form form) { return std::string{kForms[static_cast<std::size_t>(form)]}; }

/// Lines of `key = value`, one for each value that is there.
class Lines {
 public:
  void text(const char* key, const std::optional<std::string>& value) {
    if (value) line(key, files::toml_text(*value));
  }
  void number(const char* key, const std::optional<double>& value) {
    if (value) line(key, files::toml_number(*value));
  }
  void integer(const char* key, const std::optional<int>& value) {
    if (value) line(key, std::to_string(*value));
  }
  void line(const char* key, const std::string& value) { text_ += std::string{key} + " = " + value + "\n"; }
  void header(const char* header) { text_ += std::string{"\n"} + header + "\n"; }
  std::string take() { return std::move(text_); }

 private:
  std::string text_;
};

}  // namespace

Result<Layout> parse_layout(const std::string& file, std::string_view text) {
  auto toml = files::TomlFile::parse(file, text);
  if (!toml) return toml.error();
  auto root = toml->root();
  Layout layout;
  layout.name = root.text("name");
  root.text("revision");
  root.text("source");
  layout.encoding = encoding_of(root);
  layout.delimiter = delimiter_of(root);
  layout.decimal = root.one_of("decimal", kDecimals);
  layout.header_line = root.integer("header_line", 0, 1'000'000'000);
  layout.unit = root.one_of("unit", kUnits);
  layout.thermocouple_type = root.one_of("thermocouple_type", kThermocouples);
  layout.cold_junction_C = root.number("cold_junction_C", {-60, 150, false, "a number from -60 to 150"});
  layout.cold_junction_column = root.integer("cold_junction_column", 1, kMostColumns);
  layout.scale = root.number("scale", kScale);
  layout.form = form_of(root);
  layout.member = root.text("member");
  layout.sheet = root.text("sheet");
  layout.date_order = root.one_of("date_order", kDateOrders);
  layout.leave_empty = root.one_of("unreadable_cells", kUnreadable) == "empty";
  if (auto time = root.table("time")) layout.time = time_of(*time);
  std::map<int, int> lines;
  for (auto& table : root.tables("channel")) {
    layout.channels.push_back(channel_of(table, layout.form == Form::kLong));
    const int column = layout.channels.back().column;
    const auto [first, added] = lines.emplace(column, table.line());
    if (!added && column > 0) {
      table.fail(
          "column",
          "found column " + std::to_string(column) + " a second time, first in line " + std::to_string(first->second),
          std::to_string(column), "each column once");
    }
  }
  if (auto error = toml->finish()) return *error;
  return layout;
}

Result<Layout> load_layout(const std::string& path) {
  const auto text = files::read_text(path);
  if (!text) return text.error();
  return parse_layout(path, *text);
}

Result<Layout> find_layout(const std::string& name_or_path) {
  const auto path = files::find_profile(files::Kind::kLayout, name_or_path);
  if (!path) return path.error();
  return load_layout(*path);
}

std::string layout_text(const Layout& layout) {
  Lines lines;
  lines.text("name", layout.name);
  lines.text("encoding", layout.encoding);
  lines.text("delimiter", layout.delimiter);
  lines.text("decimal", layout.decimal);
  lines.integer("header_line", layout.header_line);
  lines.text("unit", layout.unit);
  lines.text("thermocouple_type", layout.thermocouple_type);
  lines.number("cold_junction_C", layout.cold_junction_C);
  lines.integer("cold_junction_column", layout.cold_junction_column);
  lines.number("scale", layout.scale);
  if (layout.form) lines.line("form", files::toml_text(form_name(*layout.form)));
  lines.text("member", layout.member);
  lines.text("sheet", layout.sheet);
  lines.text("date_order", layout.date_order);
  if (layout.leave_empty) lines.line("unreadable_cells", files::toml_text("empty"));
  if (!layout.time.columns.empty() || layout.time.kind || layout.time.interval_s) {
    lines.header("[time]");
    std::string columns;
    for (const int column : layout.time.columns) columns += (columns.empty() ? "" : ", ") + std::to_string(column);
    if (!columns.empty()) lines.line("columns", "[" + columns + "]");
    lines.text("kind", layout.time.kind);
    lines.number("interval_s", layout.time.interval_s);
  }
  for (const auto& channel : layout.channels) {
    lines.header("[[channel]]");
    if (channel.column > 0) lines.integer("column", channel.column);
    if (!channel.name.empty()) lines.text("name", channel.name);
    if (channel.time_column > 0) lines.integer("time_column", channel.time_column);
    if (!channel.use) lines.line("use", "false");
    if (channel.reversed) lines.line("reversed", "true");
    lines.text("unit", channel.unit);
  }
  return lines.take();
}

Result<std::string> save_layout(const Layout& layout, const std::string& path) {
  return files::write_file(path, layout_text(layout), files::Existing::kKeep);
}

}  // namespace ovenwright::log
