#include "app/archive/notes.h"

#include <nlohmann/json.hpp>

namespace ovenwright::archive {
namespace {

constexpr int kAtOnce = 500;

QVariant number(std::uint64_t value) { return QVariant::fromValue(static_cast<qlonglong>(value)); }
std::string text(const QVariant& value) { return value.toString().toStdString(); }

QString select(const char* rest) {
  return QStringLiteral(
             "select chain, number, record_chain, record_number, printed_at, printed_by, station, machine, "
             "digest from note ") +
         QLatin1String(rest);
}

Result<std::vector<StoredNote>> notes(Database& database, const QString& sql, const QVariantList& values) {
  std::vector<StoredNote> all;
  auto error = database.run(sql, values, [&](const QSqlQuery& row) {
    all.push_back({text(row.value(0)),
                   row.value(1).toULongLong(),
                   {text(row.value(2)), row.value(3).toULongLong()},
                   Moment{std::chrono::milliseconds{row.value(4).toLongLong()}},
                   text(row.value(5)),
                   text(row.value(6)),
                   text(row.value(7)),
                   text(row.value(8))});
    return true;
  });
  if (error) return *error;
  return all;
}

Result<std::optional<StoredNote>> first(Result<std::vector<StoredNote>> found) {
  if (!found) return found.error();
  if (found->empty()) return std::optional<StoredNote>{};
  return std::optional{std::move(found->front())};
}

/// The newest note of a chain.
Result<std::optional<StoredNote>> lastOf(Database& database, const std::string& chain) {
  return first(notes(database, select("where chain = ? order by number desc limit 1"), {storable(chain)}));
}

/// The chains of notes.
Result<std::vector<std::string>> noteChains(Database& database) {
  std::vector<std::string> all;
  auto error = database.run(QStringLiteral("select distinct chain from note order by chain"), {}, [&](const auto& row) {
    all.push_back(text(row.value(0)));
    return true;
  });
  if (error) return *error;
  return all;
}

/// One transaction of notes of a chain; 0: there are no more.
Result<std::size_t> copySome(Database& from, Database& to, const std::string& chain) {
  const auto last = lastOf(to, chain);
  if (!last) return last.error();
  if (*last) {
    const auto same = notes(from, select("where chain = ? and number = ?"), {storable(chain), number((*last)->number)});
    if (!same) return same.error();
    if (!same->empty() && same->front().digest != (*last)->digest) {
      Error error = to.error("it has another note of the printed sheet of " +
                             recordId(same->front().record.chain, same->front().record.number) + " than " +
                             from.where() + ": one of the two was changed or continued from a copy");
      error.code = ErrorCode::kBadArgument;
      return error;
    }
  }
  auto next = *last ? (*last)->number + 1 : 1;
  auto more = notes(from, select("where chain = ? and number >= ? order by number limit ?"),
                    {storable(chain), number(next), kAtOnce});
  if (!more) return more.error();
  if (more->empty()) return std::size_t{0};
  auto transaction = Transaction::begin(to);
  if (!transaction) return transaction.error();
  for (auto& note : *more) {
    if (note.number != next++)
      return to.error("it has lost notes of printed sheets that were moved to it, of the chain " + chain);
    note.machine.clear();
    if (auto error = insertNote(to, note)) return *error;
  }
  if (auto error = transaction->commit()) return *error;
  return more->size();
}

}  // namespace

std::string noteText(const StoredNote& note) {
  return nlohmann::ordered_json{{"schema", "ovenwright.note/1"},
                                {"chain", note.chain},
                                {"number", note.number},
                                {"record", recordId(note.record.chain, note.record.number)},
                                {"printed_at", momentText(note.at)},
                                {"printed_by", note.by},
                                {"station", note.station}}
      .dump();
}

Result<std::optional<StoredNote>> lastNoteOf(Database& database, const std::string& machine) {
  return first(notes(database, select("where machine = ? order by number desc limit 1"), {storable(machine)}));
}

Result<std::vector<StoredNote>> notesOf(Database& database, const RecordKey& record) {
  return notes(database, select("where record_chain = ? and record_number = ? order by printed_at, chain, number"),
               {storable(record.chain), number(record.number)});
}

Result<std::vector<StoredNote>> notesAfter(Database& database, const std::string& chain, std::uint64_t after,
                                           int limit) {
  return notes(database, select("where (chain, number) > (?, ?) order by chain, number limit ?"),
               {storable(chain), number(after), limit});
}

std::optional<Error> insertNote(Database& database, const StoredNote& note) {
  return database.run(
      QStringLiteral("insert into note(chain, number, record_chain, record_number, printed_at, printed_by, station, "
                     "machine, digest) values(?,?,?,?,?,?,?,?,?) on conflict(chain, number) do nothing"),
      {storable(note.chain), number(note.number), storable(note.record.chain), number(note.record.number),
       QVariant::fromValue(static_cast<qlonglong>(note.at.time_since_epoch().count())), storable(note.by),
       storable(note.station), storable(note.machine), storable(note.digest)});
}

std::optional<Error> copyNotes(Database& from, Database& to) {
  const auto all = noteChains(from);
  if (!all) return all.error();
  for (const auto& chain : *all) {
    for (;;) {
      const auto some = copySome(from, to, chain);
      if (!some) return some.error();
      if (*some == 0) break;
    }
  }
  return std::nullopt;
}

std::optional<Error> removeMovedNotes(Database& outbox, Database& to) {
  const auto all = noteChains(outbox);
  if (!all) return all.error();
  for (const auto& chain : *all) {
    const auto last = lastOf(to, chain);
    if (!last) return last.error();
    if (!*last) continue;
    if (auto error = outbox.run(QStringLiteral("delete from note where chain = ? and number < ?"),
                                {storable(chain), number((*last)->number)}))
      return error;
  }
  return std::nullopt;
}

Result<std::size_t> verifyNotes(Database& database, bool isOutbox, std::string& bad, std::string& reason) {
  std::size_t count = 0;
  StoredNote before;
  for (;;) {
    const auto some = notesAfter(database, before.chain, before.number, kAtOnce);
    if (!some) return some.error();
    if (some->empty()) return count;
    for (const auto& note : *some) {
      const bool begins = note.chain != before.chain;
      bad = recordId(note.record.chain, note.record.number);
      if (begins ? note.number != 1 && !isOutbox : note.number != before.number + 1) {
        reason = "before its note of a printed sheet another note is missing";
      } else if ((!begins || note.number == 1) &&
                 chainDigest(begins ? noPrevious() : before.digest, noteText(note)) != note.digest) {
        reason = "a note of its printed sheet was changed";
      } else if (!isOutbox) {
        const auto there = database.value(QStringLiteral("select 1 from record where chain = ? and number = ?"),
                                          {storable(note.record.chain), number(note.record.number)});
        if (!there) return there.error();
        if (there->isNull()) reason = "its sheet was noted as printed, but it is missing";
      }
      if (!reason.empty()) return count;
      bad.clear();
      before = note;
      ++count;
    }
  }
}

}  // namespace ovenwright::archive
