#include "app/desktop/plot/paint.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

#include "app/desktop/widgets/glyphs.h"

namespace ovenwright::desktop {
namespace {

constexpr double kPale = 0.35;  // of a curve that is not the chosen one
constexpr double kHaloWidth_px = 11, kHaloOpacity = 0.22;
constexpr double kBarbLength_px = 9, kBarbEvery_px = 6, kBarbWidth_px = 1.5;
constexpr double kBandOpacity = 0.075, kBandEdgeOpacity = 0.45;
constexpr double kPeakMarkRadius_px = 4;
constexpr double kGroupWidth_px = 0.9;  // of each run of a group

QColor faded(QColor color, double opacity) {
  color.setAlphaF(float(opacity));
  return color;
}

/// High contrast knows the palette's colours and nothing between them.
bool hasShades(const widgets::Theme& theme) { return theme.kind != widgets::Theme::Kind::kHighContrast; }

/// As much of a colour over a ground.
QColor mixed(const QColor& color, const QColor& ground, double share) {
  const auto part = [share](int of, int under) { return int(std::lround(share * of + (1 - share) * under)); };
  return {part(color.red(), ground.red()), part(color.green(), ground.green()), part(color.blue(), ground.blue())};
}

/// A little larger than the axes, so that a line's ends and a halo's half width are not cut inside them.
QRectF drawn(const Canvas& canvas) {
  const double more = canvas.theme->px(2);
  return canvas.area.adjusted(-more, -more, more, more);
}

std::vector<QPolygonF> course(const Canvas& canvas, const ShownChannel& channel, double from_s, double to_s) {
  QRectF clip = drawn(canvas);
  clip.setLeft(std::max(clip.left(), canvas.mapping.x(from_s)));
  clip.setRight(std::min(clip.right(), canvas.mapping.x(to_s)));
  if (clip.width() <= 0) return {};
  return visiblePolylines(channel.trace->time_s(), channel.trace->temperature_C(), channel.pyramid, canvas.mapping,
                          clip);
}

double strength(const Scene& scene, std::size_t channel) {
  return scene.strong && *scene.strong != channel ? kPale : 1;
}

/// The channel of the scene's own run that has a style; past its end where none has.
std::size_t alike(const Scene& scene, std::size_t style) {
  const auto& channels = scene.view->channels();
  const auto found = std::ranges::find_if(channels, [&](const auto& channel) { return channel.look.style == style; });
  return std::size_t(found - channels.begin());
}

/// Channels from the coldest to the hottest, so that the hottest is drawn over the others.
std::vector<std::size_t> coldestFirst(const Scene& scene) {
  std::vector<std::size_t> order;
  for (const std::size_t channel : scene.view->hottestFirst()) {
    if (scene.view->channels()[channel].trace) order.push_back(channel);
  }
  std::ranges::reverse(order);
  return order;
}

}  // namespace

void paintBands(QPainter& painter, const Canvas& canvas, const Scene& scene) {
  const auto& theme = *canvas.theme;
  painter.save();
  painter.setClipRect(canvas.area);
  for (const auto& band : scene.bands) {
    const double top = canvas.mapping.y(band.to_C), bottom = canvas.mapping.y(band.from_C);
    const bool level = band.from_C == band.to_C;
    if (!level && hasShades(theme)) {
      painter.fillRect(QRectF(canvas.area.left(), top, canvas.area.width(), bottom - top),
                       faded(theme.accent, kBandOpacity));
    }
    painter.setPen(
        QPen(level ? theme.secondary : faded(theme.accent, hasShades(theme) ? kBandEdgeOpacity : 1), theme.line(1)));
    for (const double y : {top, bottom}) {
      painter.drawLine(QLineF(canvas.area.left(), std::round(y) + 0.5, canvas.area.right(), std::round(y) + 0.5));
    }
  }
  painter.restore();
}

void paintBandNames(QPainter& painter, const Canvas& canvas, const Scene& scene) {
  const auto& theme = *canvas.theme;
  painter.save();
  painter.setFont(theme.font(12));
  const QFontMetricsF metrics(painter.font());
  struct Name {
    double y;
    const Scene::Band* band;
  };
  std::vector<Name> names;
  for (const auto& band : scene.bands) {
    const double y = canvas.mapping.y((band.from_C + band.to_C) / 2);
    if (y > canvas.area.top() && y < canvas.area.bottom()) names.push_back({y, &band});
  }
  std::ranges::sort(names, {}, &Name::y);
  // Downwards from the top no name touches the one before it; what would leave the plot below is pushed up again.
  const double apart = metrics.height();
  for (std::size_t i = 1; i < names.size(); ++i) names[i].y = std::max(names[i].y, names[i - 1].y + apart);
  double lowest = canvas.area.bottom() - metrics.height() / 2;
  for (std::size_t i = names.size(); i-- > 0;) {
    names[i].y = std::min(names[i].y, lowest);
    lowest = names[i].y - apart;
  }
  const double left = canvas.area.right() + theme.px(8);
  const double room = canvas.room_right - theme.px(10);
  for (const auto& name : names) {
    painter.setPen(QPen(theme.frame, theme.line(1)));
    const double at = canvas.mapping.y(name.band->to_C);
    painter.drawLine(QLineF(canvas.area.right(), at, canvas.area.right() + theme.px(5), at));
    painter.setPen(theme.secondary);
    painter.drawText(QRectF(left, name.y - metrics.height() / 2, room, metrics.height()),
                     Qt::AlignVCenter | Qt::AlignLeft | Qt::TextSingleLine,
                     metrics.elidedText(name.band->label, Qt::ElideMiddle, room));
  }
  painter.restore();
}

void paintTitle(QPainter& painter, const Canvas& canvas, const Scene& scene) {
  if (scene.title.isEmpty()) return;
  const auto& theme = *canvas.theme;
  painter.save();
  painter.setFont(theme.font(14, true));
  const QFontMetricsF metrics(painter.font());
  const double gap = theme.px(8);
  // It ends before the first peak's mark.
  double room = canvas.area.width() * 0.6;
  for (const auto& channel : scene.view->channels())
    if (channel.trace) room = std::min(room, canvas.mapping.x(channel.peak_s) - canvas.area.left() - 3 * gap);
  const QString text = metrics.elidedText(scene.title, Qt::ElideMiddle, std::max(room, canvas.area.width() * 0.3));
  painter.setPen(theme.text);
  painter.drawText(canvas.area.topLeft() + QPointF(gap, metrics.ascent() + theme.px(3)), text);
  painter.restore();
}

void paintZoneBorders(QPainter& painter, const Canvas& canvas, const Scene& scene) {
  painter.save();
  painter.setClipRect(canvas.area);
  painter.setPen(QPen(canvas.theme->hairline, canvas.theme->line(1)));
  for (const double border_s : scene.zoneBorders_s) {
    const double x = std::round(canvas.mapping.x(border_s)) + 0.5;
    painter.drawLine(QLineF(x, canvas.area.top(), x, canvas.area.bottom()));
  }
  painter.restore();
}

void paintHalos(QPainter& painter, const Canvas& canvas, const Scene& scene) {
  if (!hasShades(*canvas.theme)) return;  // the barbs say it
  painter.save();
  painter.setClipRect(canvas.area);
  for (const auto& stretch : scene.stretches) {
    QPen pen(faded(canvas.theme->signal, kHaloOpacity * strength(scene, stretch.channel)),
             canvas.theme->px(kHaloWidth_px));
    pen.setCapStyle(Qt::FlatCap);
    pen.setJoinStyle(Qt::RoundJoin);
    painter.setPen(pen);
    for (const auto& line : course(canvas, scene.view->channels()[stretch.channel], stretch.from_s, stretch.to_s)) {
      painter.drawPolyline(line);
    }
  }
  painter.restore();
}

/// One pixel wide, its dashes as long as before.
void makeThin(QPen& pen) {
  QList<qreal> dashes = pen.dashPattern();
  for (qreal& dash : dashes) dash *= pen.widthF();
  pen.setWidth(1);
  pen.setCosmetic(true);
  if (pen.style() == Qt::CustomDashLine) pen.setDashPattern(dashes);
}

void paintCurves(QPainter& painter, const Canvas& canvas, const Scene& scene, const std::vector<bool>& hidden) {
  const auto& theme = *canvas.theme;
  painter.save();
  painter.setClipRect(canvas.area);
  if (canvas.moving) painter.setRenderHint(QPainter::Antialiasing, false);
  for (const std::size_t channel : coldestFirst(scene)) {
    if (channel < hidden.size() && hidden[channel]) continue;
    const auto& shown = scene.view->channels()[channel];
    QPen pen = scene.thin ? groupPen(theme, shown.look.style, false) : theme.curvePen(shown.look.style);
    pen.setColor(faded(pen.color(), strength(scene, channel)));
    pen.setJoinStyle(Qt::BevelJoin);  // of a line this thin, in half the time of round ones
    if (canvas.moving) makeThin(pen);
    painter.setPen(pen);
    const double end_s = shown.trace->time_s().back();
    double from_s = shown.trace->time_s().front();
    for (const auto& gap : scene.view->run().channels[channel].gaps) {
      for (const auto& line : course(canvas, shown, from_s, gap.from_s)) painter.drawPolyline(line);
      const QPointF a(canvas.mapping.x(gap.from_s), canvas.mapping.y(shown.trace->at(gap.from_s)));
      const QPointF b(canvas.mapping.x(gap.to_s), canvas.mapping.y(shown.trace->at(gap.to_s)));
      const double around = theme.px(6);
      painter.setPen(QPen(pen.color(), theme.line(1), Qt::DotLine));
      painter.drawLine(a, b);
      painter.setPen(QPen(faded(theme.signal, strength(scene, channel)), theme.line(1), Qt::DotLine));
      painter.setBrush(Qt::NoBrush);
      painter.drawRect(QRectF(a, b).normalized().adjusted(0, -around, 0, around));
      painter.setPen(pen);
      from_s = gap.to_s;
    }
    for (const auto& line : course(canvas, shown, from_s, end_s)) painter.drawPolyline(line);
  }
  painter.restore();
}

QPen groupPen(const widgets::Theme& theme, std::size_t style, bool dashed) {
  QPen pen(theme.thermocouple(style).color, theme.line(kGroupWidth_px), dashed ? Qt::CustomDashLine : Qt::SolidLine);
  if (dashed) pen.setDashPattern({6, 3});
  pen.setCapStyle(Qt::FlatCap);
  pen.setJoinStyle(Qt::RoundJoin);
  return pen;
}

QPen behindPen(const widgets::Theme& theme, std::size_t style, bool measured) {
  QPen pen(theme.thermocouple(style).color, theme.line(measured ? 1.3 : 1.2), Qt::CustomDashLine);
  pen.setDashPattern(measured ? QList<qreal>{1, 2.2} : QList<qreal>{5, 2, 1, 2});
  pen.setCapStyle(Qt::FlatCap);
  return pen;
}

void paintBehind(QPainter& painter, const Canvas& canvas, const Scene& scene, const std::vector<bool>& hidden) {
  const auto& theme = *canvas.theme;
  painter.save();
  painter.setClipRect(canvas.area);
  painter.setFont(theme.font(11, true));
  const QFontMetricsF metrics(painter.font());
  using Group = Scene::Behind::Group;
  // What stands back first, so that among many runs the chosen thermocouple is not covered.
  for (const bool front : {false, true})
    for (const auto& behind : scene.behind) {
      Canvas later = canvas;
      later.mapping.x0 += behind.later_s * canvas.mapping.x_per_s;
      for (const auto& shown : behind.view->channels()) {
        const auto channel = alike(scene, shown.look.style);
        if (!shown.trace || (channel < hidden.size() && hidden[channel])) continue;
        const double strong = strength(scene, channel);
        if ((strong == 1) != front) continue;
        const bool group = behind.group != Group::kNone;
        QPen pen = group ? groupPen(theme, shown.look.style, behind.group == Group::kOther)
                         : behindPen(theme, shown.look.style, behind.tag.isEmpty());
        // Pale, not transparent: many of a group lie over one another.
        if (group) pen.setColor(mixed(pen.color(), theme.panel, strong));
        painter.setOpacity(group ? 1 : strong);
        painter.setPen(pen);
        const auto time_s = shown.trace->time_s();
        for (const auto& line : course(later, shown, time_s.front(), time_s.back())) painter.drawPolyline(line);
        if (behind.tag.isEmpty() || group) continue;
        const QPointF peak(later.mapping.x(shown.peak_s), canvas.mapping.y(*shown.look.peak_C));
        const double width = metrics.horizontalAdvance(behind.tag) + theme.px(4);
        const QRectF plate(peak.x() - width / 2, peak.y() - metrics.height() - theme.px(1), width, metrics.height());
        painter.fillRect(plate, theme.panel);
        painter.drawText(plate, Qt::AlignCenter, behind.tag);
      }
    }
  painter.restore();
}

void paintErrorBands(QPainter& painter, const Canvas& canvas, const Scene& scene, const std::vector<bool>& hidden) {
  painter.save();
  painter.setClipRect(canvas.area);
  painter.setPen(Qt::NoPen);
  painter.setRenderHint(QPainter::Antialiasing, false);  // so faint a fill has no edge to be seen; a sixth of the time
  for (std::size_t channel = 0; channel < scene.errorBand_C.size(); ++channel) {
    const auto& shown = scene.view->channels()[channel];
    const auto& band_C = scene.errorBand_C[channel];
    if (!shown.trace || band_C.empty() || (channel < hidden.size() && hidden[channel])) continue;
    const auto time_s = shown.trace->time_s(), temperature_C = shown.trace->temperature_C();
    QPolygonF above, below;
    double last = -1e9;
    for (std::size_t i = 0; i < band_C.size(); ++i) {
      const double x = canvas.mapping.x(time_s[i]);
      if (x < last + 1 && i + 1 < band_C.size()) continue;  // a point for each pixel
      last = x;
      above << QPointF(x, canvas.mapping.y(temperature_C[i] + band_C[i]));
      below << QPointF(x, canvas.mapping.y(temperature_C[i] - band_C[i]));
    }
    std::ranges::reverse(below);
    painter.setBrush(
        faded(canvas.theme->thermocouple(shown.look.style).color, kErrorBandOpacity * strength(scene, channel)));
    painter.drawPolygon(above + below);
  }
  painter.restore();
}

void paintBarbs(QPainter& painter, const Canvas& canvas, const Scene& scene) {
  const auto& theme = *canvas.theme;
  painter.save();
  painter.setClipRect(canvas.area);
  const double every = theme.px(kBarbEvery_px), half = theme.px(kBarbLength_px) / 2;
  for (const auto& stretch : scene.stretches) {
    painter.setPen(QPen(faded(theme.signal, strength(scene, stretch.channel)), theme.line(kBarbWidth_px)));
    for (const auto& line : course(canvas, scene.view->channels()[stretch.channel], stretch.from_s, stretch.to_s)) {
      double next = every / 2, walked = 0;
      for (qsizetype i = 1; i < line.size(); ++i) {
        const QLineF piece(line[i - 1], line[i]);
        const double length = piece.length();
        for (; next <= walked + length; next += every) {
          const QPointF at = piece.pointAt((next - walked) / length);
          const QPointF across(-piece.dy() / length * half, piece.dx() / length * half);
          painter.drawLine(at - across, at + across);
        }
        walked += length;
      }
    }
  }
  painter.restore();
}

void paintPeaks(QPainter& painter, const Canvas& canvas, const Scene& scene, const std::vector<bool>& hidden) {
  const auto& theme = *canvas.theme;
  painter.save();
  painter.setClipRect(canvas.area);
  for (const std::size_t channel : coldestFirst(scene)) {
    if (channel < hidden.size() && hidden[channel]) continue;
    const auto& shown = scene.view->channels()[channel];
    painter.setOpacity(strength(scene, channel));
    std::array<double, 2> peak{shown.peak_s, *shown.look.peak_C};
    if (channel < scene.peaks.size() && scene.peaks[channel]) peak = *scene.peaks[channel];
    widgets::paintMarker(painter, {canvas.mapping.x(peak[0]), canvas.mapping.y(peak[1])}, theme.px(kPeakMarkRadius_px),
                         theme.thermocouple(shown.look.style), true, theme.panel, theme);
  }
  painter.restore();
}

void paintChosen(QPainter& painter, const Canvas& canvas, const Scene& scene) {
  if (!scene.chosen) return;
  const auto& theme = *canvas.theme;
  const auto& chosen = *scene.chosen;
  const auto top = [&](double time_s) {
    double temperature_C = -1e9;
    if (chosen.channel && scene.view->channels()[*chosen.channel].trace) {
      temperature_C = scene.view->channels()[*chosen.channel].trace->at(time_s);
    } else {
      for (const auto& channel : scene.view->channels()) {
        if (channel.trace && channel.trace->at(time_s) > temperature_C) temperature_C = channel.trace->at(time_s);
      }
    }
    return std::clamp(canvas.mapping.y(temperature_C), canvas.area.top(), canvas.area.bottom());
  };
  painter.save();
  painter.setFont(theme.font(12));
  const QFontMetricsF metrics(painter.font());
  const QSizeF label(metrics.horizontalAdvance(chosen.label) + theme.px(12), metrics.height() + theme.px(2));
  const double from = canvas.mapping.x(chosen.from_s), to = canvas.mapping.x(chosen.to_s);
  const double label_y = canvas.area.bottom() - label.height() - theme.px(2);
  painter.setClipRect(canvas.area);
  painter.setPen(QPen(theme.accent, theme.line(1.3), Qt::CustomDashLine));
  QPen dashed = painter.pen();
  dashed.setDashPattern({3, 2.5});
  painter.setPen(dashed);
  painter.drawLine(QLineF(from, top(chosen.from_s), from, canvas.area.bottom()));
  if (chosen.to_s > chosen.from_s) {
    painter.drawLine(QLineF(to, top(chosen.to_s), to, canvas.area.bottom()));
    const double y = label_y + label.height() / 2;
    painter.setPen(QPen(theme.accent, theme.line(1.3)));
    painter.drawLine(QLineF(from, y, to, y));
    painter.setBrush(theme.accent);
    painter.setPen(Qt::NoPen);
    if (to - from > theme.px(20)) {
      painter.drawPath(widgets::arrowHead({from, y}, theme.px(7), theme.px(3), false));
      painter.drawPath(widgets::arrowHead({to, y}, theme.px(7), theme.px(3), true));
    }
  }
  const double center =
      std::clamp((from + to) / 2, canvas.area.left() + label.width() / 2, canvas.area.right() - label.width() / 2);
  if (to >= canvas.area.left() && from <= canvas.area.right()) {
    const QRectF plate(QPointF(center - label.width() / 2, label_y), label);
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme.accent);
    painter.drawRoundedRect(plate, theme.px(2), theme.px(2));
    painter.setPen(theme.onAccent);
    painter.drawText(plate, Qt::AlignCenter, chosen.label);
  }
  painter.restore();
}

