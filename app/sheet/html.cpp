#include <QCoreApplication>
#include <QPainter>

#include "app/desktop/widgets/lanes_painter.h"
#include "app/desktop/widgets/sentence_content.h"
#include "app/desktop/widgets/wording.h"
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

constexpr const char* kStyle = R"(
body{font:14px/1.4 "Liberation Sans",Arial,sans-serif;color:#111;background:#fff;max-width:900px;margin:24px auto;padding:0 16px}
h1{font-size:26px;margin:0;overflow-wrap:anywhere}h2{font-size:17px;margin:24px 0 4px}
header{display:flex;justify-content:space-between;gap:24px;border-bottom:2px solid #111;padding-bottom:8px}
header p{margin:0;color:#333b42}header .about{text-align:right}header img{max-height:48px;max-width:180px}
.sentence{font-size:18px}.sentence .out{color:#a63c00}.second{color:#333b42;margin-top:-10px}
dl{display:grid;grid-template-columns:max-content 1fr;gap:2px 16px;border-top:1px solid #c5cacf;border-bottom:1px solid #c5cacf;padding:8px 0}
dt{color:#333b42}dd{margin:0;overflow-wrap:anywhere}.digest{font-family:monospace}
svg{width:100%;height:auto;display:block;margin:8px 0}.wide{overflow-x:auto}
table{border-collapse:collapse;width:100%;font-size:13px}th{font-weight:normal;color:#333b42;text-align:right;vertical-align:bottom}
td,th{padding:3px 6px;border-bottom:1px solid #e3e6e9;text-align:right}td:first-child,th:first-child{text-align:left;overflow-wrap:anywhere;max-width:260px}
td small{color:#333b42}.notes{font-size:12px;color:#333b42;overflow-wrap:anywhere}
aside{border-left:4px solid #333b42;padding-left:12px;margin:16px 0}
.sign{display:grid;grid-template-columns:1fr 1fr 1fr;gap:24px;margin-top:56px}.sign div{border-top:1px solid #111;color:#333b42}
@media print{article{break-after:page}})";

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
    addFacts();
    constexpr qreal kWidth = 860, kCurve = 300;
    const qreal strip = m_pictures.curve.stripHeight();
    m_text += svg({kWidth, kCurve + strip}, Words::tr("Temperature over time"),
                  [&](QPainter& painter, const QRectF& rect) { m_pictures.curve.paint(painter, rect); });
    addLanes(kWidth);
    m_text += tableHtml(
        resultTable(judgement, widgets::channelsOf(m_record.checked().run, boardOf(m_record)),
                    widgets::laneTable(judgement, widgets::channelsOf(m_record.checked().run, boardOf(m_record)))));
    m_text += QStringLiteral("<div class=\"notes\">\n");
    for (const Fact& note : notesOf(m_record, m_style.locale))
      m_text += QStringLiteral("<p>%1: %2</p>\n").arg(html(note.label), html(note.value));
    m_text += QStringLiteral("</div>\n");
    m_text += cautionsHtml();
    addBoard();
    m_text += signatureHtml();
    return m_text + QStringLiteral("</article>\n");
  }

 private:
  static const board::Board* boardOf(const RunRecord& record) {
    return record.request->board ? &*record.request->board : nullptr;
  }

  void addFacts() {
    m_text += QStringLiteral("<dl>\n");
    for (const Fact& fact : factsOf(m_record, m_style.locale))
      m_text += QStringLiteral("<dt>%1</dt><dd>%2</dd>\n").arg(html(fact.label), html(fact.value));
    const LogFact log = logFactOf(m_record, m_style.locale);
    m_text += QStringLiteral("<dt>%1</dt><dd>%2</dd>\n<dt>SHA-256</dt><dd class=\"digest\">%3</dd>\n</dl>\n")
                  .arg(html(Words::tr("Log")), html(log.file), QString(log.sha256).remove(u' ').toHtmlEscaped());
  }

  void addLanes(qreal width) {
    constexpr qreal kNatural = 1e6;
    const widgets::LanesLayout layout(m_pictures.lanes, m_theme, width, kNatural, {});
    m_text += svg({width, layout.headerHeight() + layout.contentHeight()}, Words::tr("Limit lanes"),
                  [&](QPainter& painter, const QRectF& rect) {
                    painter.setRenderHint(QPainter::Antialiasing);
                    widgets::paintLanes(painter, rect, m_pictures.lanes, m_theme);
                  });
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
  const QString title = runs.empty() ? QString() : titleOf(runs.front());
  QString foot = programText();
  if (style.printedAt.isValid()) foot += QStringLiteral(", ") + style.printedAt.toUTC().toString(Qt::ISODate);
  const QString page = QStringLiteral(
                           "<!DOCTYPE html>\n<html lang=\"%1\">\n<head>\n<meta charset=\"utf-8\">\n"
                           "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; "
                           "style-src 'unsafe-inline'; img-src data:\">\n"
                           "<title>%2</title>\n<style>")
                           .arg(style.locale.bcp47Name(), title.toHtmlEscaped()) +
                       QString::fromLatin1(kStyle) + QStringLiteral("</style>\n</head>\n<body>\n") + body +
                       QStringLiteral("<footer>") + html(foot) + QStringLiteral("</footer>\n</body>\n</html>\n");
  return page.toStdString();
}

}  // namespace ovenwright::sheet
