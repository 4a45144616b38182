#include "app/desktop/compare/compare_model.h"

#include <algorithm>

namespace ovenwright::desktop {
namespace {

/// Judges a run against other windows, from the samples that are there.
std::optional<Error> judgeAnew(CompareInput::Run& run, const CompareInput& input) {
  if (sameWindows(run.request->windows, input.windows)) return std::nullopt;
  auto request = std::make_shared<check::Request>(*run.request);
  request->windows = input.windows;
  request->window_assumed = input.windowAssumed;
  auto log = check::check(log::Reading(*run.log->reading), *request);
  if (!log) return log.error();
  auto checked = std::make_shared<Checked>();
  checked->reading = run.log->reading;
  checked->log = std::move(*log);
  for (const auto& one : checked->log.runs) checked->views.emplace_back(one, *checked->reading, *request);
  run.log = std::move(checked);
  run.request = std::move(request);
  return std::nullopt;
}

std::vector<ComparedRun> comparedRuns(const std::vector<CompareInput::Run>& side) {
  std::vector<ComparedRun> runs;
  for (const auto& from : side) runs.push_back({{from.log, &from.log->views[from.run]}, from.request});
  return runs;
}

}  // namespace

bool sameWindows(const std::vector<window::ProcessWindow>& a, const std::vector<window::ProcessWindow>& b) {
  return std::ranges::equal(a, b, [](const auto& x, const auto& y) {
    return !x.identity.sha256.empty() && x.identity.sha256 == y.identity.sha256 && x.identity.name == y.identity.name;
  });
}

bool CompareInput::operator==(const CompareInput& other) const {
  const auto same = [](const Run& x, const Run& y) { return x.log == y.log && x.run == y.run; };
  return std::ranges::equal(a, other.a, same) && std::ranges::equal(b, other.b, same) &&
         sameWindows(windows, other.windows) && align_C == other.align_C;
}

Result<std::shared_ptr<const ComparedLogs>> compareNow(CompareInput input) {
  for (auto* side : {&input.a, &input.b})
    for (CompareInput::Run& run : *side)
      if (auto error = judgeAnew(run, input)) return *error;
  auto compared = std::make_shared<ComparedLogs>();
  static_cast<Compared&>(*compared) =
      compareViews(comparedRuns(input.a), comparedRuns(input.b), {false, input.align_C});
  compared->from[0] = std::move(input.a);
  compared->from[1] = std::move(input.b);
  return std::shared_ptr<const ComparedLogs>(std::move(compared));
}

}  // namespace ovenwright::desktop
