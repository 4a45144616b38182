#include <fmt/format.h>

#include <vector>

#include "app/command/archive_open.h"
#include "app/command/commands.h"
#include "app/command/inputs.h"
#include "app/command/kept_runs.h"
#include "app/command/output.h"
#include "core/check/check.h"
#include "core/compare/compare.h"
#include "core/report/compare_report.h"

namespace ovenwright::command {
namespace {

/// One of the two logs, judged.
struct Judged {
  check::Request request;
  check::CheckedLog log;
};

/// The value for A (0) or B (1): the one given for both, or each its own.
template <class Value>
std::optional<Value> own_of(const std::vector<Value>& values, std::size_t side) {
  if (values.empty()) return std::nullopt;
  return values.size() == 1 ? values.front() : values[side];
}

Result<Judged> judged(const CompareOptions& options, std::size_t side) {
  Judged judged;
  if (auto error = read_windows(options.windows, judged.request)) return *error;
  LogOptions log{options.board,
                 options.oven,
                 own_of(options.recipes, side),
                 options.layout,
                 own_of(options.tables, side),
                 own_of(options.runs, side),
                 own_of(options.entries_s, side)};
  log.leave_empty = options.leave_empty;
  if (auto error = read_inputs(log, judged.request)) return *error;
  const auto& file = options.logs[side];
  auto checked = check::check(file, judged.request);
  if (!checked) {
    auto error = checked.error();
    if (error.where.file.empty()) error.where.file = file;
    return error;
  }
  if (checked->runs.size() != 1)
    return Error{ErrorCode::kBadArgument,
                 fmt::format("holds {} runs, expected one: --run picks it", checked->runs.size()),
                 {file, 0, 0},
                 fmt::format("{} runs", checked->runs.size()),
                 "one run"};
  judged.log = *std::move(checked);
  return judged;
}

report::ComparedSide named(const Judged& judged) {
  return report::compared_log(judged.log.reading, judged.log.runs[0], judged.request);
}

ExitStatus print(const CompareOptions& options, const compare::Comparison& comparison, const report::ComparedSide& a,
                 const report::ComparedSide& b) {
  if (options.common.format == Format::kJson)
    return write_output(options.common, report::compare_json(comparison, a, b), ExitStatus::kDone);
  return write_output(options.common,
                      options.common.quiet ? comparison.sentence + "\n" : report::compare_text(comparison, a, b),
                      ExitStatus::kDone);
}

ExitStatus fail(const CompareOptions& options, const Error& error) {
  return end_with(options.common, "ovenwright.compare/1", error);
}

ExitStatus compare_logs(const CompareOptions& options) {
  if (output_is_a_log(options.common, options.logs)) return ExitStatus::kUsage;
  auto profiles = options.windows;
  profiles.insert(profiles.end(), options.recipes.begin(), options.recipes.end());
  for (const auto& name : {options.board, options.oven, options.layout})
    if (name) profiles.push_back(*name);
  if (options.common.output && output_is_an_input({&*options.common.output, 1}, profiles)) return ExitStatus::kUsage;
  std::vector<Judged> both;
  for (const std::size_t side : {0, 1}) {
    auto one = judged(options, side);
    if (!one) return fail(options, one.error());
    both.push_back(*std::move(one));
  }
  const auto comparison =
      compare::compare_runs({&both[0].log.runs[0], &both[0].request}, {&both[1].log.runs[0], &both[1].request},
                            {options.different_thermocouples, options.align_C});
  return print(options, comparison, named(both[0]), named(both[1]));
}

/// The records that ids, or digests from paper, name.
Result<std::vector<std::string>> known_ids(archive::Archive& archive, const std::vector<std::string>& named) {
  std::vector<std::string> ids;
  for (const auto& name : named) {
    auto id = one_id(archive, name);
    if (!id) return id.error();
    ids.push_back(*std::move(id));
  }
  return ids;
}

ExitStatus compare_groups(const CompareOptions& options) {
  auto archive = open_archive(options.archive, archive::Access::kReadOnly);
  if (!archive) return fail(options, archive.error());
  const auto ids_a = known_ids(*archive, options.ids_a);
  if (!ids_a) return fail(options, ids_a.error());
  const auto ids_b = known_ids(*archive, options.ids_b);
  if (!ids_b) return fail(options, ids_b.error());
  auto ids = *ids_a;
  ids.insert(ids.end(), ids_b->begin(), ids_b->end());
  const auto repeated = repeated_run(*archive, ids);
  if (!repeated) return fail(options, repeated.error());
  if (*repeated) {
    report_error(**repeated);
    return ExitStatus::kUsage;
  }
  const auto a = kept_group(*archive, *ids_a), b = kept_group(*archive, *ids_b);
  if (!a) return fail(options, a.error());
  if (!b) return fail(options, b.error());
  const auto address = [](const auto& profile) { return profile ? &*profile : nullptr; };
  const bool one_oven = a->oven && b->oven && a->oven->identity.sha256 == b->oven->identity.sha256;
  const auto comparison = compare::compare_groups(
      a->runs, b->runs,
      {one_oven ? &*a->oven : nullptr, address(a->recipe), address(b->recipe), a->several_recipes, b->several_recipes});
  return print(options, comparison, {"", "", *ids_a, report::recipe_name(a->recipe)},
               {"", "", *ids_b, report::recipe_name(b->recipe)});
}

}  // namespace

ExitStatus run(const CompareOptions& options) {
  return options.logs.empty() ? compare_groups(options) : compare_logs(options);
}

}  // namespace ovenwright::command
