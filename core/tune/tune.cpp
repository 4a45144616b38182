#include "core/tune/tune.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <mutex>

#include "core/tune/best_recipe.h"
#include "core/tune/conflicts.h"
#include "core/tune/groups.h"
#include "core/tune/next_run.h"
#include "core/tune/words.h"

namespace ovenwright::tune {
namespace {

constexpr double kReserve = 0.02;  // margin beyond the band's edge, for what rounding of a recipe costs
// A least change would stand at the band's edge at many limits at once: it keeps as much again of a half width as the
// data do not support, where a recipe does.
constexpr double kLeastChangeHalfWidths = 1.25;
constexpr double kSureChance = 0.97, kChanceApart = 0.01;  // what is sure enough to be shown first; what differs
constexpr double kHopeless = 0.5;                          // of the chance of another suggestion: less is none
constexpr double kDefaultMargin = 0.2;
constexpr double kHardlyMoved_C = 3, kMarginNotSeen = 0.02;  // moves that nobody would set, and what they may be worth
// The coolest recipe would drift to the oven's lower limits on a crawling belt: it stays where predictions were tried.
constexpr double kCoolestReach_C = 40, kCoolestReachSpeed = 0.2;
constexpr std::size_t kMostBoards = 31;  // a bit each
constexpr double kMarginMissed = 0.005;  // whole °C and mm/min may cost so much of a margin that is to be kept

std::vector<Forecaster> forecasters(const heat::HeatModel& model, std::vector<Subject> boards) {
  std::vector<Forecaster> out;
  for (auto& board : boards) out.emplace_back(model, std::move(board));
  return out;
}

using Boards = std::vector<const Forecaster*>;

/// That every board passes; −1 where it is not known of one.
double chance_of(const std::vector<Forecast>& predicted) {
  double out = 1;
  for (const auto& forecast : predicted) out = std::min(out, forecast.pass_probability.value_or(-1));
  return out;
}

std::vector<Forecast> forecasts(const Boards& boards, const oven::Recipe& recipe) {
  std::vector<Forecast> out;
  for (const auto* board : boards) out.push_back(board->forecast(recipe, true));
  return out;
}

}  // namespace

const char* aim_name(Aim aim) {
  switch (aim) {
    case Aim::kLeastChange:
      return "least change";
    case Aim::kMostMargin:
      return "most margin";
    case Aim::kFastest:
      return "fastest";
    case Aim::kCoolest:
      return "coolest";
  }
  return "";
}

std::vector<Change> changes(const oven::Oven& oven, const oven::Recipe& from, const oven::Recipe& to) {
  std::vector<Change> out;
  std::size_t z = 0;
  for (const auto& zone : oven.zones) {
    if (zone.kind != oven::ZoneKind::kHeat) continue;
    if (from.top_C[z] != to.top_C[z]) out.push_back({zone.name, board::Side::kTop, from.top_C[z], to.top_C[z]});
    if (from.bottom_C[z] != to.bottom_C[z])
      out.push_back({zone.name, board::Side::kBottom, from.bottom_C[z], to.bottom_C[z]});
    ++z;
  }
  z = 0;
  for (const auto& zone : oven.zones) {
    if (zone.kind != oven::ZoneKind::kCool) continue;
    if (z < std::min(from.cooling_C.size(), to.cooling_C.size()) && from.cooling_C[z] != to.cooling_C[z])
      out.push_back({zone.name, std::nullopt, from.cooling_C[z], to.cooling_C[z]});
    ++z;
  }
  if (from.speed_mm_per_min != to.speed_mm_per_min)
    out.push_back({"", std::nullopt, from.speed_mm_per_min, to.speed_mm_per_min});
  return out;
}

oven::Recipe suggested_recipe(const oven::Recipe& now, oven::Recipe recipe, const std::string& what) {
  for (std::size_t z = 0; z < recipe.bottom_C.size(); ++z)
    if (recipe.bottom_C[z] != now.bottom_C[z]) recipe.bottom_C[z] = std::round(recipe.bottom_C[z]);
  recipe.identity = {};
  recipe.identity.name = now.identity.name + ", " + what;
  recipe.identity.source =
      "suggested from " + now.identity.name + "; a prediction, to be confirmed with an instrumented run";
  return recipe;
}

namespace {

/// The whole way from the model to a report.
class Tuning {
 public:
  Tuning(const heat::HeatModel& model, std::vector<Subject> boards, const oven::Recipe& now, bool now_passes,
         const Request& request)
      : model_(model),
        now_(now),
        now_passes_(now_passes),
        request_(request),
        forecasters_(forecasters(model, std::move(boards))),
        space_(model.problem.oven, now, request.freedom),
        x_now_(space_.vector(now)),
        start_(x_now_) {
    start_ = clamped(space_, start_);
    for (const auto& forecaster : forecasters_) all_.push_back(&forecaster);
  }

