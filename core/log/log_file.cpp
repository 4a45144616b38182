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

/// Closes it.
struct Descriptor {
  int number;
  ~Descriptor() { ::close(number); }
};

/// Reads up to `size` bytes; how many there were, or negative.
ssize_t read_all(int descriptor, char* to, std::size_t size) {
  std::size_t done = 0;
  while (done < size) {
    const ssize_t now = ::read(descriptor, to + done, size - done);
    if (now < 0 && errno == EINTR) continue;
    if (now < 0) return now;
    if (now == 0) break;  // it became shorter
    done += static_cast<std::size_t>(now);
  }
  return static_cast<ssize_t>(done);
}

}  // namespace

Result<std::shared_ptr<const LogBytes>> LogBytes::open(const std::string& path) {
  // Not to wait for a writer: opening a pipe would.
  const int descriptor = ::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK);
  if (descriptor < 0) return io_error(path, errno);
  const Descriptor closed_behind{descriptor};
  struct stat status {};
  if (::fstat(descriptor, &status) != 0) return io_error(path, errno);
  if (S_ISDIR(status.st_mode)) return kind_error(path, "a folder");
  if (S_ISFIFO(status.st_mode) || S_ISSOCK(status.st_mode)) return kind_error(path, "a pipe");
  if (!S_ISREG(status.st_mode)) return kind_error(path, "a device");
  const auto size = static_cast<std::size_t>(status.st_size);
  if (size <= kMostCopied) {
    auto copy = std::make_unique_for_overwrite<char[]>(size);
    const ssize_t read = read_all(descriptor, copy.get(), size);
    if (read < 0) return io_error(path, errno);
    return std::shared_ptr<const LogBytes>(new LogBytes(std::move(copy), static_cast<std::size_t>(read)));
  }
  void* const mapped = ::mmap(nullptr, size, PROT_READ, MAP_PRIVATE, descriptor, 0);
  if (mapped == MAP_FAILED) return io_error(path, errno);
  return std::shared_ptr<const LogBytes>(new LogBytes(static_cast<const char*>(mapped), size));
}

LogBytes::~LogBytes() {
  if (!copy_) ::munmap(const_cast<char*>(data_), size_);
}

}  // namespace ovenwright::log
