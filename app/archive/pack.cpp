#include "app/archive/pack.h"

#include <zstd.h>

#include <cassert>
#include <memory>

namespace ovenwright::archive {
namespace {

constexpr unsigned long long kMostBytes = 4ULL << 30;

Error damaged() { return {ErrorCode::kIo, "packed bytes are damaged", {}, {}, {}}; }

}  // namespace

QByteArray packed(std::string_view bytes, Effort effort) {
  const std::unique_ptr<ZSTD_CCtx, decltype(&ZSTD_freeCCtx)> context{ZSTD_createCCtx(), ZSTD_freeCCtx};
  ZSTD_CCtx_setParameter(context.get(), ZSTD_c_compressionLevel, effort == Effort::kSmall ? 15 : 9);
  ZSTD_CCtx_setParameter(context.get(), ZSTD_c_checksumFlag, 1);
  QByteArray frame(static_cast<qsizetype>(ZSTD_compressBound(bytes.size())), Qt::Uninitialized);
  const std::size_t size =
      ZSTD_compress2(context.get(), frame.data(), static_cast<std::size_t>(frame.size()), bytes.data(), bytes.size());
  assert(!ZSTD_isError(size));  // the bound is enough, whatever the bytes
  frame.resize(static_cast<qsizetype>(size));
  frame.squeeze();
  return frame;
}

Result<std::string> unpacked(const QByteArray& frame) {
  const auto size = ZSTD_getFrameContentSize(frame.constData(), static_cast<std::size_t>(frame.size()));
  if (size == ZSTD_CONTENTSIZE_ERROR || size == ZSTD_CONTENTSIZE_UNKNOWN || size > kMostBytes) return damaged();
  // A block of 128 kB takes four bytes at least (RFC 8878, 3.1.1.2): a frame that promises more is damaged, and told
  // before memory is spent.
  constexpr std::uint64_t kMostPerByte = (128U << 10) / 4;
  if (size / kMostPerByte > static_cast<std::uint64_t>(frame.size())) return damaged();
  std::string bytes(size, '\0');
  const std::size_t got =
      ZSTD_decompress(bytes.data(), bytes.size(), frame.constData(), static_cast<std::size_t>(frame.size()));
  if (ZSTD_isError(got) || got != size) return damaged();
  return bytes;
}

}  // namespace ovenwright::archive
