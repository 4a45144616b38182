#pragma once
#include <memory>
#include <optional>
#include <vector>

#include "core/heat/predict.h"
#include "core/judge/judgement.h"
#include "core/oven/oven.h"
#include "core/run/run.h"
#include "core/window/window.h"

namespace ovenwright::tune {

/// One board to be held in its windows: its measured run and what it is judged by.
struct Subject {
  const run::Run* run = nullptr;        ///< as measured
  const board::Board* board = nullptr;  ///< may be null
  std::vector<window::ProcessWindow> windows;
  std::size_t model_run = 0;              ///< which run of the model's problem it is
  std::vector<const run::Trace*> traces;  ///< by placement of the problem
};

/// What a recipe is predicted to do to one board.
struct Forecast {
  run::Run run;                             ///< predicted traces in the measured run's channels
  std::vector<std::vector<double>> band_C;  ///< by channel, half width 95 %; empty where not asked for
  /// By the very code that judges measured runs; the sentence tells of a prediction, and with the band the chances of
  /// conforming have its error in them.
  judge::Judgement judgement;
  std::vector<double> half_width;  ///< by outcome (judgement.all), 95 %, of the prediction; with the band only
  std::optional<double> margin_uncertainty;  ///< half width, 95 %
  /// That it passes by the rule of each window, guard bands included. Absent where the log does not show a required
  /// result to its end, unless what is seen rules a pass out, and where it contradicts the belt or the entry that it is
  /// said to have.
  std::optional<double> pass_probability;
  /// Under a guarded rule: that nothing is out, so that it passes or passes on condition.
  std::optional<double> inside_probability;
  bool fall_unseen = false;  ///< a required result hangs on a fall that the log, which ends hot, does not show
};

/// A predicted judgement whose uncertainties, and chances of conforming, have the prediction's error in them as well as
/// the measurement's (root sum of squares); verdicts stay as a measured run of these values would get them.
/// @param half_width  by outcome, 95 %; those that are missing count as 0
judge::Judgement with_prediction_error(judge::Judgement judgement, const std::vector<double>& half_width);

inline constexpr double kCoverage = 1.96;  ///< standard deviations in a half width
double normal_probability(double z);       ///< Φ(z)
bool is_fall(const judge::Outcome& outcome);

/// What a forecast works out.
enum class Detail {
  kValues,         ///< values and margins by the measures: no uncertainties, zones, sentence or band; verdicts are open
  kValuesAndBand,  ///< with the half widths that the band gives them
  kJudged,         ///< judged as a measured run is
  kJudgedAndBand   ///< with everything in Forecast
};

/// Predicts and judges recipes for one board. Thread-safe once made.
class Forecaster {
 public:
  Forecaster(const heat::HeatModel& model, Subject subject);
  Forecast forecast(const oven::Recipe& recipe, Detail detail) const;
  /// kJudged, or kJudgedAndBand.
  Forecast forecast(const oven::Recipe& recipe, bool with_band) const {
    return forecast(recipe, with_band ? Detail::kJudgedAndBand : Detail::kJudged);
  }
  const Subject& subject() const { return subject_; }

 private:
  /// The predicted traces, moved by `shift` of the band: a share of it by temperature.
  template <class Shift>
  run::Run predicted_run(const std::vector<heat::PredictedTrace>& traces, Shift shift) const;
  std::vector<double> half_widths(const std::vector<heat::PredictedTrace>& traces, const oven::Recipe& recipe,
                                  const judge::Judgement& judgement) const;
  /// What a slope is off by, beyond what a shifted curve and noise do to it; 95 %.
  double slope_half_width(const judge::Outcome& outcome, std::size_t index, const oven::Recipe& recipe) const;
  judge::Judgement judged(const run::Run& run, const oven::Recipe& recipe, bool values_only) const;
  const heat::HeatModel& model_;
  Subject subject_;
  heat::Predictor predictor_;
  std::vector<double> noise_;  ///< by outcome: what the measured run's noise, carried along, does to it; 95 %
  std::vector<std::optional<double>> measured_;  ///< by outcome: its measured value
};

}  // namespace ovenwright::tune
