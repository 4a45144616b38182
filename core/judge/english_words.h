#pragma once
// The English words that the verdict sentence is put together from, and the keys of its templates.
#include <algorithm>
#include <string>
#include <string_view>

namespace ovenwright::judge::english {

/// A measure of one placement: what it does, how far it is out, and the same for several ("…, by 4.6 and 2.6 °C").
struct PlacementRow {
  const char *key, *does, *low, *high, *low_together, *high_together, *at_least;
  bool level;  ///< zones set it, rather than being where it happens
};
inline constexpr PlacementRow kPlacementRows[] = {
    {"peak", "peaks at {value}", "short", "too hot", "peak too low", "peak too high", "peaks at {value} or more", true},
    {"peak_time", "takes {value} to its peak", "too short", "too long", "reach their peaks too soon",
     "take too long to their peaks", "takes {value} or more to its peak", false},
    {"time_above", "stays above {level} for {value}", "short", "too long", "stay above {level} too briefly",
     "stay above {level} too long", "stays above {level} for at least {value}", false},
    {"excursions", "goes above {level} {value.times}", "too few", "too many", "go above {level} too seldom",
     "go above {level} too often", "goes above {level} at least {value.times}", false},
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
inline constexpr BoardRow kBoardRows[] = {
    {"spread_of_peaks", "spread of the peaks", "too small", "too wide", true},
    {"spread_when_hottest", "spread when the hottest reaches {level}", "too small", "too wide", true},
    {"largest_spread", "largest spread", "too small", "too wide", true},
    {"lag", "lag at {level}", "too short", "too long", false},
};

inline constexpr const char* kVerdicts[][2] = {{"pass", "Pass"},
                                               {"conditional_pass", "Conditional pass"},
                                               {"undetermined", "Undetermined"},
                                               {"conditional_fail", "Conditional fail"},
                                               {"fail", "Fail"}};

inline constexpr const char* kPredictedVerdicts[][2] = {{"pass", "Predicted pass"},
                                                        {"conditional_pass", "Predicted conditional pass"},
                                                        {"undetermined", "Predicted undetermined"},
                                                        {"conditional_fail", "Predicted conditional fail"},
                                                        {"fail", "Predicted fail"}};

inline constexpr const char* kCauses[][2] = {
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

inline constexpr const char* kCuts[][2] = {{"ends_hot", "; the log ends before it cools"},
                                           {"ends_rising", "; the log ends while it still rises"},
                                           {"starts_hot", "; the log starts when it is hot already"}};

inline constexpr const char* kWho[] = {"one", "two", "three", "others", "all", "all_joints", "all_bodies"};

/// Several placements as a subject.
inline constexpr const char* kTogether[][2] = {{"two", "{first} and {second}"},
                                               {"three", "{first}, {second} and {third}"},
                                               {"others", "{first}, {second} and {others} others"},
                                               {"all", "All {count.word}"},
                                               {"all_joints", "All {count.word} joints"},
                                               {"all_bodies", "All {count.word} bodies"}};

/// The same where none of them does it.
inline constexpr const char* kNone[][2] = {{"all", "None of the {count.word}"},
                                           {"all_joints", "None of the {count.word} joints"},
                                           {"all_bodies", "None of the {count.word} bodies"}};

// Sentences that stand as they are.
inline constexpr const char* kPredicted[] = {"met.all",    "met.rest",    "out",        "out.and_none",
                                             "out.within", "tight.one",   "tight.more", "more.out",
                                             "chance",     "chance.high", "chance.low", "chance.unseen"};

inline constexpr const char* kFixed[] = {"met.all",
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

}  // namespace ovenwright::judge::english
