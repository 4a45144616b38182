#include "core/check/check.h"

#include "core/check/attribution.h"
#include "core/check/passes.h"
#include "core/files/profiles.h"
#include "core/judge/fitting_window.h"
#include "core/judge/judge.h"
#include "core/judge/sentence.h"
#include "core/units/memory.h"
#include "core/window/window_file.h"

namespace ovenwright::check {
namespace {

/// Every shipped window that can be read. Cost: parses a dozen files.
std::vector<window::ProcessWindow> shipped_windows() {
  std::vector<window::ProcessWindow> windows;
  const auto all = files::list_profiles(files::Kind::kWindow);
  if (!all) return windows;
  for (const auto& listed : *all) {
    if (listed.users) continue;
    if (auto window = window::load(listed.file)) windows.push_back(*std::move(window));
  }
  return windows;
}

/// Names in the sentence which shipped window fits a run that peaks far from the assumed one.
void name_better_window(const run::Run& run, const board::Board* board, judge::Judgement& judgement) {
  const auto& assumed = judgement.windows.front();
  if (!judge::far_off(run, board, assumed)) return;
  judgement.better_window = judge::fitting_window(run, board, assumed, shipped_windows());
  if (!judgement.better_window.empty()) judgement.sentence = judge::compose(judgement);
}

Result<CheckedLog> checked_log(log::Reading reading, const Request& request) {
  Setting setting = setting_of(request);
  setting.keep_spikes = request.keep_spikes;
  auto runs = passes(reading, setting, request.run);
  if (!runs) return runs.error();
  CheckedLog checked{std::move(reading), {}};
  for (auto& run : *runs) {
    const auto place = place_of(run, setting);
    auto judgement = judge::judge(run, request.windows, request.window_assumed, setting.board, place);
    if (place) {
      const auto zones = attribute(run, setting, *place, judgement);
      if (!zones.empty())
        checked.reading.read_as.notes.push_back(
            (run.parts > 1 ? "run " + std::to_string(run.part) + ": " : std::string{}) + zones);
    }
    if (judgement.window_assumed && judgement.windows.size() == 1) {
      name_better_window(run, setting.board, judgement);
    }
    checked.runs.push_back({std::move(run), place ? std::optional{place->entry} : std::nullopt, std::move(judgement)});
  }
  return checked;
}

}  // namespace

Result<CheckedLog> check(const std::string& path, const Request& request) {
  auto reading = log::read(path, request.log);
  if (!reading) return reading.error();
  return check(*std::move(reading), request);
}

Result<CheckedLog> check(log::Reading reading, const Request& request) {
  const std::string file = reading.file.file;
  return within_memory(file, [&] { return checked_log(std::move(reading), request); });
}

}  // namespace ovenwright::check
