#include <QCoreApplication>
#include <QPainter>

#include "app/sheet/control_chart.h"
#include "app/sheet/facts.h"
#include "app/sheet/html_parts.h"
#include "app/sheet/legible.h"
#include "app/sheet/lot_tables.h"
#include "core/lot/lot.h"

namespace ovenwright::sheet {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Sheet)
};

}  // namespace

QString lotArticle(std::span<const RunRecord> runs, const Style& style) {
  const lot::Lot lot = statisticsOf(runs);
  const RunRecord first = legible(runs.front());
  QString text = QStringLiteral("<article>\n") +
                 headerHtml(style, lotTitle(runs), subjectOf(first), lotAsides(runs, style.locale)) +
                 sentenceHtml(lotSentence(lot)) + QStringLiteral("<dl>\n");
  for (const Fact& fact : sharedFacts(runs, style.locale))
    text += QStringLiteral("<dt>%1</dt><dd>%2</dd>\n").arg(html(fact.label), html(fact.value));
  text += QStringLiteral("</dl>\n");
  if (lot.weakest && lot.series[*lot.weakest].control) {
    constexpr QSizeF kSize(860, 160);
    const lot::Series& weakest = lot.series[*lot.weakest];
    text += captionHtml(lotChartTitle(weakest)) +
            svg(kSize, lotChartTitle(weakest), [&](QPainter& painter, const QRectF& rect) {
              paintControlChart(painter, rect, weakest, paperTheme());
            });
  }
  if (const QString words = statisticsText(lot); !words.isEmpty())
    text += QStringLiteral("<p>%1: %2</p>\n").arg(html(Words::tr("Statistics")), html(words));
  text += captionHtml(Words::tr("Runs")) + tableHtml(runsTable(runs, style.locale));
  text +=
      captionHtml(Words::tr("Statistics by requirement and placement")) + tableHtml(statisticsTable(lot, style.locale));
  text += captionHtml(Words::tr("Logs")) + tableHtml(logsTable(runs, style.locale));
  return text + cautionsHtml() + signatureHtml() + QStringLiteral("</article>\n");
}

}  // namespace ovenwright::sheet
