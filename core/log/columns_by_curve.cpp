#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "core/log/assigner.h"
#include "core/log/column_values.h"
#include "core/log/text.h"

// Names against numbers: a "Battery holder" that gets as hot as the board is a thermocouple, and "U1 max" beside "U1"
// is none.

namespace ovenwright::log {

using Holds = ColumnProfile::Holds;

namespace {

struct Range {
  double low = 0, high = 0;
  double width() const { return high - low; }
};

std::optional<Range> range_of(const std::vector<double>& values) {
  const auto kept = without_sentinels(values);
  if (kept.empty()) return std::nullopt;
  const auto [low, high] = std::minmax_element(kept.begin(), kept.end());
  return Range{*low, *high};
}

/// Pearson's coefficient of the rows in which both have a number; 0 with fewer than so many.
double correlation(const std::vector<double>& a, const std::vector<double>& b) {
  constexpr std::size_t kFewest = 20;
  double n = 0, sum_a = 0, sum_b = 0;
  const auto both = [&](std::size_t i) { return std::isfinite(a[i]) && std::isfinite(b[i]); };
  const std::size_t rows = std::min(a.size(), b.size());
  for (std::size_t i = 0; i < rows; ++i) {
    if (!both(i)) continue;
    n += 1;
    sum_a += a[i];
    sum_b += b[i];
  }
  if (n < kFewest) return 0;
  double aa = 0, bb = 0, ab = 0;
  for (std::size_t i = 0; i < rows; ++i) {
    if (!both(i)) continue;
    const double x = a[i] - sum_a / n, y = b[i] - sum_b / n;
    aa += x * x;
    bb += y * y;
    ab += x * y;
  }
  return aa > 0 && bb > 0 ? ab / std::sqrt(aa * bb) : 0;
}

/// Whether something stands in a name besides words that lists know, figures and signs: "Min chip".
bool says_more(std::string_view name) {
  std::size_t start = 0;
  while (start < name.size()) {
    const auto end = std::min(name.find_first_of(" _-./,:;()[]#0123456789", start), name.size());
    const auto word = name.substr(start, end - start);
    if (word.size() > 1 && words_in(word) == kNoWord) return true;
    start = end + 1;
  }
  return false;
}

/// Of the oven or the recipe, in six languages; zones have a word of their own.
bool speaks_of_oven_or_recipe(std::string_view name) {
  static constexpr std::array<std::string_view, 33> kAnywhere{
      "target",   "objetivo", "limit",   "límite", "grenz",  "profil",      "perfil",   "referen", "référen",
      "setpoint", "soll",     "consign", "curve",  "courbe", "kurve",       "setpunkt", "nominal", "recipe",
      "rezept",   "目标",     "目標",    "曲线",   "曲線",   "空气",        "空氣",     "参考",    "參考",
      "基準",     "基准",     "设定",    "設定",   "エア",   "プロファイル"};
  static constexpr std::array<std::string_view, 15> kWords{"air",   "luft", "aire",   "ref",    "sp",
                                                           "cible", "ziel", "curva",  "oven",   "ofen",
                                                           "horno", "set",  "limite", "cibles", "targets"};
  const std::string small = lower(name);
  const auto within = [&small](std::string_view word) { return small.find(word) != std::string::npos; };
  if (std::any_of(kAnywhere.begin(), kAnywhere.end(), within)) return true;
  for (std::size_t start = 0; start < small.size();) {
    const auto end = std::min(small.find_first_of(" _-./,:;()[]#0123456789", start), small.size());
    const auto word = std::string_view{small}.substr(start, end - start);
    if (std::find(kWords.begin(), kWords.end(), word) != kWords.end()) return true;
    start = end + 1;
  }
  for (const std::string_view sign : {"限", "炉", "爐"}) {
    if (within(sign)) return true;
  }
  return false;
}

enum class Kind { kNone, kMean, kLow, kHigh, kOther };

/// The statistic that a name ends or begins with, and what it leaves: "U1 max" is the high of "u1".
Kind statistic_in(const std::string& name, std::string& rest) {
  struct Entry {
    std::string_view word;
    Kind kind;
  };
  static constexpr std::array<Entry, 35> kEntries{
      {{"mín", Kind::kLow},      {"máx", Kind::kHigh},        {"average", Kind::kMean}, {"avg", Kind::kMean},
       {"mean", Kind::kMean},    {"mittelwert", Kind::kMean}, {"mittel", Kind::kMean},  {"moyenne", Kind::kMean},
       {"moy", Kind::kMean},     {"promedio", Kind::kMean},   {"media", Kind::kMean},   {"平均", Kind::kMean},
       {"minimum", Kind::kLow},  {"mínimo", Kind::kLow},      {"minimo", Kind::kLow},   {"min", Kind::kLow},
       {"最小", Kind::kLow},     {"最低", Kind::kLow},        {"low", Kind::kLow},      {"lo", Kind::kLow},
       {"maximum", Kind::kHigh}, {"máximo", Kind::kHigh},     {"maximo", Kind::kHigh},  {"max", Kind::kHigh},
       {"peak", Kind::kHigh},    {"最大", Kind::kHigh},       {"最高", Kind::kHigh},    {"high", Kind::kHigh},
       {"hi", Kind::kHigh},      {"stdev", Kind::kOther},     {"std", Kind::kOther},    {"sigma", Kind::kOther},
       {"spread", Kind::kOther}, {"delta", Kind::kOther},     {"Δ", Kind::kOther}}};
  constexpr std::string_view kSigns = " _-./,:;()[]";
  const auto trimmed = [&](std::string_view text) {
    while (!text.empty() && kSigns.find(text.front()) != std::string_view::npos) text.remove_prefix(1);
    while (!text.empty() && kSigns.find(text.back()) != std::string_view::npos) text.remove_suffix(1);
    return std::string{text};
  };
  const std::string text = trimmed(lower(name));
  const auto apart = [&](std::size_t at) {
    return kSigns.find(text[at]) != std::string_view::npos || static_cast<unsigned char>(text[at]) >= 0x80;
  };
  // "Max chip min" is the least of "Max chip".
  for (const bool behind : {true, false}) {
    for (const Entry& entry : kEntries) {
      const auto& word = entry.word;
      const bool wide = static_cast<unsigned char>(word.front()) >= 0x80;
      if (text.size() <= word.size()) continue;
      if (behind && text.ends_with(word) && (wide || apart(text.size() - word.size() - 1))) {
        rest = trimmed(text.substr(0, text.size() - word.size()));
        return entry.kind;
      }
      if (!behind && text.starts_with(word) && (wide || apart(word.size()))) {
        rest = trimmed(text.substr(word.size()));
        return entry.kind;
      }
    }
  }
  return Kind::kNone;
}

/// Whether the numbers bear out that one column is a statistic of the other: nearly never on its wrong side.
bool bounded(const std::vector<double>& values, const std::vector<double>& of, Kind kind, double width) {
  std::size_t rows = 0, right = 0;
  const double near = std::max(5.0, 0.1 * width), slack = 1e-9;
  for (std::size_t i = 0; i < std::min(values.size(), of.size()); ++i) {
    if (!std::isfinite(values[i]) || !std::isfinite(of[i])) continue;
    ++rows;
    right += (kind == Kind::kLow    ? values[i] <= of[i] + slack
              : kind == Kind::kHigh ? values[i] >= of[i] - slack
                                    : std::abs(values[i] - of[i]) <= near)
                 ? 1
                 : 0;
  }
  return rows > 0 && 20 * right >= 19 * rows;
}

}  // namespace

std::optional<std::size_t> Assigner::statistic_of(std::size_t i, const std::vector<std::size_t>& channels) const {
  // A difference stays far below what it is one of: "BGA delta" may be a place on the board.
  constexpr double kDifference = 0.25;
  std::string of;
  const Kind kind = statistic_in(head(i).name, of);
  if (kind == Kind::kNone || of.empty()) return std::nullopt;
  for (const std::size_t k : channels) {
    if (k == i || columns_.roles[k] != Role::kTemperature) continue;
    // Its whole name: "BGA high" beside "BGA corner" is a place, not the highest of something.
    if (lower(head(k).name) != of) continue;
    const auto own = range_of(profile(i).values), range = range_of(profile(k).values);
    if (!own || !range) continue;
    const bool borne_out = kind == Kind::kOther ? own->width() < kDifference * range->width()
                                                : bounded(profile(i).values, profile(k).values, kind, range->width());
    if (borne_out) return k;
  }
  return std::nullopt;
}

void Assigner::settle_statistics_of_channels() {
  const auto channels = with_role(Role::kTemperature);
  std::vector<std::size_t> moving;
  std::set<std::size_t> described;
  for (std::size_t i = 0; i < table_.columns; ++i) {
    const bool by_word = role(i) == Role::kOther && columns_.reasons[i].empty() &&
                         (head(i).name_words & kStatisticWord) != 0 && profile(i).holds() == Holds::kNumbers;
    if (role(i) != Role::kTemperature && !by_word) continue;
    const auto of = statistic_of(i, channels);
    if (!of) continue;
    set_aside(i, "it is a statistic of " + head(*of).name);
    described.insert(*of);
    if (moves_with(i, *of)) moving.push_back(i);
  }
  // Where each of several channels has some, they are what they are called.
  const bool all = described.size() > 1 && described.size() == with_role(Role::kTemperature).size();
  for (const std::size_t i : moving) columns_.doubted[i] = !all;
}

void Assigner::settle_flags() {
  constexpr double kRun = 60, kHighest = 255;
  constexpr std::size_t kMostKinds = 8;
  const auto channels = with_role(Role::kTemperature);
  for (const std::size_t i : channels) {
    const auto& p = profile(i);
    if (head(i).unit || !p.unit_seen.empty() || !p.whole_numbers || p.numbers == 0 || head(i).name.empty()) continue;
    if (p.texts_seen.empty() || p.texts_seen.size() > kMostKinds || p.open > 0) continue;
    const auto range = range_of(p.values);
    if (!range || range->low < 0 || range->high > kHighest) continue;
    const bool yes_and_no = range->low == 0 && range->high == 1 && p.texts_seen.size() == 2;
    const std::string name = lower(head(i).name);
    const bool one_of_these = std::any_of(channels.begin(), channels.end(), [&](std::size_t k) {
      const auto other = range_of(profile(k).values);
      if (k == i || role(k) != Role::kTemperature || !other || other->width() < kRun) return false;
      const std::string base = lower(head(k).name);
      const bool behind = !base.empty() && name.size() > base.size() && name.starts_with(base) &&
                          std::string_view{" _-./:("}.find(name[base.size()]) != std::string_view::npos;
      return yes_and_no || (behind && range->high < 16 && !profile(k).whole_numbers);
    });
    if (one_of_these) set_aside(i, "it holds a few small whole numbers, as flags do");
  }
}

bool Assigner::moves_with(std::size_t i, std::size_t channel) const {
  constexpr double kRun = 60, kClose = 0.985, kStart = 25;
  const auto &own = profile(i), &other = profile(channel);
  const auto range = range_of(own.values), wanted = range_of(other.values);
  if (!range || !wanted || wanted->width() < kRun) return false;
  if (own.whole_numbers != other.whole_numbers || own.most_decimals != other.most_decimals) return false;
  if (range->width() < 0.5 * wanted->width() || range->width() > 2 * wanted->width()) return false;
  if (std::abs(range->low - wanted->low) > kStart) return false;
  return correlation(own.values, other.values) >= kClose;
}

void Assigner::take_back_by_curve() {
  if (!layout_.channels.empty()) return;
  auto channels = with_role(Role::kTemperature);
  // Where words set all of them aside, those that move alike.
  const bool none_left = channels.empty();
  if (none_left) channels = with_role(Role::kOther);
  for (std::size_t i = 0; i < table_.columns; ++i) {
    if (role(i) != Role::kOther || profile(i).holds() != Holds::kNumbers || head(i).name.empty()) continue;
    if ((head(i).unit && !is_temperature(head(i).unit)) || !columns_.reasons[i].empty()) continue;
    const Words words = head(i).name_words;
    if ((words & (kSetpointWord | kColdJunctionWord)) != 0 || speaks_of_oven_or_recipe(head(i).texts)) continue;
    const bool statistic = (words & kStatisticWord) != 0, zone = (words & kZoneWord) != 0;
    if ((statistic || zone || none_left) && !says_more(head(i).name)) continue;
    if (std::none_of(channels.begin(), channels.end(), [&](std::size_t k) { return k != i && moves_with(i, k); }))
      continue;
    if (zone || (statistic && sums_up(i, channels))) {
      set_aside(i, zone ? "it is named like a zone, though it moves as the board does"
                        : "it is named like a statistic, and is the highest, lowest or mean of the channels");
      columns_.doubted[i] = true;
    } else {
      role(i) = Role::kTemperature;
    }
  }
}

void Assigner::settle_cold_junction() {
  constexpr double kMoves = 30;
  if (!layout_.channels.empty() || facts_.cold_junction_C || !with_role(Role::kColdJunction).empty()) return;
  std::size_t volts = 0;
  std::vector<std::size_t> warm;
  for (const std::size_t i : with_role(Role::kTemperature)) {
    if (head(i).unit && head(i).unit->quantity == Quantity::kVoltage) ++volts;
    if (is_temperature(head(i).unit) && !head(i).unit->weak) warm.push_back(i);
  }
  if (volts == 0 || warm.size() != 1) return;
  const auto range = range_of(profile(warm.front()).values);
  if (range && range->width() < kMoves) role(warm.front()) = Role::kColdJunction;
}

bool Assigner::sums_up(std::size_t i, const std::vector<std::size_t>& channels) const {
  std::size_t rows = 0, above = 0, below = 0, mean = 0;
  const double digit = std::pow(10.0, -std::max(0, profile(i).most_decimals));
  for (std::size_t r = 0; r < profile(i).values.size(); ++r) {
    const double value = profile(i).values[r];
    if (!std::isfinite(value)) continue;
    bool over = true, under = true;
    double sum = 0, count = 0;
    for (const std::size_t k : channels) {
      if (r >= profile(k).values.size() || !std::isfinite(profile(k).values[r])) continue;
      sum += profile(k).values[r];
      count += 1;
      over = over && value >= profile(k).values[r];
      under = under && value <= profile(k).values[r];
    }
    if (count == 0) continue;
    ++rows;
    mean += std::abs(value - sum / count) <= digit ? 1 : 0;
    above += over ? 1 : 0;
    below += under ? 1 : 0;
  }
  std::string of;
  const Kind kind = statistic_in(head(i).name, of);
  const auto nearly_all = [rows](std::size_t count) { return rows > 0 && 20 * count >= 19 * rows; };
  // Above or below one other is every second channel.
  const bool several = channels.size() - static_cast<std::size_t>(std::ranges::count(channels, i)) > 1;
  if (kind == Kind::kOther || !several) return kind == Kind::kMean && several && nearly_all(mean);
  return (kind != Kind::kLow && kind != Kind::kMean && nearly_all(above)) ||
         (kind != Kind::kHigh && kind != Kind::kMean && nearly_all(below)) || nearly_all(mean);
}

}  // namespace ovenwright::log
