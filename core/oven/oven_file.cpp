#include "core/oven/oven_file.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

#include "core/files/profiles.h"
#include "core/files/text_file.h"
#include "core/files/toml.h"
#include "core/units/phrase.h"

namespace ovenwright::oven {
namespace {

constexpr files::Range kLength{0, 1e6, true, "a length above 0"};
constexpr files::Range kGap{0, 1e6, false, "a length of at least 0"};
constexpr files::Range kAmbient{-60, 150, false, "a number from -60 to 150"};
constexpr files::Range kSpeed{0, 1e6, true, "a speed above 0"};

Limits limits_of(files::TomlTable& table) {
  Limits limits;
  limits.setpoint_C = table.interval("setpoint_C", files::kTemperature);
  limits.step_between_zones_C = table.number("step_between_zones_C", files::kPositive);
  limits.speed_mm_per_min = table.interval("speed_mm_per_min", kSpeed);
  limits.top_bottom_difference_C = table.number("top_bottom_difference_C", files::kNotNegative);
  return limits;
}

Zone zone_of(files::TomlTable& table) {
  Zone zone;
  const auto name = table.number_or_text("name");
  if (!table.has("name")) table.missing("name", "the zone's name in quotes");
  if (name) {
    const auto* text = std::get_if<std::string>(&*name);
    zone.name = text != nullptr ? *text : files::toml_number(std::get<double>(*name));
  }
  constexpr std::array<std::string_view, 2> kKinds{"heat", "cool"};
  zone.kind = table.one_of("kind", kKinds) == "cool" ? ZoneKind::kCool : ZoneKind::kHeat;
  zone.length_mm = table.needed_number("length_mm", kLength);
  zone.gap_after_mm = table.number("gap_after_mm", kGap).value_or(0);
  return zone;
}

template <class T>
Result<T> load_with(const std::string& path, Result<T> (*parse)(const std::string&, std::string_view)) {
  const auto text = files::read_text(path);
  if (!text) return text.error();
  return parse(path, *text);
}

std::string in_words(double number) { return files::toml_number(number); }

Error miscounted(const Recipe& recipe, int line, const std::string& key, std::size_t found, std::size_t expected,
                 const std::string& zones, const Oven& oven) {
  const std::string has = std::to_string(found) + (found == 1 ? " setpoint" : " setpoints");
  const std::string needs =
      std::to_string(expected) + ", one for each " + zones + " zone of \"" + oven.identity.name + "\"";
  return {ErrorCode::kParse,
          "found " + has + " in \"" + key + "\", expected " + needs,
          {recipe.identity.file, line, 0},
          has,
          needs};
}

void warn_setpoints(const Recipe& recipe, const std::vector<double>& setpoints, const char* key, int line,
                    const Oven& oven, std::vector<Warning>& warnings) {
  const Place place{recipe.identity.file, line, 0};
  std::vector<std::string> heating;
  for (const auto& zone : oven.zones) {
    if (zone.kind == ZoneKind::kHeat) heating.push_back(zone.name);
  }
  for (std::size_t i = 0; i < setpoints.size(); ++i) {
    const auto& range = oven.limits.setpoint_C;
    if (range && (setpoints[i] < (*range)[0] || setpoints[i] > (*range)[1])) {
      warnings.push_back({say(Phrase::kSetpointOutside,
                              {key, heating[i], in_words(setpoints[i]), in_words((*range)[0]), in_words((*range)[1])}),
                          place});
    }
    const auto& step = oven.limits.step_between_zones_C;
    if (step && i > 0 && std::abs(setpoints[i] - setpoints[i - 1]) > *step) {
      warnings.push_back({say(Phrase::kSetpointStep, {key, in_words(std::abs(setpoints[i] - setpoints[i - 1])),
                                                      heating[i - 1], heating[i], in_words(*step)}),
                          place});
    }
  }
}

}  // namespace

Result<Oven> parse_oven(const std::string& file, std::string_view text) {
  auto toml = files::TomlFile::parse(file, text);
  if (!toml) return toml.error();
  auto root = toml->root();
  Oven oven;
  oven.identity = files::take_identity(root, file, text);
  oven.ambient_C = root.number("ambient_C", kAmbient).value_or(oven.ambient_C);
  oven.entrance_mm = root.number("entrance_mm", kGap).value_or(0);
  oven.exit_mm = root.number("exit_mm", kGap).value_or(0);
  if (auto limits = root.table("limits")) oven.limits = limits_of(*limits);
  auto tables = root.tables("zone");
  for (auto& table : tables) {
    Zone zone = zone_of(table);
    const bool twice = std::ranges::find(oven.zones, zone.name, &Zone::name) != oven.zones.end();
    if (twice && !zone.name.empty()) {
      table.fail("name", "found the zone \"" + zone.name + "\" a second time", zone.name, "each zone once");
    }
    oven.zones.push_back(std::move(zone));
  }
  if (oven.heating_zones() == 0 && !toml->failed()) {
    root.missing("zone", "at least one [[zone]] of kind \"heat\"");
  }
  if (auto error = toml->finish()) return *error;
  return oven;
}

Result<Recipe> parse_recipe(const std::string& file, std::string_view text) {
  auto toml = files::TomlFile::parse(file, text);
  if (!toml) return toml.error();
  auto root = toml->root();
  Recipe recipe;
  recipe.identity = files::take_identity(root, file, text);
  recipe.oven = root.text("oven");
  recipe.speed_mm_per_min = root.needed_number("speed_mm_per_min", kSpeed);
  for (const auto& [key, setpoints] : {std::pair{"top_C", &recipe.top_C}, std::pair{"bottom_C", &recipe.bottom_C}}) {
    *setpoints = root.numbers(key, files::kTemperature).value_or(std::vector<double>{});
    if (!root.has(key)) root.missing(key, "one setpoint for each heating zone");
  }
  recipe.cooling_C = root.numbers("cooling_C", files::kTemperature).value_or(std::vector<double>{});
  recipe.lines = {root.place("speed_mm_per_min").line, root.place("top_C").line, root.place("bottom_C").line,
                  root.place("cooling_C").line};
  if (!toml->failed() && recipe.top_C.size() != recipe.bottom_C.size()) {
    const std::string top = std::to_string(recipe.top_C.size()), bottom = std::to_string(recipe.bottom_C.size());
    const std::string expected = "one for each heating zone in both";
    root.fail("bottom_C",
              "found " + top + " setpoints in \"top_C\" but " + bottom + " in \"bottom_C\", expected " + expected,
              top + " and " + bottom, expected);
  }
  if (auto error = toml->finish()) return *error;
  return recipe;
}

Result<Oven> load_oven(const std::string& path) { return load_with<Oven>(path, parse_oven); }
Result<Recipe> load_recipe(const std::string& path) { return load_with<Recipe>(path, parse_recipe); }

Result<Oven> find_oven(const std::string& name_or_path) {
  const auto path = files::find_profile(files::Kind::kOven, name_or_path);
  if (!path) return path.error();
  return load_oven(*path);
}

Result<Recipe> find_recipe(const std::string& name_or_path) {
  const auto path = files::find_profile(files::Kind::kRecipe, name_or_path);
  if (!path) return path.error();
  return load_recipe(*path);
}

Result<std::vector<Warning>> check_recipe(const Recipe& recipe, const Oven& oven) {
  const std::size_t heating = oven.heating_zones();
  const std::size_t cooling = oven.zones.size() - heating;
  if (recipe.top_C.size() != heating) {
    return miscounted(recipe, recipe.lines.top_C, "top_C", recipe.top_C.size(), heating, "heating", oven);
  }
  if (recipe.bottom_C.size() != heating) {
    return miscounted(recipe, recipe.lines.bottom_C, "bottom_C", recipe.bottom_C.size(), heating, "heating", oven);
  }
  if (!recipe.cooling_C.empty() && recipe.cooling_C.size() != cooling) {
    return miscounted(recipe, recipe.lines.cooling_C, "cooling_C", recipe.cooling_C.size(), cooling, "cooling", oven);
  }
  std::vector<Warning> warnings;
  const Place anywhere{recipe.identity.file, 0, 0};
  if (recipe.oven && *recipe.oven != oven.identity.name && *recipe.oven != oven.identity.stem) {
    warnings.push_back({say(Phrase::kOtherOven, {*recipe.oven, oven.identity.name}), anywhere});
  }
  const auto& speed = oven.limits.speed_mm_per_min;
  if (speed && (recipe.speed_mm_per_min < (*speed)[0] || recipe.speed_mm_per_min > (*speed)[1])) {
    warnings.push_back(
        {say(Phrase::kSpeedOutside, {in_words(recipe.speed_mm_per_min), in_words((*speed)[0]), in_words((*speed)[1])}),
         {recipe.identity.file, recipe.lines.speed, 0}});
  }
  warn_setpoints(recipe, recipe.top_C, "top_C", recipe.lines.top_C, oven, warnings);
  warn_setpoints(recipe, recipe.bottom_C, "bottom_C", recipe.lines.bottom_C, oven, warnings);
  if (const auto& most = oven.limits.top_bottom_difference_C) {
    for (std::size_t i = 0, zone = 0; i < heating; ++i, ++zone) {
      while (oven.zones[zone].kind != ZoneKind::kHeat) ++zone;
      const double difference_C = std::abs(recipe.top_C[i] - recipe.bottom_C[i]);
      if (difference_C <= *most) continue;
      warnings.push_back({say(Phrase::kSidesDiffer, {oven.zones[zone].name, in_words(difference_C), in_words(*most)}),
                          {recipe.identity.file, recipe.lines.bottom_C, 0}});
    }
  }
  return warnings;
}

}  // namespace ovenwright::oven
