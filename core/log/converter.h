#pragma once
#include <memory>
#include <optional>
#include <string>
#include <string_view>

struct UConverter;

namespace ovenwright::log {

/// A converter of one encoding to Unicode. What the encoding does not allow becomes U+FFFD.
class Converter {
 public:
  /// Empty where no such encoding is known.
  static std::optional<Converter> open(const std::string& encoding);

  /// The bytes as UTF-8, appended. `line_wise`: the encoding keeps ASCII as it is and no byte inside a character is a
  /// line feed, so stretches of ASCII lines are copied. Cost: O(n).
  void append_utf8(std::string_view bytes, bool line_wise, std::string& text);
  /// The same as UTF-16, for short samples.
  std::u16string utf16(std::string_view bytes);

 private:
  struct Close {
    void operator()(UConverter* converter) const;
  };
  explicit Converter(UConverter* converter) : converter_(converter) {}
  void convert(std::string_view bytes, std::string& text);
  std::unique_ptr<UConverter, Close> converter_;
};

/// Whether two names mean one encoding, apart from case and punctuation.
bool same_encoding_name(const std::string& a, const std::string& b);

}  // namespace ovenwright::log
