#include "app/desktop/tune/change_note.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QLocale>
#include <QPageSize>
#include <QPdfWriter>
#include <QTextDocument>

#include "app/desktop/tune/tune_words.h"
#include "app/desktop/widgets/wording.h"
#include "core/files/text_file.h"
#include "core/units/version.h"

namespace ovenwright::desktop {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(ChangeNote)
};

using widgets::Wording;

/// A table row of a setpoint: what it is, before, after, difference; empty difference where it stays.
struct Row {
  QString what, before, after, difference;
};

std::vector<Row> rowsOf(const ChangeNote& note) {
  const Wording wording;
  std::vector<Row> rows;
  const auto add = [&](const QString& what, double before, double after, const QString& unit) {
    const double by = after - before;
    const QString difference = by == 0 ? QString() : (by > 0 ? QStringLiteral("+") : QString()) + wording.limit(by);
    rows.push_back({what, wording.limit(before) + unit, wording.limit(after) + unit, difference});
  };
  std::size_t heating = 0, cooling = 0;
  const QString degrees = QStringLiteral(" °C");
  for (const auto& zone : note.oven.zones) {
    const QString name = QString::fromStdString(zone.name);
    if (zone.kind == oven::ZoneKind::kCool) {
      if (cooling < note.to.cooling_C.size())
        add(Words::tr("Zone %1").arg(name), note.from.cooling_C[cooling], note.to.cooling_C[cooling], degrees);
      ++cooling;
      continue;
    }
    const std::size_t z = heating++;
    if (note.from.top_C[z] == note.from.bottom_C[z] && note.to.top_C[z] == note.to.bottom_C[z]) {
      add(Words::tr("Zone %1, top and bottom").arg(name), note.from.top_C[z], note.to.top_C[z], degrees);
    } else {
      add(Words::tr("Zone %1, top").arg(name), note.from.top_C[z], note.to.top_C[z], degrees);
      add(Words::tr("Zone %1, bottom").arg(name), note.from.bottom_C[z], note.to.bottom_C[z], degrees);
    }
  }
  add(Words::tr("Speed"), note.from.speed_mm_per_min, note.to.speed_mm_per_min, QStringLiteral(" mm/min"));
  return rows;
}

QString recipeName(const oven::Recipe& recipe) {
  const QString name = QString::fromStdString(recipe.identity.name);
  return recipe.identity.revision ? Words::tr("%1, rev %2").arg(name, QString::fromStdString(*recipe.identity.revision))
                                  : name;
}

QString predictedText(const ChangeNote& note, const Format& format) {
  const auto& prediction = *note.prediction;
  const auto& judgement = prediction.judgement();
  QStringList parts{Words::tr("Predicted: %1").arg(Wording::verdict(judgement.verdict))};
  const QString margin = marginText(judgement, prediction.forecast, format);
  if (!margin.isEmpty()) parts << Words::tr("smallest margin %1").arg(margin);
  const QString chance = chanceText(prediction.forecast, format);
  if (!chance.isEmpty()) parts << chance;
  const QString tightest = tightestText(judgement, format);
  QString text = parts.join(QStringLiteral(", ")) + u'.';
  if (!tightest.isEmpty()) text += u' ' + Words::tr("Tightest: %1.").arg(tightest);
  return text;
}

QStringList signers() {
  return {Words::tr("Changed on the oven by"), Words::tr("Confirmed with an instrumented run by"),
          Words::tr("Released by")};
}

QString madeWith() {
  return Words::tr("Written %1 by Ovenwright %2.")
      .arg(QLocale().toString(QDateTime::currentDateTime(), QLocale::ShortFormat), QLatin1String(kVersion));
}

std::vector<std::pair<QString, QString>> factsOf(const ChangeNote& note) {
  std::vector<std::pair<QString, QString>> facts{{Words::tr("Oven"), QString::fromStdString(note.oven.identity.name)},
                                                 {Words::tr("Recipe that was run"), recipeName(note.from)},
                                                 {Words::tr("Run it was learned from"), note.run}};
  if (!note.board.isEmpty()) facts.emplace_back(Words::tr("Board"), note.board);
  facts.emplace_back(Words::tr("Process window"), note.window);
  return facts;
}

}  // namespace

