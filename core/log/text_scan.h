#pragma once
#include <cstddef>
#include <string_view>

namespace ovenwright::log {

/// What one pass over the bytes of a file finds out about them.
struct TextScan {
  static constexpr std::size_t kNone = static_cast<std::size_t>(-1);
  std::size_t multi_byte = 0;            ///< well-formed UTF-8 sequences of two to four bytes
  std::size_t ill_formed = 0;            ///< bytes from 0x80 on that belong to no well-formed sequence
  std::size_t first_ill_formed = kNone;  ///< offset
  std::size_t control = 0;            ///< bytes below 0x20 but tab, line feed, vertical tab, form feed, carriage return
  std::size_t first_control = kNone;  ///< offset
  std::size_t cut_tail = 0;           ///< bytes of a sequence that the end of the data cut short; not in ill_formed

  bool ascii() const { return multi_byte == 0 && ill_formed == 0 && cut_tail == 0; }
  bool utf8() const { return ill_formed == 0; }
};

/// Counts control bytes and checks UTF-8 (Unicode 15, table 3-7: no overlong forms, no surrogates, at most U+10FFFF).
/// @param threads  at most so many, each on a part of some megabytes
/// Cost: O(n); blocks of plain ASCII are skipped 64 bytes at a time. Thread-safe.
TextScan scan_text(std::string_view bytes, unsigned threads = 1);

/// Whether every byte is below 0x80.
bool is_ascii(std::string_view bytes) noexcept;

/// The line, from 1, in which the byte at `offset` stands.
int line_of(std::string_view bytes, std::size_t offset) noexcept;

}  // namespace ovenwright::log
