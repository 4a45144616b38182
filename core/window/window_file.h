#pragma once
#include <string>
#include <string_view>

#include "core/units/result.h"
#include "core/window/window.h"

namespace ovenwright::window {

/// Reads window.toml and checks every rule for windows. Errors: kIo; kParse with line and column for an unknown key
/// (naming the one that was meant), a wrong type, an unknown measure, a parameter that the measure does not have or
/// that it needs, limits crossed, a target not inside, no target where the margin needs one, Tc without classification,
/// an unknown thermocouple class.
Result<ProcessWindow> load(const std::string& path);
/// The same from text, as it is typed; `file` stands in messages.
Result<ProcessWindow> parse(const std::string& file, std::string_view text);
/// A file, or a name looked up as files::find_profile does: "sac305", "SAC305, general".
Result<ProcessWindow> find(const std::string& name_or_path);

/// The window as the text of its file. With the text it was read from, values are changed at their places and comments
/// and order stay; a requirement belongs to the [[requirement]] at its `line`, one with line 0 is new. Without it, or
/// where the text cannot be changed in place, it is written anew. Parsing the result gives the same window.
std::string window_text(const ProcessWindow& window, std::string_view original = {});

/// Saves an edited window as a new revision in a new file; the file it came from stays, and nothing is overwritten.
/// The window is checked first as load() does. Returns the window as read back from the new file.
/// Errors: kBadArgument where the revision is empty or the one it had; kIo where the file exists or cannot be written;
/// those of load().
Result<ProcessWindow> save_revision(ProcessWindow window, const std::string& revision, const std::string& path);
/// Where save_revision() puts a window unless told otherwise: the user's data folder, "sac305_rev2.toml" from stem and
/// revision.
std::string revision_path(const ProcessWindow& window, const std::string& revision);

}  // namespace ovenwright::window
