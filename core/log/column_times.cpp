#include <algorithm>
#include <array>
#include <string>
#include <string_view>

#include "core/log/assigner.h"
#include "core/log/column_values.h"
#include "core/log/text.h"

namespace ovenwright::log {

using Holds = ColumnProfile::Holds;

bool Assigner::forced_time(std::size_t i) const {
  const auto& fixed = layout_.time.columns;
  return std::find(fixed.begin(), fixed.end(), static_cast<int>(i) + 1) != fixed.end();
}

bool Assigner::whole_below(std::size_t i, double limit) const {
  const auto& p = profile(i);
  return p.holds() == Holds::kNumbers && p.whole_numbers && smallest(p.values) >= 0 && robust_peak(p.values) < limit;
}

void Assigner::find_parts_of_clock() {
  using Names = std::array<std::string_view, 14>;
  static constexpr Names kHour{"h",       "hh",    "hour",   "hours", "hr", "std", "stunde",
                               "stunden", "heure", "heures", "hora",  "时", "時",  "小时"};
  static constexpr Names kMinute{"m",      "mm",      "min", "minute", "minutes", "mins", "minuten",
                                 "minuto", "minutos", "mi",  "分",     "分钟",    "分鐘", "mn"};
  static constexpr Names kSecond{"s",       "ss",       "sec", "second",  "seconds",  "secs",    "sek",
                                 "sekunde", "sekunden", "seg", "segundo", "segundos", "seconde", "秒"};
  static constexpr Names kCalendar{"year", "month", "day",   "jahr", "monat", "tag", "año",
                                   "mes",  "día",   "année", "mois", "jour",  "年",  "月"};
  const auto called = [this](std::size_t i, const Names& names) {
    const std::string text = lower(head(i).texts);
    return std::find(names.begin(), names.end(), text) != names.end();
  };
  const bool fixed = layout_.time.kind == "clock h:m:s" && layout_.time.columns.size() > 1;
  if (!fixed && !layout_.time.columns.empty()) return;
  for (std::size_t i = 0; i + 1 < table_.columns; ++i) {
    const bool named = called(i, kMinute) && called(i + 1, kSecond);
    const bool stated =
        fixed && forced_time(i) && forced_time(i + 1) && (i + 2 >= table_.columns || !forced_time(i + 2));
    const auto& seconds = profile(i + 1);
    const bool below =
        seconds.holds() == Holds::kNumbers && smallest(seconds.values) >= 0 && robust_peak(seconds.values) < 60;
    if ((!named && !stated) || !whole_below(i, 60) || !below) continue;
    role(i) = Role::kMinutes;
    role(i + 1) = Role::kTime;
    if (i > 0 && whole_below(i - 1, 24) && (called(i - 1, kHour) || (fixed && forced_time(i - 1))))
      role(i - 1) = Role::kHours;
    for (std::size_t k = 0; k < i; ++k) {
      if (called(k, kCalendar) || lower(head(k).texts) == "日") role(k) = Role::kText;
    }
    return;
  }
}

void Assigner::settle_times() {
  const std::size_t n = table_.columns;
  if (!layout_.time.columns.empty()) return settle_forced_times();
  if (layout_.time.kind == "index") {
    for (std::size_t i = 0; i < n; ++i) {
      if (role(i) == Role::kTime)
        role(i) = profile(i).holds() == Holds::kNumbers && counting(profile(i)) ? Role::kIndex : Role::kOther;
    }
    keep_one_index();
    columns_.no_time = true;
    return;
  }
  std::vector<std::size_t> times = with_role(Role::kTime);
  drop_restless(times);
  if (times.empty()) times = by_values();
  if (alternate(times)) {
    for (std::size_t k = 0; k < times.size(); ++k) {
      const std::size_t end = k + 1 < times.size() ? times[k + 1] : n;
      for (std::size_t i = times[k] + 1; i < end; ++i) columns_.clock_of[i] = static_cast<int>(times[k]);
    }
    drop_index_and_dates();
    return;
  }
  if (times_behind(times)) {
    std::size_t from = 0;
    for (const std::size_t time : times) {
      for (std::size_t i = from; i < time; ++i) columns_.clock_of[i] = static_cast<int>(time);
      from = time + 1;
    }
    drop_index_and_dates();
    return;
  }
  if (times.size() > 1) {
    const std::size_t best = best_time(times);
    for (const std::size_t i : times) {
      if (i != best) role(i) = profile(i).holds() == Holds::kTimes ? Role::kText : Role::kOther;
    }
    times = {best};
  }
  if (times.empty()) {
    keep_one_index();
    columns_.no_time = true;
    // A date alone says when only where it changes from row to row, which it does not in an oven.
    for (std::size_t i = 0; i < n; ++i) {
      if (role(i) == Role::kDate || role(i) == Role::kHalfOfDay || role(i) == Role::kMilliseconds)
        role(i) = Role::kText;
    }
    return;
  }
  drop_companions(times.front());
}

std::vector<std::size_t> Assigner::by_values() {
  std::vector<std::size_t> found;
  for (std::size_t i = 0; i < table_.columns; ++i) {
    if (numbers_without_words(i) && rising(profile(i))) found.push_back(i);
  }
  if (found.empty() && table_.columns > 1 && numbers_without_words(0) && header_.line == 0 &&
      share_rising(profile(0).values) >= 0.8)
    found.push_back(0);
  const bool index_known = !with_role(Role::kIndex).empty();
  if (found.size() == 1 && index_known && found.front() > 0 && table_.sampled < 8)
    found.clear();  // a few rows on a rise
  if (found.size() > 1 && found[1] == found[0] + 1) {
    if (counting(profile(found[0])) && !counting(profile(found[1])) && found[0] == 0) {
      role(found[0]) = Role::kIndex;
      found.erase(found.begin());
    }
  }
  if (found.size() > 1 && !alternate(found)) found.erase(found.begin() + 1, found.end());
  if (!found.empty() && found.size() == 1 && found.front() > 0 && index_known && (interval_given_ || facts_.interval))
    found.clear();
  if (found.size() == 1 && counting(profile(found.front())) &&
      (interval_given_ || (facts_.interval && facts_.interval->seconds != 1) ||
       (head(found.front()).texts.empty() && other_step_stated()))) {
    role(found.front()) = Role::kIndex;
    return {};
  }
  for (const std::size_t i : found) role(i) = Role::kTime;
  return found;
}

void Assigner::drop_restless(std::vector<std::size_t>& times) {
  constexpr double kSteady = 0.9;
  const auto steady = [this](std::size_t i) {
    const auto& p = profile(i);
    if (p.holds() != Holds::kNumbers) return true;
    const std::vector<double> back(p.values.rbegin(), p.values.rend());
    return share_rising(p.values) >= kSteady || share_rising(back) >= kSteady;
  };
  if (times.size() < 2 || std::none_of(times.begin(), times.end(), steady)) return;
  for (const std::size_t i : times) {
    if (!steady(i)) role(i) = Role::kOther;
  }
  std::erase_if(times, [&](std::size_t i) { return role(i) == Role::kOther; });
}

bool Assigner::other_step_stated() const {
  if (facts_.interval || !facts_.span) return false;
  const auto step = step_of_span(facts_.span->seconds, table_.rows);
  return step && *step != 1;
}

bool Assigner::channels_between(std::size_t from, std::size_t to) const {
  for (std::size_t i = from; i < to; ++i) {
    if (columns_.roles[i] == Role::kTemperature) return true;
  }
  return false;
}

bool Assigner::alternate(const std::vector<std::size_t>& times) const {
  if (times.size() < 2) return false;
  for (std::size_t k = 0; k < times.size(); ++k) {
    const std::size_t end = k + 1 < times.size() ? times[k + 1] : table_.columns;
    if (!channels_between(times[k] + 1, end)) return false;
  }
  return !channels_between(0, times.front());
}

bool Assigner::times_behind(const std::vector<std::size_t>& times) const {
  if (times.size() < 2 || channels_between(times.back() + 1, table_.columns)) return false;
  std::size_t from = 0;
  for (const std::size_t time : times) {
    if (!channels_between(from, time) || head(time).name != head(times.front()).name) return false;
    from = time + 1;
  }
  return true;
}

std::size_t Assigner::best_time(const std::vector<std::size_t>& times) const {
  std::size_t best = times.front();
  double best_score = -1;
  for (const std::size_t i : times) {
    const auto& p = profile(i);
    double score = 0;
    if (p.holds() == Holds::kNumbers) {
      const bool known = head(i).unit || (head(i).words & kTimeWord) != 0;
      score = 2 + (known ? 1 : 0) + distinct_share(p.values) * 3;
    } else {
      std::vector<double> clocks;
      bool dated = false;
      for (const auto& t : p.time_texts) {
        clocks.push_back(t.clock_s);
        dated = dated || (t.has_date && t.has_clock);
      }
      score = 1.5 + (dated ? 0.7 : 0) + distinct_share(clocks) * 3;
    }
    if (score > best_score + 0.01) {
      best_score = score;
      best = i;
    }
  }
  return best;
}

double Assigner::distinct_share(const std::vector<double>& values) {
  if (values.size() < 2) return 1;
  std::size_t changed = 0;
  for (std::size_t i = 1; i < values.size(); ++i) changed += values[i] != values[i - 1] ? 1 : 0;
  return static_cast<double>(changed) / static_cast<double>(values.size() - 1);
}

bool Assigner::counts_rows(const ColumnProfile& column) {
  if (!counting(column) || column.values.size() < 3) return false;
  // Of the first hundred lines some may be headers that are repeated.
  const std::size_t looked = std::min<std::size_t>(column.values.size(), 60);
  for (std::size_t k = 1; k < looked; ++k) {
    if (column.values[k] - column.values[k - 1] != 1) return false;
  }
  return true;
}

void Assigner::drop_row_numbers() {
  for (std::size_t i = 0; i < table_.columns; ++i) {
    // Whatever it is called: no temperature goes up by exactly one from row to row.
    if (role(i) == Role::kTemperature && !head(i).unit && (i == 0 || head(i).name.empty()) && counts_rows(profile(i)))
      role(i) = Role::kIndex;
  }
}

void Assigner::drop_companions(std::size_t time) {
  const bool packed = packed_clock(profile(time)) && !with_role(Role::kDate).empty();
  const bool stops = clock_with_full_stops(profile(time));
  const bool clock = packed || (profile(time).holds() == Holds::kTimes && !profile(time).time_texts.empty());
  const bool dated = clock && !packed && !stops && profile(time).time_texts.front().has_date;
  bool date_used = false, half_used = false, milliseconds_used = false;
  drop_row_numbers();
  for (std::size_t i = 0; i < table_.columns; ++i) {
    bool keep = true;
    if (role(i) == Role::kDate) {
      // A date that stands in the first row alone, or where it changes, is none for the others.
      const bool in_each_row = 2 * (profile(i).times + profile(i).numbers) > table_.sampled;
      keep = clock && !dated && !date_used && in_each_row;
      date_used = date_used || keep;
    } else if (role(i) == Role::kHalfOfDay) {
      keep = clock && !half_used && i > time;
      half_used = half_used || keep;
    } else if (role(i) == Role::kMilliseconds) {
      keep =
          clock && !packed && !milliseconds_used && i > time && profile(time).time_texts.front().fraction_digits == 0;
      milliseconds_used = milliseconds_used || keep;
    } else {
      continue;
    }
    if (!keep) role(i) = role(i) == Role::kMilliseconds ? Role::kOther : Role::kText;
  }
}

void Assigner::drop_index_and_dates() {
  for (std::size_t i = 0; i < table_.columns; ++i) {
    if (role(i) == Role::kDate || role(i) == Role::kHalfOfDay || role(i) == Role::kMilliseconds) role(i) = Role::kText;
  }
}

void Assigner::keep_one_index() {
  bool kept = false;
  for (std::size_t i = 0; i < table_.columns; ++i) {
    if (role(i) != Role::kIndex) continue;
    if (kept) role(i) = Role::kOther;
    kept = true;
  }
  if (kept || table_.columns < 2) return;
  if (numbers_without_words(0) && counting(profile(0))) role(0) = Role::kIndex;
}

void Assigner::settle_forced_times() {
  const bool index = layout_.time.kind == "index";
  std::size_t time = 0;
  for (std::size_t i = 0; i < table_.columns; ++i) {
    if (!forced_time(i)) {
      if (role(i) == Role::kTime) role(i) = profile(i).holds() == Holds::kTimes ? Role::kText : Role::kOther;
      continue;
    }
    if (index) {
      role(i) = Role::kIndex;
    } else if (role(i) != Role::kHours && role(i) != Role::kMinutes && role(i) != Role::kDate &&
               role(i) != Role::kHalfOfDay && role(i) != Role::kMilliseconds) {
      role(i) = Role::kTime;
      time = i;
    }
  }
  if (index) {
    columns_.no_time = true;
    return;
  }
  if (with_role(Role::kTime).empty()) {
    const auto column = static_cast<std::size_t>(layout_.time.columns.front() - 1);
    if (column < table_.columns) role(column) = Role::kTime;
  }
  if (!forced_time(0) && numbers_without_words(0) && counting(profile(0))) role(0) = Role::kIndex;
  drop_companions(time);
}

}  // namespace ovenwright::log
