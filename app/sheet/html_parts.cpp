#include "app/sheet/html_parts.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QMimeDatabase>
#include <QPainter>
#include <QSvgGenerator>

#include "app/desktop/widgets/lanes_painter.h"
#include "app/desktop/widgets/wording.h"
#include "app/sheet/facts.h"
#include "app/sheet/legible.h"
#include "app/sheet/page.h"

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

QString lineOf(const QList<widgets::SentenceRun>& line) {
  QString text;
  for (const auto& run : line) {
    QString piece = run.text.toHtmlEscaped();
    if (run.disc > 0) piece = QStringLiteral("(%1) ").arg(run.disc) + piece;
    if (run.strong) piece = QStringLiteral("<b>") + piece + QStringLiteral("</b>");
    if (run.signal) piece = QStringLiteral("<span class=\"out\">") + piece + QStringLiteral("</span>");
    text += piece;
  }
  return text;
}

}  // namespace

QString html(const QString& text) {
  QString clean = text;
  for (QChar& unit : clean)
    if (unit.category() == QChar::Other_Control && unit != u'\n' && unit != u'\t') unit = QChar::ReplacementCharacter;
  return QStringLiteral("<bdi>") + clean.toHtmlEscaped() + QStringLiteral("</bdi>");
}

QString svg(const QSizeF& size, const QString& name, const std::function<void(QPainter&, const QRectF&)>& paint) {
  QBuffer buffer;
  buffer.open(QIODevice::WriteOnly);
  QSvgGenerator generator;
  generator.setOutputDevice(&buffer);
  generator.setResolution(int(kUnitsPerInch));
  generator.setSize(size.toSize());
  generator.setViewBox(QRectF(QPointF(), size));
  {
    QPainter painter(&generator);
    paint(painter, QRectF(QPointF(), size));
  }
  QString text = QString::fromUtf8(buffer.data());
  text.remove(0, text.indexOf(QStringLiteral("<svg")));
  text.insert(4, QStringLiteral(" role=\"img\" aria-label=\"%1\"").arg(name.toHtmlEscaped()));
  return text;
}

QString headerHtml(const Style& style, const QString& title, const QString& subject, const QStringList& asides) {
  QString text = QStringLiteral("<header><div>");
  if (!style.logo.isEmpty()) {
    const QString type = QMimeDatabase().mimeTypeForData(style.logo).name();
    text += QStringLiteral("<img alt=\"\" src=\"data:%1;base64,%2\">")
                .arg(type.toHtmlEscaped(), QString::fromLatin1(style.logo.toBase64()));
  }
  text += QStringLiteral("<p>%1</p><h1>%2</h1></div><div class=\"about\"><p><b>%3</b></p>")
              .arg(html(legible(style.company, kMostCompany)), html(title), html(subject));
  for (const QString& aside : asides) text += QStringLiteral("<p>%1</p>").arg(html(aside));
  return text + QStringLiteral("</div></header>\n");
}

QString sentenceHtml(const widgets::SentenceContent& content) {
  return QStringLiteral("<p class=\"sentence\">%1</p>\n<p class=\"second\">%2</p>\n")
      .arg(lineOf(content.first), lineOf(content.secondShort));
}

QString factsHtml(const QList<Fact>& facts, const QList<LogFact>& logs) {
  QString text = QStringLiteral("<dl>\n");
  for (const Fact& fact : facts)
    text += QStringLiteral("<dt>%1</dt><dd>%2</dd>\n").arg(html(fact.label), html(fact.value));
  for (const LogFact& log : logs)
    text += QStringLiteral("<dt>%1</dt><dd>%2</dd>\n<dt>SHA-256</dt><dd class=\"digest\">%3</dd>\n")
                .arg(html(Words::tr("Log")), html(log.file), QString(log.sha256).remove(u' ').toHtmlEscaped());
  return text + QStringLiteral("</dl>\n");
}

QString lanesHtml(const widgets::LaneTable& lanes, const widgets::Theme& theme, qreal width) {
  constexpr qreal kNatural = 1e6;
  const widgets::LanesLayout layout(lanes, theme, width, kNatural, {});
  return svg({width, layout.headerHeight() + layout.contentHeight()}, Words::tr("Limit lanes"),
             [&](QPainter& painter, const QRectF& rect) {
               painter.setRenderHint(QPainter::Antialiasing);
               widgets::paintLanes(painter, rect, lanes, theme);
             });
}

QString notesHtml(const QList<Fact>& notes) {
  QString text = QStringLiteral("<div class=\"notes\">\n");
  for (const Fact& note : notes) text += QStringLiteral("<p>%1: %2</p>\n").arg(html(note.label), html(note.value));
  return text + QStringLiteral("</div>\n");
}

QString captionHtml(const QString& text) { return QStringLiteral("<h2>") + html(text) + QStringLiteral("</h2>\n"); }

QString tableHtml(const Table& table) {
  QString all = QStringLiteral("<div class=\"wide\"><table>\n<tr>");
  for (const Column& column : table.columns)
    all += QStringLiteral("<th scope=\"col\">%1<br>%2</th>").arg(html(column.title), html(column.unit));
  all += QStringLiteral("</tr>\n");
  for (const auto& row : table.rows) {
    all += QStringLiteral("<tr>");
    for (const Cell& cell : row) {
      QString text = html(cell.text);
      if (cell.bold) text = QStringLiteral("<b>") + text + QStringLiteral("</b>");
      if (!cell.minor.isEmpty()) text += QStringLiteral(" <small>") + html(cell.minor) + QStringLiteral("</small>");
      if (cell.sign) text += QStringLiteral(", ") + html(widgets::Wording::verdict(*cell.sign));
      all += QStringLiteral("<td>") + text + QStringLiteral("</td>");
    }
    all += QStringLiteral("</tr>\n");
  }
  return all + QStringLiteral("</table></div>\n");
}

QString cautionsHtml() {
  QString text = QStringLiteral("<aside><b>%1</b>\n").arg(html(cautionsTitle()));
  for (const QString& caution : cautions()) text += QStringLiteral("<p>%1</p>\n").arg(html(caution));
  return text + QStringLiteral("</aside>\n");
}

QString signatureHtml() {
  return QStringLiteral("<div class=\"sign\"><div>%1</div><div>%2</div><div>%3</div></div>\n")
      .arg(html(Words::tr("Checked by, date")), html(Words::tr("Released by, date")), html(Words::tr("Remarks")));
}

std::string pageHtml(const Style& style, const QString& title, const QString& body) {
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
