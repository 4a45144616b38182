// `lot`, and `compare` of groups, on an archive of runs whose peaks are known.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>

#include "app/archive/archive.h"
#include "app/archive/keep.h"
#include "core/window/window_file.h"
#include "tests/app/archive/place.h"
#include "tests/command/process.h"

namespace ovenwright {
namespace {

using Json = nlohmann::json;

const std::string kOddName = "\"; drop table run; --";

/// The same tests for an archive in a file and on a server.
class ArchivedLot : public testing::TestWithParam<TestPlace::Kind> {
 protected:
  Folder folder_;
  TestPlace place_{GetParam()};
  std::string archive_ = place_.where();

  /// A run of a log of the tests with `offset_C` on every temperature, run at the given minute.
  std::string add(const std::string& lot, double offset_C, int minute) {
    const std::string path = folder_.path(std::to_string(minute) + ".csv");
    std::ifstream from(std::string{OVENWRIGHT_TEST_DATA} + "/command/passes.csv");
    std::ofstream to(path);
    std::string line;
    std::getline(from, line);
    to << line << "\n";
    while (std::getline(from, line)) {
      std::istringstream cells{line};
      double time_s = 0, u1_C = 0, r2_C = 0;
      char comma = 0;
      cells >> time_s >> comma >> u1_C >> comma >> r2_C;
      to << time_s << "," << u1_C + offset_C << "," << r2_C + offset_C << "\n";
    }
    to.close();
    check::Request request;
    request.windows = {*window::load(std::string{OVENWRIGHT_PROFILES} + "/windows/sac305.toml")};
    const auto checked = check::check(path, request);
    EXPECT_TRUE(checked) << checked.error().text();
    archive::Labels labels;
    labels.lot = lot;
    labels.runAt = archive::Moment{std::chrono::minutes{29'538'720 + minute}};  // from 2026-03-01T00:00:00Z on
    const auto runs = archive::keep(path, request, *checked, labels);
    EXPECT_TRUE(runs) << runs.error().text();
    auto archive = archive::Archive::open(archive_, place_.options());
    EXPECT_TRUE(archive) << archive.error().text();
    const auto added = archive->add(*runs);
    EXPECT_TRUE(added) << added.error().text();
    return added->front().id;
  }

  /// The SHA-256 of a record's log.
  std::string log_digest(const std::string& id) {
    auto archive = archive::Archive::open(archive_, place_.options());
    const auto record = archive ? archive->load(id) : Result<archive::Record>(archive.error());
    EXPECT_TRUE(record) << record.error().text();
    return record->log.sha256;
  }

