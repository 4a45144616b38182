#include "core/board/board_file.h"

#include <array>
#include <cmath>
#include <filesystem>
#include <map>

#include "core/files/profiles.h"
#include "core/files/text_file.h"
#include "core/files/toml.h"

namespace ovenwright::board {
namespace {

constexpr files::Range kLength{0, 1e5, true, "a length above 0"};
constexpr files::Range kMass{0, 1e6, true, "a mass above 0"};
constexpr files::Range kPosition{-1e5, 1e5, false, "a position in mm"};

std::optional<Side> side_of(files::TomlTable& table) {
  constexpr std::array<std::string_view, 2> kSides{"top", "bottom"};
  const auto side = table.one_of("side", kSides);
  if (!side) return std::nullopt;
  return *side == "top" ? Side::kTop : Side::kBottom;
}

Kind kind_of(files::TomlTable& table) {
  constexpr std::array<std::string_view, 4> kKinds{"joint", "body", "board", "air"};
  const auto kind = table.one_of("kind", kKinds).value_or("joint");
  for (const Kind known : {Kind::kBody, Kind::kBoard, Kind::kAir}) {
    if (kind == kind_name(known)) return known;
  }
  return Kind::kJoint;
}

std::string channel_of(files::TomlTable& table) {
  const auto channel = table.number_or_text("channel");
  if (!table.has("channel")) table.missing("channel", "the channel's name in the log, or its number from 1");
  if (!channel) return {};
  if (const auto* name = std::get_if<std::string>(&*channel)) {
    if (name->empty())
      table.fail("channel", "found an empty \"channel\", expected its name in the log", "\"\"", "a name");
    return *name;
  }
  const double number = std::get<double>(*channel);
  if (!(number >= 1 && number <= 100000) || number != std::floor(number)) {
    table.fail("channel", "found " + table.written("channel") + " for \"channel\", expected a whole number from 1",
               table.written("channel"), "a whole number from 1");
    return {};
  }
  return std::to_string(static_cast<int>(number));
}

Placement placement_of(files::TomlTable& table) {
  Placement placement;
  placement.channel = channel_of(table);
  placement.label = table.text("label");
  placement.part = table.text("part");
  placement.kind = kind_of(table);
  placement.side = side_of(table);
  placement.thermocouple = table.text("thermocouple");
  placement.x_mm = table.number("x_mm", kPosition);
  placement.y_mm = table.number("y_mm", kPosition);
  placement.line = table.place("channel").line;
  return placement;
}

Part part_of(files::TomlTable& table) {
  Part part;
  part.name = table.needed_text("name");
  part.side = side_of(table);
  if (const auto size_mm = table.numbers("size_mm", kLength)) {
    if (size_mm->size() == 2) {
      part.length_mm = (*size_mm)[0];
      part.width_mm = (*size_mm)[1];
    } else {
      table.fail("size_mm", "found " + table.written("size_mm") + " for \"size_mm\", expected length and width",
                 table.written("size_mm"), "length and width");
    }
  }
  part.mass_g = table.number("mass_g", kMass);
  part.package_thickness_mm = table.number("package_thickness_mm", kLength);
  part.package_volume_mm3 = table.number("package_volume_mm3", {0, 1e9, true, "a volume above 0"});
  part.wetted_pad_area_mm2 = table.number("wetted_pad_area_mm2", {0, 1e7, true, "an area above 0"});
  part.max_passes = table.integer("max_passes", 1, 100).value_or(part.max_passes);
  return part;
}

/// Off the board only air can be measured; a slip there would move the placement to another zone.
void must_be_on(const std::optional<double>& size_mm, files::TomlTable& table, const char* key,
                const std::optional<double>& at_mm, Kind kind) {
  if (!size_mm || !at_mm || kind == Kind::kAir || (*at_mm >= 0 && *at_mm <= *size_mm)) return;
  const std::string expected = "a position on the board, 0 to " + files::toml_number(*size_mm) + " mm";
  table.fail(key, "found " + table.written(key) + " for \"" + key + "\", expected " + expected, table.written(key),
             expected);
}

/// Keeps an error where a name stands a second time.
void must_be_new(std::map<std::string, int>& lines, files::TomlTable& table, const char* key, const std::string& name,
                 const std::string& what) {
  const auto [first, added] = lines.emplace(name, table.line());
  if (added || name.empty()) return;
  table.fail(key,
             "found the " + what + " \"" + name + "\" a second time, first in line " + std::to_string(first->second),
             name, "each " + what + " once");
}

}  // namespace

Result<Board> parse(const std::string& file, std::string_view text) {
  auto toml = files::TomlFile::parse(file, text);
  if (!toml) return toml.error();
  auto root = toml->root();
  Board board;
  board.identity = files::take_identity(root, file, text);
  board.length_mm = root.number("length_mm", kLength);
  board.width_mm = root.number("width_mm", kLength);
  board.thickness_mm = root.number("thickness_mm", kLength);
  board.mass_g = root.number("mass_g", kMass);
  if (const auto picture = root.text("picture")) {
    board.picture = (std::filesystem::path{file}.parent_path() / *picture).string();
  }
  std::map<std::string, int> channels, parts;
  for (auto& table : root.tables("placement")) {
    board.placements.push_back(placement_of(table));
    const auto& placement = board.placements.back();
    must_be_new(channels, table, "channel", placement.channel, "channel");
    must_be_on(board.length_mm, table, "x_mm", placement.x_mm, placement.kind);
    must_be_on(board.width_mm, table, "y_mm", placement.y_mm, placement.kind);
  }
  for (auto& table : root.tables("part")) {
    board.parts.push_back(part_of(table));
    must_be_new(parts, table, "name", board.parts.back().name, "part");
  }
  if (auto error = toml->finish()) return *error;
  return board;
}

Result<Board> load(const std::string& path) {
  const auto text = files::read_text(path);
  if (!text) return text.error();
  return parse(path, *text);
}

Result<Board> find(const std::string& name_or_path) {
  const auto path = files::find_profile(files::Kind::kBoard, name_or_path);
  if (!path) return path.error();
  return load(*path);
}

}  // namespace ovenwright::board
