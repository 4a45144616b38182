#include "core/clean/clean.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <iterator>
#include <limits>
#include <map>
#include <memory>
#include <mutex>
#include <string>
#include <utility>

#include "core/clean/passes.h"
#include "core/clean/readings.h"
#include "core/clean/rows.h"
#include "core/clean/spikes.h"
#include "core/clean/suspects.h"
#include "core/clean/track.h"
#include "core/run/steps.h"
#include "core/units/parallel.h"
#include "core/units/phrase.h"

namespace ovenwright::clean {
namespace {

using run::RawChannel;

constexpr double kShortGap_s = 3;
constexpr std::size_t kShortGapSamples = 2;

/// How many threads are worth it for so many samples: one up to a few millions, else as many as wanted.
/// @param wanted  0: all cores
unsigned threads_for(std::size_t samples, unsigned wanted) {
  constexpr std::size_t kWorthAThread = 3'000'000;
  return static_cast<unsigned>(std::clamp<std::size_t>(samples / kWorthAThread, 1, wanted > 0 ? wanted : all_cores()));
}

std::string number_text(double value) {
  auto text = std::to_string(value);
  return text.substr(0, text.find('.') + 2);
}

/// "one sample, 412.0 °C", "57 samples".
std::string detail_of(const std::vector<run::RemovedSample>& removed) {
  if (removed.size() != 1) return std::to_string(removed.size()) + " samples";
  const double value = removed[0].temperature_C;
  return std::isfinite(value) ? "one sample, " + number_text(value) + " °C" : "one sample";
}

/// The clocks of a log, each put in order once.
struct Clocks {
  std::map<std::shared_ptr<const std::vector<double>>, OrderedRows> by_times;

  explicit Clocks(const std::vector<RawChannel>& channels) {
    for (const auto& channel : channels) by_times[channel.time_s];
  }
  void order() {
    for (auto& [times, rows] : by_times) rows = order_rows(times);
  }
};

/// A track of a channel whose overview is known.
void make_track(Track& track, RawChannel channel, const Clocks& clocks) {
  const OrderedRows& rows = clocks.by_times.at(channel.time_s);
  track.name = std::move(channel.name);
  track.number = channel.number;
  track.clock = rows.clock;
  track.temperature_C = std::move(channel.temperature_C);
  if (rows.kept) {
    for (std::size_t i = 0; i < rows.kept->size(); ++i) track.temperature_C[i] = track.temperature_C[(*rows.kept)[i]];
    track.temperature_C.resize(rows.kept->size());
    track.overview = look_over(track.temperature_C);
  }
}

/// Neighbouring stretches of one kind are one fault.
void merge(std::vector<Stretch>& stretches) {
  std::ranges::sort(stretches, {}, &Stretch::first);
  std::vector<Stretch> merged;
  for (auto& stretch : stretches) {
    if (!merged.empty() && merged.back().kind == stretch.kind && merged.back().action == stretch.action &&
        merged.back().last + 1 == stretch.first) {
      merged.back().last = stretch.last;
      merged.back().raw_C.insert(merged.back().raw_C.end(), stretch.raw_C.begin(), stretch.raw_C.end());
    } else {
      merged.push_back(std::move(stretch));
    }
  }
  stretches = std::move(merged);
}

/// Rows first..last of a clock as a clock of their own, made once for all tracks that keep all of these rows.
struct Cut {
  std::map<const run::Clock*, std::shared_ptr<const run::Clock>> clocks;
  std::mutex mutex;

