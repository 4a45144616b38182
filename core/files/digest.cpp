#include "core/files/digest.h"

#include <openssl/evp.h>

#include <algorithm>
#include <array>
#include <cassert>
#include <memory>

namespace ovenwright::files {

std::string sha256_hex(std::string_view bytes) {
  const std::atomic<bool> never = false;
  return sha256_hex(bytes, never);
}

std::string sha256_hex(std::string_view bytes, const std::atomic<bool>& stop) {
  constexpr std::size_t kPiece = std::size_t{1} << 20;
  const std::unique_ptr<EVP_MD_CTX, decltype(&EVP_MD_CTX_free)> context{EVP_MD_CTX_new(), &EVP_MD_CTX_free};
  [[maybe_unused]] int done = EVP_DigestInit_ex(context.get(), EVP_sha256(), nullptr);
  for (; done == 1 && !bytes.empty(); bytes.remove_prefix(std::min(kPiece, bytes.size()))) {
    if (stop) return {};
    done = EVP_DigestUpdate(context.get(), bytes.data(), std::min(kPiece, bytes.size()));
  }
  std::array<unsigned char, EVP_MAX_MD_SIZE> digest{};
  unsigned int size = 0;
  done &= EVP_DigestFinal_ex(context.get(), digest.data(), &size);
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
