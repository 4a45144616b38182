#include <QCoreApplication>
#include <QPainter>
#include <algorithm>
#include <memory>

#include "app/desktop/widgets/wording.h"
#include "app/sheet/board.h"
#include "app/sheet/heading.h"
#include "app/sheet/lanes.h"
#include "app/sheet/paragraph.h"
#include "app/sheet/result_table.h"
#include "app/sheet/run_pictures.h"
#include "app/sheet/sheet.h"

namespace ovenwright::sheet {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Sheet)
};

constexpr qreal kLeastCurve = 140, kGoodCurve = 160, kMostCurve = 360;
constexpr qreal kCurveGap = 8;
constexpr std::size_t kMostOnOnePage = 12;  // thermocouples in the table

class RunSheet {
 public:
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
    m_document.paper = m_style.paper;
    m_document.title = titleOf(record);
    m_document.subject = subjectOf(record);
    m_document.footerLeft = m_document.title + QStringLiteral(", ") + programText();
    m_document.footerMiddle = madeText(m_style, record.archive.has_value());
    m_document.pages.emplace_back();

    Flow flow(m_document, m_area.top());
    flow.add(
        headingBlock(m_style, titleOf(record), subjectOf(record), asidesOf(record, m_style.locale), m_theme, width()));
    flow.add(sentenceBlock(widgets::sentenceOf(record.checked().judgement, m_content->entry_s()), m_theme, width()));
    flow.add(factsBlock(factsOf(record, m_style.locale), {logFactOf(record, m_style.locale)}, m_theme, width()));

    addFoot(m_document, flow, m_theme, boardPicture());
    m_lanes.chooseType([](const widgets::LaneColumns& columns, const auto&) { return columns.showsValue; });
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

  /// Decides what the first page holds. In the order in which things give way: the notes, the height of the lanes, the
  /// table, the lanes.
  void plan(qreal room) {
    const bool few = m_content->view->channels().size() <= kMostOnOnePage;
    struct Choice {
      bool lanes, table, notes, squeezed;
      qreal curve;
    };
    const Choice choices[] = {
        {true, few, true, false, kGoodCurve},    {true, few, false, false, kGoodCurve},
        {true, few, true, true, kGoodCurve},     {true, few, false, true, kLeastCurve},
        {true, false, true, false, kGoodCurve},  {true, false, false, true, kLeastCurve},
        {false, false, true, false, kGoodCurve}, {false, false, false, false, 0},
    };
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
    return what.join(QStringLiteral(", "));
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
  bool m_lanesHere = true, m_tableHere = true, m_notesHere = true;
  qreal m_curve = kGoodCurve;
};

}  // namespace

Document runSheet(const RunRecord& record, const Style& style) { return RunSheet(record, style).make(); }

}  // namespace ovenwright::sheet
