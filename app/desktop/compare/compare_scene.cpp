#include "app/desktop/compare/compare_scene.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <algorithm>
#include <array>

#include "app/desktop/widgets/pair_lanes.h"

namespace ovenwright::desktop {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Compare)
};

std::optional<std::size_t> channelOf(const Compared& compared, std::size_t side, std::optional<std::size_t> both) {
  if (!both || *both >= compared.pairs.size()) return std::nullopt;
  return side == 0 ? compared.pairs[*both].a : compared.pairs[*both].b;
}

/// The same as a channel of the side's first run, which the curves are drawn for.
std::optional<std::size_t> shownChannel(const Compared& compared, std::size_t side, std::optional<std::size_t> both) {
  const auto channel = channelOf(compared, side, both);
  return channel && *channel < compared.side(side).first().view->channels().size() ? channel : std::nullopt;
}

/// The clock that both are shown on, from a side's zero.
Scene::CommonClock clockOf(const Compared& compared, std::size_t side, const Format& format) {
  Scene::CommonClock clock;
  clock.zero_s = commonZero_s(compared, side);
  if (!compared.linedUp)
    clock.name = Words::tr("s, not lined up");
  else if (compared.level_C)
    clock.name = Words::tr("s from %1", "a temperature").arg(format.temperatureWithUnit(*compared.level_C));
  else
    clock.name = Words::tr("s from oven entry");
  bool first = true;
  for (const std::size_t which : {0, 1}) {
    const auto& one = compared.side(which);
    for (std::size_t run = 0; run < one.runs.size(); ++run) {
      const auto& view = *one.runs[run].view;
      const double zero = one.zero_s[run];
      const double from = (view.entry() ? view.entry()->at_s : view.run().from_s) - zero, to = view.run().to_s - zero;
      clock.seen_s[0] = first ? from : std::min(clock.seen_s[0], from);
      clock.seen_s[1] = first ? to : std::max(clock.seen_s[1], to);
      first = false;
      for (const auto& channel : view.channels())
        clock.highest_C = std::max(clock.highest_C, channel.look.peak_C.value_or(0));
    }
  }
  clock.seen_s[1] += 0.01 * (clock.seen_s[1] - clock.seen_s[0]);
  return clock;
}

QString baseName(const ComparedRun& run) {
  return QFileInfo(QString::fromStdString(run.view->reading().file.file)).completeBaseName();
}

/// The other runs of a side behind those that are drawn: from its `from`th on, over the zero of the scene.
void addBehind(Scene& scene, const Compared& compared, std::size_t side, std::size_t from, double zero_s,
               Scene::Behind::Group group) {
  const auto& one = compared.side(side);
  for (std::size_t run = from; run < one.runs.size(); ++run)
    scene.behind.push_back(
        {one.runs[run].view, baseName(one.runs[run]), widgets::sideLetter(side), zero_s - one.zero_s[run], group});
}

/// The mean of each thermocouple's peaks, moment and temperature, on the clock of the side's first run.
std::vector<std::optional<std::array<double, 2>>> meanPeaks(const ComparedSide& side) {
  std::vector<std::optional<std::array<double, 2>>> peaks;
  for (const auto& shown : side.first().view->channels()) {
    std::array<double, 2> sum{};
    int count = 0;
    for (std::size_t run = 0; run < side.runs.size(); ++run)
      for (const auto& channel : side.runs[run].view->channels()) {
        if (channel.look.style != shown.look.style || !channel.look.peak_C) continue;
        sum[0] += channel.peak_s - side.zero_s[run];
        sum[1] += *channel.look.peak_C;
        ++count;
      }
    if (count > 0)
      peaks.push_back(std::array{sum[0] / count + side.zero_s.front(), sum[1] / count});
    else
      peaks.push_back(std::nullopt);
  }
  return peaks;
}

}  // namespace

double commonZero_s(const Compared& compared, std::size_t side) { return compared.side(side).zero_s.front(); }

QString sideName(const Compared& compared, std::size_t side) {
  const auto& one = compared.side(side);
  const QString name = one.isGroup() ? Words::tr("%n runs", nullptr, int(one.runs.size())) : baseName(one.first());
  if (!one.recipe || !one.recipe->identity.revision) return name;
  return Words::tr("%1, rev %2", "a run and its recipe")
      .arg(name, QString::fromStdString(*one.recipe->identity.revision));
}

QString sideTitle(const Compared& compared, std::size_t side) {
  return QStringLiteral("%1: %2").arg(widgets::sideLetter(side), sideName(compared, side));
}

