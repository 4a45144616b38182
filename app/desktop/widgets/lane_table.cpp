#include "app/desktop/widgets/lane_table.h"

#include <algorithm>
#include <map>
#include <utility>

#include "app/desktop/text/spreadsheet_text.h"
#include "app/desktop/widgets/lane_scale.h"
#include "app/desktop/widgets/wording.h"
#include "core/judge/decide.h"

namespace ovenwright::widgets {
namespace {

using Limits = std::pair<std::optional<double>, std::optional<double>>;

const window::Requirement& requirementOf(const judge::Judgement& judgement, const judge::Outcome& outcome) {
  return judgement.windows[outcome.window].requirements[outcome.requirement];
}

/// Worse in the order of measures.md; among equals the smaller margin, none counting as the smallest.
bool worse(const judge::Outcome& a, const judge::Outcome& b) {
  if (a.verdict != b.verdict) return a.verdict > b.verdict;
  if (!a.margin || !b.margin) return !a.margin && b.margin;
  return *a.margin < *b.margin;
}

struct Group {
  measure::Definition definition;
  bool required = true;
  std::vector<std::size_t> outcomes;
};

std::vector<Group> grouped(const judge::Judgement& judgement, std::size_t from, std::size_t to) {
  std::vector<Group> groups;
  for (std::size_t i = from; i < to; ++i) {
    const judge::Outcome& outcome = judgement.all(i);
    const measure::Definition definition = laneDefinition(judgement, outcome);
    const auto same = std::ranges::find_if(groups, [&](const Group& group) {
      return group.definition == definition && group.required == outcome.required;
    });
    if (same == groups.end())
      groups.push_back({definition, outcome.required, {i}});
    else
      same->outcomes.push_back(i);
  }
  return groups;
}

/// A thermocouple that results are about: a channel of the run, or one that a window names and the log lacks.
struct Track {
  std::optional<std::size_t> channel;
  std::string missing;
  QString name;
  std::size_t style = 0;

