#include <unordered_set>

#include "app/archive/archive_data.h"
#include "app/archive/body.h"
#include "app/archive/notes.h"
#include "app/archive/pack.h"
#include "app/archive/repeated.h"
#include "app/archive/rows.h"
#include "app/archive/store.h"
#include "app/archive/typed_digest.h"
#include "core/files/digest.h"

namespace ovenwright::archive {
namespace {

/// Walks the chains of one database.
class Verifier {
 public:
  Verifier(Database& database, bool isOutbox, const std::optional<TypedDigest>& head,
           const std::function<bool(double)>& progress)
      : m_database(database), m_isOutbox(isOutbox), m_head(head), m_progress(progress) {}

  /// Errors: kIo where the database does not answer; kCancelled.
  std::optional<Error> walk(Verification& found) {
    auto all = chains(m_database);
    if (!all) return all.error();
    for (const auto& chain : *all) m_all += chain.count - chain.moved;
    for (const auto& chain : *all) {
      if (auto error = walk(chain, found)) return error;
      if (!found.holds()) return std::nullopt;
      found.heads.push_back({chain.id, chain.station, chain.count, chain.head});
    }
    if (auto error = strangers(found)) return error;
    if (!found.holds()) return std::nullopt;
    const auto repeated = verifyRepeated(m_database, found.firstBad, found.reason);
    if (!repeated) return repeated.error();
    found.repeated = *repeated;
    if (!found.holds()) return std::nullopt;
    const auto notes = verifyNotes(m_database, m_isOutbox, found.firstBad, found.reason);
    if (!notes) return notes.error();
    found.notes = *notes;
    return found.holds() ? checkFile(found) : std::nullopt;
  }

  bool headSeen() const { return m_headSeen; }

 private:
  std::optional<Error> walk(const Chain& chain, Verification& found) {
    std::string previous = chain.moved == 0 ? noPrevious() : std::string{};
    for (std::uint64_t next = chain.moved + 1; next <= chain.count;) {
      const auto records = recordsAfter(m_database, chain.id, next - 1, kAtOnce);
      if (!records) return records.error();
      if (records->empty()) {
        found.firstBad = recordId(chain.id, next);
        found.reason = "it is missing";
        return std::nullopt;
      }
      for (const auto& stored : *records) {
        if (stored.number > chain.count) break;  // added meanwhile
        found.firstBad = recordId(chain.id, next);
        if (stored.number != next) {
          found.reason = "it is missing";
          return std::nullopt;
        }
        if (auto error = check(found.firstBad, stored, previous, found.reason)) return error;
        if (!found.holds()) return std::nullopt;
        if (next == chain.count && stored.digest != chain.head) {
          found.reason = "it is not the end that was noted of its chain";
          return std::nullopt;
        }
        previous = stored.digest;
        ++next;
        ++found.records;
        ++m_done;
      }
      found.firstBad.clear();
      if (m_progress && !m_progress(static_cast<double>(m_done) / static_cast<double>(m_all)))
        return Error{ErrorCode::kCancelled, "stopped", {m_database.where(), 0, 0}, {}, {}};
    }
    const auto beyond = storedRecord(m_database, chain.id, chain.count + 1);
    if (!beyond) return beyond.error();
    if (!*beyond) return std::nullopt;
    const auto now = chains(m_database);
    if (!now) return now.error();
    for (const auto& one : *now) {
      if (one.id != chain.id || one.count > chain.count) continue;  // added meanwhile
      found.firstBad = recordId(chain.id, chain.count + 1);
      found.reason = "it stands behind the end that was noted of its chain";
    }
    return std::nullopt;
  }

  std::optional<Error> check(const std::string& id, const StoredRecord& stored, const std::string& previous,
                             std::string& reason) {
    const auto parcel = unpackedParcel(stored.parcel);
    const auto record = parcel ? parseBody(parcel->body) : Result<Record>(parcel.error());
    if (!record) {
      reason = "it is damaged";
    } else if (!previous.empty() && chainDigest(previous, parcel->body) != stored.digest) {
      reason = "its content, or the digest of the record before it, was changed";
    } else if (record->summary.id != id) {
      reason = "it says that it is " + record->summary.id;
    } else if (files::sha256_hex(parcel->report) != record->reportSha256 ||
               files::sha256_hex(parcel->text) != record->textSha256) {
      reason = "what was printed of it was changed";
    } else {
      if (m_head && m_head->fits(stored.digest)) m_headSeen = true;
      if (auto error = checkRow(*record, reason)) return error;
      if (reason.empty()) return checkContents(*record, reason);
    }
    return std::nullopt;
  }

