// What the command prints, compared as bytes with files that a person looked at, then read back.
// `scripts/golden` writes them anew; the difference is then read before it is committed.
#include <gtest/gtest.h>

#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>
#include <string>
#include <vector>

#include "tests/command/process.h"

namespace ovenwright {
namespace {

const std::string kFolder = std::string{OVENWRIGHT_TEST_DATA} + "/golden/";

/// A line of cases.txt: the file's name, then the arguments, parted by bars.
struct Case {
  std::string file;
  std::vector<std::string> arguments;
};
void PrintTo(const Case& c, std::ostream* os) { *os << c.file; }

std::vector<Case> cases() {
  std::vector<Case> all;
  std::ifstream file{kFolder + "cases.txt"};
  for (std::string line; std::getline(file, line);) {
    if (line.empty() || line.front() == '#') continue;
    std::istringstream cells{line};
    Case one;
    std::getline(cells, one.file, '|');
    for (std::string cell; std::getline(cells, cell, '|');) one.arguments.push_back(cell);
    all.push_back(std::move(one));
  }
  return all;
}

class Golden : public testing::TestWithParam<Case> {};

TEST_P(Golden, IsPrintedByteForByte) {
  const auto finished = ovenwright_program(GetParam().arguments);
  const std::string want = contents(kFolder + GetParam().file);
  EXPECT_FALSE(want.empty());
  EXPECT_EQ(finished.out, want) << finished.err;
}

TEST_P(Golden, ReadsBackTheSame) {
  if (!GetParam().file.ends_with(".json")) return;
  const std::string text = contents(kFolder + GetParam().file);
  const auto json = nlohmann::ordered_json::parse(text, nullptr, false);
  ASSERT_FALSE(json.is_discarded());
  // Every number as printed gives the double that prints so again.
  EXPECT_EQ(nlohmann::ordered_json::parse(json.dump()), json);
}

INSTANTIATE_TEST_SUITE_P(Files, Golden, testing::ValuesIn(cases()), [](const auto& c) {
  std::string name = c.param.file;
  for (char& letter : name) letter = std::isalnum(static_cast<unsigned char>(letter)) != 0 ? letter : '_';
  return name;
});

}  // namespace
}  // namespace ovenwright