  const std::shared_ptr<const run::Clock>& of(const std::shared_ptr<const run::Clock>& whole, std::size_t first,
                                              std::size_t last) {
    const std::scoped_lock lock(mutex);
    auto& cut = clocks[whole.get()];
    if (!cut) {
      const auto t = whole->time_s().subspan(first, last - first + 1);
      cut = t.size() == whole->size() ? whole : *run::Clock::make({t.begin(), t.end()});
    }
    return cut;
  }
};

void add_faults(run::Channel& channel, const Track& track, std::size_t first, std::size_t last) {
  const auto t = track.clock->time_s();
  for (const auto& stretch : track.stretches) {
    const std::size_t from = std::max(first, stretch.first), to = std::min(last, stretch.last);
    if (from > to) continue;
    run::Fault fault{stretch.kind, t[from], t[to], stretch.action, {}, {}};
    if (!stretch.raw_C.empty())
      for (std::size_t row = from; row <= to; ++row)
        fault.removed.push_back({t[row], stretch.raw_C[row - stretch.first]});
    if (!fault.removed.empty()) fault.detail = detail_of(fault.removed);
    channel.faults.push_back(std::move(fault));
  }
}

/// The longer stretches without samples between the good rows.
std::vector<run::Gap> gaps_of(const Track& track, const std::vector<std::size_t>& good) {
  std::vector<run::Gap> gaps;
  const auto t = track.clock->time_s();
  for (std::size_t i = 0; i + 1 < good.size(); ++i) {
    const double length_s = t[good[i + 1]] - t[good[i]];
    if (good[i + 1] - good[i] - 1 > kShortGapSamples && length_s > kShortGap_s)
      gaps.push_back({t[good[i]], t[good[i + 1]]});
  }
  return gaps;
}

/// Rows first..last of a track as a channel of a run. Takes the samples out of the track where it wants all of them.
run::Channel channel_of(Track& track, std::size_t first, std::size_t last, Cut& cut) {
  run::Channel channel;
  channel.name = track.name;
  channel.number = track.number;
  channel.samples = last - first + 1;
  const auto t = track.clock->time_s();
  channel.removed_start_to_s = t[first];
  channel.removed_end_from_s = t[last];
  add_faults(channel, track, first, last);
  auto& T = track.temperature_C;
  const bool whole = std::ranges::none_of(channel.faults, [](const run::Fault& f) { return !f.removed.empty(); });
  Result<run::Trace> trace = Error{};
  if (whole) {
    const auto& clock = cut.of(track.clock, first, last);
    auto cut_T = channel.samples == T.size() ? std::move(T)
                                             : std::vector<double>(T.begin() + static_cast<std::ptrdiff_t>(first),
                                                                   T.begin() + static_cast<std::ptrdiff_t>(last) + 1);
    trace = track.overview.all_finite ? run::Trace::make_of_finite(clock, std::move(cut_T))
                                      : run::Trace::make(clock, std::move(cut_T));
  } else {
    std::vector<std::size_t> good;
    for (std::size_t row = first; row <= last; ++row)
      if (!std::isnan(T[row])) good.push_back(row);
    std::vector<double> time_s, temperature_C;
    for (const std::size_t row : good) {
      time_s.push_back(t[row]);
      temperature_C.push_back(T[row]);
    }
    channel.gaps = gaps_of(track, good);
    if (auto clock = run::Clock::make(std::move(time_s))) trace = run::Trace::make(*clock, std::move(temperature_C));
  }
  if (trace)
    channel.trace = *std::move(trace);
  else if (whole)  // too short to be a trace, with nothing taken out
    channel.faults.push_back({run::FaultKind::kOpen,
                              t[first],
                              t[last],
                              run::FaultAction::kFlagged,
                              say(Phrase::kTooFewSamples, {std::to_string(channel.samples)}),
                              {}});
  return channel;
}

/// A channel without a row in this pass.
run::Channel empty_channel(const Track& track, const run::Run& run) {
  run::Channel channel;
  channel.name = track.name;
  channel.number = track.number;
  channel.removed_start_to_s = run.from_s;
  channel.removed_end_from_s = run.to_s;
  channel.faults.push_back(
      {run::FaultKind::kOpen, run.from_s, run.to_s, run::FaultAction::kFlagged, say(Phrase::kNoUsableTime), {}});
  return channel;
}

void add_clock_gaps(run::Run& run, const run::Clock& clock, std::size_t first, std::size_t last) {
  for (auto& gap : clock_gaps(clock, first, last)) {
    const auto same = [&](const run::Fault& f) { return f.from_s == gap.from_s && f.to_s == gap.to_s; };
    if (std::ranges::none_of(run.faults, same)) run.faults.push_back(std::move(gap));
  }
}

/// The tracks cut at the edges, which begin at −infinity and end at +infinity. Empties the tracks one by one, so that a
/// log is never held twice.
std::vector<run::Run> cut_into_runs(std::vector<Track> tracks, const std::vector<double>& edges, unsigned threads) {
  struct Rows {
    std::size_t first = 0, end = 0;
  };
  const auto rows_in = [&](const Track& track, std::size_t run) {
    const auto t = track.clock->time_s();
    return Rows{static_cast<std::size_t>(std::ranges::lower_bound(t, edges[run]) - t.begin()),
                static_cast<std::size_t>(std::ranges::lower_bound(t, edges[run + 1]) - t.begin())};
  };
  const auto longest = std::ranges::max_element(tracks, {}, [](const Track& t) { return t.clock->size(); })->clock;
  std::vector<run::Run> runs(edges.size() - 1);
  std::vector<Cut> cuts(runs.size());
  for (std::size_t i = 0; i < runs.size(); ++i) {
    runs[i].sample_interval_s = longest->median_interval_s();
    runs[i].from_s = std::numeric_limits<double>::infinity();
    runs[i].to_s = -std::numeric_limits<double>::infinity();
    std::vector<const run::Clock*> seen;
    for (const auto& track : tracks) {
      const auto rows = rows_in(track, i);
      if (rows.first == rows.end || std::ranges::find(seen, track.clock.get()) != seen.end()) continue;
      seen.push_back(track.clock.get());
      runs[i].from_s = std::min(runs[i].from_s, track.clock->time_s()[rows.first]);
      runs[i].to_s = std::max(runs[i].to_s, track.clock->time_s()[rows.end - 1]);
      add_clock_gaps(runs[i], *track.clock, rows.first, rows.end - 1);
    }
  }
  for (auto& run : runs) run.channels.resize(tracks.size());
  for_each_index(tracks.size(), threads, [&](std::size_t k) {
    auto& track = tracks[k];
    for (std::size_t i = 0; i < runs.size(); ++i) {
      const auto rows = rows_in(track, i);
      runs[i].channels[k] =
          rows.first == rows.end ? empty_channel(track, runs[i]) : channel_of(track, rows.first, rows.end - 1, cuts[i]);
    }
    std::vector<double>().swap(track.temperature_C);
  });
  return runs;
}

void flag_suspects(run::Run& run, const board::Board* board, unsigned threads) {
  flag_stuck(run);
  flag_reversed_polarity(run);
  flag_cold_junction_steps(run, threads);
  const auto means = pass_means(run, threads);
  flag_detached(run, means, board);
  if (board != nullptr) flag_swapped(run, means, *board);
  for (auto& channel : run.channels) std::ranges::stable_sort(channel.faults, {}, &run::Fault::from_s);
}

/// Where a clock was set back while the board was hot and the curve goes on, the rows behind are moved on in time.
std::vector<run::Fault> move_on(std::vector<RawChannel>& channels) {
  constexpr double kHot_C = 60, kLeast_C = 1, kBesides = 3;  // as where two runs are told apart by a jump
  std::map<const std::vector<double>*, std::optional<MovedOn>> by_times;
  for (const auto& channel : channels) by_times[channel.time_s.get()];
  std::vector<run::Fault> faults;
  for (auto& [times, moved] : by_times) {
    const auto mean = [&, on = times](std::size_t row, std::optional<std::size_t> less) {
      double sum = 0;
      int count = 0;
      for (const auto& channel : channels) {
        if (channel.time_s.get() != on) continue;
        const double value = channel.temperature_C[row] - (less ? channel.temperature_C[*less] : 0);
        if (!(std::abs(value) < 500)) continue;
        sum += value;
        ++count;
      }
      return count > 0 ? sum / count : std::numeric_limits<double>::quiet_NaN();
    };
    moved = moved_on(*times, [&](std::size_t row) {
      const double beside = std::max(std::abs(mean(row - 1, row - 2)), std::abs(mean(row + 1, row)));
      return mean(row, std::nullopt) > kHot_C && std::abs(mean(row, row - 1)) <= std::max(kLeast_C, kBesides * beside);
    });
    if (moved) std::ranges::copy(moved->faults, std::back_inserter(faults));
  }
  std::map<const std::vector<double>*, std::shared_ptr<const std::vector<double>>> made;
  for (auto& channel : channels) {
    auto& moved = by_times[channel.time_s.get()];
    if (!moved) continue;
    auto& times = made[channel.time_s.get()];
    if (!times) times = std::make_shared<const std::vector<double>>(std::move(moved->time_s));
    channel.time_s = times;
  }
  return faults;
}

/// The channels of one part of a log: rows first..end of their one clock.
std::vector<RawChannel> rows_of(const std::vector<RawChannel>& channels, std::size_t first, std::size_t end) {
  const auto slice = [&](const std::vector<double>& values) {
    return std::vector<double>(values.begin() + static_cast<std::ptrdiff_t>(first),
                               values.begin() + static_cast<std::ptrdiff_t>(end));
  };
  const auto times = std::make_shared<const std::vector<double>>(slice(*channels.front().time_s));
  std::vector<RawChannel> part;
  for (const auto& channel : channels)
    part.push_back({channel.name, channel.number, times, slice(channel.temperature_C)});
  return part;
}

/// @param forward  no time steps back
Result<std::vector<run::Run>> clean_part(std::vector<RawChannel> channels, const Options& options, bool forward) {
  const auto set_back = forward ? std::vector<run::Fault>{} : move_on(channels);
  Clocks clocks(channels);
  std::size_t samples = 0;
  for (const auto& channel : channels) samples += channel.temperature_C.size();
  const unsigned threads = threads_for(samples, options.threads);
  std::vector<Track> tracks(channels.size());
  for_each_index(1 + channels.size(), threads, [&](std::size_t k) {
    if (k == 0)
      clocks.order();
    else
      tracks[k - 1].overview = look_over(channels[k - 1].temperature_C);
  });
  for (std::size_t k = 0; k < channels.size(); ++k) make_track(tracks[k], std::move(channels[k]), clocks);
  for_each_index(tracks.size(), threads, [&](std::size_t k) { find_bad_readings(tracks[k]); });
  if (std::ranges::all_of(tracks, [](const Track& track) { return track.clock->size() == 0; }))
    return Error{ErrorCode::kParse, "no row has a usable time", {}, {}, {}};
  find_spikes(tracks, options.keep);
  for (auto& track : tracks) merge(track.stretches);
  auto edges = cuts_between_passes(tracks);
  edges.insert(edges.begin(), -std::numeric_limits<double>::infinity());
  edges.push_back(std::numeric_limits<double>::infinity());
  auto runs = cut_into_runs(std::move(tracks), edges, threads);
  for (std::size_t i = 0; i < runs.size(); ++i) {
    const auto add = [&](const std::vector<run::Fault>& faults) {
      for (const auto& fault : faults)
        if (fault.from_s < edges[i + 1] && fault.to_s >= edges[i]) runs[i].faults.push_back(fault);
    };
    add(set_back);
    for (const auto& [times, rows] : clocks.by_times) add(rows.faults);
    std::ranges::stable_sort(runs[i].faults, {}, &run::Fault::from_s);
    flag_suspects(runs[i], options.board, threads);
  }
  return runs;
}

}  // namespace

Result<std::vector<run::Run>> clean(std::vector<RawChannel> channels, const Options& options) {
  if (channels.empty()) return Error{ErrorCode::kParse, "the log has no temperature channel", {}, {}, {}};
  for ([[maybe_unused]] const auto& channel : channels)
    assert(channel.time_s && channel.time_s->size() == channel.temperature_C.size());
  const bool one_clock = std::ranges::all_of(
      channels, [&](const RawChannel& channel) { return channel.time_s == channels.front().time_s; });
  const bool forward = one_clock && run::steps_of(*channels.front().time_s).down == 0;  // most logs
  const auto starts = one_clock && !forward ? parts_by_clock(channels) : std::vector<std::size_t>{0};
  std::vector<run::Run> runs;
  for (std::size_t i = 0; i < starts.size(); ++i) {
    const std::size_t end = i + 1 < starts.size() ? starts[i + 1] : channels.front().time_s->size();
    auto part =
        clean_part(starts.size() > 1 ? rows_of(channels, starts[i], end) : std::move(channels), options, forward);
    if (!part) return part.error();
    std::ranges::move(*part, std::back_inserter(runs));
  }
  for (std::size_t i = 0; i < runs.size(); ++i) {
    runs[i].part = static_cast<int>(i) + 1;
    runs[i].parts = static_cast<int>(runs.size());
  }
  return runs;
}

}  // namespace ovenwright::clean
