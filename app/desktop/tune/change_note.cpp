#include "app/desktop/tune/change_note.h"

#include <QAbstractTextDocumentLayout>
#include <QApplication>
#include <QBuffer>
#include <QCoreApplication>
#include <QFileInfo>
#include <QLocale>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QTextDocument>

#include "app/desktop/text/paragraph.h"
#include "app/desktop/tune/field_format.h"
#include "app/desktop/tune/model_words.h"
#include "app/desktop/tune/tune_words.h"
#include "app/desktop/widgets/translated_phrases.h"
#include "app/desktop/widgets/wording.h"
#include "core/files/text_file.h"
#include "core/judge/sentence.h"
#include "core/report/table.h"
#include "core/tune/words.h"
#include "core/units/version.h"

namespace ovenwright::desktop {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(ChangeNote)
};

using widgets::Wording;

constexpr std::size_t kColumns = 96;  // of the text

/// A table row of a setpoint: what it is, before, after, difference; empty difference where it stays.
struct Row {
  QString what, before, after, difference;
};

/// In the units that were chosen; in others than the recipe's own, those stand beside them.
std::vector<Row> rowsOf(const report::ChangeNote& note, const Format& format) {
  const FieldFormat shown(format);
  const Format plain(TemperatureUnit::kCelsius, SpeedUnit::kMillimetresPerMinute, format.locale());
  const FieldFormat own(plain);
  std::vector<Row> rows;
  const auto text = [&](const RecipeField& field, double value) {
    const QString said = shown.withUnit(field, value), as_kept = own.withUnit(field, value);
    return said == as_kept ? said : QStringLiteral("%1 (%2)").arg(said, as_kept);
  };
  const auto add = [&](const QString& what, const RecipeField& field, double before, double after) {
    const QString difference = after == before ? QString() : shown.difference(field, after - before);
    rows.push_back({what, text(field, before), text(field, after), difference});
  };
  constexpr RecipeField setpoint{RecipeField::Kind::kTop, 0}, speed{RecipeField::Kind::kSpeed, 0};
  std::size_t heating = 0, cooling = 0;
  for (const auto& zone : note.oven->zones) {
    const QString name = QString::fromStdString(zone.name);
    if (zone.kind == oven::ZoneKind::kCool) {
      if (cooling < note.to->cooling_C.size())
        add(Words::tr("Zone %1").arg(name), setpoint, note.from->cooling_C[cooling], note.to->cooling_C[cooling]);
      ++cooling;
      continue;
    }
    const std::size_t z = heating++;
    if (note.from->top_C[z] == note.from->bottom_C[z] && note.to->top_C[z] == note.to->bottom_C[z]) {
      add(Words::tr("Zone %1, top and bottom").arg(name), setpoint, note.from->top_C[z], note.to->top_C[z]);
    } else {
      add(Words::tr("Zone %1, top").arg(name), setpoint, note.from->top_C[z], note.to->top_C[z]);
      add(Words::tr("Zone %1, bottom").arg(name), setpoint, note.from->bottom_C[z], note.to->bottom_C[z]);
    }
  }
  add(Words::tr("Speed"), speed, note.from->speed_mm_per_min, note.to->speed_mm_per_min);
  return rows;
}

QString verdictText(const judge::Judgement& judgement, const Format& format) {
  return QString::fromStdString(judge::compose(judgement, widgets::TranslatedPhrases(Wording(format), {})).text);
}

QString predictedText(const tune::Forecast& forecast, const Format& format) {
  const auto& judgement = forecast.judgement;
  QStringList parts{Words::tr("Predicted: %1").arg(Wording::verdict(judgement.verdict))};
  const QString margin = marginText(judgement, forecast, format);
  if (!margin.isEmpty()) parts << Words::tr("smallest margin %1").arg(margin);
  const QString chance = chanceText(forecast, format);
  if (!chance.isEmpty()) parts << chance;
  const QString tightest = tightestText(judgement, format);
  return paragraph({Words::tr("%1.", "a list").arg(enumerated(parts)),
                    tightest.isEmpty() ? QString() : Words::tr("Tightest: %1.").arg(tightest)});
}

bool predictedToPass(const report::ChangeNote& note) {
  return std::ranges::all_of(note.predicted, [](const tune::Forecast& forecast) {
    return forecast.judgement.verdict <= judge::Verdict::kConditionalPass;
  });
}

QStringList signers() {
  return {Words::tr("Changed on the oven by"), Words::tr("Confirmed with an instrumented run by"),
          Words::tr("Released by")};
}

QString madeWith() {
  return Words::tr("Written %1 by Ovenwright %2.")
      .arg(QLocale().toString(QDateTime::currentDateTime(), QLocale::ShortFormat), QLatin1String(kVersion));
}

QString titleOf(const files::Identity& identity) {
  const QString name = QString::fromStdString(identity.name);
  return identity.revision ? Words::tr("%1, rev %2").arg(name, QString::fromStdString(*identity.revision)) : name;
}

using Facts = std::vector<std::pair<QString, QString>>;

