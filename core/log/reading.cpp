#include "core/log/reading.h"

#include <algorithm>
#include <limits>
#include <memory>

#include "core/files/digest.h"
#include "core/log/grid.h"
#include "core/log/log_file.h"
#include "core/log/number.h"
#include "core/log/text.h"

namespace ovenwright::log {
namespace {

std::vector<std::string_view> split(std::string_view line, char delimiter) {
  std::vector<std::string_view> cells;
  while (true) {
    const auto end = line.find(delimiter);
    cells.push_back(trim(line.substr(0, end)));
    if (end == std::string_view::npos) return cells;
    line.remove_prefix(end + 1);
  }
}

std::optional<double> number(std::string_view cell, char decimal) {
  const auto read = read_number(cell, decimal);
  if (!read || !read->rest.empty()) return std::nullopt;
  return read->value;
}

Error parse_error(const std::string& name, std::size_t line, std::size_t column, std::string_view found,
                  const std::string& expected) {
  const auto quoted = quoted_for_message(found);
  return {ErrorCode::kParse,
          "found " + quoted + ", expected " + expected,
          {name, static_cast<int>(line), static_cast<int>(column)},
          std::string{found},
          expected};
}

}  // namespace

Result<Reading> read_bytes(const std::string& name, std::string_view bytes, const Options&) {
  auto decoded = decode(bytes);
  if (!decoded) return decoded.error();
  std::string_view text = decoded->unchanged ? bytes.substr(decoded->skip) : std::string_view{decoded->utf8};
  const auto head = text.substr(0, text.find('\n'));
  const char delimiter = head.find('\t') != head.npos ? '\t' : head.find(';') != head.npos ? ';' : ',';
  const char decimal = delimiter != ',' && text.find(',') != text.npos ? ',' : '.';
  Reading reading;
  std::vector<double> time_s;
  std::size_t line = 0;
  while (!text.empty()) {
    ++line;
    const auto end = text.find('\n');
    const auto row = trim(text.substr(0, end));
    text.remove_prefix(end == text.npos ? text.size() : end + 1);
    if (row.empty()) continue;
    const auto cells = split(row, delimiter);
    if (reading.channels.empty()) {
      for (std::size_t i = 1; i < cells.size(); ++i) {
        std::string channel{cells[i].substr(0, cells[i].find(" ("))};
        reading.channels.push_back({std::move(channel), static_cast<int>(i), nullptr, {}});
      }
      reading.read_as.header_line = static_cast<int>(line);
      continue;
    }
    if (cells.size() != reading.channels.size() + 1)
      return parse_error(name, line, 0, row, std::to_string(reading.channels.size() + 1) + " cells");
    const auto time = number(cells[0], decimal);
    if (!time) return parse_error(name, line, 1, cells[0], "a time");
    time_s.push_back(*time);
    for (std::size_t i = 1; i < cells.size(); ++i) {
      const auto value = number(cells[i], decimal);
      reading.channels[i - 1].temperature_C.push_back(value.value_or(std::numeric_limits<double>::quiet_NaN()));
    }
  }
  if (time_s.empty()) return parse_error(name, 0, 0, head, "a table of times and temperatures");
  reading.read_as.rows = time_s.size();
  reading.read_as.encoding = decoded->encoding;
  reading.read_as.delimiter = delimiter;
  reading.read_as.decimal = decimal;
  reading.read_as.time = "seconds";
  reading.read_as.unit = "degC";
  const auto clock = std::make_shared<const std::vector<double>>(std::move(time_s));
  for (auto& channel : reading.channels) channel.time_s = clock;
  reading.file = {name, "", files::sha256_hex(bytes), bytes.size()};
  return reading;
}

Result<Reading> read(const std::string& path, const Options& options) {
  const auto file = LogBytes::open(path);
  if (!file) return file.error();
  return read_bytes(path, (*file)->bytes(), options);
}

}  // namespace ovenwright::log
