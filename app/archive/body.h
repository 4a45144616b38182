#pragma once
#include <QByteArray>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "app/archive/record.h"
#include "core/units/result.h"

namespace ovenwright::archive {

/// The digest that the first record of a chain names as the one before it.
std::string noPrevious();

/// "7kq2mv9x-1042" of its chain and number.
std::string recordId(const std::string& chain, std::uint64_t number);
struct RecordKey {
  std::string chain;
  std::uint64_t number = 0;
};
std::optional<RecordKey> parseRecordId(const std::string& id);

/// The body of a record: one JSON object, ovenwright.record/1, with everything the record says but its digest. What is
/// chained is this text.
std::string bodyText(const Record& record);
/// Errors: kIo where it is no body.
Result<Record> parseBody(const std::string& body);
/// SHA-256 of previous, a line feed and the body: 64 hex digits.
std::string chainDigest(const std::string& previous, const std::string& body);

/// A record's body with what was printed, in one frame.
struct Parcel {
  std::string body, report, text;
};
QByteArray packedParcel(const Parcel& parcel);
Result<Parcel> unpackedParcel(const QByteArray& frame);

/// The words of a record that a text search looks through, whatever their case.
std::string searchText(const Summary& summary);
/// A word that is looked for, in the same case.
std::string folded(const std::string& text);

}  // namespace ovenwright::archive
