#include <QSysInfo>
#include <algorithm>
#include <map>

#include "app/archive/archive_data.h"
#include "app/archive/body.h"
#include "app/archive/pack.h"
#include "app/archive/repeated.h"
#include "app/archive/store.h"
#include "core/files/digest.h"
#include "core/units/parallel.h"

namespace ovenwright::archive {
namespace {

KeptFile kept(const NewFile& file) { return {file.name, file.revision, file.sha256}; }
std::optional<KeptFile> kept(const std::optional<NewFile>& file) {
  if (!file) return std::nullopt;
  return kept(*file);
}

Record recordOf(const NewRun& run) {
  Record record;
  auto& summary = record.summary;
  const auto [at, from] = runTime(run);
  summary.runAt = at;
  summary.runAtFrom = from;
  summary.lot = run.labels.lot;
  summary.serial = run.labels.serial;
  summary.operatorName = run.labels.operatorName;
  summary.verdict = run.verdict;
  summary.margin = run.margin;
  summary.part = run.part;
  summary.parts = run.parts;
  summary.judgedFrom = run.judgedFrom;
  record.log = kept(run.log);
  record.logBytes = run.log.bytes->size();
  for (const auto& window : run.windows) record.windows.push_back(kept(window));
  for (const auto& file : run.attachments) record.attachments.push_back(kept(file));
  record.oven = kept(run.oven);
  record.recipe = kept(run.recipe);
  record.board = kept(run.board);
  record.layout = kept(run.layout);
  record.entry_s = run.entry_s;
  record.keepSpikes = run.keepSpikes;
  record.windowAssumed = run.windowAssumed;
  record.program = run.program;
  record.reportSha256 = files::sha256_hex(run.report);
  record.textSha256 = files::sha256_hex(run.text);
  return record;
}

std::vector<const NewFile*> filesOf(const NewRun& run) {
  std::vector<const NewFile*> all{&run.log};
  for (const auto* files : {&run.windows, &run.attachments}) {
    for (const auto& file : *files) all.push_back(&file);
  }
  for (const auto* file : {&run.oven, &run.recipe, &run.board, &run.layout}) {
    if (*file) all.push_back(&**file);
  }
  return all;
}

/// The bytes of these runs that are not known to be kept already, packed on all cores.
std::map<std::string, PackedContent> packedContents(const std::vector<const NewRun*>& runs,
                                                    const std::set<std::string>& known) {
  std::map<std::string, PackedContent> all;
  std::vector<std::pair<const std::string*, PackedContent*>> work;
  for (const auto* run : runs) {
    for (const auto* file : filesOf(*run)) {
      if (known.contains(file->sha256)) continue;
      const auto [at, fresh] = all.try_emplace(file->sha256);
      if (fresh) work.emplace_back(file->bytes.get(), &at->second);
    }
  }
  for_each_index(work.size(), all_cores(), [&work](std::size_t i) {
    *work[i].second = {work[i].first->size(), packed(*work[i].first, Effort::kSmall)};
  });
  return all;
}

/// The id of the first record of the run that `id` judges; empty where there is no such record.
Result<std::string> originOf(const std::vector<Database*>& places, const std::string& id) {
  const auto key = parseRecordId(id);
  for (Database* database : key ? places : std::vector<Database*>{}) {
    const auto origin =
        database->value(QStringLiteral("select origin from run where chain = ? and number = ?"),
                        {storable(key->chain), QVariant::fromValue(static_cast<qlonglong>(key->number))});
    if (!origin) return origin.error();
    if (!origin->isNull()) return origin->toString().toStdString();
  }
  return std::string{};
}

/// Appends records to a chain inside a transaction.
class Appender {
 public:
  Appender(Database& database, Chain chain) : m_database(database), m_chain(std::move(chain)) {}

