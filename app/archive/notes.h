#pragma once
#include <optional>
#include <string>
#include <vector>

#include "app/archive/body.h"
#include "app/archive/database.h"
#include "app/archive/record.h"

namespace ovenwright::archive {

/// A note of a printed sheet as it is stored, in the chain of notes of its writer.
struct StoredNote {
  std::string chain;
  std::uint64_t number = 0;  ///< in its chain, from 1
  RecordKey record;
  Moment at{};
  std::string by, station;
  std::string machine;  ///< whose chain it is in this database; empty where it was moved from elsewhere
  std::string digest;   ///< chainDigest() of the note before it and noteText()
};

/// What is chained of a note: one JSON object, ovenwright.note/1.
std::string noteText(const StoredNote& note);

/// The newest note that a machine made in this database.
Result<std::optional<StoredNote>> lastNoteOf(Database& database, const std::string& machine);
/// The notes of one record, the oldest first.
Result<std::vector<StoredNote>> notesOf(Database& database, const RecordKey& record);
/// Up to `limit` notes behind this place, by chain and number.
Result<std::vector<StoredNote>> notesAfter(Database& database, const std::string& chain, std::uint64_t number,
                                           int limit);
/// Left as it is where a note of this chain and number is there.
std::optional<Error> insertNote(Database& database, const StoredNote& note);

/// Copies the notes that `to` does not have. May be stopped at any moment and started again. Errors: kIo; kBadArgument
/// where both have another note of one number.
std::optional<Error> copyNotes(Database& from, Database& to);
/// Removes from an outbox the notes that `to` has, but the newest of each chain: the next one stands on its digest.
/// Errors: kIo.
std::optional<Error> removeMovedNotes(Database& outbox, Database& to);

/// Holds every note against its digest and its chain.
/// @param isOutbox  chains may begin behind their first note, and the records may be on the server
/// @param bad       id of the record whose note does not hold, and why; left empty where all hold
/// Returns the number of notes. Errors: kIo.
Result<std::size_t> verifyNotes(Database& database, bool isOutbox, std::string& bad, std::string& reason);

}  // namespace ovenwright::archive
