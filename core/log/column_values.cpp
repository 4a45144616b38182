#include "core/log/column_values.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <iterator>
#include <limits>

#include "core/log/text.h"

namespace ovenwright::log {
namespace {

using Holds = ColumnProfile::Holds;

constexpr double kRising = 0.97;

}  // namespace

std::vector<double> finite(const std::vector<double>& values) {
  std::vector<double> kept;
  std::copy_if(values.begin(), values.end(), std::back_inserter(kept), [](double v) { return std::isfinite(v); });
  return kept;
}

double smallest(const std::vector<double>& values) {
  const auto kept = finite(values);
  return kept.empty() ? std::numeric_limits<double>::quiet_NaN() : *std::min_element(kept.begin(), kept.end());
}

bool rising(const ColumnProfile& column) {
  return column.holds() == Holds::kNumbers && column.numbers > 1 && share_rising(column.values) >= kRising;
}

bool counting(const ColumnProfile& column) { return rising(column) && column.whole_numbers; }

bool is_temperature(const std::optional<UnitText>& unit) {
  return unit && (unit->quantity == Quantity::kTemperature || unit->quantity == Quantity::kUnknownTemperature);
}

bool has_digit(std::string_view text) { return text.find_first_of("0123456789") != std::string_view::npos; }

bool only_statistic(const TableHeader::Column& column) {
  static constexpr std::array<std::string_view, 12> kDifferences{"dt",        "d t",        "diff",   "difference",
                                                                 "differenz", "différence", "écart",  "diferencia",
                                                                 "temp diff", "temp. diff", "t diff", "温度差"};
  if (has_digit(column.name)) return false;
  return (column.name_words & kStatisticWord) != 0 ||
         std::find(kDifferences.begin(), kDifferences.end(), lower(column.name)) != kDifferences.end();
}

bool is_tolerance_sign(std::string_view text) { return text == "±" || text == "+/-" || text == "+-"; }

bool clock_with_full_stops(const ColumnProfile& column) {
  const auto& times = column.time_texts;
  if (times.empty() || !std::all_of(times.begin(), times.end(), [](const TimeText& t) { return t.full_stops; }))
    return false;
  if (std::any_of(times.begin(), times.end(), [](const TimeText& t) { return !t.has_date; })) return true;
  // A date stays the same from row to row.
  std::size_t changes = 0;
  for (std::size_t i = 1; i < times.size(); ++i) changes += times[i].clock_s != times[i - 1].clock_s ? 1 : 0;
  return 4 * changes > times.size();
}

bool packed_clock(const ColumnProfile& column) {
  if (column.holds() != Holds::kNumbers || !column.whole_numbers) return false;
  return std::all_of(column.values.begin(), column.values.end(), [](double v) {
    if (!std::isfinite(v)) return true;
    if (v < 0 || v >= 240000) return false;
    const auto packed = static_cast<int>(v);
    return packed / 100 % 100 < 60 && packed % 100 < 60;
  });
}

double share_rising(const std::vector<double>& values) {
  std::size_t up = 0, steps = 0;
  double before = std::numeric_limits<double>::quiet_NaN();
  for (const double value : values) {
    if (!std::isfinite(value)) continue;
    if (std::isfinite(before)) {
      ++steps;
      up += value >= before ? 1 : 0;
    }
    before = value;
  }
  const auto kept = finite(values);
  if (steps == 0 || !(kept.back() > kept.front())) return 0;
  return static_cast<double>(up) / static_cast<double>(steps);
}

std::vector<double> without_sentinels(const std::vector<double>& values) {
  constexpr double kFarOut = 800, kBeyondAll = 1e6;
  constexpr std::array kFixed = {999.9, 999.99, 9999.0, 9999.9, 99999.0, 999999.0, 3276.7, 6553.5, 32767.0, 65535.0};
  constexpr std::size_t kOften = 2;
  auto kept = finite(values);
  std::erase_if(kept, [](double v) { return std::abs(v) > kBeyondAll * kBeyondAll; });
  for (const double sign : {1.0, -1.0}) {
    if (kept.empty()) return kept;
    const auto farther = [sign](double a, double b) { return sign * a < sign * b; };
    const double end = *std::max_element(kept.begin(), kept.end(), farther);
    if (sign * end < (sign > 0 ? kFarOut : 100)) continue;
    std::vector<double> rest;
    std::copy_if(kept.begin(), kept.end(), std::back_inserter(rest), [end](double v) { return v != end; });
    const bool fixed = std::any_of(kFixed.begin(), kFixed.end(), [end](double f) {
      return std::abs(std::abs(end) - f) < 1e-6 || std::abs(std::abs(end) - f - 1) < 1e-6;
    });
    if (rest.empty()) return fixed ? rest : kept;
    const auto [low, high] = std::minmax_element(rest.begin(), rest.end());
    const double gap = sign > 0 ? end - *high : *low - end;
    const bool often = kept.size() - rest.size() >= kOften;
    if ((often || fixed) && gap > 0.5 * std::max(100.0, *high - *low)) kept = std::move(rest);
  }
  return kept;
}

double robust_peak(const std::vector<double>& values) {
  auto kept = finite(values);
  if (kept.empty()) return std::numeric_limits<double>::quiet_NaN();
  const auto place = kept.begin() + static_cast<std::ptrdiff_t>(kept.size() - 1 - kept.size() / 40);
  std::nth_element(kept.begin(), place, kept.end());
  return *place;
}

double robust_start(const std::vector<double>& values) {
  auto kept = finite(values);
  if (kept.empty()) return std::numeric_limits<double>::quiet_NaN();
  kept.resize(std::min<std::size_t>(kept.size(), 9));
  const auto middle = kept.begin() + static_cast<std::ptrdiff_t>(kept.size() / 2);
  std::nth_element(kept.begin(), middle, kept.end());
  return *middle;
}

}  // namespace ovenwright::log
