#include "core/check/check.h"

#include "core/check/better_window.h"
#include "core/check/passes.h"
#include "core/judge/judge.h"
#include "core/judge/sentence.h"

namespace ovenwright::check {
Result<CheckedLog> check(const std::string& path, const Request& request) {
  auto reading = log::read(path, request.log);
  if (!reading) return reading.error();
  return check(*std::move(reading), request);
}

Result<CheckedLog> check(log::Reading reading, const Request& request) {
  const Setting setting = setting_of(request);
  auto runs = passes(reading, setting, request.run);
  if (!runs) return runs.error();
  CheckedLog checked{std::move(reading), {}};
  for (auto& run : *runs) {
    const auto place = place_of(run, setting);
    auto judgement = judge::judge(run, request.windows, request.window_assumed, setting.board, place);
    if (request.window_assumed && request.windows.size() == 1) {
      judgement.better_window = better_window(run, request.windows.front());
      if (!judgement.better_window.empty()) judgement.sentence = judge::compose(judgement);
    }
    checked.runs.push_back({std::move(run), place ? std::optional{place->entry} : std::nullopt, std::move(judgement)});
  }
  return checked;
}

}  // namespace ovenwright::check