/// Which oven and what on it.
Facts factsOf(const report::ChangeNote& note) {
  Facts facts{{Words::tr("Oven"), titleOf(note.oven->identity)},
              {Words::tr("Recipe that was run"), titleOf(note.from->identity)},
              {Words::tr("New recipe"), titleOf(note.to->identity)}};
  const auto add = [&](const QString& name, const QString& value) {
    if (std::ranges::find(facts, std::pair{name, value}) == facts.end()) facts.emplace_back(name, value);
  };
  for (const auto& run : note.learned_from)
    if (!run.board.empty()) add(Words::tr("Board"), QString::fromStdString(run.board));
  for (const auto& forecast : note.predicted)
    for (const auto& window : forecast.judgement.windows) add(Words::tr("Process window"), titleOf(window.identity));
  return facts;
}

/// The logs behind it: not what the hands at the oven need, so it stands last.
Facts originOf(const report::ChangeNote& note) {
  Facts origin;
  for (const auto& run : note.learned_from) {
    origin.emplace_back(Words::tr("Learned from the run"), QFileInfo(QString::fromStdString(run.log)).fileName());
    if (!run.sha256.empty()) origin.emplace_back(QStringLiteral("SHA-256"), QString::fromStdString(run.sha256));
  }
  return origin;
}

/// What the prediction rests on, and what of it to doubt.
QStringList relianceOf(const report::ChangeNote& note, const Format& format) {
  QStringList paragraphs;
  if (note.sides_untold)
    paragraphs << Words::tr("To check first: %1")
                      .arg(Words::tr(
                          "Top and bottom are set apart, and no run that was learned from had them apart: what "
                          "each side does alone is not known."));
  if (!note.fit) return paragraphs;
  for (const auto& warning : note.fit->warnings) paragraphs << Words::tr("To check first: %1").arg(modelText(warning));
  return paragraphs << Words::tr("The model follows these logs with a misfit of %1 (root mean square).")
                           .arg(format.valueWithUnit(note.fit->rmse_C, Format::Quantity::kDifference));
}

QStringList resultsOf(const report::ChangeNote& note, const Format& format) {
  QStringList paragraphs;
  if (note.measured) paragraphs << Words::tr("Measured: %1").arg(verdictText(*note.measured, format));
  for (const auto& forecast : note.predicted) paragraphs << predictedText(forecast, format);
  return paragraphs << relianceOf(note, format);
}

/// What is to be known before anything else; empty where the prediction is sure.
QString warningOf(const report::ChangeNote& note, const Format& format) {
  if (!predictedToPass(note))
    return Words::tr("This recipe is not predicted to pass. It is for a test run only, not for production.");
  for (const auto& forecast : note.predicted) {
    if (forecast.pass_probability.value_or(0) >= tune::kDoubtfulChance) continue;
    const QString chance = chanceText(forecast, format);
    return chance.isEmpty() ? Words::tr("It is not known how sure it is to pass. Make a test run of it first.")
                            : Words::tr("It is not sure to pass: %1. Make a test run of it first.").arg(chance);
  }
  return {};
}

QStringList tableTitles() {
  return {Words::tr("Setpoint"), Words::tr("now"), Words::tr("new"), Words::tr("difference")};
}

QString paragraph(const QString& text) { return QStringLiteral("<p>%1</p>").arg(text.toHtmlEscaped()); }

QString heading(const QString& text) {
  return QStringLiteral("<h2 style=\"font-size:11pt\">%1</h2>").arg(text.toHtmlEscaped());
}

/// Room that no table takes away.
QString gap() { return QStringLiteral("<p style=\"font-size:4pt\">&nbsp;</p>"); }

QString factsTable(const Facts& facts, const char* size) {
  QString html =
      QStringLiteral("<table cellspacing=\"0\" cellpadding=\"1\" style=\"font-size:%1\">").arg(QLatin1String(size));
  for (const auto& [name, value] : facts)
    html += QStringLiteral("<tr><td width=\"170\">%1</td><td>%2</td></tr>")
                .arg(name.toHtmlEscaped(), value.toHtmlEscaped());
  return html + QStringLiteral("</table>");
}

/// What is typed into the oven: the new numbers stand out, what stays is there to be compared.
QString setpointsTable(const report::ChangeNote& note, const Format& format) {
  QString html = QStringLiteral(
      "<table width=\"100%\" cellspacing=\"0\" cellpadding=\"2\" border=\"1\" "
      "style=\"border-collapse:collapse; border-color:#888888\"><tr>");
  QString align = QStringLiteral("left");
  for (const QString& title : tableTitles()) {
    html += QStringLiteral("<th align=\"%1\">%2</th>").arg(align, title.toHtmlEscaped());
    align = QStringLiteral("right");
  }
  html += QStringLiteral("</tr>");
  for (const auto& row : rowsOf(note, format)) {
    const bool changes = !row.difference.isEmpty();
    const auto cell = [&](const QString& text, const char* look) {
      const QString inside = changes ? QStringLiteral("<b>%1</b>").arg(text.toHtmlEscaped()) : text.toHtmlEscaped();
      return QStringLiteral("<td %1>%2</td>").arg(QLatin1String(look), inside);
    };
    html += QStringLiteral("<tr>") + cell(row.what, "") + cell(row.before, "align=\"right\"") +
            cell(row.after, changes ? "align=\"right\" style=\"font-size:11pt\"" : "align=\"right\"") +
            cell(row.difference, "align=\"right\"") + QStringLiteral("</tr>");
  }
  return html + QStringLiteral("</table>");
}