QString changeNoteHtml(const ChangeNote& note, const Format& format) {
  QString html = QStringLiteral("<html><body><h1 style=\"font-size:16pt\">%1</h1><p>")
                     .arg(Words::tr("Change note").toHtmlEscaped());
  html += QStringLiteral("<table cellspacing=\"0\" cellpadding=\"1\">");
  for (const auto& [name, value] : factsOf(note))
    html += QStringLiteral("<tr><td style=\"padding-right:12px\">%1</td><td><b>%2</b></td></tr>")
                .arg(name.toHtmlEscaped(), value.toHtmlEscaped());
  html += QStringLiteral("</table></p>");
  html += QStringLiteral(
      "<table width=\"100%\" cellspacing=\"0\" cellpadding=\"3\" border=\"1\" "
      "style=\"border-collapse:collapse; border-color:#888888\"><tr>");
  for (const QString& heading : {Words::tr("Setpoint"), Words::tr("now"), Words::tr("new"), Words::tr("difference")})
    html += QStringLiteral("<th align=\"left\">%1</th>").arg(heading.toHtmlEscaped());
  html += QStringLiteral("</tr>");
  for (const auto& row : rowsOf(note)) {
    const QString cell =
        row.difference.isEmpty() ? QStringLiteral("<td>%1</td>") : QStringLiteral("<td><b>%1</b></td>");
    html += QStringLiteral("<tr>");
    for (const QString& text : {row.what, row.before, row.after, row.difference})
      html += cell.arg(text.toHtmlEscaped());
    html += QStringLiteral("</tr>");
  }
  html += QStringLiteral("</table><p>%1</p>").arg(predictedText(note, format).toHtmlEscaped());
  html += QStringLiteral("<h2 style=\"font-size:11pt\">%1</h2>").arg(Words::tr("Before it is used").toHtmlEscaped());
  for (const QString& caution : cautionsInFull()) html += QStringLiteral("<p>%1</p>").arg(caution.toHtmlEscaped());
  html += QStringLiteral("<p><br></p><table width=\"100%\" cellspacing=\"0\" cellpadding=\"8\">");
  for (const QString& signer : signers())
    html += QStringLiteral(
                "<tr><td width=\"45%\">%1</td><td>____________________________</td><td>%2 ______________</td></tr>")
                .arg(signer.toHtmlEscaped(), Words::tr("Date").toHtmlEscaped());
  return html +
         QStringLiteral("</table><p style=\"font-size:8pt\">%1</p></body></html>").arg(madeWith().toHtmlEscaped());
}

QString changeNoteText(const ChangeNote& note, const Format& format) {
  QString text = Words::tr("Change note") + QStringLiteral("\n\n");
  for (const auto& [name, value] : factsOf(note)) text += name + QStringLiteral(": ") + value + u'\n';
  text += u'\n';
  for (const auto& row : rowsOf(note)) {
    text += row.what + QStringLiteral(": ");
    text += row.difference.isEmpty()
                ? row.after
                : row.before + QStringLiteral(" → ") + row.after + QStringLiteral(" (") + row.difference + u')';
    text += u'\n';
  }
  text += u'\n' + predictedText(note, format) + QStringLiteral("\n\n");
  for (const QString& caution : cautionsInFull()) text += caution + QStringLiteral("\n");
  text += u'\n';
  for (const QString& signer : signers())
    text += signer + QStringLiteral(": ____________________  ") + Words::tr("Date") + QStringLiteral(": __________\n");
  return text + u'\n' + madeWith() + u'\n';
}

Result<bool> writeChangeNotePdf(const ChangeNote& note, const Format& format, const QString& path) {
  QByteArray bytes;
  {
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setPageSize(QPageSize(QPageSize::A4));
    writer.setPageMargins(QMarginsF(15, 15, 15, 15), QPageLayout::Millimeter);
    writer.setTitle(Words::tr("Change note"));
    writer.setCreator(QStringLiteral("Ovenwright ") + QLatin1String(kVersion));
    QTextDocument document;
    document.setDefaultFont(QFont(QStringLiteral("DejaVu Sans"), 9));
    document.setHtml(changeNoteHtml(note, format));
    document.print(&writer);
  }
  const auto written =
      files::write_file(path.toStdString(), {bytes.constData(), std::size_t(bytes.size())}, files::Existing::kReplace);
  if (!written) return written.error();
  return true;
}

}  // namespace ovenwright::desktop
