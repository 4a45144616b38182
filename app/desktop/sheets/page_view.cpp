#include "app/desktop/sheets/page_view.h"

#include <QKeyEvent>
#include <QPainter>
#include <QtConcurrent>
#include <algorithm>
#include <new>

#include "app/desktop/widgets/glyphs.h"
#include "app/desktop/widgets/theme.h"

namespace ovenwright::desktop {
namespace {

constexpr int kResizing_ms = 80;
constexpr int kLeastWidth_px = 220;
constexpr double kOutdated = 0.5;

/// Null where there is not enough memory for it.
QImage painted(const SheetPages& sheets, int page, QSize pixels) try {
  QImage picture(pixels, QImage::Format_RGB32);
  picture.fill(Qt::white);
  QPainter painter(&picture);
  painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing | QPainter::SmoothPixmapTransform);
  const auto at = sheets.at(page);
  const QSizeF paper = sheet::paperSize(at.sheet.paper);
  painter.scale(pixels.width() / paper.width(), pixels.height() / paper.height());
  sheet::paintPage(painter, at.sheet, at.page);
  return picture;
} catch (const std::bad_alloc&) {
  return {};
}

}  // namespace

PageView::PageView(QWidget* parent) : QWidget(parent) {
  setFocusPolicy(Qt::StrongFocus);
  setAccessibleName(tr("Preview of the sheet"));
  m_later.setSingleShot(true);
  m_later.setInterval(kResizing_ms);
  connect(&m_later, &QTimer::timeout, this, &PageView::repaintPage);
  connect(&m_watcher, &QFutureWatcherBase::finished, this, [this] {
    m_painting = false;
    if (m_watcher.future().resultCount() == 0) return;
    m_picture = m_watcher.result();
    update();
  });
}

PageView::~PageView() {
  m_watcher.disconnect(this);
  m_watcher.waitForFinished();
}

QSize PageView::sizeHint() const {
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  const QSizeF paper = sheet::paperSize(sheet::Paper::kA4);
  const int width = int(theme.px(kLeastWidth_px));
  return {width, int(width * paper.height() / paper.width())};
}

void PageView::setSheets(std::shared_ptr<const SheetPages> sheets) {
  m_sheets = std::move(sheets);
  m_outdated = false;
  m_page = std::clamp(m_page, 0, std::max(0, pages() - 1));
  if (!m_sheets) m_picture = {};
  repaintPage();
  update();
  emit pageChanged();
}

void PageView::showPage(int page) {
  page = std::clamp(page, 0, std::max(0, pages() - 1));
  if (page == m_page) return;
  m_page = page;
  repaintPage();
  emit pageChanged();
}

void PageView::setOutdated(bool outdated) {
  m_outdated = outdated;
  update();
}

QRectF PageView::pageRect() const {
  const QSizeF paper = sheet::paperSize(pages() > 0 ? m_sheets->at(m_page).sheet.paper : sheet::Paper::kA4);
  const QRectF room = QRectF(rect()).adjusted(1, 1, -1, -1);
  const QSizeF size = paper.scaled(room.size(), Qt::KeepAspectRatio);
  return {QPointF(room.center().x() - size.width() / 2, room.top()), size};
}

void PageView::repaintPage() {
  if (m_page >= pages() || width() < 2 || height() < 2) return;
  const QSize pixels = (pageRect().size() * devicePixelRatioF()).toSize();
  if (pixels.isEmpty()) return;
  m_painting = true;
  m_watcher.setFuture(QtConcurrent::run([sheets = m_sheets, page = m_page, pixels] {  // an older one is let go
    return painted(*sheets, page, pixels);
  }));
}

void PageView::paintEvent(QPaintEvent*) {
  if (pages() == 0) return;
  const auto theme = widgets::Theme::fromPalette(palette(), font());
  QPainter painter(this);
  painter.setRenderHint(QPainter::SmoothPixmapTransform);
  const QRectF page = pageRect();
  painter.fillRect(page, Qt::white);
  if (m_outdated) painter.setOpacity(kOutdated);
  if (!m_picture.isNull()) painter.drawImage(page, m_picture);
  painter.setOpacity(1);
  painter.setPen(theme.frame);
  painter.drawRect(page.adjusted(-0.5, -0.5, 0.5, 0.5));
  if (hasFocus()) widgets::paintFocusFrame(painter, page, theme);
}

void PageView::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  m_later.start();
}

void PageView::keyPressEvent(QKeyEvent* event) {
  switch (event->key()) {
    case Qt::Key_PageDown:
    case Qt::Key_Right:
      return showPage(m_page + 1);
    case Qt::Key_PageUp:
    case Qt::Key_Left:
      return showPage(m_page - 1);
    case Qt::Key_Home:
      return showPage(0);
    case Qt::Key_End:
      return showPage(pages() - 1);
    default:
      QWidget::keyPressEvent(event);
  }
}

}  // namespace ovenwright::desktop
