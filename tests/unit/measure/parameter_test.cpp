#include "core/measure/parameter.h"

#include <gtest/gtest.h>

#include <limits>
#include <string>

namespace ovenwright::measure {
namespace {

// The table of measures fixes names, parameters and defaults; these cases are its rows written as the command takes
// them.
struct Case {
  const char* name;
  const char* text;
  const char* people;
};
void PrintTo(const Case& c, std::ostream* os) { *os << c.name; }
class ParseDefinition : public testing::TestWithParam<Case> {};

TEST_P(ParseDefinition, ReadsAndWordsItsParameters) {
  const auto definition = parse_definition(GetParam().text);
  ASSERT_TRUE(definition) << definition.error().message;
  EXPECT_EQ(parameters_text(*definition), GetParam().people);
  EXPECT_FALSE(problem(*definition));
}

INSTANTIATE_TEST_SUITE_P(
    Table, ParseDefinition,
    testing::Values(Case{"peak", "peak", ""}, Case{"peak_time", "peak time", "from 25 °C"},
                    Case{"time_above", "time above, level=217", "217 °C"},
                    Case{"below_zero", " time above ,level = -10.5 ", "−10.5 °C"},
                    Case{"excursions", "excursions above, level=217", "217 °C"},
                    Case{"area", "area above, level=217", "217 °C"},
                    Case{"soak", "time between on rise, T1=150, T2=200", "150 to 200 °C"},
                    Case{"near_peak", "time near peak", "within 5 °C"},
                    Case{"near_temperature", "time near peak, offset=3, reference=260", "within 3 °C of 260 °C"},
                    Case{"near_Tc", "time near peak, reference=Tc-5", "within 5 °C of Tc − 5 °C"},
                    Case{"steepest_rise", "steepest rise", "over 5 s"},
                    Case{"steepest_rise_range", "steepest rise, over=2, from=100, to=150", "over 2 s, 100 to 150 °C"},
                    Case{"steepest_fall_from", "steepest fall, from=217", "over 5 s, from 217 °C"},
                    Case{"mean_rise", "mean rise, T1=217, T2=peak", "217 °C to the peak"},
                    Case{"mean_fall", "mean fall, T1=peak, T2=217", "the peak to 217 °C"},
                    Case{"mean_fall_levels", "mean fall, T1=217, T2=150", "217 to 150 °C"},
                    Case{"at_time", "temperature at, time=120", "120 s"},
                    Case{"at_position", "temperature at, position_mm=1200", "1200 mm"},
                    Case{"at_zone", "temperature at, zone=8", "the end of zone 8"},
                    Case{"exit", "exit temperature", ""}, Case{"spread_of_peaks", "spread of peaks", ""},
                    Case{"spread_at", "spread when hottest reaches, level=150", "150 °C"},
                    Case{"largest_spread", "largest spread, to=217", "up to 217 °C"},
                    Case{"lag", "lag, level=217", "217 °C"}, Case{"wave_preheat", "wave: preheat temperature", ""},
                    Case{"wave_step", "wave: step", ""},
                    Case{"wave_contact", "wave: contact time, level=217", "217 °C"},
                    Case{"wave_longest", "wave: longest contact, level=217", "217 °C"}),
    [](const auto& each) { return std::string(each.param.name); });

struct BadCase {
  const char* name;
  const char* text;
  const char* message;
};
void PrintTo(const BadCase& c, std::ostream* os) { *os << c.name; }
class RefuseDefinition : public testing::TestWithParam<BadCase> {};

TEST_P(RefuseDefinition, SaysWhy) {
  const auto definition = parse_definition(GetParam().text);
  ASSERT_FALSE(definition);
  EXPECT_EQ(definition.error().code, ErrorCode::kBadArgument);
  EXPECT_EQ(definition.error().message, GetParam().message);
}

INSTANTIATE_TEST_SUITE_P(
    Command, RefuseDefinition,
    testing::Values(
        BadCase{"no_such_measure", "peek", "there is no measure \"peek\""},
        BadCase{"empty", "", "there is no measure \"\""},
        BadCase{"level_left_out", "time above", "\"time above\" needs level"},
        BadCase{"T2_left_out", "mean rise, T1=217", "\"mean rise\" needs T2"},
        BadCase{"unknown_key", "time above, levl=217", "\"time above\" has no parameter \"levl\""},
        BadCase{"key_of_another_measure", "peak, level=217", "\"peak\" has no parameter \"level\""},
        BadCase{"not_a_number", "time above, level=hot", "level: found \"hot\", expected a temperature in °C"},
        BadCase{"not_finite", "time above, level=inf", "level: found \"inf\", expected a temperature in °C"},
        BadCase{"peak_where_it_cannot_be", "time between on rise, T1=150, T2=peak",
                "T2: found \"peak\", expected a temperature in °C"},
        BadCase{"no_equals_sign", "time above, 217", "expected key=value, found \"217\""},
        BadCase{"twice", "time above, level=217, level=220", "level is given twice"},
        BadCase{"T1_above_T2", "time between on rise, T1=200, T2=150", "T1 must be below T2"},
        BadCase{"fall_upside_down", "mean fall, T1=150, T2=217", "T1 must be above T2"},
        BadCase{"no_window", "steepest rise, over=0", "over must be more than 0 s"},
        BadCase{"nowhere", "temperature at", "\"temperature at\" needs one of time, position_mm or zone"},
        BadCase{"two_places", "temperature at, time=1, zone=2",
                "\"temperature at\" needs one of time, position_mm or zone"}),
    [](const auto& each) { return std::string(each.param.name); });

TEST(Descriptions, StandInTheOrderOfTheEnumeration) {
  for (const auto& each : descriptions()) {
    EXPECT_EQ(&describe(each.measure), &each);
    EXPECT_EQ(find(each.name), &each);
  }
  EXPECT_EQ(descriptions().back().measure, Measure::kWaveLongestContact);
  EXPECT_EQ(find("tal"), nullptr);
}

TEST(WithDefaults, TakesTheLiquidusOnlyForTheMeasuresThatCountFromIt) {
  EXPECT_EQ(with_defaults({Measure::kTimeAbove, {}}, 217.0).parameters.level, 217.0);
  EXPECT_EQ(with_defaults({Measure::kWaveContactTime, {}}, 217.0).parameters.level, 217.0);
  EXPECT_EQ(with_defaults({Measure::kPeakTime, {}}, 217.0).parameters.level, 25.0);
  EXPECT_EQ(with_defaults({Measure::kLag, {}}, 217.0).parameters.level, std::nullopt);
  Parameters given;
  given.level = 183;
  EXPECT_EQ(with_defaults({Measure::kTimeAbove, given}, 217.0).parameters.level, 183.0);
}

TEST(Parameters, AreWrittenAsTheyAreRead) {
  Definition definition{Measure::kTimeNearPeak, {}};
  ASSERT_FALSE(set_parameter(definition, "reference", std::string("Tc-5")));
  ASSERT_FALSE(set_parameter(definition, "offset", 4.0));
  const auto set = parameters_of(definition);
  ASSERT_EQ(set.size(), 2u);
  EXPECT_EQ(set[0].name, "offset");
  EXPECT_EQ(std::get<double>(set[0].value), 4.0);
  EXPECT_EQ(std::get<std::string>(set[1].value), "Tc-5");
}

TEST(Problem, FindsAParameterThatTheMeasureDoesNotKnow) {
  Definition definition{Measure::kPeak, {}};
  definition.parameters.over = 5;
  EXPECT_TRUE(problem(definition));
  definition.parameters.over.reset();
  EXPECT_FALSE(problem(definition));
}

TEST(Problem, FindsANumberThatIsNotFinite) {
  Definition definition{Measure::kTimeAbove, {}};
  definition.parameters.level = std::numeric_limits<double>::quiet_NaN();
  EXPECT_TRUE(problem(definition));
}

}  // namespace
}  // namespace ovenwright::measure
