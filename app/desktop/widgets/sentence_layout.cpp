#include "app/desktop/widgets/sentence_layout.h"

#include <QAbstractTextDocumentLayout>
#include <QPainter>
#include <QRegularExpression>
#include <QTextBlock>
#include <QTextCursor>
#include <QTextDocument>
#include <QTextLayout>
#include <QTextObjectInterface>
#include <algorithm>
#include <array>
#include <cmath>

#include "app/desktop/widgets/glyphs.h"

namespace ovenwright::widgets {
namespace {

enum ObjectKind { kDisc = QTextFormat::UserObject + 1, kSign, kProgress };
enum Property { kNumber = QTextFormat::UserProperty + 1, kLink };

constexpr qreal kSignHeight = 30;  // its limits stand 24 high
constexpr qreal kRightInset = 16;
constexpr qreal kLeastTarget = 24;  // height of what can be clicked

/// Type of the first line, and what is left free around it; smaller where the window is low.
struct Size {
  int type_px;
  qreal line;
  qreal inset;  ///< above and below the text
  qreal signLeft, textLeft;
};
constexpr std::array kSizes{Size{17, 24, 13, 15, 81}, Size{15, 20, 4, 15, 75}, Size{13, 18, 5, 8, 66}};

/// Draws what stands in the text but is no letter.
class Objects : public QObject, public QTextObjectInterface {
  Q_OBJECT
  Q_INTERFACES(QTextObjectInterface)
 public:
  Objects(const Theme& theme, QObject* parent) : QObject(parent), m_theme(theme) {}

  QSizeF intrinsicSize(QTextDocument*, int, const QTextFormat& format) override {
    const QFontMetricsF metrics(format.toCharFormat().font());
    switch (format.objectType()) {
      case kDisc:
        return {m_theme.px(24), metrics.ascent()};
      case kSign:
        return {kSignAspect * signHeight() + m_theme.px(7), metrics.ascent()};
      default:
        return {m_theme.px(172), metrics.ascent()};
    }
  }

  void drawObject(QPainter* painter, const QRectF& rect, QTextDocument*, int, const QTextFormat& format) override {
    const QFontMetricsF metrics(format.toCharFormat().font());
    // The object's box stands on the baseline; capitals are the height to centre on.
    const qreal middle = rect.bottom() - metrics.capHeight() / 2;
    switch (format.objectType()) {
      case kDisc:
        paintDisc(*painter, QPointF(rect.left() + m_theme.px(10), middle), m_theme.px(19),
                  format.property(kNumber).toInt(), m_theme);
        break;
      case kSign:
        paintVerdictSign(*painter,
                         QRectF(rect.left(), middle - signHeight() / 2, kSignAspect * signHeight(), signHeight()),
                         static_cast<judge::Verdict>(format.property(kNumber).toInt()), m_theme);
        break;
      default:
        paintProgress(*painter, QRectF(rect.left(), middle, m_theme.px(160), 0), format.property(kNumber).toDouble());
    }
  }

 private:
  qreal signHeight() const { return m_theme.px(15); }

  void paintProgress(QPainter& painter, const QRectF& line, double fraction) const {
    const qreal half = m_theme.px(2.5);
    const QRectF bar = line.adjusted(0, -half, 0, half);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(m_theme.hairline);
    painter.drawRoundedRect(bar, half, half);
    QRectF done = bar;
    done.setWidth(bar.width() * std::clamp(fraction, 0.0, 1.0));
    painter.setBrush(m_theme.accent);
    painter.drawRoundedRect(done, half, half);
    painter.restore();
  }

