#include "core/measure/measure.h"

#include <algorithm>
#include <memory>

#include "core/measure/bridge.h"
#include "core/measure/parameter.h"
#include "core/measure/uncertainty.h"
#include "core/run/noise.h"
#include "core/units/parallel.h"

namespace ovenwright::measure {
namespace {

constexpr double kSameValue = 1e-9;

Value to_value(Figure figure, Unit unit) {
  Value value;
  value.value = figure.value;
  value.unit = unit;
  value.at_least = figure.at_least;
  value.no_value = figure.no_value;
  value.reason = std::move(figure.reason);
  value.note = std::move(figure.note);
  value.from_s = figure.from_s;
  value.to_s = figure.to_s;
  return value;
}

Value without(std::string reason, Unit unit) {
  auto value = to_value(undetermined(Phrase::kNotShown), unit);
  value.reason = std::move(reason);
  return value;
}

/// The highest and the lowest course of a trace with bridged gaps, ready to be measured.
struct Courses {
  explicit Courses(std::array<run::Trace, 2> courses)
      : traces(std::move(courses)), blocks{Blocks(traces[0].temperature_C()), Blocks(traces[1].temperature_C())} {}
  std::array<run::Trace, 2> traces;
  std::array<Blocks, 2> blocks;
  Curve curve(std::size_t k) const { return Curve(traces[k], blocks[k]); }
};

/// What every measure of a trace shares, found when first needed.
class Prepared {
 public:
  explicit Prepared(const Subject& subject) : subject_(&subject), blocks_(subject.channel->trace->temperature_C()) {
    if (auto courses = extreme_courses(*subject.channel)) courses_ = std::make_unique<Courses>(*std::move(courses));
  }
  Curve curve() const { return Curve(*subject_->channel->trace, blocks_); }
  const TraceErrors& errors() {
    if (!errors_) {
      const auto& trace = *subject_->channel->trace;
      errors_ = trace_errors(*subject_, run::noise_C(trace.time_s(), trace.temperature_C()));
    }
    return *errors_;
  }
  const Courses* courses() const { return courses_.get(); }

