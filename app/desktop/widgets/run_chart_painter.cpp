#include <QPainter>
#include <algorithm>
#include <cmath>
#include <tuple>

#include "app/desktop/widgets/glyphs.h"
#include "app/desktop/widgets/run_chart.h"
#include "app/desktop/widgets/wording.h"

namespace ovenwright::widgets {
namespace {

constexpr qreal kTitle_px = 20, kTicks_px = 20, kTickGap_px = 26, kInset_px = 10, kNameGap_px = 6, kGap_px = 6;
constexpr qreal kPoint_px = 2.6, kSquare_px = 10;
constexpr double kPad = 0.07;  // of the range, above and below

qreal widthOf(const QString& text, const QFont& font) { return QFontMetricsF(font).horizontalAdvance(text); }

/// Numbers that people read easily, at least `least` apart.
double step(double least) {
  const double power = std::pow(10, std::floor(std::log10(least)));
  for (const double factor : {1.0, 2.0, 5.0})
    if (factor * power >= least * (1 - 1e-9)) return factor * power;
  return 10 * power;
}

/// The range of a panel: its points and control lines, and a limit of the window where it would not squeeze them.
std::pair<double, double> rangeOf(const ChartPanel& panel) {
  double low = INFINITY, high = -INFINITY;
  const auto take = [&](double value) {
    low = std::min(low, value);
    high = std::max(high, value);
  };
  for (const auto& point : panel.points) take(point.value);
  for (const auto& line : panel.lines)
    if (line.kind != ChartLine::Kind::kLimit) take(line.value);
  if (!(low <= high)) return {0, 1};
  const double span = std::max(high - low, 1e-9), from = low - span, to = high + span;
  for (const auto& line : panel.lines)
    if (line.kind == ChartLine::Kind::kLimit && line.value >= from && line.value <= to) take(line.value);
  const double pad = kPad * std::max(high - low, 1e-6 * std::max(1.0, std::abs(high)));
  const bool from_zero = low >= 0 && low - pad < 0 && low < 0.2 * high;  // ranges and deviations stand on their zero
  return {from_zero ? 0 : low - pad, high + pad};
}

class RunChartPainter {
 public:
  RunChartPainter(QPainter& painter, const QRectF& area, const RunChartContent& content, const Theme& theme)
      : m_painter(painter), m_content(content), m_theme(theme), m_area(area), m_layout(content, theme, area) {}

  void paint(const ChosenPoint& chosen) {
    m_painter.setRenderHint(QPainter::Antialiasing);
    key();
    for (std::size_t i = 0; i < m_content.panels.size(); ++i) panel(i);
    ticks();
    if (chosen) choice(chosen->first, chosen->second);
  }

 private:
  QColor ink(std::size_t series) const {
    return m_content.series.size() < 2 ? m_theme.accent : m_theme.thermocouple(series).color;
  }

  void text(const QRectF& box, int alignment, const QString& words, const QFont& font, const QColor& color) {
    m_painter.setFont(font);
    m_painter.setPen(color);
    m_painter.drawText(box, alignment | Qt::TextSingleLine, words);
  }

  void key() {
    qreal left = m_layout.key().left();
    const QFont font = m_theme.font(12);
    if (m_content.series.size() >= 2)
      for (qsizetype i = 0; i < m_content.series.size(); ++i) {
        const qreal width = widthOf(m_content.series[i], font) + m_theme.px(22);
        if (left + width > m_layout.key().right()) break;
        const QPointF at(left + m_theme.px(5), m_layout.key().center().y());
        paintMarker(m_painter, at, m_theme.px(3.5), m_theme.thermocouple(std::size_t(i)), true, m_theme.panel, m_theme);
        text(QRectF(left + m_theme.px(13), m_layout.key().top(), width, m_layout.key().height()),
             Qt::AlignLeft | Qt::AlignVCenter, m_content.series[i], font, m_theme.secondary);
        left += width + m_theme.px(8);
      }
    if (m_content.key.isEmpty() || m_layout.panels().empty()) return;
    const QRectF row = m_layout.panels().back().title;
    const qreal side = m_theme.px(kSquare_px) * 0.8, width = widthOf(m_content.key, font);
    const qreal free = row.width() - widthOf(m_content.panels.back().title, font) - m_theme.px(24);
    if (width + 2 * side > free) return;
    const qreal start = row.right() - width;
    square(QPointF(start - side, row.center().y()), side);
    text(QRectF(start, row.top(), width + 2, row.height()), Qt::AlignLeft | Qt::AlignVCenter, m_content.key, font,
         m_theme.secondary);
  }

