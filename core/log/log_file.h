#pragma once
#include <cstddef>
#include <memory>
#include <string>
#include <string_view>

#include "core/units/result.h"

namespace ovenwright::log {

/// The bytes of a log, mapped where the file is a regular one.
class LogBytes {
 public:
  /// Errors: kIo with the place: missing, a folder, a pipe or device, no permission.
  static Result<std::shared_ptr<const LogBytes>> open(const std::string& path);
  LogBytes(const LogBytes&) = delete;
  LogBytes& operator=(const LogBytes&) = delete;
  ~LogBytes();
  std::string_view bytes() const noexcept { return {data_, size_}; }

 private:
  LogBytes(const char* data, std::size_t size) : data_(data), size_(size) {}
  const char* data_;
  std::size_t size_;
};

}  // namespace ovenwright::log