  Finished program(std::vector<std::string> arguments) {
    arguments.insert(arguments.end(), {"--archive", archive_});
    return ovenwright_program(arguments);
  }
  Json json_of(std::vector<std::string> arguments, int status) {
    arguments.insert(arguments.end(), {"--format", "json"});
    const auto finished = program(arguments);
    EXPECT_EQ(finished.status, status) << finished.err;
    return Json::parse(finished.out, nullptr, false);
  }
  static Json result_of(const Json& report, const std::string& requirement, const std::string& trace) {
    for (const auto& result : report["results"])
      if (result["requirement"] == requirement && result["trace"] == trace) return result;
    return {};
  }
};

INSTANTIATE_TEST_SUITE_P(Both, ArchivedLot, testing::Values(TestPlace::Kind::kFile, TestPlace::Kind::kServer),
                         [](const auto& at) { return at.param == TestPlace::Kind::kFile ? "File" : "Server"; });

// Source: the contract, and algebra. The log peaks at 243.15 °C on U1 (its largest cell); offsets −1, −0.5, …, 1 move
// that, so the mean is 243.15 and the standard deviation √(0.625); in order of time they fall by 0.5, so the mean
// moving range is 0.5. Tolerance: the six digits in which the logs are written.
TEST_P(ArchivedLot, FiguresInOrderOfTime) {
  std::vector<std::string> ids(5);
  for (const int k : {2, 0, 4, 1, 3})  // added in another order
    ids[static_cast<std::size_t>(k)] = add("QM-4712", 1 - 0.5 * k, k);
  add("QM-4713", 5, 60);
  const auto report = json_of({"lot", "QM-4712"}, 0);
  EXPECT_EQ(report["schema"], "ovenwright.lot/1");
  EXPECT_EQ(report["runs"], 5);
  EXPECT_EQ(report["verdict"], "pass");
  const auto peak = result_of(report, "peak", "U1");
  EXPECT_EQ(peak["n"], 5);
  EXPECT_NEAR(peak["mean"].get<double>(), 243.15, 1e-3);
  EXPECT_NEAR(peak["sd"].get<double>(), std::sqrt(0.625), 1e-3);
  EXPECT_NEAR(peak["sd_short_term"].get<double>(), 0.5 / 1.128, 1e-3);
  EXPECT_NEAR(peak["ppk"].get<double>(), (250 - 243.15) / (3 * std::sqrt(0.625)), 2e-3);
  EXPECT_NEAR(peak["control"]["centre"].get<double>(), 243.15, 1e-3);
  // Six in a row are needed to be a trend of Nelson's: five are none.
  EXPECT_TRUE(peak["control"]["signals"].empty());

  const auto text = program({"lot", "QM-4712", "--quiet"});
  EXPECT_EQ(text.status, 0);
  EXPECT_EQ(text.out.find("Pass. All 5 runs pass; the smallest margin is "), 0U) << text.out;
}

TEST_P(ArchivedLot, ChartsAndRulesAreChosen) {
  for (int k = 0; k < 6; ++k) add("QM-4712", 0.1 * k, k);
  const auto nelson = result_of(json_of({"lot", "QM-4712", "--rules", "nelson"}, 0), "peak", "U1");
  ASSERT_FALSE(nelson["control"]["signals"].empty());
  EXPECT_EQ(nelson["control"]["signals"][0]["rule"], "Nelson 3: 6 points in a row rising or falling");
  const auto xbar = result_of(json_of({"lot", "QM-4712", "--chart", "xbar-s", "--subgroup", "3"}, 0), "peak", "U1");
  EXPECT_EQ(xbar["control"]["chart"], "x-bar with S");
  EXPECT_EQ(xbar["spread"]["chart"], "standard deviation");
  EXPECT_TRUE(result_of(json_of({"lot", "QM-4712", "--chart", "ewma"}, 0), "peak", "U1")["spread"].is_null());
  EXPECT_EQ(program({"lot", "QM-4712", "--chart", "pie"}).status, 2);
  EXPECT_EQ(program({"lot", "QM-4712", "--subgroup", "1"}).status, 2);
}

TEST_P(ArchivedLot, TheExitStatusIsTheLotsVerdict) {
  add(kOddName, 0, 0);
  add(kOddName, -15, 1);  // peaks below 235 °C
  const auto report = json_of({"lot", kOddName}, 1);
  EXPECT_EQ(report["lot"], kOddName);
  EXPECT_EQ(report["verdict"], "fail");
  const auto unknown = program({"lot", "QM-9999"});
  EXPECT_EQ(unknown.status, 3);
  EXPECT_NE(unknown.err.find("has no run of the lot \"QM-9999\""), std::string::npos) << unknown.err;
}

// Source: algebra. Groups 0.9 °C apart with the same scatter: the peaks' means differ by 0.9 °C; Welch's half width is
// t(0.975; 4)·√(2·0.25/3), t = 2.776445 (any table).
TEST_P(ArchivedLot, GroupsAreCompared) {
  std::vector<std::string> arguments{"compare", "--a"};
  for (int k = 0; k < 3; ++k) arguments.push_back(add("QM-4712", -0.5 + 0.5 * k, k));
  arguments.emplace_back("--b");
  for (int k = 0; k < 3; ++k) arguments.push_back(add("QM-4713", 0.4 + 0.5 * k, 10 + k));
  const auto report = json_of(arguments, 0);
  EXPECT_EQ(report["schema"], "ovenwright.compare/1");
  EXPECT_EQ(report["n_a"], 3);
  const auto peak = result_of(report, "peak", "U1");
  EXPECT_EQ(peak["n_b"], 3);
  EXPECT_NEAR(peak["difference"].get<double>(), 0.9, 1e-3);
  EXPECT_NEAR(peak["expanded_uncertainty"].get<double>(), 2.776445 * std::sqrt(0.5 / 3), 1e-3);
  EXPECT_EQ(peak["significant"], false);

  // Digests, as they stand on the sheets, name the same records.
  std::vector<std::string> digests;
  for (const auto& argument : arguments)
    digests.push_back(argument == "compare" || argument.starts_with("--") ? argument
                                                                          : log_digest(argument).substr(0, 16));
  EXPECT_EQ(json_of(digests, 0), report);
  const auto unknown = program({"compare", "--a", arguments[2], "--b", "00000000deadbeef"});
  EXPECT_EQ(unknown.status, 3);
  EXPECT_EQ(std::ranges::count(unknown.err, '\n'), 1) << unknown.err;
  EXPECT_NE(unknown.err.find("there is no record"), std::string::npos) << unknown.err;
  EXPECT_EQ(program({"compare", "--a", "none-1", "--b", "none-2"}).status, 3);
  EXPECT_EQ(program({"compare", "--a", "none-1"}).status, 2);
  EXPECT_EQ(ovenwright_program({"compare"}).status, 2);
}

}  // namespace
}  // namespace ovenwright
