#include "app/desktop/compare/compare_scene.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <algorithm>

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

/// The clock that both are shown on, from a side's zero.
Scene::CommonClock clockOf(const Compared& compared, std::size_t side, const Format& format) {
  Scene::CommonClock clock;
  const auto& at = compared.comparison.alignment;
  clock.zero_s = commonZero_s(compared, side);
  if (!at)
    clock.name = Words::tr("s, not lined up");
  else if (at->level_C)
    clock.name = Words::tr("s from %1", "a temperature").arg(format.temperatureWithUnit(*at->level_C));
  else
    clock.name = Words::tr("s from oven entry");
  bool first = true;
  for (const std::size_t one : {0, 1}) {
    const auto& view = *compared.side(one).view;
    const double zero = commonZero_s(compared, one);
    const double from = (view.entry() ? view.entry()->at_s : view.run().from_s) - zero, to = view.run().to_s - zero;
    clock.seen_s[0] = first ? from : std::min(clock.seen_s[0], from);
    clock.seen_s[1] = first ? to : std::max(clock.seen_s[1], to);
    first = false;
    for (const auto& channel : view.channels())
      clock.highest_C = std::max(clock.highest_C, channel.look.peak_C.value_or(0));
  }
  clock.seen_s[1] += 0.01 * (clock.seen_s[1] - clock.seen_s[0]);
  return clock;
}

QString baseName(const ComparedRun& run) {
  return QFileInfo(QString::fromStdString(run.view->reading().file.file)).completeBaseName();
}

}  // namespace

double commonZero_s(const Compared& compared, std::size_t side) {
  const auto& at = compared.comparison.alignment;
  if (!at) return compared.side(side).view->origin_s();
  return side == 0 ? at->a_s : at->b_s;
}

QString sideTitle(const Compared& compared, std::size_t side) {
  const auto& run = compared.side(side);
  QString title = QStringLiteral("%1: %2").arg(widgets::sideLetter(side), baseName(run));
  if (run.request->recipe && run.request->recipe->identity.revision)
    title = Words::tr("%1, rev %2", "a run and its recipe")
                .arg(title, QString::fromStdString(*run.request->recipe->identity.revision));
  return title;
}

Scene compareScene(const Compared& compared, std::size_t side, const CompareFocus& focus, const Format& format) {
  const auto chosen = focus.result ? outcomeOf(compared, side, *focus.result) : std::nullopt;
  Scene scene = makeScene(compared.side(side).view, chosen, channelOf(compared, side, focus.channel),
                          channelOf(compared, side, focus.strong), format);
  scene.callOuts.clear();  // their discs stand in each run's own sentence
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
  scene.behind.push_back({compared.b.view, sideTitle(compared, 1), QStringLiteral("B"),
                          commonZero_s(compared, 0) - commonZero_s(compared, 1)});
  return scene;
}

CompareStrips compareStrips(const Compared& compared, const CompareFocus& focus, bool marked, bool overlaid,
                            const Format& format) {
  const auto table = [&](std::size_t side) {
    const auto& view = *compared.side(side).view;
    const auto channel = channelOf(compared, side, focus.channel);
    const board::Board* board = view.board() ? &*view.board() : nullptr;
    const board::Placement* placement = nullptr;
    QString name;
    if (board && channel) {
      const auto& logged = view.run().channels[*channel];
      placement = board->placement(logged.name, logged.number);
      name = view.channels()[*channel].look.name;
    }
    return widgets::zoneTable(view.oven() ? &*view.oven() : nullptr, view.recipe() ? &*view.recipe() : nullptr,
                              view.entry(), widgets::stripPlace(board, placement, name), &view.judgement(), format);
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
  const auto side = [&](std::size_t which) {
    const auto& view = *compared.side(which).view;
    return widgets::PairSide{view.judgement(), view.looks()};
  };
  return widgets::pairLaneTable(side(0), side(1), compared.pairs, compared.comparison, widgets::Wording(format));
}

std::optional<std::size_t> outcomeOf(const Compared& compared, std::size_t side, std::size_t result) {
  const auto& judgement = compared.side(side).checked().judgement;
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
  const std::size_t before = compared.a.checked().judgement.all_size();
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
  return side == 0 ? *outcome : compared.a.checked().judgement.all_size() + *outcome;
}

}  // namespace ovenwright::desktop
