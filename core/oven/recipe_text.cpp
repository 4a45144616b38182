#include "core/files/toml.h"
#include "core/oven/oven_file.h"

namespace ovenwright::oven {

std::string recipe_text(const Recipe& recipe) {
  std::string out;
  const auto line = [&](const char* key, const std::string& value) { out += std::string{key} + " = " + value + "\n"; };
  const auto list = [&](const char* key, const std::vector<double>& values) {
    std::string text = "[";
    for (std::size_t i = 0; i < values.size(); ++i) text += (i ? ", " : "") + files::toml_number(values[i]);
    line(key, text + "]");
  };
  line("name", files::toml_text(recipe.identity.name));
  if (recipe.identity.revision) line("revision", files::toml_text(*recipe.identity.revision));
  if (recipe.identity.source) line("source", files::toml_text(*recipe.identity.source));
  if (recipe.oven) line("oven", files::toml_text(*recipe.oven));
  line("speed_mm_per_min", files::toml_number(recipe.speed_mm_per_min));
  list("top_C", recipe.top_C);
  list("bottom_C", recipe.bottom_C);
  if (!recipe.cooling_C.empty()) list("cooling_C", recipe.cooling_C);
  return out;
}

}  // namespace ovenwright::oven
