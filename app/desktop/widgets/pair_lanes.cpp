#include "app/desktop/widgets/pair_lanes.h"

#include <algorithm>
#include <cmath>

#include "core/compare/margins.h"
#include "core/judge/decide.h"

namespace ovenwright::widgets {
namespace {

using desktop::Format;

struct Change {
  QString difference, uncertainty, unit;
};

Change changeOf(const compare::Difference& difference, const Wording& wording) {
  if (!difference.difference) return {};
  const Format& format = wording.format();
  const auto quantity = Format::difference(Format::quantity(difference.measure));
  const int digits = judge::usual_digits(difference.measure);
  Change change;
  const QString by = format.distance(*difference.difference, quantity, digits);
  change.difference = *difference.difference > 0 ? u'+' + by : by;
  if (difference.expanded_uncertainty)
    change.uncertainty = format.distance(*difference.expanded_uncertainty, quantity, digits);
  change.unit = format.unit(quantity);
  return change;
}

class PairLanes {
 public:
  PairLanes(const PairSide& a, const PairSide& b, const std::vector<PairChannel>& pairs,
            const compare::Comparison& comparison, const Wording& wording)
      : m_sides{&a, &b}, m_pairs(pairs), m_comparison(comparison), m_wording(wording) {}

  LaneTable make() {
    LaneTable tables[2] = {laneTable(m_sides[0]->judgement, m_sides[0]->channels, m_wording),
                           laneTable(m_sides[1]->judgement, m_sides[1]->channels, m_wording)};
    placeTracks(tables);
    m_table.pair = true;
    std::vector<bool> taken(tables[1].lanes.size(), false);
    for (Lane& lane : tables[0].lanes) {
      const Lane* other = nullptr;
      for (std::size_t i = 0; i < tables[1].lanes.size() && !other; ++i) {
        if (taken[i] || !isSame(lane, tables[1].lanes[i])) continue;
        taken[i] = true;
        other = &tables[1].lanes[i];
      }
      add(&lane, other);
    }
    for (std::size_t i = 0; i < taken.size(); ++i)
      if (!taken[i]) add(nullptr, &tables[1].lanes[i]);
    std::ranges::stable_partition(m_table.lanes, [](const Lane& lane) { return !lane.board; });
    return std::move(m_table);
  }

 private:
  const judge::Outcome& outcome(std::size_t side, const LaneMark& mark) const {
    return m_sides[side]->judgement.all(mark.outcome);
  }

  bool isSame(const Lane& a, const Lane& b) const {
    if (a.board != b.board || a.informative != b.informative) return false;
    const auto& of_a = outcome(0, a.marks.front());
    const auto& of_b = outcome(1, b.marks.front());
    return laneDefinition(m_sides[0]->judgement, of_a) == laneDefinition(m_sides[1]->judgement, of_b);
  }

  /// A's thermocouples in its order, hottest first, then those that only B has.
  void placeTracks(LaneTable (&tables)[2]) {
    m_track.assign(m_pairs.size(), std::nullopt);
    for (std::size_t side : {0, 1}) {
      std::vector<std::pair<std::size_t, std::size_t>> order;  // track, thermocouple
      for (const Lane& lane : tables[side].lanes)
        for (const LaneMark& mark : lane.marks)
          if (const auto both = mark.channel ? joint(side, *mark.channel) : std::nullopt)
            order.emplace_back(mark.track, *both);
      std::ranges::sort(order);
      for (const auto& [track, both] : order)
        if (!m_track[both]) m_track[both] = m_table.tracks++;
    }
    m_table.tracks = std::max<std::size_t>(m_table.tracks, std::max(tables[0].tracks, tables[1].tracks));
  }

  std::optional<std::size_t> joint(std::size_t side, std::size_t channel) const {
    const auto found = std::ranges::find_if(
        m_pairs, [&](const PairChannel& pair) { return (side == 0 ? pair.a : pair.b) == channel; });
    if (found == m_pairs.end()) return std::nullopt;
    return std::size_t(found - m_pairs.begin());
  }

  void add(const Lane* a, const Lane* b) {
    Lane lane = a ? *a : *b;
    lane.marks.clear();
    lane.lowerGuard.reset();
    lane.upperGuard.reset();
    lane.neverPasses = false;
    lane.hasLower = (a && a->hasLower) || (b && b->hasLower);
    lane.hasUpper = (a && a->hasUpper) || (b && b->hasUpper);
    for (std::size_t side : {0, 1}) {
      const Lane* from = side == 0 ? a : b;
      if (!from) continue;
      auto& worst = lane.pair.worst[side];
      worst.mark = lane.marks.size() + from->worst.mark;
      worst.margin = from->worst.margin.isEmpty() ? from->worst.value : from->worst.margin;
      worst.bold = from->worst.bold;
      for (const LaneMark& mark : from->marks) addMark(lane, side, mark);
    }
    addTips(lane);
    addChange(lane);
    addMore(lane, a, b);
    const std::size_t first = a ? 0 : 1;
    lane.worst.mark = lane.pair.worst[first].mark.value_or(0);
    addRowText(lane);
    m_table.lanes.push_back(std::move(lane));
  }

  void addMark(Lane& lane, std::size_t side, LaneMark mark) const {
    mark.side = side;
    if (mark.channel) {
      const auto both = joint(side, *mark.channel);
      if (both) mark.track = m_track[*both].value_or(mark.track);
      mark.channel = both;
    }
    mark.whisker.reset();
    mark.range.reset();
    mark.caps = false;
    if (side == 1) {
      const std::size_t before = m_sides[0]->judgement.all_size();
      mark.outcome += before;
      for (std::size_t& covered : mark.covered) covered += before;
    }
    lane.marks.push_back(std::move(mark));
  }