  void square(const QPointF& at, qreal side) {
    m_painter.setBrush(Qt::NoBrush);
    m_painter.setPen(QPen(m_theme.signal, m_theme.line(1.6)));
    m_painter.drawRect(QRectF(at.x() - side / 2, at.y() - side / 2, side, side));
  }

  void panel(std::size_t index) {
    const ChartPanel& panel = m_content.panels[index];
    const auto& place = m_layout.panels()[index];
    const QFont small = m_theme.font(12);
    text(place.title, Qt::AlignLeft | Qt::AlignVCenter, panel.title, small, m_theme.secondary);
    m_painter.save();
    m_painter.setClipRect(place.plot, Qt::IntersectClip);
    ground(index);
    m_painter.restore();
    m_painter.setBrush(Qt::NoBrush);
    m_painter.setPen(QPen(m_theme.frame, m_theme.line(1)));
    m_painter.drawRect(place.plot);
    const Wording wording;
    for (const double tick : place.ticks) {
      const qreal y = m_layout.at(index, 0, tick).y(), height = QFontMetricsF(small).height();
      m_painter.setPen(QPen(m_theme.frame, m_theme.line(1)));
      m_painter.drawLine(QPointF(place.plot.left() - m_theme.px(4), y), QPointF(place.plot.left(), y));
      text(QRectF(m_area.left(), y - height / 2, place.plot.left() - m_area.left() - m_theme.px(8), height),
           Qt::AlignRight | Qt::AlignVCenter, wording.number(tick, place.digits), small, m_theme.secondary);
    }
    names(index);
    m_painter.save();
    const qreal reach = m_theme.px(kSquare_px);
    m_painter.setClipRect(place.plot.adjusted(0, -reach, 0, reach), Qt::IntersectClip);
    points(index);
    m_painter.restore();
  }

  void ground(std::size_t index) {
    const ChartPanel& panel = m_content.panels[index];
    const QRectF plot = m_layout.panels()[index].plot;
    if (panel.lower) {
      const qreal y = std::max(m_layout.at(index, 0, *panel.lower).y(), plot.top());
      m_painter.fillRect(QRectF(QPointF(plot.left(), y), plot.bottomRight()), m_theme.outside);
    }
    if (panel.upper) {
      const qreal y = std::min(m_layout.at(index, 0, *panel.upper).y(), plot.bottom());
      m_painter.fillRect(QRectF(plot.topLeft(), QPointF(plot.right(), y)), m_theme.outside);
    }
    for (const auto& line : panel.lines) {
      const qreal y = m_layout.at(index, 0, line.value).y();
      if (line.kind == ChartLine::Kind::kLimit) {
        m_painter.setPen(QPen(m_theme.text, m_theme.line(1.8)));
      } else if (line.kind == ChartLine::Kind::kControl) {
        QPen pen(m_theme.secondary, m_theme.line(1.2));
        pen.setDashPattern({4, 2.5});
        m_painter.setPen(pen);
      } else {
        m_painter.setPen(QPen(m_theme.frame, m_theme.line(1)));
      }
      m_painter.drawLine(QPointF(plot.left(), y), QPointF(plot.right(), y));
    }
  }

  /// Names of the lines at the right, moved apart where they would overlap. In a low panel those go first whose values
  /// stand elsewhere: the centre, which is the mean, and the limits of the lane below.
  void names(std::size_t index) {
    const QRectF plot = m_layout.panels()[index].plot;
    const QFont small = m_theme.font(12);
    const qreal height = QFontMetricsF(small).height();
    struct Name {
      qreal y;
      QString words;
      ChartLine::Kind kind;
    };
    std::vector<Name> names;
    for (const auto& line : m_content.panels[index].lines) {
      const qreal y = m_layout.at(index, 0, line.value).y();
      if (y >= plot.top() - 1 && y <= plot.bottom() + 1) names.push_back({y, line.name, line.kind});
    }
    // Into the gaps around the plot, but not into its title and the key beside it.
    const qreal beyond = m_theme.px(kGap_px), above = m_layout.panels()[index].title.height() > 0 ? 0 : beyond;
    const auto most_names = std::size_t(std::max(0.0, (plot.height() + above + beyond) / height));
    for (const auto kind : {ChartLine::Kind::kCentre, ChartLine::Kind::kLimit})
      if (names.size() > most_names) std::erase_if(names, [kind](const Name& name) { return name.kind == kind; });
    std::ranges::sort(names, {}, &Name::y);
    if (!names.empty()) names[0].y = std::max(names[0].y, plot.top() - above + height / 2);
    for (std::size_t i = 1; i < names.size(); ++i) names[i].y = std::max(names[i].y, names[i - 1].y + height);
    for (std::size_t i = names.size(); i-- > 0;) {
      const qreal most = i + 1 < names.size() ? names[i + 1].y - height : plot.bottom() + beyond - height / 2;
      names[i].y = std::min(names[i].y, most);
    }
    const qreal left = plot.right() + m_theme.px(kNameGap_px);
    for (const auto& name : names)
      text(QRectF(left, name.y - height / 2, m_area.right() - left, height), Qt::AlignLeft | Qt::AlignVCenter,
           name.words, small, m_theme.secondary);
  }

