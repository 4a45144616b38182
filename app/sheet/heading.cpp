#include "app/sheet/heading.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QImageReader>
#include <QPainter>
#include <QSvgRenderer>
#include <algorithm>
#include <memory>

#include "app/desktop/text/paragraph.h"
#include "app/desktop/widgets/sentence_layout.h"
#include "app/sheet/legible.h"
#include "app/sheet/paragraph.h"

namespace ovenwright::sheet {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Sheet)
};

constexpr qreal kGap = 8;
constexpr qreal kLogoHeight = 40, kLogoWidth = 150;

/// The logo as it is painted: an SVG stays a drawing.
struct Logo {
  explicit Logo(const QByteArray& bytes) {
    if (bytes.isEmpty()) return;
    auto renderer = std::make_unique<QSvgRenderer>(bytes);
    if (renderer->isValid()) {
      svg = std::move(renderer);
      size = svg->defaultSize();
    } else {
      image = QImage::fromData(bytes);
      size = image.size();
    }
    size.scale(kLogoWidth, kLogoHeight, Qt::KeepAspectRatio);
  }
  bool isNull() const { return size.isEmpty(); }
  void paint(QPainter& painter, const QPointF& at) const {
    const QRectF rect(at, size);
    if (svg)
      svg->render(&painter, rect);
    else
      painter.drawImage(rect, image);
  }
  std::unique_ptr<QSvgRenderer> svg;
  QImage image;
  QSizeF size;
};

struct PlacedFact {
  QRectF label;
  Paragraph value;
  QPointF at;
  QString text;
};

}  // namespace

Block headingBlock(const Style& style, const QString& title, const QString& subject, const QStringList& asides,
                   const widgets::Theme& theme, qreal width) {
  const auto logo = std::make_shared<const Logo>(style.logo);
  const QFont small = theme.font(13), strong = theme.font(15, true), large = theme.font(26, true);
  const QString company = legible(style.company, kMostCompany);
  const qreal left = company.isEmpty() ? 0 : lineHeight(small);
  const qreal right = lineHeight(strong) + qreal(asides.size()) * lineHeight(small);
  Block block;
  block.height = std::max({left + lineHeight(large), right, logo->isNull() ? 0 : logo->size.height()}) + 8;
  block.paint = [=](QPainter& painter, const QRectF& rect) {
    qreal x = rect.left();
    if (!logo->isNull()) {
      logo->paint(painter, rect.topLeft());
      x += logo->size.width() + kGap;
    }
    const qreal half = width * 0.58 - (x - rect.left());
    paintLine(painter, QRectF(x, rect.top(), half, left), company, small, theme.secondary);
    paintLine(painter, QRectF(x, rect.top() + left, half, 40), title, large, theme.text);
    qreal y = rect.top();
    const QRectF at(rect.left() + width * 0.6, y, width * 0.4, 20);
    paintLine(painter, at, subject, strong, theme.text, Qt::AlignRight);
    y += lineHeight(strong);
    for (const QString& aside : asides) {
      paintLine(painter, QRectF(at.left(), y, at.width(), 20), aside, small, theme.secondary, Qt::AlignRight);
      y += lineHeight(small);
    }
    painter.setPen(QPen(theme.text, 1.5));
    painter.drawLine(rect.bottomLeft(), rect.bottomRight());
  };
  return block;
}

Block sentenceBlock(const widgets::SentenceContent& content, const widgets::Theme& theme, qreal width) {
  // Nothing leads anywhere on paper.
  auto plain = content;
  for (auto* line : {&plain.first, &plain.second, &plain.secondShort})
    for (auto& run : *line) run.link.reset();
  const auto layout = std::make_shared<widgets::SentenceLayout>(plain, theme, width);
  Block block;
  block.before = 4;
  block.height = layout->height();
  block.paint = [layout](QPainter& painter, const QRectF& rect) { layout->paint(painter, rect.topLeft()); };
  return block;
}

Block factsBlock(const QList<Fact>& facts, const QList<LogFact>& logs, const widgets::Theme& theme, qreal width) {
  const QFont font = theme.font(12);
  const qreal line = lineHeight(font);
  qreal labels = 0;
  for (const Fact& fact : facts) labels = std::max(labels, lineWidth(fact.label, font));
  labels = std::min(labels, width * 0.2) + kGap;
  const qreal column = (width - 2 * kGap) / 2;
  auto placed = std::make_shared<std::vector<PlacedFact>>();
  // Read down the left column, then down the right one.
  const qsizetype half = (facts.size() + 1) / 2;
  qreal lefts = 0, rights = 0;
  constexpr int kMostLines = 3;
  for (qsizetype i = 0; i < facts.size(); ++i) {
    const bool left = i < half;
    qreal& y = left ? lefts : rights;
    const qreal x = left ? 0 : column + 2 * kGap;
    Paragraph value(facts[i].value, font, column - labels, kMostLines);
    const qreal height = value.height();
    placed->push_back({QRectF(x, y, labels - kGap, line), std::move(value), {x + labels, y}, facts[i].label});
    y += height + 1;
  }
  const qreal top = std::max(lefts, rights);
  Block block;
  block.before = 4;
  const qreal logLine = line + 1;
  block.height = top + logLine * qreal(logs.size()) + 8;
  block.paint = [=](QPainter& painter, const QRectF& rect) {
    painter.setPen(QPen(theme.frame, theme.line(1)));
    painter.drawLine(rect.topLeft(), rect.topRight());
    painter.drawLine(rect.bottomLeft(), rect.bottomRight());
    const QPointF origin = rect.topLeft() + QPointF(0, 4);
    for (const PlacedFact& fact : *placed) {
      paintLine(painter, fact.label.translated(origin), fact.text, font, theme.secondary);
      fact.value.paint(painter, origin + fact.at, theme.text);
    }
    qreal y = origin.y() + top;
    for (const LogFact& log : logs) {
      const QFont digestFont = theme.font(11);
      const QString digest = QStringLiteral("SHA-256  ") + log.sha256;
      const qreal digestWidth = lineWidth(digest, digestFont);
      paintLine(painter, QRectF(rect.left(), y, labels - kGap, line), Words::tr("Log"), font, theme.secondary);
      paintLine(painter, QRectF(rect.left() + labels, y, rect.width() - labels - digestWidth - kGap, line), log.file,
                font, theme.text);
      paintLine(painter, QRectF(rect.right() - digestWidth, y, digestWidth + 1, line), digest, digestFont, theme.text,
                Qt::AlignRight);
      y += logLine;
    }
  };
  return block;
}

