#include <QCoreApplication>
#include <QPainter>

#include "app/desktop/widgets/sentence_content.h"
#include "app/sheet/board.h"
#include "app/sheet/export.h"
#include "app/sheet/facts.h"
#include "app/sheet/html_parts.h"
#include "app/sheet/result_table.h"
#include "app/sheet/run_pictures.h"

namespace ovenwright::sheet {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Sheet)
};

class HtmlRun {
 public:
  HtmlRun(const RunRecord& record, const Style& style)
      : m_record(record),
        m_style(style),
        m_theme(paperTheme()),
        m_format({}, {}, style.locale),
        m_pictures(record, m_theme, m_format) {}

  QString article() {
    const auto& judgement = m_record.checked().judgement;
    m_text += QStringLiteral("<article>\n");
    m_text += headerHtml(m_style, titleOf(m_record), subjectOf(m_record), asidesOf(m_record, m_style.locale));
    m_text += sentenceHtml(widgets::sentenceOf(m_pictures.record.checked().judgement, m_pictures.entry_s()));
    m_text += factsHtml(factsOf(m_record, m_style.locale), {logFactOf(m_record, m_style.locale)});
    constexpr qreal kWidth = 860, kCurve = 300;
    const qreal strip = m_pictures.curve.stripHeight();
    m_text += svg({kWidth, kCurve + strip}, Words::tr("Temperature over time"),
                  [&](QPainter& painter, const QRectF& rect) { m_pictures.curve.paint(painter, rect); });
    m_text += lanesHtml(m_pictures.lanes, m_theme, kWidth);
    m_text += tableHtml(
        resultTable(judgement, widgets::channelsOf(m_record.checked().run, boardOf(m_record)),
                    widgets::laneTable(judgement, widgets::channelsOf(m_record.checked().run, boardOf(m_record)))));
    m_text += notesHtml(notesOf(m_record, m_style.locale));
    m_text += cautionsHtml();
    addBoard();
    m_text += signatureHtml();
    return m_text + QStringLiteral("</article>\n");
  }

 private:
  static const board::Board* boardOf(const RunRecord& record) {
    return record.request->board ? &*record.request->board : nullptr;
  }

  void addBoard() {
    const auto board = m_pictures.board();
    if (!board) return;
    constexpr QSizeF kSize(300, 220);
    m_text += svg(kSize, Words::tr("Board"),
                  [&](QPainter& painter, const QRectF& rect) { paintSmallBoard(painter, rect, *board, m_theme); });
  }

  const RunRecord& m_record;
  const Style& m_style;
  widgets::Theme m_theme;
  desktop::Format m_format;
  RunPictures m_pictures;
  QString m_text;
};

}  // namespace

std::string toHtml(std::span<const RunRecord> runs, const Style& style) {
  QString body = runs.size() > 1 ? lotArticle(runs, style) : QString();
  for (const RunRecord& record : runs) body += HtmlRun(record, style).article();
  return pageHtml(style, runs.empty() ? QString() : titleOf(runs.front()), body);
}

}  // namespace ovenwright::sheet
