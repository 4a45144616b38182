#include "core/judge/causes.h"

#include <algorithm>

#include "core/units/phrase.h"

namespace ovenwright::judge {
namespace {

using Kind = Cause::Kind;

bool same_cause(const Cause& a, const Cause& b) {
  if (a.kind != b.kind) return false;
  switch (a.kind) {
    case Kind::kFault:
      return a.channel == b.channel && a.from_s == b.from_s && a.to_s == b.to_s;
    case Kind::kTcUnknown:
    case Kind::kOther:
      return a.detail == b.detail;
    case Kind::kNoChannel:
      return a.placement == b.placement;
    default:
      return true;  // the log ends for all alike
  }
}

std::string fault_word(run::FaultKind fault) {
  switch (fault) {
    case run::FaultKind::kOpen:
      return "open";
    case run::FaultKind::kOverRange:
      return "over_range";
    case run::FaultKind::kDropout:
      return "dropout";
    default:
      return "not_read";
  }
}

std::string word_of(const Cause& cause, bool several_placements) {
  const std::string who = several_placements ? "_more" : "_one";
  switch (cause.kind) {
    case Kind::kFault:
      return fault_word(cause.fault);
    case Kind::kLogEndsHot:
      return "ends_hot" + who;
    case Kind::kLogEndsRising:
      return "ends_rising" + who;
    case Kind::kLogStartsHot:
      return "starts_hot" + who;
    case Kind::kTcUnknown:
      return "tc";
    case Kind::kNoChannel:
      return "no_channel";
    case Kind::kNone:
    case Kind::kOther:
      break;
  }
  return "other";
}

Argument moment(const char* name, double time_s) {
  return {.name = name, .value = time_s, .digits = 1, .role = Argument::Role::kMoment};
}

}  // namespace

std::vector<SharedCause> causes_of(const Judgement& judgement, const std::vector<std::size_t>& undetermined) {
  std::vector<SharedCause> causes;
  for (const std::size_t i : undetermined) {
    const Cause& cause = judgement.all(i).cause;
    auto found = std::ranges::find_if(causes, [&](const SharedCause& known) {
      return same_cause(judgement.all(known.outcomes.front()).cause, cause);
    });
    if (found == causes.end()) found = causes.insert(found, SharedCause{});
    found->outcomes.push_back(i);
  }
  for (auto& shared : causes) {
    const Cause& cause = judgement.all(shared.outcomes.front()).cause;
    const bool several = std::ranges::any_of(
        shared.outcomes, [&](std::size_t i) { return judgement.all(i).cause.placement != cause.placement; });
    shared.word = word_of(cause, several);
    shared.arguments = {{.name = "placement", .value = cause.placement},
                        {.name = "detail", .value = cause.detail.empty() ? say(Phrase::kNotShownThem) : cause.detail},
                        moment("from", cause.from_s),
                        moment("to", cause.to_s)};
  }
  std::ranges::stable_sort(
      causes, [](const SharedCause& a, const SharedCause& b) { return a.outcomes.size() > b.outcomes.size(); });
  return causes;
}

}  // namespace ovenwright::judge
