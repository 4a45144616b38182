#pragma once
#include <functional>

#include "app/desktop/document/document.h"

namespace ovenwright::desktop {

/// Changes what the user fixed about the reading of the log that is shown, as one undoable edit; the rest stays found
/// from the content.
void editLayout(Document* document, const QString& text, const std::function<void(log::Layout&)>& change,
                int mergeKey = -1);

}  // namespace ovenwright::desktop
