#pragma once
#include <QByteArray>
#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "app/archive/database.h"
#include "app/archive/record.h"

namespace ovenwright::archive {

/// A chain as its row says.
struct Chain {
  std::string id, machine, station;
  std::uint64_t count = 0;
  std::string head;
  std::uint64_t moved = 0;  ///< of an outbox: records that are no longer in it
};

/// A record as it is stored.
struct StoredRecord {
  std::uint64_t number = 0;
  std::string digest;
  QByteArray parcel;  ///< see packedParcel()
};

QByteArray digestBytes(const std::string& sha256);
std::string digestHex(const QByteArray& bytes);

/// An id for a chain: letters and digits that are not mistaken for each other.
std::string newChainId();

Result<std::vector<Chain>> chains(Database& database);
/// Locked until the transaction ends, where the database locks rows.
Result<std::optional<Chain>> lockedChain(Database& database, const std::string& id);
/// The chain that this machine adds to, begun where there is none yet. Inside a transaction that writes.
Result<Chain> ownChain(Database& database, const std::string& machine, const std::string& station);
std::optional<Error> insertChain(Database& database, const Chain& chain);  ///< left as it is where it is there
std::optional<Error> setChainEnd(Database& database, const Chain& chain);  ///< count, head and moved

/// Up to `limit` records of a chain after `after`, in order.
Result<std::vector<StoredRecord>> recordsAfter(Database& database, const std::string& chain, std::uint64_t after,
                                               int limit);
Result<std::optional<StoredRecord>> storedRecord(Database& database, const std::string& chain, std::uint64_t number);
/// Writes the record and the rows that lists and searches use; placeInRun() follows.
std::optional<Error> insertRecord(Database& database, const Record& record, const QByteArray& parcel);

std::optional<Error> insertWords(Database& database, const Record& record);

Result<bool> hasContent(Database& database, const std::string& sha256);
struct PackedContent {
  std::uint64_t size = 0;
  QByteArray packed;
};
Result<std::optional<PackedContent>> packedContent(Database& database, const std::string& sha256);
std::optional<Error> insertContent(Database& database, const std::string& sha256, const PackedContent& content);

/// The record that keeps this pass of this log already, by its first judgement that is no repetition.
Result<std::optional<std::string>> existingRun(Database& database, const std::string& logSha256, int part);

/// Digests of all bytes that a record names, in an order that is the same everywhere, so that two stations never wait
/// for each other.
std::vector<std::string> contentsOf(const Record& record);

}  // namespace ovenwright::archive
