#include "app/desktop/import/fault_words.h"

#include <cmath>

#include "app/desktop/import/channels_panel.h"
#include "app/desktop/text/said.h"

namespace ovenwright::desktop {
namespace {

QString faultText(run::FaultKind kind) {
  switch (kind) {
    case run::FaultKind::kOpen:
      return ChannelsPanel::tr("Open");
    case run::FaultKind::kOverRange:
      return ChannelsPanel::tr("Over range");
    case run::FaultKind::kDropout:
      return ChannelsPanel::tr("Dropout");
    case run::FaultKind::kSpike:
      return ChannelsPanel::tr("Spike");
    case run::FaultKind::kStuck:
      return ChannelsPanel::tr("Stuck");
    case run::FaultKind::kReversedPolarity:
      return ChannelsPanel::tr("Reversed polarity");
    case run::FaultKind::kDetached:
      return ChannelsPanel::tr("Detached, suspected");
    case run::FaultKind::kSwappedPlacement:
      return ChannelsPanel::tr("Swapped placement, suspected");
    case run::FaultKind::kColdJunctionStep:
      return ChannelsPanel::tr("Cold-junction step");
    case run::FaultKind::kClockGap:
      return ChannelsPanel::tr("Gap in time");
    case run::FaultKind::kTimeGoingBack:
      return ChannelsPanel::tr("Time going back");
  }
  return {};
}

/// "one sample, 412.0 °C", "58 samples", "falls as the others rise".
QString detailText(const run::Fault& fault, const Format& format) {
  if (fault.removed.empty() || fault.kind == run::FaultKind::kTimeGoingBack)
    return inWords(fault.detail, format.locale());
  const QString count = ChannelsPanel::tr("%n sample(s)", nullptr, int(fault.removed.size()));
  const double reading_C = fault.removed[0].temperature_C;
  if (fault.removed.size() > 1 || !std::isfinite(reading_C)) return count;
  return count + QStringLiteral(", ") + format.temperature(reading_C) + u' ' +
         format.unit(Format::Quantity::kTemperature);
}

}  // namespace

QString faultLine(const run::Fault& fault, const run::Run& run, double origin_s, const Format& format) {
  const QString kind = faultText(fault.kind), detail = detailText(fault, format);
  if (!detail.isEmpty() && fault.from_s <= run.from_s && fault.to_s >= run.to_s)
    return ChannelsPanel::tr("%1: %2").arg(kind, detail);
  const QString from = format.seconds(fault.from_s - origin_s), to = format.seconds(fault.to_s - origin_s);
  const QString text = fault.from_s == fault.to_s ? ChannelsPanel::tr("%1 at %2 s").arg(kind, from)
                                                  : ChannelsPanel::tr("%1 from %2 to %3 s").arg(kind, from, to);
  return detail.isEmpty() ? text : text + QStringLiteral(", ") + detail;
}

}  // namespace ovenwright::desktop
