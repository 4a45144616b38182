#include "app/desktop/widgets/lot_lane.h"

#include <QCoreApplication>
#include <QEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "app/desktop/widgets/accessible_grid.h"
#include "app/desktop/widgets/lane_scale.h"
#include "app/desktop/widgets/wording.h"

namespace ovenwright::widgets {
namespace {

constexpr double kSigmas = 3;
constexpr qreal kHeader_px = 20, kBody_px = 66, kLimit_px = 50;
constexpr qreal kTick_px = 1.1, kTickHeight_px = 17, kBar_px = 6, kMark_px = 4, kCap_px = 7;
constexpr qreal kTracks_px[] = {14, 35, 52};  // middles, from the body's top

struct Words {
  Q_DECLARE_TR_FUNCTIONS(LotLane)
};

class LotLanePainter {
 public:
  LotLanePainter(QPainter& painter, const QRectF& area, const LotLaneContent& content, const Theme& theme)
      : m_painter(painter),
        m_area(area),
        m_content(content),
        m_theme(theme),
        m_scale(LaneScale::make(content.lower, content.upper, content.target)) {
    const qreal limit = theme.px(kLimit_px);
    m_body = QRectF(area.left() + limit, area.top() + theme.px(kHeader_px), std::max(area.width() - 2 * limit, 1.0),
                    theme.px(kBody_px));
    m_lane = {m_body.left(), m_body.right()};
  }

  void paint() {
    ground();
    header();
    limits();
    if (!m_scale) return;
    m_painter.save();
    m_painter.setClipRect(m_body, Qt::IntersectClip);
    runs();
    mean();
    tolerance();
    m_painter.restore();
  }

 private:
  qreal x(double value) const { return m_lane.clampedX(m_scale->position(value)); }
  qreal track(int index) const { return m_body.top() + m_theme.px(kTracks_px[index]); }

  void ground() {
    QRectF inside = m_body;
    if (m_content.lower) inside.setLeft(m_lane.x(-1));
    if (m_content.upper) inside.setRight(m_lane.x(1));
    m_painter.fillRect(m_body, m_theme.outside);
    m_painter.fillRect(inside, m_theme.panel);
    m_painter.setPen(QPen(m_theme.hairline, m_theme.line(1)));
    m_painter.setBrush(Qt::NoBrush);
    const qreal half = m_theme.line(1) / 2;
    m_painter.drawRect(m_body.adjusted(half, half, -half, -half));
  }

  void limits() {
    QPen dots(m_theme.frame, m_theme.line(1));
    dots.setCapStyle(Qt::FlatCap);
    dots.setDashPattern({1, 3});
    m_painter.setPen(dots);
    m_painter.drawLine(QPointF(m_lane.center(), m_body.top()), QPointF(m_lane.center(), m_body.bottom()));
    QPen line(m_theme.text, m_theme.line(1.6));
    line.setCapStyle(Qt::FlatCap);
    m_painter.setPen(line);
    if (m_content.lower)
      m_painter.drawLine(QPointF(m_lane.x(-1), m_body.top()), QPointF(m_lane.x(-1), m_body.bottom()));
    if (m_content.upper) m_painter.drawLine(QPointF(m_lane.x(1), m_body.top()), QPointF(m_lane.x(1), m_body.bottom()));
    m_painter.setFont(m_theme.bodyFont());
    m_painter.setPen(m_theme.text);
    const qreal gap = m_theme.px(8);
    const auto or_none = [](const QString& text) { return text.isEmpty() ? QStringLiteral("–") : text; };
    m_painter.drawText(QRectF(m_area.left(), m_body.top(), m_body.left() - m_area.left() - gap, m_body.height()),
                       Qt::AlignRight | Qt::AlignVCenter, or_none(m_content.lowerText));
    m_painter.drawText(
        QRectF(m_body.right() + gap, m_body.top(), m_area.right() - m_body.right() - gap, m_body.height()),
        Qt::AlignLeft | Qt::AlignVCenter, or_none(m_content.upperText));
  }

  void header() {
    const auto centred = [&](qreal at, const QString& text, bool bold) {
      const QFont font = m_theme.font(11, bold);
      const qreal width = QFontMetricsF(font).horizontalAdvance(text) + 2;
      m_painter.setFont(font);
      m_painter.setPen(bold ? m_theme.text : m_theme.secondary);
      m_painter.drawText(QRectF(at - width / 2, m_area.top(), width, m_theme.px(kHeader_px)), Qt::AlignCenter, text);
      return std::pair(at - width / 2, at + width / 2);
    };
    const auto lower = centred(m_lane.x(-1), Words::tr("lower limit"), true);
    const auto upper = centred(m_lane.x(1), Words::tr("upper limit"), true);
    const Wording wording;
    const QString half = wording.percent(0.5);
    const QString whole = Wording::tr("margin %1", "scale above the lanes").arg(wording.percent(1));
    const QFontMetricsF small(m_theme.font(11));
    const qreal room = m_theme.px(8), middle = small.horizontalAdvance(whole) / 2,
                side = small.horizontalAdvance(half) / 2;
    const qreal left = m_lane.x(-0.5), right = m_lane.x(0.5), center = m_lane.center();
    if (center - middle > lower.second + room && center + middle < upper.first - room) centred(center, whole, false);
    if (left - side < lower.second + room || right + side > upper.first - room) return;
    if (left + side > center - middle - room) return;
    centred(left, half, false);
    centred(right, half, false);
  }

