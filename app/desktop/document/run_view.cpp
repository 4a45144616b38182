#include "app/desktop/document/run_view.h"

#include <QBuffer>
#include <QImageReader>
#include <algorithm>

namespace ovenwright::desktop {

RunView::RunView(const check::CheckedRun& checked, const log::Reading& reading, const check::Request& setup)
    : m_checked(&checked),
      m_reading(&reading),
      m_oven(setup.oven),
      m_recipe(setup.recipe),
      m_board(setup.board),
      m_looks(widgets::channelsOf(checked.run, m_board ? &*m_board : nullptr)) {
  if (m_board) m_boardPicture = pictureOf(*m_board);
  for (std::size_t i = 0; i < checked.run.channels.size(); ++i) {
    const auto& channel = checked.run.channels[i];
    auto& shown = m_channels.emplace_back();
    shown.look = m_looks.looks[i];
    if (const auto* placement = m_board ? m_board->placement(channel.name, channel.number) : nullptr) {
      shown.x_mm = placement->x_mm;
    }
    if (!channel.trace) continue;
    shown.trace = &*channel.trace;
    const auto values = channel.trace->temperature_C();
    shown.pyramid = Pyramid(values);
    const auto peak = std::ranges::find(values, shown.look.peak_C.value());
    shown.peak_s = channel.trace->time_s()[std::size_t(peak - values.begin())];
  }
}

RunView RunView::withLooks(widgets::Channels looks) const {
  RunView view = *this;
  for (std::size_t i = 0; i < view.m_channels.size(); ++i) view.m_channels[i].look = looks.looks[i];
  view.m_looks = std::move(looks);
  return view;
}

QImage RunView::pictureOf(const board::Board& board) {
  if (!board.picture) return {};
  // A path; of a kept run a data URL with the bytes that were kept.
  QByteArray bytes;
  if (board.picture->starts_with("data:"))
    bytes = QByteArray::fromBase64(QByteArray::fromStdString(board.picture->substr(board.picture->find(',') + 1)));
  QBuffer buffer(&bytes);
  QImageReader reader;
  if (bytes.isEmpty()) {
    reader.setFileName(QString::fromStdString(*board.picture));
  } else {
    reader.setDevice(&buffer);
  }
  const QSize size = reader.size();
  constexpr int kWide_px = 1200;  // a drawing without pixels of its own gets enough of them
  if (reader.format() == "svg" && !size.isEmpty())
    reader.setScaledSize(size.scaled(kWide_px, kWide_px, Qt::KeepAspectRatio));
  return reader.read();
}

QString RunView::name(const judge::Outcome& outcome) const {
  return outcome.channel ? m_channels[*outcome.channel].look.name : QString();
}

double RunView::x_mm(std::optional<std::size_t> channel) const {
  if (!m_board) return 0;
  if (channel && m_channels[*channel].x_mm) return *m_channels[*channel].x_mm;
  return m_board->length_mm.value_or(0) / 2;
}

std::pair<double, double> RunView::zoneSpan_s(std::size_t zone, double x_mm) const {
  return {oven::time_at_s(m_oven->zone_start_mm(zone), *entry(), *m_recipe, x_mm),
          oven::time_at_s(m_oven->zone_end_mm(zone), *entry(), *m_recipe, x_mm)};
}

}  // namespace ovenwright::desktop
