#include "app/desktop/lots/lot_words.h"

#include <QCoreApplication>
#include <QDateTime>
#include <algorithm>

#include "app/desktop/text/paragraph.h"
#include "app/desktop/widgets/wording.h"
#include "core/judge/decide.h"
#include "core/lot/streak.h"

namespace ovenwright::desktop {
namespace {

struct LotWords {
  Q_DECLARE_TR_FUNCTIONS(LotWords)
};

const QString kNothing = QStringLiteral("–");

QDateTime local(archive::Moment moment) {
  return QDateTime::fromMSecsSinceEpoch(moment.time_since_epoch().count()).toLocalTime();
}

QString momentText(archive::Moment moment, const Format& format) {
  return format.locale().toString(local(moment), LotWords::tr("d MMM yyyy HH:mm", "date and time"));
}

/// "238.49 °C": a value of the series, or a difference of two.
struct Numbers {
  const Format& format;
  Format::Quantity quantity, difference;
  int digits;

  Numbers(const lot::Series& series, const Format& shown_in)
      : format(shown_in),
        quantity(Format::quantity(series.measure)),
        difference(Format::difference(quantity)),
        digits(judge::usual_digits(series.measure)) {}

  double shown(double value) const { return format.shown(value, quantity); }
  double shownDifference(double value) const { return format.shown(value, difference); }
  QString text(double value, int more) const { return format.number(shown(value), digits + more); }
  QString withUnit(const QString& number) const {
    const QString unit = format.unit(quantity);
    return unit.isEmpty() ? number : number + u' ' + unit;
  }
};

QString placed(const QString& requirement, const std::string& trace) {
  if (trace.empty()) return requirement;
  return LotWords::tr("%1 at %2", "requirement, placement").arg(requirement, QString::fromStdString(trace));
}

QString requirementTitle(const lot::Series& series) { return widgets::Wording::title(series.requirement); }

QString runTip(const FigureRun& run, const QString& value, const Format& format) {
  const QString when = momentText(run.runAt, format);
  return run.lot.empty()
             ? LotWords::tr("%1: %2", "when, value").arg(when, value)
             : LotWords::tr("%1, %2: %3", "lot, when, value").arg(QString::fromStdString(run.lot), when, value);
}

QString chartTitle(lot::ChartKind kind, const QString& unit) {
  QString name;
  switch (kind) {
    case lot::ChartKind::kMovingRange:
      name = LotWords::tr("Moving range");
      break;
    case lot::ChartKind::kRange:
      name = LotWords::tr("Range in the subgroup");
      break;
    case lot::ChartKind::kStandardDeviation:
      name = LotWords::tr("Standard deviation in the subgroup");
      break;
    case lot::ChartKind::kXbarR:
    case lot::ChartKind::kXbarS:
      name = LotWords::tr("Mean of the subgroup");
      break;
    case lot::ChartKind::kEwma:
      name = LotWords::tr("Weighted moving average (EWMA)");
      break;
    case lot::ChartKind::kIndividuals:
      return {};
  }
  return unit.isEmpty() ? name : name + QStringLiteral(", ") + unit;
}

widgets::ChartPanel panelOf(const lot::Chart& chart, const LotFigures& figures, const Numbers& numbers, bool spread) {
  widgets::ChartPanel panel;
  panel.title = chartTitle(chart.kind, numbers.format.unit(numbers.quantity));
  const auto shown = [&](double value) { return spread ? numbers.shownDifference(value) : numbers.shown(value); };
  const auto text = [&](double value) { return numbers.format.number(shown(value), numbers.digits + 1); };
  for (const auto& point : chart.points) {
    const auto& run = figures.runs[point.run];
    panel.points.push_back({double(point.run), shown(point.value), point.run, 0, false,
                            runTip(run, numbers.withUnit(text(point.value)), numbers.format)});
  }
  for (const auto& signal : chart.signals_found) {
    auto& point = panel.points[signal.point];
    const bool all_rules = chart.kind == lot::ChartKind::kIndividuals || chart.kind == lot::ChartKind::kXbarR ||
                           chart.kind == lot::ChartKind::kXbarS;
    point.tip += point.signal ? QStringLiteral("; ") : QStringLiteral(" – ");
    point.tip += all_rules ? ruleText(chart.rules, signal.rule) : LotWords::tr("beyond the limits");
    point.signal = true;
  }
  using Kind = widgets::ChartLine::Kind;
  panel.lines.push_back({Kind::kControl, shown(chart.upper), LotWords::tr("%1 upper").arg(text(chart.upper))});
  if (!spread) {
    panel.lines.push_back({Kind::kCentre, shown(chart.centre), LotWords::tr("%1 centre").arg(text(chart.centre))});
    panel.lines.push_back({Kind::kControl, shown(chart.lower), LotWords::tr("%1 lower").arg(text(chart.lower))});
  } else if (chart.lower > 0) {
    panel.lines.push_back({Kind::kControl, shown(chart.lower), LotWords::tr("%1 lower").arg(text(chart.lower))});
  }
  return panel;
}

void addLimits(widgets::ChartPanel& panel, const lot::Series& series, const Numbers& numbers) {
  for (const auto& limit : {series.lower, series.upper})
    if (limit)
      panel.lines.push_back({widgets::ChartLine::Kind::kLimit, numbers.shown(*limit),
                             LotWords::tr("limit %1").arg(numbers.format.limit(*limit, numbers.quantity))});
  if (series.lower) panel.lower = numbers.shown(*series.lower);
  if (series.upper) panel.upper = numbers.shown(*series.upper);
}

}  // namespace

QString dayText(archive::Moment moment, const Format& format) {
  const QDate date = local(moment).date();
  const bool this_year = date.year() == QDate::currentDate().year();
  return format.locale().toString(
      date, this_year ? LotWords::tr("d MMMM", "date of this year") : LotWords::tr("d MMMM yyyy", "date"));
}

QString shortDayText(archive::Moment moment, const Format& format) {
  return format.locale().toString(local(moment).date(), LotWords::tr("d MMM", "day on an axis"));
}

QString subjectText(const std::string& requirement, const std::string& trace) {
  return placed(widgets::Wording::title(requirement), trace);
}

QString subjectText(const lot::Series& series) {
  QString requirement = requirementTitle(series);
  if (series.measured_otherwise > 0) {  // two definitions of one name
    judge::Outcome outcome;
    outcome.requirement_name = series.requirement;
    outcome.measure = {series.measure, series.parameters};
    const QString parameters = widgets::Wording().parameterNote(outcome);
    if (!parameters.isEmpty()) requirement += QStringLiteral(" (%1)").arg(parameters);
  }
  return placed(requirement, series.trace);
}

QString groupText(const RunGroup& group, const std::vector<RunGroup>& among, const Format& format) {
  if (group.all) return LotWords::tr("All %1 runs").arg(format.count(group.runs));
  const QString board = group.board.empty() ? LotWords::tr("no board") : QString::fromStdString(group.board);
  QString text = group.revision.empty() ? board
                                        : LotWords::tr("%1, rev %2", "board, revision of the window")
                                              .arg(board, QString::fromStdString(group.revision));
  const auto alike = std::ranges::count_if(among, [&](const RunGroup& other) {
    return !other.all && other.board == group.board && other.revision == group.revision;
  });
  if (alike > 1) text += QStringLiteral(" (%1)").arg(QString::fromStdString(group.window));
  return text;
}

QString ruleText(lot::RuleSet set, int rule) {
  return QCoreApplication::translate("LotRules", lot::rule_text(set, rule));
}

QString ruleSetText(lot::RuleSet set) {
  return set == lot::RuleSet::kWesternElectric ? LotWords::tr("Western Electric rules") : LotWords::tr("Nelson rules");
}

QString chartSentence(const LotFigures& figures, const lot::Series& series, const lot::Options& options,
                      const Format& format) {
  const QString subject = subjectText(series);
  const bool subgroups = options.chart == lot::ChartKind::kXbarR || options.chart == lot::ChartKind::kXbarS;
  if (!series.control)
    return subgroups ? LotWords::tr("%1: such a chart takes two subgroups of %n runs.", nullptr, int(options.subgroup))
                           .arg(subject)
                     : LotWords::tr("%1: a control chart takes two runs with a value.").arg(subject);
  const auto& chart = *series.control;
  if (chart.signals_found.empty()) {
    if (chart.kind == lot::ChartKind::kEwma)
      return LotWords::tr("%1: the weighted average stays within its limits over %n runs.", nullptr, int(series.n()))
          .arg(subject);
    return LotWords::tr("%1: no signal in %n runs by the %2.", nullptr, int(series.n()))
        .arg(subject, ruleSetText(chart.rules));
  }
  const auto& last = chart.signals_found.back();
  const auto streak = lot::last_streak(chart);
  const bool all_rules = chart.kind == lot::ChartKind::kIndividuals || subgroups;
  if (all_rules && streak && last.point + 1 == chart.points.size() && lot::is_of_one_side(chart.rules, last.rule)) {
    const QString since = dayText(figures.runs[chart.points[streak->first].run].runAt, format);
    const int points = int(streak->points);
    if (subgroups)
      return (streak->above
                  ? LotWords::tr("%1 has been above its centre line for %n subgroups, since %2.", nullptr, points)
                  : LotWords::tr("%1 has been below its centre line for %n subgroups, since %2.", nullptr, points))
          .arg(subject, since);
    return (streak->above ? LotWords::tr("%1 has been above its centre line for %n runs, since %2.", nullptr, points)
                          : LotWords::tr("%1 has been below its centre line for %n runs, since %2.", nullptr, points))
        .arg(subject, since);
  }
  const QString at = dayText(figures.runs[last.run].runAt, format);
  const QString what = all_rules ? ruleText(chart.rules, last.rule) : LotWords::tr("beyond the limits");
  const int signals_found = int(chart.signals_found.size());
  if (signals_found == 1) return LotWords::tr("%1 signals on %2: %3.").arg(subject, at, what);
  return LotWords::tr("%1 signals, last on %2: %3; %n signals in all.", nullptr, signals_found).arg(subject, at, what);
}

QString noteText(const lot::Series& series) {
  QStringList notes;
  if (series.measured_otherwise > 0)
    notes << LotWords::tr("%n run(s) measured by another definition, which has an entry of its own.", nullptr,
                          int(series.measured_otherwise));
  if (series.capability.ppk) {
    if (series.n() < lot::kFew)
      notes << LotWords::tr(
          "%n runs are few: whether the values are normal does not show, and the limits of the index "
          "are wide.",
          nullptr, int(series.n()));
    return paragraph(notes);
  }
  QStringList why;
  if (series.without_value > 0) why << LotWords::tr("%n run(s) without a value", nullptr, int(series.without_value));
  if (series.bounds > 0) why << LotWords::tr("%n run(s) with a bound only", nullptr, int(series.bounds));
  if (why.isEmpty()) {
    if (series.n() < lot::kFewest)
      why << LotWords::tr("an index takes %n runs", nullptr, int(lot::kFewest));
    else if (series.unit == Unit::kCount)
      why << LotWords::tr("a count is not normally distributed");
    else if (!series.lower && !series.upper)
      why << LotWords::tr("no limit is known, or the limits changed");
    else
      why << LotWords::tr("all values are equal");
  }
  notes << LotWords::tr("No index: %1.").arg(enumerated(why));
  return paragraph(notes);
}

QList<std::pair<QString, QString>> statisticsRows(const lot::Series& series, const Format& format) {
  const Numbers numbers(series, format);
  const auto value = [&](const std::optional<double>& v, int more) {
    return v ? numbers.withUnit(numbers.text(*v, more)) : kNothing;
  };
  const auto index = [&](const std::optional<double>& v) { return v ? format.number(*v, 2) : kNothing; };
  const auto& c = series.capability;
  const auto indexWithLimits = [&](const auto& at, const auto& low, const auto& high) {
    if (!low || !high) return index(at);
    return LotWords::tr("%1 (95 %: %2 to %3)", "index and its interval").arg(index(at), index(low), index(high));
  };
  QString sd = kNothing;
  if (series.sd) sd = numbers.withUnit(format.number(numbers.shownDifference(*series.sd), numbers.digits + 1));
  QString extremes = kNothing;
  if (series.minimum && series.maximum)
    extremes = LotWords::tr("%1 to %2", "smallest, largest")
                   .arg(numbers.text(*series.minimum, 0), numbers.withUnit(numbers.text(*series.maximum, 0)));
  QList<std::pair<QString, QString>> rows{{LotWords::tr("Runs"), format.count(series.n())},
                                          {LotWords::tr("Mean"), value(series.mean, 1)},
                                          {LotWords::tr("Standard deviation"), sd},
                                          {LotWords::tr("Smallest, largest"), extremes}};
  QString tolerance = kNothing;
  if (series.tolerance_interval)
    tolerance = LotWords::tr("%1 to %2", "smallest, largest")
                    .arg(numbers.text((*series.tolerance_interval)[0], 1),
                         numbers.withUnit(numbers.text((*series.tolerance_interval)[1], 1)));
  rows << std::pair(LotWords::tr("95 % of runs", "tolerance interval"), tolerance);
  // Pp and Cp take two limits.
  if (c.pp) rows << std::pair(LotWords::tr("Pp"), indexWithLimits(c.pp, c.pp_low, c.pp_high));
  rows << std::pair(LotWords::tr("Ppk"), indexWithLimits(c.ppk, c.ppk_low, c.ppk_high));
  if (c.cp) rows << std::pair(LotWords::tr("Cp, short term"), index(c.cp));
  rows << std::pair(LotWords::tr("Cpk, short term"), index(c.cpk));
  return rows;
}

widgets::LotLaneContent lotLane(const lot::Series& series, const Format& format) {
  const Numbers numbers(series, format);
  widgets::LotLaneContent lane;
  const auto shown = [&](const std::optional<double>& value) {
    return value ? std::optional(numbers.shown(*value)) : std::nullopt;
  };
  lane.lower = shown(series.lower);
  lane.upper = shown(series.upper);
  auto target = judge::effective_target(series.lower, series.upper, series.target, series.measure);
  lane.target = shown(target ? target : series.target);
  for (const auto& point : series.points) lane.values.push_back(numbers.shown(point.value));
  lane.mean = shown(series.mean);
  if (series.sd) lane.sd = numbers.shownDifference(*series.sd);
  if (series.tolerance_interval)
    lane.tolerance = {numbers.shown((*series.tolerance_interval)[0]), numbers.shown((*series.tolerance_interval)[1])};
  if (series.lower) lane.lowerText = format.limit(*series.lower, numbers.quantity);
  if (series.upper) lane.upperText = format.limit(*series.upper, numbers.quantity);
  QStringList words{subjectText(series)};
  for (const auto& [name, value] : statisticsRows(series, format))
    words << LotWords::tr("%1: %2", "name, value").arg(name, value);
  if (series.lower) words << LotWords::tr("lower limit %1").arg(lane.lowerText);
  if (series.upper) words << LotWords::tr("upper limit %1").arg(lane.upperText);
  lane.description = enumerated(words);
  return lane;
}

widgets::RunChartContent controlCharts(const LotFigures& figures, const lot::Series& series, const Format& format) {
  const Numbers numbers(series, format);
  widgets::RunChartContent content;
  if (!series.control) return content;
  content.panels.push_back(panelOf(*series.control, figures, numbers, false));
  addLimits(content.panels.front(), series, numbers);
  bool any = !series.control->signals_found.empty();
  if (series.spread) {
    content.panels.front().share = 2.6;
    content.panels.push_back(panelOf(*series.spread, figures, numbers, true));
    any = any || !series.spread->signals_found.empty();
  }
  if (any)
    content.key =
        LotWords::tr("Signal by the %1, at the run that completes it").arg(ruleSetText(series.control->rules));
  QString before;
  for (const auto& point : series.control->points) {
    const QString day = shortDayText(figures.runs[point.run].runAt, format);
    if (std::exchange(before, day) != day) content.ticks.emplace_back(double(point.run), day);
  }
  return content;
}

widgets::RunChartContent trendChart(const LotFigures& figures, const lot::Series& series, const Format& format) {
  const Numbers numbers(series, format);
  widgets::RunChartContent content;
  widgets::ChartPanel panel;
  std::vector<std::string> boards;
  std::vector<const lot::Series*> found;
  for (const auto& other : figures.all.series)
    if (other.requirement == series.requirement && other.trace == series.trace && other.measure == series.measure)
      found.push_back(&other);
  for (const auto* one : found)
    for (const auto& point : one->points) {
      const auto& run = figures.allRuns[point.run];
      const auto& board = figures.groups[run.group].board;
      auto at = std::ranges::find(boards, board);
      if (at == boards.end()) at = boards.insert(at, board);
      panel.points.push_back({double(run.runAt.time_since_epoch().count()), numbers.shown(point.value), point.run,
                              std::size_t(at - boards.begin()), false,
                              QString::fromStdString(board) + QStringLiteral(", ") +
                                  runTip(run, numbers.withUnit(numbers.text(point.value, 0)), format)});
    }
  std::ranges::stable_sort(panel.points, {}, &widgets::ChartPoint::x);
  if (found.size() == 1) addLimits(panel, *found.front(), numbers);
  for (const auto& board : boards)
    content.series << (board.empty() ? LotWords::tr("no board") : QString::fromStdString(board));
  QString before;
  for (const auto& point : panel.points) {
    const QString day = shortDayText(figures.allRuns[point.run].runAt, format);
    if (std::exchange(before, day) != day) content.ticks.emplace_back(point.x, day);
  }
  content.panels.push_back(std::move(panel));
  return content;
}

}  // namespace ovenwright::desktop
