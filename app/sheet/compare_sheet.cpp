#include "app/sheet/compare_sheet.h"

#include <QCoreApplication>
#include <QPainter>
#include <algorithm>

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
    m_document.subject = subjectOf(record.a);
    m_document.footerLeft = m_document.title + QStringLiteral(", ") + programText();
    m_document.footerMiddle = madeText(m_style, record.a.archive.has_value());
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
    if (!m_lanesHere) flow.newPage();
    m_lanes.addTo(flow);
    if (!m_notesHere) flow.newPage();
    for (const Block& note : notes()) flow.add(note);
    return std::move(m_document);
  }

 private:
  qreal width() const { return m_area.width(); }

  std::vector<Block> notes() const {
    std::vector<Block> blocks;
    for (const Fact& note : m_content->notes(m_style.locale)) blocks.push_back(noteBlock(note, m_theme, width()));
    if (!blocks.empty()) blocks.front().before = kGap;  // the lanes end without a rule
    return blocks;
  }

  qreal notesHeight() const {
    qreal height = 0;
    for (const Block& note : notes()) height += note.height + note.before;
    return height;
  }

  /// Decides what the first page holds: the height of the lanes gives way first, then the notes, then the lanes.
  void plan(qreal room) {
    const Block legend = legendBlock();
    const qreal taken = kGap + legend.before + legend.height + tableHeight(m_content->recipes, m_theme, width());
    struct Choice {
      bool lanes, notes, squeezed;
    };
    for (const Choice& choice : {Choice{true, true, false}, Choice{true, true, true}, Choice{true, false, false},
                                 Choice{true, false, true}, Choice{false, false, false}}) {
      m_lanesHere = choice.lanes;
      m_notesHere = choice.notes;
      m_lanes.setSqueezed(choice.squeezed);
      const qreal rest = room - taken - (m_lanesHere ? m_lanes.height() : 0) - (m_notesHere ? notesHeight() : 0);
      m_curve = std::min(rest, kMostCurve);
      if (m_curve >= kLeastCurve) return;
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
      const auto& look = pair.a ? compared.a.view->channels()[*pair.a].look : compared.b.view->channels()[*pair.b].look;
      names << std::pair(look.name, look.style);
    }
    Block block;
    block.height = lineHeight(font) + 2;
    block.paint = [names, font, theme = m_theme](QPainter& painter, const QRectF& rect) {
      const qreal mark = theme.px(14), most = rect.width() / qreal(std::max<qsizetype>(1, names.size()));
      qreal x = rect.left();
      painter.setRenderHint(QPainter::Antialiasing);
      for (const auto& [name, style] : names) {
        widgets::paintMarker(painter, {x + mark / 2, rect.top() + rect.height() / 2}, theme.px(3.5),
                             theme.thermocouple(style), true, theme.panel, theme);
        const qreal width = std::min(lineWidth(name, font) + 2, most - mark - kGap);
        paintLine(painter, QRectF(x + mark + 2, rect.top(), width, rect.height()), name, font, theme.text);
        x += mark + width + 2 * kGap;
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
  bool m_lanesHere = true, m_notesHere = true;
  qreal m_curve = kMostCurve;
};

}  // namespace

Document compareSheet(const ComparisonRecord& record, const Style& style) { return CompareSheet(record, style).make(); }

}  // namespace ovenwright::sheet