  Report report() && {
    for (std::size_t b = 0; b < all_.size(); ++b) {
      if (judges(*all_[b])) continue;
      report_.nothing_judged = true;
      report_.notes.push_back("No suggestion: the window requires nothing that can be predicted for " +
                              (all_.size() > 1 ? board_names()[b] : "this board") + ".");
      return std::move(report_);
    }
    const Search search(all_, space_, go_on());
    const Best found = best_for(search, all_, 0.4);
    if (stopped_) return cut_short();
    const Found& best = found.found;
    if (search.guards() && best.point.margin >= 0 && best.point.edge < 0 && !passes(best))
      report_.notes.push_back(guarded_note());
    if (best.point.margin < 0) {
      infeasible(best, found.ruled_out);
      if (all_.size() > 1 && all_.size() <= kMostBoards) group();
    } else {
      suggest_all(search, found);
    }
    if (!stopped_ && !found.ruled_out && (best.point.edge < 0 || doubtful())) {
      bool tried = false;
      report_.next_run = next_run(model_, all_, space_, now_, best.point, go_on(), tried);
      if (!report_.next_run && tried && !stopped_) report_.notes.push_back(no_harmless_run_note());
    }
    return stopped_ ? cut_short() : std::move(report_);
  }

 private:
  /// Whether a required limit of a board is held against something: a value, or a level that is not reached.
  bool judges(const Forecaster& board) const {
    const auto judgement = board.forecast(now_, Detail::kValues).judgement;
    for (std::size_t i = 0; i < judgement.all_size(); ++i) {
      const auto& outcome = judgement.all(i);
      const bool known = outcome.value.value || outcome.value.no_value == measure::NoValue::kNotReached;
      if (known && outcome.required && (outcome.lower || outcome.upper)) return true;
    }
    return false;
  }

  /// By the windows' own rules, as predicted.
  bool passes(const Found& found) const {
    const auto recipe = space_.recipe(found.point.x);
    return std::ranges::all_of(all_, [&](const Forecaster* board) {
      return board->forecast(recipe, Detail::kJudged).judgement.verdict == judge::Verdict::kPass;
    });
  }

  std::function<bool()> go_on() {
    return [this] {
      const std::scoped_lock lock(mutex_);
      return !(stopped_ = stopped_ || (request_.progress && !request_.progress(done_)));
    };
  }

  Report cut_short() {
    report_.cut_short = true;
    return std::move(report_);
  }

  /// The best recipe for some of the boards, found within a share of the whole way.
  Best best_for(const Search& search, const Boards& boards, double share) {
    std::vector<std::vector<double>> own;
    for (const auto* board : boards) {
      auto x = clamped(space_, space_.vector(model_.problem.runs[board->subject().model_run].recipe));
      if (x != start_ && space_.allows(x)) own.push_back(std::move(x));
    }
    const double from = done_;
    const auto so_far = [&](double done) {
      {
        const std::scoped_lock lock(mutex_);
        done_ = from + share * done;
      }
      return go_on()();
    };
    return best_recipe(search, space_, start_, x_now_, own, kReserve, so_far);
  }

