#include <QCoreApplication>
#include <QPainter>
#include <algorithm>
#include <memory>

#include "app/desktop/text/paragraph.h"
#include "app/desktop/widgets/wording.h"
#include "app/sheet/board.h"
#include "app/sheet/heading.h"
#include "app/sheet/lanes.h"
#include "app/sheet/legible.h"
#include "app/sheet/lot_tables.h"
#include "app/sheet/paragraph.h"
#include "app/sheet/result_table.h"
#include "app/sheet/run_pictures.h"
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

constexpr qreal kLeastCurve = 140, kGoodCurve = 160, kMostCurve = 360;
constexpr qreal kLotCurve = 84;  // of a lot of two, which is to be one page
constexpr qreal kCurveGap = 8;
constexpr std::size_t kMostOnOnePage = 12;  // thermocouples in the table

/// The run that is worse, of equals the one with the smaller margin.
std::size_t nearer(std::span<const RunRecord> runs) {
  const auto &a = runs[0].checked().judgement, &b = runs[1].checked().judgement;
  if (a.verdict != b.verdict) return a.verdict > b.verdict ? 0 : 1;
  return b.margin.value_or(-1e9) < a.margin.value_or(-1e9) ? 1 : 0;
}

QString runText(std::size_t run) { return Words::tr("run %1").arg(run + 1); }

class RunSheet {
 public:
  /// Of a lot of two.
  RunSheet(std::span<const RunRecord> lot, const Style& style) : RunSheet(lot[nearer(lot)], style) {
    m_shown = nearer(lot);
    for (const RunRecord& run : lot) m_lot.push_back(legible(run));
    addOtherRun(m_table, m_content->view->judgement(), m_content->lanes, m_lot[1 - m_shown].checked().judgement,
                runText(1 - m_shown));
    if (const QString words = statisticsText(statisticsOf(m_lot)); !words.isEmpty())
      m_notes.prepend({Words::tr("Statistics"), words});
    m_notes = inOneParagraph(m_notes);  // so that the curves have room on the one page
  }

  RunSheet(const RunRecord& record, const Style& style)
      : m_style(style),
        m_theme(paperTheme()),
        m_format({}, {}, style.locale),
        m_content(std::make_shared<const RunPictures>(record, m_theme, m_format)),
        m_area(contentArea(style.paper)),
        m_lanes(m_content->lanes, m_theme, m_area.width()),
        m_table(resultTable(m_content->view->judgement(), m_content->view->looks(), m_content->lanes)),
        m_notes(notesOf(m_content->record, style.locale)) {}

  Document make() {
    const auto& record = m_content->record;
    const bool two = !m_lot.empty();
    m_document.paper = m_style.paper;
    m_document.title = two ? lotTitle(m_lot) : titleOf(record);
    m_document.subject = subjectOf(record);
    m_document.footerLeft = m_document.title + QStringLiteral(", ") + programText();
    m_document.footerMiddle = madeText(m_style, record.archive.has_value());
    m_document.pages.emplace_back();

    Flow flow(m_document, m_area.top());
    const auto asides = two ? lotAsides(m_lot, m_style.locale) : asidesOf(record, m_style.locale);
    flow.add(headingBlock(m_style, m_document.title, m_document.subject, asides, m_theme, width()));
    flow.add(sentenceBlock(two ? twoSentence() : widgets::sentenceOf(record.checked().judgement, m_content->entry_s()),
                           m_theme, width()));
    flow.add(factsBlock(facts(), logs(), m_theme, width()));

    addFoot(m_document, flow, m_theme, boardPicture());
    m_lanes.chooseType([](const widgets::LaneColumns& columns, const auto&) { return columns.showsValue; });
    const Block caption = captionBlock(Words::tr("Run %1").arg(m_shown + 1), m_theme);
    if (two) flow.add(caption);
    plan(flow.room());
    flow.add(curveBlock());
    if (m_lanesHere) m_lanes.addTo(flow);
    if (m_tableHere) addTable(flow, m_table, m_theme, width());
    if (m_notesHere) addNotes(flow);
    if (!furtherText().isEmpty()) flow.add(noteBlock({Words::tr("On the next page"), furtherText()}, m_theme, width()));
    if (!furtherText().isEmpty()) addFurther(flow);
    return std::move(m_document);
  }

 private:
  qreal width() const { return m_area.width(); }

  QList<Fact> facts() const {
    if (m_lot.empty()) return factsOf(m_content->record, m_style.locale);
    auto facts = sharedFacts(m_lot, m_style.locale);
    QStringList records, serials;
    for (std::size_t i = 0; i < m_lot.size(); ++i) {
      if (m_lot[i].archive) records << m_lot[i].archive->id;
      if (!m_lot[i].labels.serial.isEmpty() && !serials.contains(m_lot[i].labels.serial))
        serials << m_lot[i].labels.serial;
    }
    if (!serials.empty()) facts << Fact{Words::tr("Serial number"), desktop::enumerated(serials)};
    if (!records.empty()) facts << Fact{Words::tr("Records"), desktop::enumerated(records)};
    return facts;
  }

  QList<LogFact> logs() const {
    if (m_lot.empty()) return {logFactOf(m_content->record, m_style.locale)};
    QList<LogFact> logs;
    for (std::size_t i = 0; i < m_lot.size(); ++i) {
      logs << logFactOf(m_lot[i], m_style.locale);
      QString& file = logs.last().file;
      file = Words::tr("%1: %2").arg(Words::tr("Run %1").arg(i + 1), file);
    }
    return logs;
  }

