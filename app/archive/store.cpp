#include "app/archive/store.h"

#include <QRandomGenerator>
#include <algorithm>

#include "app/archive/body.h"
#include "app/archive/repeated.h"

namespace ovenwright::archive {
namespace {

QString text(const std::string& value) { return storable(value); }
QVariant number(std::uint64_t value) { return QVariant::fromValue(static_cast<qlonglong>(value)); }
QVariant milliseconds(Moment moment) {
  return QVariant::fromValue(static_cast<qlonglong>(moment.time_since_epoch().count()));
}

constexpr const char* kChainColumns = "select id, machine, station, count, head, moved from chain";

Chain chainOf(const QSqlQuery& row) {
  return {row.value(0).toString().toStdString(), row.value(1).toString().toStdString(),
          row.value(2).toString().toStdString(), row.value(3).toULongLong(),
          row.value(4).toString().toStdString(), row.value(5).toULongLong()};
}

Result<std::optional<Chain>> chainWhere(Database& database, const QString& condition, const std::string& value) {
  std::optional<Chain> found;
  const QString sql = QLatin1String(kChainColumns) + QStringLiteral(" where ") + condition +
                      (database.isServer() ? QStringLiteral(" for update") : QString());
  auto error = database.run(sql, {text(value)}, [&](const QSqlQuery& row) {
    found = chainOf(row);
    return false;
  });
  if (error) return *error;
  return found;
}

StoredRecord storedOf(const QSqlQuery& row) {
  return {row.value(0).toULongLong(), row.value(1).toString().toStdString(), row.value(2).toByteArray()};
}

}  // namespace

QByteArray digestBytes(const std::string& sha256) { return QByteArray::fromHex(QByteArray::fromStdString(sha256)); }
std::string digestHex(const QByteArray& bytes) { return bytes.toHex().toStdString(); }

std::string newChainId() {
  constexpr std::string_view kSigns = "23456789abcdefghjkmnpqrstuvwxyz";
  std::string id;  // 8 of 31 tell a million chains apart
  for (int i = 0; i < 8; ++i) id += kSigns[QRandomGenerator::system()->bounded(static_cast<quint32>(kSigns.size()))];
  return id;
}

Result<std::vector<Chain>> chains(Database& database) {
  std::vector<Chain> all;
  auto error = database.run(QLatin1String(kChainColumns) + QStringLiteral(" order by id"), {}, [&](const auto& row) {
    all.push_back(chainOf(row));
    return true;
  });
  if (error) return *error;
  return all;
}

Result<std::optional<Chain>> lockedChain(Database& database, const std::string& id) {
  return chainWhere(database, QStringLiteral("id = ?"), id);
}

Result<Chain> ownChain(Database& database, const std::string& machine, const std::string& station) {
  auto found = chainWhere(database, QStringLiteral("machine = ?"), machine);
  if (!found) return found.error();
  if (*found) return **std::move(found);
  const Chain begun{newChainId(), machine, station, 0, noPrevious(), 0};
  if (auto error = insertChain(database, begun)) return *error;
  return begun;
}

std::optional<Error> insertChain(Database& database, const Chain& chain) {
  return database.run(QStringLiteral("insert into chain(id, machine, station, count, head, moved) values(?,?,?,?,?,?) "
                                     "on conflict(id) do nothing"),
                      {text(chain.id), text(chain.machine), text(chain.station), number(chain.count), text(chain.head),
                       number(chain.moved)});
}

std::optional<Error> setChainEnd(Database& database, const Chain& chain) {
  return database.run(QStringLiteral("update chain set count = ?, head = ?, moved = ? where id = ?"),
                      {number(chain.count), text(chain.head), number(chain.moved), text(chain.id)});
}

Result<std::vector<StoredRecord>> recordsAfter(Database& database, const std::string& chain, std::uint64_t after,
                                               int limit) {
  std::vector<StoredRecord> all;
  auto error = database.run(QStringLiteral("select number, digest, packed from record where chain = ? and number > ? "
                                           "order by number limit ?"),
                            {text(chain), number(after), limit}, [&](const QSqlQuery& row) {
                              all.push_back(storedOf(row));
                              return true;
                            });
  if (error) return *error;
  return all;
}

Result<std::optional<StoredRecord>> storedRecord(Database& database, const std::string& chain, std::uint64_t at) {
  std::optional<StoredRecord> found;
  auto error = database.run(QStringLiteral("select number, digest, packed from record where chain = ? and number = ?"),
                            {text(chain), number(at)}, [&](const QSqlQuery& row) {
                              found = storedOf(row);
                              return false;
                            });
  if (error) return *error;
  return found;
}

std::optional<Error> insertRecord(Database& database, const Record& record, const QByteArray& parcel) {
  const auto& summary = record.summary;
  auto error = database.run(QStringLiteral("insert into record(chain, number, digest, packed) values(?,?,?,?)"),
                            {text(record.chain), number(record.number), text(record.digest), parcel});
  if (!error) error = insertWords(database, record);
  if (error) return error;
  return database.run(
      QStringLiteral("insert into run(chain, number, run_at, added_at, lot, serial, board, oven, recipe, window_name, "
                     "window_revision, verdict, margin, log, log_name, part, parts, operator, judged_from, origin, "
                     "run_at_given) "
                     "values(?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?)"),
      {text(record.chain),
       number(record.number),
       milliseconds(summary.runAt),
       milliseconds(summary.addedAt),
       column(summary.lot),
       column(summary.serial),
       column(summary.board),
       column(summary.oven),
       column(summary.recipe),
       column(summary.window),
       column(summary.windowRevision),
       QString::fromLatin1(judge::verdict_name(summary.verdict)),
       summary.margin ? QVariant(*summary.margin) : QVariant(),
       digestBytes(record.log.sha256),
       column(summary.logName),
       summary.part,
       summary.parts,
       column(summary.operatorName),
       text(summary.judgedFrom),
       text(summary.origin),
       static_cast<int>(summary.runAtFrom)});
}

std::optional<Error> insertWords(Database& database, const Record& record) {
  return database.run(QStringLiteral("insert into search(run_at, chain, number, words) values(?,?,?,?)"),
                      {milliseconds(record.summary.runAt), text(record.chain), number(record.number),
                       text(searchText(record.summary))});
}

Result<bool> hasContent(Database& database, const std::string& sha256) {
  const auto found = database.value(QStringLiteral("select size from content where sha256 = ?"), {digestBytes(sha256)});
  if (!found) return found.error();
  return !found->isNull();
}

Result<std::optional<PackedContent>> packedContent(Database& database, const std::string& sha256) {
  std::optional<PackedContent> found;
  auto error = database.run(QStringLiteral("select size, packed from content where sha256 = ?"), {digestBytes(sha256)},
                            [&](const QSqlQuery& row) {
                              found = PackedContent{row.value(0).toULongLong(), row.value(1).toByteArray()};
                              return false;
                            });
  if (error) return *error;
  return found;
}

std::optional<Error> insertContent(Database& database, const std::string& sha256, const PackedContent& content) {
  return database.run(
      QStringLiteral("insert into content(sha256, size, packed) values(?,?,?) on conflict(sha256) do nothing"),
      {digestBytes(sha256), number(content.size), content.packed});
}

Result<std::optional<std::string>> existingRun(Database& database, const std::string& logSha256, int part) {
  std::optional<std::string> id;
  auto error = database.run(QStringLiteral("select chain, number from run where log = ? and part = ? and "
                                           "judged_from = '' and ") +
                                isNoRepetition(QStringLiteral("run")) +
                                QStringLiteral(" order by added_at, chain, number limit 1"),
                            {digestBytes(logSha256), part}, [&](const QSqlQuery& row) {
                              id = recordId(row.value(0).toString().toStdString(), row.value(1).toULongLong());
                              return false;
                            });
  if (error) return *error;
  return id;
}

std::vector<std::string> contentsOf(const Record& record) {
  std::vector<std::string> all{record.log.sha256};
  for (const auto* files : {&record.windows, &record.attachments}) {
    for (const auto& file : *files) all.push_back(file.sha256);
  }
  for (const auto* file : {&record.oven, &record.recipe, &record.board, &record.layout}) {
    if (*file) all.push_back((*file)->sha256);
  }
  std::ranges::sort(all);
  all.erase(std::unique(all.begin(), all.end()), all.end());
  return all;
}

}  // namespace ovenwright::archive
