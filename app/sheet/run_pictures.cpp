#include "app/sheet/run_pictures.h"

#include <algorithm>

#include "app/sheet/legible.h"

namespace ovenwright::sheet {

RunPictures::RunPictures(const RunRecord& given, const widgets::Theme& theme, const desktop::Format& format)
    : record(legible(given)),
      view(std::make_shared<desktop::RunView>(record.checked(), record.reading(), *record.request)),
      lanes(widgets::laneTable(view->judgement(), view->looks())),
      curve(view, format, theme) {}

std::optional<widgets::BoardTable> RunPictures::board() const {
  if (!view->board()) return std::nullopt;
  auto table = widgets::boardTable(*view->board(), view->boardPicture(), view->looks(), view->judgement(), nullptr);
  const bool any = std::ranges::any_of(table.marks, [](const auto& mark) { return mark.at_mm.has_value(); });
  if (!any && table.picture.isNull()) return std::nullopt;
  // A photograph needs no more than the paper shows: 300 dots an inch.
  constexpr int kMost_px = 480;
  if (table.picture.width() > kMost_px) table.picture = table.picture.scaledToWidth(kMost_px, Qt::SmoothTransformation);
  return table;
}

std::optional<double> RunPictures::entry_s() const {
  return record.checked().entry ? std::optional(record.checked().entry->at_s) : std::nullopt;
}

}  // namespace ovenwright::sheet
