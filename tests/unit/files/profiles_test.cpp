#include "core/files/profiles.h"

#include <gtest/gtest.h>
#include <unistd.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>

namespace ovenwright::files {
namespace {

namespace fs = std::filesystem;

class Profiles : public testing::Test {
 protected:
  void SetUp() override {
    folder_ = fs::temp_directory_path() / ("ovenwright_profiles_" + std::to_string(::getpid()));
    fs::create_directories(folder_ / "user/ovenwright/windows");
    fs::create_directories(folder_ / "shipped/windows");
    ::setenv("XDG_DATA_HOME", (folder_ / "user").c_str(), 1);
    ::setenv("OVENWRIGHT_PROFILES", (folder_ / "shipped").c_str(), 1);
  }
  void TearDown() override { fs::remove_all(folder_); }
  std::string user(const std::string& name, const std::string& text) {
    return write("user/ovenwright/windows/", name, text);
  }
  std::string shipped(const std::string& name, const std::string& text) {
    return write("shipped/windows/", name, text);
  }
  static std::string found(const std::string& name) {
    const auto file = find_profile(Kind::kWindow, name);
    return file ? *file : file.error().message;
  }

 private:
  std::string write(const std::string& where, const std::string& name, const std::string& text) {
    const auto path = folder_ / (where + name);
    std::ofstream{path} << text;
    return path.string();
  }
  fs::path folder_;
};

TEST_F(Profiles, AStemOrANameIsFoundTheUsersFirst) {
  const auto ours = shipped("sac305.toml", "name = \"SAC305, general\"\n");
  EXPECT_EQ(found("sac305"), ours);
  EXPECT_EQ(found("SAC305, general"), ours);
  const auto theirs = user("own.toml", "name = \"SAC305, general\"\n");
  EXPECT_EQ(found("sac305"), ours);
  EXPECT_EQ(found("SAC305, general"), theirs);
  const auto same_stem = user("sac305.toml", "name = \"mine\"\n");
  EXPECT_EQ(found("sac305"), same_stem);
}

TEST_F(Profiles, OfSeveralRevisionsTheHighestCounts) {
  user("a.toml", "name = \"SAC\"\nrevision = \"9\"\n");
  const auto tenth = user("b.toml", "name = \"SAC\"\nrevision = \"10\"\n");
  user("c.toml", "name = \"SAC\"\n");
  user("d.toml", "name = \"SAC\"\nrevision = \n");  // no TOML: passed over
  EXPECT_EQ(found("SAC"), tenth);
}

TEST_F(Profiles, APathIsTakenAsItIs) {
  EXPECT_EQ(found("./x"), "./x");
  EXPECT_EQ(found("x.toml"), "x.toml");
}

TEST_F(Profiles, AnUnknownNameSaysWhatWasMeant) {
  shipped("sac305.toml", "name = \"SAC305, general\"\n");
  const auto near = find_profile(Kind::kWindow, "sac35");
  ASSERT_FALSE(near);
  EXPECT_EQ(near.error().code, ErrorCode::kIo);
  EXPECT_EQ(near.error().message, R"(found no window "sac35", did you mean "sac305"?)");
  const auto far = find_profile(Kind::kWindow, "something else");
  ASSERT_FALSE(far);
  EXPECT_NE(far.error().message.find("`ovenwright windows`"), std::string::npos);
}

TEST_F(Profiles, AListingHoldsBothFoldersAndTroubles) {
  shipped("sac305.toml", "name = \"SAC305, general\"\nrevision = \"1\"\nsource = \"s\"\n");
  user("broken.toml", "name = \n");
  const auto all = list_profiles(Kind::kWindow);
  ASSERT_TRUE(all) << all.error().text();
  ASSERT_EQ(all->size(), 2U);
  EXPECT_EQ((*all)[0].stem, "broken");
  EXPECT_TRUE((*all)[0].users);
  EXPECT_TRUE((*all)[0].trouble.has_value());
  EXPECT_EQ((*all)[1].title, "SAC305, general");
  EXPECT_EQ((*all)[1].revision, "1");
  EXPECT_EQ((*all)[1].source, "s");
}

TEST(NaturalOrder, ComparesDigitsAsNumbers) {
  EXPECT_TRUE(natural_less("9", "10"));
  EXPECT_FALSE(natural_less("10", "9"));
  EXPECT_TRUE(natural_less("rev7", "rev12"));
  EXPECT_TRUE(natural_less("", "1"));
  EXPECT_FALSE(natural_less("1", "1"));
  EXPECT_FALSE(natural_less("007", "7"));
  EXPECT_FALSE(natural_less("7", "007"));
  EXPECT_TRUE(natural_less("A", "B"));
  EXPECT_TRUE(natural_less("1.2", "1.10"));
}

}  // namespace
}  // namespace ovenwright::files