  /// The lot's verdict, and what the run that is shown says.
  SentenceContent twoSentence() const {
    auto content = lotSentence(statisticsOf(m_lot));
    const auto run = widgets::sentenceOf(m_content->record.checked().judgement, m_content->entry_s());
    SentenceRun which;
    which.text = u' ' + Words::tr("%1: %2").arg(Words::tr("Run %1").arg(m_shown + 1), QString());
    content.first << which;
    content.first += run.first;
    return content;
  }

  std::function<void(QPainter&, const QRectF&)> boardPicture() const {
    auto table = m_content->board();
    if (!table) return {};
    return [table = *std::move(table), theme = m_theme](QPainter& painter, const QRectF& rect) {
      paintSmallBoard(painter, rect, table, theme);
    };
  }

  qreal notesHeight() const {
    qreal height = 0;
    for (const Fact& note : m_notes) {
      const Block block = noteBlock(note, m_theme, width());
      height += block.height + block.before;
    }
    return height;
  }

  /// What stands under the lanes on the first page.
  qreal tail() const {
    const qreal line = noteBlock({QStringLiteral("x"), {}}, m_theme, width()).height + 2;
    return (m_tableHere ? tableHeight(m_table, m_theme, width()) : 0) + (m_notesHere ? notesHeight() : 0) +
           (m_notesHere && m_tableHere && m_lanesHere ? 0 : line);
  }

  /// Decides what the first page holds. In the order in which things give way: the height of the lanes, some of the
  /// curves', the notes, the table, the lanes.
  void plan(qreal room) {
    const bool few = m_content->view->channels().size() <= kMostOnOnePage;
    struct Choice {
      bool lanes, table, notes, squeezed;
      qreal curve;
    };
    std::vector<Choice> choices{
        {true, few, true, false, kGoodCurve},    {true, few, true, true, kLeastCurve},
        {true, few, false, false, kGoodCurve},   {true, few, false, true, kLeastCurve},
        {true, false, true, false, kGoodCurve},  {true, false, false, true, kLeastCurve},
        {false, false, true, false, kGoodCurve}, {false, false, false, false, 0},
    };
    if (!m_lot.empty()) choices.insert(choices.begin() + 1, {true, few, true, true, kLotCurve});
    const qreal strip = m_content->curve.stripHeight();
    for (const Choice& choice : choices) {
      m_lanesHere = choice.lanes;
      m_tableHere = choice.table;
      m_notesHere = choice.notes;
      m_lanes.setSqueezed(choice.squeezed);
      const qreal rest = room - (m_lanesHere ? m_lanes.height() : 0) - tail() - kCurveGap;
      if (rest < choice.curve + strip) continue;
      m_curve = std::min(rest, kMostCurve + strip);
      return;
    }
  }

  Block curveBlock() const {
    Block block;
    block.before = kCurveGap;
    block.height = m_curve;
    block.paint = [content = m_content](QPainter& painter, const QRectF& rect) { content->curve.paint(painter, rect); };
    return block;
  }

  void addNotes(Flow& flow) const {
    for (const Fact& note : m_notes) flow.add(noteBlock(note, m_theme, width()));
  }

  QString furtherText() const {
    QStringList what;
    if (!m_lanesHere) what << Words::tr("limit lanes");
    if (!m_tableHere) what << Words::tr("results by thermocouple");
    if (!m_notesHere) what << Words::tr("limits, sources and how the log was read");
    return desktop::enumerated(what);
  }

  void addFurther(Flow& flow) {
    flow.newPage();
    const QString title = Words::tr("%1, continued from page 1: %2").arg(m_document.title, furtherText());
    flow.add(captionBlock(title, m_theme));
    if (!m_lanesHere) m_lanes.addTo(flow);
    if (!m_tableHere) addTable(flow, m_table, m_theme, width());
    if (!m_notesHere) {
      flow.add(captionBlock(Words::tr("Limits, sources and how the log was read"), m_theme));
      addNotes(flow);
    }
  }

  const Style& m_style;
  widgets::Theme m_theme;
  desktop::Format m_format;
  std::shared_ptr<const RunPictures> m_content;
  QRectF m_area;
  PaperLanes m_lanes;
  Table m_table;
  QList<Fact> m_notes;
  Document m_document;
  std::vector<RunRecord> m_lot;  // of two, their names legible; else empty
  std::size_t m_shown = 0;       // which of them
  bool m_lanesHere = true, m_tableHere = true, m_notesHere = true;
  qreal m_curve = kGoodCurve;
};

}  // namespace

Document runSheet(const RunRecord& record, const Style& style) { return RunSheet(record, style).make(); }

bool areAlike(const RunRecord& a, const RunRecord& b) {
  const auto &of_a = a.checked(), &of_b = b.checked();
  const auto window = [](const auto& each) { return std::pair(each.identity.name, each.identity.sha256); };
  const auto board = [](const RunRecord& run) {
    return run.request->board ? run.request->board->identity.sha256 : std::string();
  };
  return board(a) == board(b) &&
         std::ranges::equal(of_a.judgement.windows, of_b.judgement.windows, {}, window, window) &&
         std::ranges::equal(of_a.run.channels, of_b.run.channels, {}, &run::Channel::name, &run::Channel::name);
}

Document lotOfTwoSheet(std::span<const RunRecord> runs, const Style& style) { return RunSheet(runs, style).make(); }

}  // namespace ovenwright::sheet
