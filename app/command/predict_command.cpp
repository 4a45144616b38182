#include "app/command/commands.h"
#include "app/command/inputs.h"
#include "app/command/learn_inputs.h"
#include "app/command/output.h"
#include "core/files/text_file.h"
#include "core/oven/oven_file.h"
#include "core/report/tune_json.h"

namespace ovenwright::command {

ExitStatus run(const PredictOptions& options) {
  const auto fail = [&options](const Error& error) { return end_with(options.common, "ovenwright.predict/1", error); };
  auto list = read_runs(options.learn);
  if (!list) return fail(list.error());
  const auto recipe = oven::find_recipe(options.new_recipe);
  if (!recipe) return fail(recipe.error());
  if (const auto fits = oven::check_recipe(*recipe, list->oven); !fits) return fail(fits.error());
  auto inputs = input_files(*list);
  inputs.push_back(recipe->identity.file);
  for (const auto& name : {options.learn.runs, options.learn.layout})
    if (name) inputs.push_back(*name);
  std::vector<std::string> outputs;
  for (const auto& name : {options.common.output, options.traces})
    if (name) outputs.push_back(*name);
  if (output_is_an_input(outputs, inputs)) return ExitStatus::kUsage;
  const auto learned = tune::learn(list->oven, std::move(list->runs));
  if (!learned) return fail(learned.error());
  if (!learned->model.report.usable) {  // says why, and predicts nothing
    report_error({ErrorCode::kUndetermined, learned->model.report.message, {}, {}, {}});
    if (options.common.format == Format::kText) return ExitStatus::kUndetermined;
    return write_output(options.common, report::predict_json(*learned, {}, list->oven, *recipe, false),
                        ExitStatus::kUndetermined);
  }

  const tune::Forecaster forecaster(learned->model, learned->subject(learned->runs.back().board_index));
  const auto forecast = forecaster.forecast(*recipe, true);
  const bool judged = !forecaster.subject().windows.empty();
  const auto status = judged ? exit_status(forecast.judgement.verdict) : ExitStatus::kDone;
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
                      options.common.format == Format::kJson
                          ? report::predict_json(*learned, forecast, list->oven, *recipe, judged)
                          : report::predict_text(*learned, forecast, judged),
                      status);
}

}  // namespace ovenwright::command
