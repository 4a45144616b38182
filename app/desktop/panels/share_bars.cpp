#include "app/desktop/panels/share_bars.h"

#include <QPainter>
#include <algorithm>

#include "app/desktop/text/format.h"
#include "app/desktop/widgets/glyphs.h"

namespace ovenwright::desktop {
namespace {

constexpr double kRow_px = 18, kBar_px = 9, kGap_px = 10;

}  // namespace

ShareBars::ShareBars(QWidget* parent) : QWidget(parent), m_theme(widgets::Theme::fromPalette(palette(), font())) {}

void ShareBars::setShares(std::vector<judge::ZoneShare> shares, const widgets::Theme& theme, const QLocale& locale) {
  m_shares = std::move(shares);
  m_theme = theme;
  m_locale = locale;
  QStringList spoken;
  for (const auto& share : m_shares) spoken << tr("%1: %2").arg(name(share), percent(share));
  setAccessibleName(tr("Shares of the zones"));
  setAccessibleDescription(spoken.join(QStringLiteral("; ")));
  updateGeometry();
  update();
}

QString ShareBars::name(const judge::ZoneShare& share) const {
  const QString zone = QString::fromStdString(share.zone);
  if (!share.side) return tr("Zone %1").arg(zone);
  return *share.side == board::Side::kTop ? tr("Zone %1, top").arg(zone) : tr("Zone %1, bottom").arg(zone);
}

QString ShareBars::percent(const judge::ZoneShare& share) const {
  return Format(TemperatureUnit::kCelsius, SpeedUnit::kMillimetresPerMinute, m_locale).percent(share.share);
}

QSize ShareBars::sizeHint() const { return {int(m_theme.px(200)), int(m_theme.px(kRow_px) * double(m_shares.size()))}; }

void ShareBars::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setFont(m_theme.font(13));
  const QFontMetricsF metrics(painter.font());
  double names = 0, numbers = 0;
  for (const auto& share : m_shares) {
    names = std::max(names, metrics.horizontalAdvance(name(share)));
    numbers = std::max(numbers, metrics.horizontalAdvance(percent(share)));
  }
  const double gap = m_theme.px(kGap_px), row = m_theme.px(kRow_px), bar = m_theme.px(kBar_px);
  const double room = std::max(0.0, width() - names - numbers - 2 * gap);
  const double largest =
      m_shares.empty() ? 1 : std::max(0.5, std::ranges::max(m_shares, {}, &judge::ZoneShare::share).share);
  for (std::size_t i = 0; i < m_shares.size(); ++i) {
    const QRectF line(0, row * double(i), width(), row);
    painter.setPen(m_theme.text);
    painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter, name(m_shares[i]));
    painter.drawText(line, Qt::AlignRight | Qt::AlignVCenter, percent(m_shares[i]));
    const QRectF rect(names + gap, line.center().y() - bar / 2, room * m_shares[i].share / largest, bar);
    widgets::paintHatching(painter, rect, m_theme);
    painter.setPen(QPen(m_theme.signal, m_theme.line(1)));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(rect);
  }
}

}  // namespace ovenwright::desktop