QString html(const report::ChangeNote& note, const Format& format) {
  QString html =
      QStringLiteral("<html><body><h1 style=\"font-size:17pt\">%1</h1>").arg(Words::tr("Change note").toHtmlEscaped());
  if (const QString warning = warningOf(note, format); !warning.isEmpty())
    html += QStringLiteral("<p style=\"font-size:11pt\"><b>%1</b></p>").arg(warning.toHtmlEscaped());
  html += gap() + factsTable(factsOf(note), "9pt") + gap() + setpointsTable(note, format) + gap();
  for (const QString& result : resultsOf(note, format)) html += paragraph(result);
  html += heading(Words::tr("Before it is used"));
  for (const QString& caution : cautionsInFull()) html += paragraph(caution);
  html += gap() + QStringLiteral("<table width=\"100%\" cellspacing=\"0\" cellpadding=\"9\">");
  for (const QString& signer : signers())
    html += QStringLiteral("<tr><td>%1</td><td>__________________________</td><td>%2 ____________</td></tr>")
                .arg(signer.toHtmlEscaped(), Words::tr("Date").toHtmlEscaped());
  return html + QStringLiteral("</table>") + gap() + factsTable(originOf(note), "7pt") +
         QStringLiteral("<p style=\"font-size:7pt\">%1</p></body></html>").arg(madeWith().toHtmlEscaped());
}

void print(const QString& html, QPdfWriter& writer) {
  QTextDocument document;
  document.documentLayout()->setPaintDevice(&writer);
  QFont font(QApplication::font().family(), 9);
  font.setLetterSpacing(QFont::AbsoluteSpacing, 0.05);  // no ligatures, so that the text reads back letter by letter
  document.setDefaultFont(font);
  document.setDocumentMargin(0);
  document.setHtml(html);
  const QSizeF page = writer.pageLayout().paintRectPixels(writer.resolution()).size();
  document.setPageSize(page);
  QPainter painter(&writer);
  for (int i = 0; i < document.pageCount(); ++i) {
    if (i > 0) writer.newPage();
    painter.save();
    painter.translate(0, -i * page.height());
    document.drawContents(&painter, QRectF(QPointF(0, i * page.height()), page));
    painter.restore();
  }
}

}  // namespace

QString changeNoteText(const report::ChangeNote& note, const Format& format) {
  const auto wrapped = [](const QString& text) { return report::wrapped(text.toStdString(), 0, kColumns) + "\n"; };
  std::string text = Words::tr("Change note").toStdString() + "\n\n";
  const auto told = [](const Facts& facts) {
    std::string lines;
    for (const auto& [name, value] : facts) lines += Words::tr("%1: %2").arg(name, value).toStdString() + "\n";
    return lines;
  };
  if (const QString warning = warningOf(note, format); !warning.isEmpty()) text += wrapped(warning);
  text += told(factsOf(note));
  std::vector<report::Table::Column> columns;
  for (const QString& title : tableTitles())
    columns.push_back(
        {title.toStdString(), columns.empty() ? report::Table::Align::kLeft : report::Table::Align::kRight});
  report::Table table(std::move(columns));
  for (const auto& row : rowsOf(note, format))
    table.add(
        {row.what.toStdString(), row.before.toStdString(), row.after.toStdString(), row.difference.toStdString()});
  text += "\n" + table.text() + "\n";
  for (const QString& result : resultsOf(note, format)) text += wrapped(result);
  text += Words::tr("Before it is used").toStdString() + "\n\n";
  for (const QString& caution : cautionsInFull()) text += wrapped(caution);
  for (const QString& signer : signers())
    text += "\n" + (signer + QStringLiteral(": __________________________  ") + Words::tr("Date") +
                    QStringLiteral(" ____________\n"))
                       .toStdString();
  return QString::fromStdString(text + "\n" + told(originOf(note))) + u'\n' + madeWith() + u'\n';
}

Result<bool> writeChangeNotePdf(const report::ChangeNote& note, const Format& format, const QString& path) {
  QByteArray bytes;
  {
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setPageSize(QPageSize(QPageSize::A4));
    writer.setPageMargins(QMarginsF(15, 15, 15, 15), QPageLayout::Millimeter);
    writer.setTitle(Words::tr("Change note"));
    writer.setCreator(QStringLiteral("Ovenwright ") + QLatin1String(kVersion));
    print(html(note, format), writer);
  }
  const auto written =
      files::write_file(path.toStdString(), {bytes.constData(), std::size_t(bytes.size())}, files::Existing::kReplace);
  if (!written) return written.error();
  return true;
}

}  // namespace ovenwright::desktop
