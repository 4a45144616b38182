#include <QSysInfo>
#include <algorithm>

#include "app/archive/archive_data.h"
#include "app/archive/notes.h"
#include "app/archive/store.h"

namespace ovenwright::archive {
namespace {

/// Whether one of the places has the record. Errors: kIo.
Result<bool> isKept(const std::vector<Database*>& places, const RecordKey& key) {
  for (Database* database : places) {
    const auto there = database->value(QStringLiteral("select 1 from run where chain = ? and number = ?"),
                                       {storable(key.chain), QVariant::fromValue(static_cast<qlonglong>(key.number))});
    if (!there) return there.error();
    if (!there->isNull()) return true;
  }
  return false;
}

}  // namespace

Result<Moment> Archive::notePrinted(std::span<const std::string> ids, const std::string& by) {
  auto& data = *m_data;
  if (!data.file || data.options.access == Access::kReadOnly)
    return Error{ErrorCode::kBadArgument, "the archive is open for reading only", {data.where, 0, 0}, {}, {}};
  std::vector<RecordKey> records;
  for (const auto& id : ids) {
    const auto key = parseRecordId(id);
    const auto kept = key ? isKept(data.places(), *key) : Result<bool>(false);
    if (!kept) {
      data.noteServer();
      return kept.error();
    }
    if (!*kept && data.isServer && !data.server) return data.awayError();
    if (!*kept)
      return Error{ErrorCode::kBadArgument, "there is no record " + id, {data.where, 0, 0}, id, "an id of the archive"};
    if (std::ranges::none_of(records,
                             [&](const auto& one) { return one.chain == key->chain && one.number == key->number; }))
      records.push_back(*key);
  }
  auto transaction = Transaction::begin(*data.file);
  if (!transaction) return transaction.error();
  const auto last = lastNoteOf(*data.file, data.options.machine);
  if (!last) return last.error();
  StoredNote note;
  note.chain = *last ? (*last)->chain : newChainId();
  note.number = *last ? (*last)->number : 0;
  note.digest = *last ? (*last)->digest : noPrevious();
  note.at = now();
  // As the databases give them back: what is chained is made of these.
  note.by = storable(by).toStdString();
  note.station = storable(QSysInfo::machineHostName().toStdString()).toStdString();
  note.machine = data.options.machine;
  for (const auto& record : records) {
    note.record = record;
    ++note.number;
    note.digest = chainDigest(note.digest, noteText(note));
    if (auto error = insertNote(*data.file, note)) return *error;
  }
  if (auto error = transaction->commit()) return *error;
  if (data.isServer) {  // on disk for good already, as in add()
    (void)sendWaiting();
  }
  return note.at;
}

Result<std::vector<PrintedNote>> Archive::printedNotes(const std::string& id) {
  std::vector<PrintedNote> all;
  const auto key = parseRecordId(id);
  for (Database* database : key ? m_data->places() : std::vector<Database*>{}) {
    const auto notes = notesOf(*database, *key);
    if (!notes) {
      m_data->noteServer();
      return notes.error();
    }
    for (const auto& note : *notes) {
      const PrintedNote printed{id, note.at, note.by, note.station};
      // The newest note of an outbox is on the server as well.
      const bool twice = std::ranges::any_of(all, [&](const PrintedNote& one) {
        return one.at == printed.at && one.by == printed.by && one.station == printed.station;
      });
      if (!twice) all.push_back(printed);
    }
  }
  std::ranges::stable_sort(all, {}, &PrintedNote::at);
  return all;
}

}  // namespace ovenwright::archive
