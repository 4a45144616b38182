#include "app/command/archive_open.h"
#include "app/command/commands.h"
#include "app/command/kept_runs.h"
#include "app/command/output.h"
#include "core/lot/lot.h"
#include "core/report/lot_report.h"

namespace ovenwright::command {

ExitStatus run(const LotOptions& options) {
  const auto fail = [&options](const Error& error) { return end_with(options.common, "ovenwright.lot/1", error); };
  auto archive = open_archive(options.archive, archive::Access::kReadOnly);
  if (!archive) return fail(archive.error());
  const auto records = archive->runsOfLot(options.lot);
  if (!records) return fail(records.error());
  if (records->empty())
    return fail({ErrorCode::kBadArgument,
                 "has no run of the lot \"" + options.lot + "\"",
                 {archive->state().where, 0, 0},
                 "",
                 "a lot that runs were added to"});
  std::vector<std::string> ids;
  for (const auto& record : *records) ids.push_back(record.id);
  const auto runs = kept_runs(*archive, ids);
  if (!runs) return fail(runs.error());
  const auto lot = lot::summarise(*runs, options.statistics);
  if (!lot) return fail(lot.error());
  const auto status = exit_status(lot->verdict);
  if (options.common.format == Format::kJson)
    return write_output(options.common, report::lot_json(options.lot, *lot), status);
  return write_output(options.common,
                      options.common.quiet ? lot->sentence + "\n" : report::lot_text(options.lot, *runs, *lot), status);
}

}  // namespace ovenwright::command
