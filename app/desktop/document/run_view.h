#pragma once
#include <QImage>
#include <QString>
#include <memory>
#include <optional>
#include <vector>

#include "app/desktop/plot/pyramid.h"
#include "app/desktop/widgets/channels.h"
#include "core/check/check.h"

namespace ovenwright::desktop {

/// One channel of the run that is shown, as views want it.
struct ShownChannel {
  widgets::ChannelLook look;
  std::optional<double> x_mm;         ///< behind the leading edge; absent where the board does not say
  const run::Trace* trace = nullptr;  ///< null where no good samples are left
  Pyramid pyramid;                    ///< of the trace
  double peak_s = 0;
};

/// What views derive from a judged run, once for all of them and off the GUI thread; never changes.
class RunView {
 public:
  /// `checked` and `reading` must outlive it. Cost: O(samples).
  RunView(const check::CheckedRun& checked, const log::Reading& reading, const check::Request& setup);

  /// The same run with other names and styles of its channels, as many as it has.
  RunView withLooks(widgets::Channels looks) const;

  const check::CheckedRun& checked() const { return *m_checked; }
  const judge::Judgement& judgement() const { return m_checked->judgement; }
  const run::Run& run() const { return m_checked->run; }
  const log::Reading& reading() const { return *m_reading; }

  const std::vector<ShownChannel>& channels() const { return m_channels; }  ///< in the order of the run's channels
  const widgets::Channels& looks() const { return m_looks; }
  /// Channel indexes; those without a trace last.
  const std::vector<std::size_t>& hottestFirst() const { return m_looks.hottestFirst; }
  QString name(const judge::Outcome& outcome) const;  ///< of its channel; empty for the board

  const std::optional<oven::Entry>& entry() const { return checked().entry; }
  const std::optional<oven::Oven>& oven() const { return m_oven; }
  const std::optional<oven::Recipe>& recipe() const { return m_recipe; }
  const std::optional<board::Board>& board() const { return m_board; }
  const QImage& boardPicture() const { return m_boardPicture; }  ///< null where the board has none that can be read
  /// Times are shown from here: the oven entry, else the log's own zero.
  double origin_s() const { return entry() ? entry()->at_s : 0; }
  bool hasZones() const { return m_oven && m_recipe && entry(); }
  /// Where the zones are met: the channel's placement, else the board's middle, else the leading edge.
  double x_mm(std::optional<std::size_t> channel) const;
  /// A zone's stretch on the log's clock for a placement x_mm behind the leading edge; needs hasZones().
  std::pair<double, double> zoneSpan_s(std::size_t zone, double x_mm) const;

 private:
  static QImage pictureOf(const board::Board& board);
  const check::CheckedRun* m_checked;
  const log::Reading* m_reading;
  std::optional<oven::Oven> m_oven;
  std::optional<oven::Recipe> m_recipe;
  std::optional<board::Board> m_board;
  QImage m_boardPicture;
  widgets::Channels m_looks;
  std::vector<ShownChannel> m_channels;
};

}  // namespace ovenwright::desktop
