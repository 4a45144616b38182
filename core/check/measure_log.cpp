#include "core/check/measure_log.h"

#include "core/check/passes.h"
#include "core/judge/bind.h"
#include "core/measure/parameter.h"

namespace ovenwright::check {
namespace {

measure::Subject subject_of(const run::Channel& channel, const board::Board* board) {
  const auto seat = judge::seat_of(channel, board);
  measure::Subject subject;
  subject.channel = &channel;
  if (seat.placement != nullptr && seat.placement->thermocouple) {
    if (const auto tolerance = measure::tolerance_of(*seat.placement->thermocouple)) subject.tolerance = *tolerance;
  }
  subject.x_mm = seat.x_mm;
  subject.air = seat.kind == board::Kind::kAir;
  subject.bottom = seat.side == board::Side::kBottom;
  return subject;
}

}  // namespace

Result<MeasuredLog> measure_log(const std::string& path, const MeasureRequest& request) {
  auto reading = log::read(path, request.log);
  if (!reading) return reading.error();
  const Setting setting = setting_of(request);
  auto runs = passes(*reading, setting, request.run);
  if (!runs) return runs.error();
  MeasuredLog measured{*std::move(reading), std::move(runs->front()), {}, {}};
  const auto place = place_of(measured.run, setting);
  if (place) measured.entry = place->entry;

  std::vector<measure::Subject> subjects;
  for (const auto& channel : measured.run.channels) subjects.push_back(subject_of(channel, setting.board));
  std::vector<measure::Definition> each, board;
  for (const auto& definition : request.definitions) {
    (measure::describe(definition.measure).board ? board : each).push_back(definition);
  }
  std::vector<std::vector<measure::Value>> values;
  if (!each.empty()) {
    for (const auto& subject : subjects) values.push_back(measure::evaluate(subject, each, place));
  }
  auto board_values = board.empty() ? std::vector<measure::Value>{} : measure::evaluate_board(subjects, board, place);

  std::size_t next_each = 0, next_board = 0;
  for (const auto& definition : request.definitions) {
    if (measure::describe(definition.measure).board) {
      measured.results.push_back({definition, std::nullopt, std::move(board_values[next_board++])});
      continue;
    }
    for (std::size_t i = 0; i < values.size(); ++i) {
      measured.results.push_back({definition, i, std::move(values[i][next_each])});
    }
    ++next_each;
  }
  return measured;
}

std::vector<measure::Definition> usual_measures() {
  std::vector<measure::Definition> usual;
  for (const auto& description : measure::descriptions()) {
    const measure::Definition definition = measure::with_defaults({description.measure, {}}, std::nullopt);
    if (!description.wave && !measure::problem(definition)) usual.push_back(definition);
  }
  return usual;
}

}  // namespace ovenwright::check
