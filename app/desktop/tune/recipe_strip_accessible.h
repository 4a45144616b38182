#pragma once
#include "app/desktop/tune/recipe_edit.h"

namespace ovenwright::desktop {

class RecipeStrip;

/// Makes the strip known to screen readers as a table of setpoints; the first call counts.
void installStripAccessibility();
/// Tells them that a field has the focus, or another number.
void announceField(RecipeStrip* strip, const RecipeField& field);

}  // namespace ovenwright::desktop
