#include "app/command/commands.h"
#include "app/command/learn_inputs.h"
#include "app/command/output.h"
#include "core/files/text_file.h"
#include "core/oven/oven_file.h"
#include "core/report/tune_json.h"

namespace ovenwright::command {

ExitStatus run(const PredictOptions& options) {
  const auto fail = [](const Error& error) {
    report_error(error);
    return exit_status(error);
  };
  auto list = read_runs(options.learn);
  if (!list) return fail(list.error());
  const auto recipe = oven::find_recipe(options.new_recipe);
  if (!recipe) return fail(recipe.error());
  if (const auto fits = oven::check_recipe(*recipe, list->oven); !fits) return fail(fits.error());
  const auto learned = tune::learn(list->oven, std::move(list->runs));
  if (!learned) return fail(learned.error());

  const tune::Forecaster forecaster(learned->model, learned->subject(learned->runs.back().board_index));
  const auto forecast = forecaster.forecast(*recipe, true);
  const bool judged = !forecaster.subject().windows.empty();
  auto status = judged ? exit_status(forecast.judgement.verdict) : ExitStatus::kDone;
  if (!learned->model.report.usable) {
    report_error({ErrorCode::kUndetermined, learned->model.report.message, {}, {}, {}});
    status = ExitStatus::kUndetermined;
  }
  if (options.traces) {
    const auto written = files::write_file(*options.traces, report::traces_csv(forecast), files::Existing::kReplace);
    if (!written) {
      report_error(written.error());
      return ExitStatus::kUnwritable;
    }
  }
  if (options.common.quiet && options.common.format == Format::kText)
    return write_output(options.common, judged ? forecast.judgement.sentence.text + "\n" : std::string{}, status);
  return write_output(options.common,
                      options.common.format == Format::kJson ? report::predict_json(*learned, forecast, judged)
                                                             : report::predict_text(*learned, forecast, judged),
                      status);
}

}  // namespace ovenwright::command
