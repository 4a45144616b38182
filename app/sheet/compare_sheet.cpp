#include "app/sheet/compare_sheet.h"

#include <QCoreApplication>
#include <QPainter>
#include <algorithm>

#include "app/desktop/text/paragraph.h"
#include "app/desktop/widgets/compare_sentence.h"
#include "app/desktop/widgets/glyphs.h"
#include "app/sheet/compare_pictures.h"
#include "app/sheet/heading.h"
#include "app/sheet/lanes.h"
#include "app/sheet/paragraph.h"

namespace ovenwright::sheet {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Sheet)
};

constexpr qreal kLeastCurve = 130, kMostCurve = 300;
constexpr qreal kLowCurve = 100;  // before anything goes to the next page
constexpr qreal kGap = 8;
constexpr qreal kLeastName_px = 60;

class CompareSheet {
 public:
  CompareSheet(const ComparisonRecord& record, const Style& style)
      : m_style(style),
        m_theme(paperTheme()),
        m_format({}, {}, style.locale),
        m_content(std::make_shared<const ComparePictures>(record, m_theme, m_format)),
        m_area(contentArea(style.paper)),
        m_lanes(m_content->lanes, m_theme, m_area.width()) {}

  Document make() {
    const auto& record = m_content->record;
    m_document.paper = m_style.paper;
    m_document.title = Words::tr("Comparison");
    m_document.subject = subjectOf(record.a.front());
    m_document.footerLeft = m_document.title + QStringLiteral(", ") + programText();
    m_document.footerMiddle = madeText(m_style, record.a.front().archive.has_value());
    m_document.pages.emplace_back();
    Flow flow(m_document, m_area.top());
    flow.add(headingBlock(m_style, m_document.title, m_document.subject, m_content->asides(), m_theme, width()));
    flow.add(sentenceBlock(widgets::compareSentence(m_content->compared.comparison, widgets::Wording(m_format)),
                           m_theme, width()));
    flow.add(factsBlock(m_content->facts(m_style.locale), m_content->logs(m_style.locale), m_theme, width()));
    addFoot(m_document, flow, m_theme, {});
    m_lanes.chooseType([](const widgets::LaneColumns& columns, const widgets::Theme& theme) {
      const auto& worst = columns.pair.worst[0];
      return worst.nameRight - worst.nameLeft >= theme.px(kLeastName_px);
    });
    plan(flow.room());
    flow.add(curvesBlock());
    flow.add(legendBlock());
    if (!m_content->recipes.rows.isEmpty()) addTable(flow, m_content->recipes, m_theme, width());
    const QString further = furtherText();
    const Block what_is_further = noteBlock({Words::tr("On the next page"), further}, m_theme, width());
    if (!m_lanesHere) {
      flow.add(what_is_further);
      flow.newPage();
    }
    m_lanes.addTo(flow);
    if (m_lanesHere && !further.isEmpty()) flow.add(what_is_further);
    if (!m_notesHere) flow.newPage();
    for (const Block& note : notes()) flow.add(note);
    for (const CaptionedTable& part : m_content->tables(m_style.locale)) {
      flow.add(captionBlock(part.caption, m_theme));
      addTable(flow, part.table, m_theme, width());
    }
    return std::move(m_document);
  }

 private:
  qreal width() const { return m_area.width(); }

  /// Each note a paragraph, or all of them in one where room is short.
  std::vector<Block> notes() const {
    std::vector<Block> blocks;
    const auto notes = m_content->notes(m_style.locale);
    for (const Fact& note : m_joined ? inOneParagraph(notes) : notes)
      blocks.push_back(noteBlock(note, m_theme, width()));
    if (!blocks.empty()) blocks.front().before = kGap;  // the lanes end without a rule
    return blocks;
  }

  qreal notesHeight() const {
    qreal height = 0;
    for (const Block& note : notes()) height += note.height + note.before;
    return height;
  }

  QString furtherText() const {
    QStringList what;
    if (!m_lanesHere) what << Words::tr("limit lanes");
    if (!m_notesHere) what << Words::tr("what the differences hold");
    if (m_content->record.isOfGroups()) what << Words::tr("runs and logs of both groups");
    return desktop::enumerated(what);
  }

