#pragma once
#include <cstddef>
#include <cstdint>
#if defined(__SSE2__)
#include <emmintrin.h>
#endif

namespace ovenwright::log {

/// Which of the 64 bytes from `p` on are `wanted`: bit i for byte i.
[[gnu::always_inline]] inline std::uint64_t mask_of(const char* p, char wanted) noexcept {
#if defined(__SSE2__)
  const __m128i each = _mm_set1_epi8(wanted);
  const auto sixteen = [&each, p](int i) {
    const __m128i bytes = _mm_loadu_si128(reinterpret_cast<const __m128i*>(p + 16 * i));
    return static_cast<std::uint64_t>(static_cast<std::uint32_t>(_mm_movemask_epi8(_mm_cmpeq_epi8(bytes, each))));
  };
  return sixteen(0) | sixteen(1) << 16 | sixteen(2) << 32 | sixteen(3) << 48;
#else
  std::uint64_t mask = 0;
  for (int i = 0; i < 64; ++i) mask |= static_cast<std::uint64_t>(p[i] == wanted) << i;
  return mask;
#endif
}

}  // namespace ovenwright::log