  /// The result of a mark in its own judgement.
  const judge::Outcome& of(const LaneMark& mark) const {
    const std::size_t before = m_sides[0]->judgement.all_size();
    return m_sides[mark.side]->judgement.all(mark.side == 0 ? mark.outcome : mark.outcome - before);
  }

  const compare::Difference* differenceOf(const LaneMark& mark) const {
    const auto& outcome = of(mark);
    const auto& window = m_sides[mark.side]->judgement.windows[outcome.window].identity.name;
    const auto found = std::ranges::find_if(m_comparison.results, [&](const compare::Difference& result) {
      return result.requirement == outcome.requirement_name && result.trace == outcome.trace && result.window == window;
    });
    return found == m_comparison.results.end() ? nullptr : &*found;
  }

  void addTips(Lane& lane) const {
    std::vector<QString> tips(lane.marks.size());
    for (std::size_t i = 0; i < lane.marks.size(); ++i) {
      const LaneMark& mark = lane.marks[i];
      QStringList lines;
      for (const LaneMark& other : lane.marks)
        if (other.channel == mark.channel && other.place == mark.place)
          lines << sideLetter(other.side) + QStringLiteral(": ") + other.tip;
      const auto* difference = differenceOf(mark);
      const QString change = difference ? changeText(*difference, m_wording) : QString();
      if (!change.isEmpty()) lines << QStringLiteral("B − A: ") + change;
      tips[i] = lines.join(u'\n');
    }
    for (std::size_t i = 0; i < lane.marks.size(); ++i) {
      LaneMark& mark = lane.marks[i];
      mark.tip = tips[i];
      mark.spoken = sideLetter(mark.side) + QStringLiteral(", ") + mark.spoken;
      const auto* difference = differenceOf(mark);
      if (difference && difference->difference)
        mark.spoken +=
            QStringLiteral(", ") + Wording::tr("B less A %1", "read aloud").arg(changeText(*difference, m_wording));
    }
  }

  void addChange(Lane& lane) const {
    double largest = -1;
    for (std::size_t i = 0; i < lane.marks.size(); ++i) {
      const auto* difference = differenceOf(lane.marks[i]);
      if (!difference || !difference->difference || std::abs(*difference->difference) <= largest) continue;
      largest = std::abs(*difference->difference);
      lane.pair.change = i;
      const Change change = changeOf(*difference, m_wording);
      lane.pair.difference = change.difference;
      lane.pair.uncertainty = change.uncertainty;
      lane.pair.unit = change.unit;
    }
  }

  void addMore(Lane& lane, const Lane* a, const Lane* b) const {
    if (!a || !b) return;
    const auto& of_a = outcome(0, a->marks[a->worst.mark]);
    const auto& of_b = outcome(1, b->marks[b->worst.mark]);
    if (!of_a.margin || !of_b.margin) return;
    const auto more = compare::more_margin(of_a, of_b, m_comparison.same_thermocouples);
    lane.pair.more =
        more ? sideLetter(*more == compare::Side::kA ? 0 : 1) : Wording::tr("same", "neither of two has more margin");
  }

  static void addRowText(Lane& lane) {
    QStringList cells{lane.title, lane.note, lane.lower, lane.upper};
    for (const auto& worst : lane.pair.worst)
      cells << (worst.mark ? lane.marks[*worst.mark].place : QString()) << worst.margin
            << (worst.mark ? Wording::verdict(lane.marks[*worst.mark].verdict) : QString());
    cells << (lane.pair.change ? lane.marks[*lane.pair.change].place : QString()) << lane.pair.difference
          << lane.pair.uncertainty << lane.pair.unit << lane.pair.more;
    lane.rowText = cells.join(u'\t');
  }

  const PairSide* m_sides[2];
  const std::vector<PairChannel>& m_pairs;
  const compare::Comparison& m_comparison;
  const Wording& m_wording;
  std::vector<std::optional<std::size_t>> m_track;  // by thermocouple
  LaneTable m_table;
};

}  // namespace

std::vector<PairChannel> pairChannels(const run::Run& a, const run::Run& b) {
  std::vector<PairChannel> pairs;
  for (std::size_t i = 0; i < a.channels.size(); ++i) pairs.push_back({i, std::nullopt});
  for (std::size_t i = 0; i < b.channels.size(); ++i) {
    const auto same = std::ranges::find(a.channels, b.channels[i].name, &run::Channel::name);
    if (same != a.channels.end())
      pairs[std::size_t(same - a.channels.begin())].b = i;
    else
      pairs.push_back({std::nullopt, i});
  }
  return pairs;
}

Channels matched(const Channels& b, const Channels& a, const std::vector<PairChannel>& pairs) {
  Channels all = b;
  std::size_t free = 0;
  for (const ChannelLook& look : a.looks) free = std::max(free, look.style + 1);
  for (const PairChannel& pair : pairs)
    if (pair.b) all.looks[*pair.b].style = pair.a ? a.looks[*pair.a].style : free++;
  return all;
}

LaneTable pairLaneTable(const PairSide& a, const PairSide& b, const std::vector<PairChannel>& pairs,
                        const compare::Comparison& comparison, const Wording& wording) {
  return PairLanes(a, b, pairs, comparison, wording).make();
}

QString changeText(const compare::Difference& difference, const Wording& wording) {
  const Change change = changeOf(difference, wording);
  QString text = change.difference;
  if (!change.uncertainty.isEmpty()) text += QStringLiteral(" ± ") + change.uncertainty;
  return text.isEmpty() || change.unit.isEmpty() ? text : text + u' ' + change.unit;
}

}  // namespace ovenwright::widgets
