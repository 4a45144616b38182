#include <gtest/gtest.h>
#include <unistd.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <string>

#include "core/files/text_file.h"
#include "core/window/window_file.h"

namespace ovenwright::window {
namespace {

namespace fs = std::filesystem;

constexpr const char* kWindow = R"(# released 2031-03-12
name = "SAC305, line 2"   # for boards of class B
revision = "1"
liquidus_C = 217

# the joint
[[requirement]]
name = "peak"
measure = "peak"
lower = 235    # process note 14
upper = 250
source = "note"

[[requirement]]
name = "time above"
measure = "time above"
upper = 90
)";

class WindowWrite : public testing::Test {
 protected:
  void SetUp() override {
    folder_ = fs::temp_directory_path() / ("ovenwright_window_write_" + std::to_string(::getpid()));
    fs::create_directories(folder_);
    file_ = (folder_ / "line2.toml").string();
    std::ofstream{file_} << kWindow;
  }
  void TearDown() override { fs::remove_all(folder_); }
  ProcessWindow loaded() const {
    auto window = load(file_);
    EXPECT_TRUE(window) << window.error().text();
    return *std::move(window);
  }
  fs::path folder_;
  std::string file_;
};

TEST_F(WindowWrite, ARevisionIsANewFileThatKeepsTheComments) {
  auto window = loaded();
  window.requirements[0].lower = 238.5;
  window.requirements[0].target = 242.0;
  window.requirements[1].required = false;
  const auto saved = save_revision(window, "2", (folder_ / "line2_rev2.toml").string());
  ASSERT_TRUE(saved) << saved.error().text();
  EXPECT_EQ(saved->identity.revision, "2");
  EXPECT_EQ(std::get<double>(*saved->requirements[0].lower), 238.5);
  std::string want = kWindow;
  want.replace(want.find("\"1\""), 3, "\"2\"");
  want.replace(want.find("235 "), 3, "238.5");
  want.insert(want.find("source = \"note\"\n") + 16, "target = 242\n");
  want += "required = false\n";
  EXPECT_EQ(*files::read_text(saved->identity.file), want);
  EXPECT_EQ(*files::read_text(file_), kWindow);
}

TEST_F(WindowWrite, RequirementsCanGoAndCome) {
  auto window = loaded();
  Requirement spread;
  spread.name = "spread";
  spread.measure.measure = measure::Measure::kSpreadOfPeaks;
  spread.upper = 10.0;
  spread.applies_to.kind = AppliesTo::Kind::kBoard;
  window.requirements.push_back(spread);
  window.requirements.erase(window.requirements.begin());
  const std::string text = window_text(window, kWindow);
  const auto read = parse("a", text);
  ASSERT_TRUE(read) << read.error().text();
  ASSERT_EQ(read->requirements.size(), 2U);
  EXPECT_EQ(read->requirements[0].name, "time above");
  EXPECT_EQ(read->requirements[1].name, "spread");
  EXPECT_NE(text.find("# for boards of class B"), std::string::npos);
}

TEST_F(WindowWrite, AnotherOrderIsWrittenAnew) {
  auto window = loaded();
  std::swap(window.requirements[0], window.requirements[1]);
  const auto read = parse("a", window_text(window, kWindow));
  ASSERT_TRUE(read) << read.error().text();
  EXPECT_EQ(read->requirements[0].name, "time above");
  EXPECT_EQ(read->requirements[1].name, "peak");
}

TEST_F(WindowWrite, NothingIsOverwritten) {
  const auto window = loaded();
  const auto same_file = save_revision(window, "2", file_);
  ASSERT_FALSE(same_file);
  EXPECT_EQ(same_file.error().code, ErrorCode::kIo);
  EXPECT_EQ(*files::read_text(file_), kWindow);
  EXPECT_FALSE(save_revision(window, "1", (folder_ / "new.toml").string()));
  EXPECT_FALSE(save_revision(window, "", (folder_ / "new.toml").string()));
  EXPECT_FALSE(fs::exists(folder_ / "new.toml"));
}

TEST_F(WindowWrite, AWindowThatBreaksARuleIsNotSaved) {
  auto window = loaded();
  window.requirements[0].upper.reset();
  const auto saved = save_revision(window, "2", (folder_ / "new.toml").string());
  ASSERT_FALSE(saved);
  EXPECT_NE(saved.error().message.find("a lower limit but no target"), std::string::npos);
  EXPECT_FALSE(fs::exists(folder_ / "new.toml"));
}

TEST_F(WindowWrite, WithoutAFileItIsWrittenWhole) {
  auto window = loaded();
  window.identity.file.clear();
  window.process = Process::kWave;
  window.classification = Classification::kTinLead;
  window.uncertainty = {"K class 1", 0.8, 0.25, false};
  window.requirements[0].upper = TcOffset{-2.5};
  window.requirements[0].applies_to = {AppliesTo::Kind::kChannels, {"U1 \"x\"", "2"}};
  window.requirements[0].side = board::Side::kTop;
  const std::string text = window_text(window);
  const auto read = parse("a", text);
  ASSERT_TRUE(read) << read.error().text();
  EXPECT_EQ(window_text(*read), text);
  EXPECT_EQ(read->uncertainty.tolerance_C, 0.8);
  EXPECT_EQ(read->requirements[0].applies_to.channels[0], "U1 \"x\"");
}

TEST_F(WindowWrite, RevisionsStandInTheUsersFolder) {
  ::setenv("XDG_DATA_HOME", "/data", 1);
  auto window = loaded();
  EXPECT_EQ(revision_path(window, "2"), "/data/ovenwright/windows/line2_rev2.toml");
  window.identity.stem = "line2_rev2";
  window.identity.revision = "2";
  EXPECT_EQ(revision_path(window, "3 a/b"), "/data/ovenwright/windows/line2_rev3_a_b.toml");
}

}  // namespace
}  // namespace ovenwright::window