 private:
  const Subject* subject_;
  Blocks blocks_;
  std::optional<TraceErrors> errors_;
  std::unique_ptr<Courses> courses_;
};

/// Holds a value against what it would be on other courses through bridged gaps: where those differ by more than U,
/// the log does not show it.
void hold_against(Value& value, std::span<const Figure> others) {
  if (others.empty()) return;
  const auto hide = [&] {
    value.value.reset();
    value.no_value = NoValue::kUndetermined;
    value.at_least = false;
    value.expanded_uncertainty.reset();
    value.terms = {};
    value.reason = say(Phrase::kGapHidesIt);
  };
  if (!value.value) {
    if (std::ranges::any_of(others, [&](const Figure& other) { return other.no_value != value.no_value; })) hide();
    return;
  }
  double lowest = *value.value, highest = lowest;
  for (const auto& other : others) {
    if (!other.value) return hide();
    lowest = std::min(lowest, *other.value);
    highest = std::max(highest, *other.value);
  }
  value.range = {lowest, highest};
  if (highest - lowest > value.expanded_uncertainty.value_or(0) + kSameValue) hide();
}

Value evaluated(Prepared& prepared, const Definition& definition, const Setting& setting, const Effort& effort) {
  const Unit unit = describe(definition.measure).unit;
  const auto curve = prepared.curve();
  auto figure = measured(curve, definition, setting);
  const bool uncertain = figure.value && unit != Unit::kCount && (effort.uncertainty || prepared.courses());
  Terms terms;
  if (uncertain) terms = trace_terms(curve, definition, setting, figure, prepared.errors());
  Value value = to_value(std::move(figure), unit);
  if (uncertain) {
    value.terms = terms;
    value.expanded_uncertainty = expanded(terms);
  }
  if (const auto* courses = prepared.courses()) {
    const Figure others[] = {measured(courses->curve(0), definition, setting),
                             measured(courses->curve(1), definition, setting)};
    hold_against(value, others);
  }
  return value;
}

std::string fault_of(const run::Channel& channel) {
  std::string found;
  for (const auto& fault : channel.faults)
    if (fault.action == run::FaultAction::kRemoved) found = run::fault_name(fault.kind);
  return found.empty() ? say(Phrase::kFewSamples) : say(Phrase::kFewGoodSamples, {found});
}

std::vector<Value> all_of(Prepared* prepared, const Subject& subject, std::span<const Definition> definitions,
                          const std::optional<Place>& place, const Effort& effort) {
  std::vector<Value> values;
  values.reserve(definitions.size());
  Setting setting;
  setting.place = place ? &*place : nullptr;
  setting.x_mm = subject.x_mm;
  for (const auto& definition : definitions) {
    const Unit unit = describe(definition.measure).unit;
    const auto* reference = definition.parameters.reference ? &*definition.parameters.reference : nullptr;
    if (!prepared) {
      values.push_back(without(fault_of(*subject.channel), unit));
    } else if (const auto error = problem(definition)) {
      values.push_back(without(error->message, unit));
    } else if (reference && std::holds_alternative<TcReference>(*reference)) {
      values.push_back(without(say(Phrase::kTcNotKnown), unit));
    } else {
      values.push_back(evaluated(*prepared, definition, setting, effort));
    }
  }
  return values;
}

std::vector<Value> board_of(std::span<Prepared* const> prepared, std::span<const Definition> definitions,
                            const Effort& effort) {
  std::vector<Curve> curves;
  std::vector<TraceErrors> errors;
  bool gaps = false;
  for (auto* each : prepared) {
    curves.push_back(each->curve());
    gaps = gaps || each->courses();
  }
  const bool uncertain = effort.uncertainty || gaps;
  if (uncertain && !definitions.empty())
    for (auto* each : prepared) errors.push_back(each->errors());
  std::vector<Value> values;
  for (const auto& definition : definitions) {
    const Unit unit = describe(definition.measure).unit;
    if (const auto error = problem(definition)) {
      values.push_back(without(error->message, unit));
      continue;
    }
    const auto figure = measured_on_board(curves, definition);
    Value value = to_value(figure, unit);
    if (uncertain && figure.value) {
      value.terms = board_terms(curves, errors, definition, figure);
      value.expanded_uncertainty = expanded(value.terms);
    }
    std::vector<Figure> others;
    for (std::size_t k = 0; k < prepared.size(); ++k) {
      const auto* courses = prepared[k]->courses();
      if (!courses) continue;
      auto moved = curves;
      for (const std::size_t side : {0, 1}) {
        moved[k] = courses->curve(side);
        others.push_back(measured_on_board(moved, definition));
      }
    }
    hold_against(value, others);
    values.push_back(std::move(value));
  }
  return values;
}

bool on_the_board(const Subject& subject) { return subject.channel->trace && !subject.air; }

}  // namespace

std::vector<Value> evaluate(const Subject& subject, std::span<const Definition> definitions,
                            const std::optional<Place>& place, const Effort& effort) {
  std::optional<Prepared> prepared;
  if (subject.channel->trace) prepared.emplace(subject);
  return all_of(prepared ? &*prepared : nullptr, subject, definitions, place, effort);
}

std::vector<Value> evaluate_board(std::span<const Subject> subjects, std::span<const Definition> definitions,
                                  const std::optional<Place>&, const Effort& effort) {
  std::vector<std::unique_ptr<Prepared>> owned;
  std::vector<Prepared*> prepared;
  for (const auto& subject : subjects) {
    if (!on_the_board(subject)) continue;
    owned.push_back(std::make_unique<Prepared>(subject));
    prepared.push_back(owned.back().get());
  }
  return board_of(prepared, definitions, effort);
}

AllValues evaluate_all(std::span<const Request> requests, std::span<const Definition> board_definitions,
                       const std::optional<Place>& place, const Effort& effort) {
  AllValues all;
  all.by_request.resize(requests.size());
  std::vector<std::unique_ptr<Prepared>> prepared(requests.size());
  const auto one = [&](std::size_t k) {
    const auto& [subject, definitions] = requests[k];
    if (subject.channel->trace) prepared[k] = std::make_unique<Prepared>(subject);
    all.by_request[k] = all_of(prepared[k].get(), subject, definitions, place, effort);
    if (prepared[k] && effort.uncertainty && !board_definitions.empty()) prepared[k]->errors();
  };
  for_each_index(requests.size(), effort.threads, one);
  std::vector<Prepared*> board;
  for (std::size_t k = 0; k < requests.size(); ++k)
    if (prepared[k] && on_the_board(requests[k].subject)) board.push_back(prepared[k].get());
  all.board = board_of(board, board_definitions, effort);
  return all;
}

}  // namespace ovenwright::measure
