#pragma once
#include <string>
#include <string_view>

#include "core/units/result.h"

namespace ovenwright::files {

/// The whole of a file that people edit, as bytes.
/// Errors: kIo (missing, a folder, a pipe or device, no permission, more than 4 MB: no such file is that long).
Result<std::string> read_text(const std::string& path);

/// Whether a write may take the place of a file that is there.
enum class Existing { kReplace, kKeep };

/// Writes the bytes beside `path` and moves them there once they are on disk, so that a reader sees the old file,
/// none, or the whole new one, and a failed write leaves nothing behind. A path that is no regular file (a pipe,
/// a terminal) is written to directly.
/// Errors: kIo; with kKeep also where the file exists.
Result<std::string> write_file(const std::string& path, std::string_view bytes, Existing existing);

/// Puts a folder's list of names on disk: a new or renamed file is there for good only then.
void sync_folder(const std::string& folder);

}  // namespace ovenwright::files
