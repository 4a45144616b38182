#pragma once
#include <QString>

#include "core/oven/oven.h"
#include "core/units/result.h"

namespace ovenwright::desktop {

/// Writes `edited` as a recipe of its own, with where it comes from and the cautions in it. A file that is there is
/// never overwritten. Errors: kIo.
Result<std::string> saveRecipe(const oven::Recipe& measured, oven::Recipe edited, const QString& revision,
                               const QString& path);

}  // namespace ovenwright::desktop
