#include "core/log/encoding_guess.h"

#include <uchardet/uchardet.h>
#include <unicode/uchar.h>
#include <unicode/uscript.h>

#include <algorithm>
#include <array>
#include <iterator>
#include <memory>
#include <optional>
#include <string>
#include <unordered_set>
#include <vector>

#include "core/log/converter.h"
#include "core/log/encoding_words.h"
#include "core/log/text_scan.h"

namespace ovenwright::log {
namespace {

using Byte = unsigned char;

struct Range {
  Byte low, high;
};

/// How characters of two bytes spread in an encoding: rows of everyday characters, of signs, of Japanese syllables;
/// the rest rare.
struct Rows {
  Range common, signs, trail;
  double common_points;
  Range kana = {0xFF, 0};
  double kana_points = 0;
  bool half_width_kana = false;  ///< of one byte, A1 to DF
};

struct Candidate {
  const char* name;          ///< as given in results
  const char* converter;     ///< ICU's name for it
  std::optional<Rows> rows;  ///< for encodings with characters of two bytes
  double share = 1;          ///< of the points that its letters earn: less where files are seldom in it any more
};

// In the order in which equally plausible ones are taken. Rows: GB 2312 level 1 is rows B0-D7, Big5 level 1 A4-C6, JIS
// X 0208 level 1 rows B0-CF (Shift_JIS 88-97), KS X 1001 hangul B0-C8. Where rows overlap the smaller set earns more a
// character, because text that keeps to it by chance is the less likely; Japanese without any syllables is rare.
const std::array kCandidates = {
    Candidate{"windows-1252", "windows-1252", {}},
    Candidate{"GB18030", "gb18030", Rows{{0xB0, 0xD7}, {0xA1, 0xA3}, {0xA1, 0xFE}, 1.0, {0xA4, 0xA5}, 0}},
    Candidate{"Big5", "windows-950", Rows{{0xA4, 0xC6}, {0xA1, 0xA3}, {0x40, 0xFE}, 1.0}},
    Candidate{"Shift_JIS", "ibm-943_P15A-2003",
              Rows{{0x88, 0x97}, {0x81, 0x81}, {0x40, 0xFC}, 1.2, {0x82, 0x83}, 1.2, true}},
    Candidate{"EUC-JP", "EUC-JP", Rows{{0xB0, 0xCF}, {0xA1, 0xA3}, {0xA1, 0xFE}, 0.9, {0xA4, 0xA5}, 1.2}},
    Candidate{"EUC-KR", "windows-949", Rows{{0xB0, 0xC8}, {0xA1, 0xAC}, {0xA1, 0xFE}, 1.3}},
    Candidate{"windows-1250", "windows-1250", {}},
    Candidate{"windows-1251", "windows-1251", {}},
    Candidate{"windows-1253", "windows-1253", {}},
    Candidate{"windows-1254", "windows-1254", {}},
    Candidate{"KOI8-R", "KOI8-R", {}},
    Candidate{"IBM850", "ibm-850", {}, 0.7},
    Candidate{"IBM866", "ibm-866", {}, 0.7},
    Candidate{"macintosh", "macintosh", {}, 0.7},
};

constexpr std::size_t kSampleBytes = 64 * 1024;

/// A line without what differs from row to row: digits and the signs between them.
std::string without_figures(std::string_view line) {
  std::string kept;
  std::ranges::copy_if(line, std::back_inserter(kept), [](char c) {
    return std::string_view{"0123456789+-.,:; \t\r\n"}.find(c) == std::string_view::npos;
  });
  return kept;
}

/// Whole lines that hold a byte from 0x80 on, up to kSampleBytes; neither line end is ever part of a character. Lines
/// that differ in their figures alone come once: the same word in every row is no more evidence than one.
std::string unusual_lines(std::string_view bytes) {
  constexpr std::size_t kLongestLine = 4096;
  std::string sample;
  std::unordered_set<std::string> seen;
  while (!bytes.empty() && sample.size() < kSampleBytes) {
    const auto line_end = bytes.substr(0, kLongestLine).find_first_of("\r\n");
    const auto line = bytes.substr(0, line_end == std::string_view::npos ? kLongestLine : line_end + 1);
    if (!is_ascii(line) && seen.insert(without_figures(line)).second) sample.append(line);
    bytes.remove_prefix(line.size());
  }
  return sample;
}

bool within(Byte byte, Range range) { return byte >= range.low && byte <= range.high; }

/// Points for the two-byte characters of a sample by how common their rows are.
double row_points(std::string_view bytes, const Rows& rows) {
  double points = 0;
  for (std::size_t i = 0; i < bytes.size(); ++i) {
    const auto lead = static_cast<Byte>(bytes[i]);
    if (lead < 0x80) continue;
    if (rows.half_width_kana && lead >= 0xA1 && lead <= 0xDF) {
      points += 0.2;
      continue;
    }
    ++i;
    const auto trail = i < bytes.size() ? static_cast<Byte>(bytes[i]) : Byte{0};
    if (!within(trail, rows.trail)) {
      points -= 1.5;
      if (trail < 0x30) --i;  // no second byte in any encoding: a delimiter or the line's end
    } else if (within(lead, rows.common)) {
      points += rows.common_points;
    } else if (within(lead, rows.kana)) {
      points += rows.kana_points;
    } else {
      points += within(lead, rows.signs) ? 0.7 : -1.5;
    }
  }
  return points;
}

/// Letters that everyday words of western European languages hold.
bool is_western_letter(char16_t c) {
  return std::u16string_view{u"äöüßÄÖÜéèêëàâçîïôûùñáíóúøåæØÅÆœãõÉ"}.find(c) != std::u16string_view::npos;
}

bool is_everyday_sign(char16_t c) {
  return std::u16string_view{u"°±²³µ·×ºª§®©«»–—…“”„‘’€£\u00A0"}.find(c) != std::u16string_view::npos;
}

UScriptCode script_of(char16_t c) {
  UErrorCode status = U_ZERO_ERROR;
  const auto script = uscript_getScript(c, &status);
  return U_FAILURE(status) ? USCRIPT_COMMON : script;
}

/// Points for a sign: a degree or micro sign where one belongs, everyday signs outside words.
double sign_points(char16_t before, char16_t c, char16_t after) {
  const bool unit_follows = after == u'C' || after == u'F' || after == u'K' || after == u's' || after == u'm';
  if ((c == u'°' || c == u'µ') && (unit_follows || u_isdigit(before))) return 1;
  if (!is_everyday_sign(c)) return -2;
  return u_isalpha(before) && u_isalpha(after) ? -2 : 0.2;
}

/// Points for one character beyond ASCII of an encoding with one byte a character, by its neighbours.
double letter_points(char16_t before, char16_t c, char16_t after) {
  if (c == 0xFFFD || (c >= 0x80 && c < 0xA0)) return -10;
  if (!u_isalpha(c)) return sign_points(before, c, after);
  const bool letter_before = u_isalpha(before), letter_after = u_isalpha(after);
  if (!letter_before && !letter_after) return -1;
  const auto script = script_of(c);
  if ((letter_before && script_of(before) != script) || (letter_after && script_of(after) != script)) return -2;
  if ((letter_before && u_islower(before) && u_isupper(c)) || (u_islower(c) && u_isupper(after))) return -1.5;
  const bool capitals = u_isupper(c) && (u_isupper(before) || u_isupper(after));
  if (script != USCRIPT_LATIN) return capitals ? 0.5 : 0.8;
  // Letters with marks stand among plain ones.
  const bool plain_beside = (letter_before && before < 0x80) || (letter_after && after < 0x80);
  if (!plain_beside) return -0.5;
  return is_western_letter(c) ? 1 : 0.6;
}

double points_of(const std::u16string& text, const std::string& bytes, const Candidate& candidate) {
  double points = 0;
  if (candidate.rows) points += row_points(bytes, *candidate.rows);
  for (std::size_t i = 0; i < text.size(); ++i) {
    const char16_t c = text[i];
    if (c < 0x80) continue;
    // One such character within a word of plain letters, "Oxyg弉e", is a letter with a mark of another encoding.
    const bool torn = candidate.rows && c >= 0x2E80 && i > 0 && i + 1 < text.size() && text[i - 1] < 0x80 &&
                      u_isalpha(text[i - 1]) && text[i + 1] < 0x80 && u_islower(text[i + 1]);
    if (torn) points -= 2;
    if (!candidate.rows) {
      const double earned = letter_points(i > 0 ? text[i - 1] : u' ', c, i + 1 < text.size() ? text[i + 1] : u' ');
      points += earned > 0 ? earned * candidate.share : earned;
    } else if (c == 0xFFFD || (c >= 0xE000 && c < 0xF900)) {
      points -= 10;
    } else if (c >= 0xAC00 && c < 0xD7A4 && common_korean_syllables().find(c) == std::u16string_view::npos) {
      points -= 1;
    }
  }
  std::u16string folded = text;
  for (auto& c : folded) c = static_cast<char16_t>(u_foldCase(c, U_FOLD_CASE_DEFAULT));
  for (const auto word : encoding_words()) {
    if (folded.find(word) != std::u16string::npos) points += word.size() > 1 ? 8 : 3;
  }
  return points;
}

std::string detector_says(const std::string& sample) {
  const std::unique_ptr<uchardet, decltype(&uchardet_delete)> detector{uchardet_new(), uchardet_delete};
  if (!detector || uchardet_handle_data(detector.get(), sample.data(), sample.size()) != 0) return {};
  uchardet_data_end(detector.get());
  return uchardet_get_charset(detector.get());
}

}  // namespace

EncodingGuess guess_encoding(std::string_view bytes) {
  const auto sample = unusual_lines(bytes);
  const auto detected = detector_says(sample);
  struct Weighed {
    std::string name;
    double points = 0;
    std::u16string text;
  };
  std::vector<Weighed> weighed;
  bool detected_is_candidate = detected.empty();
  for (const auto& candidate : kCandidates) {
    auto converter = Converter::open(candidate.converter);
    if (!converter) continue;
    auto text = converter->utf16(sample);
    double points = points_of(text, sample, candidate);
    if (same_encoding_name(detected, candidate.name)) {
      detected_is_candidate = true;
      points += 2;
    }
    weighed.push_back({candidate.name, points, std::move(text)});
  }
  if (!detected_is_candidate) {
    if (auto converter = Converter::open(detected)) {
      auto text = converter->utf16(sample);
      const double points = points_of(text, sample, Candidate{"", "", {}});
      weighed.push_back({detected, points, std::move(text)});
    }
  }
  const auto best = std::ranges::max_element(weighed, {}, &Weighed::points);
  if (best == weighed.end()) return {"windows-1252", false};
  const bool rivalled = std::ranges::any_of(
      weighed, [&](const Weighed& other) { return other.text != best->text && other.points > 0.9 * best->points; });
  return {best->name, best->points > 0 && !rivalled};
}

std::string canonical_encoding(const std::string& name) {
  const auto known = std::ranges::find_if(kCandidates, [&](const Candidate& candidate) {
    return same_encoding_name(candidate.name, name) || same_encoding_name(candidate.converter, name);
  });
  if (known != kCandidates.end()) return known->name;
  for (const char* unicode : {"UTF-8", "UTF-16LE", "UTF-16BE", "UTF-32LE", "UTF-32BE"}) {
    if (same_encoding_name(unicode, name)) return unicode;
  }
  return Converter::open(name) ? name : std::string{};
}

std::string converter_for(const std::string& encoding) {
  const auto known =
      std::ranges::find_if(kCandidates, [&](const Candidate& candidate) { return encoding == candidate.name; });
  return known == kCandidates.end() ? encoding : known->converter;
}

}  // namespace ovenwright::log
