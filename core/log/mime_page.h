#pragma once
#include <optional>
#include <string>
#include <string_view>

namespace ovenwright::log {

/// Whether the bytes begin like a page that was saved in one file with its pictures, as browsers and spreadsheet
/// programs do (RFC 2557).
bool is_mime_page(std::string_view bytes);

/// The HTML documents of it, behind each other; quoted-printable and base64 (RFC 2045) are decoded. Nothing where there
/// is none.
std::optional<std::string> html_of_mime_page(std::string_view bytes);

}  // namespace ovenwright::log
