#include "app/desktop/compare/compared.h"

#include <algorithm>
#include <limits>

namespace ovenwright::desktop {
namespace {

std::vector<const check::CheckedRun*> checkedRuns(const ComparedSide& side) {
  std::vector<const check::CheckedRun*> runs;
  for (const auto& run : side.runs) runs.push_back(&run.checked());
  return runs;
}

std::vector<compare::JudgedRun> judgedRuns(const ComparedSide& side) {
  std::vector<compare::JudgedRun> runs;
  for (const auto& run : side.runs) runs.push_back({&run.checked(), run.request.get()});
  return runs;
}

/// The thermocouples of all runs: each as the first run that has it shows it, at the mean of its peaks.
widgets::Channels looksOf(const ComparedSide& side) {
  widgets::Channels all;
  std::size_t fresh = 0;
  for (const auto& look : side.first().view->looks().looks) fresh = std::max(fresh, look.style + 1);
  const std::size_t own = side.first().view->looks().looks.size();
  for (const auto& trace : side.group->traces) {
    std::optional<widgets::ChannelLook> look;
    double sum = 0;
    int count = 0;
    for (const auto& run : side.runs) {
      const auto& channels = run.checked().run.channels;
      const auto found = std::ranges::find(channels, trace, &run::Channel::name);
      if (found == channels.end()) continue;
      const auto& its = run.view->looks().looks[std::size_t(found - channels.begin())];
      if (!look) look = its;
      if (its.peak_C) sum += *its.peak_C, ++count;
    }
    if (all.looks.size() >= own) look->style = fresh++;
    look->peak_C = count > 0 ? std::optional(sum / count) : std::nullopt;
    all.hottestFirst.push_back(all.looks.size());
    all.looks.push_back(*std::move(look));
  }
  std::ranges::stable_sort(all.hottestFirst, std::ranges::greater{}, [&all](std::size_t i) {
    return all.looks[i].peak_C.value_or(-std::numeric_limits<double>::infinity());
  });
  return all;
}

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

/// Gives every run the styles of its side.
void styleRuns(ComparedSide& side, const std::vector<std::string>& traces) {
  for (auto& run : side.runs) {
    widgets::Channels looks = run.view->looks();
    bool changed = false;
    const auto& channels = run.checked().run.channels;
    for (std::size_t i = 0; i < channels.size(); ++i) {
      const auto at = std::size_t(std::ranges::find(traces, channels[i].name) - traces.begin());
      if (at == traces.size() || looks.looks[i].style == side.looks.looks[at].style) continue;
      looks.looks[i].style = side.looks.looks[at].style;
      changed = true;
    }
    if (changed) run.view = styled(std::move(run.view), std::move(looks));
  }
}

std::vector<std::string> tracesOf(const ComparedSide& side) {
  if (side.group) return side.group->traces;
  std::vector<std::string> traces;
  for (const auto& channel : side.first().checked().run.channels) traces.push_back(channel.name);
  return traces;
}

void lineUp(Compared& compared, const compare::Options& options) {
  const auto a = checkedRuns(compared.a), b = checkedRuns(compared.b);
  auto at = compare::align(a, b, options.align_C);
  compared.linedUp = at.has_value();
  if (at) {
    compared.level_C = at->level_C;
    compared.a.zero_s = std::move(at->a_s);
    compared.b.zero_s = std::move(at->b_s);
    return;
  }
  for (ComparedSide* side : {&compared.a, &compared.b})
    for (const auto& run : side->runs) side->zero_s.push_back(run.view->origin_s());
}

}  // namespace

Compared compareViews(std::vector<ComparedRun> a, std::vector<ComparedRun> b, const compare::Options& options) {
  Compared compared;
  compared.a.runs = std::move(a);
  compared.b.runs = std::move(b);
  const auto runs_a = judgedRuns(compared.a), runs_b = judgedRuns(compared.b);
  const auto recipes = compare::recipes_of(runs_a, runs_b);
  compared.a.recipe = recipes.a;
  compared.b.recipe = recipes.b;
  compared.a.severalRecipes = recipes.several_a;
  compared.b.severalRecipes = recipes.several_b;
  if (compared.runs() == 2) {
    compared.comparison = compare::compare_runs(runs_a.front(), runs_b.front(), options);
    for (ComparedSide* side : {&compared.a, &compared.b}) side->looks = side->first().view->looks();
  } else {
    for (ComparedSide* side : {&compared.a, &compared.b}) {
      side->group = std::make_shared<const compare::Group>(compare::group_of(checkedRuns(*side)));
      side->looks = looksOf(*side);
    }
    compared.comparison = compare::compare_groups(runs_a, runs_b);
  }
  lineUp(compared, options);
  const auto of_a = tracesOf(compared.a), of_b = tracesOf(compared.b);
  compared.pairs = widgets::pairChannels(of_a, of_b);
  compared.b.looks = widgets::matched(compared.b.looks, compared.a.looks, compared.pairs);
  styleRuns(compared.a, of_a);
  styleRuns(compared.b, of_b);
  return compared;
}

}  // namespace ovenwright::desktop
