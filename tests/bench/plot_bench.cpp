#include <benchmark/benchmark.h>

#include <QApplication>
#include <cmath>
#include <random>

#include "app/desktop/plot/curve_plot.h"
#include "app/desktop/document/run_view.h"
#include "app/desktop/window/main_window.h"

// How long the desktop takes to draw: all off screen, at the size of a usual window.
namespace ovenwright::desktop {
namespace {

constexpr std::size_t kChannels = 12, kSamples = 1'000'000;

/// Twelve traces of a million samples each, 0.1 °C of noise: the curve of measures, shifted for each channel.
struct LargeRun {
  LargeRun() {
    std::vector<double> times(kSamples);
    for (std::size_t i = 0; i < kSamples; ++i) times[i] = 0.0004 * double(i);
    const auto clock = *run::Clock::make(std::move(times));
    std::mt19937 random(1);
    std::normal_distribution<double> noise(0, 0.1);
    for (std::size_t c = 0; c < kChannels; ++c) {
      std::vector<double> values(kSamples);
      for (std::size_t i = 0; i < kSamples; ++i) {
        const auto s = [](double x) { return 1 / (1 + std::exp(-x)); };
        const double t = clock->time_s()[i] - 2.0 * double(c);
        values[i] = 25 + 125 * s((t - 70) / 16) + 45 * s((t - 150) / 22) + 73 * s((t - 213) / 10) - 225 * s((t - 274) / 13) + noise(random);
      }
      auto& channel = checked.run.channels.emplace_back();
      channel.name = "TC" + std::to_string(c + 1);
      channel.number = int(c) + 1;
      channel.samples = kSamples;
      channel.trace = *run::Trace::make(clock, std::move(values));
    }
    checked.run.from_s = clock->time_s().front();
    checked.run.to_s = clock->time_s().back();
    checked.run.sample_interval_s = clock->median_interval_s();
    view = std::make_shared<const RunView>(checked, reading, check::Request{});
  }
  check::CheckedRun checked;
  log::Reading reading;
  std::shared_ptr<const RunView> view;
};

void zoomAndPan(benchmark::State& state) {
  static const LargeRun large;
  CurvePlot plot;
  plot.resize(1040, 380);
  plot.setFormat({});
  plot.setScene(makeScene(large.view, {}, {}, {}, {}));
  QImage picture(plot.size(), QImage::Format_ARGB32_Premultiplied);
  int step = 0;
  for (auto _ : state) {
    // In to a thirtieth of the run and out again, sideways in between.
    plot.zoomBy(step % 40 < 20 ? 1.18 : 1 / 1.18);
    plot.panBy(step % 2 == 0 ? 0.03 : -0.02);
    plot.replotNow();
    plot.render(&picture);
    ++step;
  }
  state.counters["frames_per_s"] = benchmark::Counter(double(state.iterations()), benchmark::Counter::kIsRate);
}
BENCHMARK(zoomAndPan)->Unit(benchmark::kMillisecond);

/// One frame at 30 a second.
void frameAt30PerSecond(benchmark::State& state) {
  constexpr double kFrame_s = 1.0 / 30;
  for (auto _ : state) state.SetIterationTime(kFrame_s);
}
BENCHMARK(frameAt30PerSecond)->UseManualTime()->Unit(benchmark::kMillisecond)->Iterations(1);

/// From a log that is let go over the window to the verdict on it, drawn.
void dropToVerdict(benchmark::State& state) {
  for (auto _ : state) {
    state.PauseTiming();
    Settings settings;
    Document document;
    MainWindow window(&document, &settings);
    window.resize(1440, 900);
    window.show();
    QApplication::processEvents();
    state.ResumeTiming();
    window.openDemo();
    while (!document.view()) QApplication::processEvents(QEventLoop::WaitForMoreEvents);
    window.grab();
    state.PauseTiming();
    QApplication::processEvents();
    state.ResumeTiming();
  }
}
BENCHMARK(dropToVerdict)->Unit(benchmark::kMillisecond);

void limitOfDrop(benchmark::State& state) {
  constexpr double kLimit_s = 0.150;
  for (auto _ : state) state.SetIterationTime(kLimit_s);
}
BENCHMARK(limitOfDrop)->UseManualTime()->Unit(benchmark::kMillisecond)->Iterations(1);

}  // namespace
}  // namespace ovenwright::desktop

int main(int argc, char** argv) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  qputenv("OVENWRIGHT_PROFILES", OVENWRIGHT_PROFILES);
  QStandardPaths::setTestModeEnabled(true);
  QApplication application(argc, argv);
  benchmark::Initialize(&argc, argv);
  benchmark::RunSpecifiedBenchmarks();
  return 0;
}
