#include "app/desktop/compare/compared.h"

namespace ovenwright::desktop {
namespace {

/// A view with other styles, holding the one that it comes from alive.
std::shared_ptr<const RunView> styled(std::shared_ptr<const RunView> view, widgets::Channels looks) {
  struct Kept {
    std::shared_ptr<const RunView> from;
    RunView view;
  };
  RunView other = view->withLooks(std::move(looks));
  auto kept = std::make_shared<Kept>(Kept{std::move(view), std::move(other)});
  return {kept, &kept->view};
}

}  // namespace

Compared compareViews(ComparedRun a, ComparedRun b, const compare::Options& options) {
  Compared compared;
  compared.comparison =
      compare::compare_runs({&a.checked(), a.request.get()}, {&b.checked(), b.request.get()}, options);
  compared.pairs = widgets::pairChannels(a.checked().run, b.checked().run);
  b.view = styled(b.view, widgets::matched(b.view->looks(), a.view->looks(), compared.pairs));
  compared.a = std::move(a);
  compared.b = std::move(b);
  return compared;
}

}  // namespace ovenwright::desktop
