#pragma once
#include <cstddef>
#include <cstdint>
#include <cstring>
#if defined(__SSE2__)
#include <emmintrin.h>
#endif

namespace ovenwright::log {

/// Which of the 64 bytes from `p` on are `a` or `b`: bit i for byte i.
inline std::uint64_t mask_of(const char* p, char a, char b) noexcept {
#if defined(__SSE2__)
  const __m128i first = _mm_set1_epi8(a), second = _mm_set1_epi8(b);
  std::uint64_t mask = 0;
  for (int i = 0; i < 4; ++i) {
    const __m128i bytes = _mm_loadu_si128(reinterpret_cast<const __m128i*>(p + 16 * i));
    const __m128i hit = _mm_or_si128(_mm_cmpeq_epi8(bytes, first), _mm_cmpeq_epi8(bytes, second));
    mask |= static_cast<std::uint64_t>(static_cast<std::uint32_t>(_mm_movemask_epi8(hit))) << (16 * i);
  }
  return mask;
#else
  std::uint64_t mask = 0;
  for (int i = 0; i < 64; ++i) mask |= static_cast<std::uint64_t>(p[i] == a || p[i] == b) << i;
  return mask;
#endif
}

}  // namespace ovenwright::log
