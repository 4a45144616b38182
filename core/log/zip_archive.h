#pragma once
#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/log/unpack_budget.h"
#include "core/units/result.h"

struct zip;

namespace ovenwright::log {

bool is_zip(std::string_view bytes);

/// The members of a zip archive in memory; the bytes must outlive it. Not for use from several threads at once.
class ZipArchive {
 public:
  struct Member {
    std::string name;  ///< with '/' between folders
    std::uint64_t index = 0;
    std::uint64_t stated_size = 0;  ///< unpacked, as the directory states it
    bool encrypted = false;
    bool folder() const { return name.ends_with('/'); }
  };

  /// Errors: kParse where the archive's directory is missing or damaged.
  static Result<ZipArchive> open(std::string_view bytes);
  const std::vector<Member>& members() const { return members_; }
  /// By its name, upper and lower case alike as in Open Packaging Conventions; null where there is none.
  const Member* find(std::string_view name) const;

  /// Unpacks a member piece by piece into `take`, which returns false to stop early (that is no error).
  /// Errors: kParse (encrypted, damaged, packed in a way that is not known, over the budget).
  std::optional<Error> read(const Member& member, UnpackBudget& budget,
                            const std::function<bool(std::string_view)>& take) const;
  /// The whole member, or its first `most` bytes.
  Result<std::string> read_text(const Member& member, UnpackBudget& budget, std::size_t most = SIZE_MAX) const;

 private:
  struct Discard {
    void operator()(zip* archive) const;
  };
  std::unique_ptr<zip, Discard> archive_;
  std::vector<Member> members_;
};

}  // namespace ovenwright::log
