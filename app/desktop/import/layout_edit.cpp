#include "app/desktop/import/layout_edit.h"

namespace ovenwright::desktop {

void editLayout(Document* document, const QString& text, const std::function<void(log::Layout&)>& change,
                int mergeKey) {
  check::Request setup = document->setup();
  if (!setup.log.layout) setup.log.layout.emplace();
  change(*setup.log.layout);
  document->edit(text, std::move(setup), Document::Rework::kRead, mergeKey);
}

}  // namespace ovenwright::desktop
