#pragma once
#include <QRectF>
#include <QString>
#include <functional>
#include <vector>

#include "app/desktop/widgets/theme.h"
#include "app/sheet/record.h"

class QPainter;

namespace ovenwright::sheet {

/// Lengths on paper are in units of 1/96 inch, whatever the printer's resolution.
constexpr qreal kUnitsPerInch = 96;
constexpr qreal kMillimetre = kUnitsPerInch / 25.4;

QSizeF paperSize(Paper paper);  ///< portrait
/// Between the margins and above the footer.
QRectF contentArea(Paper paper);
/// The line at the foot of each page.
QRectF footerArea(Paper paper);

/// Colours and fonts on paper: a Latin family whose figures are tabular first, then a CJK one, both embedded.
/// @param body_px  size of body text in 1/96 inch
widgets::Theme paperTheme(int body_px = 11);

/// Something that stands on a page: a height for a width, and a way to paint it there.
struct Block {
  qreal height = 0;
  qreal before = 0;  ///< room above it, not at a page's top
  std::function<void(QPainter&, const QRectF&)> paint;
};

struct Page {
  struct Placed {
    QRectF rect;
    std::function<void(QPainter&, const QRectF&)> paint;
  };
  std::vector<Placed> blocks;
};

/// A finished sheet: its pages, and what its file says of itself.
struct Document {
  QString title, subject;
  Paper paper = Paper::kA4;
  QString footerLeft, footerMiddle;
  std::vector<Page> pages;
};

/// The whole page, the footer with "Page 2 of 3" too, on a painter whose unit is 1/96 inch.
void paintPage(QPainter& painter, const Document& document, std::size_t page);

/// Puts blocks under each other, page after page; nothing is ever cut: a block that does not fit begins a new page.
class Flow {
 public:
  /// Goes on below `top` of `page`, which is the last of the document.
  Flow(Document& document, qreal top);
  void add(const Block& block);
  qreal room() const;  ///< left on this page
  /// Keeps room at the foot of this page, the ones behind it are whole.
  void reserve(qreal height) { m_reserved = height; }
  qreal top() const { return m_top; }
  void newPage();

 private:
  Document& m_document;
  QRectF m_area;
  qreal m_top, m_reserved = 0;
  bool m_atTop = false;
};

}  // namespace ovenwright::sheet
