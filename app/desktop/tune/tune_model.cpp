#include "app/desktop/tune/tune_model.h"

#include <algorithm>

namespace ovenwright::desktop {

Result<std::shared_ptr<const TuneModel>> TuneModel::learn(const TuneInput& input,
                                                          const std::function<bool(double)>& progress) {
  const oven::Oven& oven = *input.shown.view->oven();
  std::vector<tune::MeasuredRun> runs;
  const auto add = [&](const TuneRun& one) -> std::optional<Error> {
    const RunView& view = *one.view;
    tune::RunSource source;
    source.log = one.log;
    source.recipe = *view.recipe();
    source.board = view.board();
    source.windows = view.judgement().windows;
    source.entry_s = one.entry_s;
    auto run = tune::measured_run(oven, std::move(source), view.run());
    if (!run) return run.error();
    run->reading.file = view.reading().file;
    runs.push_back(*std::move(run));
    return std::nullopt;
  };
  for (const auto& other : input.others)
    if (auto error = add(other)) return *error;
  if (auto error = add(input.shown)) return *error;  // the last one is what predictions start from
  auto learned = tune::learn_from(oven, std::move(runs), progress);
  if (!learned) return learned.error();
  std::shared_ptr<TuneModel> model(new TuneModel);
  model->m_view = input.shown.view;
  model->m_learned = *std::move(learned);
  model->m_forecaster.emplace(model->m_learned.model, model->m_learned.subject(0));
  return std::shared_ptr<const TuneModel>(std::move(model));
}

bool TuneModel::toldSidesApart() const {
  return std::ranges::any_of(m_learned.runs,
                             [](const tune::MeasuredRun& run) { return tune::sides_apart(run.source.recipe); });
}

std::shared_ptr<const Prediction> predict(const std::shared_ptr<const TuneModel>& model, const oven::Recipe& recipe,
                                          bool withBand) {
  auto prediction = std::make_shared<Prediction>();
  prediction->model = model;
  prediction->recipe = recipe;
  auto& forecast = prediction->forecast;
  forecast = model->forecaster().forecast(recipe, withBand);
  auto& checked = prediction->checked;
  checked.run = std::move(forecast.run);
  checked.judgement = std::move(forecast.judgement);
  checked.entry = model->measured().entry();
  check::Request setup;
  setup.oven = model->oven();
  setup.recipe = recipe;
  setup.board = model->measured().board();
  if (setup.board) setup.board->picture.reset();  // nothing draws it here, and it would be read from disk each time
  prediction->view = std::make_unique<RunView>(checked, model->measured().reading(), setup);
  return prediction;
}

}  // namespace ovenwright::desktop
