#include "core/window/window_file.h"

#include <gtest/gtest.h>

#include <string>

#include "core/files/profiles.h"
#include "core/window/limit.h"

namespace ovenwright::window {
namespace {

constexpr const char* kWindow = R"(name = "SAC305, line 2"
revision = "3"
process = "reflow"
alloy = "SAC305"
liquidus_C = 217
solidus_C = 217
classification = "Pb-free"
decision_rule = "guarded"
source = "process note 14"
[uncertainty]
thermocouple = "T class 1"
instrument_C = 0.5
[[requirement]]
name = "soak"
measure = "time between on rise"
T1 = 150
T2 = 200
side = "bottom"
lower = 60
upper = 120
target = 90
applies_to = "joint"
required = false
source = "note 14"
[[requirement]]
measure = "peak"
upper = "Tc"
target = "Tc - 5"
applies_to = "body"
upper_source = "standard"
[[requirement]]
name = "near Tc"
measure = "time near peak"
reference = "Tc"
offset = 5
upper = 30
applies_to = ["U3 body", "U4"]
[[requirement]]
measure = "spread of peaks"
upper = 10
[[requirement]]
measure = "mean fall"
T1 = "peak"
T2 = 217
upper = 6
[[requirement]]
measure = "time above"
lower = 45
upper = 90
)";

TEST(WindowFile, ReadsEveryKey) {
  const auto window = parse("windows/line2.toml", kWindow);
  ASSERT_TRUE(window) << window.error().text();
  EXPECT_EQ(window->identity.name, "SAC305, line 2");
  EXPECT_EQ(window->identity.revision, "3");
  EXPECT_EQ(window->liquidus_C, 217);
  EXPECT_EQ(window->classification, Classification::kLeadFree);
  EXPECT_EQ(window->decision_rule, DecisionRule::kGuarded);
  EXPECT_EQ(window->uncertainty.thermocouple, "T class 1");
  EXPECT_EQ(window->uncertainty.instrument_C, 0.5);
  EXPECT_FALSE(window->uncertainty.defaulted);
  ASSERT_EQ(window->requirements.size(), 6U);
  const auto& soak = window->requirements[0];
  EXPECT_EQ(soak.measure.measure, measure::Measure::kTimeBetweenOnRise);
  EXPECT_EQ(std::get<double>(*soak.measure.parameters.T2), 200);
  EXPECT_EQ(soak.side, board::Side::kBottom);
  EXPECT_EQ(std::get<double>(*soak.target), 90);
  EXPECT_EQ(soak.applies_to.kind, AppliesTo::Kind::kJoint);
  EXPECT_FALSE(soak.required);
  EXPECT_EQ(soak.line, 13);
  const auto& peak = window->requirements[1];
  EXPECT_EQ(peak.name, "peak");
  EXPECT_EQ(std::get<TcOffset>(*peak.upper).offset_C, 0);
  EXPECT_EQ(std::get<TcOffset>(*peak.target).offset_C, -5);
  EXPECT_EQ(peak.applies_to.kind, AppliesTo::Kind::kBody);
  EXPECT_EQ(peak.upper_source, "standard");
  EXPECT_EQ(window->requirements[2].applies_to.channels, (std::vector<std::string>{"U3 body", "U4"}));
  EXPECT_EQ(window->requirements[3].applies_to.kind, AppliesTo::Kind::kBoard);
  EXPECT_EQ(window->requirements[5].applies_to.kind, AppliesTo::Kind::kAll);
}

TEST(WindowFile, DefaultsAreThoseOfTheDefinitions) {
  const auto window = parse("w", "[[requirement]]\nmeasure = \"peak\"\nlower = 235\nupper = 250\n");
  ASSERT_TRUE(window) << window.error().text();
  EXPECT_EQ(window->identity.name, "w");
  EXPECT_EQ(window->process, Process::kReflow);
  EXPECT_EQ(window->decision_rule, DecisionRule::kSimple);
  EXPECT_EQ(window->uncertainty.thermocouple, "K class 1");
  EXPECT_EQ(window->uncertainty.instrument_C, 1.0);
  EXPECT_TRUE(window->uncertainty.defaulted);
  EXPECT_TRUE(window->requirements[0].required);
}

struct Case {
  const char* name;
  const char* text;
  const char* want;
};
void PrintTo(const Case& c, std::ostream* os) { *os << c.name; }
class WindowErrors : public testing::TestWithParam<Case> {};

TEST_P(WindowErrors, SayWhereWhatWasFoundAndWhatWasExpected) {
  const auto window = parse("w.toml", GetParam().text);
  ASSERT_FALSE(window);
  EXPECT_EQ(window.error().code, ErrorCode::kParse);
  EXPECT_EQ(window.error().text(), GetParam().want);
}

// The head that most of the cases share.
#define PEAK "name = \"X\"\n[[requirement]]\nmeasure = \"peak\"\n"
INSTANTIATE_TEST_SUITE_P(
    Keys, WindowErrors,
    testing::Values(
        Case{"unknown_key", PEAK "lowr = 235\nupper = 250\n",
             R"(w.toml:4:1: found the unknown key "lowr" in [[requirement]], did you mean "lower"?)"},
        Case{"unknown_key_at_the_root", "liquidus = 217\n" PEAK "lower = 235\nupper = 250\n",
             R"(w.toml:1:1: found the unknown key "liquidus", did you mean "liquidus_C"?)"},
        Case{"unknown_key_of_uncertainty", "[uncertainty]\ninstrument = 1\n" PEAK,
             R"(w.toml:2:1: found the unknown key "instrument" in [uncertainty], did you mean "instrument_C"?)"},
        Case{"no_requirement", "name = \"X\"\n",
             R"(w.toml:1:1: missing "requirement", expected at least one [[requirement]])"},
        Case{"process", "process = \"waves\"\n" PEAK "lower = 235\nupper = 250\n",
             R"(w.toml:1:11: found "waves" for "process", did you mean "wave"?)"},
        Case{"decision_rule", "decision_rule = \"strict\"\n" PEAK "lower = 235\nupper = 250\n",
             R"(w.toml:1:17: found "strict" for "decision_rule", expected "simple" or "guarded")"},
        Case{"classification", "classification = \"lead-free\"\n" PEAK "lower = 235\nupper = 250\n",
             R"(w.toml:1:18: found "lead-free" for "classification", expected "Pb-free" or "SnPb")"},
        Case{"solidus", "liquidus_C = 217\nsolidus_C = 220\n" PEAK "lower = 235\nupper = 250\n",
             R"(w.toml:2:13: found 220 for "solidus_C", expected at most the liquidus, 217)"},
        Case{"wrong_type", PEAK "lower = [235]\nupper = 250\n",
             R"(w.toml:4:9: found [235] for "lower", expected a number or a text in quotes)"},
        Case{"tolerance_beside_class",
             "[uncertainty]\nthermocouple = \"K class 1\"\ntolerance_C = 1.5\n[[requirement]]\nmeasure = "
             "\"peak\"\nlower = 235\nupper = 250\n",
             R"(w.toml:3:15: found "tolerance_C" beside "thermocouple", expected one of the two)"},
        Case{"instrument_negative",
             "[uncertainty]\ninstrument_C = -1\n[[requirement]]\nmeasure = \"peak\"\nlower = 1\nupper = 2\n",
             R"(w.toml:2:16: found -1 for "instrument_C", expected a number from 0 to 100)"}),
    [](const auto& c) { return std::string{c.param.name}; });

INSTANTIATE_TEST_SUITE_P(
    Limits, WindowErrors,
    testing::Values(
        Case{"none", PEAK, R"(w.toml:3:11: "peak" has no limit, expected "lower", "upper" or both)"},
        Case{"crossed", PEAK "lower = 250\nupper = 235\n", R"(w.toml:5:9: limits crossed: lower 250, upper 235)"},
        Case{"not_possible", PEAK "lower = 235\nupper = 1e300\n",
             R"(w.toml:5:9: found 1e300 for "upper", expected a temperature in °C)"},
        Case{"equal", PEAK "lower = 235\nupper = 235\n", R"(w.toml:5:9: limits crossed: lower 235, upper 235)"},
        Case{"crossed_as_tc", "classification = \"SnPb\"\n" PEAK "lower = \"Tc\"\nupper = \"Tc-5\"\n",
             R"(w.toml:6:9: limits crossed: lower "Tc", upper "Tc-5")"},
        Case{"upper_without_target", PEAK "upper = 250\n",
             R"(w.toml:4:9: The window "X" gives "peak" an upper limit but no target)"},
        Case{"lower_without_target", PEAK "lower = 235\n",
             R"(w.toml:4:9: The window "X" gives "peak" a lower limit but no target)"},
        Case{"lower_of_a_time",
             "name = \"X\"\n[[requirement]]\nname = \"TAL\"\nmeasure = \"time above\"\nlevel = 217\nlower = 45\n",
             R"(w.toml:6:9: The window "X" gives "TAL" a lower limit but no target)"},
        Case{"upper_of_zero", "[[requirement]]\nmeasure = \"steepest rise\"\nupper = 0\n",
             R"(w.toml:3:9: found 0 for "upper", expected a limit above 0 or a target)"},
        Case{"target_on_the_limit", PEAK "lower = 235\nupper = 250\ntarget = 250\n",
             R"(w.toml:6:10: found 250 for "target", expected a target strictly between 235 and 250)"},
        Case{"target_below", PEAK "lower = 235\ntarget = 230\n",
             R"(w.toml:5:10: found 230 for "target", expected a target above 235)"},
        Case{"target_above", PEAK "upper = 250\ntarget = 250.5\n",
             R"(w.toml:5:10: found 250.5 for "target", expected a target below 250)"},
        Case{"limit_is_no_word", PEAK "lower = 235\nupper = \"hot\"\n",
             R"(w.toml:5:9: found "hot" for "upper", expected a number, "Tc" or "Tc-5")"},
        Case{"tc_of_a_time", "classification = \"SnPb\"\n[[requirement]]\nmeasure = \"peak time\"\nupper = \"Tc\"\n",
             R"(w.toml:4:9: Tc is a temperature, "peak time" is none)"},
        Case{"tc_of_joints",
             "classification = \"SnPb\"\n" PEAK "upper = \"Tc\"\ntarget = \"Tc-5\"\napplies_to = \"joint\"\n",
             R"(w.toml:7:14: Tc binds the bodies of parts, but "applies_to" leaves them out)"},
        Case{"tc_without_classification", PEAK "upper = \"Tc\"\ntarget = \"Tc-5\"\n",
             R"(w.toml:4:9: found Tc for "upper", but the window has no "classification" to take it from)"},
        Case{"tc_reference_without_classification",
             "[[requirement]]\nmeasure = \"time near peak\"\nreference = \"Tc\"\nupper = 30\n",
             R"(w.toml:3:13: found Tc for "reference", but the window has no "classification" to take it from)"}),
    [](const auto& c) { return std::string{c.param.name}; });

#define ALL_MEASURES                                                                                                   \
  "\"peak\", \"peak time\", \"time above\", \"excursions above\", \"area above\", \"time between on rise\", \"time "   \
  "near peak\", \"steepest rise\", \"mean rise\", \"steepest fall\", \"mean fall\", \"temperature at\", \"exit "       \
  "temperature\", \"spread of peaks\", \"spread when hottest reaches\", \"largest spread\", \"lag\", \"wave: preheat " \
  "temperature\", \"wave: step\", \"wave: contact time\" or \"wave: longest contact\""
INSTANTIATE_TEST_SUITE_P(
    Measures, WindowErrors,
    testing::Values(
        Case{"missing", "[[requirement]]\nupper = 3\n",
             R"(w.toml:1:1: missing "measure" in [[requirement]], expected a text in quotes)"},
        Case{"unknown", "[[requirement]]\nmeasure = \"time abov\"\nupper = 3\n",
             R"(w.toml:2:11: found the unknown measure "time abov", did you mean "time above"?)"},
        Case{"parameter_of_another", PEAK "level = 217\nlower = 235\nupper = 250\n",
             R"(w.toml:4:9: "peak" has no parameter "level")"},
        Case{"parameter_missing", "[[requirement]]\nmeasure = \"time between on rise\"\nT1 = 150\nupper = 90\n",
             R"(w.toml:2:11: "time between on rise" needs T2)"},
        Case{"level_missing", "[[requirement]]\nmeasure = \"time above\"\nupper = 90\n",
             R"(w.toml:2:11: "time above" needs level, or the window a "liquidus_C")"},
        Case{"parameters_crossed",
             "[[requirement]]\nmeasure = \"time between on rise\"\nT1 = 200\nT2 = 150\nupper = 90\n",
             R"(w.toml:3:6: T1 must be below T2)"},
        Case{"slope_window", "[[requirement]]\nmeasure = \"steepest rise\"\nover = 0\nupper = 3\n",
             R"(w.toml:3:8: over must be more than 0 s)"},
        Case{"no_measure", "[[requirement]]\nmeasure = \"\"\nlower = 1\nupper = 3\n",
             "w.toml:2:11: found the unknown measure \"\", expected " ALL_MEASURES},
        Case{"parameter_of_the_wrong_type",
             "[[requirement]]\nmeasure = \"time between on rise\"\nT1 = true\nT2 = 200\nupper = 90\n",
             R"(w.toml:3:6: found true for "T1", expected a number or a text in quotes)"},
        Case{"parameter_not_possible",
             "[[requirement]]\nmeasure = \"time between on rise\"\nT1 = -300\nT2 = 200\nupper = 90\n",
             R"(w.toml:3:6: T1: found -300, expected a temperature in °C)"},
        Case{"two_places", "[[requirement]]\nmeasure = \"temperature at\"\ntime = 1\nzone = 3\nlower = 1\nupper = 2\n",
             R"(w.toml:2:11: "temperature at" needs one of time, position_mm or zone)"},
        Case{"wave_in_reflow", "[[requirement]]\nmeasure = \"wave: step\"\nupper = 120\n",
             R"(w.toml:2:11: found "wave: step" in a window for reflow, expected process = "wave")"},
        Case{
            "board_measure_on_traces",
            "[[requirement]]\nmeasure = \"spread of peaks\"\nupper = 10\napplies_to = \"all\"\n",
            R"(w.toml:4:14: found "all" for "applies_to", expected "board": "spread of peaks" is measured on the board as a whole)"},
        Case{
            "trace_measure_on_board", PEAK "lower = 1\nupper = 10\napplies_to = \"board\"\n",
            R"(w.toml:6:14: found "board" for "applies_to", expected "all", "joint", "body" or a list of channels: "peak" is measured on each trace)"},
        Case{"applies_to", PEAK "lower = 1\nupper = 10\napplies_to = \"joints\"\n",
             R"(w.toml:6:14: found "joints" for "applies_to", did you mean "joint"?)"},
        Case{"no_channels", PEAK "lower = 1\nupper = 10\napplies_to = []\n",
             R"(w.toml:6:14: found no channel in "applies_to")"},
        Case{"side", PEAK "lower = 1\nupper = 10\nside = \"botom\"\n",
             R"(w.toml:6:8: found "botom" for "side", did you mean "bottom"?)"}),
    [](const auto& c) { return std::string{c.param.name}; });

TEST(WindowFile, AnUnknownThermocoupleIsRefusedAtItsPlace) {
  const auto window = parse("w.toml",
                            "[uncertainty]\nthermocouple = \"K class 9\"\n[[requirement]]\nmeasure = "
                            "\"peak\"\nlower = 1\nupper = 2\n");
  ASSERT_FALSE(window);
  EXPECT_EQ(window.error().where.line, 2);
  EXPECT_EQ(window.error().where.column, 16);
}

TEST(WindowFile, CountsMayHaveEqualLimitsAndNeedNoTarget) {
  for (const char* limits : {"upper = 1\n", "lower = 1\nupper = 1\n", "upper = 0\n"}) {
    const auto window =
        parse("w", std::string{"[[requirement]]\nmeasure = \"excursions above\"\nlevel = 217\n"} + limits);
    EXPECT_TRUE(window) << window.error().text();
  }
}

// Every file that is shipped names the source of every limit.
TEST(ShippedWindows, LoadAndNameTheirSources) {
  const auto all = files::list_profiles(files::Kind::kWindow);
  ASSERT_TRUE(all) << all.error().text();
  int shipped = 0;
  for (const auto& listed : *all) {
    if (listed.users) continue;
    ++shipped;
    const auto window = load(listed.file);
    ASSERT_TRUE(window) << window.error().text();
    EXPECT_TRUE(window->identity.revision.has_value()) << listed.file;
    EXPECT_TRUE(window->identity.source.has_value()) << listed.file;
    for (const auto& requirement : window->requirements) {
      EXPECT_TRUE(!requirement.lower || !(requirement.source + requirement.lower_source).empty()) << requirement.name;
      EXPECT_TRUE(!requirement.upper || !(requirement.source + requirement.upper_source).empty()) << requirement.name;
    }
  }
  EXPECT_GE(shipped, 11);
}

/// A requirement of a shipped window by its name; a requirement that is not there has no limits.
Requirement named(const ProcessWindow& window, const std::string& name) {
  for (const auto& requirement : window.requirements)
    if (requirement.name == name) return requirement;
  ADD_FAILURE() << window.identity.name << " has no " << name;
  return {};
}

/// "60 to 120", "to 3", "Tc-10": limits as a person writes them.
std::string limits_of(const Requirement& requirement) {
  const auto text = [](const std::optional<Limit>& limit) { return limit ? limit_text(*limit) : std::string{}; };
  return text(requirement.lower) + " to " + text(requirement.upper);
}

struct Shipped {
  const char* stem;
  double liquidus_C, solidus_C;
  const char *rise, *soak, *above, *peak, *fall, *to_peak;
  double soak_from_C, soak_to_C;
};
void PrintTo(const Shipped& c, std::ostream* os) { *os << c.stem; }
class ShippedWindow : public testing::TestWithParam<Shipped> {};

// Sources: melting points from published solder property tables (SAC305 by J-STD-020's TL); J-STD-020 (D.1, E), Table
// 5-2, for the ramp (3 °C/s), the soaks of SAC305, Sn63Pb37, Sn96.5Ag3.5 and Sn99.3Cu0.7 and the time from 25 °C (8 and
// 6 min); the published example profile for SAC305 for its peak from 235 °C and cooling to 4 °C/s; the published device
// profile for Sn63Pb37 from 45 s; all else common practice, no source.
TEST_P(ShippedWindow, HoldsTheNumbersOfItsSources) {
  const auto& want = GetParam();
  const auto window = find(want.stem);
  ASSERT_TRUE(window) << window.error().text();
  EXPECT_EQ(window->liquidus_C, want.liquidus_C);
  EXPECT_EQ(window->solidus_C, want.solidus_C);
  EXPECT_EQ(limits_of(named(*window, "steepest rise")), want.rise);
  EXPECT_EQ(named(*window, "steepest rise").measure.parameters.over, 5);
  const auto soak = named(*window, "soak time");
  EXPECT_EQ(limits_of(soak), want.soak);
  EXPECT_EQ(std::get<double>(*soak.measure.parameters.T1), want.soak_from_C);
  EXPECT_EQ(std::get<double>(*soak.measure.parameters.T2), want.soak_to_C);
  EXPECT_EQ(limits_of(named(*window, "time above liquidus")), want.above);
  EXPECT_EQ(limits_of(named(*window, "peak")), want.peak);
  EXPECT_EQ(limits_of(named(*window, "steepest fall")), want.fall);
  if (want.to_peak != nullptr) {
    EXPECT_EQ(limits_of(named(*window, "25 °C to peak")), want.to_peak);
  }
}

INSTANTIATE_TEST_SUITE_P(
    Alloys, ShippedWindow,
    testing::Values(
        Shipped{"sac305", 217, 217, " to 3", "60 to 120", "45 to 90", "235 to 250", " to 4", " to 480", 150, 200},
        Shipped{"sn63pb37", 183, 183, " to 3", "60 to 120", "45 to 90", "205 to 225", " to 4", " to 360", 100, 150},
        Shipped{"bi58sn42", 138, 138, " to 2", "60 to 120", "30 to 90", "160 to 185", " to 4", nullptr, 90, 120},
        Shipped{"bi57sn42ag1", 140, 139, " to 2", "60 to 120", "30 to 90", "160 to 185", " to 4", nullptr, 90, 120},
        Shipped{"sn96_5ag3_5", 221, 221, " to 3", "60 to 120", "45 to 90", "240 to 250", " to 4", nullptr, 150, 200},
        Shipped{"sn99_3cu0_7", 227, 227, " to 3", "60 to 120", "45 to 90", "245 to 255", " to 4", nullptr, 150, 200}),
    [](const auto& c) { return std::string{c.param.stem}; });

// Source: J-STD-020 (D.1, E), Table 5-2, as the limits of the user: 150 s above TL, 30 and 20 s above Tc - 5 °C, 3 and
// 6 °C/s end to end between TL and the peak, 8 and 6 min from 25 °C.
TEST(ShippedWindows, OfBodiesHoldTheTableOfTheStandard) {
  struct Body {
    const char* stem;
    double TL_C;
    const char *near_Tc, *to_peak;
  };
  for (const Body& want :
       {Body{"jstd020_body_pb_free", 217, " to 30", " to 480"}, Body{"jstd020_body_snpb", 183, " to 20", " to 360"}}) {
    const auto window = find(want.stem);
    ASSERT_TRUE(window) << window.error().text();
    EXPECT_EQ(window->liquidus_C, want.TL_C);
    for (const auto& requirement : window->requirements) EXPECT_EQ(requirement.applies_to.kind, AppliesTo::Kind::kBody);
    EXPECT_EQ(limits_of(named(*window, "body peak")), " to \"Tc\"");
    const auto near = named(*window, "body time near Tc");
    EXPECT_EQ(limits_of(near), want.near_Tc);
    EXPECT_EQ(near.measure.parameters.offset, 5);
    EXPECT_EQ(limits_of(named(*window, "body time above liquidus")), " to 150");
    const auto up = named(*window, "body ramp-up"), down = named(*window, "body ramp-down");
    EXPECT_EQ(limits_of(up), " to 3");
    EXPECT_EQ(std::get<double>(*up.measure.parameters.T1), want.TL_C);
    EXPECT_EQ(limits_of(down), " to 6");
    EXPECT_EQ(std::get<double>(*down.measure.parameters.T2), want.TL_C);
    EXPECT_EQ(limits_of(named(*window, "body 25 °C to peak")), want.to_peak);
  }
}

// Source: EN 61760-1:2006, the curve for wave soldering as component makers reproduce it: a step below 150 °C, 5 s in a
// wave, 10 s in both, solder to 260 °C; the solidus of what was soldered on the top side before.
TEST(ShippedWindows, OfWavesHoldTheCurveOfTheStandard) {
  struct Wave {
    const char* stem;
    double solidus_C;
    const char* solid;
  };
  for (const Wave& want : {Wave{"wave_sac305", 217, " to 217"}, Wave{"wave_sn63pb37", 183, " to 183"},
                           Wave{"wave_sn99_3cu0_7", 227, " to 217"}}) {
    const auto window = find(want.stem);
    ASSERT_TRUE(window) << window.error().text();
    EXPECT_EQ(window->solidus_C, want.solidus_C);
    EXPECT_EQ(window->process, Process::kWave);
    EXPECT_EQ(limits_of(named(*window, "preheat rise")), " to 3");
    EXPECT_EQ(limits_of(named(*window, "preheat temperature")), "90 to 150");
    EXPECT_EQ(limits_of(named(*window, "step into the wave")), " to 150");
    EXPECT_EQ(limits_of(named(*window, "contact time")), " to 10");
    EXPECT_EQ(limits_of(named(*window, "longest contact")), " to 5");
    EXPECT_EQ(limits_of(named(*window, "peak")), " to 260");
    EXPECT_EQ(limits_of(named(*window, "top side joints stay solid")), want.solid);
  }
}

}  // namespace
}  // namespace ovenwright::window