Block captionBlock(const QString& text, const widgets::Theme& theme) {
  const QFont font = theme.font(13, true);
  Block block;
  block.before = kGap;
  block.height = lineHeight(font) + 2;
  block.paint = [=](QPainter& painter, const QRectF& rect) { paintLine(painter, rect, text, font, theme.text); };
  return block;
}

Block noteBlock(const Fact& note, const widgets::Theme& theme, qreal width) {
  const QFont font = theme.font(11);
  constexpr int kMostLines = 60;  // less than a page
  const auto text =
      std::make_shared<const Paragraph>(Words::tr("%1: %2").arg(note.label, note.value), font, width, kMostLines);
  Block block;
  block.before = 2;
  block.height = text->height();
  block.paint = [text, color = theme.secondary](QPainter& painter, const QRectF& rect) {
    text->paint(painter, rect.topLeft(), color);
  };
  return block;
}

QList<Fact> inOneParagraph(const QList<Fact>& notes) {
  if (notes.size() < 2) return notes;
  QStringList all{notes.front().value};
  for (const Fact& note : notes.mid(1)) all << Words::tr("%1: %2").arg(note.label, note.value);
  return {{notes.front().label, desktop::paragraph(all)}};
}

Block cautionsBlock(const widgets::Theme& theme, qreal width, std::function<void(QPainter&, const QRectF&)> picture) {
  constexpr qreal kPicture = 116, kBar = 3, kInset = 10;
  const qreal beside = picture ? kPicture * 1.15 + kGap * 2 : 0;
  const QFont font = theme.font(12), strong = theme.font(12, true);
  auto texts = std::make_shared<std::vector<Paragraph>>();
  qreal height = lineHeight(strong);
  for (const QString& caution : cautions()) {
    texts->emplace_back(caution, font, width - kInset - beside);
    height += texts->back().height() + 2;
  }
  Block block;
  block.before = kGap;
  block.height = picture ? std::max(height, kPicture - 20) : height;
  block.paint = [=](QPainter& painter, const QRectF& rect) {
    painter.fillRect(QRectF(rect.left(), rect.top(), kBar, height), theme.secondary);
    paintLine(painter, QRectF(rect.left() + kInset, rect.top(), width, 20), cautionsTitle(), strong, theme.text);
    qreal y = rect.top() + lineHeight(strong);
    for (const Paragraph& text : *texts) {
      text.paint(painter, {rect.left() + kInset, y}, theme.text);
      y += text.height() + 2;
    }
    if (picture) {
      const qreal side = beside - kGap * 2;
      picture(painter, QRectF(rect.right() - side, rect.top(), side, rect.height()));
    }
  };
  return block;
}

Block signatureBlock(const widgets::Theme& theme) {
  constexpr qreal kRoom = 26;  // to sign in
  const QFont font = theme.font(12);
  Block block;
  block.height = kRoom + lineHeight(font) + 2;
  block.paint = [=](QPainter& painter, const QRectF& rect) {
    const QStringList titles{Words::tr("Checked by, date"), Words::tr("Released by, date"), Words::tr("Remarks")};
    const qreal width = (rect.width() - 2 * 3 * kGap) / 3;
    for (qsizetype i = 0; i < titles.size(); ++i) {
      const QRectF at(rect.left() + qreal(i) * (width + 3 * kGap), rect.top() + kRoom, width, 20);
      painter.setPen(QPen(theme.text, theme.line(1)));
      painter.drawLine(at.topLeft(), at.topRight());
      paintLine(painter, at.translated(0, 2), titles[i], font, theme.secondary);
    }
  };
  return block;
}

void addFoot(Document& document, Flow& flow, const widgets::Theme& theme,
             std::function<void(QPainter&, const QRectF&)> picture) {
  const QRectF area = contentArea(document.paper);
  const Block signature = signatureBlock(theme);
  const Block caution = cautionsBlock(theme, area.width(), std::move(picture));
  auto& blocks = document.pages.back().blocks;
  qreal y = area.bottom() - signature.height;
  blocks.push_back({QRectF(area.left(), y, area.width(), signature.height), signature.paint});
  y -= caution.height;
  blocks.push_back({QRectF(area.left(), y, area.width(), caution.height), caution.paint});
  flow.reserve(area.bottom() - y + caution.before);
}

QString madeText(const Style& style, bool fromArchive) {
  if (!style.printedAt.isValid()) return {};
  const QString when = momentText(style.printedAt, style.locale);
  return fromArchive ? Words::tr("Made %1 from the archive").arg(when) : Words::tr("Made %1").arg(when);
}

}  // namespace ovenwright::sheet