  /// The name of a track on free ground beside what is drawn from x0 to x1; left out where there is none: false.
  bool name(int index, qreal x0, qreal x1, const QString& text) {
    const QFont font = m_theme.font(12);
    const qreal width = QFontMetricsF(font).horizontalAdvance(text) + 2, gap = m_theme.px(10);
    // Not across a limit.
    QList<qreal> walls{m_body.left(), m_body.right()};
    if (m_content.lower) walls << m_lane.x(-1);
    if (m_content.upper) walls << m_lane.x(1);
    const auto fits = [&](qreal from, qreal to) {
      if (from < m_body.left() || to > m_body.right()) return false;
      return std::ranges::none_of(walls, [&](qreal wall) { return wall > from && wall < to; });
    };
    qreal from = x1 + gap;
    if (!fits(from, from + width)) from = x0 - gap - width;
    if (!fits(from, from + width)) return false;
    m_painter.setFont(font);
    m_painter.setPen(m_theme.secondary);
    const qreal height = QFontMetricsF(font).height();
    m_painter.drawText(QRectF(from, track(index) - height / 2, width, height), Qt::AlignLeft | Qt::AlignVCenter, text);
    return true;
  }

  void runs() {
    if (m_content.values.empty()) return;
    const qreal half = m_theme.px(kTickHeight_px) / 2;
    QPen pen(m_theme.accent, m_theme.line(kTick_px));
    pen.setCapStyle(Qt::FlatCap);
    m_painter.setPen(pen);
    m_painter.setRenderHint(QPainter::Antialiasing);
    for (const double value : m_content.values)
      m_painter.drawLine(QPointF(x(value), track(0) - half), QPointF(x(value), track(0) + half));
    const auto [low, high] = std::ranges::minmax(m_content.values);
    name(0, x(low), x(high), Words::tr("each of the %n run(s)", nullptr, int(m_content.values.size())));
  }

  void mean() {
    if (!m_content.mean) return;
    const double spread = kSigmas * m_content.sd.value_or(0);
    const qreal x0 = x(*m_content.mean - spread), x1 = x(*m_content.mean + spread), half = m_theme.px(kBar_px) / 2;
    m_painter.fillRect(QRectF(QPointF(x0, track(1) - half), QPointF(x1, track(1) + half)), m_theme.frame);
    m_painter.setPen(Qt::NoPen);
    m_painter.setBrush(m_theme.accent);
    const qreal radius = m_theme.px(kMark_px);
    m_painter.drawEllipse(QPointF(x(*m_content.mean), track(1)), radius, radius);
    m_painter.setBrush(Qt::NoBrush);
    name(1, std::min(x0, x(*m_content.mean) - radius), std::max(x1, x(*m_content.mean) + radius),
         m_content.sd ? Words::tr("mean and ± 3 s") : Words::tr("mean"));
  }

  void tolerance() {
    if (!m_content.tolerance) return;
    const qreal x0 = x((*m_content.tolerance)[0]), x1 = x((*m_content.tolerance)[1]), cap = m_theme.px(kCap_px) / 2;
    QPen pen(m_theme.text, m_theme.line(1.3));
    pen.setCapStyle(Qt::FlatCap);
    m_painter.setPen(pen);
    m_painter.drawLine(QPointF(x0, track(2)), QPointF(x1, track(2)));
    for (const qreal at : {x0, x1}) m_painter.drawLine(QPointF(at, track(2) - cap), QPointF(at, track(2) + cap));
    if (!name(2, x0, x1, Words::tr("95 % of runs, with 95 % confidence"))) name(2, x0, x1, Words::tr("95 % of runs"));
  }

  QPainter& m_painter;
  QRectF m_area;
  const LotLaneContent& m_content;
  const Theme& m_theme;
  std::optional<LaneScale> m_scale;
  QRectF m_body;
  LaneBody m_lane;
};

}  // namespace

bool LotLaneContent::hasScale() const { return LaneScale::make(lower, upper, target).has_value(); }

qreal lotLaneHeight(const Theme& theme) { return theme.px(kHeader_px + kBody_px); }

void paintLotLane(QPainter& painter, const QRectF& area, const LotLaneContent& content, const Theme& theme) {
  painter.save();
  LotLanePainter(painter, area, content, theme).paint();
  painter.restore();
}

LotLane::LotLane(QWidget* parent) : QWidget(parent), m_theme(Theme::fromPalette(palette(), font())) {
  installAccessibility();
  setAccessibleName(tr("Lane of the lot"));
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void LotLane::setContent(LotLaneContent content) {
  m_content = std::move(content);
  setAccessibleDescription(m_content.description);
  setToolTip(m_content.description.toHtmlEscaped());
  update();
}

QSize LotLane::sizeHint() const { return {int(m_theme.px(560)), int(std::ceil(lotLaneHeight(m_theme)))}; }
QSize LotLane::minimumSizeHint() const { return {int(m_theme.px(240 + 2 * kLimit_px)), sizeHint().height()}; }

void LotLane::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  paintLotLane(painter, rect(), m_content, m_theme);
}

void LotLane::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) {
    m_theme = Theme::fromPalette(palette(), font());
    updateGeometry();
    update();
  }
  QWidget::changeEvent(event);
}

}  // namespace ovenwright::widgets
