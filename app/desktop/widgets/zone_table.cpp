#include "app/desktop/widgets/zone_table.h"

#include <algorithm>
#include <map>
#include <set>

#include "app/desktop/widgets/wording.h"

namespace ovenwright::widgets {
namespace {

/// The disc that stands before a problem counts for all parts up to the next disc.
std::map<std::string, std::vector<int>> discsByZone(const judge::Sentence& sentence) {
  std::map<std::string, std::vector<int>> discs;
  int disc = 0;
  for (const judge::SentencePart& part : sentence.parts) {
    if (part.disc > 0) disc = part.disc;
    if (disc == 0) continue;
    for (const std::string& zone : part.zones)
      if (std::ranges::find(discs[zone], disc) == discs[zone].end()) discs[zone].push_back(disc);
  }
  return discs;
}

std::set<std::string> zonesOut(const judge::Judgement& judgement) {
  std::set<std::string> zones;
  for (std::size_t i = 0; i < judgement.all_size(); ++i) {
    const judge::Outcome& outcome = judgement.all(i);
    if (judge::is_out(outcome.verdict) && outcome.required) zones.insert(outcome.zones.begin(), outcome.zones.end());
  }
  return zones;
}

}  // namespace

StripPlace stripPlace(const board::Board* board, const board::Placement* chosen, const QString& chosenName) {
  if (chosen && chosen->x_mm) return {*chosen->x_mm, chosenName};
  if (board && board->length_mm) return {*board->length_mm / 2, Wording::tr("the board’s middle")};
  return {0, Wording::tr("the leading edge")};
}

ZoneTable zoneTable(const oven::Oven* oven, const oven::Recipe* recipe, const std::optional<oven::Entry>& entry,
                    const StripPlace& place, const judge::Judgement* judgement, const desktop::Format& format) {
  ZoneTable table;
  table.format = format;
  if (!oven || !recipe || recipe->speed_mm_per_min <= 0) return table;
  if (!entry) {
    table.state = ZoneTable::State::kNoEntry;
    return table;
  }
  table.state = ZoneTable::State::kZones;
  table.speed_mm_per_min = recipe->speed_mm_per_min;
  table.placement = place.name;
  table.entry_s = entry->at_s;
  std::map<std::string, std::vector<int>> discs;
  std::set<std::string> out;
  if (judgement) {
    discs = discsByZone(judgement->sentence);
    out = zonesOut(*judgement);
  }
  const auto setpoint = [](const std::vector<double>& values, std::size_t index) {
    return index < values.size() ? std::optional(values[index]) : std::nullopt;
  };
  const oven::Entry sinceEntry;
  std::size_t heating = 0, cooling = 0;
  for (std::size_t i = 0; i < oven->zones.size(); ++i) {
    const oven::Zone& zone = oven->zones[i];
    ZoneCell cell;
    cell.id = zone.name;
    cell.name = QString::fromStdString(zone.name);
    cell.cooling = zone.kind == oven::ZoneKind::kCool;
    cell.from_s = oven::time_at_s(oven->zone_start_mm(i), sinceEntry, *recipe, place.x_mm);
    cell.to_s = oven::time_at_s(oven->zone_end_mm(i), sinceEntry, *recipe, place.x_mm);
    if (cell.cooling) {
      cell.top_C = setpoint(recipe->cooling_C, cooling++);
    } else {
      cell.top_C = setpoint(recipe->top_C, heating);
      cell.bottom_C = setpoint(recipe->bottom_C, heating++);
    }
    if (const auto found = discs.find(zone.name); found != discs.end()) cell.discs = found->second;
    cell.hatched = out.contains(zone.name);
    table.cells.push_back(std::move(cell));
  }
  return table;
}

void holdAgainst(ZoneTable& a, ZoneTable& b, bool marked) {
  const auto alike = [](const ZoneTable& table) {
    return std::ranges::all_of(table.cells,
                               [](const ZoneCell& cell) { return cell.cooling || cell.top_C == cell.bottom_C; });
  };
  a.against = b.against = ZoneAgainst{alike(a) && alike(b), false, marked, {}};
  // What is out stands in each run's own strip, with the numbers of its own sentence.
  for (ZoneTable* table : {&a, &b})
    for (ZoneCell& cell : table->cells) {
      cell.hatched = false;
      cell.discs.clear();
    }
  const bool zones = a.state == ZoneTable::State::kZones && b.state == ZoneTable::State::kZones;
  if (!zones || !std::ranges::equal(a.cells, b.cells, {}, &ZoneCell::id, &ZoneCell::id)) return;
  b.against->framed = true;
  const auto change = [](const std::optional<double>& from, const std::optional<double>& to) {
    return from && to && *from != *to ? std::optional(*to - *from) : std::nullopt;
  };
  for (std::size_t i = 0; i < a.cells.size(); ++i) {
    b.cells[i].topChange_C = a.cells[i].topChange_C = change(a.cells[i].top_C, b.cells[i].top_C);
    b.cells[i].bottomChange_C = a.cells[i].bottomChange_C = change(a.cells[i].bottom_C, b.cells[i].bottom_C);
  }
  b.against->speedChange_mm_per_min = change(a.speed_mm_per_min, b.speed_mm_per_min);
}

}  // namespace ovenwright::widgets
