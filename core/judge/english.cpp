// The English templates. Those that differ by measure are put together here from one row of words for each measure;
// what leaves this file is a whole sentence.
#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <string_view>

#include "core/judge/decide.h"
#include "core/judge/phrases.h"

namespace ovenwright::judge {
namespace {

/// A measure of one placement: what it does, how far it is out, and the same for several ("…, by 4.6 and 2.6 °C").
struct PlacementRow {
  const char *key, *does, *low, *high, *low_together, *high_together, *at_least;
  bool level;  ///< zones set it, rather than being where it happens
};
constexpr PlacementRow kPlacementRows[] = {
    {"peak", "peaks at {value}", "short", "too hot", "peak too low", "peak too high", "peaks at {value} or more", true},
    {"peak_time", "takes {value} to its peak", "too short", "too long", "reach their peaks too soon",
     "take too long to their peaks", "takes {value} or more to its peak", false},
    {"time_above", "stays above {level} for {value}", "short", "too long", "stay above {level} too briefly",
     "stay above {level} too long", "stays above {level} for at least {value}", false},
    {"excursions", "goes above {level} {value} times", "too few", "too many", "go above {level} too seldom",
     "go above {level} too often", "goes above {level} at least {value} times", false},
    {"area", "gathers {value} above {level}", "too little", "too much", "gather too little above {level}",
     "gather too much above {level}", "gathers at least {value} above {level}", false},
    {"soak", "soaks from {T1} to {T2} for {value}", "short", "too long", "soak too briefly", "soak too long",
     "soaks from {T1} to {T2} for at least {value}", false},
    {"near_peak", "stays within {offset} of its peak for {value}", "short", "too long",
     "stay near their peaks too briefly", "stay near their peaks too long",
     "stays within {offset} of its peak for at least {value}", false},
    {"near_reference", "stays at or above {level} for {value}", "short", "too long",
     "stay near their reference temperature too briefly", "stay near their reference temperature too long",
     "stays at or above {level} for at least {value}", false},
    {"steepest_rise", "rises at {value}", "too slow", "too steep", "rise too slowly", "rise too steeply",
     "rises at {value} or more", false},
    {"mean_rise", "rises on average at {value} from {T1} to {T2}", "too slow", "too steep",
     "rise too slowly on average", "rise too steeply on average",
     "rises on average at {value} or more from {T1} to {T2}", false},
    {"mean_rise_to_peak", "rises on average at {value} from {T1} to its peak", "too slow", "too steep",
     "rise too slowly on average", "rise too steeply on average",
     "rises on average at {value} or more from {T1} to its peak", false},
    {"steepest_fall", "cools at {value}", "too slow", "too steep", "cool too slowly", "cool too steeply",
     "cools at {value} or more", false},
    {"mean_fall", "cools on average at {value} from {T1} to {T2}", "too slow", "too steep",
     "cool too slowly on average", "cool too steeply on average",
     "cools on average at {value} or more from {T1} to {T2}", false},
    {"mean_fall_from_peak", "cools on average at {value} from its peak to {T2}", "too slow", "too steep",
     "cool too slowly on average", "cool too steeply on average",
     "cools on average at {value} or more from its peak to {T2}", false},
    {"temperature_at_time", "is at {value} at {time} s on the log", "too cold", "too hot",
     "are too cold at {time} s on the log", "are too hot at {time} s on the log",
     "is at {value} or more at {time} s on the log", true},
    {"temperature_at_position", "is at {value} {position} mm from the mouth", "too cold", "too hot",
     "are too cold {position} mm from the mouth", "are too hot {position} mm from the mouth",
     "is at {value} or more {position} mm from the mouth", true},
    {"temperature_at_zone", "leaves zone {zone} at {value}", "too cold", "too hot", "leave zone {zone} too cold",
     "leave zone {zone} too hot", "leaves zone {zone} at {value} or more", true},
    {"exit_temperature", "leaves the last zone at {value}", "too cold", "too hot", "leave the last zone too cold",
     "leave the last zone too hot", "leaves the last zone at {value} or more", true},
    {"wave_preheat", "enters the wave at {value}", "too cold", "too hot", "enter the wave too cold",
     "enter the wave too hot", "enters the wave at {value} or more", true},
    {"wave_step", "steps up by {value} into the wave", "too little", "too much", "step up too little into the wave",
     "step up too much into the wave", "steps up by {value} or more into the wave", true},
    {"wave_contact", "touches the solder for {value}", "short", "too long", "touch the solder too briefly",
     "touch the solder too long", "touches the solder for at least {value}", false},
    {"wave_longest_contact", "touches the solder for {value} at a stretch", "short", "too long",
     "touch the solder too briefly at a stretch", "touch the solder too long at a stretch",
     "touches the solder for at least {value} at a stretch", false},
};

/// A measure of the board: its name in a sentence, and how far it is out.
struct BoardRow {
  const char *key, *noun, *low, *high;
  bool level;
};
constexpr BoardRow kBoardRows[] = {
    {"spread_of_peaks", "spread of the peaks", "too small", "too wide", true},
    {"spread_when_hottest", "spread when the hottest reaches {level}", "too small", "too wide", true},
    {"largest_spread", "largest spread", "too small", "too wide", true},
    {"lag", "lag at {level}", "too short", "too long", false},
};

const char* const kVerdicts[][2] = {{"pass", "Pass"},
                                    {"conditional_pass", "Conditional pass"},
                                    {"undetermined", "Undetermined"},
                                    {"conditional_fail", "Conditional fail"},
                                    {"fail", "Fail"}};

const char* const kPredictedVerdicts[][2] = {{"pass", "Predicted pass"},
                                             {"conditional_pass", "Predicted conditional pass"},
                                             {"undetermined", "Predicted undetermined"},
                                             {"conditional_fail", "Predicted conditional fail"},
                                             {"fail", "Predicted fail"}};

const char* const kCauses[][2] = {
    {"open", "[fault:{placement} was open from {from} to {to} s on the log]"},
    {"over_range", "[fault:{placement} was over range from {from} to {to} s on the log]"},
    {"dropout", "[fault:{placement} dropped out from {from} to {to} s on the log]"},
    {"not_read", "[fault:{placement} was not read from {from} to {to} s on the log]"},
    {"ends_hot_one", "the log ends before {placement} cools"},
    {"ends_hot_more", "the log ends before they cool"},
    {"ends_rising_one", "the log ends while {placement} still rises"},
    {"ends_rising_more", "the log ends while they still rise"},
    {"starts_hot_one", "the log starts when {placement} is hot already"},
    {"starts_hot_more", "the log starts when they are hot already"},
    {"tc", "[board:Tc is not known, {detail}]"},
    {"no_channel", "[outcome:the log has no channel {placement}]"},
    {"other", "[outcome:{detail}]"},
};

const char* const kCuts[][2] = {{"ends_hot", "; the log ends before it cools"},
                                {"ends_rising", "; the log ends while it still rises"},
                                {"starts_hot", "; the log starts when it is hot already"}};

constexpr const char* kWho[] = {"one", "two", "three", "others", "all", "all_joints", "all_bodies"};

/// Several placements as a subject.
const char* const kTogether[][2] = {{"two", "{first} and {second}"},
                                    {"three", "{first}, {second} and {third}"},
                                    {"others", "{first}, {second} and {others} others"},
                                    {"all", "All {count.word}"},
                                    {"all_joints", "All {count.word} joints"},
                                    {"all_bodies", "All {count.word} bodies"}};

/// The same where none of them does it.
const char* const kNone[][2] = {{"all", "None of the {count.word}"},
                                {"all_joints", "None of the {count.word} joints"},
                                {"all_bodies", "None of the {count.word} bodies"}};

template <std::size_t n>
std::string find(const char* const (&rows)[n][2], std::string_view key) {
  for (const auto& row : rows)
    if (row[0] == key) return row[1];
  return {};
}

template <class Row, std::size_t n>
const Row* find_row(const Row (&rows)[n], std::string_view key) {
  const auto found = std::ranges::find_if(rows, [&](const Row& row) { return row.key == key; });
  return found == std::end(rows) ? nullptr : &*found;
}

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

/// problem.KEY.SIDE.WHO[.within|.at_least][.zones][.CUT]
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
  if (who == "one" && within) {
    text = fmt::format("[outcome:{}], {{distance}} {}, within its uncertainty", statement(key, true, false), far);
  } else if (who == "one" && at_least) {
    text = fmt::format("[outcome:{}], {{distance}} or more {}", statement(key, false, true), far);
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

/// none.(value|verdict).CAUSE, more_none.(value|verdict).CAUSE, none.(value|verdict).several, for.CAUSE
std::string none_text(const std::vector<std::string>& id, int count) {
  if (id[0] == "for") return id.size() < 2 ? std::string{} : fmt::format("For {{k}}, {}.", find(kCauses, id[1]));
  if (id.size() < 3) return {};
  const bool value = id[1] == "value", one = count == 1;
  const char* lacks = value ? (one ? "has no value" : "have no value") : (one ? "is undetermined" : "are undetermined");
  const std::string cause = find(kCauses, id[2]);
  const bool linked = cause.find('[') != std::string::npos;
  std::string text =
      id[0] == "more_none" ? fmt::format("{{k}} more {}", lacks) : fmt::format("{{k}} of {{n}} requirements {}", lacks);
  if (id[0] == "more_none" && !linked) text = "[outcome:" + text + "]";
  return id[2] == "several" ? text + "." : text + ": " + cause + ".";
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

constexpr const char* kPredicted[] = {"met.all",    "met.rest",    "out",        "out.and_none",
                                      "out.within", "tight.one",   "tight.more", "more.out",
                                      "chance",     "chance.high", "chance.low", "chance.unseen"};

constexpr const char* kFixed[] = {"met.all",
                                  "met.rest",
                                  "met.nothing_required",
                                  "out",
                                  "out.and_none",
                                  "out.within",
                                  "tight.one",
                                  "tight.more",
                                  "more",
                                  "more.out",
                                  "more.causes",
                                  "bodies",
                                  "sides",
                                  "suspect.reversed",
                                  "suspect.detached",
                                  "suspect.swapped",
                                  "suspect.stuck",
                                  "window.better"};

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

bool is_told_of_predictions(const std::string& id) {
  return id.starts_with("verdict.") || std::ranges::find(kPredicted, id) != std::end(kPredicted);
}

std::vector<std::string> sentence_ids() {
  std::vector<std::string> ids(std::begin(kFixed), std::end(kFixed));
  const auto add = [&](const std::string& id) { ids.push_back(id); };
  for (const char* id : kPredicted) add(std::string{kOfPredictions} + id);
  for (const auto& verdict : kVerdicts)
    for (const char* assumed : {"", ".assumed"})
      for (const char* told : {"", kOfPredictions}) add(fmt::format("{}verdict.{}{}", told, verdict[0], assumed));
  std::vector<std::string> keys;
  for (const auto& row : kPlacementRows) keys.emplace_back(row.key);
  for (const auto& row : kBoardRows) keys.emplace_back(row.key);
  for (const auto& key : keys) {
    const bool board = find_row(kBoardRows, key) != nullptr;
    for (const char* side : {"low", "high"}) {
      add(fmt::format("closest.{}.{}", key, side));
      add(fmt::format("closest.{}.{}.at_least", key, side));
      add(fmt::format("tight.{}.{}", key, side));
      add(fmt::format("tightest.{}.{}", key, side));
      for (const char* who : kWho) {
        if (board && who != std::string("one")) continue;
        for (const char* zones : {"", ".zones"}) {
          for (const char* how : {"", ".within"}) add(fmt::format("problem.{}.{}.{}{}{}", key, side, who, how, zones));
          if (side == std::string("low")) continue;
          add(fmt::format("problem.{}.{}.{}.at_least{}", key, side, who, zones));
          if (who != std::string("one")) continue;
          for (const auto& cut : kCuts) add(fmt::format("problem.{}.{}.one.at_least{}.{}", key, side, zones, cut[0]));
        }
      }
    }
  }
  for (const char* who : kWho) {
    for (const char* what : {"both", "time"})
      for (const char* zones : {"", ".zones"}) add(fmt::format("never.{}.{}{}", who, what, zones));
    add(fmt::format("not_reached.level.{}", who));
    add(fmt::format("not_reached.other.{}", who));
    for (const auto& row : kBoardRows) add(fmt::format("not_reached.{}.{}", row.key, who));
  }
  for (const auto& row : kBoardRows) add(fmt::format("not_reached.{}.reason", row.key));
  for (const char* lacks : {"value", "verdict"}) {
    add(fmt::format("none.{}.several", lacks));
    add(fmt::format("more_none.{}.several", lacks));
    for (const auto& cause : kCauses)
      for (const char* which : {"none", "more_none"}) add(fmt::format("{}.{}.{}", which, lacks, cause[0]));
  }
  for (const auto& cause : kCauses) add(fmt::format("for.{}", cause[0]));
  return ids;
}

}  // namespace ovenwright::judge
