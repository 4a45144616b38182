#include "core/log/converter.h"

#include <unicode/ucnv.h>

#include <algorithm>
#include <array>

#include "core/log/text_scan.h"

namespace ovenwright::log {

void Converter::Close::operator()(UConverter* converter) const { ucnv_close(converter); }

std::optional<Converter> Converter::open(const std::string& encoding) {
  if (encoding.empty()) return std::nullopt;  // ICU would open the platform's default
  UErrorCode status = U_ZERO_ERROR;
  UConverter* const converter = ucnv_open(encoding.c_str(), &status);
  if (U_FAILURE(status)) return std::nullopt;
  return Converter{converter};
}

void Converter::convert(std::string_view bytes, std::string& text) {
  UErrorCode status = U_ZERO_ERROR;
  const std::unique_ptr<UConverter, Close> utf8{ucnv_open("UTF-8", &status)};
  if (U_FAILURE(status)) return;
  std::array<UChar, 4096> pivot;
  UChar* pivot_source = pivot.data();
  UChar* pivot_target = pivot.data();
  const char* source = bytes.data();
  const char* const source_end = source + bytes.size();
  std::size_t used = text.size();
  bool reset = true;
  do {
    // Three bytes of UTF-8 for two of most encodings, and room to get on with where that is not enough.
    text.resize(used + static_cast<std::size_t>(source_end - source) * 3 / 2 + 256);
    char* target = text.data() + used;
    status = U_ZERO_ERROR;
    ucnv_convertEx(utf8.get(), converter_.get(), &target, text.data() + text.size(), &source, source_end, pivot.data(),
                   &pivot_source, &pivot_target, pivot.data() + pivot.size(), reset, true, &status);
    used = static_cast<std::size_t>(target - text.data());
    reset = false;
  } while (status == U_BUFFER_OVERFLOW_ERROR);
  text.resize(used);
}

void Converter::append_utf8(std::string_view bytes, bool line_wise, std::string& text) {
  if (!line_wise) {
    convert(bytes, text);
    return;
  }
  constexpr std::size_t kStretch = 4096;
  text.reserve(text.size() + bytes.size() + bytes.size() / 32);
  while (!bytes.empty()) {
    const auto line_end = bytes.size() <= kStretch ? std::string_view::npos : bytes.find('\n', kStretch);
    const auto stretch = bytes.substr(0, line_end == std::string_view::npos ? line_end : line_end + 1);
    if (is_ascii(stretch)) {
      text.append(stretch);
    } else {
      convert(stretch, text);
    }
    bytes.remove_prefix(stretch.size());
  }
}

std::u16string Converter::utf16(std::string_view bytes) {
  std::u16string text(bytes.size() * 2 + 16, u'\0');
  UErrorCode status = U_ZERO_ERROR;
  const int32_t length = ucnv_toUChars(converter_.get(), text.data(), static_cast<int32_t>(text.size()), bytes.data(),
                                       static_cast<int32_t>(bytes.size()), &status);
  text.resize(U_FAILURE(status) ? 0 : std::min(static_cast<std::size_t>(length), text.size()));
  return text;
}

bool same_encoding_name(const std::string& a, const std::string& b) {
  return ucnv_compareNames(a.c_str(), b.c_str()) == 0;
}

}  // namespace ovenwright::log
