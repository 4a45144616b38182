#include <gtest/gtest.h>
#include <unicode/ucnv.h>

#include <array>
#include <string>

#include "core/log/grid.h"
#include "core/log/text_scan.h"

namespace ovenwright::log {
namespace {

/// A text in another encoding, by ICU's table for it.
std::string encoded(const std::string& utf8, const char* encoding) {
  UErrorCode status = U_ZERO_ERROR;
  std::string bytes(utf8.size() * 4 + 8, '\0');
  const auto length = ucnv_convert(encoding, "UTF-8", bytes.data(), static_cast<int32_t>(bytes.size()), utf8.data(),
                                   static_cast<int32_t>(utf8.size()), &status);
  EXPECT_TRUE(U_SUCCESS(status)) << encoding;
  bytes.resize(static_cast<std::size_t>(length));
  return bytes;
}

std::string text_of(const Decoded& decoded, const std::string& bytes) {
  return decoded.unchanged ? bytes.substr(decoded.skip) : decoded.utf8;
}

struct Sample {
  const char* name;       ///< of the test
  const char* encoding;   ///< expected
  const char* converter;  ///< that makes the bytes
  const char* text;
};
void PrintTo(const Sample& sample, std::ostream* os) { *os << sample.name; }

class Encodings : public testing::TestWithParam<Sample> {};

// Expected: the text that was encoded. The texts are invented heads of logs in everyday words.
TEST_P(Encodings, AreFoundFromTheContent) {
  const auto& sample = GetParam();
  const auto bytes = encoded(sample.text, sample.converter);
  const auto decoded = decode(bytes);
  ASSERT_TRUE(decoded) << decoded.error().message;
  EXPECT_EQ(decoded->encoding, sample.encoding);
  EXPECT_EQ(text_of(*decoded, bytes), sample.text);
}

TEST_P(Encodings, AreTakenAsForced) {
  const auto& sample = GetParam();
  const auto bytes = encoded(sample.text, sample.converter);
  const auto decoded = decode(bytes, sample.encoding);
  ASSERT_TRUE(decoded) << decoded.error().message;
  EXPECT_EQ(decoded->encoding, sample.encoding);
  EXPECT_EQ(text_of(*decoded, bytes), sample.text);
}

constexpr std::array kSamples = {
    Sample{"Ascii", "UTF-8", "US-ASCII", "time,TC1\n0,25.0\n0.5,25.1\n"},
    Sample{"Utf8", "UTF-8", "UTF-8", "Zeit;Fühler 1 °C\n0;25,0\n"},
    Sample{"Utf8Chinese", "UTF-8", "UTF-8", "时间,温度1,温度2\n0,25.0,25.1\n"},
    Sample{"Utf16LittleNoMark", "UTF-16LE", "UTF-16LE", "时间\t温度1\n0\t25.0\n0.5\t25.1\n"},
    Sample{"Utf16BigNoMark", "UTF-16BE", "UTF-16BE", "Zeit\tFühler\n0\t25.0\n"},
    Sample{"German", "windows-1252", "windows-1252", "Zeit [s];Fühler 1 [°C];Fühler 2 [°C]\n0;25,0;25,1\n"},
    Sample{"DegreeSignAlone", "windows-1252", "ISO-8859-1",
           "time s,TC1 \xC2\xB0"
           "C,TC2 \xC2\xB0"
           "C\n0,25.0,25.1\n"},
    Sample{"DegreeInEveryCell", "windows-1252", "windows-1252", "t,a,b\n0,25.0°C,25.1°C\n1,25.0°C,25.3°C\n"},
    Sample{"French", "windows-1252", "windows-1252", "Durée (s);Température carte;Numéro\n0;25,0;1\n"},
    Sample{"Spanish", "windows-1252", "windows-1252", "Duración;Máxima;Señal\n0;25,0;1\n"},
    Sample{"ChineseSimplified", "GB18030", "gb18030", "时间(秒),通道1,通道2\n0,25.0,25.1\n"},
    Sample{"ChineseOneWord", "GB18030", "gb18030", "时间,A1,A2\n0,25.0,25.1\n"},
    Sample{"ChineseCentigradeSign", "GB18030", "gb18030", "t,1(℃),2(℃)\n0,25.0,25.1\n"},
    Sample{"ChineseWithoutKnownWords", "GB18030", "gb18030", "产线二号机台的测试文件,甲乙丙丁\n0,25.0,25.1\n"},
    Sample{"ChineseTraditional", "Big5", "Big5", "時間(秒),溫度1,溫度2\n0,25.0,25.1\n"},
    Sample{"TraditionalCentigradeSign", "Big5", "Big5", "t,1(℃),2(℃)\n0,25.0,25.1\n"},
    Sample{"Japanese", "Shift_JIS", "Shift_JIS", "時間[秒],温度1,チャンネル2\n0,25.0,25.1\n"},
    Sample{"JapaneseHalfWidth", "Shift_JIS", "Shift_JIS", "時刻,ﾁｬﾝﾈﾙ1,ﾁｬﾝﾈﾙ2\n0,25.0,25.1\n"},
    Sample{"JapaneseEuc", "EUC-JP", "EUC-JP", "時刻,温度1,チャンネル2\n0,25.0,25.1\n"},
    Sample{"Korean", "EUC-KR", "EUC-KR", "시간,온도1,채널2\n0,25.0,25.1\n"},
    Sample{"Czech", "windows-1250", "windows-1250", "Čas [s];Teplota 1 [°C];Průměr\n0;25,0;25,1\n"},
    Sample{"Polish", "windows-1250", "windows-1250", "Czas [s];Wartość średnia [°C]\n0;25,0\n"},
    Sample{"Russian", "windows-1251", "windows-1251", "Время, с;Температура 1, °C\n0;25,0\n"},
    Sample{"RussianKoi", "KOI8-R", "KOI8-R", "Время;Температура канал 1\n0;25,0\n"},
    Sample{"Turkish", "windows-1254", "windows-1254", "Süre;Sıcaklık 1\n0;25,0\n"},
    Sample{"SpanishOneWord", "windows-1252", "windows-1252", "Mañana\n0;25,0\n"},
    Sample{"ChineseAmongAscii", "GB18030", "gb18030", "PCB编号：A1\n0,25.0\n"},
    Sample{"JapaneseOneWord", "Shift_JIS", "Shift_JIS", "部品\n0,25.0\n"},
    Sample{"JapaneseSyllables", "Shift_JIS", "Shift_JIS", "コンデンサ\n0,25.0\n"},
    Sample{"KoreanOneWord", "EUC-KR", "EUC-KR", "부품\n0,25.0\n"},
    Sample{"GreekOneWord", "windows-1253", "windows-1253", "Χρόνος\n0;25,0\n"},
    Sample{"TurkishShort", "windows-1254", "windows-1254", "Zaman;Isı ölçümü\n0;25,0\n"},
    Sample{"DosDegree", "IBM850", "ibm-850", "time;TC1 °C;TC2 °C\n0;25,0;25,1\n"},
    Sample{"MacDegree", "macintosh", "macintosh", "time;TC1 °C;TC2 °C\n0;25,0;25,1\n"},
};
INSTANTIATE_TEST_SUITE_P(Samples, Encodings, testing::ValuesIn(kSamples),
                         [](const auto& c) { return std::string{c.param.name}; });

TEST(Decode, LeavesWellFormedUtf8WhereItIs) {
  const std::string bytes =
      "\xEF\xBB\xBFtime;\xC2\xB0"
      "C\n0;25\n";
  const auto decoded = decode(bytes);
  ASSERT_TRUE(decoded) << decoded.error().message;
  EXPECT_TRUE(decoded->unchanged);
  EXPECT_TRUE(decoded->certain);
  EXPECT_EQ(decoded->skip, 3u);
  EXPECT_TRUE(decoded->utf8.empty());
}

TEST(Decode, ReadsByteOrderMarks) {
  for (const auto& [mark, encoding] : {std::pair{std::string{"\xFF\xFE"}, "UTF-16LE"},
                                       {std::string{"\xFE\xFF"}, "UTF-16BE"},
                                       {std::string{"\xFF\xFE\0\0", 4}, "UTF-32LE"},
                                       {std::string{"\0\0\xFE\xFF", 4}, "UTF-32BE"}}) {
    const auto bytes = mark + encoded("温度\n25\n", encoding);
    const auto decoded = decode(bytes);
    ASSERT_TRUE(decoded) << encoding << decoded.error().message;
    EXPECT_EQ(decoded->encoding, encoding);
    EXPECT_EQ(decoded->utf8, "温度\n25\n");
  }
}

TEST(Decode, TakesAnEmptyFileAsText) {
  const auto decoded = decode("");
  ASSERT_TRUE(decoded) << decoded.error().message;
  EXPECT_TRUE(decoded->unchanged);
}

TEST(Decode, LeavesOutPaddingBehindTheText) {
  const auto decoded = decode(std::string{"time,a\n0,1\n\x1A\0\0\0\0\0\0\0\0", 20});
  ASSERT_TRUE(decoded) << decoded.error().message;
  EXPECT_EQ(decoded->utf8, "time,a\n0,1\n");
}

TEST(Decode, GivesWellFormedUtf8WhereTheEndCutsACharacter) {
  const std::string whole = "time,°C\n0,25.0\n1,25.1 °C";
  for (std::size_t size = 0; size <= whole.size(); ++size) {
    const auto bytes = whole.substr(0, size);
    const auto decoded = decode(bytes);
    ASSERT_TRUE(decoded) << size;
    const auto again = decode(text_of(*decoded, bytes), "UTF-8");
    ASSERT_TRUE(again) << size;
    EXPECT_TRUE(again->unchanged) << size;
  }
}

TEST(Decode, ReadsUtf8WithDamagedBytesAndSaysItIsNotCertain) {
  std::string bytes;
  for (int i = 0; i < 40; ++i) bytes += "1;25,0 °C\n";
  bytes[9 * 20] = '\xFF';
  const auto decoded = decode(bytes);
  ASSERT_TRUE(decoded) << decoded.error().message;
  EXPECT_EQ(decoded->encoding, "UTF-8");
  EXPECT_FALSE(decoded->certain);
  EXPECT_NE(decoded->utf8.find("\xEF\xBF\xBD"), std::string::npos);
}

TEST(Decode, FindsTheEncodingWhereOnlyTheTailShowsIt) {
  std::string bytes;
  while (bytes.size() < 1'000'000) bytes += "0.5,25.0,25.1\r\n";
  bytes += encoded("最高温度,25.0,25.1\r\n", "gb18030");
  const auto decoded = decode(bytes);
  ASSERT_TRUE(decoded) << decoded.error().message;
  EXPECT_EQ(decoded->encoding, "GB18030");
  EXPECT_TRUE(decoded->utf8.ends_with("最高温度,25.0,25.1\r\n"));
}

// Source: ECMA-48, 5.4: a control sequence is ESC [, parameters and a final byte.
TEST(Decode, LeavesOutWhatATerminalWasTold) {
  const auto decoded = decode("\x1B[1;32mtime,a\x1B[0m\n0,1\n");
  ASSERT_TRUE(decoded) << decoded.error().message;
  EXPECT_EQ(decoded->utf8, "time,a\n0,1\n");
}

// Each sequence that goes puts another together: only the first was one.
TEST(Decode, LooksForControlSequencesOnce) {
  std::string nested, text = "time,a\n";
  for (int i = 0; i < 100'000; ++i) nested += '\x1B';
  for (int i = 0; i < 100'000; ++i) nested += "[m";
  EXPECT_FALSE(decode(nested + "\n" + text));
  while (text.size() < 1000) text += "0.5,25.0\n";
  const auto decoded = decode("\x1B\x1B[m[m" + text);
  ASSERT_TRUE(decoded) << decoded.error().message;
  EXPECT_EQ(decoded->utf8, "\x1B[m" + text);
}

TEST(Decode, RefusesBinaryDataNamingTheLine) {
  std::string bytes = "time,a\n0,1\n";
  for (int i = 0; i < 256; ++i) bytes += static_cast<char>(i);
  const auto decoded = decode(bytes);
  ASSERT_FALSE(decoded);
  EXPECT_EQ(decoded.error().code, ErrorCode::kParse);
  EXPECT_EQ(decoded.error().where.line, 3);
  EXPECT_NE(decoded.error().message.find("byte 0x00 at offset 11"), std::string::npos) << decoded.error().message;
}

TEST(Decode, NamesForeignFormats) {
  const auto decoded = decode("%PDF-1.4\n1 0 obj\n");
  ASSERT_FALSE(decoded);
  EXPECT_EQ(decoded.error().found, "a PDF document");
}

TEST(Decode, RefusesBytesThatAForcedEncodingDoesNotAllowWithTheirLine) {
  const auto decoded = decode(
      "a;b\n1;2\n3;\xB0"
      "C\n4;5\n",
      "UTF-8");
  ASSERT_FALSE(decoded);
  EXPECT_EQ(decoded.error().code, ErrorCode::kParse);
  EXPECT_EQ(decoded.error().where.line, 3);
}

TEST(Decode, RefusesAnEncodingNobodyKnows) {
  const auto decoded = decode("a;b\n", "no-such-encoding");
  ASSERT_FALSE(decoded);
  EXPECT_EQ(decoded.error().code, ErrorCode::kBadArgument);
}

// Source: one part after the other is what is meant.
TEST(TextScan, OfALongTextInPartsFindsWhatOnePassFinds) {
  std::string text;
  while (text.size() < (std::size_t{36} << 20)) text += "12.5,°C,27.1,\x01,28.2,\xC3,ü\n25.0,26.0,27.0,28.0,29.0\n";
  for (const std::string& tail : {std::string{}, std::string{"\n"}, std::string{"\xE2\x82"}}) {
    const std::string whole = text + tail;
    const TextScan one = scan_text(whole);
    EXPECT_GT(one.ill_formed, 0U);
    EXPECT_EQ(one.cut_tail, tail.size() > 1 ? 2U : 0U);
    for (const unsigned threads : {2U, 3U, 7U}) {
      const TextScan parts = scan_text(whole, threads);
      EXPECT_EQ(parts.multi_byte, one.multi_byte);
      EXPECT_EQ(parts.ill_formed, one.ill_formed);
      EXPECT_EQ(parts.first_ill_formed, one.first_ill_formed);
      EXPECT_EQ(parts.control, one.control);
      EXPECT_EQ(parts.first_control, one.first_control);
      EXPECT_EQ(parts.cut_tail, one.cut_tail);
    }
    // The only trouble far into the text.
    std::string late(std::size_t{36} << 20, '7');
    late[30'000'000] = '\x02';
    late[20'000'000] = '\n';
    const TextScan found = scan_text(late + tail, 4);
    EXPECT_EQ(found.first_control, 30'000'000U);
    EXPECT_EQ(found.control, 1U);
  }
}

}  // namespace
}  // namespace ovenwright::log