  bool carries(const judge::Outcome& outcome) const {
    return channel ? outcome.channel == channel : !outcome.channel && outcome.placement == missing;
  }
};

/// Hottest first, those that the log lacks last.
std::vector<Track> tracksOf(const judge::Judgement& judgement, const Channels& channels) {
  std::vector<Track> tracks;
  for (const std::size_t channel : channels.hottestFirst) {
    const Track track{channel, {}, channels.looks[channel].name, channels.looks[channel].style};
    if (std::ranges::any_of(judgement.results, [&](const auto& outcome) { return track.carries(outcome); }))
      tracks.push_back(track);
  }
  std::size_t style = channels.looks.size();
  for (const judge::Outcome& outcome : judgement.results) {
    if (std::ranges::any_of(tracks, [&](const Track& track) { return track.carries(outcome); })) continue;
    tracks.push_back({std::nullopt, outcome.placement, QString::fromStdString(outcome.placement), style++});
  }
  return tracks;
}

/// Counts have no margin and so no target of their own: they stand on the same scale as the rest.
std::optional<LaneScale> scaleOf(const judge::Outcome& outcome) {
  const auto target = judge::effective_target(outcome.lower, outcome.upper, outcome.target, outcome.measure.measure);
  return LaneScale::make(outcome.lower, outcome.upper, target);
}

LaneMark markOf(const judge::Outcome& outcome, std::size_t index) {
  LaneMark mark;
  mark.outcome = index;
  mark.channel = outcome.channel;
  mark.verdict = outcome.verdict;
  const bool out = judge::is_out(outcome.verdict);
  const bool conditional =
      outcome.verdict == judge::Verdict::kConditionalPass || outcome.verdict == judge::Verdict::kConditionalFail;
  mark.signal = out && outcome.required;
  mark.hollow = conditional || !outcome.required;
  mark.caps = out || conditional;
  mark.atLeast = outcome.value.at_least;
  if (outcome.value.no_value == measure::NoValue::kNotReached)
    mark.state = LaneMark::State::kNotReached;
  else if (!outcome.value.value || outcome.verdict == judge::Verdict::kUndetermined)
    mark.state = LaneMark::State::kUndetermined;
  const auto scale = scaleOf(outcome);
  if (!scale) return mark;
  if (outcome.value.value) {
    mark.s = scale->position(*outcome.value.value);
    if (outcome.value.expanded_uncertainty) {
      const double half = *outcome.value.expanded_uncertainty;
      mark.whisker = {scale->position(*outcome.value.value - half), scale->position(*outcome.value.value + half)};
    }
  }
  if (outcome.value.range)
    mark.range = {scale->position((*outcome.value.range)[0]), scale->position((*outcome.value.range)[1])};
  return mark;
}

/// The limits that most of the lane's results have; of equally common ones the first.
const judge::Outcome& mostCommon(const judge::Judgement& judgement, const std::vector<std::size_t>& outcomes) {
  std::map<Limits, int> counts;
  for (const std::size_t i : outcomes) ++counts[{judgement.all(i).lower, judgement.all(i).upper}];
  return judgement.all(*std::ranges::max_element(outcomes, {}, [&](std::size_t i) {
    return counts[{judgement.all(i).lower, judgement.all(i).upper}];
  }));
}

void setGuardBand(Lane& lane, const judge::Judgement& judgement, const std::vector<std::size_t>& outcomes) {
  const judge::Outcome& common = mostCommon(judgement, outcomes);
  if (judgement.windows[common.window].decision_rule != window::DecisionRule::kGuarded) return;
  double w = 0;
  for (const std::size_t i : outcomes) w = std::max(w, judgement.all(i).value.expanded_uncertainty.value_or(0));
  const auto scale = scaleOf(common);
  if (!scale || w == 0) return;
  if (common.lower) lane.lowerGuard = {scale->position(*common.lower - w), scale->position(*common.lower + w)};
  if (common.upper) lane.upperGuard = {scale->position(*common.upper - w), scale->position(*common.upper + w)};
}

struct LimitCell {
  QString text, tip;
  std::optional<std::size_t> single;  ///< the one mark whose limit differs from all others
};

LimitCell limitCell(const judge::Judgement& judgement, const Lane& lane, std::optional<double> judge::Outcome::*side,
                    const Wording& wording) {
  const auto limitOf = [&](const LaneMark& mark) { return judgement.all(mark.outcome).*side; };
  const judge::Outcome& any = judgement.all(lane.marks.front().outcome);
  const auto text = [&](const std::optional<double>& limit) {
    return limit ? wording.limit(*limit, any) : QStringLiteral("–");
  };
  std::map<std::optional<double>, std::vector<std::size_t>> marks;
  for (std::size_t i = 0; i < lane.marks.size(); ++i) marks[limitOf(lane.marks[i])].push_back(i);
  if (marks.size() == 1) return {text(marks.begin()->first), {}, {}};
  LimitCell cell{Wording::tr("by part"), {}, {}};
  QStringList lines;
  for (const LaneMark& mark : lane.marks) lines << mark.place + QStringLiteral(": ") + text(limitOf(mark));
  cell.tip = lines.join(u'\n');
  if (marks.size() == 2 && lane.marks.size() > 2)
    for (const auto& [limit, with] : marks)
      if (with.size() == 1) cell.single = with.front();
  return cell;
}

QString partNote(const judge::Judgement& judgement, const LaneMark& mark, bool upper, const Wording& wording) {
  const judge::Outcome& outcome = judgement.all(mark.outcome);
  const auto& limit = upper ? outcome.upper : outcome.lower;
  if (!limit) return {};
  const window::Requirement& requirement = requirementOf(judgement, outcome);
  const auto& written = upper ? requirement.upper : requirement.lower;
  QString note = (upper ? Wording::tr("%1 to %2", "part and its upper limit")
                        : Wording::tr("%1 from %2", "part and its lower limit"))
                     .arg(mark.place, wording.limit(*limit, outcome));
  if (written && std::holds_alternative<window::TcOffset>(*written)) note += QStringLiteral(", ") + Wording::tr("Tc");
  return note;
}

/// "upper limit 245, Tc" on the marks whose limits are not those that most have.
void setOwnLimits(Lane& lane, const judge::Judgement& judgement, const judge::Outcome& common, const Wording& wording) {
  for (LaneMark& mark : lane.marks) {
    const judge::Outcome& outcome = judgement.all(mark.outcome);
    const window::Requirement& requirement = requirementOf(judgement, outcome);
    QStringList notes;
    const auto add = [&](const std::optional<double>& own, const std::optional<double>& usual,
                         const std::optional<window::Limit>& written, const QString& text) {
      if (!own || own == usual) return;
      notes << text.arg(wording.limit(*own, outcome));
      if (written && std::holds_alternative<window::TcOffset>(*written)) notes << Wording::tr("Tc");
    };
    add(outcome.lower, common.lower, requirement.lower, Wording::tr("lower limit %1"));
    add(outcome.upper, common.upper, requirement.upper, Wording::tr("upper limit %1"));
    mark.ownLimit = notes.join(QStringLiteral(", "));
  }
}

void setTexts(Lane& lane, const judge::Judgement& judgement, const judge::Outcome& first, const Wording& wording) {
  lane.title = Wording::title(first.requirement_name);
  const LimitCell lower = limitCell(judgement, lane, &judge::Outcome::lower, wording);
  const LimitCell upper = limitCell(judgement, lane, &judge::Outcome::upper, wording);
  lane.lower = lower.text;
  lane.upper = upper.text;
  lane.lowerTip = lower.tip;
  lane.upperTip = upper.tip;
  QStringList notes;
  if (lane.informative) notes << Wording::tr("informative");
  if (lane.neverPasses) {
    notes << Wording::tr("cannot pass as guarded");
  } else {
    if (const QString note = wording.parameterNote(first); !note.isEmpty()) notes << note;
    if (lower.single) notes << partNote(judgement, lane.marks[*lower.single], false, wording);
    if (upper.single) notes << partNote(judgement, lane.marks[*upper.single], true, wording);
  }
  notes.removeAll(QString());
  lane.note = notes.join(QStringLiteral(", "));

  const auto worst = std::ranges::min_element(lane.marks, [&](const LaneMark& a, const LaneMark& b) {
    return worse(judgement.all(a.outcome), judgement.all(b.outcome));
  });
  const judge::Outcome& outcome = judgement.all(worst->outcome);
  lane.worst.mark = static_cast<std::size_t>(worst - lane.marks.begin());
  lane.worst.value = wording.value(outcome);
  lane.worst.uncertainty = wording.uncertainty(outcome);
  if (outcome.value.value) lane.worst.unit = wording.unit(outcome);
  lane.worst.margin = wording.margin(outcome);
  lane.worst.bold = outcome.verdict != judge::Verdict::kPass && !lane.informative;
  lane.rowText = desktop::spreadsheetRow({lane.title, lane.note, lane.lower, lane.upper, worst->place, lane.worst.value,
                                          lane.worst.uncertainty, lane.worst.unit, lane.worst.margin,
                                          Wording::verdict(outcome.verdict)});
}

/// The worst of the results as a mark that covers the others.
std::optional<LaneMark> markOf(const judge::Judgement& judgement, std::vector<std::size_t> outcomes,
                               const QString& place, const Wording& wording) {
  if (outcomes.empty()) return std::nullopt;
  std::ranges::stable_sort(outcomes,
                           [&](std::size_t a, std::size_t b) { return worse(judgement.all(a), judgement.all(b)); });
  LaneMark mark = markOf(judgement.all(outcomes[0]), outcomes[0]);
  mark.covered.assign(outcomes.begin() + 1, outcomes.end());
  mark.place = place;
  mark.spoken = wording.spoken(judgement.all(outcomes[0]), place);
  QStringList tips;
  for (const std::size_t i : outcomes) tips << wording.tip(judgement.all(i), place);
  mark.tip = tips.join(u'\n');
  return mark;
}

Lane laneOf(const judge::Judgement& judgement, const Group& group, const std::vector<Track>& tracks, bool board,
            const Wording& wording) {
  Lane lane;
  lane.board = board;
  lane.informative = !group.required;
  if (board) lane.marks.push_back(*markOf(judgement, group.outcomes, Wording::tr("board"), wording));
  for (std::size_t track = 0; track < tracks.size() && !board; ++track) {
    std::vector<std::size_t> carried;
    for (const std::size_t i : group.outcomes)
      if (tracks[track].carries(judgement.all(i))) carried.push_back(i);
    auto mark = markOf(judgement, carried, tracks[track].name, wording);
    if (!mark) continue;
    mark->style = tracks[track].style;
    mark->track = track;
    lane.marks.push_back(std::move(*mark));
  }
  for (const LaneMark& mark : lane.marks) {
    lane.hasLower |= judgement.all(mark.outcome).lower.has_value();
    lane.hasUpper |= judgement.all(mark.outcome).upper.has_value();
    lane.neverPasses |= judgement.all(mark.outcome).cannot_pass;
  }
  setGuardBand(lane, judgement, group.outcomes);
  setOwnLimits(lane, judgement, mostCommon(judgement, group.outcomes), wording);
  setTexts(lane, judgement, judgement.all(group.outcomes.front()), wording);
  return lane;
}

}  // namespace

measure::Definition laneDefinition(const judge::Judgement& judgement, const judge::Outcome& outcome) {
  measure::Definition definition = outcome.measure;
  const measure::Parameters& raw = requirementOf(judgement, outcome).measure.parameters;
  const auto keepTc = [](std::optional<measure::Level>& filled, const std::optional<measure::Level>& written) {
    if (written && std::holds_alternative<measure::TcReference>(*written)) filled = written;
  };
  keepTc(definition.parameters.T1, raw.T1);
  keepTc(definition.parameters.T2, raw.T2);
  keepTc(definition.parameters.reference, raw.reference);
  return definition;
}

std::optional<LaneTable::Position> LaneTable::find(std::size_t outcome) const {
  for (std::size_t lane = 0; lane < lanes.size(); ++lane)
    for (std::size_t mark = 0; mark < lanes[lane].marks.size(); ++mark)
      if (const LaneMark& m = lanes[lane].marks[mark];
          m.outcome == outcome || std::ranges::find(m.covered, outcome) != m.covered.end())
        return Position{lane, mark};
  return std::nullopt;
}

std::size_t LaneTable::columns() const {
  return (tracks + (std::ranges::any_of(lanes, &Lane::board) ? 1 : 0)) * (pair ? 2 : 1);
}

std::size_t LaneTable::column(const Lane& lane, const LaneMark& mark) const {
  const std::size_t each = pair ? columns() / 2 : 0;
  return mark.side * each + (lane.board ? tracks : mark.track);
}

std::optional<double> lanePosition(const judge::Outcome& outcome, double value) {
  const auto scale = scaleOf(outcome);
  return scale ? std::optional(scale->position(value)) : std::nullopt;
}

QString sideLetter(std::size_t side) { return side == 0 ? QStringLiteral("A") : QStringLiteral("B"); }

LaneTable laneTable(const judge::Judgement& judgement, const Channels& channels, const Wording& wording) {
  const std::vector<Track> tracks = tracksOf(judgement, channels);
  LaneTable table;
  table.tracks = tracks.size();
  for (const Group& group : grouped(judgement, 0, judgement.results.size()))
    table.lanes.push_back(laneOf(judgement, group, tracks, false, wording));
  for (const Group& group : grouped(judgement, judgement.results.size(), judgement.all_size()))
    table.lanes.push_back(laneOf(judgement, group, tracks, true, wording));
  return table;
}

LaneTable predictedLaneTable(const judge::Judgement& predicted, const judge::Judgement& measured,
                             const Channels& channels, const Wording& wording) {
  LaneTable table = laneTable(predicted, channels, wording);
  for (Lane& lane : table.lanes)
    for (LaneMark& mark : lane.marks) {
      const judge::Outcome& now = predicted.all(mark.outcome);
      for (std::size_t i = 0; i < measured.all_size(); ++i) {
        const judge::Outcome& then = measured.all(i);
        if (then.window != now.window || then.requirement != now.requirement || then.channel != now.channel) continue;
        const auto scale = scaleOf(now);
        if (scale && then.value.value) mark.measured = scale->position(*then.value.value);
        mark.tip += u'\n' + Wording::tr("measured: %1").arg(wording.valueWithUnit(then));
        mark.spoken += QStringLiteral(", ") + Wording::tr("measured: %1").arg(wording.valueWithUnit(then));
        break;
      }
    }
  return table;
}

}  // namespace ovenwright::widgets