Scene compareScene(const Compared& compared, std::size_t side, const CompareFocus& focus, const Format& format) {
  const auto& one = compared.side(side);
  const bool groups = one.group != nullptr;
  const auto chosen = focus.result && !groups ? outcomeOf(compared, side, *focus.result) : std::nullopt;
  Scene scene = makeScene(one.first().view, chosen, shownChannel(compared, side, focus.channel),
                          shownChannel(compared, side, focus.strong), format);
  scene.callOuts.clear();  // their discs stand in each run's own sentence
  if (one.isGroup()) {
    scene.stretches.clear();  // those of one run among many
    if (one.severalRecipes) scene.zoneBorders_s.clear();
    scene.thin = true;
    scene.peaks = meanPeaks(one);
    addBehind(scene, compared, side, 1, commonZero_s(compared, side), Scene::Behind::Group::kSame);
  }
  useClock(scene, clockOf(compared, side, format), format);
  scene.title = sideTitle(compared, side);
  scene.bandNames = side == 1;
  scene.key = side == 0 ? Scene::Key::kNames : Scene::Key::kNone;
  return scene;
}

Scene overlaidScene(const Compared& compared, const CompareFocus& focus, const Format& format) {
  Scene scene = compareScene(compared, 0, focus, format);
  scene.title = Words::tr("A solid, B dashed");
  scene.bandNames = true;
  const auto group = compared.b.isGroup() ? Scene::Behind::Group::kOther : Scene::Behind::Group::kNone;
  addBehind(scene, compared, 1, 0, commonZero_s(compared, 0), group);
  return scene;
}

CompareStrips compareStrips(const Compared& compared, const CompareFocus& focus, bool marked, bool overlaid,
                            const Format& format) {
  const auto table = [&](std::size_t side) {
    const auto& one = compared.side(side);
    const auto& view = *one.first().view;
    const auto channel = shownChannel(compared, side, focus.channel);
    const board::Board* board = view.board() ? &*view.board() : nullptr;
    const board::Placement* placement = nullptr;
    QString name;
    if (board && channel) {
      const auto& logged = view.run().channels[*channel];
      placement = board->placement(logged.name, logged.number);
      name = view.channels()[*channel].look.name;
    }
    auto zones =
        widgets::zoneTable(view.oven() ? &*view.oven() : nullptr, view.recipe() ? &*view.recipe() : nullptr,
                           view.entry(), widgets::stripPlace(board, placement, name), &view.judgement(), format);
    if (!one.severalRecipes) return zones;
    zones.cells.clear();
    zones.state = widgets::ZoneTable::State::kSeveral;
    return zones;
  };
  CompareStrips strips{table(0), table(1)};
  widgets::holdAgainst(strips.a, strips.b, marked);
  if (overlaid) {
    strips.a.against->side = widgets::sideLetter(0);
    strips.b.against->side = widgets::sideLetter(1);
  }
  return strips;
}

widgets::LaneTable compareLanes(const Compared& compared, const Format& format) {
  return widgets::pairLaneTable(compared.a.lanes(), compared.b.lanes(), compared.pairs, compared.comparison,
                                widgets::Wording(format));
}

std::optional<std::size_t> outcomeOf(const Compared& compared, std::size_t side, std::size_t result) {
  const auto& judgement = compared.side(side).judgement();
  const auto& wanted = compared.comparison.results[result];
  for (std::size_t i = 0; i < judgement.all_size(); ++i) {
    const auto& outcome = judgement.all(i);
    if (outcome.requirement_name == wanted.requirement && outcome.trace == wanted.trace &&
        judgement.windows[outcome.window].identity.name == wanted.window)
      return i;
  }
  return std::nullopt;
}

compare::Mark markOf(const Compared& compared, std::size_t laneNumber) {
  const std::size_t before = compared.a.judgement().all_size();
  const std::size_t side = laneNumber < before ? 0 : 1, outcome = side == 0 ? laneNumber : laneNumber - before;
  const auto& results = compared.comparison.results;
  std::size_t result = 0;
  while (result + 1 < results.size() && outcomeOf(compared, side, result) != outcome) ++result;
  return {side == 0 ? compare::Side::kA : compare::Side::kB, result};
}

std::optional<std::size_t> laneNumber(const Compared& compared, const compare::Mark& mark) {
  const std::size_t side = mark.side == compare::Side::kA ? 0 : 1;
  const auto outcome = outcomeOf(compared, side, mark.result);
  if (!outcome) return std::nullopt;
  return side == 0 ? *outcome : compared.a.judgement().all_size() + *outcome;
}

std::size_t nearestRun(const ComparedSide& side, std::size_t outcome) {
  if (!side.group) return 0;
  std::size_t nearest = 0;
  const judge::Outcome* worst = nullptr;
  const auto& of = side.group->runs[outcome];
  for (std::size_t run = 0; run < of.size(); ++run) {
    if (!of[run]) continue;
    const bool worse = !worst || of[run]->verdict > worst->verdict ||
                       (of[run]->verdict == worst->verdict && of[run]->margin.value_or(0) < worst->margin.value_or(0));
    if (worse) worst = of[run], nearest = run;
  }
  return nearest;
}

}  // namespace ovenwright::desktop
