#pragma once
#include <optional>
#include <string>
#include <vector>

#include "core/files/identity.h"
#include "core/units/result.h"

namespace ovenwright::files {

/// The folders of profiles: each holds files of one kind.
enum class Kind { kWindow, kOven, kRecipe, kBoard, kLayout };
const char* kind_folder(Kind kind);  ///< "windows", "ovens", "recipes", "boards", "layouts"
const char* kind_word(Kind kind);    ///< "window", "oven", "recipe", "board", "layout"

/// $XDG_DATA_HOME/ovenwright/<kind>, by default ~/.local/share/ovenwright/<kind>; empty without a home.
std::string user_folder(Kind kind);
/// Shipped profiles of one kind: $OVENWRIGHT_PROFILES, else the share folder beside the program's bin folder, else the
/// source tree the program was built from. The folder need not exist.
std::string shipped_folder(Kind kind);

/// A profile as it stands in a listing.
struct Listed {
  std::string stem, title;
  std::optional<std::string> revision, source;
  std::string file;
  bool users = false;                  ///< from the user's data folder
  std::optional<std::string> trouble;  ///< why the file cannot be parsed; then title is the stem
};

/// All profiles of a kind by stem: the user's, then what is shipped. Errors: kIo where a folder cannot be read.
Result<std::vector<Listed>> list_profiles(Kind kind);

/// The file meant by a name or a path. With a '/' or the ending .toml it is a path. Else a name: the stem or the
/// `name` key, first in the user's folder, then shipped; of several files of one `name` in a folder the highest
/// revision (digits compared as numbers). Else a file of that name in the working folder.
/// Errors: kIo, naming what was meant where a name is near.
Result<std::string> find_profile(Kind kind, const std::string& name_or_path);

/// Why a profile could not be found or read, told at the place in another file that names it. A file that cannot be
/// opened is named in the message; what stands wrong in one keeps its own place.
Error told_at(Error error, const Place& place);

/// Where a profile is saved as a new revision unless told otherwise: the user's folder of its kind, "sac305_rev2.toml"
/// from stem and revision.
std::string revision_path(Kind kind, const Identity& identity, const std::string& revision);

/// Saves text as a new file; folders are made as needed, a file that is there stays.
/// Errors: kBadArgument where the revision is empty or the one that `identity` has; kIo where the file exists or cannot
/// be written.
Result<std::string> write_revision(Kind kind, const Identity& identity, const std::string& revision,
                                   const std::string& path, const std::string& text);

/// "9" before "10", "rev7" before "rev12": text with runs of digits compared as numbers.
bool natural_less(const std::string& a, const std::string& b);

}  // namespace ovenwright::files
