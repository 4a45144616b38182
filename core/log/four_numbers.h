#pragma once
#include <cstddef>
#include <cstdint>

#include "core/log/plain_number.h"
#if defined(__x86_64__) && defined(__GNUC__)
#include <immintrin.h>
#define OVENWRIGHT_FOUR_NUMBERS __attribute__((target("avx2,bmi,popcnt")))
#endif

namespace ovenwright::log {

/// Whether this processor has what FourNumbers needs: 256-bit vectors of whole numbers.
inline bool four_numbers_supported() {
#if defined(OVENWRIGHT_FOUR_NUMBERS)
  return __builtin_cpu_supports("avx2") && __builtin_cpu_supports("bmi") && __builtin_cpu_supports("popcnt");
#else
  return false;
#endif
}

#if defined(OVENWRIGHT_FOUR_NUMBERS)

/// Four neighbouring cells as numbers at once: each at most eight characters, digits with at most one decimal sign
/// among or in front of them, no minus. Exactly rounded for the reason read_plain_number() states: a whole number below
/// 10^8 over a power of ten up to 10^7.
class FourNumbers {
 public:
  OVENWRIGHT_FOUR_NUMBERS explicit FourNumbers(char decimal) : sign_(_mm256_set1_epi8(decimal)) {}

  /// @param base  what offsets count from; 8 bytes in front of every cell's end can be read
  /// @param ends  offsets behind the four cells; ends[-1] is the one behind the cell before them, and so just in front
  ///              of the first
  /// @param places, at  the numbers go to places[k][at]
  /// Returns a bit for each cell that is of another kind; its value is then of no meaning.
  [[gnu::always_inline]] OVENWRIGHT_FOUR_NUMBERS unsigned read(const char* base, const std::uint32_t* ends,
                                                               double* const* places, std::size_t at) const {
    const __m128i end = _mm_loadu_si128(reinterpret_cast<const __m128i*>(ends));
    const __m128i before = _mm_loadu_si128(reinterpret_cast<const __m128i*>(ends - 1));
    const __m256i length = _mm256_cvtepi32_epi64(_mm_sub_epi32(_mm_sub_epi32(end, before), _mm_set1_epi32(1)));
    // The last character of each in the highest byte, zeros in front of the first.
    __m256i word = _mm256_set_epi64x(word_before(base + ends[3]), word_before(base + ends[2]),
                                     word_before(base + ends[1]), word_before(base + ends[0]));
    const __m256i all = _mm256_set1_epi64x(-1), zero = _mm256_setzero_si256();
    const __m256i inside =
        _mm256_sllv_epi64(all, _mm256_sub_epi64(_mm256_set1_epi64x(64), _mm256_slli_epi64(length, 3)));
    const __m256i signs = _mm256_and_si256(_mm256_cmpeq_epi8(word, sign_), inside);
    // Digits behind the sign stay where they are, those before it move up; the sign drops out.
    const __m256i none = _mm256_cmpeq_epi64(signs, zero);
    const __m256i behind = _mm256_cmpeq_epi8(_mm256_xor_si256(signs, _mm256_add_epi64(signs, all)), zero);
    const __m256i keeps = _mm256_or_si256(behind, none);
    word = _mm256_and_si256(_mm256_xor_si256(word, _mm256_set1_epi8('0')), inside);
    word = _mm256_blendv_epi8(_mm256_slli_epi64(word, 8), word, keeps);
    // A second sign, or any other character, is no digit. A cell is too long, empty, or a sign alone.
    const __m256i other = _mm256_or_si256(_mm256_add_epi8(word, _mm256_set1_epi8(0x76)), word);
    const __m256i digits = _mm256_add_epi64(length, _mm256_andnot_si256(none, all));
    const __m256i long_or_empty = _mm256_or_si256(_mm256_cmpgt_epi64(length, _mm256_set1_epi64x(8)),
                                                  _mm256_cmpgt_epi64(_mm256_set1_epi64x(1), digits));
    const __m256i bad = _mm256_or_si256(_mm256_and_si256(other, _mm256_set1_epi8(-128)), long_or_empty);
    const __m256i whole = whole_number(word);
    const __m256i kMantissa = _mm256_set1_epi64x(0x4330000000000000);  // 2^52 as a double: its lowest bit counts ones
    const __m256d magnitude =
        _mm256_sub_pd(_mm256_castsi256_pd(_mm256_or_si256(whole, kMantissa)), _mm256_castsi256_pd(kMantissa));
    const __m256d value = _mm256_div_pd(magnitude, power_of_ten(behind));
    const __m128d first = _mm256_castpd256_pd128(value), last = _mm256_extractf128_pd(value, 1);
    _mm_storel_pd(places[0] + at, first);
    _mm_storeh_pd(places[1] + at, first);
    _mm_storel_pd(places[2] + at, last);
    _mm_storeh_pd(places[3] + at, last);
    const __m256i good = _mm256_cmpeq_epi64(bad, zero);
    return static_cast<unsigned>(_mm256_movemask_pd(_mm256_castsi256_pd(good))) ^ 15U;
  }

 private:
  [[gnu::always_inline]] static long long word_before(const char* end) {
    long long word = 0;
    __builtin_memcpy(&word, end - 8, 8);
    return word;
  }

  /// Eight digits in bytes, the first in the lowest: pairs, then fours, then all.
  [[gnu::always_inline]] OVENWRIGHT_FOUR_NUMBERS static __m256i whole_number(__m256i digits) {
    const __m256i pairs = _mm256_maddubs_epi16(digits, _mm256_set1_epi16(10 + (1 << 8)));
    const __m256i fours = _mm256_madd_epi16(pairs, _mm256_set1_epi32(100 + (1 << 16)));
    return _mm256_add_epi64(_mm256_mul_epu32(fours, _mm256_set1_epi64x(10'000)), _mm256_srli_epi64(fours, 32));
  }

  /// 10 to the number of bytes that are marked in each word, at most 7; floats hold these exactly.
  [[gnu::always_inline]] OVENWRIGHT_FOUR_NUMBERS static __m256d power_of_ten(__m256i marked) {
    const __m256i count = _mm256_sad_epu8(_mm256_and_si256(marked, _mm256_set1_epi8(1)), _mm256_setzero_si256());
    const __m256 power =
        _mm256_permutevar8x32_ps(_mm256_setr_ps(1e0F, 1e1F, 1e2F, 1e3F, 1e4F, 1e5F, 1e6F, 1e7F), count);
    const __m128 low = _mm256_castps256_ps128(power), high = _mm256_extractf128_ps(power, 1);
    return _mm256_cvtps_pd(_mm_shuffle_ps(low, high, 0x88));
  }

  __m256i sign_;
};

#endif

}  // namespace ovenwright::log
