#pragma once
#include <atomic>
#include <string>
#include <string_view>

namespace ovenwright::files {

/// SHA-256 (FIPS 180-4) of the bytes as 64 lower-case hex digits. Cost: O(n), thread-safe.
std::string sha256_hex(std::string_view bytes);
/// The same beside other work: empty soon after `stop` is set.
std::string sha256_hex(std::string_view bytes, const std::atomic<bool>& stop);

}  // namespace ovenwright::files
