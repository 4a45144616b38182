// One run written in other ways is the same run, from the file's bytes to the verdict: channels in another order, on
// another clock, in °F, in two files that are joined again. On the demo's logs, rounded to 0.1 °C.
#include <gtest/gtest.h>

#include <fmt/format.h>

#include <cmath>
#include <fstream>
#include <iterator>
#include <map>
#include <sstream>
#include <string>
#include <vector>

#include "core/check/check.h"
#include "core/window/window_file.h"

namespace ovenwright::check {
namespace {

/// A log as a table of texts: a header, then rows of a time and readings.
struct Table {
  std::vector<std::string> header;
  std::vector<std::vector<std::string>> rows;

  static Table demo() {
    std::ifstream file(std::string{OVENWRIGHT_PROFILES "/demo/tern_run2.csv"});
    Table table;
    for (std::string line; std::getline(file, line);) {
      std::vector<std::string> cells;
      std::istringstream stream{line};
      for (std::string cell; std::getline(stream, cell, ',');) cells.push_back(cell);
      table.header.empty() ? table.header = cells : table.rows.emplace_back(cells);
    }
    return table;
  }
  std::string text(std::size_t first = 0, std::size_t end = std::string::npos) const {
    std::string out = fmt::format("{}\n", fmt::join(header, ","));
    for (std::size_t i = first; i < std::min(end, rows.size()); ++i)
      out += fmt::format("{}\n", fmt::join(rows[i], ","));
    return out;
  }
};

CheckedLog checked(const std::string& text) {
  log::Options options;
  options.digest = false;
  auto reading = log::read_bytes("log.csv", text, options);
  EXPECT_TRUE(reading) << reading.error().text();
  Request request;
  auto window = window::find("sac305");
  EXPECT_TRUE(window) << window.error().text();
  request.windows.push_back(*window);
  auto log = check(*std::move(reading), request);
  EXPECT_TRUE(log) << log.error().text();
  EXPECT_EQ(log->runs.size(), 1U);
  return *std::move(log);
}

/// Every outcome by what it is about.
std::map<std::string, const judge::Outcome*> outcomes(const CheckedLog& log) {
  std::map<std::string, const judge::Outcome*> out;
  const auto& judgement = log.runs.front().judgement;
  for (std::size_t i = 0; i < judgement.all_size(); ++i)
    out[judgement.all(i).requirement_name + " of " + judgement.all(i).trace] = &judgement.all(i);
  return out;
}

/// The same values, uncertainties and verdicts. @param within  of a value; of its half width ten times as much may
/// differ
void expect_same(const CheckedLog& a, const CheckedLog& b, double within) {
  const auto one = outcomes(a), other = outcomes(b);
  ASSERT_EQ(one.size(), other.size());
  for (const auto& [name, outcome] : one) {
    ASSERT_TRUE(other.contains(name)) << name;
    const auto &x = *outcome, &y = *other.at(name);
    ASSERT_EQ(x.value.value.has_value(), y.value.value.has_value()) << name;
    if (x.value.value) {
      EXPECT_NEAR(*x.value.value, *y.value.value, within) << name;
    }
    if (x.value.expanded_uncertainty) {
      EXPECT_NEAR(*x.value.expanded_uncertainty, y.value.expanded_uncertainty.value_or(-1), 10 * within) << name;
    }
    EXPECT_EQ(x.verdict, y.verdict) << name;
  }
  EXPECT_EQ(a.runs.front().judgement.verdict, b.runs.front().judgement.verdict);
}

constexpr double kSums = 1e-9;  // sums in another order, of numbers below 1000

TEST(SameLog, ChannelsInAnotherOrder) {
  auto table = Table::demo();
  const auto as_it_was = checked(table.text());
  std::reverse(table.header.begin() + 1, table.header.end());
  for (auto& row : table.rows) std::reverse(row.begin() + 1, row.end());
  const auto reversed = checked(table.text());
  EXPECT_EQ(reversed.runs[0].run.channels.front().name, as_it_was.runs[0].run.channels.back().name);
  expect_same(as_it_was, reversed, kSums);
}

TEST(SameLog, OnAClockThatStartsLater) {
  auto table = Table::demo();
  const auto as_it_was = checked(table.text());
  for (auto& row : table.rows) row[0] = fmt::format("{:.1f}", std::stod(row[0]) + 1000);
  const auto later = checked(table.text());
  expect_same(as_it_was, later, 1e-9 * 1000);  // digits that 1000 s take from a double
  const auto one = outcomes(as_it_was), other = outcomes(later);
  for (const auto& [name, outcome] : one)
    if (outcome->value.from_s) {
      EXPECT_NEAR(*outcome->value.from_s + 1000, *other.at(name)->value.from_s, 1e-6) << name;
    }
}

TEST(SameLog, InFahrenheit) {
  auto table = Table::demo();
  const auto celsius = checked(table.text());
  for (std::size_t k = 1; k < table.header.size(); ++k)
    table.header[k] = table.header[k].substr(0, table.header[k].find(" (")) + " (\u00B0F)";
  for (auto& row : table.rows)
    for (std::size_t k = 1; k < row.size(); ++k) row[k] = fmt::format("{:.2f}", std::stod(row[k]) * 1.8 + 32);
  const auto fahrenheit = checked(table.text());
  EXPECT_EQ(fahrenheit.reading.read_as.unit, "degF");
  expect_same(celsius, fahrenheit, 1e-6);  // 0.1 °C is 0.18 °F: two digits hold it whole
}

TEST(SameLog, SplitIntoTwoFilesAndJoinedAgain) {
  const auto table = Table::demo();
  const auto whole = checked(table.text());
  log::Options options;
  options.digest = false;
  const auto all = log::read_bytes("log.csv", table.text(), options);
  ASSERT_TRUE(all);
  for (const std::size_t cut : {200U, 431U, 700U}) {
    const auto first = log::read_bytes("1.csv", table.text(0, cut), options);
    const auto second = log::read_bytes("2.csv", table.text(cut), options);
    ASSERT_TRUE(first && second) << cut;
    // No row is lost at the cut, and none is changed.
    for (std::size_t k = 0; k < all->channels.size(); ++k) {
      auto joined = first->channels[k].temperature_C;
      joined.insert(joined.end(), second->channels[k].temperature_C.begin(), second->channels[k].temperature_C.end());
      EXPECT_EQ(joined, all->channels[k].temperature_C) << cut;
      auto times = *first->channels[k].time_s;
      times.insert(times.end(), second->channels[k].time_s->begin(), second->channels[k].time_s->end());
      EXPECT_EQ(times, *all->channels[k].time_s) << cut;
    }
    // As a person joins them, with the header once more in between.
    expect_same(whole, checked(table.text(0, cut) + table.text(cut)), kSums);
  }
}

}  // namespace
}  // namespace ovenwright::check
