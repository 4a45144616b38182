#include "core/exposure/findings.h"

#include <fmt/format.h>

#include <algorithm>

#include "core/judge/decide.h"

namespace ovenwright::exposure {
namespace {

using judge::number_text;
using judge::Verdict;

/// Fail above the limit, without an uncertainty of its own.
Verdict held_to(double value, double limit) {
  return judge::decide(value, 0, {}, limit, window::DecisionRule::kSimple);
}

std::string melting_sentence(const Finding& finding, const Heat& heat, const std::string& pass) {
  if (!finding.value)
    return fmt::format("Whether {} melts again in {} is not known: {}.", finding.name, pass, heat.peak.reason);
  const std::string peak = number_text(*finding.value, 1, {}, finding.limit);
  const std::string limit = number_text(finding.limit, 0);
  if (!judge::is_out(finding.verdict))
    return fmt::format("{} stays solid in {}: it reaches {} °C, its solidus is {} °C.", finding.name, pass, peak,
                       limit);
  return fmt::format(
      "{} melts again in {}: it reaches {} ± {} °C, {} °C above its solidus of {} °C (a joint already made stays below "
      "it: common practice, no source).",
      finding.name, pass, peak, number_text(finding.expanded_uncertainty.value_or(0), 1),
      number_text(*finding.value - finding.limit, 1, 0.0), limit);
}

class Finder {
 public:
  Finder(std::span<const Pass> passes, std::span<const Placement> placements)
      : passes_(passes), placements_(placements) {}

  std::vector<Finding> take() && {
    for (std::size_t p = 1; p < passes_.size(); ++p) {
      if (passes_[p].window->process == window::Process::kWave)
        for (std::size_t i = 0; i < placements_.size(); ++i) melts_again(p, i);
      else if (passes_[p].board)
        for (const auto& part : passes_[p].board->parts) hangs(p, part);
    }
    for (std::size_t i = 0; i < placements_.size(); ++i) too_many(i);
    std::ranges::stable_sort(findings_, std::ranges::greater(), &Finding::verdict);
    return std::move(findings_);
  }

 private:
  void melts_again(std::size_t p, std::size_t i) {
    const auto& placement = placements_[i];
    const auto& heat = placement.passes[p];
    if (placement.first >= p || placement.kind != board::Kind::kJoint || !heat) return;
    judge::Outcome outcome;
    outcome.measure.measure = measure::Measure::kPeak;
    outcome.value = heat->peak;
    outcome.upper = placement.solidus_C;
    judge::settle(outcome, passes_[p].window->decision_rule);
    Finding finding{Finding::Kind::kMeltsAgain, outcome.verdict, placement.name, i, p};
    finding.value = heat->peak.value;
    finding.limit = placement.solidus_C;
    finding.expanded_uncertainty = heat->peak.expanded_uncertainty;
    finding.sentence = melting_sentence(finding, *heat, passes_[p].name);
    findings_.push_back(std::move(finding));
  }

  /// The side that a part faces in a pass: its own in that pass's board file, else that of a placement on it.
  static std::optional<board::Side> side_of(const board::Part& part, const board::Board& board) {
    if (part.side) return part.side;
    for (const auto& placement : board.placements)
      if (placement.part == part.name && placement.side) return placement.side;
    return std::nullopt;
  }

  void hangs(std::size_t p, const board::Part& part) {
    if (side_of(part, *passes_[p].board) != board::Side::kBottom || !part.mass_g || !part.wetted_pad_area_mm2) return;
    Finding finding{Finding::Kind::kHangs, Verdict::kPass, part.name, placement_on(part), p};
    finding.value = 1000 * *part.mass_g / *part.wetted_pad_area_mm2;
    finding.limit = kHeaviest_mg_per_mm2;
    finding.verdict = held_to(*finding.value, finding.limit);
    finding.sentence = fmt::format(
        "{} hangs under the board in {}: {} g on {} mm² of wetted pad, {} mg/mm²{} 46.5 mg/mm² (30 g per square inch, "
        "rule of thumb){}.",
        part.name, passes_[p].name, number_text(*part.mass_g, 2), number_text(*part.wetted_pad_area_mm2, 0),
        number_text(*finding.value, 1, {}, finding.limit), judge::is_out(finding.verdict) ? ", more than" : ", within",
        judge::is_out(finding.verdict) ? "; it may drop" : "");
    findings_.push_back(std::move(finding));
  }

  std::optional<std::size_t> placement_on(const board::Part& part) const {
    const auto on = std::ranges::find(placements_, std::optional(part.name), &Placement::part);
    return on == placements_.end() ? std::nullopt : std::optional(static_cast<std::size_t>(on - placements_.begin()));
  }

  void too_many(std::size_t i) {
    const auto& placement = placements_[i];
    if (placement.part && !counted(*placement.part)) return;
    const std::string& name = placement.part ? *placement.part : placement.name;
    Finding finding{Finding::Kind::kTooMany, Verdict::kPass, name, i};
    finding.value = static_cast<double>(placement.heats);
    finding.limit = placement.allowed;
    finding.verdict = held_to(*finding.value, finding.limit);
    finding.pass = passes_.size() - 1;
    if (judge::is_out(finding.verdict)) finding.pass = placement.first + static_cast<std::size_t>(placement.allowed);
    finding.sentence =
        fmt::format("{} goes through {} soldering heat{}; {} {} allowed.", name, placement.heats,
                    placement.heats == 1 ? "" : "s", placement.allowed, placement.allowed == 1 ? "is" : "are");
    findings_.push_back(std::move(finding));
  }

  /// Whether a part is met for the first time: several thermocouples on it are one finding.
  bool counted(const std::string& part) {
    if (std::ranges::find(parts_, part) != parts_.end()) return false;
    parts_.push_back(part);
    return true;
  }

  std::span<const Pass> passes_;
  std::span<const Placement> placements_;
  std::vector<Finding> findings_;
  std::vector<std::string> parts_;
};

}  // namespace

std::vector<Finding> findings_of(std::span<const Pass> passes, std::span<const Placement> placements) {
  return Finder(passes, placements).take();
}

std::string sentence_of(const Exposure& exposure) {
  std::string sentence;
  std::size_t undetermined = 0;
  for (const auto& finding : exposure.findings) {
    if (judge::is_out(finding.verdict)) sentence += finding.sentence + " ";
    if (finding.verdict == Verdict::kUndetermined) ++undetermined;
  }
  if (sentence.empty())
    sentence = undetermined == 0 ? "Nothing melts again, hangs too heavy or goes through too many heats. " : "";
  if (undetermined > 0)
    sentence += fmt::format("Of {} joint{} it is not known whether {} again. ", undetermined,
                            undetermined == 1 ? "" : "s", undetermined == 1 ? "it melts" : "they melt");
  const Placement* longest = nullptr;
  for (const auto& placement : exposure.placements)
    if (placement.time_above_s && (longest == nullptr || placement.time_above_s->value > longest->time_above_s->value))
      longest = &placement;
  if (longest == nullptr) return sentence + "No placement has a time above liquidus.";
  const auto& total = *longest->time_above_s;
  return sentence + fmt::format("Longest total above liquidus: {}, {}{} ± {} s; no standard limits it.", longest->name,
                                total.at_least ? "at least " : "", number_text(total.value, 1),
                                number_text(total.expanded_uncertainty, 1));
}

}  // namespace ovenwright::exposure
