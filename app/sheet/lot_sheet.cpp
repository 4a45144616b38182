#include <QCoreApplication>
#include <QPainter>
#include <memory>

#include "app/desktop/text/paragraph.h"
#include "app/desktop/widgets/wording.h"
#include "app/sheet/control_chart.h"
#include "app/sheet/heading.h"
#include "app/sheet/legible.h"
#include "app/sheet/lot_tables.h"
#include "app/sheet/paragraph.h"
#include "app/sheet/run_sheet.h"
#include "app/sheet/sheet.h"
#include "core/lot/lot.h"

namespace ovenwright::sheet {
namespace {

using widgets::SentenceContent;
using widgets::SentenceRun;

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Sheet)
};

SentenceRun textRun(const QString& text, bool strong = false, bool signal = false) {
  SentenceRun run;
  run.text = text;
  run.strong = strong;
  run.signal = signal;
  return run;
}

Block chartBlock(const lot::Series& series, const widgets::Theme& theme) {
  constexpr qreal kHeight = 130;
  Block block;
  block.before = 4;
  block.height = kHeight;
  block.paint = [series, theme](QPainter& painter, const QRectF& rect) {
    paintControlChart(painter, rect, series, theme);
  };
  return block;
}

}  // namespace

SentenceContent lotSentence(const lot::Lot& lot) {
  SentenceContent content;
  content.signKind = SentenceContent::Sign::kVerdict;
  content.verdict = lot.verdict;
  const int all = int(lot.ids.size());
  const QString word = Words::tr("%1.", "a verdict").arg(widgets::Wording::verdictTitle(lot.verdict));
  const QString runs = lot.pass == lot.ids.size() ? Words::tr("All %n runs pass.", "of a lot", all)
                                                  : Words::tr("%1 of %n runs pass.", "of a lot", all).arg(lot.pass);
  content.first << textRun(word, true, judge::is_out(lot.verdict))
                << textRun(desktop::paragraph({word, runs}).mid(word.size()));
  QStringList counts;
  const auto count = [&](std::size_t n, judge::Verdict verdict) {
    if (n > 0) counts << QString::number(n) + u' ' + widgets::Wording::verdict(verdict);
  };
  count(lot.fail, judge::Verdict::kFail);
  count(lot.conditional_fail, judge::Verdict::kConditionalFail);
  count(lot.undetermined, judge::Verdict::kUndetermined);
  count(lot.conditional_pass, judge::Verdict::kConditionalPass);
  count(lot.pass, judge::Verdict::kPass);
  if (lot.margin)
    content.second << textRun(Words::tr("Smallest margin %1").arg(widgets::Wording().percent(*lot.margin)) +
                              QStringLiteral("    "));
  content.second << textRun(desktop::enumerated(counts));
  content.secondShort = content.second;
  return content;
}

QStringList lotAsides(std::span<const RunRecord> runs, const QLocale& locale) {
  QStringList texts{Words::tr("%n runs", nullptr, int(runs.size()))};
  const QDateTime first = runs.front().labels.runAt, last = runs.back().labels.runAt;
  const auto date = [&](const QDateTime& moment) { return dateText(moment, locale); };
  if (first.isValid() && last.isValid())
    texts << (first.date() == last.date() ? date(first) : date(first) + QStringLiteral(" – ") + date(last));
  return texts;
}

QString lotChartTitle(const lot::Series& series) {
  QString name = widgets::Wording::title(series.requirement);
  if (!series.trace.empty()) name += QStringLiteral(", ") + QString::fromStdString(series.trace);
  return Words::tr("%1: run by run, the least capable of all").arg(name);
}

QString lotTitle(std::span<const RunRecord> runs) {
  constexpr qsizetype kMostNamed = 3;
  QStringList lots;
  for (const RunRecord& run : runs) {
    const QString lot = legible(run.labels.lot);
    if (!lots.contains(lot)) lots << lot;
    if (lots.size() > kMostNamed) break;
  }
  if (lots.contains(QString()) || lots.size() > kMostNamed) return Words::tr("%n runs", nullptr, int(runs.size()));
  if (lots.size() == 1) return titleOf(legible(runs.front()));
  for (QString& lot : lots) lot = Words::tr("Lot %1").arg(lot);
  return lots.join(QStringLiteral(", "));
}

Document lotSheet(std::span<const RunRecord> runs, const Style& style, bool each) {
  if (runs.size() == 1) return runSheet(runs.front(), style);
  if (runs.size() == 2 && !each && areAlike(runs[0], runs[1])) return lotOfTwoSheet(runs, style);
  const auto theme = paperTheme();
  const lot::Lot lot = statisticsOf(runs);
  const RunRecord first = legible(runs.front());
  const QRectF area = contentArea(style.paper);
  const qreal width = area.width();
  Document document;
  document.paper = style.paper;
  document.title = lotTitle(runs);
  document.subject = subjectOf(first);
  document.footerLeft = document.title + QStringLiteral(", ") + programText();
  document.footerMiddle = madeText(style, runs.front().archive.has_value());
  document.pages.emplace_back();

  Flow flow(document, area.top());
  flow.add(headingBlock(style, document.title, document.subject, lotAsides(runs, style.locale), theme, width));
  flow.add(sentenceBlock(lotSentence(lot), theme, width));
  flow.add(factsBlock(sharedFacts(runs, style.locale), {}, theme, width));
  addFoot(document, flow, theme, {});
  if (lot.weakest && lot.series[*lot.weakest].control) {
    flow.add(captionBlock(lotChartTitle(lot.series[*lot.weakest]), theme));
    flow.add(chartBlock(lot.series[*lot.weakest], theme));
  }
  if (const QString words = statisticsText(lot); !words.isEmpty())
    flow.add(noteBlock({Words::tr("Statistics"), words}, theme, width));
  flow.add(captionBlock(Words::tr("Runs"), theme));
  addTable(flow, runsTable(runs, style.locale), theme, width);
  flow.add(captionBlock(Words::tr("Statistics by requirement and placement"), theme));
  addTable(flow, statisticsTable(lot, style.locale), theme, width);
  flow.add(captionBlock(Words::tr("Logs"), theme));
  addTable(flow, logsTable(runs, style.locale), theme, width);
  flow.add(captionBlock(Words::tr("Limits, sources and how the first log was read"), theme));
  for (const Fact& note : notesOf(first, style.locale)) flow.add(noteBlock(note, theme, width));
  for (const RunRecord& record : runs) {
    if (!each) break;
    for (Page& page : runSheet(record, style).pages) document.pages.push_back(std::move(page));
  }
  return document;
}

}  // namespace ovenwright::sheet
