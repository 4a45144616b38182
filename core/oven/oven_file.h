#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "core/oven/oven.h"
#include "core/units/result.h"

namespace ovenwright::oven {

/// Reads oven.toml. Errors: kIo; kParse with line and column for an unknown key, a wrong type, a length not above 0,
/// limits crossed, a zone named twice, no heating zone.
Result<Oven> load_oven(const std::string& path);
Result<Oven> parse_oven(const std::string& file, std::string_view text);
/// A file, or a name looked up as files::find_profile does.
Result<Oven> find_oven(const std::string& name_or_path);

/// Reads recipe.toml. Errors: as above; also where top and bottom have different numbers of setpoints.
Result<Recipe> load_recipe(const std::string& path);
Result<Recipe> parse_recipe(const std::string& file, std::string_view text);
Result<Recipe> find_recipe(const std::string& name_or_path);

/// The text of recipe.toml and oven.toml: the original with its values changed in place, so that comments, order and
/// spelling of all else stay; without an original, or where it cannot be changed so (zones that came, went or changed
/// places), written anew.
std::string recipe_text(const Recipe& recipe, std::string_view original = {});
std::string oven_text(const Oven& oven, std::string_view original = {});
/// Saves an edited oven as a new revision in a new file, its comments kept; the file it came from stays, and nothing is
/// overwritten. The oven is checked first as load_oven() does. Returns it as read back from the new file.
/// Errors: those of files::write_revision() and load_oven().
Result<Oven> save_oven(Oven oven, const std::string& revision, const std::string& path);
/// A recipe that came from another one by changes: the text of the file that one was read from, changed in place;
/// written anew where that file is no longer there.
/// @param cautions  stand above as comments, each once; no line breaks
std::string changed_recipe_text(const Recipe& recipe, const files::Identity& from,
                                const std::vector<std::string>& cautions = {});

/// Holds a recipe against the oven it runs on. Errors: kParse at the recipe's line where it has more or fewer
/// setpoints than the oven has heating zones, or cooling setpoints but not one for each cooling zone. What was run
/// stays usable, so setpoints, steps, speed or top and bottom beyond the oven's limits, and a recipe written for an
/// oven of another name, are warnings.
Result<std::vector<Warning>> check_recipe(const Recipe& recipe, const Oven& oven);

}  // namespace ovenwright::oven
