#include <gtest/gtest.h>

#include <algorithm>
#include <cctype>
#include <cmath>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include "core/log/reading.h"

namespace ovenwright::log {
namespace {

const std::string kFolder = OVENWRIGHT_TEST_DATA "/layouts/";

std::vector<std::string> split(const std::string& text, char at) {
  std::vector<std::string> parts;
  std::istringstream stream(text);
  for (std::string part; std::getline(stream, part, at);) parts.push_back(part);
  return parts;
}

std::vector<std::vector<std::string>> table(const std::string& name) {
  std::vector<std::vector<std::string>> rows;
  std::ifstream file(kFolder + name);
  for (std::string line; std::getline(file, line);) {
    rows.push_back(split(line, '\t'));
    rows.back().resize(10);
  }
  return rows;
}

/// Columns of expected.tsv for a log that is read; scripts/make_layout_fixtures.py writes them.
enum Field { kState, kFile, kRows, kFirst, kStep, kTimeTolerance, kTolerance, kNames, kChannels, kHoles };
/// The same for one that is refused.
enum ErrorField { kLine = 2, kColumn, kFound };

struct Case : std::vector<std::string> {};
void PrintTo(const Case& c, std::ostream* os) { *os << c[kFile]; }

std::vector<Case> cases() {
  std::vector<Case> list;
  for (auto& row : table("expected.tsv")) list.push_back({std::move(row)});
  return list;
}

class Layouts : public testing::TestWithParam<Case> {};

bool in_hole(const std::string& holes, std::size_t channel, std::size_t row) {
  for (const auto& hole : split(holes, '|')) {
    const auto colon = hole.find(':'), dash = hole.find('-');
    if (std::stoul(hole) == channel && row >= std::stoul(hole.substr(colon + 1)) &&
        row <= std::stoul(hole.substr(dash + 1)))
      return true;
  }
  return false;
}

void expect_readings(const Case& c, const Reading& reading) {
  static const auto kTruth = table("truth.tsv");
  const auto names = split(c[kNames], '|'), channels = split(c[kChannels], '|'), range = split(c[kRows], '-');
  const std::size_t from = std::stoul(range[0]), count = std::stoul(range[1]) - from;
  ASSERT_EQ(reading.channels.size(), names.size());
  for (std::size_t k = 0; k < names.size(); ++k) {
    const auto& channel = reading.channels[k];
    EXPECT_EQ(channel.name, names[k]);
    ASSERT_EQ(channel.temperature_C.size(), count) << channel.name;
    for (std::size_t i = 0; i < count; ++i) {
      const double time_s = std::stod(c[kFirst]) + static_cast<double>(i) * std::stod(c[kStep]);
      ASSERT_NEAR((*channel.time_s)[i], time_s, std::stod(c[kTimeTolerance])) << channel.name << " row " << i;
      const double value = channel.temperature_C[i];
      if (in_hole(c[kHoles], k, i)) {
        ASSERT_FALSE(std::isfinite(value)) << channel.name << " row " << i;
        continue;
      }
      const double truth = std::stod(kTruth[from + i][1 + std::stoul(channels[k])]);
      ASSERT_NEAR(value, truth, std::stod(c[kTolerance])) << channel.name << " row " << i;
    }
  }
}

// Source: the truth of scripts/make_layout_fixtures.py, which wrote the files. Tolerances are its roundings: half a
// digit of what it wrote, 2 ms for days and hours written with few digits.
TEST_P(Layouts, AreReadAsTheirWriterMeant) {
  const Case& c = GetParam();
  const auto reading = read(kFolder + c[kFile]);
  if (c[kState] == "error") {
    ASSERT_FALSE(reading) << "was read";
    EXPECT_EQ(std::to_string(reading.error().where.line), c[kLine]) << reading.error().text();
    EXPECT_EQ(std::to_string(reading.error().where.column), c[kColumn]) << reading.error().text();
    EXPECT_NE(reading.error().found.find(c[kFound]), std::string::npos) << reading.error().text();
    EXPECT_FALSE(reading.error().message.empty());
    return;
  }
  ASSERT_TRUE(reading) << reading.error().text();
  expect_readings(c, *reading);
  // The layout that was found is complete: with it the log is read the same.
  Options options;
  options.layout = reading->layout;
  const auto again = read(kFolder + c[kFile], options);
  ASSERT_TRUE(again) << "by its own layout: " << again.error().text();
  expect_readings(c, *again);
}

INSTANTIATE_TEST_SUITE_P(Files, Layouts, testing::ValuesIn(cases()), [](const auto& c) {
  std::string name = c.param[kFile];
  std::replace_if(
      name.begin(), name.end(), [](char x) { return std::isalnum(static_cast<unsigned char>(x)) == 0; }, '_');
  return name;
});

}  // namespace
}  // namespace ovenwright::log
