#include "app/archive/repeated.h"

#include <algorithm>

#include "app/archive/body.h"
#include "app/archive/store.h"

namespace ovenwright::archive {
namespace {

QVariant number(std::uint64_t value) { return QVariant::fromValue(static_cast<qlonglong>(value)); }

/// The records of a run that are no repetitions, the oldest first; those that cannot be read are left to verify().
Result<std::vector<Record>> recordsOfRun(Database& database, const std::string& log, int part) {
  std::vector<StoredRecord> stored;
  auto error = database.run(
      QStringLiteral("select record.number, record.digest, record.packed from run join record on record.chain = "
                     "run.chain and record.number = run.number where run.log = ? and run.part = ? and ") +
          isNoRepetition(QStringLiteral("run")) + QStringLiteral(" order by run.added_at, run.chain, run.number"),
      {digestBytes(log), part}, [&](const QSqlQuery& row) {
        stored.push_back(
            {row.value(0).toULongLong(), row.value(1).toString().toStdString(), row.value(2).toByteArray()});
        return true;
      });
  if (error) return *error;
  std::vector<Record> all;
  for (const auto& one : stored) {
    const auto parcel = unpackedParcel(one.parcel);
    auto record = parcel ? parseBody(parcel->body) : Result<Record>(parcel.error());
    if (record) all.push_back(*std::move(record));
  }
  return all;
}

std::optional<Error> noteRepeated(Database& database, const Record& record, const Record& of) {
  return database.run(
      QStringLiteral("insert into repeated(chain, number, of_chain, of_number) values(?,?,?,?) on conflict(chain, "
                     "number) do nothing"),
      {storable(record.chain), number(record.number), storable(of.chain), number(of.number)});
}

std::optional<Error> noteSuperseded(Database& database, const std::string& log, int part) {
  return database.run(
      QStringLiteral("insert into superseded(chain, number) select run.chain, run.number from run where "
                     "run.log = ? and run.part = ? and ") +
          isSuperseded() + QStringLiteral(" on conflict(chain, number) do nothing"),
      {digestBytes(log), part});
}

}  // namespace

bool isSameJudgement(const Record& a, const Record& b) {
  const auto sameFile = [](const std::optional<KeptFile>& one, const std::optional<KeptFile>& other) {
    return one.has_value() == other.has_value() && (!one || one->sha256 == other->sha256);
  };
  return a.log.sha256 == b.log.sha256 && a.summary.part == b.summary.part && a.summary.verdict == b.summary.verdict &&
         a.summary.margin == b.summary.margin &&
         std::ranges::equal(a.windows, b.windows, {}, &KeptFile::sha256, &KeptFile::sha256) &&
         sameFile(a.oven, b.oven) && sameFile(a.recipe, b.recipe) && sameFile(a.board, b.board) &&
         a.entry_s == b.entry_s && a.keepSpikes == b.keepSpikes;
}

std::optional<Error> placeInRun(Database& database, const Record& record, std::vector<Repeated>& repeated) {
  const auto& log = record.log.sha256;
  const int part = record.summary.part;
  if (database.isServer()) {  // the records of a run one at a time: each must see the others
    const std::string run = log + " " + std::to_string(part);
    if (auto error = database.run(QStringLiteral("select pg_advisory_xact_lock(hashtext(?))"), {storable(run)}))
      return error;
  }
  const auto others =
      database.value(QStringLiteral("select count(*) from run where log = ? and part = ?"), {digestBytes(log), part});
  if (!others) return others.error();
  if (others->toInt() < 2) return std::nullopt;
  if (record.summary.judgedFrom.empty()) {
    const auto all = recordsOfRun(database, log, part);
    if (!all) return all.error();
    const auto first = std::ranges::find_if(
        *all, [&](const Record& one) { return one.summary.id != record.summary.id && isSameJudgement(one, record); });
    if (first != all->end()) {
      if (auto error = noteRepeated(database, record, *first)) return error;
      repeated.push_back({record.summary.id, first->summary.id, first->summary.lot, first->station});
    }
  }
  return noteSuperseded(database, log, part);
}

std::optional<Error> placeAllInRuns(Database& database) {
  std::vector<std::pair<std::string, int>> runs;
  auto error = database.run(QStringLiteral("select log, part from run where judged_from = '' group by log, part having "
                                           "count(*) > 1"),
                            {}, [&](const QSqlQuery& row) {
                              runs.emplace_back(digestHex(row.value(0).toByteArray()), row.value(1).toInt());
                              return true;
                            });
  if (error) return error;
  for (const auto& [log, part] : runs) {
    const auto all = recordsOfRun(database, log, part);
    if (!all) return all.error();
    std::vector<const Record*> kept;
    for (const auto& record : *all) {
      const auto first = std::ranges::find_if(kept, [&](const Record* one) { return isSameJudgement(*one, record); });
      if (first == kept.end() || !record.summary.judgedFrom.empty()) {
        kept.push_back(&record);
      } else if (auto failed = noteRepeated(database, record, **first)) {
        return failed;
      }
    }
    if (auto failed = noteSuperseded(database, log, part)) return failed;
  }
  return std::nullopt;
}

Result<bool> hasRepeated(Database& database) {
  const auto any = database.value(QStringLiteral("select 1 from repeated limit 1"));
  if (!any) return any.error();
  return !any->isNull();
}

QString isNoRepetition(const QString& table) {
  return QStringLiteral(
             "not exists (select 1 from repeated where repeated.chain = %1.chain and repeated.number = %1.number)")
      .arg(table);
}

QString isSuperseded() {
  return QStringLiteral(
             "(not %1 or exists (select 1 from run later where later.log = run.log and later.part = run.part and "
             "(later.added_at, later.chain, later.number) > (run.added_at, run.chain, run.number) and %2))")
      .arg(isNoRepetition(QStringLiteral("run")), isNoRepetition(QStringLiteral("later")));
}

Result<std::size_t> verifyRepeated(Database& database, std::string& bad, std::string& reason) {
  std::vector<std::pair<RecordKey, RecordKey>> all;
  auto error =
      database.run(QStringLiteral("select chain, number, of_chain, of_number from repeated order by chain, number"), {},
                   [&](const QSqlQuery& row) {
                     all.push_back({{row.value(0).toString().toStdString(), row.value(1).toULongLong()},
                                    {row.value(2).toString().toStdString(), row.value(3).toULongLong()}});
                     return true;
                   });
  if (error) return *error;
  for (const auto& [one, of] : all) {
    Record records[2];
    bool read = !(one.chain == of.chain && one.number == of.number);
    for (int i = 0; i < 2; ++i) {
      const auto& key = i == 0 ? one : of;
      const auto stored = storedRecord(database, key.chain, key.number);
      if (!stored) return stored.error();
      const auto parcel = *stored ? unpackedParcel((*stored)->parcel) : Result<Parcel>(Error{});
      auto record = parcel ? parseBody(parcel->body) : Result<Record>(Error{});
      read = read && record;
      if (record) records[i] = *std::move(record);
    }
    if (read && isSameJudgement(records[0], records[1])) continue;
    bad = recordId(one.chain, one.number);
    reason = "the lists leave it out for a record that it does not repeat";
    break;
  }
  return all.size();
}

}  // namespace ovenwright::archive