  void infeasible(const Found& best, bool ruled_out) {
    Infeasible found;
    found.best = space_.recipe(best.point.x);
    found.best_margin = best.point.margin;
    const Found holder = smallest_conflict({all_, space_, start_, x_now_, go_on()}, best);
    if (stopped_) return;
    found.conflicts = conflicts_of(holder, forecasts(all_, found.best));
    found.ruled_out = ruled_out;
    found.sentence = infeasible_sentence(found, told_apart());
    report_.infeasible = std::move(found);
  }

  void group() {
    std::map<BoardSet, oven::Recipe> recipes;
    const std::function<std::optional<bool>(BoardSet)> can_share = [&](BoardSet set) -> std::optional<bool> {
      if (set + 1 == BoardSet{1} << all_.size()) return false;  // known already
      const auto boards = members(set);
      const Search search(boards, space_, go_on());
      Found found = search.run(Aim::kMostMargin, start_, x_now_, {});  // mostly enough
      if (found.point.margin < 0 || !space_.allows(found.point.x))
        found = best_for(search, boards, 0.1 * (1 - done_)).found;
      if (stopped_) return std::nullopt;
      if (found.point.margin < 0) return false;
      recipes[set] = space_.recipe(found.point.x);
      return true;
    };
    const Cover found = cover(all_.size(), kExactBoards, can_share);
    report_.fewest_groups = found.fewest;
    for (const BoardSet set : found.sets) {
      Group group;
      for (std::size_t b = 0; b < all_.size(); ++b)
        if (set >> b & 1) group.boards.push_back(b);
      // A set may be known to share from a larger one that was asked for.
      const auto recipe = std::ranges::find_if(recipes, [&](const auto& known) { return (known.first & set) == set; });
      group.recipe = suggested_recipe(now_, recipe->second, "group " + std::to_string(report_.groups.size() + 1));
      group.changes = changes(model_.problem.oven, now_, group.recipe);
      group.predicted = forecasts(members(set), group.recipe);
      report_.groups.push_back(std::move(group));
    }
    report_.groups_sentence = groups_sentence(report_.groups, report_.fewest_groups, board_names());
  }

  Boards members(BoardSet set) const {
    Boards out;
    for (std::size_t b = 0; b < all_.size(); ++b)
      if (set >> b & 1) out.push_back(all_[b]);
    return out;
  }

  /// Names of several boards; none where there is one.
  std::vector<std::string> told_apart() const { return all_.size() > 1 ? board_names() : std::vector<std::string>{}; }

  std::vector<std::string> board_names() const {
    std::vector<std::string> out;
    for (std::size_t b = 0; b < all_.size(); ++b) {
      const auto* board = all_[b]->subject().board;
      out.push_back(board && !board->identity.name.empty() ? board->identity.name : "board " + std::to_string(b + 1));
    }
    return out;
  }

