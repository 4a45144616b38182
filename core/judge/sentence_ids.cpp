// Every template that a verdict can need, for translators and tests.
#include <fmt/format.h>

#include <algorithm>
#include <string>

#include "core/judge/english_words.h"
#include "core/judge/phrases.h"

namespace ovenwright::judge {

using namespace english;

bool is_told_of_predictions(const std::string& id) {
  return id.starts_with("verdict.") || std::ranges::find(kPredicted, id) != std::end(kPredicted);
}

std::vector<std::string> sentence_ids() {
  std::vector<std::string> ids(std::begin(kFixed), std::end(kFixed));
  const auto add = [&](const std::string& id) { ids.push_back(id); };
  for (const char* id : kPredicted) add(std::string{kOfPredictions} + id);
  for (const auto& verdict : kVerdicts)
    for (const char* assumed : {"", ".assumed"})
      for (const char* told : {"", kOfPredictions}) add(fmt::format("{}verdict.{}{}", told, verdict[0], assumed));
  std::vector<std::string> keys;
  for (const auto& row : kPlacementRows) keys.emplace_back(row.key);
  for (const auto& row : kBoardRows) keys.emplace_back(row.key);
  for (const auto& key : keys) {
    const bool board = find_row(kBoardRows, key) != nullptr;
    for (const char* side : {"low", "high"}) {
      add(fmt::format("closest.{}.{}", key, side));
      add(fmt::format("closest.{}.{}.at_least", key, side));
      add(fmt::format("tight.{}.{}", key, side));
      add(fmt::format("tightest.{}.{}", key, side));
      for (const char* who : kWho) {
        if (board && who != std::string("one")) continue;
        for (const char* zones : {"", ".zones"}) {
          for (const char* how : {"", ".within"}) add(fmt::format("problem.{}.{}.{}{}{}", key, side, who, how, zones));
          if (side == std::string("low")) continue;
          for (const char* how : {"", ".within"}) {
            add(fmt::format("problem.{}.{}.{}.at_least{}{}", key, side, who, how, zones));
            if (who != std::string("one")) continue;
            for (const auto& cut : kCuts)
              add(fmt::format("problem.{}.{}.one.at_least{}{}.{}", key, side, how, zones, cut[0]));
          }
        }
      }
    }
  }
  for (const char* who : kWho) {
    for (const char* what : {"both", "time"})
      for (const char* zones : {"", ".zones"}) add(fmt::format("never.{}.{}{}", who, what, zones));
    add(fmt::format("not_reached.level.{}", who));
    add(fmt::format("not_reached.other.{}", who));
    for (const auto& row : kBoardRows) add(fmt::format("not_reached.{}.{}", row.key, who));
  }
  for (const auto& row : kBoardRows) add(fmt::format("not_reached.{}.reason", row.key));
  for (const char* lacks : {"value", "verdict"}) {
    add(fmt::format("none.{}.several", lacks));
    add(fmt::format("more_none.{}.several", lacks));
    for (const auto& cause : kCauses)
      for (const char* which : {"none", "more_none"}) add(fmt::format("{}.{}.{}", which, lacks, cause[0]));
  }
  for (const auto& cause : kCauses) add(fmt::format("for.{}", cause[0]));
  return ids;
}

}  // namespace ovenwright::judge
