#include "core/board/board_file.h"

#include <gtest/gtest.h>

#include <string>

namespace ovenwright::board {
namespace {

constexpr const char* kBoard = R"(name = "Tern, main side"
revision = "B"
length_mm = 244
width_mm = 190
thickness_mm = 1.6
mass_g = 310
picture = "tern_top.png"
[[placement]]
channel = "U1 corner"
label = "U1 corner ball"
part = "U1"
kind = "joint"
side = "top"
thermocouple = "K class 1"
x_mm = 120
y_mm = 80
[[placement]]
channel = 2
kind = "air"
[[part]]
name = "U1"
side = "bottom"
size_mm = [27, 28]
mass_g = 6.2
package_thickness_mm = 2.1
package_volume_mm3 = 1500
wetted_pad_area_mm2 = 60
max_passes = 2
)";

TEST(BoardFile, ReadsEveryKey) {
  const auto board = parse("boards/tern.toml", kBoard);
  ASSERT_TRUE(board) << board.error().text();
  EXPECT_EQ(board->identity.name, "Tern, main side");
  EXPECT_EQ(board->identity.stem, "tern");
  EXPECT_EQ(board->identity.revision, "B");
  EXPECT_EQ(board->identity.sha256.size(), 64U);
  EXPECT_EQ(board->picture, "boards/tern_top.png");
  ASSERT_EQ(board->placements.size(), 2U);
  const auto& corner = board->placements[0];
  EXPECT_EQ(corner.channel, "U1 corner");
  EXPECT_EQ(corner.label, "U1 corner ball");
  EXPECT_EQ(corner.kind, Kind::kJoint);
  EXPECT_EQ(corner.side, Side::kTop);
  EXPECT_EQ(corner.x_mm, 120);
  EXPECT_EQ(corner.y_mm, 80);
  EXPECT_EQ(corner.line, 9);
  EXPECT_EQ(board->placements[1].channel, "2");
  EXPECT_EQ(board->placements[1].kind, Kind::kAir);
  ASSERT_EQ(board->parts.size(), 1U);
  EXPECT_EQ(board->parts[0].side, Side::kBottom);
  EXPECT_EQ(board->parts[0].width_mm, 28);
  EXPECT_EQ(board->parts[0].package_volume_mm3, 1500);
  EXPECT_EQ(board->parts[0].max_passes, 2);
}

TEST(BoardFile, FindsPlacementsByNameThenByNumber) {
  const auto board = parse("a", kBoard);
  ASSERT_TRUE(board);
  EXPECT_EQ(board->placement("U1 corner", 7), &board->placements[0]);
  EXPECT_EQ(board->placement("J4", 2), &board->placements[1]);
  EXPECT_EQ(board->placement("J4", 3), nullptr);
  EXPECT_EQ(board->part("U1"), &board->parts[0]);
  EXPECT_EQ(board->part("U2"), nullptr);
}

struct Case {
  const char* name;
  const char* text;
  const char* want;
};
void PrintTo(const Case& c, std::ostream* os) { *os << c.name; }
class BoardErrors : public testing::TestWithParam<Case> {};

TEST_P(BoardErrors, SayWhereWhatWasFoundAndWhatWasExpected) {
  const auto board = parse("b.toml", GetParam().text);
  ASSERT_FALSE(board);
  EXPECT_EQ(board.error().text(), GetParam().want);
}

INSTANTIATE_TEST_SUITE_P(
    Table, BoardErrors,
    testing::Values(
        Case{"unknown_key", "thicknes_mm = 1.6\n",
             R"(b.toml:1:1: found the unknown key "thicknes_mm", did you mean "thickness_mm"?)"},
        Case{
            "no_channel", "[[placement]]\nkind = \"joint\"\n",
            R"(b.toml:1:1: missing "channel" in [[placement]], expected the channel's name in the log, or its number from 1)"},
        Case{"channel_number", "[[placement]]\nchannel = 0\n",
             R"(b.toml:2:11: found 0 for "channel", expected a whole number from 1)"},
        Case{"channel_twice", "[[placement]]\nchannel = \"a\"\n[[placement]]\nchannel = \"a\"\n",
             R"(b.toml:4:11: found the channel "a" a second time, first in line 1)"},
        Case{"kind", "[[placement]]\nchannel = 1\nkind = \"bodi\"\n",
             R"(b.toml:3:8: found "bodi" for "kind", did you mean "body"?)"},
        Case{"side", "[[placement]]\nchannel = 1\nside = \"left\"\n",
             R"(b.toml:3:8: found "left" for "side", expected "top" or "bottom")"},
        Case{"length", "length_mm = 0\n", R"(b.toml:1:13: found 0 for "length_mm", expected a length above 0)"},
        Case{"off_the_board", "length_mm = 244\n[[placement]]\nchannel = 1\nx_mm = 245\n",
             R"(b.toml:4:8: found 245 for "x_mm", expected a position on the board, 0 to 244 mm)"},
        Case{"before_the_board", "width_mm = 190\n[[placement]]\nchannel = 1\ny_mm = -1\n",
             R"(b.toml:4:8: found -1 for "y_mm", expected a position on the board, 0 to 190 mm)"},
        Case{"size", "[[part]]\nname = \"a\"\nsize_mm = [1]\n",
             R"(b.toml:3:11: found [1] for "size_mm", expected length and width)"},
        Case{"part_twice", "[[part]]\nname = \"a\"\n[[part]]\nname = \"a\"\n",
             R"(b.toml:4:8: found the part "a" a second time, first in line 1)"},
        Case{"placement_is_no_table", "placement = \"a\"\n",
             R"(b.toml:1:13: found "a" for "placement", expected tables: [[placement]])"}),
    [](const auto& c) { return std::string{c.param.name}; });

TEST(BoardFile, AirIsMeasuredOffTheBoardToo) {
  const auto board = parse("b.toml", "length_mm = 244\n[[placement]]\nchannel = 1\nkind = \"air\"\nx_mm = -20\n");
  EXPECT_TRUE(board) << board.error().text();
}

}  // namespace
}  // namespace ovenwright::board