void paintRawSamples(QPainter& painter, const Canvas& canvas, const Scene& scene, const std::vector<bool>& hidden) {
  const auto& theme = *canvas.theme;
  painter.save();
  painter.setClipRect(canvas.area);
  const double from_s = canvas.mapping.time_s(canvas.area.left()), to_s = canvas.mapping.time_s(canvas.area.right());
  const double cross = theme.px(3.5), dot = theme.px(1.4);
  for (const std::size_t channel : scene.view->hottestFirst()) {
    if (channel < hidden.size() && hidden[channel]) continue;
    const auto& cleaned = scene.view->run().channels[channel];
    const QColor color = theme.thermocouple(scene.view->channels()[channel].look.style).color;
    const auto& channels = scene.view->reading().channels;
    const auto raw = std::ranges::find(channels, cleaned.number, &run::RawChannel::number);
    if (raw != channels.end()) {
      const auto& time_s = *raw->time_s;
      // Times of a raw log need not increase, so all are looked at where there are few, and none where there are many.
      const double per_pixel = double(time_s.size()) * (to_s - from_s) /
                               std::max(1e-9, scene.view->run().to_s - scene.view->run().from_s) / canvas.area.width();
      painter.setPen(Qt::NoPen);
      painter.setBrush(color);
      for (std::size_t i = 0; per_pixel < 0.35 && i < time_s.size(); ++i) {
        if (time_s[i] < from_s || time_s[i] > to_s || !std::isfinite(raw->temperature_C[i])) continue;
        painter.drawEllipse(QPointF(canvas.mapping.x(time_s[i]), canvas.mapping.y(raw->temperature_C[i])), dot, dot);
      }
    }
    painter.setPen(QPen(theme.signal, theme.line(1.3)));
    for (const auto& fault : cleaned.faults) {
      for (const auto& sample : fault.removed) {
        if (!std::isfinite(sample.temperature_C) || sample.time_s < from_s || sample.time_s > to_s) continue;
        const double x = canvas.mapping.x(sample.time_s);
        // What is off the plot stands at its edge.
        const double y =
            std::clamp(canvas.mapping.y(sample.temperature_C), canvas.area.top() + cross, canvas.area.bottom() - cross);
        painter.drawLine(QLineF(x - cross, y - cross, x + cross, y + cross));
        painter.drawLine(QLineF(x - cross, y + cross, x + cross, y - cross));
      }
    }
  }
  painter.restore();
}

}  // namespace ovenwright::desktop