  void suggest_all(const Search& search, const Best& found_best) {
    const Point& best = found_best.found.point;
    const double kept =
        request_.at_margin ? *request_.at_margin : std::min(kDefaultMargin, found_best.most_margin.margin / 2);
    auto freedom = request_.freedom;
    freedom.reach_C = kCoolestReach_C;
    freedom.reach_speed = kCoolestReachSpeed;
    const RecipeSpace near(model_.problem.oven, now_, freedom);
    const Search near_search(all_, near, go_on());
    // From the present recipe a small change, from the best margin a feasible way.
    std::vector<std::vector<double>> ends = {start_, best.x};
    for (const Aim aim : {Aim::kLeastChange, Aim::kMostMargin, Aim::kFastest, Aim::kCoolest}) {
      if (aim == Aim::kMostMargin) {
        // The surest, unless the least change is as sure; then the most margin itself.
        const Point& most = found_best.most_margin;
        const bool as_likely =
            most.x == best.x || std::max(chance_at(most.x), most_likely()) >= chance_at(best.x) - kChanceApart;
        suggest(aim, plainer(search, space_, as_likely ? most : best, 0));
        continue;
      }
      if (aim == Aim::kLeastChange && now_passes_) continue;
      if (aim == Aim::kFastest && request_.freedom.keep_speed) continue;
      Goal goal{.edge = std::min(kReserve, best.edge), .margin = kept};
      if (aim == Aim::kLeastChange) goal = {.edge = kReserve, .half_widths = kLeastChangeHalfWidths};
      Found found = aim == Aim::kCoolest ? from_ends(near_search, near, aim, goal, ends)
                                         : from_ends(search, space_, aim, goal, ends);
      // The reserve is for where there is one.
      if (aim == Aim::kLeastChange && found.point.sure < goal.half_widths && best.edge >= kReserve) {
        goal.half_widths = 1;
        found = from_ends(search, space_, aim, goal, ends);
      }
      if (aim == Aim::kLeastChange) ends.push_back(found.point.x);
      if (stopped_) return;
      done_ += 0.2;
      if (found.point.margin < goal.margin - kMarginMissed)
        report_.notes.push_back(missed_margin_note(aim, goal.margin, found_best.most_margin.margin));
      else if (found.point.margin >= 0 && space_.allows(found.point.x))
        suggest(aim, aim == Aim::kCoolest ? plainer(near_search, near, found.point, goal.margin)
                                          : plainer(search, space_, found.point, goal.margin));
    }
    surest_first();
  }

  /// Moves of a degree or two go back where neither margin nor chance falls noticeably: they are noise to whoever sets
  /// them.
  Point plainer(const Search& search, const RecipeSpace& space, const Point& from, double least_margin) const {
    const double inside = std::min(from.margin, 0.0);
    const double margin = std::max({least_margin - kMarginMissed, from.margin - kMarginNotSeen, inside});
    const double chance = from.chance() - kChanceApart;
    std::vector<std::size_t> moved;
    for (std::size_t k = 0; k < space.speed(); ++k)
      if (from.x[k] != x_now_[k] && std::abs(from.x[k] - x_now_[k]) <= kHardlyMoved_C) moved.push_back(k);
    std::ranges::sort(moved, {}, [&](std::size_t k) { return std::abs(from.x[k] - x_now_[k]); });
    Point out = from;
    for (const std::size_t k : moved) {
      auto x = out.x;
      x[k] = x_now_[k];
      if (!space.allows(x)) continue;
      Point without = search.at(x, true);
      const bool as_sure = without.chance() >= chance && without.edge >= std::min(from.edge, 0.0);
      if (without.margin >= margin && as_sure) out = std::move(without);
    }
    return out;
  }

  double chance_at(const std::vector<double>& x) const { return chance_of(forecasts(all_, space_.recipe(x))); }

  /// The chance of the likeliest suggestion so far; −1 where there is none, or it is not known.
  double most_likely() const {
    double out = -1;
    for (const auto& shown : report_.suggestions) out = std::max(out, chance_of(shown.predicted));
    return out;
  }

  /// Whether the likeliest suggestion is not likely enough to be left without a word.
  bool doubtful() const {
    const auto& shown = report_.suggestions;
    return !shown.empty() && chance_of(shown.front().predicted) >= 0 &&
           chance_of(shown.front().predicted) < kDoubtfulChance;
  }

  /// What is shown first is sure to pass, or the surest: by its chance, where that is not known by its half widths.
  void surest_first() {
    auto& shown = report_.suggestions;
    if (shown.empty()) return;
    const auto rank = [](const Suggestion& one) { return std::pair{chance_of(one.predicted), one.sure}; };
    const auto surest = std::ranges::max_element(shown, {}, rank);
    const bool known = chance_of(surest->predicted) >= 0;
    const bool sure_enough =
        known ? chance_of(shown.front().predicted) >= std::min(kSureChance, chance_of(surest->predicted) - kChanceApart)
              : shown.front().sure >= std::min(kLeastChangeHalfWidths, surest->sure);
    if (!sure_enough) std::rotate(shown.begin(), surest, surest + 1);
    if (!doubtful()) return;
    shown.front().doubtful = true;
    shown.front().sentence += doubtful_words();
  }

