#pragma once
#include <optional>
#include <string>
#include <string_view>

namespace ovenwright::files {

/// Which file a window, oven, recipe or board came from, so that a result can be traced to it.
struct Identity {
  std::string name;  ///< the `name` key, else the file's stem
  std::optional<std::string> revision, source;
  std::string file;  ///< path; empty where it was made in memory
  std::string stem;
  std::string sha256;  ///< of the file's bytes, lower-case hex
};

class TomlTable;

/// Takes `name`, `revision` and `source` from a file's root table; the name may be absent.
Identity take_identity(TomlTable& root, const std::string& file, std::string_view text);

}  // namespace ovenwright::files
