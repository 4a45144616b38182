#include "core/judge/risk.h"

namespace ovenwright::judge {
namespace {

constexpr const char* kCommon = "common practice, no source";
constexpr const char* kClassification =
    "IPC/JEDEC J-STD-020E, Tables 4-1, 4-2 and 5-2: parts are classified up to these values and no further";

struct Row {
  measure::Measure measure;
  Risk low, high;
};

using measure::Measure;

// One row for each measure; a direction that no window would limit still says the plain consequence.
constexpr Row kRows[] = {
    {Measure::kPeak,
     {"The solder may melt only in part: balls and paste that do not run together, poor wetting, a joint that looks "
      "dull or grainy and breaks early.",
      kCommon},
     {"Laminate, connectors and parts see more heat than they are made for: warping, discolouring, delamination, and a "
      "thicker brittle layer in the joint.",
      kCommon}},
    {Measure::kPeakTime,
     {"The board heats faster than its heavy parts can follow: large differences over the board at the peak.", kCommon},
     {"Flux is spent and surfaces oxidise before the solder melts, and parts stay hot longer than they were "
      "classified for.",
      "IPC/JEDEC J-STD-020E, Table 5-2: 25 °C to the peak in at most 6 or 8 min; for flux common practice, no source"}},
    {Measure::kTimeAbove,
     {"Too little time for the solder to wet and to run together: weak or open joints, mostly under heavy parts; "
      "wetting "
      "and voids change with this time.",
      "Metals 12(1) (2022) 121, for 42Sn58Bi and 42Sn57Bi1Ag; for other alloys common practice, no source"},
     {"The intermetallic layer grows fast while the solder is liquid, and a thick one is brittle; parts and laminate "
      "are stressed by heat.",
      "Tu et al., J. Appl. Phys. 89 (2001) 4843-4849, for eutectic SnPb on copper: growth in the liquid some 10^4 "
      "times "
      "that in the solid; the rest common practice, no source"}},
    {Measure::kExcursionsAbove,
     {"The solder does not melt as often as the process means it to.", kCommon},
     {"The solder melts, freezes and melts again in one pass: disturbed joints, and parts that move.", kCommon}},
    {Measure::kAreaAbove,
     {"Too little heat above the liquidus: incomplete wetting and early failure under vibration.",
      "Tao, Yin, Ding and Wu, Soldering & Surface Mount Technology (2009), doi 10.1108/09540910910989420: joint life "
      "falls "
      "on both sides of a best value; the rest common practice, no source"},
     {"Too much heat above the liquidus: a thick intermetallic layer and early failure under vibration.",
      "Tao, Yin, Ding and Wu, Soldering & Surface Mount Technology (2009), doi 10.1108/09540910910989420: joint life "
      "falls "
      "on both sides of a best value; the rest common practice, no source"}},
    {Measure::kTimeBetweenOnRise,
     {"Solvent is still in the paste when it melts and heavy parts lag behind: spatter, voids, large differences over "
      "the board.",
      kCommon},
     {"Flux is spent and powder and pads oxidise before the solder melts: poor wetting, balls that do not run "
      "together.",
      kCommon}},
    {Measure::kTimeNearPeak,
     {"The coldest joints have little time at full temperature: incomplete wetting.", kCommon},
     {"Parts stay near their highest temperature longer than they were classified for.", kClassification}},
    {Measure::kSteepestRise,
     {"The board heats slowly: the time is lacking later, or the belt must be slower.", kCommon},
     {"Paste slumps and spatters, solder balls form, and ceramic parts can crack; parts are classified up to 3 °C/s.",
      "J-STD-020E, Table 5-2, for the ramp-up of parts; for paste and ceramics common practice, no source"}},
    {Measure::kMeanRise,
     {"Slow heating: below the melting point flux is spent and surfaces oxidise, above it the solder stays liquid "
      "longer.",
      kCommon},
     {"Parts follow unevenly and are bent or cracked by heat; parts are classified up to 3 °C/s.",
      "J-STD-020E, Table 5-2, for the ramp-up of parts from the liquidus to the peak; the rest common practice, no "
      "source"}},
    {Measure::kSteepestFall,
     {"The solder freezes slowly: coarse grain, a thicker intermetallic layer, parts that can still move.", kCommon},
     {"Thermal shock: cracks in ceramic parts and joints, warped boards; parts are classified up to 6 °C/s.",
      "J-STD-020E, Table 5-2, for the ramp-down of parts; for joints common practice, no source"}},
    {Measure::kMeanFall,
     {"The solder freezes slowly: coarse grain, a thicker intermetallic layer, parts that can still move.", kCommon},
     {"Thermal shock: cracks in ceramic parts and joints, warped boards; parts are classified up to 6 °C/s.",
      "J-STD-020E, Table 5-2, for the ramp-down of parts; for joints common practice, no source"}},
    {Measure::kTemperatureAt,
     {"The board is colder here than the process means it to be; what follows starts late.", kCommon},
     {"The board is hotter here than the process means it to be; what follows starts early.", kCommon}},
    {Measure::kExitTemperature,
     {"The board cools further inside the oven than it needs to.", kCommon},
     {"The board leaves hot: solder can still be soft when it is handled, and people can be burnt.", kCommon}},
    {Measure::kSpreadOfPeaks,
     {"The peaks lie closer together than the process means them to.", kCommon},
     {"One recipe can hardly serve both ends: the coldest joint is too cold or the hottest part too hot. 10 °C is a "
      "usual "
      "target.",
      "Lau, Abdullah and Che Ani, Soldering & Surface Mount Technology 24(3) (2012) 167-182"}},
    {Measure::kSpreadWhenHottestReaches,
     {"The board is more even here than the process means it to be.", kCommon},
     {"The solder melts at one end of a part or board while the other is still solid: chip parts stand up, large parts "
      "tilt.",
      kCommon}},
    {Measure::kLargestSpread,
     {"The board is more even than the process means it to be.", kCommon},
     {"Uneven heat bends the board and leaves heavy parts behind at the peak.", kCommon}},
    {Measure::kLag,
     {"The traces melt closer together than the process means them to.", kCommon},
     {"The last joints melt long after the first: the first are too long liquid when the last have had enough.",
      kCommon}},
    {Measure::kWavePreheatTemperature,
     {"Flux is not active and the step into the solder is large: poor hole fill, bridges, cracked ceramics.", kCommon},
     {"Flux is spent before the wave, and joints on the top side come near their melting point.", kCommon}},
    {Measure::kWaveStep,
     {"The step into the solder is smaller than the process means it to be: flux may be spent by a hot preheat.",
      kCommon},
     {"Thermal shock: ceramic capacitors crack when they enter the solder too cold.",
      "EN 61760-1:2006, wave curve: step below 150 °C"}},
    {Measure::kWaveContactTime,
     {"Too little contact: holes are not filled, pads not wetted.", kCommon},
     {"Too much contact: copper and pads dissolve, solder bridges, parts take damage.",
      "EN 61760-1:2006, wave curve: 10 s for both waves together"}},
    {Measure::kWaveLongestContact,
     {"Too little contact: holes are not filled, pads not wetted.", kCommon},
     {"Too much contact in one wave: copper and pads dissolve, parts take damage.",
      "EN 61760-1:2006, wave curve: 5 s in one wave"}},
};

}  // namespace

Risk risk_of(Measure measure, Direction direction, const RiskSetting& setting) {
  const bool high = direction == Direction::kHigh;
  if (setting.against_tc && measure == Measure::kPeak && high)
    return {"The package is hotter than it was classified for: moisture inside can lift its layers apart or crack it.",
            kClassification};
  if (setting.stays_solid && measure == Measure::kPeak && high)
    return {"Joints that were made before melt again: parts shift or drop off, and the joints are disturbed.", kCommon};
  if (setting.wave && measure == Measure::kPeak && !high)
    return {"The joint took up too little heat: solder does not wet it or does not rise in the hole.", kCommon};
  if (setting.wave && measure == Measure::kSteepestRise && high)
    return {
        "Ceramic parts can crack, the board bends, and the solvent of the flux boils and spatters.",
        "notes of makers on the soldering of ceramic capacitors: at most 3 °C/s; the rest common practice, no source"};
  for (const auto& row : kRows)
    if (row.measure == measure) return direction == Direction::kLow ? row.low : row.high;
  return {"", ""};
}

Risk risk_of_not_reaching(bool melts) {
  return risk_of(melts ? Measure::kPeak : Measure::kTemperatureAt, Direction::kLow, {});
}

}  // namespace ovenwright::judge
