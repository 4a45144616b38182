#pragma once
#include <string>
#include <string_view>

#include "core/log/layout.h"
#include "core/units/result.h"

namespace ovenwright::log {

/// Reads layout.toml. Every key may be absent: what a layout does not say is found from the log.
/// Errors: kIo; kParse with line and column for an unknown key, a wrong type, a word that is not known (unit, form,
/// kind of time, date order, thermocouple type), a column below 1 or taken twice.
Result<Layout> load_layout(const std::string& path);
Result<Layout> parse_layout(const std::string& file, std::string_view text);
/// A file, or a name looked up as files::find_profile does.
Result<Layout> find_layout(const std::string& name_or_path);

/// The layout as TOML; parsing it gives the same layout.
std::string layout_text(const Layout& layout);
/// Writes a new file, never over an existing one. Errors: kIo.
Result<std::string> save_layout(const Layout& layout, const std::string& path);

}  // namespace ovenwright::log
