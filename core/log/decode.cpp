#include <fmt/format.h>

#include <algorithm>
#include <optional>

#include "core/log/converter.h"
#include "core/log/encoding_guess.h"
#include "core/log/file_signature.h"
#include "core/log/grid.h"
#include "core/log/text_scan.h"

namespace ovenwright::log {
namespace {

constexpr std::string_view kReplacement = "\xEF\xBF\xBD";  // U+FFFD

struct Unicode {
  std::string name;
  std::size_t mark = 0;  ///< bytes of the byte order mark
};

std::optional<Unicode> by_mark(std::string_view bytes) {
  using namespace std::string_view_literals;
  if (bytes.starts_with("\xEF\xBB\xBF"sv)) return Unicode{"UTF-8", 3};
  if (bytes.starts_with("\xFF\xFE\0\0"sv)) return Unicode{"UTF-32LE", 4};
  if (bytes.starts_with("\0\0\xFE\xFF"sv)) return Unicode{"UTF-32BE", 4};
  if (bytes.starts_with("\xFF\xFE"sv)) return Unicode{"UTF-16LE", 2};
  if (bytes.starts_with("\xFE\xFF"sv)) return Unicode{"UTF-16BE", 2};
  return std::nullopt;
}

/// UTF-16 without a mark: digits, delimiters and line ends have a zero high byte, so zeros stand on one side of the
/// pairs.
std::optional<Unicode> by_zeros(std::string_view bytes) {
  constexpr std::size_t kSample = 64 * 1024;
  const std::size_t pairs = std::min(bytes.size(), kSample) / 2;
  std::size_t first = 0, second = 0;
  for (std::size_t i = 0; i < pairs; ++i) {
    first += bytes[2 * i] == '\0';
    second += bytes[2 * i + 1] == '\0';
  }
  const auto one_sided = [pairs](std::size_t many, std::size_t few) {
    return many * 10 >= pairs * 3 && few * 20 <= many;
  };
  if (pairs == 0) return std::nullopt;
  if (one_sided(second, first)) return Unicode{"UTF-16LE", 0};
  if (one_sided(first, second)) return Unicode{"UTF-16BE", 0};
  return std::nullopt;
}

/// Zeros and end-of-file marks that a device left behind the text.
std::size_t padding(std::string_view bytes) {
  const auto last = bytes.find_last_not_of(std::string_view{"\0\x1A", 2});
  return bytes.size() - (last == std::string_view::npos ? 0 : last + 1);
}

bool binary(const TextScan& scan, std::size_t size) { return scan.control * 100 > size; }

Error binary_error(std::string_view bytes, std::size_t offset, std::string_view what) {
  const int line = line_of(bytes, offset);
  const auto byte = static_cast<unsigned char>(bytes[offset]);
  auto found = what.empty() ? fmt::format("binary data (byte 0x{:02X} at offset {})", byte, offset) : std::string{what};
  auto message = fmt::format("found {}, expected a text log, a workbook or an HTML table", found);
  return {ErrorCode::kParse,
          std::move(message),
          {.file = {}, .line = line, .column = 0},
          std::move(found),
          "a text log, a workbook or an HTML table"};
}

/// Converts what follows the mark. Errors only where what comes out is no text.
Result<Decoded> convert(std::string_view bytes, const Unicode& encoding, bool certain) {
  auto converter = Converter::open(converter_for(encoding.name));
  if (!converter) {
    return Error{ErrorCode::kBadArgument,
                 fmt::format("no encoding named \"{}\" is known", encoding.name),
                 {},
                 encoding.name,
                 "the name of a character encoding"};
  }
  Decoded decoded;
  decoded.encoding = encoding.name;
  decoded.certain = certain;
  converter->append_utf8(bytes.substr(encoding.mark),
                         !encoding.name.starts_with("UTF-") && !encoding.name.starts_with("ISO-2022"), decoded.utf8);
  decoded.utf8.resize(decoded.utf8.size() - padding(decoded.utf8));
  const auto scan = scan_text(decoded.utf8);
  if (binary(scan, decoded.utf8.size())) return binary_error(decoded.utf8, scan.first_control, {});
  return decoded;
}

/// With an encoding that the user fixed every byte must be allowed, but for a character that the end of the file cuts
/// short.
Result<Decoded> decode_as(std::string_view bytes, const std::string& name) {
  auto encoding = canonical_encoding(name);
  const auto mark = by_mark(bytes);
  const bool little_or_big = encoding == "UTF-16" || encoding == "UTF-32";
  if (little_or_big && mark && mark->name.starts_with(encoding)) encoding = mark->name;
  if (encoding.empty()) encoding = name;
  const std::size_t skip = mark && mark->name == encoding ? mark->mark : 0;
  auto decoded = convert(bytes, {encoding, skip}, true);
  if (!decoded) return decoded;
  auto& text = decoded->utf8;
  const auto bad = text.find(kReplacement);
  if (bad != std::string::npos && bad + kReplacement.size() == text.size()) {
    text.resize(bad);
  } else if (bad != std::string::npos && bytes.find(kReplacement) == std::string_view::npos) {
    auto found = fmt::format("bytes that {} does not allow", encoding);
    return Error{ErrorCode::kParse,
                 fmt::format("found {}, expected text in that encoding", found),
                 {.file = {}, .line = line_of(text, bad), .column = 0},
                 found,
                 fmt::format("text in {}", encoding)};
  }
  return decoded;
}

/// Without what a terminal was told between the characters (ECMA-48 control sequences), as in a captured session.
std::string without_escapes(std::string_view text) {
  std::string plain;
  plain.reserve(text.size());
  for (std::size_t i = 0; i < text.size();) {
    if (text.substr(i).starts_with("\x1B[")) {
      std::size_t end = i + 2;
      while (end < text.size() && text[end] >= 0x20 && text[end] < 0x40) ++end;
      if (end < text.size() && text[end] >= 0x40 && text[end] < 0x7F) {
        i = end + 1;
        continue;
      }
    }
    plain += text[i++];
  }
  return plain;
}

/// Well-formed UTF-8 stays where it is; padding and a cut last character cost a copy without them.
Decoded keep(std::string_view bytes, std::size_t mark, const TextScan& scan, std::size_t left_out) {
  Decoded decoded;
  decoded.encoding = "UTF-8";
  decoded.skip = mark;
  const std::size_t drop = left_out + scan.cut_tail;
  if (drop == 0) {
    decoded.unchanged = true;
  } else {
    decoded.skip = 0;
    decoded.utf8 = bytes.substr(mark, bytes.size() - mark - scan.cut_tail);
  }
  return decoded;
}

/// @param escapes  control sequences of a terminal are left out; what that puts together is no other one
Result<Decoded> decode_text(std::string_view bytes, const std::string& known_encoding, unsigned threads, bool escapes) {
  if (const auto what = foreign_format(bytes); !what.empty()) return binary_error(bytes, 0, what);
  const bool known_utf8 = same_encoding_name(known_encoding, "UTF-8");
  if (!known_encoding.empty() && !known_utf8) return decode_as(bytes, known_encoding);

  auto mark = by_mark(bytes);
  if (!mark && !known_utf8) mark = by_zeros(bytes);
  if (mark && mark->name != "UTF-8" && !known_utf8) return convert(bytes, *mark, true);

  const std::size_t skip = mark ? mark->mark : 0;
  const std::size_t left_out = padding(bytes);
  const auto text = bytes.substr(0, bytes.size() - left_out);
  const auto scan = scan_text(text, threads);
  if (escapes && scan.control > 0 && text.find('\x1B') != std::string_view::npos) {
    if (text.find("\x1B$") != std::string_view::npos) return convert(text, {"ISO-2022-JP", 0}, true);
    if (const auto plain = without_escapes(text); plain.size() < text.size()) {
      auto decoded = decode_text(plain, known_encoding, threads, false);
      if (decoded && decoded->unchanged) {
        decoded->utf8 = plain.substr(decoded->skip);
        decoded->skip = 0;
        decoded->unchanged = false;
      }
      return decoded;
    }
  }
  if (text.empty() && !bytes.empty()) return binary_error(bytes, 0, {});
  if (binary(scan, text.size())) return binary_error(text, scan.first_control, {});
  const bool only_cut = scan.multi_byte == 0 && scan.cut_tail > 0 && skip == 0;
  if (scan.utf8() && !only_cut) return keep(text, skip, scan, left_out);
  if (known_utf8) return decode_as(text, "UTF-8");
  // A few damaged bytes in what is UTF-8 otherwise; by chance other encodings hold few such sequences.
  if (skip > 0 || (scan.multi_byte > 0 && scan.ill_formed * 20 <= scan.multi_byte)) {
    return convert(text, {"UTF-8", skip}, false);
  }
  const auto guess = guess_encoding(text);
  return convert(text, {guess.encoding, 0}, guess.certain);
}

}  // namespace

Result<Decoded> decode(std::string_view bytes, const std::string& known_encoding, unsigned threads) {
  return decode_text(bytes, known_encoding, threads, true);
}

}  // namespace ovenwright::log
