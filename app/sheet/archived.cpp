#include "app/sheet/archived.h"

#include <algorithm>

#include "app/archive/keep.h"
#include "core/log/reading.h"

namespace ovenwright::sheet {
namespace {

QString q(const std::string& text) { return QString::fromStdString(text); }

QDateTime moment(archive::Moment at) { return QDateTime::fromMSecsSinceEpoch(at.time_since_epoch().count(), Qt::UTC); }

Labels::From from(archive::RunAtFrom kept) {
  switch (kept) {
    case archive::RunAtFrom::kGiven:
      return Labels::From::kGiven;
    case archive::RunAtFrom::kLogClock:
      return Labels::From::kLogClock;
    case archive::RunAtFrom::kFileTime:
      break;
  }
  return Labels::From::kFileTime;
}

Result<RunRecord> archivedRun(archive::Archive& archive, const std::vector<archive::Head>& heads, const std::string& id,
                              const std::vector<window::ProcessWindow>& windows) {
  const auto record = archive.load(id);
  if (!record) return record.error();
  auto with = archive::judgedWith(archive, *record, windows);
  if (!with) return with.error();
  auto reading = log::read_bytes(with->log.name, *with->log.bytes, with->request.log);
  if (!reading) return reading.error();
  auto checked = check::check(*std::move(reading), with->request);
  if (!checked) return checked.error();
  if (checked->runs.size() != 1)
    return Error{ErrorCode::kUndetermined, "the log is no longer read as one run", {id, 0, 0}, "", ""};
  RunRecord run;
  run.log = std::make_shared<const check::CheckedLog>(*std::move(checked));
  run.request = std::make_shared<const check::Request>(std::move(with->request));
  const auto& summary = record->summary;
  run.labels = {q(summary.lot), q(summary.serial), q(summary.operatorName), moment(summary.runAt),
                from(summary.runAtFrom)};
  ArchivePlace place{q(summary.id),      qint64(record->number), q(record->station), {}, 0,
                     q(record->program), summary.verdict};
  const auto head = std::ranges::find(heads, record->chain, &archive::Head::chain);
  if (head != heads.end()) {
    place.headDigest = q(head->digest);
    place.records = qint64(head->count);
  }
  run.archive = std::move(place);
  return run;
}

}  // namespace

Result<std::vector<RunRecord>> archivedRuns(archive::Archive& archive, const std::vector<std::string>& ids,
                                            const std::function<bool(double done)>& progress,
                                            const std::vector<window::ProcessWindow>& windows) {
  const auto heads = archive.heads();
  if (!heads) return heads.error();
  std::vector<RunRecord> runs;
  for (const auto& id : ids) {
    auto run = archivedRun(archive, *heads, id, windows);
    if (!run) return run.error();
    runs.push_back(*std::move(run));
    if (progress && !progress(double(runs.size()) / double(ids.size())))
      return Error{ErrorCode::kCancelled, "was stopped", {id, 0, 0}, "", ""};
  }
  return runs;
}

Result<std::vector<std::string>> idsOfLot(archive::Archive& archive, const std::string& lot) {
  const auto runs = archive.runsOfLot(lot);
  if (!runs) return runs.error();
  if (runs->empty()) return Error{ErrorCode::kBadArgument, "no run of the lot is in the archive", {lot, 0, 0}, "", ""};
  std::vector<std::string> ids;
  for (const auto& run : *runs) ids.push_back(run.id);
  return ids;
}

}  // namespace ovenwright::sheet
