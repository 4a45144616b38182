#include "app/desktop/plot/labels.h"

#include <QCoreApplication>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "app/desktop/widgets/glyphs.h"

namespace ovenwright::desktop {
namespace {

constexpr double kKeyLowestPlot_px = 240;
constexpr std::size_t kKeyMostChannels = 8, kCursorMostChannels = 14;
constexpr double kKeyLine_px = 16, kKeyPadding_px = 8, kKeySample_px = 28, kKeyGap_px = 8;
constexpr std::size_t kNamesMostChannels = 12;

Key tableOf(const Canvas& canvas, const Scene& scene, const std::vector<bool>& hidden, std::optional<double> cursor_s) {
  const Format& format = *canvas.format;
  Key key;
  const QString degrees = format.unit(Format::Quantity::kTemperature);
  key.heading = cursor_s        ? cursorHeading(scene, format, *cursor_s)
                : scene.subject ? QCoreApplication::translate("CurvePlot", "Predicted peak, %1").arg(degrees)
                                : QCoreApplication::translate("CurvePlot", "Hottest to coldest, peak %1").arg(degrees);
  for (const std::size_t channel : scene.view->hottestFirst()) {
    const auto& shown = scene.view->channels()[channel];
    if (!shown.trace || (channel < hidden.size() && hidden[channel])) continue;
    const double value_C = cursor_s ? shown.trace->at(*cursor_s) : *shown.look.peak_C;
    key.rows.push_back({channel, std::isfinite(value_C) ? format.temperature(value_C) : QStringLiteral("–")});
  }
  for (const auto& behind : scene.behind)
    if (behind.group == Scene::Behind::Group::kNone) key.behind.push_back(&behind);
  key.errorBand = std::ranges::any_of(scene.errorBand_C, [](const auto& band_C) { return !band_C.empty(); });
  return key;
}

/// A line of the key: 16 to a type of 12, more in a family that is higher.
double lineHeight(const widgets::Theme& theme, const QFontMetricsF& metrics) {
  return std::max(metrics.height(), theme.px(kKeyLine_px));
}

QSizeF sizeOf(const Key& key, const Canvas& canvas, const Scene& scene) {
  const auto& theme = *canvas.theme;
  const QFontMetricsF heading(theme.font(11)), body(theme.font(12));
  double name = 0, value = body.horizontalAdvance(QStringLiteral("250.0"));
  for (const auto& row : key.rows) {
    name = std::max(name, body.horizontalAdvance(scene.view->channels()[row.channel].look.name));
    value = std::max(value, body.horizontalAdvance(row.value));
  }
  for (const auto* behind : key.behind)
    name = std::max(name, body.horizontalAdvance(behind->name) - value - theme.px(kKeyGap_px));
  if (key.errorBand)
    name = std::max(name, body.horizontalAdvance(QCoreApplication::translate("CurvePlot", "error band, 95 %")) - value -
                              theme.px(kKeyGap_px));
  name = std::min(name, theme.px(180));
  const double row = theme.px(kKeySample_px + 3 * kKeyGap_px) + name + value;
  return {std::max(row, heading.horizontalAdvance(key.heading)) + 2 * theme.px(kKeyPadding_px),
          lineHeight(theme, heading) +
              double(key.rows.size() + key.behind.size() + key.errorBand) * lineHeight(theme, body) +
              2 * theme.px(kKeyPadding_px - 2)};
}

/// Whether any curve passes through a rectangle.
bool meetsCurve(const Canvas& canvas, const Scene& scene, const QRectF& rect) {
  const double step = std::max(2.0, canvas.theme->px(5));
  for (const auto& channel : scene.view->channels()) {
    if (!channel.trace) continue;
    for (double x = rect.left(); x <= rect.right(); x += step) {
      const double y = canvas.mapping.y(channel.trace->at(canvas.mapping.time_s(x)));
      if (y > rect.top() && y < rect.bottom()) return true;
    }
  }
  return false;
}

/// Names alone: how wide a column is, and how many lines both have.
double nameColumn(const Key& key, const Canvas& canvas, const Scene& scene) {
  const QFontMetricsF body(canvas.theme->font(12));
  double name = 0;
  for (const auto& row : key.rows)
    name = std::max(name, body.horizontalAdvance(scene.view->channels()[row.channel].look.name));
  for (const auto* behind : key.behind) name = std::max(name, body.horizontalAdvance(behind->name));
  return std::min(name, canvas.theme->px(150)) + canvas.theme->px(kKeySample_px + 2 * kKeyGap_px);
}

std::size_t nameLines(const Key& key) { return (key.rows.size() + key.behind.size() + 1) / 2; }

/// A place for the names at the foot of the axes, nearest to the middle, that no curve goes through; else empty.
QRectF freeGround(const Canvas& canvas, const Scene& scene, const Key& key) {
  const auto& theme = *canvas.theme;
  const double line = QFontMetricsF(theme.font(12)).height(), padding = theme.px(kKeyPadding_px - 2);
  const QSizeF size(2 * nameColumn(key, canvas, scene) + theme.px(kKeyGap_px),
                    double(nameLines(key)) * line + 2 * padding);
  const double y = canvas.area.bottom() - size.height() - theme.px(8), step = theme.px(12);
  const double middle = canvas.area.center().x() - size.width() / 2;
  for (double away = 0; away < canvas.area.width() / 2; away += step) {
    for (const double x : {middle + away, middle - away}) {
      const QRectF rect(QPointF(x, y), size);
      if (!canvas.area.contains(rect.adjusted(-step / 2, 0, step / 2, 0))) continue;
      if (!meetsCurve(canvas, scene, rect.adjusted(-step / 2, -step / 2, step / 2, step / 2))) return rect;
    }
  }
  return {};
}

void paintNames(QPainter& painter, const Canvas& canvas, const Scene& scene, const Key& key) {
  const auto& theme = *canvas.theme;
  painter.setFont(theme.font(12));
  const QFontMetricsF metrics(painter.font());
  const double column = nameColumn(key, canvas, scene), sample = theme.px(kKeySample_px), gap = theme.px(kKeyGap_px);
  std::size_t at = 0;
  const auto place = [&](const QString& name) {
    const std::size_t lines = nameLines(key);
    const QRectF line(key.rect.left() + gap + double(at / lines) * column,
                      key.rect.top() + theme.px(kKeyPadding_px - 2) + double(at % lines) * metrics.height(),
                      column - gap, metrics.height());
    ++at;
    painter.setPen(theme.text);
    painter.drawText(line.adjusted(sample + gap, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter,
                     metrics.elidedText(name, Qt::ElideMiddle, line.width() - sample - gap));
    return QLineF(line.left(), line.center().y(), line.left() + sample, line.center().y());
  };
  for (const auto& row : key.rows) {
    const auto& look = scene.view->channels()[row.channel].look;
    painter.setOpacity(scene.strong && *scene.strong != row.channel ? 0.35 : 1);
    const QLineF line = place(look.name);
    painter.setPen(scene.thin ? groupPen(theme, look.style, false) : theme.curvePen(look.style));
    painter.drawLine(line);
    widgets::paintMarker(painter, line.center(), theme.px(3.5), theme.thermocouple(look.style), true, theme.panel,
                         theme);
  }
  painter.setOpacity(1);
  for (const auto* behind : key.behind) {
    const QLineF line = place(behind->name);
    QPen pen = behindPen(theme, 0, behind->tag.isEmpty());
    pen.setColor(theme.secondary);
    painter.setPen(pen);
    painter.drawLine(line);
  }
}

}  // namespace

QString cursorHeading(const Scene& scene, const Format& format, double cursor_s) {
  const RunView& view = *scene.view;
  const QString time = format.seconds(cursor_s - scene.origin_s());
  if (!view.hasZones()) return QCoreApplication::translate("CurvePlot", "At %1 s").arg(time);
  const double position_mm = oven::position_mm(cursor_s, *view.entry(), *view.recipe(), view.x_mm(scene.channel));
  const QString place = format.number(position_mm, 0);
  for (std::size_t zone = 0; zone < view.oven()->zones.size(); ++zone) {
    if (position_mm < view.oven()->zone_start_mm(zone) || position_mm > view.oven()->zone_end_mm(zone)) continue;
    return QCoreApplication::translate("CurvePlot", "At %1 s, zone %2, %3 mm")
        .arg(time, QString::fromStdString(view.oven()->zones[zone].name), place);
  }
  return QCoreApplication::translate("CurvePlot", "At %1 s, %2 mm").arg(time, place);
}

Key makeKey(const Canvas& canvas, const Scene& scene, const std::vector<bool>& hidden, std::optional<double> cursor_s) {
  if (!scene.view || scene.key == Scene::Key::kNone) return {};
  Key key = tableOf(canvas, scene, hidden, cursor_s);
  if (scene.key == Scene::Key::kNames) {
    key.values = false;
    if (key.rows.size() <= kNamesMostChannels && !key.rows.empty()) key.rect = freeGround(canvas, scene, key);
    return key;
  }
  if (canvas.area.height() < canvas.theme->px(kKeyLowestPlot_px) || key.rows.size() > kKeyMostChannels ||
      key.rows.empty()) {
    return key;
  }
  const double inset = canvas.theme->px(10);
  key.rect = QRectF(canvas.area.topLeft() + QPointF(inset, inset * 0.6), sizeOf(key, canvas, scene));
  return key;
}

Key makeCursorKey(const Canvas& canvas, const Scene& scene, const std::vector<bool>& hidden, double cursor_s) {
  Key key = tableOf(canvas, scene, hidden, cursor_s);
  if (scene.key != Scene::Key::kPeaks) key.behind.clear();
  if (key.rows.size() > kCursorMostChannels) key.rows.resize(kCursorMostChannels);
  const QSizeF size = sizeOf(key, canvas, scene);
  const double gap = canvas.theme->px(10), x = canvas.mapping.x(cursor_s);
  const bool right = x + gap + size.width() < canvas.area.right();
  key.rect = QRectF(QPointF(right ? x + gap : x - gap - size.width(), canvas.area.top() + gap / 2), size);
  return key;
}

void paintKey(QPainter& painter, const Canvas& canvas, const Scene& scene, const Key& key) {
  if (key.rect.isEmpty()) return;
  const auto& theme = *canvas.theme;
  painter.save();
  painter.setPen(QPen(theme.hairline, theme.line(1)));
  QColor ground = theme.panel;
  ground.setAlphaF(0.94f);
  painter.setBrush(ground);
  painter.drawRect(key.rect);
  if (!key.values) {
    paintNames(painter, canvas, scene, key);
    painter.restore();
    return;
  }
  const double padding = theme.px(kKeyPadding_px), gap = theme.px(kKeyGap_px), sample = theme.px(kKeySample_px);
  QRectF line = key.rect.adjusted(padding, theme.px(kKeyPadding_px - 2), -padding, 0);
  painter.setFont(theme.font(11));
  painter.setPen(theme.secondary);
  line.setHeight(lineHeight(theme, QFontMetricsF(painter.font())));
  painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter, key.heading);
  painter.setFont(theme.font(12));
  const QFontMetricsF metrics(painter.font());
  for (const auto& row : key.rows) {
    const auto& shown = scene.view->channels()[row.channel];
    line = QRectF(line.left(), line.bottom(), line.width(), lineHeight(theme, metrics));
    painter.setOpacity(scene.strong && *scene.strong != row.channel ? 0.35 : 1);
    painter.setPen(scene.thin ? groupPen(theme, shown.look.style, false) : theme.curvePen(shown.look.style));
    const QPointF middle(line.left() + sample / 2, line.center().y());
    painter.drawLine(QLineF(line.left(), middle.y(), line.left() + sample, middle.y()));
    widgets::paintMarker(painter, middle, theme.px(3.5), theme.thermocouple(shown.look.style), true, theme.panel,
                         theme);
    painter.setPen(theme.text);
    const QRectF text = line.adjusted(sample + gap, 0, 0, 0);
    painter.drawText(text, Qt::AlignRight | Qt::AlignVCenter, row.value);
    const double room = text.width() - metrics.horizontalAdvance(row.value) - gap;
    painter.drawText(text, Qt::AlignLeft | Qt::AlignVCenter,
                     metrics.elidedText(shown.look.name, Qt::ElideMiddle, room));
  }
  painter.setOpacity(1);
  const auto add = [&](const QString& name) {
    line = QRectF(line.left(), line.bottom(), line.width(), lineHeight(theme, metrics));
    painter.setPen(theme.secondary);
    const double room = line.width() - sample - gap;
    painter.drawText(line.adjusted(sample + gap, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter,
                     metrics.elidedText(name, Qt::ElideMiddle, room));
    return QRectF(line.left(), line.top(), sample, line.height());
  };
  for (const auto* behind : key.behind) {
    const QRectF at = add(behind->name);
    QPen pen = behindPen(theme, 0, behind->tag.isEmpty());
    pen.setColor(theme.secondary);
    painter.setPen(pen);
    painter.drawLine(QPointF(at.left(), at.center().y()), QPointF(at.right(), at.center().y()));
  }
  if (key.errorBand) {
    const QRectF at = add(QCoreApplication::translate("CurvePlot", "error band, 95 %"));
    painter.fillRect(at.adjusted(0, at.height() / 4, 0, -at.height() / 4),
                     widgets::mixed(theme.panel, theme.text, kErrorBandOpacity));
  }
  painter.restore();
}

std::vector<PlacedCallOut> placeCallOuts(const Canvas& canvas, const Scene& scene, const QRectF& taken) {
  const auto& theme = *canvas.theme;
  const QFontMetricsF metrics(theme.font(12));
  const double disc = theme.px(kDisc_px), gap = theme.px(4);
  std::vector<QRectF> occupied{taken};
  if (scene.chosen) {
    // Its time stands on the axis.
    const double middle = canvas.mapping.x((scene.chosen->from_s + scene.chosen->to_s) / 2);
    const double half = metrics.horizontalAdvance(scene.chosen->label) / 2 + theme.px(8);
    const double height = metrics.height() + theme.px(10);
    occupied.emplace_back(middle - half, canvas.area.bottom() - height, 2 * half, height);
  }
  std::vector<PlacedCallOut> all;
  for (const auto& callOut : scene.callOuts) {
    PlacedCallOut placed{&callOut, {canvas.mapping.x(callOut.time_s), canvas.mapping.y(callOut.temperature_C)}, {}, {}};
    if (!canvas.area.contains(placed.anchor)) continue;
    const QSizeF text(metrics.horizontalAdvance(callOut.text), metrics.height());
    enum class Try { kText, kDisc, kDiscOverCurves };
    const auto isFree = [&](const QRectF& rect, Try what) {
      const QRectF room = rect.adjusted(-gap, -gap, gap, gap);
      return canvas.area.contains(rect) && (what == Try::kDiscOverCurves || !meetsCurve(canvas, scene, room)) &&
             std::ranges::none_of(occupied, [&](const QRectF& other) { return other.intersects(room); });
    };
    // With its text on free ground, else the disc alone, else over the curves; never over another.
    bool found = false;
    for (const Try what : {Try::kText, Try::kDisc, Try::kDiscOverCurves}) {
      // Nearest first; of equal distance, upwards and to the right first.
      for (double distance = 26; distance <= 170 && !found; distance += 12) {
        for (int step = 0; step < 12 && !found; ++step) {
          const double angle = M_PI / 6 * (step % 2 == 0 ? step / 2 : -(step + 1) / 2) + M_PI / 3;
          const QPointF center = placed.anchor + theme.px(distance) * QPointF(std::cos(angle), -std::sin(angle));
          const QRectF disc_rect(center.x() - disc / 2, center.y() - disc / 2, disc, disc);
          const bool leftwards = std::cos(angle) < -0.01;
          QRectF text_rect(QPointF(leftwards ? disc_rect.left() - gap - text.width() : disc_rect.right() + gap,
                                   center.y() - text.height() / 2),
                           text);
          const QRectF whole = what == Try::kText ? disc_rect.united(text_rect) : disc_rect;
          if (!isFree(whole, what)) continue;
          placed.disc = center;
          if (what == Try::kText) placed.text = text_rect;
          occupied.push_back(whole);
          found = true;
        }
      }
      if (found) break;
    }
    if (found) all.push_back(placed);  // no room at all: the halo and the sentence still say it
  }
  return all;
}

void paintCallOuts(QPainter& painter, const Canvas& canvas, const std::vector<PlacedCallOut>& placed) {
  const auto& theme = *canvas.theme;
  painter.save();
  painter.setFont(theme.font(12));
  for (const auto& callOut : placed) {
    painter.setPen(QPen(theme.signal, theme.line(1)));
    painter.drawLine(callOut.anchor, callOut.disc);
    widgets::paintDisc(painter, callOut.disc, theme.px(kDisc_px), callOut.callOut->disc, theme);
    painter.setPen(theme.text);
    if (!callOut.text.isEmpty()) painter.drawText(callOut.text, Qt::AlignCenter, callOut.callOut->text);
  }
  painter.restore();
}

void paintCursor(QPainter& painter, const Canvas& canvas, const Scene& scene, const std::vector<bool>& hidden,
                 double cursor_s) {
  const auto& theme = *canvas.theme;
  const double x = canvas.mapping.x(cursor_s);
  if (x < canvas.area.left() || x > canvas.area.right()) return;
  painter.save();
  painter.setClipRect(canvas.area);
  painter.setPen(QPen(theme.secondary, theme.line(1)));
  painter.drawLine(QLineF(x, canvas.area.top(), x, canvas.area.bottom()));
  for (const std::size_t channel : scene.view->hottestFirst()) {
    const auto& shown = scene.view->channels()[channel];
    if (!shown.trace || (channel < hidden.size() && hidden[channel])) continue;
    const double value_C = shown.trace->at(cursor_s);
    if (!std::isfinite(value_C)) continue;
    widgets::paintMarker(painter, {x, canvas.mapping.y(value_C)}, theme.px(3), theme.thermocouple(shown.look.style),
                         false, theme.panel, theme);
  }
  painter.restore();
}

}  // namespace ovenwright::desktop
