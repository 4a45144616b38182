#pragma once
#include <QString>
#include <QStringList>

#include "app/desktop/text/format.h"
#include "app/desktop/tune/tune_session.h"
#include "app/desktop/widgets/sentence_content.h"

namespace ovenwright::desktop {

QString aimTitle(tune::Aim aim);                       ///< "Least change"
QString aimTitle(const tune::Suggestion& suggestion);  ///< "Least change, coolest" where both come to one recipe

/// "Zone 8 234 → 244", "Speed 810 → 772 mm/min": each change; both sides of a zone that move alike are one.
QStringList changeTexts(const oven::Oven& oven, const oven::Recipe& from, const oven::Recipe& to, const Format& format);
/// The same in little room: of many zones only the new setpoints, "Zones 1–8  132 129 152 162 189 180 208 240".
QString changesOnCard(const oven::Oven& oven, const oven::Recipe& from, const oven::Recipe& to, const Format& format);
/// "zone 8 +10, speed −38", "9 zones and speed": to tell predictions apart.
QString changesInShort(const oven::Oven& oven, const oven::Recipe& from, const oven::Recipe& to, const Format& format);
/// "5 % fewer boards an hour"; empty where the speed stays.
QString throughputText(const oven::Recipe& from, const oven::Recipe& to, const Format& format);
/// "zones 14 °C cooler", in the middle over all; empty where they are not.
QString coolerText(const oven::Recipe& from, const oven::Recipe& to, const Format& format);
/// "U12 centre peak 235.4 °C, R118 peak 249.4 °C": the required results of smallest margin on each side.
QString tightestText(const judge::Judgement& judgement, const Format& format);
/// "5 % ± 3 %"; empty without a margin.
QString marginText(const judge::Judgement& judgement, const tune::Forecast& forecast, const Format& format);
/// "chance of passing 84 %"; under a guarded rule also that of staying inside the limits.
QString chanceText(const tune::Forecast& forecast, const Format& format);
QString shortChanceText(const tune::Forecast& forecast, const Format& format);  ///< beside a verdict: "chance 84 %"
/// Of a suggestion that is not sure to pass.
QString doubtText(const tune::Report& report);

/// What stands beside every suggestion and prediction.
QString cautionText();
/// product.md's cautions in full, for what is printed or saved.
QStringList cautionsInFull();
QString infeasibleText(const tune::Infeasible& infeasible, const Format& format);
/// One for each conflict: what would have to give.
QStringList conflictTexts(const tune::Infeasible& infeasible, const Format& format);
QString nextRunText(const tune::NextRun& next, const Format& format);

/// What stands in the place of the verdict while Tune is looked at. Links carry commands: see TunePage::follow().
widgets::SentenceContent tuneSentence(const TuneSession& session, const Format& format);

}  // namespace ovenwright::desktop
