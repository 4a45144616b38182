#pragma once
#include "app/desktop/widgets/channels.h"
#include "app/desktop/widgets/lane_table.h"
#include "app/sheet/table.h"

namespace ovenwright::sheet {

/// A row for each thermocouple, hottest first, a column for each requirement, the smallest margin and the worst
/// verdict of its required results last. Bold: not a pass.
Table resultTable(const judge::Judgement& judgement, const widgets::Channels& channels,
                  const widgets::LaneTable& lanes);

/// Adds what another run of the same board came to: its values of the requirement that decides the shown one, and its
/// smallest margin on each thermocouple. @param name  of the other run, "run 2"
void addOtherRun(Table& table, const judge::Judgement& shown, const widgets::LaneTable& lanes,
                 const judge::Judgement& other, const QString& name);

}  // namespace ovenwright::sheet
