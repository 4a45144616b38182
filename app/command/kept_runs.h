#pragma once
#include <optional>
#include <string>
#include <vector>

#include "app/archive/archive.h"
#include "core/lot/lot.h"
#include "core/oven/oven.h"

namespace ovenwright::command {

/// Archived runs as statistics take them, in the order of their ids.
/// Errors: those of Archive::report() and report::kept_run(), with the record's id.
Result<std::vector<lot::Run>> kept_runs(archive::Archive& archive, const std::vector<std::string>& ids);

/// Runs of an archive that are held together against others, with the oven and the recipe where all ran one.
struct KeptGroup {
  std::vector<lot::Run> runs;
  std::optional<oven::Oven> oven;
  std::optional<oven::Recipe> recipe;
  bool several_recipes = false;  ///< not all ran one
};
/// Errors: as kept_runs(); those of Archive::load() and Archive::content(); kParse where a kept oven or recipe is no
/// longer understood.
Result<KeptGroup> kept_group(archive::Archive& archive, const std::vector<std::string>& ids);

/// The complaint where two of the records are of one run, which would count twice: the same id, or the same pass of the
/// same log. Empty where each is a run of its own.
/// Errors: those of Archive::load().
Result<std::optional<Error>> repeated_run(archive::Archive& archive, const std::vector<std::string>& ids);

}  // namespace ovenwright::command
