#include "core/log/log_file.h"

#include <fcntl.h>
#include <sys/mman.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <system_error>

namespace ovenwright::log {
namespace {

Error io_error(const std::string& path, int number) {
  return {ErrorCode::kIo, "cannot be read: " + std::generic_category().message(number), {path, 0, 0}, "", ""};
}

Error kind_error(const std::string& path, const std::string& kind) {
  return {ErrorCode::kIo, "found " + kind + ", expected a file", {path, 0, 0}, kind, "a file"};
}

}  // namespace

Result<std::shared_ptr<const LogBytes>> LogBytes::open(const std::string& path) {
  // Not to wait for a writer: opening a pipe would.
  const int descriptor = ::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK);
  if (descriptor < 0) return io_error(path, errno);
  struct stat status {};
  const char* data = nullptr;
  std::size_t size = 0;
  Error error;
  if (::fstat(descriptor, &status) != 0) {
    error = io_error(path, errno);
  } else if (S_ISDIR(status.st_mode)) {
    error = kind_error(path, "a folder");
  } else if (S_ISFIFO(status.st_mode) || S_ISSOCK(status.st_mode)) {
    error = kind_error(path, "a pipe");
  } else if (!S_ISREG(status.st_mode)) {
    error = kind_error(path, "a device");
  } else if (status.st_size > 0) {
    size = static_cast<std::size_t>(status.st_size);
    void* mapped = ::mmap(nullptr, size, PROT_READ, MAP_PRIVATE, descriptor, 0);
    if (mapped == MAP_FAILED) {
      error = io_error(path, errno);
    } else {
      data = static_cast<const char*>(mapped);
    }
  }
  ::close(descriptor);
  if (!error.message.empty()) return error;
  return std::shared_ptr<const LogBytes>(new LogBytes(data, size));
}

LogBytes::~LogBytes() {
  if (data_ != nullptr) ::munmap(const_cast<char*>(data_), size_);
}

}  // namespace ovenwright::log
