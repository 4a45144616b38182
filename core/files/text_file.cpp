#include "core/files/text_file.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <filesystem>
#include <system_error>

namespace ovenwright::files {
namespace {

constexpr std::size_t kMostBytes = 4U << 20;

Error io_error(const std::string& path, const std::string& what, int number) {
  return {ErrorCode::kIo, what + ": " + std::generic_category().message(number), {path, 0, 0}, "", ""};
}

class Descriptor {
 public:
  explicit Descriptor(int number) : number_(number) {}
  Descriptor(const Descriptor&) = delete;
  Descriptor& operator=(const Descriptor&) = delete;
  ~Descriptor() { close(); }
  int number() const { return number_; }
  int close() {
    const int closed = number_ < 0 ? 0 : ::close(number_);
    number_ = -1;
    return closed;
  }

 private:
  int number_;
};

bool write_all(int descriptor, std::string_view bytes) {
  while (!bytes.empty()) {
    const ssize_t written = ::write(descriptor, bytes.data(), bytes.size());
    if (written < 0 && errno == EINTR) continue;
    if (written <= 0) return false;
    bytes.remove_prefix(static_cast<std::size_t>(written));
  }
  return true;
}

/// Opens a new file whose name starts with `stem`; `name` takes the whole of it. -1 with errno where it cannot.
int open_temporary(const std::string& stem, std::string& name) {
  for (int i = 0; i < 1000; ++i) {
    name = stem + "." + std::to_string(::getpid()) + "-" + std::to_string(i) + ".part";
    const int descriptor = ::open(name.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666);
    if (descriptor >= 0 || errno != EEXIST) return descriptor;
  }
  return -1;
}

/// Puts a finished temporary file in its place.
bool put_in_place(const std::string& temporary, const std::string& path, Existing existing) {
  if (existing == Existing::kReplace) return ::rename(temporary.c_str(), path.c_str()) == 0;
  // A link refuses where the name is taken, which a rename does not.
  if (::link(temporary.c_str(), path.c_str()) != 0) return false;
  ::unlink(temporary.c_str());
  return true;
}

}  // namespace

Result<std::string> read_text(const std::string& path) {
  struct stat status {};
  if (::stat(path.c_str(), &status) != 0) return io_error(path, "cannot be read", errno);
  if (!S_ISREG(status.st_mode)) {  // reading a pipe might never end
    const std::string found = S_ISDIR(status.st_mode) ? "a folder" : S_ISFIFO(status.st_mode) ? "a pipe" : "a device";
    return Error{ErrorCode::kIo, "found " + found + ", expected a file", {path, 0, 0}, found, "a file"};
  }
  const Descriptor descriptor{::open(path.c_str(), O_RDONLY | O_CLOEXEC)};
  if (descriptor.number() < 0) return io_error(path, "cannot be read", errno);
  std::string text;
  while (text.size() <= kMostBytes) {
    const std::size_t before = text.size();
    text.resize(before + (1U << 16));
    const ssize_t got = ::read(descriptor.number(), text.data() + before, text.size() - before);
    text.resize(before + static_cast<std::size_t>(got > 0 ? got : 0));
    if (got < 0 && errno == EINTR) continue;
    if (got < 0) return io_error(path, "cannot be read", errno);
    if (got == 0) return text;
  }
  return Error{ErrorCode::kIo,
               "found more than 4 MB, expected a file that people edit",
               {path, 0, 0},
               "more than 4 MB",
               "at most 4 MB"};
}

Result<std::string> write_file(const std::string& path, std::string_view bytes, Existing existing) {
  std::error_code failed;
  struct stat status {};
  const bool exists = ::stat(path.c_str(), &status) == 0;
  if (exists && S_ISDIR(status.st_mode)) return io_error(path, "cannot be written", EISDIR);
  if (exists && existing == Existing::kKeep) return io_error(path, "is kept as it is", EEXIST);
  if (exists && !S_ISREG(status.st_mode)) {
    Descriptor device{::open(path.c_str(), O_WRONLY | O_CLOEXEC)};
    if (device.number() < 0 || !write_all(device.number(), bytes)) return io_error(path, "cannot be written", errno);
    return path;
  }
  const std::filesystem::path target = exists ? std::filesystem::canonical(path, failed) : std::filesystem::path{path};
  if (failed) return io_error(path, "cannot be written", failed.value());
  const std::string folder = target.has_parent_path() ? target.parent_path().string() : ".";
  std::string temporary;
  Descriptor file{open_temporary(folder + "/." + target.filename().string(), temporary)};
  if (file.number() < 0) return io_error(path, "cannot be written", errno);
  const bool written = (!exists || ::fchmod(file.number(), status.st_mode & 07777) == 0) &&
                       write_all(file.number(), bytes) && ::fsync(file.number()) == 0 && file.close() == 0 &&
                       put_in_place(temporary, target.string(), existing);
  if (!written) {
    const int number = errno;
    ::unlink(temporary.c_str());
    return io_error(path, "cannot be written", number);
  }
  sync_folder(folder);
  return path;
}

void sync_folder(const std::string& folder) {
  const Descriptor descriptor{::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC)};
  if (descriptor.number() >= 0) ::fsync(descriptor.number());
}

}  // namespace ovenwright::files
