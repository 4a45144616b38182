// The record's body, its digest and its frame.
#include "app/archive/body.h"

#include <gtest/gtest.h>

#include "app/archive/database.h"
#include "app/archive/pack.h"
#include "core/files/digest.h"

namespace ovenwright::archive {
namespace {

TEST(RecordBody, ReadsBackTheSame) {
  Record record;
  record.chain = "7kq2mv9x";
  record.number = 12;
  record.station = "line 2";
  record.program = "ovenwright 0.1.0";
  record.summary.addedAt = Moment{std::chrono::milliseconds{1'772'323'200'123}};
  record.summary.runAt = Moment{std::chrono::milliseconds{-1}};
  record.summary.lot = "\"; drop table run; --";
  record.summary.margin = 0.1;
  record.summary.origin = "7kq2mv9x-12";
  record.log = {"a.csv", std::nullopt, files::sha256_hex("a")};
  record.logBytes = 1;
  record.windows = {{"SAC305, general", "1", files::sha256_hex("w")}, {"bodies", std::nullopt, files::sha256_hex("b")}};
  record.board = KeptFile{"Tern", "3", files::sha256_hex("t")};
  record.entry_s = -3.5;
  record.keepSpikes = {2, 5};
  const auto read = parseBody(bodyText(record));
  ASSERT_TRUE(read) << read.error().text();
  EXPECT_EQ(bodyText(*read), bodyText(record));
  EXPECT_EQ(read->summary.id, "7kq2mv9x-12");
  EXPECT_EQ(read->summary.lot, record.summary.lot);
  EXPECT_EQ(read->summary.runAt, record.summary.runAt);
  EXPECT_EQ(read->summary.margin, 0.1);
  EXPECT_EQ(read->summary.window, "SAC305, general + bodies");
  EXPECT_EQ(read->summary.board, "Tern");
  EXPECT_EQ(read->entry_s, -3.5);
  EXPECT_EQ(read->keepSpikes, (std::vector<int>{2, 5}));
}

TEST(RecordBody, DamagedIsAnErrorAtEveryLength) {
  Record record;
  record.chain = "c";
  record.number = 1;
  const std::string body = bodyText(record);
  for (std::size_t length = 0; length < body.size(); ++length) EXPECT_FALSE(parseBody(body.substr(0, length)));
}

TEST(ChainDigest, IsSha256OfPreviousLineFeedAndBody) {
  // Source: coreutils: printf '%064d\nabc' 0 | sha256sum
  EXPECT_EQ(chainDigest(noPrevious(), "abc"), "ac10ec504bb4ed3d77c3b3d1cf8fc534a2f6658185a64fc00b24a1afce46cec3");
}

TEST(RecordId, IsChainAndNumber) {
  EXPECT_EQ(recordId("7kq2mv9x", 1042), "7kq2mv9x-1042");
  const auto key = parseRecordId("7kq2mv9x-1042");
  ASSERT_TRUE(key);
  EXPECT_EQ(key->chain, "7kq2mv9x");
  EXPECT_EQ(key->number, 1042U);
  for (const char* wrong : {"", "7kq2mv9x", "-1", "a-", "a-0", "a-1x", "a-99999999999999999999", "a-+1"})
    EXPECT_FALSE(parseRecordId(wrong)) << wrong;
}

TEST(Parcel, UnpacksAtFullLengthOnly) {
  const Parcel parcel{"{\"a\": 1}", std::string("re\0port", 7), ""};
  const auto frame = packedParcel(parcel);
  const auto unpacked = unpackedParcel(frame);
  ASSERT_TRUE(unpacked);
  EXPECT_EQ(unpacked->body, parcel.body);
  EXPECT_EQ(unpacked->report, parcel.report);
  EXPECT_EQ(unpacked->text, "");
  for (qsizetype length = 0; length < frame.size(); ++length) EXPECT_FALSE(unpackedParcel(frame.left(length)));
  EXPECT_FALSE(unpackedParcel(packed("5\n3\nabc", Effort::kFast)));
  EXPECT_FALSE(unpackedParcel(packed("99999999999999999999999\n3\nabc", Effort::kFast)));
}

TEST(Columns, AreShortEqualWhereTextsAreAndDifferWhereTheyDiffer) {
  EXPECT_EQ(column("QM-1001"), "QM-1001");
  const std::string longText(10'000, 'x');
  EXPECT_LE(column(longText).size(), 96);
  EXPECT_EQ(column(longText), column(longText));
  EXPECT_NE(column(longText), column(longText + "y"));
  // A pair of surrogates is not torn.
  std::string emoji;
  for (int i = 0; i < 100; ++i) emoji += i == 0 ? "x" : "\U0001F525";
  EXPECT_EQ(column(emoji).toStdString().find("\uFFFD"), std::string::npos);
  EXPECT_EQ(storable(std::string("a\0b", 3)).toStdString(), "a\uFFFDb");
  EXPECT_EQ(storable("\xff").toStdString(), "\uFFFD");
}

TEST(Moments, AreIsoInUtc) {
  // Source: date -u -d 2026-03-14T08:15:00Z +%s = 1773476100
  constexpr Moment kMoment{std::chrono::milliseconds{1'773'476'100'000}};
  EXPECT_EQ(momentText(kMoment), "2026-03-14T08:15:00.000Z");
  for (const char* text : {"2026-03-14T08:15:00Z", "2026-03-14T08:15:00", "2026-03-14T10:15:00+02:00",
                           "2026-03-14T08:15:00.000Z", " 2026-03-14T08:15Z "})
    EXPECT_EQ(*parseMoment(text), kMoment) << text;
  EXPECT_EQ(momentText(*parseMoment("2026-03-14")), "2026-03-14T00:00:00.000Z");
  EXPECT_EQ(momentText(*parseMoment("2026-03-14", DateEdge::kEnd)), "2026-03-15T00:00:00.000Z");
  for (const char* text : {"", "yesterday", "14.3.2026", "2026-13-01", "2026-02-30", "2026-03-14T25:00:00Z"})
    EXPECT_FALSE(parseMoment(text)) << text;
}

}  // namespace
}  // namespace ovenwright::archive
