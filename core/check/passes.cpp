#include "core/check/passes.h"

#include <algorithm>

#include "core/clean/clean.h"
#include "core/files/nearest.h"
#include "core/oven/entry.h"
#include "core/oven/oven_file.h"

namespace ovenwright::check {
namespace {

/// Two placements for one channel of the log, by its name and by its number: which one holds cannot be told.
std::optional<Error> placed_twice(const board::Board& board, const log::Reading& reading) {
  const auto by = [&board](const std::string& text) {
    return std::ranges::find(board.placements, text, &board::Placement::channel);
  };
  for (const auto& channel : reading.channels) {
    const std::string number = std::to_string(channel.number);
    const auto named = by(channel.name), numbered = by(number);
    const bool anothers_name =
        channel.name != number &&
        std::ranges::find(reading.channels, number, &run::RawChannel::name) != reading.channels.end();
    if (anothers_name && named == board.placements.end() && numbered != board.placements.end()) {
      const std::string expected = "\"" + channel.name + "\" placed by its name as well";
      return Error{
          ErrorCode::kParse,
          "found the channel \"" + number + "\", the name of one and the number of another, expected " + expected,
          {board.identity.file, numbered->line, 0},
          number,
          expected};
    }
    if (named == numbered || named == board.placements.end() || numbered == board.placements.end() || anothers_name)
      continue;
    const auto [first, second] = std::minmax(named->line, numbered->line);
    return Error{ErrorCode::kParse,
                 "found the channel \"" + channel.name + "\" a second time, first in line " + std::to_string(first),
                 {board.identity.file, second, 0},
                 channel.name,
                 "each channel once"};
  }
  return std::nullopt;
}

/// A board's placements must be channels of the log and have thermocouples that are known.
std::optional<Error> misplaced(const board::Board& board, const log::Reading& reading) {
  for (const auto& placement : board.placements) {
    const Place place{board.identity.file, placement.line, 0};
    const bool there = std::ranges::any_of(reading.channels, [&](const run::RawChannel& channel) {
      return channel.name == placement.channel || std::to_string(channel.number) == placement.channel;
    });
    if (!there) {
      const std::vector<std::string_view> names = [&] {
        std::vector<std::string_view> all;
        for (const auto& channel : reading.channels) all.emplace_back(channel.name);
        return all;
      }();
      return Error{ErrorCode::kParse,
                   "the board places the channel \"" + placement.channel + "\", which \"" + reading.file.file +
                       "\" lacks" + files::suggestion(placement.channel, names),
                   place, placement.channel, files::listed(names)};
    }
    if (!placement.thermocouple) continue;
    if (const auto tolerance = measure::tolerance_of(*placement.thermocouple); !tolerance) {
      Error error = tolerance.error();
      error.code = ErrorCode::kParse;
      error.where = place;
      return error;
    }
  }
  return placed_twice(board, reading);
}

}  // namespace

Result<std::vector<run::Run>> passes(log::Reading& reading, const Setting& setting, std::optional<int> only) {
  if (setting.board != nullptr) {
    if (auto error = misplaced(*setting.board, reading)) return *std::move(error);
  }
  if (setting.oven != nullptr && setting.recipe != nullptr) {
    auto warnings = oven::check_recipe(*setting.recipe, *setting.oven);
    if (!warnings) return warnings.error();
    for (auto& warning : *warnings) reading.warnings.push_back(std::move(warning));
  }
  auto runs = clean::clean(std::move(reading.channels), {setting.board, setting.keep_spikes});
  reading.channels.clear();
  if (!runs) {
    Error error = runs.error();
    if (error.where.file.empty()) error.where.file = reading.file.file;
    return error;
  }
  if (!only) return *std::move(runs);
  const int count = static_cast<int>(runs->size());
  if (*only < 1 || *only > count) {
    const std::string found = std::to_string(count) + (count == 1 ? " run" : " runs");
    return Error{ErrorCode::kBadArgument,
                 "found " + found + ", expected at least " + std::to_string(*only),
                 {reading.file.file, 0, 0},
                 found,
                 "at least " + std::to_string(*only)};
  }
  std::vector<run::Run> one;
  one.push_back(std::move((*runs)[static_cast<std::size_t>(*only - 1)]));
  return one;
}

std::optional<measure::Place> place_of(const run::Run& run, const Setting& setting) {
  if (setting.oven == nullptr || setting.recipe == nullptr) return std::nullopt;
  std::optional<oven::Entry> entry;
  if (setting.entry_s) {
    entry = oven::Entry{*setting.entry_s, 0, oven::Entry::Source::kGiven};
  } else {
    entry = oven::find_entry(run, *setting.oven, *setting.recipe, setting.board);
  }
  if (!entry) return std::nullopt;
  return measure::Place{setting.oven, setting.recipe, *entry};
}

}  // namespace ovenwright::check
