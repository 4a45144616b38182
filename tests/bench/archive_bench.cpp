// An archive of 100 000 demo-size runs: opened to a list, filtered; and 100 runs added in one call.
#include <benchmark/benchmark.h>
#include <stdlib.h>

#include <QCoreApplication>
#include <filesystem>
#include <random>
#include <string>

#include "app/archive/archive.h"
#include "app/archive/body.h"
#include "app/archive/keep.h"
#include "app/archive/pack.h"
#include "app/archive/schema.h"
#include "app/archive/store.h"
#include "core/files/digest.h"
#include "core/window/window_file.h"

namespace ovenwright {
namespace {

constexpr int kRuns = 100'000;

void needApplication() {
  static int count = 1;
  static char name[] = "archive_bench";
  static char* arguments[] = {name, nullptr};
  static const QCoreApplication application(count, arguments);
}

class Folder {
 public:
  Folder() {
    std::string name = (std::filesystem::temp_directory_path() / "ovenwright_bench_XXXXXX").string();
    m_path = ::mkdtemp(name.data());
  }
  ~Folder() { std::filesystem::remove_all(m_path); }
  const std::string& path() const { return m_path; }

 private:
  std::string m_path;
};

/// The demo run as it is kept, by the window shipped for its alloy.
archive::NewRun demoRun() {
  check::Request request;
  request.windows = {*window::load(OVENWRIGHT_PROFILES "/demo/window.toml")};
  const std::string log = OVENWRIGHT_PROFILES "/demo/tern_run1.csv";
  return archive::keep(log, request, *check::check(log, request), {"QM-1", "1", "R. Quill", std::nullopt})->front();
}

/// Rows, records and logs of the sizes that real ones have; bytes of logs are noise, which packs no smaller.
std::string bigArchive() {
  static const Folder folder;
  const std::string path = folder.path() + "/archive.sqlite";
  if (std::filesystem::exists(path)) return path;
  needApplication();
  const auto demo = demoRun();
  const QByteArray parcel = archive::packedParcel({std::string(1200, 'x'), demo.report, demo.text});
  { const auto made = archive::Archive::open(path); }
  auto database = *archive::Database::openFile(path, archive::Database::Mode::kReadWrite, 1000);
  std::mt19937 random{7};
  QByteArray noise(archive::packed(*demo.log.bytes, archive::Effort::kSmall).size(), Qt::Uninitialized);
  for (auto& byte : noise) byte = static_cast<char>(random());
  archive::Chain chain{"benchmrk", "bench", "bench", kRuns, archive::noPrevious(), 0};
  (void)archive::insertChain(*database, chain);
  for (int i = 1; i <= kRuns; ++i) {
    if (i % 1000 == 1) (void)database->begin();
    archive::Record record;
    record.chain = chain.id;
    record.number = static_cast<std::uint64_t>(i);
    record.digest = files::sha256_hex(std::to_string(i));
    auto& summary = record.summary;
    summary.id = summary.origin = archive::recordId(chain.id, record.number);
    summary.lot = "QM-" + std::to_string(1000 + i / 200);
    summary.serial = "S" + std::to_string(100'000 + i);
    summary.board = "Board " + std::to_string(i % 17) + ", main side";
    summary.oven = "Ten-zone line oven " + std::to_string(i % 4);
    summary.recipe = "LF main board, revision " + std::to_string(i % 9);
    summary.window = "SAC305, general";
    summary.windowRevision = "1";
    summary.operatorName = "R. Quill";
    summary.logName = "run_" + std::to_string(i) + ".csv";
    summary.runAt = summary.addedAt = archive::Moment{std::chrono::milliseconds{1'600'000'000'000 + i * 600'000LL}};
    summary.verdict = i % 23 == 0 ? judge::Verdict::kFail : judge::Verdict::kPass;
    summary.margin = 0.001 * (i % 300);
    record.log = {summary.logName, std::nullopt, files::sha256_hex(summary.logName)};
    noise[static_cast<qsizetype>(i % 1000)] = static_cast<char>(i);
    (void)archive::insertContent(*database, record.log.sha256, {demo.log.bytes->size(), noise});
    (void)archive::insertRecord(*database, record, parcel);
    if (i % 1000 == 0) (void)database->commit();
  }
  return path;
}

archive::Archive openBig() {
  needApplication();
  archive::Options options;
  options.access = archive::Access::kReadOnly;
  return *archive::Archive::open(bigArchive(), options);
}

void ArchiveOpenToList(benchmark::State& state) {
  (void)bigArchive();
  for (auto _ : state) {
    auto archive = openBig();
    benchmark::DoNotOptimize(archive.find({}, 200));
    benchmark::DoNotOptimize(archive.count({}));
  }
}
BENCHMARK(ArchiveOpenToList)->Unit(benchmark::kMillisecond)->UseRealTime();

archive::Filter filterOf(const std::string& what) {
  archive::Filter filter;
  if (what == "lot") filter.lot = "QM-1200";
  if (what == "board") filter.board = "Board 3, main side";
  if (what == "verdict") filter.verdicts = {judge::Verdict::kFail};
  if (what == "most") filter.verdicts = {judge::Verdict::kPass};
  if (what == "date") {
    filter.from = archive::Moment{std::chrono::milliseconds{1'620'000'000'000}};
    filter.to = archive::Moment{std::chrono::milliseconds{1'640'000'000'000}};
  }
  if (what == "several") {
    filter.board = "Board 3, main side";
    filter.recipe = "LF main board, revision 2";
    filter.verdicts = {judge::Verdict::kFail};
  }
  if (what == "latest") filter.latestOnly = true;
  if (what == "text_rare") filter.text = "run_77777";
  if (what == "text_none") filter.text = "nowhere";
  if (what == "text_all") filter.text = "quill";
  if (what == "text_board") {
    filter.text = "general qm-1400";
    filter.board = "Board 3, main side";
  }
  return filter;
}

void ArchiveFilter(benchmark::State& state, const char* what) {
  auto archive = openBig();
  const auto filter = filterOf(what);
  for (auto _ : state) {
    benchmark::DoNotOptimize(archive.find(filter, 200));
    benchmark::DoNotOptimize(archive.count(filter));
  }
}
#define OVENWRIGHT_FILTER(what) \
  BENCHMARK_CAPTURE(ArchiveFilter, what, #what)->Unit(benchmark::kMillisecond)->UseRealTime()
OVENWRIGHT_FILTER(lot);
OVENWRIGHT_FILTER(board);
OVENWRIGHT_FILTER(verdict);
OVENWRIGHT_FILTER(most);
OVENWRIGHT_FILTER(date);
OVENWRIGHT_FILTER(several);
OVENWRIGHT_FILTER(latest);
OVENWRIGHT_FILTER(text_rare);
OVENWRIGHT_FILTER(text_none);
OVENWRIGHT_FILTER(text_all);
OVENWRIGHT_FILTER(text_board);

/// A page in another order than that of time: the first one, and the one behind it.
void ArchiveSort(benchmark::State& state, archive::Order::Key key, const char* what) {
  auto archive = openBig();
  const auto filter = filterOf(what);
  const archive::Order order{key, true};
  const auto first = archive.find(filter, 200, std::nullopt, order);
  std::optional<archive::Cursor> after;
  for (auto _ : state) {
    benchmark::DoNotOptimize(archive.find(filter, 200, after, order));
    after = after ? std::nullopt : first->next;
  }
}
#define OVENWRIGHT_SORT(name, key, what) \
  BENCHMARK_CAPTURE(ArchiveSort, name, archive::Order::Key::key, what)->Unit(benchmark::kMillisecond)->UseRealTime()
OVENWRIGHT_SORT(lot, kLot, "");
OVENWRIGHT_SORT(verdict, kVerdict, "");
OVENWRIGHT_SORT(margin, kMargin, "");
OVENWRIGHT_SORT(margin_latest, kMargin, "latest");
OVENWRIGHT_SORT(lot_text_all, kLot, "text_all");

void ArchiveLots(benchmark::State& state) {
  auto archive = openBig();
  for (auto _ : state) benchmark::DoNotOptimize(archive.lots());
}
BENCHMARK(ArchiveLots)->Unit(benchmark::kMillisecond)->UseRealTime();

/// 100 runs in one call, each a log of its own of the demo's size.
void ArchiveAdd100(benchmark::State& state) {
  needApplication();
  const Folder folder;
  auto archive = *archive::Archive::open(folder.path() + "/archive.sqlite");
  const auto demo = demoRun();
  int number = 0;
  for (auto _ : state) {
    state.PauseTiming();
    std::vector<archive::NewRun> runs(100, demo);
    for (auto& run : runs) {
      auto bytes = *demo.log.bytes + "\n# " + std::to_string(number++) + "\n";
      run.log.sha256 = files::sha256_hex(bytes);
      run.log.bytes = std::make_shared<const std::string>(std::move(bytes));
    }
    state.ResumeTiming();
    const auto added = archive.add(runs);
    if (!added) state.SkipWithError(added.error().text().c_str());
  }
}
BENCHMARK(ArchiveAdd100)->Unit(benchmark::kMillisecond)->UseRealTime();

}  // namespace
}  // namespace ovenwright