  /// The best of the searches from each end; a least change that is sure from the first is not looked for elsewhere.
  Found from_ends(const Search& search, const RecipeSpace& space, Aim aim, const Goal& goal,
                  const std::vector<std::vector<double>>& ends) {
    std::optional<Found> best;
    std::vector<Task> tasks;
    for (const auto& end : ends) tasks.push_back({aim, clamped(space, end), goal});
    // A least change that is sure from the first is not looked for elsewhere.
    for (std::size_t done = 0; done < tasks.size();) {
      const std::size_t now = aim == Aim::kLeastChange ? 1 : tasks.size();
      for (Found& found : run_all(search,
                                  {tasks.begin() + static_cast<std::ptrdiff_t>(done),
                                   tasks.begin() + static_cast<std::ptrdiff_t>(done + now)},
                                  x_now_)) {
        if (!space.allows(found.point.x)) continue;
        if (!best || search.cost(aim, found.point, x_now_, goal) < search.cost(aim, best->point, x_now_, goal))
          best = std::move(found);
      }
      done += now;
      if (stopped_ || (aim == Aim::kLeastChange && best && best->point.sure >= goal.half_widths)) break;
    }
    if (best) return *std::move(best);
    Found none;
    none.point = search.at(clamped(space, start_), true);
    return none;
  }

  void suggest(Aim aim, const Point& point) {
    Suggestion suggestion;
    suggestion.aim = aim;
    suggestion.sure = point.sure;
    suggestion.recipe = suggested_recipe(now_, space_.recipe(point.x), aim_name(aim));
    suggestion.changes = changes(model_.problem.oven, now_, suggestion.recipe);
    // That the recipe which ran has the most margin is an answer with its prediction; of the other aims a remark.
    if (suggestion.changes.empty() && aim != Aim::kMostMargin) {
      report_.notes.push_back(present_recipe_note(aim));
      return;
    }
    const auto known = std::ranges::find_if(report_.suggestions, [&](const Suggestion& s) {
      return s.recipe.top_C == suggestion.recipe.top_C && s.recipe.bottom_C == suggestion.recipe.bottom_C &&
             s.recipe.speed_mm_per_min == suggestion.recipe.speed_mm_per_min;
    });
    if (known != report_.suggestions.end()) {
      known->also.push_back(aim);
      known->sentence = suggestion_sentence(model_.problem.oven, *known, told_apart());
      return;
    }
    suggestion.predicted = forecasts(all_, suggestion.recipe);
    const double chance = chance_of(suggestion.predicted);
    if ((aim == Aim::kFastest || aim == Aim::kCoolest) && chance >= 0 && chance < kHopeless * most_likely()) {
      report_.notes.push_back(not_as_likely_note(aim));
      return;
    }
    suggestion.sentence = suggestion_sentence(model_.problem.oven, suggestion, told_apart());
    suggestion.caution = kCaution;
    report_.suggestions.push_back(std::move(suggestion));
  }

  const heat::HeatModel& model_;
  const oven::Recipe& now_;
  bool now_passes_;
  const Request& request_;
  std::vector<Forecaster> forecasters_;
  Boards all_;
  RecipeSpace space_;
  std::vector<double> x_now_, start_;
  std::mutex mutex_;  // searches from several starts ask at the same time
  double done_ = 0;
  bool stopped_ = false;
  Report report_;
};

}  // namespace

Report tune(const heat::HeatModel& model, std::vector<Subject> boards, const oven::Recipe& now, bool now_passes,
            const Request& request) {
  return Tuning(model, std::move(boards), now, now_passes, request).report();
}

}  // namespace ovenwright::tune
