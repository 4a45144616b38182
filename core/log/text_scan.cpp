#include "core/log/text_scan.h"

#include <algorithm>
#include <limits>
#include <vector>
#if defined(__SSE2__)
#include <emmintrin.h>
#endif

#include "core/units/parallel.h"

namespace ovenwright::log {
namespace {

using Byte = unsigned char;
constexpr std::size_t kBlock = 64;

constexpr bool is_control(Byte byte) { return byte < 0x20 && !(byte >= '\t' && byte <= '\r'); }

/// Whether a block holds neither a control byte nor one from 0x80 on.
bool plain_block(const Byte* at) noexcept {
#if defined(__SSE2__)
  // As signed numbers, bytes from 0x80 on are below 0x20 too; tab to carriage return are the only ones there to stay.
  const __m128i blank = _mm_set1_epi8(0x20), tab = _mm_set1_epi8('\t'), spaces = _mm_set1_epi8('\r' - '\t');
  const auto unusual = [&](std::size_t i) {
    const __m128i bytes = _mm_loadu_si128(reinterpret_cast<const __m128i*>(at + 16 * i));
    const __m128i from_tab = _mm_sub_epi8(bytes, tab);
    const __m128i space = _mm_cmpeq_epi8(_mm_min_epu8(from_tab, spaces), from_tab);
    return _mm_andnot_si128(space, _mm_cmplt_epi8(bytes, blank));
  };
  const __m128i any = _mm_or_si128(_mm_or_si128(unusual(0), unusual(1)), _mm_or_si128(unusual(2), unusual(3)));
  return _mm_movemask_epi8(any) == 0;
#else
  return std::none_of(at, at + kBlock, [](Byte byte) { return is_control(byte) || byte >= 0x80; });
#endif
}

bool ascii_block(const Byte* at) noexcept {
  Byte all = 0;
  for (std::size_t i = 0; i < kBlock; ++i) all |= at[i];
  return all < 0x80;
}

struct Sequence {
  std::size_t length = 0;  ///< 0: ill-formed
  bool cut = false;        ///< well-formed as far as it goes, but the data ends
};

/// The UTF-8 sequence that begins with a byte from 0x80 on.
Sequence sequence_at(const Byte* at, const Byte* end) noexcept {
  const Byte lead = at[0];
  std::size_t length = 0;
  Byte low = 0x80, high = 0xBF;
  if (lead >= 0xC2 && lead <= 0xDF) {
    length = 2;
  } else if (lead >= 0xE0 && lead <= 0xEF) {
    length = 3;
    if (lead == 0xE0) low = 0xA0;
    if (lead == 0xED) high = 0x9F;
  } else if (lead >= 0xF0 && lead <= 0xF4) {
    length = 4;
    if (lead == 0xF0) low = 0x90;
    if (lead == 0xF4) high = 0x8F;
  } else {
    return {};
  }
  for (std::size_t i = 1; i < length; ++i) {
    if (at + i == end) return {i, true};
    if (at[i] < low || at[i] > high) return {};
    low = 0x80;
    high = 0xBF;
  }
  return {length, false};
}

TextScan scan_part(std::string_view bytes) noexcept {
  TextScan scan;
  const auto* const begin = reinterpret_cast<const Byte*>(bytes.data());
  const auto* const end = begin + bytes.size();
  const auto* at = begin;
  constexpr std::ptrdiff_t kAhead = 4096;  // the processor itself does not look ahead over the end of a page
  while (at < end) {
    if (end - at > kAhead) __builtin_prefetch(at + kAhead);
    if (end - at >= static_cast<std::ptrdiff_t>(kBlock) && plain_block(at)) {
      at += kBlock;
      continue;
    }
    const auto* const stop = std::min(end, at + kBlock);
    while (at < stop) {
      if (*at < 0x80) {
        if (is_control(*at) && scan.control++ == 0) scan.first_control = static_cast<std::size_t>(at - begin);
        ++at;
        continue;
      }
      const Sequence sequence = sequence_at(at, end);
      if (sequence.cut) {
        scan.cut_tail = sequence.length;
        at += sequence.length;
      } else if (sequence.length == 0) {
        if (scan.ill_formed++ == 0) scan.first_ill_formed = static_cast<std::size_t>(at - begin);
        ++at;
      } else {
        ++scan.multi_byte;
        at += sequence.length;
      }
    }
  }
  return scan;
}

/// What two parts hold, the second from `offset` on. No sequence goes over the end of the first.
TextScan joined(TextScan first, const TextScan& second, std::size_t offset) {
  if (first.ill_formed == 0 && second.ill_formed > 0) first.first_ill_formed = second.first_ill_formed + offset;
  if (first.control == 0 && second.control > 0) first.first_control = second.first_control + offset;
  first.multi_byte += second.multi_byte;
  first.ill_formed += second.ill_formed;
  first.control += second.control;
  first.cut_tail = second.cut_tail;
  return first;
}

}  // namespace

TextScan scan_text(std::string_view bytes, unsigned threads) {
  constexpr std::size_t kWorthAThread = 8U << 20;
  const std::size_t parts = std::clamp<std::size_t>(bytes.size() / kWorthAThread, 1, std::max(1U, threads));
  std::vector<std::size_t> starts{0};
  for (std::size_t i = 1; i < parts; ++i) {
    const auto line_end = bytes.find('\n', i * (bytes.size() / parts));
    if (line_end != std::string_view::npos && line_end >= starts.back()) starts.push_back(line_end + 1);
  }
  std::vector<TextScan> scans(starts.size());
  for_each_index(starts.size(), threads, [&](std::size_t i) {
    const std::size_t end = i + 1 < starts.size() ? starts[i + 1] : bytes.size();
    scans[i] = scan_part(bytes.substr(starts[i], end - starts[i]));
  });
  for (std::size_t i = 1; i < scans.size(); ++i) scans[0] = joined(scans[0], scans[i], starts[i]);
  return scans[0];
}

bool is_ascii(std::string_view bytes) noexcept {
  const auto* at = reinterpret_cast<const Byte*>(bytes.data());
  const auto* const end = at + bytes.size();
  for (; end - at >= static_cast<std::ptrdiff_t>(kBlock); at += kBlock) {
    if (!ascii_block(at)) return false;
  }
  return std::all_of(at, end, [](Byte byte) { return byte < 0x80; });
}

int line_of(std::string_view bytes, std::size_t offset) noexcept {
  const auto head = bytes.substr(0, offset);
  const auto lines = std::count(head.begin(), head.end(), '\n');
  return static_cast<int>(std::min<std::ptrdiff_t>(lines, std::numeric_limits<int>::max() - 1)) + 1;
}

}  // namespace ovenwright::log
