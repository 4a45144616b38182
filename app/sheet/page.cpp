#include "app/sheet/page.h"

#include <QCoreApplication>
#include <QPainter>

#include "app/sheet/paragraph.h"

namespace ovenwright::sheet {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Sheet)
};

constexpr qreal kMargin = 12 * kMillimetre;
constexpr qreal kFooter = 20;

}  // namespace

QSizeF paperSize(Paper paper) {
  return paper == Paper::kA4 ? QSizeF(210 * kMillimetre, 297 * kMillimetre)
                             : QSizeF(8.5 * kUnitsPerInch, 11 * kUnitsPerInch);
}

QRectF contentArea(Paper paper) {
  return QRectF(QPointF(0, 0), paperSize(paper)).adjusted(kMargin, kMargin, -kMargin, -kMargin - kFooter);
}

QRectF footerArea(Paper paper) {
  const QRectF content = contentArea(paper);
  return {content.left(), content.bottom(), content.width(), kFooter};
}

widgets::Theme paperTheme(int body_px) {
  QFont font;
  font.setFamilies(
      {QStringLiteral("Liberation Sans"), QStringLiteral("WenQuanYi Micro Hei"), QStringLiteral("DejaVu Sans")});
  font.setHintingPreference(QFont::PreferNoHinting);  // widths in a vector file are not those of a screen's pixels
  font.setPixelSize(body_px);
  auto theme = widgets::Theme::print(font);
  theme.secondary = QColor(0x33, 0x3B, 0x42);
  return theme;
}

void paintPage(QPainter& painter, const Document& document, std::size_t page) {
  for (const auto& placed : document.pages[page].blocks) {
    painter.save();
    placed.paint(painter, placed.rect);
    painter.restore();
  }
  const auto theme = paperTheme();
  const QRectF area = footerArea(document.paper);
  painter.setPen(QPen(theme.frame, theme.line(1)));
  painter.drawLine(area.topLeft() + QPointF(0, 4), area.topRight() + QPointF(0, 4));
  const QRectF line = area.adjusted(0, 7, 0, 0);
  const QString number = Words::tr("Page %1 of %2").arg(page + 1).arg(document.pages.size());
  const QFont font = theme.font(11);
  paintLine(painter, line, document.footerLeft, font, theme.secondary, Qt::AlignLeft);
  paintLine(painter, line.adjusted(line.width() * 0.2, 0, -line.width() * 0.2, 0), document.footerMiddle, font,
            theme.secondary, Qt::AlignHCenter);
  paintLine(painter, line, number, font, theme.secondary, Qt::AlignRight);
}

Flow::Flow(Document& document, qreal top) : m_document(document), m_area(contentArea(document.paper)), m_top(top) {}

void Flow::newPage() {
  m_document.pages.emplace_back();
  m_top = m_area.top();
  m_reserved = 0;
  m_atTop = true;
}

qreal Flow::room() const { return m_area.bottom() - m_reserved - m_top; }

void Flow::add(const Block& block) {
  constexpr qreal kRounding = 0.01;  // of heights that were summed up to fill the page
  if (!m_atTop && block.before + block.height > room() + kRounding) newPage();
  if (!m_atTop) m_top += block.before;
  m_document.pages.back().blocks.push_back({QRectF(m_area.left(), m_top, m_area.width(), block.height), block.paint});
  m_top += block.height;
  m_atTop = false;
}

}  // namespace ovenwright::sheet
