// The English templates. Those that differ by measure are put together here from one row of words for each measure;
// what leaves this file is a whole sentence.
#include <fmt/format.h>

#include <algorithm>
#include <string_view>

#include "core/judge/english_words.h"
#include "core/judge/phrases.h"

namespace ovenwright::judge {
namespace {

using namespace english;

std::vector<std::string> split(std::string_view id) {
  std::vector<std::string> words;
  for (std::size_t from = 0; from <= id.size();) {
    const std::size_t dot = std::min(id.find('.', from), id.size());
    words.emplace_back(id.substr(from, dot - from));
    from = dot + 1;
  }
  return words;
}

bool contains(const std::vector<std::string>& words, const char* word) {
  return std::ranges::find(words, word) != words.end();
}

std::string with_U(std::string text) {
  const std::size_t at = text.find("{value}");
  return at == std::string::npos ? text : text.replace(at, 7, "{value.U}");
}

/// "R118 rises at 2.73 °C/s", or of the board "The lag at 217 °C is 36.5 s"; with its uncertainty where asked.
std::string statement(const std::string& key, bool U, bool at_least) {
  std::string text;
  if (const auto* row = find_row(kPlacementRows, key))
    text = fmt::format("{{placement}} {}", at_least ? row->at_least : row->does);
  else if (const auto* board = find_row(kBoardRows, key))
    text = fmt::format("The {} is {}{{value}}", board->noun, at_least ? "at least " : "");
  return U ? with_U(text) : text;
}

/// "R118, which rises at 2.73 ± 0.07 °C/s"
std::string relative(const std::string& key, bool at_least) {
  if (const auto* row = find_row(kPlacementRows, key))
    return with_U(fmt::format("{{placement}}, which {}", at_least ? row->at_least : row->does));
  if (const auto* board = find_row(kBoardRows, key))
    return fmt::format("the {}, which is {}{{value.U}}", board->noun, at_least ? "at least " : "");
  return {};
}

std::string from_limit(const std::string& side) {
  return side == "low" ? "{distance} above its lower limit" : "{distance} below its upper limit";
}

/// closest.KEY.SIDE[.at_least], tight.KEY.SIDE, tightest.KEY.SIDE
std::string inside_text(const std::vector<std::string>& id) {
  if (id.size() < 3) return {};
  if (id[0] == "closest")
    return fmt::format("The closest is [outcome:{}], {}.", relative(id[1], contains(id, "at_least")),
                       from_limit(id[2]));
  const std::string said = statement(id[1], true, false);
  if (id[0] == "tightest") return fmt::format("The tightest: [outcome:{}], {}.", said, from_limit(id[2]));
  return fmt::format("[outcome:{}], {}, within its uncertainty.", said, from_limit(id[2]));
}

/// problem.KEY.SIDE.WHO[.at_least][.within][.zones][.CUT]
std::string problem_text(const std::vector<std::string>& id) {
  if (id.size() < 4) return {};
  const std::string &key = id[1], &who = id[3];
  const auto* row = find_row(kPlacementRows, key);
  const auto* board = find_row(kBoardRows, key);
  if (!row && !board) return {};
  const bool low = id[2] == "low", within = contains(id, "within"), at_least = contains(id, "at_least");
  const bool level = row ? row->level : board->level;
  const std::string far = row ? (low ? row->low : row->high) : (low ? board->low : board->high);
  std::string text;
  if (who == "one" && (within || at_least)) {
    text = fmt::format("[outcome:{}], {{distance}} {}{}{}", statement(key, within, at_least),
                       at_least ? "or more " : "", far, within ? ", within its uncertainty" : "");
  } else if (who == "one") {
    text = fmt::format("[outcome:{}, {{distance}} {}]", statement(key, false, false), far);
  } else {
    text = fmt::format("[outcome:{} {}, by {}{}]{}", find(kTogether, who), low ? row->low_together : row->high_together,
                       who == "two" ? "{distance_1.number} and {distance_2}" : "up to {distance}",
                       at_least ? " or more" : "", within ? ", within their uncertainty" : "");
  }
  if (contains(id, "zones"))
    text += std::string(within ? "; " : ", ") +
            (level    ? "set by"
             : within ? "it arises in"
                      : "in") +
            " [zones:{zones}]";
  for (const auto& cut : kCuts)
    if (contains(id, cut[0])) text += cut[1];
  return text + ".";
}

/// never.WHO.(both|time)[.zones]
std::string never_text(const std::vector<std::string>& id) {
  if (id.size() < 3) return {};
  const std::string& who = id[1];
  const bool both = id[2] == "both";
  std::string text;
  if (who == "one")
    text = "[outcome:{placement} never reaches {level}]: ";
  else if (const std::string none = find(kNone, who); !none.empty())
    text = fmt::format("[outcome:{} reaches {{level}}]: ", none);
  else
    text = fmt::format("[outcome:{} never reach {{level}}]: ", find(kTogether, who));
  if (!both)
    text += "{time} above it, {time_distance} short";
  else if (who == "one")
    text += "it peaks at {peak}, {peak_distance} short, with {time} above {level}, {time_distance} short";
  else if (who == "two")
    text +=
        "they peak at {peak_1.number} and {peak_2}, {peak_distance_1.number} and {peak_distance_2} short, with "
        "{time} above {level}, {time_distance} short";
  else
    text += "they peak up to {peak_distance} short, with {time} above {level}, {time_distance} short";
  if (contains(id, "zones")) text += "; set by [zones:{zones}]";
  return text + ".";
}

/// not_reached.level.WHO, not_reached.other.WHO, not_reached.KEY.WHO for the board, WHO its traces
std::string not_reached_text(const std::vector<std::string>& id) {
  if (id.size() < 3) return {};
  const std::string& who = id[2];
  const std::string together = find(kTogether, who);
  if (id[1] == "level") {
    if (who == "one") return "[outcome:{placement} never reaches {level}]: {requirement} has no value.";
    if (const std::string none = find(kNone, who); !none.empty())
      return fmt::format("[outcome:{} reaches {{level}}]: {{requirement}} has no value.", none);
    return fmt::format("[outcome:{} never reach {{level}}]: {{requirement}} has no value.", together);
  }
  if (id[1] == "other") {
    if (who == "one") return "[outcome:{placement} has no value for {requirement}]: {reason}.";
    return fmt::format("[outcome:{} have no value for {{requirement}}]: {{reason}}.", together);
  }
  const auto* board = find_row(kBoardRows, id[1]);
  if (!board) return {};
  const std::string lead = fmt::format("[outcome:The {} has no value]: ", board->noun);
  if (who == "reason") return lead + "{reason}.";
  if (who == "one") return lead + "not reached by {placement}.";
  if (who == "all") return lead + "not reached by any.";
  return lead + "not reached by " + together + ".";
}

bool is_linked(const std::string& text) { return text.find('[') != std::string::npos; }

/// Every cause leads to what it is the cause of.
std::string linked(std::string cause) { return is_linked(cause) || cause.empty() ? cause : "[outcome:" + cause + "]"; }

/// none.(value|verdict).CAUSE, more_none.(value|verdict).CAUSE, none.(value|verdict).several, for.CAUSE
std::string none_text(const std::vector<std::string>& id, int count) {
  if (id[0] == "for")
    return id.size() < 2 ? std::string{} : fmt::format("For {{k}}, {}.", linked(find(kCauses, id[1])));
  if (id.size() < 3) return {};
  const bool value = id[1] == "value", one = count == 1;
  const char* lacks = value ? (one ? "has no value" : "have no value") : (one ? "is undetermined" : "are undetermined");
  const std::string cause = find(kCauses, id[2]);
  const bool more = id[0] == "more_none";
  std::string text = fmt::format(fmt::runtime(more ? "{{k}} more {}" : "{{k}} of {{n}} requirements {}"), lacks);
  if (more && !is_linked(cause)) text = "[outcome:" + text + "]";
  return id[2] == "several" ? text + "." : text + ": " + (more ? cause : linked(cause)) + ".";
}

std::string fixed_text(const std::string& id, int count) {
  const bool one = count == 1;
  if (id == "met.all") return one ? "The one requirement is met." : "All {n} requirements are met.";
  if (id == "met.rest") return one ? "The other one is met." : "The other {k} are met.";
  if (id == "met.nothing_required") return "Nothing is required of this run.";
  if (id == "out") return one ? "{k} of {n} requirements is out." : "{k} of {n} requirements are out.";
  if (id == "out.and_none") return one ? "{k} of {n} requirements is out:" : "{k} of {n} requirements are out:";
  if (id == "out.within") return "{k} of {n} requirements are out, within their uncertainty.";
  if (id == "tight.one") return "Nothing is out.";
  if (id == "tight.more") return "Nothing is out; {k} of {n} lie within their uncertainty of a limit.";
  if (id == "more") return "[more:{k} more].";
  if (id == "more.out") return one ? "[more:{k} more is out]." : "[more:{k} more are out].";
  if (id == "more.causes") return one ? "[more:{k} more] has another reason." : "[more:{k} more] have other reasons.";
  if (id == "bodies") return "[board:Body limits are not judged: no board says what is a body.]";
  if (id == "sides") return "[board:Limits of one side are not judged: no board says which side a trace is on.]";
  if (id == "suspect.reversed")
    return "[fault:{placement} falls where a run rises: is it plugged in the wrong way round?]";
  if (id == "suspect.detached") return "[fault:{placement} leads all others: has it come off?]";
  if (id == "suspect.swapped") return "[fault:{placement} may be swapped with another.]";
  if (id == "suspect.stuck") return "[fault:{placement} reads the same from {from} to {to} s on the log: is it stuck?]";
  if (id == "window.better") return "[window:{window} fits these peaks.]";
  return {};
}

/// What stands in the place of a fixed sentence where the run is predicted.
std::string predicted_text(const std::string& id, int count) {
  const bool one = count == 1;
  if (id == "met.all")
    return one ? "The one requirement is expected to be met." : "All {n} requirements are expected to be met.";
  if (id == "met.rest") return one ? "The other one is expected to be met." : "The other {k} are expected to be met.";
  if (id == "out")
    return one ? "{k} of {n} requirements is expected to be out." : "{k} of {n} requirements are expected to be out.";
  if (id == "out.and_none")
    return one ? "{k} of {n} requirements is expected to be out:" : "{k} of {n} requirements are expected to be out:";
  if (id == "out.within") return "{k} of {n} requirements are expected to be out, within their uncertainty.";
  if (id == "tight.one") return "Nothing is expected to be out.";
  if (id == "tight.more") return "Nothing is expected to be out; {k} of {n} lie within their uncertainty of a limit.";
  if (id == "more.out")
    return one ? "[more:{k} more is expected to be out]." : "[more:{k} more are expected to be out].";
  if (id == "chance") return "It passes with a probability of {chance} %.";
  if (id == "chance.high") return "It passes with a probability of more than 99 %.";
  if (id == "chance.low") return "It passes with a probability of less than 1 %.";
  if (id == "chance.unseen") return "How likely it passes is not known: the log ends before the board has cooled.";
  return {};
}

}  // namespace

std::string Phrases::text(const std::string& id, int count) const {
  if (std::string fixed = fixed_text(id, count); !fixed.empty()) return fixed;
  auto words = split(id);
  const bool predicted = id.starts_with(kOfPredictions);
  if (predicted) {
    if (std::string text = predicted_text(id.substr(std::string_view(kOfPredictions).size()), count); !text.empty())
      return text;
    words.erase(words.begin());
    if (words[0] != "verdict") return {};
  }
  if (words[0] == "verdict" && words.size() > 1) {
    const std::string word = find(predicted ? kPredictedVerdicts : kVerdicts, words[1]);
    return contains(words, "assumed") ? fmt::format("[verdict:{}] [window:against {{window}} (assumed)].", word)
                                      : fmt::format("[verdict:{}.]", word);
  }
  if (words[0] == "problem") return problem_text(words);
  if (words[0] == "never") return never_text(words);
  if (words[0] == "not_reached") return not_reached_text(words);
  if (words[0] == "none" || words[0] == "more_none" || words[0] == "for") return none_text(words, count);
  return inside_text(words);
}

}  // namespace ovenwright::judge