  void points(std::size_t index) {
    const auto& all = m_content.panels[index].points;
    const std::size_t series = std::max<std::size_t>(1, std::size_t(m_content.series.size()));
    const qreal room = m_layout.panels()[index].plot.width() / std::max<double>(1, double(all.size()));
    const qreal radius = std::clamp(0.4 * room, m_theme.px(0.9), m_theme.px(kPoint_px));
    for (std::size_t s = 0; s < series; ++s) {
      QPolygonF course;
      for (const auto& point : all)
        if (point.series == s) course << m_layout.at(index, point.x, point.value);
      m_painter.setPen(QPen(ink(s), m_theme.line(1.3)));
      m_painter.setBrush(Qt::NoBrush);
      m_painter.drawPolyline(course);
    }
    for (const auto& point : all) {
      const QPointF at = m_layout.at(index, point.x, point.value);
      if (m_content.series.size() >= 2) {
        paintMarker(m_painter, at, std::max(radius, m_theme.px(2)), m_theme.thermocouple(point.series), true,
                    m_theme.panel, m_theme);
      } else if (!point.signal) {
        m_painter.setPen(Qt::NoPen);
        m_painter.setBrush(ink(0));
        m_painter.drawEllipse(at, radius, radius);
      }
      if (!point.signal) continue;
      const qreal side = m_theme.px(kSquare_px);
      m_painter.fillRect(QRectF(at.x() - side / 2, at.y() - side / 2, side, side), m_theme.panel);
      m_painter.setPen(Qt::NoPen);
      m_painter.setBrush(m_theme.signal);
      m_painter.drawEllipse(at, m_theme.px(1.6), m_theme.px(1.6));
      square(at, side);
    }
  }

  void ticks() {
    const QFont small = m_theme.font(12);
    qreal free = m_area.left();
    for (const auto& [at, words] : m_content.ticks) {
      const qreal width = widthOf(words, small) + 2;
      qreal left = m_layout.x(at) - width / 2;
      left = std::clamp(left, m_area.left(), std::max(m_area.left(), m_area.right() - width));
      if (left < free) continue;
      text(QRectF(left, m_layout.ticks().top(), width, m_layout.ticks().height()), Qt::AlignCenter, words, small,
           m_theme.secondary);
      free = left + width + m_theme.px(18);
    }
  }

  void choice(std::size_t index, std::size_t number) {
    if (index >= m_content.panels.size() || number >= m_content.panels[index].points.size()) return;
    const auto& point = m_content.panels[index].points[number];
    const QPointF at = m_layout.at(index, point.x, point.value);
    QPen dashed(m_theme.accent, m_theme.line(1));
    dashed.setDashPattern({4, 3});
    m_painter.setPen(dashed);
    for (const auto& place : m_layout.panels())
      m_painter.drawLine(QPointF(at.x(), place.plot.top()), QPointF(at.x(), place.plot.bottom()));
    m_painter.setPen(QPen(m_theme.accent, m_theme.line(2)));
    m_painter.setBrush(Qt::NoBrush);
    m_painter.drawEllipse(at, m_theme.px(6), m_theme.px(6));
    const QFont font = m_theme.font(12);
    const QRectF plot = m_layout.panels()[index].plot;
    QRectF plate(0, 0, widthOf(point.tip, font) + m_theme.px(12), QFontMetricsF(font).height() + m_theme.px(6));
    plate.moveTopLeft(QPointF(at.x() + m_theme.px(12), at.y() - plate.height() - m_theme.px(6)));
    if (plate.right() > plot.right()) plate.moveRight(at.x() - m_theme.px(12));
    if (plate.left() < plot.left()) plate.moveLeft(plot.left() + m_theme.px(4));
    if (plate.top() < plot.top()) plate.moveTop(std::min(at.y() + m_theme.px(10), plot.bottom() - plate.height()));
    m_painter.setPen(QPen(m_theme.frame, m_theme.line(1)));
    m_painter.setBrush(m_theme.panel);
    m_painter.drawRect(plate);
    text(plate, Qt::AlignCenter, point.tip, font, m_theme.text);
  }

