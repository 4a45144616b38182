// Reading: a comma log of 100 MB and 12 channels to checked traces, beside fast_float alone over the same mapped bytes;
// 1 000 logs of the demo's size.
#include <benchmark/benchmark.h>
#include <fast_float/fast_float.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <random>
#include <stdexcept>
#include <string>
#include <vector>

#include "core/clean/clean.h"
#include "core/log/log_file.h"
#include "core/log/reading.h"

namespace ovenwright {
namespace {

constexpr std::size_t kBytes = 100'000'000, kChannels = 12;

double S(double x) { return 1 / (1 + std::exp(-x)); }

/// A log of so many bytes in a temporary file, gone at the end of the program: twelve noisy reflow traces of one
/// decimal on a clock of milliseconds.
class LongLog {
 public:
  LongLog() : path_(std::filesystem::temp_directory_path() / "ovenwright_read_bench.csv") {
    std::ofstream file(path_, std::ios::binary);
    std::string text = "Time (s)";
    for (std::size_t k = 1; k <= kChannels; ++k) text += ",TC" + std::to_string(k) + " (°C)";
    text += '\n';
    std::mt19937_64 engine(1);
    std::normal_distribution<double> noise(0, 0.1);
    constexpr double kInterval_s = 0.001, kDuration_s = 1300;
    std::size_t written = 0;
    char number[32];
    for (std::size_t row = 0; written + text.size() < kBytes; ++row) {
      const double t = 400 * static_cast<double>(row) * kInterval_s / kDuration_s;
      text.append(number, static_cast<std::size_t>(
                              std::snprintf(number, sizeof number, "%.3f", static_cast<double>(row) * kInterval_s)));
      for (std::size_t k = 0; k < kChannels; ++k) {
        const double late = t - 0.7 * static_cast<double>(k);
        const double clean = 25 + 125 * S((late - 70) / 16) + 45 * S((late - 150) / 22) + 73 * S((late - 213) / 10) -
                             225 * S((late - 274) / 13);
        text.append(number,
                    static_cast<std::size_t>(std::snprintf(number, sizeof number, ",%.1f", clean + noise(engine))));
      }
      text += '\n';
      if (text.size() > (1U << 20)) {
        file << text;
        written += text.size();
        text.clear();
      }
    }
    file << text;
    if (!file) throw std::runtime_error("cannot write " + path_.string());
  }
  ~LongLog() {
    std::error_code ignored;
    std::filesystem::remove(path_, ignored);
  }
  LongLog(const LongLog&) = delete;
  LongLog& operator=(const LongLog&) = delete;
  std::string path() const { return path_.string(); }

 private:
  std::filesystem::path path_;
};

const LongLog& long_log() {
  static const LongLog log;
  return log;
}

/// The numbers of all rows, one after the other, by fast_float alone.
void FastFloatLoop(benchmark::State& state) {
  const auto file = log::LogBytes::open(long_log().path());
  const std::string_view text = (*file)->bytes();
  const char* const end = text.data() + text.size();
  const char* const first = text.data() + text.find('\n') + 1;
  for (auto _ : state) {
    double sum = 0;
    for (const char* p = first; p < end; ++p) {  // over the comma or line end
      double value = 0;
      p = fast_float::from_chars(p, end, value).ptr;
      sum += value;
    }
    benchmark::DoNotOptimize(sum);
  }
}
BENCHMARK(FastFloatLoop)->Unit(benchmark::kMillisecond)->UseRealTime();

/// The same, and the numbers kept: a column each.
void FastFloatKept(benchmark::State& state) {
  const auto file = log::LogBytes::open(long_log().path());
  const std::string_view text = (*file)->bytes();
  const char* const end = text.data() + text.size();
  const char* const first = text.data() + text.find('\n') + 1;
  for (auto _ : state) {
    std::vector<std::vector<double>> columns(kChannels + 1);
    for (auto& column : columns) column.reserve(kBytes / 60);
    for (const char* p = first; p < end;) {
      for (auto& column : columns) {
        double value = 0;
        p = fast_float::from_chars(p, end, value).ptr + 1;
        column.push_back(value);
      }
    }
    benchmark::DoNotOptimize(columns);
  }
}
BENCHMARK(FastFloatKept)->Unit(benchmark::kMillisecond)->UseRealTime();

/// Memory of the process at its highest since the last call, in bytes; 0 where the system does not say.
double peak_memory() {
  std::ifstream status("/proc/self/status");
  for (std::string word; status >> word;) {
    if (word != "VmHWM:") continue;
    double kibibytes = 0;
    status >> kibibytes;
    std::ofstream("/proc/self/clear_refs") << "5";
    return kibibytes * 1024;
  }
  return 0;
}

/// From the path to checked traces: detection, numbers, faults.
void read_to_checked_traces(benchmark::State& state, bool digest) {
  log::Options options;
  options.threads = static_cast<unsigned>(state.range(0));
  options.digest = digest;
  long_log();
  double most = 0;
  for (auto _ : state) {
    peak_memory();
    const double before = peak_memory();
    auto reading = log::read(long_log().path(), options);
    if (!reading) throw std::runtime_error(reading.error().text());
    const std::size_t numbers = reading->read_as.rows * (kChannels + 1);
    auto runs = clean::clean(std::move(reading->channels), {nullptr, {}, options.threads});
    if (!runs || runs->front().channels.size() != kChannels) throw std::runtime_error("no traces");
    benchmark::DoNotOptimize(runs);
    const double kept = static_cast<double>(numbers) * sizeof(double) + static_cast<double>(kBytes);
    most = std::max(most, (peak_memory() - before) / kept);
  }
  state.counters["memory"] = most;
}
void ReadToCheckedTraces(benchmark::State& state) { read_to_checked_traces(state, false); }
BENCHMARK(ReadToCheckedTraces)->ArgName("threads")->Arg(1)->Arg(2)->Unit(benchmark::kMillisecond)->UseRealTime();
void ReadWithDigest(benchmark::State& state) { read_to_checked_traces(state, true); }
BENCHMARK(ReadWithDigest)->ArgName("threads")->Arg(1)->Arg(2)->Unit(benchmark::kMillisecond)->UseRealTime();

/// A log of the demo's size from its bytes to checked traces.
void ReadDemoLog(benchmark::State& state) {
  const auto file = log::LogBytes::open(OVENWRIGHT_PROFILES "/demo/tern_run1.csv");
  log::Options options;
  options.threads = 1;
  for (auto _ : state) {
    auto reading = log::read_bytes("demo", (*file)->bytes(), options);
    auto runs = clean::clean(std::move(reading->channels));
    benchmark::DoNotOptimize(runs);
  }
}
BENCHMARK(ReadDemoLog)->Unit(benchmark::kMicrosecond);

}  // namespace
}  // namespace ovenwright
