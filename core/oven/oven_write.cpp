#include <algorithm>
#include <optional>
#include <vector>

#include "core/files/profiles.h"
#include "core/files/text_file.h"
#include "core/files/toml_fields.h"
#include "core/oven/oven_file.h"

namespace ovenwright::oven {
namespace {

using Fields = files::TomlFields;

Fields fields_of(const Recipe& recipe) {
  Fields fields;
  fields.text("name", recipe.identity.name);
  fields.text("revision", recipe.identity.revision);
  fields.text("source", recipe.identity.source);
  fields.text("oven", recipe.oven);
  fields.number("speed_mm_per_min", recipe.speed_mm_per_min);
  fields.numbers("top_C", recipe.top_C);
  fields.numbers("bottom_C", recipe.bottom_C);
  fields.numbers("cooling_C", recipe.cooling_C);
  return fields;
}

Fields head_of(const Oven& oven) {
  Fields fields;
  fields.text("name", oven.identity.name);
  fields.text("revision", oven.identity.revision);
  fields.text("source", oven.identity.source);
  fields.number("ambient_C", oven.ambient_C);
  fields.number("entrance_mm", oven.entrance_mm);
  fields.number("exit_mm", oven.exit_mm);
  return fields;
}

Fields fields_of(const Limits& limits) {
  const auto both = [](const std::optional<std::array<double, 2>>& interval) {
    return interval ? std::vector<double>(interval->begin(), interval->end()) : std::vector<double>{};
  };
  Fields fields;
  fields.numbers("setpoint_C", both(limits.setpoint_C));
  fields.number("step_between_zones_C", limits.step_between_zones_C);
  fields.numbers("speed_mm_per_min", both(limits.speed_mm_per_min));
  fields.number("top_bottom_difference_C", limits.top_bottom_difference_C);
  return fields;
}

Fields fields_of(const Zone& zone) {
  Fields fields;
  fields.text("name", zone.name);
  fields.put("kind", zone.kind == ZoneKind::kHeat ? "\"heat\"" : "\"cool\"");
  fields.number("length_mm", zone.length_mm);
  fields.number("gap_after_mm", zone.gap_after_mm);
  return fields;
}

std::string written_anew(const Recipe& recipe) { return fields_of(recipe).lines(); }

std::string written_anew(const Oven& oven) {
  std::string text = head_of(oven).lines();
  if (const Fields limits = fields_of(oven.limits); !limits.empty()) text += "\n[limits]\n" + limits.lines();
  for (const auto& zone : oven.zones) text += "\n[[zone]]\n" + fields_of(zone).lines();
  return text;
}

/// A zone of the same name is the same zone, and one at the same place whose names the other oven does not know has
/// been renamed. Zones that are new, gone or in another order are not changed in place.
bool same_zones(const Oven& a, const Oven& b) {
  const auto knows = [](const Oven& oven, const std::string& name) {
    return std::ranges::find(oven.zones, name, &Zone::name) != oven.zones.end();
  };
  return std::ranges::equal(a.zones, b.zones, [&](const Zone& one, const Zone& other) {
    return one.name == other.name || (!knows(b, one.name) && !knows(a, other.name));
  });
}

bool change(files::TomlEdit& edit, const Recipe& before, const Recipe& after) {
  return files::change_fields(edit, {}, fields_of(before), fields_of(after));
}

bool change(files::TomlEdit& edit, const Oven& before, const Oven& after) {
  if (!same_zones(before, after)) return false;
  if (!files::change_fields(edit, {}, head_of(before), head_of(after))) return false;
  if (!files::change_fields(edit, {"limits"}, fields_of(before.limits), fields_of(after.limits))) return false;
  for (std::size_t i = 0; i < before.zones.size(); ++i)
    if (!files::change_fields(edit, {"zone", i}, fields_of(before.zones[i]), fields_of(after.zones[i]))) return false;
  return true;
}

/// The original text with its values changed in place, held against what it then reads as; where that cannot be done,
/// or there is no original, written anew.
template <class T>
std::string text_of(const T& value, std::string_view original,
                    Result<T> (*parse)(const std::string&, std::string_view)) {
  const std::string anew = written_anew(value);
  if (original.empty()) return anew;
  const auto before = parse(value.identity.file, original);
  auto edit = files::TomlEdit::open(value.identity.file, std::string{original});
  if (!before || !edit || !change(*edit, *before, value)) return anew;
  const auto after = parse(value.identity.file, edit->text());
  return after && written_anew(*after) == anew ? edit->text() : anew;
}

}  // namespace

std::string recipe_text(const Recipe& recipe, std::string_view original) {
  return text_of(recipe, original, parse_recipe);
}

std::string oven_text(const Oven& oven, std::string_view original) { return text_of(oven, original, parse_oven); }

Result<Oven> save_oven(Oven oven, const std::string& revision, const std::string& path) {
  const files::Identity before = oven.identity;
  oven.identity.revision = revision;
  const auto original = before.file.empty() ? Result<std::string>{std::string{}} : files::read_text(before.file);
  const std::string text = oven_text(oven, original ? std::string_view{*original} : std::string_view{});
  // An empty revision is told of as such, by the one who writes.
  if (const auto checked = parse_oven(path, text); !checked && !revision.empty()) return checked.error();
  const auto written = files::write_revision(files::Kind::kOven, before, revision, path, text);
  if (!written) return written.error();
  return load_oven(path);
}

std::string changed_recipe_text(const Recipe& recipe, const files::Identity& from,
                                const std::vector<std::string>& cautions) {
  const auto original = from.file.empty() ? Result<std::string>{std::string{}} : files::read_text(from.file);
  const std::string text = recipe_text(recipe, original ? std::string_view{*original} : std::string_view{});
  std::string above;
  for (const auto& caution : cautions)
    if (text.find("# " + caution) == std::string::npos) above += "# " + caution + "\n";
  return above.empty() ? text : above + "\n" + text;
}

}  // namespace ovenwright::oven
