#include <algorithm>
#include <array>
#include <cmath>

#include "core/log/assigner.h"
#include "core/log/channel_names.h"
#include "core/log/column_values.h"
#include "core/log/text.h"

// What columns are beside each other: which of those with numbers are no channels after all.

namespace ovenwright::log {

using Holds = ColumnProfile::Holds;

void Assigner::settle_tables_beside() {
  // Filled in the first rows alone, behind a column of words for statistics or under a name that a channel has already.
  constexpr std::size_t kMostRows = 30, kTimesLonger = 5;
  bool words_before = false;
  for (std::size_t i = 0; i < table_.columns; ++i) {
    const auto& p = profile(i);
    if (role(i) == Role::kText) {
      words_before = words_before || std::any_of(p.texts_seen.begin(), p.texts_seen.end(), [](const std::string& text) {
                       return (words_in(text) & kStatisticWord) != 0;
                     });
    }
    if (role(i) != Role::kTemperature || p.numbers == 0) continue;
    std::size_t last = 0;
    for (std::size_t k = 0; k < p.values.size(); ++k) last = std::isfinite(p.values[k]) ? k : last;
    const bool ends_early = p.open == 0 && last < kMostRows && (last + 1) * kTimesLonger < p.values.size();
    if (!ends_early) continue;
    bool named_before = false;
    for (std::size_t k = 0; k < i; ++k)
      named_before =
          named_before || (role(k) == Role::kTemperature && !head(i).name.empty() && head(k).name == head(i).name);
    if (words_before || named_before) set_aside(i, "it ends after a few rows, as a table beside the log does");
  }
}

void Assigner::settle_reserves() {
  const std::size_t n = table_.columns;
  std::size_t stated = 0;
  moves_far_.assign(n, false);
  for (std::size_t i = 0; i < n; ++i) {
    if (role(i) != Role::kTemperature) continue;
    if (is_temperature(head(i).unit)) ++stated;
    constexpr double kFar = 60;
    const auto values = profile(i).numbers > 0 ? without_sentinels(profile(i).values) : std::vector<double>{};
    if (values.empty()) continue;
    const auto [low, high] = std::minmax_element(values.begin(), values.end());
    moves_far_[i] = *high - *low > kFar;
  }
  for (std::size_t i = 0; i < n; ++i) {
    if (role(i) != Role::kTemperature || profile(i).numbers == 0) continue;
    const auto kept = without_sentinels(profile(i).values);
    if (kept.empty()) continue;  // open from the first row to the last
    const auto [low, high] = std::minmax_element(kept.begin(), kept.end());
    const bool temperature_stated = is_temperature(head(i).unit) ||
                                    (head(i).words & (kTemperatureWord | kChannelWord)) != 0 ||
                                    (head(i).unit && head(i).unit->quantity == Quantity::kVoltage);
    const double middle = robust_peak(kept);
    if (called_zone(i) && stands_still(i))
      set_aside(i, "it is named like a zone and stands at its temperature throughout");
    if (role(i) != Role::kTemperature) continue;
    if (counts_something(i, stated)) {
      set_aside(i, "it counts runs, channels or the like");
    } else if (!temperature_stated && stated >= 1 && !head(i).foreign_unit.empty()) {
      set_aside(i, "its unit is \"" + head(i).foreign_unit + "\", none of temperature");
    } else if (!temperature_stated && (middle > 6000 || middle < -300)) {
      set_aside(i, "its values are no temperatures");
    } else if (!temperature_stated && stated >= 1 && header_.line > 0 && !kept.empty() && *high - *low < 1e-9 &&
               table_.sampled > 5) {
      set_aside(i, "no unit of temperature stands there and it never changes");
    }
  }
  // Nothing but zones or set-aside columns of temperature: then these are what was logged.
  if (with_role(Role::kTemperature).empty()) {
    for (const bool stated_only : {true, false}) {
      for (std::size_t i = 0; i < n; ++i) {
        const bool zone = is_temperature(head(i).unit) || (head(i).name_words & (kZoneWord | kTemperatureWord)) != 0;
        const bool may = role(i) == Role::kOther && profile(i).holds() == Holds::kNumbers &&
                         (head(i).name_words & kSetpointWord) == 0 && (!head(i).unit || is_temperature(head(i).unit));
        if (may && (zone || !stated_only) && (head(i).name_words & kOtherWord) == 0) {
          role(i) = Role::kTemperature;
          columns_.reasons[i].clear();
        }
      }
      if (!with_role(Role::kTemperature).empty()) break;
    }
  }
}

bool Assigner::counts_something(std::size_t i, std::size_t stated) const {
  const auto& p = profile(i);
  constexpr std::size_t kMostKinds = 12;
  constexpr double kHighest = 60;
  if (head(i).unit || !p.unit_seen.empty() || !p.whole_numbers || p.numbers == 0 || head(i).name.empty()) return false;
  if (p.texts_seen.empty() || p.texts_seen.size() > kMostKinds) return false;
  static constexpr std::array<std::string_view, 64> kCounts{
      "run",    "run no",  "run no.",  "run number", "run id", "lauf",    "pass",      "pass no", "passage", "pasada",
      "cycle",  "zyklus",  "ciclo",    "batch",      "charge", "lot",     "segment",   "step",    "schritt", "paso",
      "phase",  "stage",   "channels", "kanäle",     "voies",  "canales", "count",     "anzahl",  "points",  "board no",
      "serial", "line no", "lane",     "spur",       "status", "state",   "mode",      "code",    "error",   "flag",
      "alarm",  "event",   "marker",   "next",       "通道数", "通道數",  "批次",      "次数",    "次數",    "段",
      "状态",   "狀態",    "block",    "page",       "seite",  "section", "abschnitt", "group",   "gruppe",  "set",
      "loop",   "cycles",  "bloc",     "bloque"};
  const std::string name = lower(head(i).name);
  const bool called = std::find(kCounts.begin(), kCounts.end(), name) != kCounts.end();
  const auto kept = finite(p.values);
  if (kept.empty() || smallest(p.values) < 0 || *std::max_element(kept.begin(), kept.end()) > kHighest) return false;
  // Others must be left that move as temperatures do; with decimals where the name says nothing.
  bool beside_decimals = false, beside_others = false;
  for (std::size_t k = 0; k < table_.columns; ++k) {
    if (k == i || columns_.roles[k] != Role::kTemperature || !moves_far_[k]) continue;
    beside_others = true;
    beside_decimals = beside_decimals || !profile(k).whole_numbers;
  }
  // A board's readings in whole degrees go down again.
  const bool steps_back = !std::is_sorted(kept.begin(), kept.end());
  const bool speaks_of_heat = (head(i).name_words & (kTemperatureWord | kChannelWord)) != 0 && has_digit(head(i).name);
  return beside_others &&
         (called || (stated >= 1 && beside_decimals && !speaks_of_heat && !steps_back && !in_a_series(i)));
}

void Assigner::settle_tolerances() {
  for (std::size_t i = 1; i < table_.columns; ++i) {
    const auto& seen = profile(i - 1).texts_seen;
    const bool behind_sign =
        profile(i - 1).holds() == Holds::kText && seen.size() == 1 && is_tolerance_sign(seen.front());
    const bool named =
        is_tolerance_sign(head(i).name) || head(i).name.starts_with("±") || head(i).name.starts_with("+/-");
    if ((behind_sign || named) && role(i) == Role::kTemperature)
      set_aside(i, "it says how sure the column before it is");
  }
}

bool Assigner::called_zone(std::size_t i) const {
  std::string name = lower(head(i).name);
  if (name.starts_with('h') || name.starts_with('k')) name.erase(0, 1);
  if (name.size() < 2 || name.front() != 'z') return false;
  const auto digit = name.find_first_not_of(" _-", 1);
  return digit != std::string::npos && name[digit] >= '0' && name[digit] <= '9';
}

bool Assigner::stands_still(std::size_t i) const {
  const auto range = [this](std::size_t k) {
    const auto kept = finite(profile(k).values);
    if (kept.empty()) return 0.0;
    const auto [low, high] = std::minmax_element(kept.begin(), kept.end());
    return *high - *low;
  };
  double widest = 0;
  for (const std::size_t k : with_role(Role::kTemperature)) widest = std::max(widest, range(k));
  return range(i) < 0.25 * widest;
}

void Assigner::set_aside(std::size_t i, std::string why) {
  role(i) = Role::kOther;
  columns_.reasons[i] = std::move(why);
}

void Assigner::settle_statistics() {
  const auto split = [this](std::size_t i, std::string& base) {
    static constexpr std::array<std::string_view, 17> kKinds{
        "avg", "average", "mean", "mittel",  "mittelwert", "moyenne", "promedio", "media", "平均",
        "min", "minimum", "max",  "maximum", "最小",       "最大",    "std",      "stdev"};
    const std::string name = lower(head(i).name);
    for (std::size_t k = 0; k < kKinds.size(); ++k) {
      const auto at = name.find(kKinds[k]);
      if (at == std::string::npos) continue;
      base = name;
      base.erase(at, kKinds[k].size());
      return k < 9 ? 1 : 2;  // the mean, another
    }
    return 0;
  };
  std::vector<std::string> means;
  std::string base;
  for (const std::size_t i : with_role(Role::kTemperature)) {
    if (split(i, base) == 1) means.push_back(base);
  }
  for (const std::size_t i : with_role(Role::kTemperature)) {
    if (split(i, base) == 2 && std::find(means.begin(), means.end(), base) != means.end()) role(i) = Role::kOther;
  }
}

void Assigner::settle_ambient() {
  double hottest = 0;
  for (const std::size_t i : with_role(Role::kTemperature)) {
    const double peak = robust_peak(profile(i).values);
    if (std::isfinite(peak)) hottest = std::max(hottest, peak);
  }
  for (std::size_t i = 0; i < table_.columns; ++i) {
    if (role(i) != Role::kTemperature || (head(i).name_words & kAmbientWord) == 0) continue;
    const double peak = robust_peak(profile(i).values);
    if (std::isfinite(peak) && peak < 0.45 * hottest && with_role(Role::kTemperature).size() > 1)
      set_aside(i, "it stays far below the others");
  }
}

}  // namespace ovenwright::log
