#pragma once
#include <QFutureWatcher>
#include <QImage>
#include <QTimer>
#include <QWidget>
#include <memory>

#include "app/desktop/sheets/sheet_pages.h"

namespace ovenwright::desktop {

/// One page of the sheets as it will be printed, as large as the widget allows. Painted off the GUI thread; until that
/// is done the last picture stands, stretched.
class PageView : public QWidget {
  Q_OBJECT
 public:
  explicit PageView(QWidget* parent = nullptr);
  /// Waits for the page that is being painted.
  ~PageView() override;

  /// Null: no page. Stays on the page that is shown where the new sheets have it.
  void setSheets(std::shared_ptr<const SheetPages> sheets);
  const std::shared_ptr<const SheetPages>& sheets() const { return m_sheets; }
  int page() const { return m_page; }  ///< from 0
  int pages() const { return m_sheets ? m_sheets->count() : 0; }
  void showPage(int page);
  /// What is shown is not what is wanted any more: half strength until the next one.
  void setOutdated(bool outdated);
  /// Whether what is on screen is the whole picture of the page.
  bool isPainted() const { return m_sheets && !m_painting && !m_later.isActive(); }
  const QImage& picture() const { return m_picture; }

  QSize sizeHint() const override;

 signals:
  void pageChanged();

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  QRectF pageRect() const;
  void repaintPage();

  std::shared_ptr<const SheetPages> m_sheets;
  int m_page = 0;
  bool m_outdated = false, m_painting = false;
  QImage m_picture;
  QFutureWatcher<QImage> m_watcher;
  QTimer m_later;  // while the widget is being resized
};

}  // namespace ovenwright::desktop
