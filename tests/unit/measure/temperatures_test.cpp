#include "tests/unit/measure/subject.h"

namespace ovenwright::measure {
namespace {

/// Two zones of 300 mm behind a mouth of 100 mm, 60 mm after the first; 600 mm/min, entry at 5 s.
struct Line {
  oven::Oven oven;
  oven::Recipe recipe;
  Line() {
    oven.entrance_mm = 100;
    oven.exit_mm = 50;
    oven.zones = {{"1", oven::ZoneKind::kHeat, 300, 60}, {"2", oven::ZoneKind::kHeat, 300, 0}};
    recipe.speed_mm_per_min = 600;
  }
  Place place() const {
    Place place{&oven, &recipe, {}, true};
    place.entry.at_s = 5;
    return place;
  }
};

Sampled ramp() { return {{0, 50, 100, 150}, {20, 70, 120, 60}}; }

TEST(TemperatureAt, IsInterpolatedAndNeverExtrapolated) {
  EXPECT_NEAR(*ramp().measure("temperature at, time=25").value, 45, 1e-12);
  EXPECT_NEAR(*ramp().measure("temperature at, time=150").value, 60, 1e-12);
  EXPECT_EQ(ramp().measure("temperature at, time=150.1").no_value, NoValue::kUndetermined);
  EXPECT_EQ(ramp().measure("temperature at, time=-0.1").no_value, NoValue::kUndetermined);
}

// Source: kinematics, position = 10 mm/s · (t − 5 s) − x: zone 1 ends at 400 mm, zone 2 at 760 mm.
TEST(TemperatureAt, FindsThePlacementInTheOven) {
  const Line line;
  auto trace = ramp();
  EXPECT_NEAR(*trace.measure("temperature at, position_mm=150", line.place()).value, 40, 1e-12);
  EXPECT_NEAR(*trace.measure("temperature at, zone=1", line.place()).value, 65, 1e-12);
  trace.subject().x_mm = 100;  // passes 10 s later
  EXPECT_NEAR(*trace.measure("temperature at, zone=1", line.place()).value, 75, 1e-12);
  EXPECT_EQ(trace.measure("temperature at, zone=7", line.place()).no_value, NoValue::kUndetermined);
  EXPECT_EQ(trace.measure("temperature at, zone=1").no_value, NoValue::kUndetermined);
}

TEST(ExitTemperature, IsThatOfTheLastZonesEndOrOfTheLastSample) {
  const Line line;
  EXPECT_NEAR(*ramp().measure("exit temperature", line.place()).value, 101, 1e-12);  // 76 s + 5 s
  EXPECT_NEAR(*ramp().measure("exit temperature").value, 60, 1e-12);
  auto unknown = line.place();
  unknown.entry_known = false;
  EXPECT_EQ(ramp().measure("exit temperature", unknown).no_value, NoValue::kUndetermined);
  auto late = line.place();
  late.entry.at_s = 100;
  EXPECT_EQ(ramp().measure("exit temperature", late).no_value, NoValue::kUndetermined);
}

TEST(Evaluate, ATraceThatIsAFaultHasNoValuesAndSaysWhy) {
  run::Channel open;
  open.faults.push_back({run::FaultKind::kOpen, 0, 100, run::FaultAction::kRemoved, "", {}});
  Subject subject;
  subject.channel = &open;
  for (const char* text : {"peak", "excursions above, level=217", "wave: step"}) {
    const auto definition = parse_definition(text);
    ASSERT_TRUE(definition);
    const auto value = evaluate(subject, {&*definition, 1}, std::nullopt).front();
    EXPECT_EQ(value.no_value, NoValue::kUndetermined);
    EXPECT_EQ(value.reason, "fewer than 3 good samples: open");
    EXPECT_EQ(value.unit, describe(definition->measure).unit);
  }
}

TEST(Evaluate, ADefinitionThatIsNotSoundIsUndeterminedAndSaysWhy) {
  const auto trace = ramp();
  const Definition without_level{Measure::kTimeAbove, {}};
  const auto value = evaluate(trace.subject(), {&without_level, 1}, std::nullopt).front();
  EXPECT_EQ(value.no_value, NoValue::kUndetermined);
  EXPECT_EQ(value.reason, "\"time above\" needs level");
}

}  // namespace
}  // namespace ovenwright::measure