  QPainter& m_painter;
  const RunChartContent& m_content;
  const Theme& m_theme;
  QRectF m_area;
  RunChartLayout m_layout;
};

}  // namespace

RunChartLayout::RunChartLayout(const RunChartContent& content, const Theme& theme, const QRectF& area) {
  const QFont small = theme.font(12);
  const bool has_key = content.series.size() >= 2;
  m_key = QRectF(area.left(), area.top(), area.width(), has_key ? theme.px(kTitle_px) : 0);
  m_ticks = QRectF(area.left(), area.bottom() - theme.px(kTicks_px), area.width(), theme.px(kTicks_px));
  double shares = 0;
  qreal titles = 0, right = theme.px(kInset_px);
  const auto titled = [&](std::size_t i) {
    return !content.panels[i].title.isEmpty() || (i + 1 == content.panels.size() && !content.key.isEmpty());
  };
  bool first = true;
  for (std::size_t i = 0; i < content.panels.size(); ++i) {
    const auto& panel = content.panels[i];
    shares += panel.share;
    if (titled(i)) titles += theme.px(kTitle_px);
    for (const auto& line : panel.lines)
      right = std::max(right, widthOf(line.name, small) + theme.px(kNameGap_px) + theme.px(4));
    for (const auto& point : panel.points) {
      m_from = first ? point.x : std::min(m_from, point.x);
      m_to = first ? point.x : std::max(m_to, point.x);
      first = false;
    }
  }
  if (!(m_to > m_from)) {
    m_from -= 0.5;
    m_to += 0.5;
  }
  const qreal gap = theme.px(kGap_px), top = m_key.bottom() + (has_key ? 0 : gap);
  const qreal gaps = gap * qreal(content.panels.size());
  const qreal height = std::max(m_ticks.top() - top - titles - gaps, 1.0);
  const Wording wording;
  qreal left = 0, y = top;
  for (std::size_t i = 0; i < content.panels.size(); ++i) {
    Panel place;
    const qreal title = titled(i) ? theme.px(kTitle_px) : 0;
    place.title = QRectF(0, y, 0, title);
    place.plot = QRectF(0, y + title, 0, height * content.panels[i].share / shares);
    y = place.plot.bottom() + gap;
    std::tie(place.low, place.high) = rangeOf(content.panels[i]);
    const double span = place.high - place.low;
    const double apart = step(span * theme.px(kTickGap_px) / std::max(place.plot.height(), 1.0));
    place.digits = std::max(0, int(-std::floor(std::log10(apart) + 1e-9)));
    for (double tick = std::ceil(place.low / apart - 1e-9) * apart; tick <= place.high + 1e-9 * span; tick += apart)
      place.ticks.push_back(tick);
    for (const double tick : place.ticks)
      left = std::max(left, widthOf(wording.number(tick, place.digits), small) + theme.px(12));
    m_panels.push_back(std::move(place));
  }
  for (auto& place : m_panels) {
    place.plot.setLeft(area.left() + left);
    place.plot.setRight(std::max(area.right() - right, place.plot.left() + 1));
    place.title.setLeft(area.left());
    place.title.setRight(area.right());
  }
}

qreal RunChartLayout::x(double x) const {
  if (m_panels.empty()) return 0;
  const QRectF& plot = m_panels.front().plot;
  const qreal inset = std::min<qreal>(kInset_px, plot.width() / 4);
  return plot.left() + inset + (plot.width() - 2 * inset) * (x - m_from) / (m_to - m_from);
}

QPointF RunChartLayout::at(std::size_t panel, double x, double value) const {
  const Panel& place = m_panels[panel];
  return {this->x(x), place.plot.bottom() - place.plot.height() * (value - place.low) / (place.high - place.low)};
}

void paintRunChart(QPainter& painter, const QRectF& area, const RunChartContent& content, const Theme& theme,
                   const ChosenPoint& chosen) {
  painter.save();
  RunChartPainter(painter, area, content, theme).paint(chosen);
  painter.restore();
}

}  // namespace ovenwright::widgets
