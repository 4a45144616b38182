#pragma once
#include "app/desktop/widgets/channels.h"
#include "app/desktop/widgets/lane_table.h"
#include "app/sheet/table.h"

namespace ovenwright::sheet {

/// A row for each thermocouple, hottest first, a column for each requirement, the smallest margin and the worst
/// verdict of its required results last. Bold: not a pass.
Table resultTable(const judge::Judgement& judgement, const widgets::Channels& channels,
                  const widgets::LaneTable& lanes);

}  // namespace ovenwright::sheet
