// What an archive gives back, from a disk or a server: any bytes are a record that can be written again, or an error
// with a message.
#include <cstdint>
#include <cstdlib>
#include <string>

#include "app/archive/body.h"
#include "app/archive/pack.h"

using namespace ovenwright;

namespace {

void check_body(const std::string& text) {
  const auto record = archive::parseBody(text);
  if (!record) {
    if (record.error().message.empty()) std::abort();
    return;
  }
  static_cast<void>(archive::parseBody(archive::bodyText(*record)));
  static_cast<void>(archive::searchText(record->summary));
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string text{reinterpret_cast<const char*>(data), size};
  check_body(text);
  static_cast<void>(archive::parseRecordId(text));
  const QByteArray frame(reinterpret_cast<const char*>(data), static_cast<qsizetype>(size));
  if (const auto parcel = archive::unpackedParcel(frame)) check_body(parcel->body);
  return 0;
}
