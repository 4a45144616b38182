#include "app/sheet/html_parts.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QMimeDatabase>
#include <QPainter>
#include <QSvgGenerator>

#include "app/desktop/widgets/wording.h"
#include "app/sheet/facts.h"
#include "app/sheet/legible.h"
#include "app/sheet/page.h"

namespace ovenwright::sheet {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Sheet)
};

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

}  // namespace ovenwright::sheet
