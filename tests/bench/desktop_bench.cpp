#include <benchmark/benchmark.h>

#include <QApplication>
#include <QDragEnterEvent>
#include <QDropEvent>
#include <QMimeData>
#include <QMouseEvent>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <cmath>
#include <future>
#include <random>

#include "app/desktop/archive/archive_link.h"
#include "app/desktop/document/run_view.h"
#include "app/desktop/plot/curve_plot.h"
#include "app/desktop/settings/settings.h"
#include "app/desktop/tune/recipe_strip.h"
#include "app/desktop/tune/tune_page.h"
#include "app/desktop/window/main_window.h"
#include "core/board/board_file.h"
#include "core/check/check.h"
#include "core/oven/oven_file.h"
#include "core/window/window_file.h"

// How long the desktop takes to draw: all off screen, at the size of a usual window.
namespace ovenwright::desktop {
namespace {

constexpr std::size_t kChannels = 12, kSamples = 1'000'000;

/// Twelve traces of a million samples each, 0.1 °C of noise: the curve of measures, shifted for each channel.
struct LargeRun {
  static const LargeRun& instance() {
    static const LargeRun large;
    return large;
  }
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
        values[i] = 25 + 125 * s((t - 70) / 16) + 45 * s((t - 150) / 22) + 73 * s((t - 213) / 10) -
                    225 * s((t - 274) / 13) + noise(random);
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

void ZoomAndPan(benchmark::State& state) {
  const auto& large = LargeRun::instance();
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
BENCHMARK(ZoomAndPan)->Unit(benchmark::kMillisecond);

const QString kDemo = QStringLiteral(OVENWRIGHT_PROFILES "/demo/");

check::Request demoRequest() {
  const auto path = [](const char* name) { return (kDemo + QLatin1String(name)).toStdString(); };
  check::Request request;
  request.windows.push_back(*window::load(path("window.toml")));
  request.board = *board::load(path("board.toml"));
  request.oven = *oven::load_oven(path("oven.toml"));
  request.recipe = *oven::load_recipe(path("recipe.toml"));
  return request;
}

/// From a log that is let go over the window to the verdict on it, painted.
void DropToVerdict(benchmark::State& state) {
  Settings settings;
  for (auto _ : state) {
    state.PauseTiming();
    {
      Document document;
      document.setInitialSetup(demoRequest());
      ArchiveLink archive;
      MainWindow window(&document, &settings, &archive);
      window.resize(1440, 900);
      window.show();
      QApplication::processEvents();
      window.grab();
      QMimeData data;
      data.setUrls({QUrl::fromLocalFile(kDemo + QStringLiteral("tern_run1.csv"))});
      const QPoint middle(700, 400);
      state.ResumeTiming();
      QDragEnterEvent enter(middle, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
      QApplication::sendEvent(&window, &enter);
      QDropEvent drop(middle, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
      QApplication::sendEvent(&window, &drop);
      while (!document.view()) QApplication::processEvents(QEventLoop::WaitForMoreEvents);
      window.grab();
      state.PauseTiming();
    }
    state.ResumeTiming();
  }
}
BENCHMARK(DropToVerdict)->Unit(benchmark::kMillisecond)->Iterations(8);

/// The same log read and judged by core alone, on a thread of its own as the program does: what painting leaves in the
/// vector registers of this one makes each exponential several times as slow.
void JudgeDemoLog(benchmark::State& state) {
  const check::Request request = demoRequest();
  const std::string log = (kDemo + QStringLiteral("tern_run1.csv")).toStdString();
  for (auto _ : state)
    benchmark::DoNotOptimize(std::async(std::launch::async, [&] { return check::check(log, request); }).get());
}
BENCHMARK(JudgeDemoLog)->Unit(benchmark::kMillisecond)->UseRealTime();

/// Tune of twelve thermocouples in ten zones: the demo's run with each trace twice, the second one 2 °C hotter.
class TuneWindow {
 public:
  TuneWindow() {
    auto request = demoRequest();
    const auto demo = check::check((kDemo + QStringLiteral("tern_run1.csv")).toStdString(), request);
    const auto& run = demo->runs.front().run;
    QByteArray text = "Time (s)";
    for (const char* copy : {"", " B"})
      for (const auto& channel : run.channels) text += "," + QByteArray::fromStdString(channel.name) + copy + " (degC)";
    const auto time_s = run.channels.front().trace->time_s();
    for (const double t : time_s) {
      text += "\n" + QByteArray::number(t, 'f', 1);
      for (const double more_C : {0.0, 2.0})
        for (const auto& channel : run.channels)
          text += "," + QByteArray::number(channel.trace->at(t) + more_C, 'f', 1);
    }
    QFile file(m_folder.filePath(QStringLiteral("twelve.csv")));
    if (file.open(QIODevice::WriteOnly)) file.write(text + "\n");
    file.close();
    request.board.reset();
    m_document.setInitialSetup(std::move(request));
    m_window.resize(1440, 900);
    m_window.show();
    m_document.openFiles({file.fileName()});
    while (!m_document.view()) QApplication::processEvents(QEventLoop::WaitForMoreEvents);
    m_window.showTask(MainWindow::Task::kTune);
    m_window.tunePage()->setAllCurvesShown(true);
    waitUntil([this] { return session()->isSettled() && !session()->isBusy(); });
    const auto field = strip()->layoutNow().field(kField);
    m_from = strip()->mapToGlobal(field.center().toPoint() - QPoint(8, 0));
    send(QEvent::MouseButtonPress, 0);
  }
  TuneSession* session() { return m_window.tunePage()->session(); }

  /// The mouse by so many pixels above where it was pressed.
  void dragTo(int up) { send(QEvent::MouseMove, up); }
  /// Until the recipe's values, or its band too, stand on the screen.
  void waitForPaint(bool band) {
    waitUntil([&] {
      const auto* bench = session()->bench();
      return band ? session()->isSettled() : sameNumbers(bench->prediction->recipe, bench->edit.recipe);
    });
    for (int turn = 0; turn < 3; ++turn) QApplication::processEvents();  // a plot asks for its painting in its own turn
  }

 private:
  static constexpr RecipeField kField{RecipeField::Kind::kTop, 7};
  RecipeStrip* strip() { return m_window.tunePage()->strip(); }
  void send(QEvent::Type type, int up) {
    const QPoint global = m_from - QPoint(0, up);
    QMouseEvent event(type, strip()->mapFromGlobal(global), global, Qt::LeftButton, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(strip(), &event);
  }
  static void waitUntil(const std::function<bool()>& done) {
    while (!done()) QApplication::processEvents(QEventLoop::WaitForMoreEvents);
  }

  QTemporaryDir m_folder;
  Settings m_settings;
  Document m_document;
  ArchiveLink m_archive;
  MainWindow m_window{&m_document, &m_settings, &m_archive};
  QPoint m_from;
};

void DragSetpoint(benchmark::State& state, bool band) {
  TuneWindow window;
  int step = 0;
  for (auto _ : state) {
    window.dragTo(6 + 3 * std::min(step % 24, 24 - step % 24));  // up and down by 12 °C
    window.waitForPaint(band);
    ++step;
  }
  state.counters["frames_per_s"] = benchmark::Counter(double(state.iterations()), benchmark::Counter::kIsRate);
}
/// From a mouse that moved a setpoint to the predicted curves, lanes and sentence, painted.
void DragToPaintedValues(benchmark::State& state) { DragSetpoint(state, false); }
BENCHMARK(DragToPaintedValues)->Unit(benchmark::kMillisecond)->UseRealTime();
/// The same until the band and the chances are painted too.
void DragToPaintedBand(benchmark::State& state) { DragSetpoint(state, true); }
BENCHMARK(DragToPaintedBand)->Unit(benchmark::kMillisecond)->UseRealTime();

/// The prediction of such a drag alone, judged.
void PredictDragged(benchmark::State& state) {
  TuneWindow window;
  const auto* bench = window.session()->bench();
  oven::Recipe recipe = bench->measured;
  int step = 0;
  for (auto _ : state) {
    recipe.top_C[7] = recipe.bottom_C[7] = bench->measured.top_C[7] + std::min(step % 24, 24 - step % 24);
    benchmark::DoNotOptimize(predict(bench->model, recipe, false));
    ++step;
  }
}
BENCHMARK(PredictDragged)->Unit(benchmark::kMillisecond)->UseRealTime();

/// What a frame of the curves is measured against: every sample of the twelve traces read once.
void LookAtEverySample(benchmark::State& state) {
  const auto& large = LargeRun::instance();
  for (auto _ : state) {
    double highest = 0;
    for (const auto& channel : large.view->channels())
      for (const double value : channel.trace->temperature_C()) highest = std::max(highest, value);
    benchmark::DoNotOptimize(highest);
  }
}
BENCHMARK(LookAtEverySample)->Unit(benchmark::kMillisecond);

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
