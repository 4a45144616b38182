#pragma once
#include <QList>
#include <QString>
#include <utility>

#include "app/desktop/lots/lot_figures.h"
#include "app/desktop/text/format.h"
#include "app/desktop/widgets/lot_lane.h"
#include "app/desktop/widgets/run_chart.h"

namespace ovenwright::desktop {

// The statistics of a lot in words and as what the painted parts show. Every number is one of core/lot.

/// "Peak at T2", "Spread of peaks"
QString subjectText(const lot::Series& series);
QString subjectText(const std::string& requirement, const std::string& trace);
QString dayText(archive::Moment moment, const Format& format);       ///< "12 March", with the year where it is another
QString shortDayText(archive::Moment moment, const Format& format);  ///< "12 Mar", as on an axis
/// "Heron I/O, rev B"; "All 46 runs"
QString groupText(const RunGroup& group, const std::vector<RunGroup>& among, const Format& format);
/// "1 point beyond 3 sigma", as run_rules.h says it.
QString ruleText(lot::RuleSet set, int rule);
QString ruleSetText(lot::RuleSet set);  ///< "Western Electric rules"

/// What the chart shows, in one sentence: the last signal, or that there is none.
QString chartSentence(const LotFigures& figures, const lot::Series& series, const lot::Options& options,
                      const Format& format);
/// Why there is no index, that the runs are few, that some are measured otherwise; empty where none of these.
QString noteText(const lot::Series& series);

/// Name and value of each figure.
QList<std::pair<QString, QString>> statisticsRows(const lot::Series& series, const Format& format);

widgets::LotLaneContent lotLane(const lot::Series& series, const Format& format);
/// Control chart and, where there is one, the chart of spread under it.
widgets::RunChartContent controlCharts(const LotFigures& figures, const lot::Series& series, const Format& format);
/// The same requirement on the same placement for all listed runs over time, by board.
widgets::RunChartContent trendChart(const LotFigures& figures, const lot::Series& series, const Format& format);

}  // namespace ovenwright::desktop
