#include "app/command/kept_runs.h"

#include <algorithm>
#include <map>
#include <utility>

#include "core/oven/oven_file.h"
#include "core/report/kept_run.h"

namespace ovenwright::command {
namespace {

/// The file that all records keep as this one of theirs; empty where they differ or have none.
std::optional<archive::KeptFile> common_file(const std::vector<archive::Record>& records,
                                             std::optional<archive::KeptFile> archive::Record::*which) {
  if (records.empty() || !(records.front().*which)) return std::nullopt;
  for (const auto& record : records)
    if (!(record.*which) || (record.*which)->sha256 != (records.front().*which)->sha256) return std::nullopt;
  return records.front().*which;
}

/// A kept file read by its parser into `into`; left empty where there is none.
template <class Parsed>
std::optional<Error> read_kept(archive::Archive& archive, const std::optional<archive::KeptFile>& file,
                               Result<Parsed> (*parse)(const std::string&, std::string_view),
                               std::optional<Parsed>& into) {
  if (!file) return std::nullopt;
  const auto bytes = archive.content(file->sha256);
  if (!bytes) return bytes.error();
  auto parsed = parse(file->name, *bytes);
  if (!parsed) return parsed.error();
  into = *std::move(parsed);
  return std::nullopt;
}

}  // namespace

Result<std::vector<lot::Run>> kept_runs(archive::Archive& archive, const std::vector<std::string>& ids) {
  std::vector<lot::Run> runs;
  for (const auto& id : ids) {
    const auto report = archive.report(id);
    if (!report) return report.error();
    auto run = report::kept_run(id, *report);
    if (!run) {
      auto error = run.error();
      error.where.file = id;
      return error;
    }
    runs.push_back(*std::move(run));
  }
  return runs;
}

Result<KeptGroup> kept_group(archive::Archive& archive, const std::vector<std::string>& ids) {
  auto runs = kept_runs(archive, ids);
  if (!runs) return runs.error();
  KeptGroup group{*std::move(runs), {}, {}};
  std::vector<archive::Record> records;
  for (const auto& id : ids) {
    auto record = archive.load(id);
    if (!record) return record.error();
    records.push_back(*std::move(record));
  }
  if (auto error = read_kept(archive, common_file(records, &archive::Record::oven), oven::parse_oven, group.oven))
    return *error;
  if (auto error = read_kept(archive, common_file(records, &archive::Record::recipe), oven::parse_recipe, group.recipe))
    return *error;
  group.several_recipes = !group.recipe && std::ranges::any_of(records, [](const archive::Record& record) {
    return record.recipe.has_value();
  });
  return group;
}

Result<std::optional<Error>> repeated_run(archive::Archive& archive, const std::vector<std::string>& ids) {
  std::map<std::pair<std::string, int>, std::string> known;  // id by log and pass
  for (const auto& id : ids) {
    const auto record = archive.load(id);
    if (!record) return record.error();
    const auto [other, is_new] = known.emplace(std::pair{record->summary.logSha256, record->summary.part}, id);
    if (is_new) continue;
    return std::optional(Error{ErrorCode::kBadArgument,
                               other->second == id ? "is given twice: a run counts once"
                                                   : "is the same run as " + other->second + ": a run counts once",
                               {id, 0, 0},
                               "",
                               ""});
  }
  return std::optional<Error>{};
}

}  // namespace ovenwright::command