  /// Decides what the first page holds: the height of the lanes gives way first, then that of the curves with the
  /// notes closer, then the notes, then the lanes.
  void plan(qreal room) {
    const Block legend = legendBlock();
    const qreal taken = kGap + legend.before + legend.height + tableHeight(m_content->recipes, m_theme, width());
    struct Choice {
      bool lanes, notes, squeezed, joined;
      qreal least;
    };
    for (const Choice& choice :
         {Choice{true, true, false, false, kLeastCurve}, Choice{true, true, true, false, kLeastCurve},
          Choice{true, true, true, true, kLowCurve}, Choice{true, false, false, false, kLeastCurve},
          Choice{true, false, true, false, kLeastCurve}, Choice{false, false, false, false, kLeastCurve}}) {
      m_lanesHere = choice.lanes;
      m_notesHere = choice.notes;
      m_joined = choice.joined;
      m_lanes.setSqueezed(choice.squeezed);
      qreal rest = room - taken - (m_lanesHere ? m_lanes.height() : 0) - (m_notesHere ? notesHeight() : 0);
      if (const QString further = furtherText(); !further.isEmpty()) {
        const Block note = noteBlock({Words::tr("On the next page"), further}, m_theme, width());
        rest -= note.height + note.before;
      }
      m_curve = std::min(rest, kMostCurve);
      if (m_curve >= choice.least) return;
    }
    m_curve = kLeastCurve;
  }

  Block curvesBlock() const {
    Block block;
    block.before = kGap;
    block.height = m_curve;
    block.paint = [content = m_content](QPainter& painter, const QRectF& rect) {
      const auto count = qreal(content->curves.size());
      // The right one has the bands' names beside it and is so much wider.
      const qreal names = count > 1 ? 70 : 0;
      qreal left = rect.left();
      for (std::size_t i = 0; i < content->curves.size(); ++i) {
        const qreal each = (rect.width() - names) / count + (i + 1 == content->curves.size() ? names : 0);
        content->curves[i].paint(painter, QRectF(left, rect.top(), each, rect.height()));
        left += each;
      }
    };
    return block;
  }

  /// The thermocouples of both in one line: marks, and what they are called.
  Block legendBlock() const {
    const QFont font = m_theme.font(11);
    const auto& compared = m_content->compared;
    QList<std::pair<QString, std::size_t>> names;
    for (const auto& pair : compared.pairs) {
      const auto& look = pair.a ? compared.a.looks.looks[*pair.a] : compared.b.looks.looks[*pair.b];
      names << std::pair(look.name, look.style);
    }
    // As many in a line as there is room for.
    struct Placed {
      QString name;
      std::size_t style;
      QPointF at;
      qreal width;
    };
    std::vector<Placed> placed;
    const qreal mark = m_theme.px(14), line = lineHeight(font);
    QPointF at;
    for (const auto& [name, style] : names) {
      const qreal own = std::min(lineWidth(name, font) + 2, width() / 3);
      if (at.x() > 0 && at.x() + mark + 2 + own > width()) at = {0, at.y() + line};
      placed.push_back({name, style, at, own});
      at.rx() += mark + own + 2 * kGap;
    }
    Block block;
    block.height = at.y() + line + 2;
    block.paint = [placed, mark, line, font, theme = m_theme](QPainter& painter, const QRectF& rect) {
      painter.setRenderHint(QPainter::Antialiasing);
      for (const Placed& one : placed) {
        const QPointF from = rect.topLeft() + one.at;
        widgets::paintMarker(painter, from + QPointF(mark / 2, line / 2 + 1), theme.px(3.5),
                             theme.thermocouple(one.style), true, theme.panel, theme);
        paintLine(painter, QRectF(from.x() + mark + 2, from.y(), one.width, line + 2), one.name, font, theme.text);
      }
    };
    return block;
  }

  const Style& m_style;
  widgets::Theme m_theme;
  desktop::Format m_format;
  std::shared_ptr<const ComparePictures> m_content;
  QRectF m_area;
  PaperLanes m_lanes;
  Document m_document;
  bool m_lanesHere = true, m_notesHere = true, m_joined = false;
  qreal m_curve = kMostCurve;
};

}  // namespace

Document compareSheet(const ComparisonRecord& record, const Style& style) { return CompareSheet(record, style).make(); }

}  // namespace ovenwright::sheet
