#include "app/archive/copy.h"

#include <algorithm>

#include "app/archive/body.h"
#include "app/archive/repeated.h"

namespace ovenwright::archive {
namespace {

constexpr int kAtOnce = 50;

/// Bytes that `to` lacks; `named` is who names them.
std::optional<Error> copyContent(Database& from, Database& to, const std::string& sha256, const std::string& named) {
  const auto there = hasContent(to, sha256);
  if (!there) return there.error();
  if (*there) return std::nullopt;
  const auto content = packedContent(from, sha256);
  if (!content) return content.error();
  if (!*content) return from.error(named + " names bytes that are missing: " + sha256);
  return insertContent(to, sha256, **content);
}

/// The record's contents that `to` lacks, then the record.
std::optional<Error> copyRecord(Database& from, Database& to, const Record& record, const QByteArray& parcel,
                                std::vector<Repeated>& repeated) {
  for (const auto& sha256 : contentsOf(record)) {
    if (auto error = copyContent(from, to, sha256, record.summary.id)) return error;
  }
  if (auto error = insertRecord(to, record, parcel)) return error;
  return placeInRun(to, record, repeated);
}

/// Whether both archives have the same record at the end of the shorter chain.
std::optional<Error> checkCommon(Database& from, const Chain& source, Database& to, const Chain& target) {
  const std::uint64_t common = std::min(source.count, target.count);
  if (target.count < source.moved) {
    return to.error("it has " + std::to_string(target.count) + " records of the chain " + source.id + ", but " +
                    std::to_string(source.moved) + " were moved to it: it has lost records");
  }
  // What was moved out is no longer there to compare: copySome() holds the next record against it.
  if (common == 0 || (common == source.moved && common < source.count)) return std::nullopt;
  std::string heads[2] = {common == source.count ? source.head : std::string{},
                          common == target.count ? target.head : std::string{}};
  Database* const databases[2] = {&from, &to};
  for (int i = 0; i < 2; ++i) {
    if (!heads[i].empty()) continue;
    const auto stored = storedRecord(*databases[i], source.id, common);
    if (!stored) return stored.error();
    if (!*stored) return databases[i]->error(recordId(source.id, common) + " is missing");
    heads[i] = (*stored)->digest;
  }
  if (heads[0] == heads[1]) return std::nullopt;
  Error error = to.error("it has another record " + recordId(source.id, common) + " than " + from.where() +
                         ": one of the two was changed or continued from a copy");
  error.code = ErrorCode::kBadArgument;
  return error;
}

/// One transaction of up to kAtOnce records; 0: there are no more.
Result<std::uint64_t> copySome(Database& from, Database& to, const Chain& source, std::vector<Repeated>& repeated) {
  auto transaction = Transaction::begin(to);
  if (!transaction) return transaction.error();
  Chain begun = source;
  begun.count = begun.moved = 0;
  begun.head = noPrevious();
  begun.machine.clear();  // its writer goes on where the chain comes from: here this machine begins one of its own
  if (auto error = insertChain(to, begun)) return *error;
  const auto locked = lockedChain(to, source.id);
  if (!locked) return locked.error();
  if (!*locked) return to.error("the chain " + source.id + " cannot be begun");
  Chain target = **locked;
  if (auto error = checkCommon(from, source, to, target)) return *error;
  const auto records = recordsAfter(from, source.id, target.count, kAtOnce);
  if (!records) return records.error();
  std::vector<Repeated> found;
  for (const auto& stored : *records) {
    const std::string id = recordId(source.id, stored.number);
    const auto parcel = unpackedParcel(stored.parcel);
    if (!parcel) return from.error(id + " is damaged");
    auto record = parseBody(parcel->body);
    if (!record || stored.number != target.count + 1 || record->summary.id != id ||
        chainDigest(target.head, parcel->body) != stored.digest) {
      return from.error(id + " does not hold: verify the archive");
    }
    record->digest = stored.digest;
    if (auto error = copyRecord(from, to, *record, stored.parcel, found)) return *error;
    target.count = stored.number;
    target.head = stored.digest;
  }
  if (!records->empty()) {
    if (auto error = setChainEnd(to, target)) return *error;
  }
  if (auto error = transaction->commit()) return *error;
  repeated.insert(repeated.end(), found.begin(), found.end());
  return records->size();
}

}  // namespace

std::optional<Error> copyChain(Database& from, Database& to, const std::string& chain, std::vector<Repeated>& repeated,
                               const std::function<bool(std::uint64_t)>& copied) {
  for (;;) {
    const auto all = chains(from);
    if (!all) return all.error();
    const auto source = std::find_if(all->begin(), all->end(), [&](const Chain& one) { return one.id == chain; });
    if (source == all->end()) return std::nullopt;
    const auto some = copySome(from, to, *source, repeated);
    if (!some && to.trouble() == Trouble::kClash) continue;
    if (!some) return some.error();
    if (*some == 0) return std::nullopt;
    if (copied && !copied(*some)) return Error{ErrorCode::kCancelled, "stopped", {from.where(), 0, 0}, {}, {}};
  }
}

std::optional<Error> removeMoved(Database& outbox, Database& to, const std::string& chain) {
  const auto there = to.value(QStringLiteral("select count from chain where id = ?"), {storable(chain)});
  if (!there) return there.error();
  auto transaction = Transaction::begin(outbox);
  if (!transaction) return transaction.error();
  auto own = lockedChain(outbox, chain);
  if (!own) return own.error();
  if (!*own || there->toULongLong() <= (*own)->moved) return std::nullopt;
  const QVariantList moved{storable(chain), *there};
  if (auto error = outbox.run(QStringLiteral("insert into kept_by_server(log, part, chain, number) select log, part, "
                                             "chain, number from run where chain = ? and number <= ? and judged_from = "
                                             "'' on conflict(log, part) do nothing"),
                              moved))
    return error;
  for (const char* sql :
       {"delete from search where chain = ? and number <= ?", "delete from run where chain = ? and number <= ?",
        "delete from superseded where chain = ? and number <= ?",
        "delete from repeated where chain = ? and number <= ?", "delete from record where chain = ? and number <= ?"}) {
    if (auto error = outbox.run(QLatin1String(sql), moved)) return error;
  }
  // An outbox holds what waits and no more: bytes that no waiting record may need go when it is empty.
  const auto left = outbox.value(QStringLiteral("select count(*) from record"));
  if (!left) return left.error();
  if (left->toInt() == 0) {
    if (auto error = outbox.execute(QStringLiteral("delete from content"))) return error;
  }
  (*own)->moved = std::min<std::uint64_t>(there->toULongLong(), (*own)->count);
  if (auto error = setChainEnd(outbox, **own)) return error;
  return transaction->commit();
}

std::optional<Error> noteKeptLogs(Database& outbox, Database& server) {
  constexpr int kLogsAtOnce = 5000;
  const auto all = chains(server);
  if (!all) return all.error();
  for (const auto& chain : *all) {
    // How far it is noted stands by itself: what this station sends is noted as well, and may be behind a gap.
    const QString noted = QStringLiteral("kept_by_server ") + storable(chain.id);
    const auto known = outbox.value(QStringLiteral("select value from archive where name = ?"), {noted});
    if (!known) return known.error();
    for (std::uint64_t last = known->toString().toULongLong(); last < chain.count;) {
      std::vector<QVariantList> logs;
      auto error =
          server.run(QStringLiteral("select log, part, chain, number from run where chain = ? and number > ? and "
                                    "judged_from = '' order by number limit ?"),
                     {storable(chain.id), QVariant::fromValue<qlonglong>(static_cast<qlonglong>(last)), kLogsAtOnce},
                     [&](const QSqlQuery& row) {
                       logs.push_back({row.value(0), row.value(1), row.value(2), row.value(3)});
                       return true;
                     });
      if (error) return error;
      const bool more = logs.size() == std::size_t{kLogsAtOnce};
      last = more ? logs.back()[3].toULongLong() : chain.count;
      auto transaction = Transaction::begin(outbox);
      if (!transaction) return transaction.error();
      for (const auto& log : logs) {
        if (auto failed = outbox.run(QStringLiteral("insert into kept_by_server(log, part, chain, number) "
                                                    "values(?,?,?,?) on conflict(log, part) do nothing"),
                                     log))
          return failed;
      }
      if (auto failed = outbox.run(QStringLiteral("insert into archive(name, value) values(?,?) on conflict(name) do "
                                                  "update set value = excluded.value"),
                                   {noted, QString::number(last)}))
        return failed;
      if (auto failed = transaction->commit()) return failed;
    }
  }
  return std::nullopt;
}

std::optional<Error> copyReleases(Database& from, Database& to) {
  std::vector<QVariantList> releases;
  auto error = from.run(QStringLiteral("select sha256, name, revision, released_at, released_by from released_window "
                                       "order by sha256, released_at"),
                        {}, [&](const QSqlQuery& row) {
                          releases.push_back({row.value(0), row.value(1), row.value(2), row.value(3), row.value(4)});
                          return true;
                        });
  if (error || releases.empty()) return error;
  auto transaction = Transaction::begin(to);
  if (!transaction) return transaction.error();
  for (const auto& release : releases) {
    const auto there = to.value(QStringLiteral("select 1 from released_window where sha256 = ? and released_at = ?"),
                                {release[0], release[3]});
    if (!there) return there.error();
    if (!there->isNull()) continue;
    if (auto failed = copyContent(from, to, digestHex(release[0].toByteArray()), "a release")) return failed;
    if (auto failed =
            to.run(QStringLiteral("insert into released_window(sha256, name, revision, released_at, "
                                  "released_by) values(?,?,?,?,?) on conflict(sha256, released_at) do nothing"),
                   release))
      return failed;
  }
  return transaction->commit();
}

}  // namespace ovenwright::archive
