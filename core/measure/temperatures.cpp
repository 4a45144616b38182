#include <fmt/format.h>

#include "core/measure/kinds.h"

namespace ovenwright::measure {
namespace {

Figure temperature_at(const Curve& curve, double time_s, const std::string& where) {
  if (time_s < curve.start_s())
    return undetermined(Phrase::kIsBeforeTrace, {where, seconds_text(time_s), seconds_text(curve.start_s())});
  if (!(time_s <= curve.end_s()))
    return undetermined(Phrase::kIsBehindTrace, {where, seconds_text(time_s), seconds_text(curve.end_s())});
  return valued(curve.interpolated(time_s), time_s, time_s);
}

std::optional<Figure> no_position(const Setting& setting) {
  if (!setting.place) return undetermined(Phrase::kNeedsOven);
  if (!setting.place->entry_known) return undetermined(Phrase::kEntryNotShown);
  return std::nullopt;
}

Figure temperature_at_position(const Curve& curve, double position_mm, const Setting& setting,
                               const std::string& where) {
  const auto& place = *setting.place;
  return temperature_at(curve, oven::time_at_s(position_mm, place.entry, *place.recipe, setting.x_mm), where);
}

}  // namespace

Figure temperature_at_figure(const Curve& curve, const Parameters& parameters, const Setting& setting) {
  if (parameters.time) return temperature_at(curve, *parameters.time, say(Phrase::kTimeAskedFor));
  if (auto nowhere = no_position(setting)) return *nowhere;
  if (parameters.position_mm)
    return temperature_at_position(curve, *parameters.position_mm, setting,
                                   fmt::format("{} mm", *parameters.position_mm));
  const auto& zones = setting.place->oven->zones;
  const auto found = std::ranges::find(zones, *parameters.zone, &oven::Zone::name);
  if (found == zones.end()) return undetermined(Phrase::kNoSuchZone, {*parameters.zone});
  const auto zone = static_cast<std::size_t>(found - zones.begin());
  return temperature_at_position(curve, setting.place->oven->zone_end_mm(zone), setting,
                                 say(Phrase::kEndOfZone, {*parameters.zone}));
}

Figure exit_temperature_figure(const Curve& curve, const Setting& setting) {
  if (!setting.place) return valued(curve.at(curve.last()), curve.end_s(), curve.end_s());
  if (auto nowhere = no_position(setting)) return *nowhere;
  const auto& oven = *setting.place->oven;
  if (oven.zones.empty()) return undetermined(Phrase::kNoZones);
  return temperature_at_position(curve, oven.zone_end_mm(oven.zones.size() - 1), setting, say(Phrase::kEndOfLastZone));
}

}  // namespace ovenwright::measure
