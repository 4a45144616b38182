#pragma once
#include <optional>
#include <string>
#include <vector>

#include "app/desktop/widgets/channels.h"
#include "core/board/board.h"
#include "core/judge/judgement.h"
#include "core/oven/oven.h"
#include "core/run/run.h"

namespace ovenwright::widgets::samples {

/// One result as it is written down by hand; verdict and margin follow from the numbers.
struct Given {
  std::optional<double> value;
  double U = 0;
  std::optional<double> lower, upper, target;
};

/// A judgement under construction: each call adds a requirement of one window and its results.
class JudgementBuilder {
 public:
  explicit JudgementBuilder(window::DecisionRule rule = window::DecisionRule::kGuarded);
  /// Results of the channels in their order.
  JudgementBuilder& add(const std::string& name, const measure::Definition& definition, Unit unit,
                        const std::vector<Given>& channels, bool required = true);
  JudgementBuilder& addBoard(const std::string& name, const measure::Definition& definition, Unit unit,
                             const Given& given, bool required = true);
  judge::Judgement& judgement() { return m_judgement; }

 private:
  judge::Outcome outcome(const std::string& name, const measure::Definition& definition, Unit unit, const Given& given);
  judge::Judgement m_judgement;
};

measure::Definition peak();
measure::Definition timeAbove(double level_C);

/// Channels "TC1" ... with peaks falling from 250 °C by 1 °C each.
Channels channels(std::size_t count);

/// The board Tern with six thermocouples: two results are out, two lie within their uncertainty of a limit.
judge::Judgement tern();
Channels ternChannels();
board::Board ternBoard();
oven::Oven tenZoneOven();
oven::Recipe ternRecipe();
oven::Entry ternEntry();
/// Indexes of results of tern().
constexpr std::size_t kTernRise = 0, kTernPeak = 23;

/// One thermocouple that meets everything.
judge::Judgement passing();

/// Every state of a mark, one lane each, on one thermocouple.
judge::Judgement everyState();
/// Two requirements on `count` thermocouples from close to the lower to close to the upper limit.
judge::Judgement manyChannels(std::size_t count);

}  // namespace ovenwright::widgets::samples
