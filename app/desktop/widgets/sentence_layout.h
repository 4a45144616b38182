#pragma once
#include <QRectF>
#include <memory>
#include <vector>

#include "app/desktop/widgets/sentence_content.h"
#include "app/desktop/widgets/theme.h"

class QPainter;
class QTextDocument;

namespace ovenwright::widgets {

/// A sentence set for one width: its verdict sign at the left, the text as a QTextDocument beside it.
class SentenceLayout {
 public:
  /// @param mostHeight  where the sentence would be higher, its type falls by steps to that of the body and its second
  ///                    line to what cannot be seen elsewhere; what is higher still stays so. 0: as high as it needs
  SentenceLayout(const SentenceContent& content, const Theme& theme, qreal width, qreal mostHeight = 0);
  ~SentenceLayout();
  SentenceLayout(SentenceLayout&&) noexcept;
  SentenceLayout& operator=(SentenceLayout&&) noexcept;

  qreal height() const { return m_height; }
  /// The rectangles of a link, one for each line that it runs over; in the layout's coordinates.
  const std::vector<QRectF>& linkRects(int link) const { return m_linkRects[std::size_t(link)]; }
  int linkCount() const { return int(m_linkRects.size()); }
  /// Links that are shown, in reading order: a short second line leaves some out.
  const std::vector<int>& linkOrder() const { return m_linkOrder; }
  int linkAt(const QPointF& point) const;  ///< −1: none
  void paint(QPainter& painter, const QPointF& topLeft, int focusedLink = -1) const;

 private:
  void place(qreal width, qreal mostHeight);
  void setText(qreal width, std::size_t size);
  void placeLinks();

  SentenceContent m_content;
  Theme m_theme;
  std::unique_ptr<QTextDocument> m_document;
  QPointF m_textAt;
  QRectF m_signRect;
  qreal m_height = 0;
  std::vector<std::vector<QRectF>> m_linkRects;
  std::vector<int> m_linkOrder;
};

/// The whole block into `area`, from its top; the sheet calls the same.
void paintSentence(QPainter& painter, const QRectF& area, const SentenceContent& content, const Theme& theme);

}  // namespace ovenwright::widgets
