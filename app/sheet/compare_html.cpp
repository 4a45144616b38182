#include <QCoreApplication>
#include <QPainter>

#include "app/desktop/widgets/compare_sentence.h"
#include "app/desktop/widgets/pair_lanes.h"
#include "app/sheet/compare_pictures.h"
#include "app/sheet/compare_sheet.h"
#include "app/sheet/html_parts.h"

namespace ovenwright::sheet {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Sheet)
};

constexpr qreal kWidth = 860, kCurve = 280;

QString valueText(const std::optional<double>& value, bool atLeast, const compare::Difference& result,
                  const widgets::Wording& wording) {
  if (!value) return QStringLiteral("–");
  const QString text = wording.result(*value, result.measure, result.lower, result.upper);
  return atLeast ? QStringLiteral("≥ ") + text : text;
}

/// Every result with its difference.
Table differenceTable(const compare::Comparison& comparison, const widgets::Wording& wording) {
  Table table;
  table.columns << Column{Words::tr("Requirement"), {}, true, 200} << Column{Words::tr("On"), {}, true, 160}
                << Column{QStringLiteral("A"), {}, false, 90} << Column{QStringLiteral("B"), {}, false, 90}
                << Column{QStringLiteral("B − A"), {}, false, 140};
  if (comparison.of_groups) table.columns << Column{QStringLiteral("n"), {}, false, 60};
  const auto cell = [](const QString& text, bool bold = false) { return Cell{text, {}, bold, {}, {}, false}; };
  for (const auto& result : comparison.results) {
    const QString where = result.trace.empty() ? Words::tr("board") : QString::fromStdString(result.trace);
    const QString change = widgets::changeText(result, wording);
    table.rows << QList<Cell>{
        cell(widgets::Wording::title(result.requirement)), cell(where),
        cell(valueText(result.a, result.a_at_least, result, wording)),
        cell(valueText(result.b, result.b_at_least, result, wording)),
        cell(change.isEmpty() ? QStringLiteral("–") : change, result.significant.value_or(false))};
    if (comparison.of_groups) table.rows.last() << cell(QStringLiteral("%1, %2").arg(result.n_a).arg(result.n_b));
  }
  return table;
}

QString titleOfComparison() { return Words::tr("Comparison"); }

QString comparisonArticle(const ComparisonRecord& record, const Style& style) {
  const widgets::Theme theme = paperTheme();
  const desktop::Format format({}, {}, style.locale);
  const widgets::Wording wording(format);
  const ComparePictures pictures(record, theme, format);
  QString text = QStringLiteral("<article>\n") +
                 headerHtml(style, titleOfComparison(), subjectOf(record.a.front()), pictures.asides()) +
                 sentenceHtml(widgets::compareSentence(pictures.compared.comparison, wording)) +
                 factsHtml(pictures.facts(style.locale), pictures.logs(style.locale));
  for (const CurvePicture& curve : pictures.curves)
    text += svg({kWidth, kCurve}, Words::tr("Temperature over time"),
                [&](QPainter& painter, const QRectF& rect) { curve.paint(painter, rect); });
  if (!pictures.recipes.rows.isEmpty()) text += tableHtml(pictures.recipes);
  text += lanesHtml(pictures.lanes, theme, kWidth) + tableHtml(differenceTable(pictures.compared.comparison, wording)) +
          notesHtml(pictures.notes(style.locale));
  for (const CaptionedTable& part : pictures.tables(style.locale))
    text += captionHtml(part.caption) + tableHtml(part.table);
  return text + cautionsHtml() + signatureHtml() + QStringLiteral("</article>\n");
}

}  // namespace

std::string compareHtml(const ComparisonRecord& record, const Style& style) {
  return pageHtml(style, titleOfComparison(), comparisonArticle(record, style));
}

}  // namespace ovenwright::sheet
