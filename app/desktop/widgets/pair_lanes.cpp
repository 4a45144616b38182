#include "app/desktop/widgets/pair_lanes.h"

#include <algorithm>
#include <cmath>

#include "app/desktop/text/spreadsheet_text.h"
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
    m_table.groups = isOfGroups();
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
  bool isOfGroups() const { return m_sides[0]->group && m_sides[1]->group; }

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
      if (isOfGroups()) setGroupMargin(worst, side, *from);
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
    if (isOfGroups()) makeMean(mark, side);
    if (side == 1) {
      const std::size_t before = m_sides[0]->judgement.all_size();
      mark.outcome += before;
      for (std::size_t& covered : mark.covered) covered += before;
    }
    lane.marks.push_back(std::move(mark));
  }

  /// The results that a lane shows of a side, indexes into its judgement.
  static std::vector<std::size_t> resultsOf(const Lane& lane) {
    std::vector<std::size_t> results;
    for (const LaneMark& mark : lane.marks) {
      results.push_back(mark.outcome);
      results.insert(results.end(), mark.covered.begin(), mark.covered.end());
    }
    return results;
  }

  /// In the place of the margin at the mark the mean of what each run's smallest on the lane is.
  void setGroupMargin(PairSummary::Worst& worst, std::size_t side, const Lane& from) const {
    const auto margins = compare::smallest_margins(*m_sides[side]->group, resultsOf(from));
    if (margins.empty()) {
      worst.margin = QStringLiteral("–");
      return;
    }
    const auto means = compare::margins_of(margins, margins);
    worst.margin = m_wording.margin(*means.a, judge::MarginBound::kNone);
  }

  /// A mark of a group's means: a tick for each run, and what they come to in words.
  void makeMean(LaneMark& mark, std::size_t side) const {
    const auto& group = *m_sides[side]->group;
    const auto& mean = outcome(side, mark);
    mark.mean = true;
    mark.hollow = !mean.required;
    if (mean.value.value) mark.state = LaneMark::State::kValue;
    QStringList texts;
    std::optional<double> least, most;
    std::size_t runs = 0, count = 0;
    for (const judge::Outcome* one : group.runs[mark.outcome]) {
      runs += one ? 1 : 0;
      if (!one || !one->value.value || one->value.at_least) continue;
      ++count;
      least = std::min(least.value_or(*one->value.value), *one->value.value);
      most = std::max(most.value_or(*one->value.value), *one->value.value);
      if (const auto s = lanePosition(*one, *one->value.value))
        mark.ticks.push_back({*s, one->required && judge::is_out(one->verdict)});
    }
    if (count == 0) {
      texts << Wording::tr("no run has a value");
    } else {
      texts << Wording::tr("%1 in the mean of %n runs", nullptr, int(count)).arg(m_wording.valueWithUnit(mean));
      if (count > 1)
        texts << Wording::tr("from %1 to %2")
                     .arg(m_wording.result(*least, mean.measure.measure, mean.lower, mean.upper),
                          m_wording.result(*most, mean.measure.measure, mean.lower, mean.upper));
    }
    const std::size_t one[] = {mark.outcome};
    if (const auto out = compare::runs_out(group, one); out > 0)
      texts << Wording::tr("%1 of %2 out").arg(out).arg(runs);
    if (mean.margin) texts << Wording::tr("margin %1").arg(m_wording.margin(*mean.margin, judge::MarginBound::kNone));
    mark.tip = Wording::tr("%1, %2: %3", "requirement, placement: value")
                   .arg(Wording::title(mean.requirement_name), mark.place, texts.join(QStringLiteral(", ")));
    mark.spoken = mark.tip;
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
      if (isOfGroups()) lane.pair.counts = QStringLiteral("%1, %2").arg(difference->n_a).arg(difference->n_b);
    }
  }

  void addMore(Lane& lane, const Lane* a, const Lane* b) const {
    if (!a || !b) return;
    if (isOfGroups()) return addMoreOfGroups(lane, *a, *b);
    const auto& of_a = outcome(0, a->marks[a->worst.mark]);
    const auto& of_b = outcome(1, b->marks[b->worst.mark]);
    if (!of_a.margin || !of_b.margin) return;
    setMore(lane, compare::more_margin(of_a, of_b, m_comparison.same_thermocouples));
  }

  static void setMore(Lane& lane, const std::optional<compare::Side>& more) {
    lane.pair.more =
        more ? sideLetter(*more == compare::Side::kA ? 0 : 1) : Wording::tr("same", "neither of two has more margin");
  }

  /// By the runs' smallest margins on the lane; nothing is said where there is no interval.
  void addMoreOfGroups(Lane& lane, const Lane& a, const Lane& b) const {
    const auto margins = compare::margins_of(compare::smallest_margins(*m_sides[0]->group, resultsOf(a)),
                                             compare::smallest_margins(*m_sides[1]->group, resultsOf(b)));
    if (margins.expanded_uncertainty) setMore(lane, margins.more);
  }

  void addRowText(Lane& lane) const {
    QStringList cells{lane.title, lane.note, lane.lower, lane.upper};
    for (const auto& worst : lane.pair.worst)
      cells << (worst.mark ? lane.marks[*worst.mark].place : QString()) << worst.margin
            << (worst.mark ? Wording::verdict(lane.marks[*worst.mark].verdict) : QString());
    cells << (lane.pair.change ? lane.marks[*lane.pair.change].place : QString()) << lane.pair.difference
          << lane.pair.uncertainty << lane.pair.unit << lane.pair.more;
    if (isOfGroups()) {
      const auto* difference = lane.pair.change ? differenceOf(lane.marks[*lane.pair.change]) : nullptr;
      for (const std::size_t n : {difference ? difference->n_a : 0, difference ? difference->n_b : 0})
        cells << (difference ? QString::number(n) : QString());
    }
    lane.rowText = desktop::spreadsheetRow(std::move(cells));
  }

  const PairSide* m_sides[2];
  const std::vector<PairChannel>& m_pairs;
  const compare::Comparison& m_comparison;
  const Wording& m_wording;
  std::vector<std::optional<std::size_t>> m_track;  // by thermocouple
  LaneTable m_table;
};

}  // namespace

std::vector<PairChannel> pairChannels(std::span<const std::string> a, std::span<const std::string> b) {
  std::vector<PairChannel> pairs;
  for (std::size_t i = 0; i < a.size(); ++i) pairs.push_back({i, std::nullopt});
  for (std::size_t i = 0; i < b.size(); ++i) {
    const auto same = std::ranges::find(a, b[i]);
    if (same != a.end())
      pairs[std::size_t(same - a.begin())].b = i;
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