  Result<std::string> append(const NewRun& run, std::string origin) {
    Record record = recordOf(run);
    record.chain = m_chain.id;
    record.station = m_chain.station;
    record.number = m_chain.count + 1;
    record.summary.id = recordId(record.chain, record.number);
    record.summary.origin = origin.empty() ? record.summary.id : std::move(origin);
    record.summary.addedAt = now();
    Parcel parcel{bodyText(record), run.report, run.text};
    // What lists show is what the body says, not what was given: texts may have been made storable.
    auto written = parseBody(parcel.body);
    if (!written) return written.error();
    written->digest = chainDigest(m_chain.head, parcel.body);
    if (auto error = insertRecord(m_database, *written, packedParcel(parcel))) return *error;
    std::vector<Repeated> none;  // such a run is not added
    if (auto error = placeInRun(m_database, *written, none)) return *error;
    m_chain.count = record.number;
    m_chain.head = written->digest;
    return record.summary.id;
  }

  std::optional<Error> finish() { return setChainEnd(m_database, m_chain); }

 private:
  Database& m_database;
  Chain m_chain;
};

}  // namespace

Result<std::vector<Added>> Archive::add(std::span<const NewRun> runs) {
  auto& data = *m_data;
  if (!data.file || data.options.access == Access::kReadOnly)
    return Error{ErrorCode::kBadArgument, "the archive is open for reading only", {data.where, 0, 0}, {}, {}};
  if (data.isServer) {
    if (auto error = data.connect()) return *error;
    if (data.server && !data.mayAdd) return data.awayError();
  }
  std::vector<Added> added(runs.size());
  std::vector<std::string> origins(runs.size());
  std::vector<const NewRun*> fresh;
  for (std::size_t i = 0; i < runs.size(); ++i) {
    if (!runs[i].judgedFrom.empty()) {
      auto origin = originOf(data.places(), runs[i].judgedFrom);
      if (!origin) return origin.error();
      if (origin->empty())
        return Error{ErrorCode::kBadArgument, "there is no record " + runs[i].judgedFrom, {data.where, 0, 0}, {}, {}};
      origins[i] = *std::move(origin);
    } else if (const auto id = data.existing(runs[i])) {
      added[i] = {*id, true};
      continue;
    }
    fresh.push_back(&runs[i]);
  }
  const auto contents = packedContents(fresh, data.known);

  auto transaction = Transaction::begin(*data.file);
  if (!transaction) return transaction.error();
  const auto chain = ownChain(*data.file, data.options.machine, QSysInfo::machineHostName().toStdString());
  if (!chain) return chain.error();
  for (const auto& [sha256, content] : contents) {
    if (auto error = insertContent(*data.file, sha256, content)) return *error;
  }
  Appender appender(*data.file, *chain);
  for (std::size_t i = 0; i < runs.size(); ++i) {
    if (added[i].already) continue;
    if (runs[i].judgedFrom.empty()) {  // another process, or an earlier run of this call, may have added it
      const auto id = existingRun(*data.file, runs[i].log.sha256, runs[i].part);
      if (!id) return id.error();
      if (*id) {
        added[i] = {**id, true};
        continue;
      }
    }
    auto id = appender.append(runs[i], origins[i]);
    if (!id) return id.error();
    added[i].id = *std::move(id);
  }
  if (auto error = appender.finish()) return *error;
  if (auto error = transaction->commit()) return *error;
  if (!data.isServer) {
    for (const auto& [sha256, content] : contents) data.known.insert(sha256);
  } else {
    // On disk for good already; what the server refuses now stays in the outbox, and state() says why.
    (void)sendWaiting();
  }
  return added;
}

std::optional<std::string> Archive::Data::existing(const NewRun& run) {
  for (Database* database : places()) {
    const auto id = existingRun(*database, run.log.sha256, run.part);
    if (id && *id) return **id;
  }
  noteServer();
  if (!isServer || server || !file) return std::nullopt;
  // It is away: what it had when it answered last.
  std::optional<std::string> id;
  const auto error = file->run(QStringLiteral("select chain, number from kept_by_server where log = ? and part = ?"),
                               {digestBytes(run.log.sha256), run.part}, [&](const QSqlQuery& row) {
                                 id = recordId(row.value(0).toString().toStdString(), row.value(1).toULongLong());
                                 return false;
                               });
  return error ? std::nullopt : id;
}

}  // namespace ovenwright::archive
