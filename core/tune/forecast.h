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
  judge::Judgement judgement;               ///< by the very code that judges measured runs
  std::vector<double> half_width;           ///< by outcome (judgement.all), 95 %, of the prediction; with the band only
  std::optional<double> margin_uncertainty;  ///< half width, 95 %
  std::optional<double> pass_probability;
};

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
  judge::Judgement judged(const run::Run& run, const oven::Recipe& recipe, bool values_only) const;
  const heat::HeatModel& model_;
  Subject subject_;
  heat::Predictor predictor_;
  std::vector<double> noise_;  ///< by outcome: what the measured run's noise, carried along, does to it; 95 %
};

}  // namespace ovenwright::tune
