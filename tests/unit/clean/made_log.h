#pragma once
#include <cmath>
#include <cstddef>
#include <limits>
#include <memory>
#include <random>
#include <string>
#include <vector>

#include "core/clean/clean.h"

namespace ovenwright::clean {

inline constexpr double kOpenCell = std::numeric_limits<double>::quiet_NaN();

/// A log to spoil: four traces of one reflow pass as sums of logistic steps (up to a soak, up to the peak, down), each
/// slower than the one before, with normal noise of 0.1 °C rounded to 0.1 °C. 25 °C at the start, peaks about 240 °C
/// near 270 s, 400 s long. Nothing in it is a fault.
struct MadeLog {
  std::vector<double> time_s;
  std::vector<std::vector<double>> temperature_C;

  explicit MadeLog(double interval_s = 0.5, double length_s = 400, unsigned seed = 1) {
    std::mt19937 random(seed);
    std::normal_distribution<double> noise(0, 0.1);
    const auto step = [](double x) { return 1 / (1 + std::exp(-x)); };
    for (std::size_t i = 0; static_cast<double>(i) * interval_s <= length_s; ++i)
      time_s.push_back(static_cast<double>(i) * interval_s);
    for (int trace = 0; trace < 4; ++trace) {
      const double late = 3.0 * trace, slow = 1 + 0.1 * trace;
      auto& T = temperature_C.emplace_back();
      for (const double t : time_s) {
        const double curve = 25 + 125 * step((t - 75 - late) / (14 * slow)) +
                             45 * step((t - 150 - late) / (22 * slow)) +
                             (70 - 3 * trace) * step((t - 230 - late) / (11 * slow)) -
                             (200 - 10 * trace) * step((t - 300 - late) / (14 * slow));
        T.push_back(std::round((curve + noise(random)) * 10) / 10);
      }
    }
  }

  std::vector<run::RawChannel> channels() const {
    const auto times = std::make_shared<const std::vector<double>>(time_s);
    std::vector<run::RawChannel> raw;
    for (std::size_t k = 0; k < temperature_C.size(); ++k)
      raw.push_back({"TC" + std::to_string(k + 1), static_cast<int>(k) + 1, times, temperature_C[k]});
    return raw;
  }

  /// The row at or after a time.
  std::size_t row(double at_s) const {
    std::size_t i = 0;
    while (i + 1 < time_s.size() && time_s[i] < at_s) ++i;
    return i;
  }
};

/// Every fault of a run as "channel kind from to action", the log's own as channel "log".
inline std::vector<std::string> faults_of(const run::Run& run) {
  std::vector<std::string> texts;
  const auto add = [&](const std::string& channel, const run::Fault& fault) {
    const auto seconds = [](double s) {
      const auto text = std::to_string(s);
      return text.substr(0, text.find('.') + 2);
    };
    texts.push_back(channel + " " + run::fault_name(fault.kind) + " " + seconds(fault.from_s) + " " +
                    seconds(fault.to_s) + (fault.action == run::FaultAction::kRemoved ? " removed" : " flagged"));
  };
  for (const auto& fault : run.faults) add("log", fault);
  for (const auto& channel : run.channels)
    for (const auto& fault : channel.faults) add(channel.name, fault);
  return texts;
}

}  // namespace ovenwright::clean
