#include "core/log/mime_page.h"

#include <algorithm>

namespace ovenwright::log {
namespace {

constexpr std::size_t kMostHeader = 8192;

std::string lower_case(std::string_view text) {
  std::string lower{text};
  std::ranges::transform(lower, lower.begin(),
                         [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c; });
  return lower;
}

/// Where the lines of a header end, behind the empty line; npos: nowhere near.
std::size_t end_of_header(std::string_view text) {
  const auto head = text.substr(0, kMostHeader);
  const auto unix_end = head.find("\n\n"), other_end = head.find("\r\n\r\n");
  if (other_end < unix_end) return other_end + 4;
  return unix_end == std::string_view::npos ? unix_end : unix_end + 2;
}

int hex_digit(char c) {
  if (c >= '0' && c <= '9') return c - '0';
  if (c >= 'A' && c <= 'F') return c - 'A' + 10;
  return c >= 'a' && c <= 'f' ? c - 'a' + 10 : -1;
}

std::string from_quoted_printable(std::string_view text) {
  std::string plain;
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (text[i] != '=') {
      plain += text[i];
    } else if (text.substr(i + 1).starts_with("\r\n")) {
      i += 2;
    } else if (text.substr(i + 1).starts_with('\n')) {
      ++i;
    } else if (i + 2 < text.size() && hex_digit(text[i + 1]) >= 0 && hex_digit(text[i + 2]) >= 0) {
      plain += static_cast<char>(16 * hex_digit(text[i + 1]) + hex_digit(text[i + 2]));
      i += 2;
    } else {
      plain += '=';
    }
  }
  return plain;
}

std::string from_base64(std::string_view text) {
  constexpr std::string_view kDigits = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
  std::string plain;
  unsigned held = 0;
  int bits = 0;
  for (const char c : text) {
    const auto digit = kDigits.find(c);
    if (digit == std::string_view::npos) continue;
    held = (held << 6U | static_cast<unsigned>(digit)) & 0xFFFFU;
    bits += 6;
    if (bits < 8) continue;
    bits -= 8;
    plain += static_cast<char>(held >> static_cast<unsigned>(bits) & 0xFFU);
  }
  return plain;
}

/// The text of a part where it is HTML.
std::string html_of_part(std::string_view part) {
  const auto body = end_of_header(part);
  if (body == std::string_view::npos) return {};
  const std::string header = lower_case(part.substr(0, body));
  if (header.find("text/html") == std::string::npos) return {};
  if (header.find("quoted-printable") != std::string::npos) return from_quoted_printable(part.substr(body));
  if (header.find("base64") != std::string::npos) return from_base64(part.substr(body));
  return std::string{part.substr(body)};
}

}  // namespace

bool is_mime_page(std::string_view bytes) {
  const auto end = end_of_header(bytes);
  if (end == std::string_view::npos) return false;
  const std::string header = lower_case(bytes.substr(0, end));
  return header.find("mime-version:") != std::string::npos && header.find("content-type:") != std::string::npos &&
         (header.find("multipart/") != std::string::npos || header.find("text/html") != std::string::npos);
}

std::optional<std::string> html_of_mime_page(std::string_view bytes) {
  std::string html;
  const auto end = end_of_header(bytes);
  const std::string_view header = bytes.substr(0, std::min(end, bytes.size()));
  auto at = lower_case(header).find("boundary=");
  if (at == std::string::npos) {
    html = html_of_part(bytes);
  } else {
    auto name = header.substr(at + std::string_view{"boundary="}.size());
    const bool quoted = name.starts_with('"');
    if (quoted) name.remove_prefix(1);
    const std::string boundary = "--" + std::string{name.substr(0, name.find_first_of(quoted ? "\"" : "; \r\n"))};
    if (boundary.size() < 3) return std::nullopt;
    for (auto from = bytes.find(boundary); from != std::string_view::npos;) {
      from += boundary.size();
      const auto to = bytes.find(boundary, from);
      const auto part = bytes.substr(from, to == std::string_view::npos ? to : to - from);
      // Behind the boundary its line ends.
      const auto line = part.find('\n');
      if (line != std::string_view::npos) html += html_of_part(part.substr(line + 1));
      from = to;
    }
  }
  return html.empty() ? std::nullopt : std::optional(std::move(html));
}

}  // namespace ovenwright::log