  std::optional<Error> checkRow(const Record& record, std::string& reason) {
    const QVariantList key{storable(record.chain), QVariant::fromValue(static_cast<qlonglong>(record.number))};
    std::optional<Summary> row;
    auto error = m_database.run(QStringLiteral("select ") + summaryColumns() +
                                    QStringLiteral(" from run where run.chain = ? and run.number = ?"),
                                key, [&](const QSqlQuery& at) {
                                  row = summaryOf(at);
                                  return false;
                                });
    if (error) return error;
    const auto words = m_database.value(
        QStringLiteral("select words from search where run_at = ? and chain = ? and number = ?"),
        QVariantList{QVariant::fromValue(static_cast<qlonglong>(record.summary.runAt.time_since_epoch().count()))} +
            key);
    if (!words) return words.error();
    if (!row || words->isNull()) {
      reason = "it is missing in the lists";
    } else if (!agrees(*row, record.summary) || words->toString() != storable(searchText(record.summary))) {
      reason = "the lists say something else of it";
    }
    return std::nullopt;
  }

  std::optional<Error> checkContents(const Record& record, std::string& reason) {
    for (const auto& sha256 : contentsOf(record)) {
      if (m_held.contains(sha256)) continue;
      const auto content = packedContent(m_database, sha256);
      if (!content) return content.error();
      const auto bytes = *content ? unpacked((*content)->packed) : Result<std::string>(Error{});
      if (!bytes || files::sha256_hex(*bytes) != sha256) {
        reason = std::string{*content ? "bytes that it names were changed: " : "bytes that it names are missing: "} +
                 (sha256 == record.log.sha256 ? "the log" : sha256);
        return std::nullopt;
      }
      m_held.insert(sha256);
    }
    return std::nullopt;
  }

  /// The indexes of a file, which no record stands in but every list comes from.
  std::optional<Error> checkFile(Verification& found) {
    if (m_database.isServer()) return std::nullopt;
    const auto said = m_database.value(QStringLiteral("pragma integrity_check(1)"));
    if (!said) return said.error();
    if (said->toString() != QLatin1String("ok"))
      found.reason = "the file is damaged: " + said->toString().toStdString();
    return std::nullopt;
  }

  /// Rows of lists that no record stands behind, and judgements that lists take for the last or not by mistake.
  std::optional<Error> strangers(Verification& found) {
    const QString isNoted = QStringLiteral(
        "exists (select 1 from superseded where superseded.chain = run.chain and superseded.number = run.number)");
    auto error = m_database.run(
        QStringLiteral("select chain, number from run where (%1) <> (%2) limit 1").arg(isSuperseded(), isNoted), {},
        [&](const QSqlQuery& row) {
          found.firstBad = recordId(row.value(0).toString().toStdString(), row.value(1).toULongLong());
          found.reason = "the lists say something else of it: which judgement is the last";
          return false;
        });
    if (error || !found.holds()) return error;
    return m_database.run(QStringLiteral("select run.chain, run.number from run left join record on record.chain = "
                                         "run.chain and record.number = run.number where record.chain is null or "
                                         "run.number > (select count from chain where chain.id = run.chain) limit 1"),
                          {}, [&](const QSqlQuery& row) {
                            found.firstBad =
                                recordId(row.value(0).toString().toStdString(), row.value(1).toULongLong());
                            found.reason = "it stands in the lists only";
                            return false;
                          });
  }

  static constexpr int kAtOnce = 100;
  Database& m_database;
  bool m_isOutbox;
  const std::optional<TypedDigest>& m_head;
  const std::function<bool(double)>& m_progress;
  std::unordered_set<std::string> m_held;
  std::uint64_t m_all = 0, m_done = 0;
  bool m_headSeen = false;
};

}  // namespace

Result<Verification> Archive::verify(const std::optional<std::string>& head,
                                     const std::function<bool(double)>& progress) {
  if (const auto database = m_data->reading(); !database) return database.error();
  Verification found;
  bool headSeen = false;
  const auto wanted = head ? typedDigest(*head) : std::nullopt;
  if (head && !wanted)
    return Error{
        ErrorCode::kBadArgument, "found \"" + *head + "\", expected a digest from a sheet", {}, *head, "a digest"};
  for (Database* database : m_data->places()) {
    const bool isOutbox = m_data->isServer && database == m_data->file.get();
    Verifier verifier(*database, isOutbox, wanted, progress);
    Verification part;
    if (auto error = verifier.walk(part)) return *error;
    headSeen = headSeen || verifier.headSeen();
    found.records += part.records;
    found.repeated += part.repeated;
    if (!isOutbox) found.notes += part.notes;  // the newest of an outbox are on the server as well
    found.firstBad = part.firstBad;
    found.reason = part.reason;
    if (database == m_data->places().front()) found.heads = part.heads;
    if (!part.holds()) return found;
  }
  if (wanted && !headSeen) {
    found.reason = "no record has the digest " + *head +
                   ": records that the sheet was printed from are missing, or the whole was written anew";
  }
  return found;
}

}  // namespace ovenwright::archive
