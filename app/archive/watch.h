#pragma once
#include <chrono>
#include <cstdint>
#include <filesystem>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "app/archive/archive.h"
#include "app/archive/watch_rules.h"

namespace ovenwright::archive {

/// What became of one run of a file that appeared, or of the file where it could not be read.
struct Watched {
  std::string file;  ///< path
  std::optional<Error> error;
  std::string id;
  bool already = false;  ///< the archive had this log before
  judge::Verdict verdict = judge::Verdict::kUndetermined;
  std::optional<double> margin;
  std::string lot;                   ///< that it was kept in
  std::optional<RunTime> time = {};  ///< that was taken; absent for an error
};

/// Judges and keeps the logs of a folder. A file counts as written when it looks the same in two looks `settle` apart.
/// One that cannot be read is named once and tried again when it has changed; where the archive cannot take it, it is
/// named once and tried again until it can. The logs stay where they are.
class FolderWatch {
 public:
  /// `archive` must outlive it.
  FolderWatch(std::string folder, std::vector<WatchRule> rules, Archive& archive,
              std::chrono::milliseconds settle = std::chrono::seconds{2});

  /// Looks at the folder once; to be called again every second or so. Errors: kIo where the folder cannot be read.
  /// @param most  takes no further file once it has so many results; the others are left for the next look
  Result<std::vector<Watched>> look(std::size_t most = SIZE_MAX);
  /// Whether files are there that are still being written, or that the archive could not take.
  bool isWaiting() const;
  /// Whether the archive could not take files that are written.
  bool isRefused() const;

 private:
  struct Seen {
    std::uintmax_t bytes = 0;
    std::filesystem::file_time_type changed{};
    std::chrono::steady_clock::time_point since{};
    bool done = false, told = false;
    friend bool sameFile(const Seen& a, const Seen& b) { return a.bytes == b.bytes && a.changed == b.changed; }
  };
  std::vector<Watched> take(const std::filesystem::path& path, const WatchRule& rule, Seen& seen);

  std::string m_folder;
  std::vector<WatchRule> m_rules;
  Archive& m_archive;
  std::chrono::milliseconds m_settle;
  std::map<std::string, Seen> m_seen;  ///< by file name
};

}  // namespace ovenwright::archive
