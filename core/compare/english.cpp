#include <fmt/format.h>

#include <algorithm>
#include <iterator>

#include "core/compare/phrases.h"
#include "core/judge/decide.h"

// The English templates of the sentences about a comparison.
namespace ovenwright::compare {
namespace {

struct Template {
  const char *id, *one, *more;  ///< for a count of one, and for others; more null: as for one
};

constexpr Template kTemplates[] = {
    {"margin.more", "[verdict:{side} has more margin:] {more} against {less}.", nullptr},
    {"margin.more.means", "[verdict:{side} has more margin:] {more} against {less}, means of their runs.", nullptr},
    {"margin.same", "[verdict:The margins do not differ by more than their uncertainty:] A {a}, B {b}.", nullptr},
    {"margin.same.means",
     "[verdict:The margins do not differ by more than their uncertainty:] A {a}, B {b}, means of their runs.", nullptr},
    {"margin.few",
     "[verdict:A has a margin of {a}, B of {b}], means of their runs; an interval needs two runs on each side.",
     nullptr},
    {"margin.none.both", "[verdict:Neither A nor B has a margin to compare.]", nullptr},
    {"margin.none.one", "[verdict:{side} has no margin to compare.]", nullptr},
    {"out.neither", "Neither has anything out.", nullptr},
    {"out.none", "{side} has nothing out.", nullptr},
    {"out.within", "{side} has nothing out, [more:{k} within its uncertainty].",
     "{side} has nothing out, [more:{k} within their uncertainty]."},
    {"out.open", "{side} has nothing out, [more:{k} undetermined].", nullptr},
    {"out.some", "{side} has [more:{k} out].", nullptr},
    {"runs.neither", "No run of either is out.", nullptr},
    {"runs.none", "No run of {side} is out.", nullptr},
    {"runs.one", "The run of {side} is out.", nullptr},
    {"runs.some", "{k} of {n} runs of {side} is out.", "{k} of {n} runs of {side} are out."},
    {"speed.more", "{side} makes {share} more boards an hour.", nullptr},
    {"speed.fewer", "{side} makes {share} fewer boards an hour.", nullptr},
    {"speed.same", "Both run at {speed}.", nullptr},
    {"differ.nothing", "No result can be compared.", nullptr},
    {"differ.none", "None of {n} results differs by more than its uncertainty.", nullptr},
    {"differ.trace",
     "{k} of {n} results differs by more than its uncertainty, most clearly [outcome:{requirement} on {trace}]: "
     "{a.number} to {b} ({difference} ± {uncertainty}).",
     "{k} of {n} results differ by more than their uncertainty, most clearly [outcome:{requirement} on {trace}]: "
     "{a.number} to {b} ({difference} ± {uncertainty})."},
    {"differ.board",
     "{k} of {n} results differs by more than its uncertainty, most clearly [outcome:{requirement}]: {a.number} to {b} "
     "({difference} ± {uncertainty}).",
     "{k} of {n} results differ by more than their uncertainty, most clearly [outcome:{requirement}]: {a.number} to "
     "{b} ({difference} ± {uncertainty})."},
    {"shared", "Same board and thermocouples, so their common error cancels in the differences.", nullptr},
    {"shared.not", "Other thermocouples or another board, so the errors of both stay in the differences.", nullptr},
    {"shared.groups", "Means of {n_a} and {n_b} runs; ± is their 95 % interval, from the scatter between runs.",
     nullptr},
    {"recipes.several.one", "Not all runs of {side} had the same recipe, so recipes are not compared.", nullptr},
    {"recipes.several.both", "Neither has one recipe in all its runs, so recipes are not compared.", nullptr},
    {"recipes.same", "The recipes are equal.", nullptr},
    {"recipes.zones", "[zones:{k} zone differs]", "[zones:{k} zones differ]"},
    {"recipes.speed", "[zones:The speed differs]", nullptr},
    {"recipes.zones_speed", "[zones:{k} zone and the speed differ]", "[zones:{k} zones and the speed differ]"},
};

}  // namespace

std::string Phrases::text(const std::string& id, int count) const {
  const auto* found = std::ranges::find_if(kTemplates, [&](const Template& row) { return id == row.id; });
  if (found == std::end(kTemplates)) return id;
  return count == 1 || found->more == nullptr ? found->one : found->more;
}

std::string Phrases::margin(double fraction, judge::MarginBound bound) const {
  const char* word = bound == judge::MarginBound::kAtMost    ? "at most "
                     : bound == judge::MarginBound::kAtLeast ? "at least "
                                                             : "";
  return word + judge::number_text(100 * fraction, 0, 0.0) + " %";
}

std::string Phrases::share(double fraction) const {
  return judge::number_text(100 * fraction, 100 * fraction < 1 ? 1 : 0) + " %";
}

std::string Phrases::speed(double mm_per_min) const { return fmt::format("{} mm/min", mm_per_min); }

std::vector<std::string> sentence_ids() {
  std::vector<std::string> ids;
  for (const auto& row : kTemplates) ids.emplace_back(row.id);
  return ids;
}

}  // namespace ovenwright::compare
