#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "core/log/reading.h"

// Where each sample stands in the file, in every form: what stands at that place of the text is the sample.
namespace ovenwright::log {
namespace {

std::vector<std::string> split(const std::string& text, char at) {
  std::vector<std::string> parts(1);
  for (const char c : text)
    if (c == at)
      parts.emplace_back();
    else
      parts.back() += c;
  return parts;
}

struct Case {
  const char* name;
  std::string text;
  char delimiter;
};
void PrintTo(const Case& c, std::ostream* os) { *os << c.name; }

/// Some forty rows of a hill for two channels, 1 s apart.
std::string value(int second, int channel) {
  return std::to_string(30 + 5 * (second < 20 ? second : 40 - second) - 3 * channel) + "." +
         std::to_string(second % 10);
}
Case wide(bool newest_first) {
  std::string text = "Line 2\nTime (s),TC1 (°C),TC2 (°C)\n";
  for (int i = 0; i < 40; ++i) {
    const int second = newest_first ? 39 - i : i;
    if (i == 11) text += "\n# door opened\n";
    text += std::to_string(second) + "," + value(second, 1) + "," + value(second, 2) + "\n";
  }
  return {newest_first ? "newest_first" : "wide", text, ','};
}
Case of_channels() {
  std::string text = "Time (s);Channel;Temperature (°C)\n";
  for (int second = 0; second < 40; ++second)
    for (const int channel : {2, 1})
      text += std::to_string(second) + ";TC" + std::to_string(channel) + ";" + value(second, channel) + "\n";
  return {"long", text, ';'};
}
Case of_rows() {
  std::string rows[] = {"Time (s)", "TC1 (°C)", "TC2 (°C)"};
  for (int second = 0; second < 40; ++second)
    for (const int i : {0, 1, 2}) rows[i] += "\t" + (i == 0 ? std::to_string(second) : value(second, i));
  return {"rows", "Made by hand\n" + rows[0] + "\n" + rows[1] + "\n" + rows[2] + "\n", '\t'};
}

class Cells : public testing::TestWithParam<Case> {};

TEST_P(Cells, HoldTheSamples) {
  Options options;
  options.keep_cells = true;
  const auto reading = read_bytes("a.txt", GetParam().text, options);
  ASSERT_TRUE(reading) << reading.error().text();
  const auto lines = split(GetParam().text, '\n');
  ASSERT_EQ(reading->channels.size(), 2u);
  ASSERT_EQ(reading->cells.size(), 2u);
  for (std::size_t k = 0; k < 2; ++k) {
    const auto& temperatures = reading->channels[k].temperature_C;
    ASSERT_EQ(temperatures.size(), 40u);
    ASSERT_EQ(reading->cells[k].size(), 40u);
    for (std::size_t i = 0; i < 40; ++i) {
      const auto [line, column] = reading->cells[k][i];
      const auto cells = split(lines.at(line - 1), GetParam().delimiter);
      EXPECT_EQ(std::stod(cells.at(static_cast<std::size_t>(column - 1))), temperatures[i]);
    }
  }
  const auto without = read_bytes("a.txt", GetParam().text);
  ASSERT_TRUE(without);
  EXPECT_TRUE(without->cells.empty());
  EXPECT_EQ(without->channels[1].temperature_C, reading->channels[1].temperature_C);
}

INSTANTIATE_TEST_SUITE_P(Forms, Cells, testing::Values(wide(false), wide(true), of_channels(), of_rows()),
                         [](const auto& each) { return std::string(each.param.name); });

}  // namespace
}  // namespace ovenwright::log
