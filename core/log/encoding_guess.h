#pragma once
#include <string>
#include <string_view>

namespace ovenwright::log {

/// The encoding in which a text that is neither ASCII nor UTF-8 makes most sense.
struct EncodingGuess {
  std::string encoding;  ///< as Decoded::encoding
  bool certain = true;   ///< false where another encoding gives another text that is nearly as plausible
};

/// Decodes a sample in every candidate encoding and weighs the results: words that stand in logs ("温度", "时间", "Zeit
/// für", "°C") most, then whether characters are common ones, letters stand beside letters of their own script, and
/// nothing is left undecodable; last, what a statistical detector says. The sample is taken from lines with bytes from
/// 0x80 on. Cost: O(sample), some 64 kB whatever the size.
EncodingGuess guess_encoding(std::string_view bytes);

/// The name used in results for an encoding that may go by other names; empty where no such encoding is known.
std::string canonical_encoding(const std::string& name);

/// The name of the widest converter for a canonical encoding (windows-949 for EUC-KR).
std::string converter_for(const std::string& encoding);

}  // namespace ovenwright::log
