#include "core/log/file_signature.h"

#include <algorithm>
#include <array>

namespace ovenwright::log {

namespace {

/// Of the files that hold others within them by the compound binary format, told by the names of its streams.
std::string_view compound_format(std::string_view bytes) {
  struct Stream {
    std::string_view name, what;
  };
  static constexpr std::array kStreams = {Stream{"EncryptedPackage", "a workbook with a password"},
                                          Stream{"EncryptionInfo", "a workbook with a password"},
                                          Stream{"Workbook", "a workbook of the old binary kind (.xls)"},
                                          Stream{"Book", "a workbook of the old binary kind (.xls)"},
                                          Stream{"WordDocument", "a word processor's document of the old binary kind"},
                                          Stream{"PowerPoint Document", "a presentation of the old binary kind"}};
  for (const Stream& stream : kStreams) {
    std::string wide;  // an entry of the directory begins with the name in UTF-16
    for (const char c : stream.name) wide += {c, '\0'};
    wide += {'\0', '\0'};
    if (bytes.find(wide) != std::string_view::npos) return stream.what;
  }
  return "a workbook of the old binary kind (.xls) or one with a password";
}

}  // namespace

std::string_view foreign_format(std::string_view bytes) {
  struct Signature {
    std::string_view first_bytes, what;
  };
  using namespace std::string_view_literals;
  static constexpr std::array kSignatures = {
      Signature{"%PDF-"sv, "a PDF document"sv},
      Signature{"{\\rtf"sv, "a rich text document"sv},
      Signature{"\x89PNG\r\n\x1A\n"sv, "a PNG picture"sv},
      Signature{"\xFF\xD8\xFF"sv, "a JPEG picture"sv},
      Signature{"GIF8"sv, "a GIF picture"sv},
      Signature{"SQLite format 3\0"sv, "an SQLite database"sv},
      Signature{"7z\xBC\xAF\x27\x1C"sv, "a 7z archive, which is not unpacked here"sv},
      Signature{"Rar!\x1A\x07"sv, "a RAR archive, which is not unpacked here"sv},
      Signature{"\xFD"
                "7zXZ\0"sv,
                "an xz archive, which is not unpacked here"sv},
      Signature{"\x28\xB5\x2F\xFD"sv, "a Zstandard archive, which is not unpacked here"sv},
      Signature{"BZh9"sv, "a bzip2 archive, which is not unpacked here"sv},
      Signature{"\x7F"
                "ELF"sv,
                "a program"sv},
  };
  if (bytes.starts_with("\xD0\xCF\x11\xE0\xA1\xB1\x1A\xE1"sv)) return compound_format(bytes);
  constexpr std::size_t kTarMark = 257;
  if (bytes.size() > kTarMark && bytes.substr(kTarMark).starts_with("ustar"))
    return "a tar archive, which is not unpacked here";
  const auto found =
      std::ranges::find_if(kSignatures, [&](const Signature& s) { return bytes.starts_with(s.first_bytes); });
  return found == kSignatures.end() ? std::string_view{} : found->what;
}

std::string markup_head(std::string_view bytes) {
  constexpr std::size_t kHead = 8192;
  std::string head{bytes.substr(0, kHead)};
  std::erase(head, '\0');
  std::ranges::transform(head, head.begin(),
                         [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c; });
  const auto first = head.find_first_not_of(" \t\r\n\xEF\xBB\xBF\xFE\xFF");
  return first == std::string::npos || head[first] != '<' ? std::string{} : head.substr(first);
}

}  // namespace ovenwright::log
