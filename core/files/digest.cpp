#include "core/files/digest.h"

#include <openssl/evp.h>

#include <array>
#include <cassert>

namespace ovenwright::files {

std::string sha256_hex(std::string_view bytes) {
  std::array<unsigned char, EVP_MAX_MD_SIZE> digest{};
  unsigned int size = 0;
  [[maybe_unused]] const int done = EVP_Digest(bytes.data(), bytes.size(), digest.data(), &size, EVP_sha256(), nullptr);
  assert(done == 1 && "SHA-256 is always there");
  constexpr std::string_view kHex = "0123456789abcdef";
  std::string hex;
  hex.reserve(2 * size);
  for (unsigned int i = 0; i < size; ++i) {
    hex += kHex[digest[i] >> 4];
    hex += kHex[digest[i] & 15];
  }
  return hex;
}

}  // namespace ovenwright::files