  const Theme m_theme;
};

QTextCharFormat formatOf(const SentenceRun& run, const Theme& theme, int design_px, const QColor& ink) {
  QTextCharFormat format;
  format.setFont(theme.font(design_px, run.strong));
  format.setForeground(run.signal ? theme.signal : run.strong ? theme.text : ink);
  if (run.link) {
    format.setForeground(theme.accent);
    format.setFontUnderline(true);
    format.setProperty(kLink, *run.link);
  }
  return format;
}

/// "°C/s" and "8–10" in one piece where a line ends; on paper as they are, to be found by a search.
QString unbroken(QString text, const Theme& theme) {
  if (theme.kind == Theme::Kind::kPrint) return text;
  static const QRegularExpression range(QStringLiteral("(?<=[0-9])–(?=[0-9])"));
  text.replace(QStringLiteral("/s"), QStringLiteral("/\u2060s"));
  return text.replace(range, QStringLiteral("\u2060–\u2060"));
}

void insert(QTextCursor& cursor, const SentenceRun& run, const QTextCharFormat& format, const Theme& theme) {
  const auto object = [&](int kind, const QVariant& value) {
    QTextCharFormat f = format;
    f.setObjectType(kind);
    f.setProperty(kNumber, value);
    f.setFontUnderline(false);
    f.clearProperty(kLink);
    cursor.insertText(QString(QChar::ObjectReplacementCharacter), f);
  };
  if (run.disc > 0) object(kDisc, run.disc);
  if (run.sign) object(kSign, int(*run.sign));
  if (run.progress) object(kProgress, *run.progress);
  cursor.insertText(unbroken(run.text, theme), format);
}

void setLine(QTextCursor& cursor, const QList<SentenceRun>& runs, const Theme& theme, int design_px, qreal lineHeight,
             const QColor& ink, bool newBlock) {
  QTextBlockFormat block;
  block.setLineHeight(theme.px(lineHeight), QTextBlockFormat::MinimumHeight);
  if (newBlock) {
    block.setTopMargin(theme.px(3));
    cursor.insertBlock(block);
  } else {
    cursor.setBlockFormat(block);
  }
  for (const SentenceRun& run : runs) insert(cursor, run, formatOf(run, theme, design_px, ink), theme);
}

std::unique_ptr<QTextDocument> documentOf(const SentenceContent& content, const QList<SentenceRun>& second,
                                          const Theme& theme, qreal width, const Size& size) {
  auto document = std::make_unique<QTextDocument>();
  document->setDocumentMargin(0);
  document->setUndoRedoEnabled(false);
  auto* objects = new Objects(theme, document.get());
  for (const int kind : {int(kDisc), int(kSign), int(kProgress)})
    document->documentLayout()->registerHandler(kind, objects);
  document->setTextWidth(width);
  QTextCursor cursor(document.get());
  setLine(cursor, content.first, theme, size.type_px, size.line, content.muted ? theme.secondary : theme.text, false);
  if (!second.isEmpty()) setLine(cursor, second, theme, 13, 18, theme.secondary, true);
  return document;
}

/// Where a line ends on a disc or a sign, it goes to the next line, to what it stands for.
void moveSignsOn(QTextDocument& document) {
  for (QTextBlock block = document.begin(); block.isValid(); block = block.next()) {
    for (int i = 0; i + 1 < block.layout()->lineCount(); ++i) {
      const QTextLine line = block.layout()->lineAt(i);
      const int last = line.textStart() + line.textLength() - 1;
      if (block.text().at(last) != QChar::ObjectReplacementCharacter || last == line.textStart()) continue;
      QTextCursor cursor(block);
      cursor.setPosition(block.position() + last);
      cursor.insertText(QString(QChar::LineSeparator), QTextCharFormat());
      document.size();  // lays it out anew
    }
  }
}

int lineCount(const QTextBlock& block) { return block.layout() ? block.layout()->lineCount() : 0; }

QList<SentenceRun> withoutDispensable(const QList<SentenceRun>& line) {
  QList<SentenceRun> kept;
  for (const SentenceRun& run : line)
    if (!run.dispensable) kept << run;
  return kept;
}

}  // namespace

SentenceLayout::SentenceLayout(const SentenceContent& content, const Theme& theme, qreal width, qreal mostHeight)
    : m_content(content), m_theme(theme) {
  place(width, mostHeight);
}

SentenceLayout::~SentenceLayout() = default;
SentenceLayout::SentenceLayout(SentenceLayout&&) noexcept = default;
SentenceLayout& SentenceLayout::operator=(SentenceLayout&&) noexcept = default;

void SentenceLayout::place(qreal width, qreal mostHeight) {
  for (std::size_t size = 0; size < kSizes.size(); ++size) {
    setText(width, size);
    if (mostHeight <= 0 || m_height <= mostHeight) break;
  }
  placeLinks();
}

void SentenceLayout::setText(qreal width, std::size_t index) {
  const Size& size = kSizes[index];
  const bool sign = m_content.signKind != SentenceContent::Sign::kNone;
  m_textAt = QPointF(m_theme.px(sign ? size.textLeft : kRightInset), m_theme.px(size.inset));
  const qreal textWidth = std::max(m_theme.px(60), width - m_textAt.x() - m_theme.px(kRightInset));
  const auto set = [&](const QList<SentenceRun>& second) {
    m_document = documentOf(m_content, second, m_theme, textWidth, size);
    m_document->size();  // lays it out
    moveSignsOn(*m_document);
  };
  set(m_content.second);
  if (!m_content.secondShort.isEmpty() && lineCount(m_document->lastBlock()) > 1) {
    set(m_content.secondShort);
    if (index > 0 && lineCount(m_document->lastBlock()) > 1) set(withoutDispensable(m_content.secondShort));
  }
  m_height = std::ceil(m_textAt.y() + m_document->size().height() + m_theme.px(size.inset));
  const QTextLayout* first = m_document->firstBlock().layout();
  const qreal lineHeight = first->lineCount() > 0 ? first->lineAt(0).height() : m_theme.px(size.line);
  const qreal height = m_theme.px(kSignHeight);
  m_signRect = QRectF(m_theme.px(size.signLeft),
                      std::max(m_theme.px(2), m_textAt.y() + lineHeight / 2 - height / 2 + m_theme.px(2)),
                      kSignAspect * height, height);
}

void SentenceLayout::placeLinks() {
  m_linkRects.assign(std::size_t(m_content.links.size()), {});
  for (QTextBlock block = m_document->begin(); block.isValid(); block = block.next()) {
    const QPointF at = m_document->documentLayout()->blockBoundingRect(block).topLeft() + m_textAt;
    for (auto it = block.begin(); !it.atEnd(); ++it) {
      const QTextFragment fragment = it.fragment();
      if (!fragment.charFormat().hasProperty(kLink)) continue;
      const int link = fragment.charFormat().property(kLink).toInt();
      const int from = fragment.position() - block.position();
      const int to = from + fragment.length();
      if (m_linkRects[std::size_t(link)].empty()) m_linkOrder.push_back(link);
      for (int i = 0; i < block.layout()->lineCount(); ++i) {
        const QTextLine line = block.layout()->lineAt(i);
        const int lineTo = line.textStart() + line.textLength();
        if (to <= line.textStart() || from >= lineTo) continue;
        const qreal left = line.cursorToX(std::max(from, line.textStart()));
        const qreal right = to >= lineTo ? line.naturalTextRect().right() : line.cursorToX(to);
        m_linkRects[std::size_t(link)].push_back(QRectF(at.x() + left, at.y() + line.y(), right - left, line.height()));
      }
    }
  }
}

int SentenceLayout::linkAt(const QPointF& point) const {
  for (std::size_t link = 0; link < m_linkRects.size(); ++link) {
    for (const QRectF& rect : m_linkRects[link]) {
      const qreal more = std::max(0.0, (m_theme.px(kLeastTarget) - rect.height()) / 2);
      if (rect.adjusted(0, -more, 0, more).contains(point)) return int(link);
    }
  }
  return -1;
}

void SentenceLayout::paint(QPainter& painter, const QPointF& topLeft, int focusedLink) const {
  painter.save();
  painter.translate(topLeft);
  if (m_content.signKind == SentenceContent::Sign::kVerdict)
    paintVerdictSign(painter, m_signRect, m_content.verdict, m_theme);
  else if (m_content.signKind == SentenceContent::Sign::kPale)
    paintVerdictSign(painter, m_signRect, std::nullopt, m_theme);
  else if (m_content.signKind == SentenceContent::Sign::kBarred)
    paintBarredSign(painter, m_signRect, m_theme);
  painter.save();
  painter.translate(m_textAt);
  QAbstractTextDocumentLayout::PaintContext context;
  context.palette.setColor(QPalette::Text, m_theme.text);
  m_document->documentLayout()->draw(&painter, context);
  painter.restore();
  if (focusedLink >= 0 && focusedLink < linkCount())
    for (const QRectF& rect : linkRects(focusedLink))
      paintFocusFrame(painter, rect.adjusted(-m_theme.px(3), -m_theme.px(1), m_theme.px(3), m_theme.px(1)), m_theme);
  painter.restore();
}

void paintSentence(QPainter& painter, const QRectF& area, const SentenceContent& content, const Theme& theme) {
  SentenceLayout(content, theme, area.width()).paint(painter, area.topLeft());
}

}  // namespace ovenwright::widgets

#include "sentence_layout.moc"
