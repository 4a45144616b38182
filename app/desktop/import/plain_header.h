#pragma once
#include <QHeaderView>

#include "app/desktop/widgets/theme.h"

namespace ovenwright::desktop {

/// Headings of what stands in a file: words without frames. Those of columns are links, underlined by what the column
/// was taken for; those of rows are the numbers of the lines.
class PlainHeader : public QHeaderView {
 public:
  using QHeaderView::QHeaderView;
  void setTheme(const widgets::Theme& theme) { m_theme = theme; }
  QSize sizeHint() const override;

 protected:
  void paintSection(QPainter* painter, const QRect& rect, int section) const override;
  QSize sectionSizeFromContents(int section) const override;

 private:
  widgets::Theme m_theme = widgets::Theme::fromPalette(palette(), font());
};

}  // namespace ovenwright::desktop
