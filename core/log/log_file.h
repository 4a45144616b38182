#pragma once
#include <cstddef>
#include <memory>
#include <string>
#include <string_view>
#include <utility>

#include "core/units/result.h"

namespace ovenwright::log {

/// The bytes of a log: a copy, which stands whatever becomes of the file meanwhile, or of the drive or share that it is
/// on; a large file is mapped, and must stay as long as it was.
class LogBytes {
 public:
  static constexpr std::size_t kMostCopied = std::size_t{32} << 20;
  /// Errors: kIo with the place: missing, a folder, a pipe or device, no permission.
  static Result<std::shared_ptr<const LogBytes>> open(const std::string& path);
  LogBytes(const LogBytes&) = delete;
  LogBytes& operator=(const LogBytes&) = delete;
  ~LogBytes();
  std::string_view bytes() const noexcept { return {data_, size_}; }

 private:
  LogBytes(std::unique_ptr<char[]> copy, std::size_t size) : copy_(std::move(copy)), data_(copy_.get()), size_(size) {}
  LogBytes(const char* mapped, std::size_t size) : data_(mapped), size_(size) {}
  std::unique_ptr<char[]> copy_;
  const char* data_;
  std::size_t size_;
};

}  // namespace ovenwright::log
