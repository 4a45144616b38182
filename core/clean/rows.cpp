#include "core/clean/rows.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <string>
#include <utility>

#include "core/run/median.h"
#include "core/units/phrase.h"

namespace ovenwright::clean {
namespace {

constexpr double kGapMedians = 5, kGap_s = 2;
constexpr std::size_t kRestartRows = 20;
constexpr double kSameTrouble_s = 60;  // rows in trouble closer than this are one fault

/// The longest strictly increasing subsequence of the times of `rows`. Cost: O(n log n).
std::vector<std::size_t> longest_forward(std::span<const double> time_s, const std::vector<std::size_t>& rows) {
  constexpr auto kNone = std::numeric_limits<std::size_t>::max();
  std::vector<std::size_t> ends;  // ends[l]: position of the smallest time that ends a subsequence of l + 1 rows
  std::vector<std::size_t> before(rows.size(), kNone);
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const auto at = std::lower_bound(ends.begin(), ends.end(), time_s[rows[i]],
                                     [&](std::size_t end, double time) { return time_s[rows[end]] < time; });
    if (at != ends.begin()) before[i] = *(at - 1);
    if (at == ends.end())
      ends.push_back(i);
    else
      *at = i;
  }
  std::vector<std::size_t> kept;
  for (std::size_t i = ends.empty() ? kNone : ends.back(); i != kNone; i = before[i]) kept.push_back(rows[i]);
  std::ranges::reverse(kept);
  return kept;
}

/// One fault for each group of rows that were left out.
std::vector<run::Fault> faults_of(std::span<const double> time_s, const std::vector<std::size_t>& kept) {
  std::vector<run::Fault> faults;
  std::size_t next = 0;
  double last_good_s = std::numeric_limits<double>::quiet_NaN();
  for (std::size_t row = 0; row < time_s.size(); ++row) {
    if (next < kept.size() && kept[next] == row) {
      last_good_s = time_s[row];
      ++next;
      continue;
    }
    const double beside_s = std::isfinite(last_good_s) ? last_good_s : (kept.empty() ? 0 : time_s[kept.front()]);
    if (faults.empty() || beside_s - faults.back().to_s > kSameTrouble_s)
      faults.push_back({run::FaultKind::kTimeGoingBack, beside_s, beside_s, run::FaultAction::kRemoved, {}, {}});
    faults.back().to_s = beside_s;
    faults.back().removed.push_back({time_s[row], std::numeric_limits<double>::quiet_NaN()});
  }
  for (auto& fault : faults)
    fault.detail = fault.removed.size() == 1 ? say(Phrase::kOneRowNoTime)
                                             : say(Phrase::kRowsNoTime, {std::to_string(fault.removed.size())});
  return faults;
}

}  // namespace

OrderedRows order_rows(const std::shared_ptr<const std::vector<double>>& times_of_log) {
  OrderedRows ordered;
  if (auto clock = run::Clock::make_sharing(times_of_log)) {
    ordered.clock = *clock;
    return ordered;
  }
  const std::vector<double>& time_s = *times_of_log;
  std::vector<std::size_t> rows;
  for (std::size_t row = 0; row < time_s.size(); ++row) {
    if (std::isfinite(time_s[row]) && (rows.empty() || time_s[row] != time_s[rows.back()])) rows.push_back(row);
  }
  auto kept = longest_forward(time_s, rows);
  ordered.faults = faults_of(time_s, kept);
  std::vector<double> times(kept.size());
  std::ranges::transform(kept, times.begin(), [&](std::size_t row) { return time_s[row]; });
  ordered.clock = *run::Clock::make(std::move(times));
  ordered.kept = std::move(kept);
  return ordered;
}

std::vector<std::size_t> restarts(std::span<const double> time_s) {
  std::vector<std::size_t> blocks{0};  // first rows of stretches that never run backwards
  for (std::size_t row = 1; row < time_s.size(); ++row)
    if (time_s[row] < time_s[row - 1]) blocks.push_back(row);
  std::vector<std::size_t> parts{0};
  for (std::size_t block = 1; block < blocks.size(); ++block) {
    const std::size_t end = block + 1 < blocks.size() ? blocks[block + 1] : time_s.size();
    const std::size_t row = blocks[block];
    if (row - blocks[block - 1] >= kRestartRows && end - row >= kRestartRows) parts.push_back(row);
  }
  return parts;
}

std::optional<MovedOn> moved_on(std::span<const double> time_s, const std::function<bool(std::size_t)>& goes_on) {
  const auto starts = restarts(time_s);
  if (starts.size() < 2) return std::nullopt;
  std::vector<double> intervals_s;
  for (std::size_t row = 1; row < time_s.size(); ++row)
    if (time_s[row] > time_s[row - 1]) intervals_s.push_back(time_s[row] - time_s[row - 1]);
  const double usual_s = run::median(intervals_s);
  constexpr double kRounding_s = 1e-6;  // of times in seconds, of which a day's hold eleven digits and more
  MovedOn moved;
  double by_s = 0;
  for (std::size_t row = 0; row < time_s.size(); ++row) {
    const double step_s = row > 0 ? time_s[row] - time_s[row - 1] : 0;
    if (row > 0 && std::ranges::binary_search(starts, row) && goes_on(row)) {
      by_s += usual_s - step_s;
      moved.faults.push_back(
          {run::FaultKind::kTimeGoingBack,
           moved.time_s.back(),
           time_s[row] + by_s,
           run::FaultAction::kFlagged,
           fmt::format("the clock was set back by {:.1f} s: later times are moved on", usual_s - step_s),
           {}});
    } else if (by_s > 0 && time_s[row] > moved.time_s.back() && step_s - by_s <= 1.5 * usual_s + kRounding_s) {
      by_s = 0;  // a leap by as much and a row's usual time: the clock was put right
    }
    moved.time_s.push_back(time_s[row] + by_s);
  }
  if (moved.faults.empty()) return std::nullopt;
  return moved;
}

std::vector<run::Fault> clock_gaps(const run::Clock& clock, std::size_t first, std::size_t last) {
  const double longest_s = std::max(kGap_s, kGapMedians * clock.median_interval_s());
  const auto t = clock.time_s();
  std::vector<run::Fault> faults;
  if (clock.longest_interval_s() <= longest_s) return faults;
  for (std::size_t row = first; row < last; ++row) {
    if (t[row + 1] - t[row] > longest_s)
      faults.push_back({run::FaultKind::kClockGap, t[row], t[row + 1], run::FaultAction::kFlagged, {}, {}});
  }
  return faults;
}

}  // namespace ovenwright::clean
