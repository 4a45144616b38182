#pragma once
#include <functional>
#include <memory>
#include <optional>

#include "app/desktop/document/run_view.h"
#include "core/tune/learn.h"

namespace ovenwright::desktop {

/// A run to learn from.
struct TuneRun {
  std::shared_ptr<const RunView> view;  ///< with oven, recipe and entry
  std::string log;                      ///< names the run in messages
  std::optional<double> entry_s;        ///< given by the user; else the run's own is found again
};

/// The run that is shown, and others of its board in its oven.
struct TuneInput {
  TuneRun shown;
  std::vector<TuneRun> others;
};

/// How one board heats in one oven, learned from the run that is shown and others. Made off the GUI thread, never
/// changed.
class TuneModel {
 public:
  /// Errors: as tune::learn_from; kCancelled.
  static Result<std::shared_ptr<const TuneModel>> learn(const TuneInput& input,
                                                        const std::function<bool(double)>& progress);

  const RunView& measured() const { return *m_view; }
  std::shared_ptr<const RunView> measuredView() const { return m_view; }
  const tune::Learned& learned() const { return m_learned; }
  const heat::FitReport& fit() const { return m_learned.model.report; }
  const tune::Forecaster& forecaster() const { return *m_forecaster; }
  const oven::Oven& oven() const { return m_learned.model.problem.oven; }
  bool toldSidesApart() const;  ///< a run among those learned from had top and bottom apart
  const oven::Recipe& recipe() const { return m_learned.runs.back().source.recipe; }  ///< that was run

 private:
  TuneModel() = default;
  std::shared_ptr<const RunView> m_view;
  tune::Learned m_learned;
  std::optional<tune::Forecaster> m_forecaster;  // refers to m_learned
};

/// What a recipe is predicted to do, with what drawing it needs. Never changed once made.
struct Prediction {
  std::shared_ptr<const TuneModel> model;
  oven::Recipe recipe;
  check::CheckedRun checked;      ///< the predicted run, judged
  tune::Forecast forecast;        ///< all else: the band, half widths, chances
  std::unique_ptr<RunView> view;  ///< of `checked`

  const judge::Judgement& judgement() const { return checked.judgement; }
  bool hasBand() const { return !forecast.band_C.empty(); }
};

/// Thread-safe. Cost: that of tune::Forecaster::forecast().
std::shared_ptr<const Prediction> predict(const std::shared_ptr<const TuneModel>& model, const oven::Recipe& recipe,
                                          bool withBand);

}  // namespace ovenwright::desktop
