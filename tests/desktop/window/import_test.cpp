#include "app/desktop/import/fault_lines.h"
#include "app/desktop/import/file_table.h"
#include "tests/desktop/window/window_fixture.h"

namespace ovenwright::desktop {
namespace {

TEST_F(WindowTest, WhatStandsInTheFileShowsTheLinesOfItsFaults) {
  drop({demo("tern_faults.txt")});
  settle();
  const auto view = m_document->view();
  ASSERT_NE(view, nullptr);
  const FaultLines found = faultLines(m_document->current()->source, *view);
  ASSERT_FALSE(found.cells.empty());
  // The file itself is the source: what stands in a marked cell is what cleaning took out, or no number at all.
  for (const auto& cell : found.cells) {
    const auto line = std::ranges::find(found.lines, cell.line, &log::ShownLine::line);
    ASSERT_NE(line, found.lines.end());
    bool number = false;
    const double value = QString::fromStdString(line->cells[std::size_t(cell.column)]).toDouble(&number);
    if (!number) continue;
    bool removed = false;
    for (const auto& channel : view->run().channels)
      for (const auto& fault : channel.faults)
        for (const auto& sample : fault.removed) removed |= std::abs(sample.temperature_C - value) < 1e-9;
    EXPECT_TRUE(removed) << "line " << cell.line << ": " << value;
  }
  FileModel model;
  model.setRun(view, found);
  int marked = 0;
  for (int row = 0; row < model.rowCount(); ++row)
    for (int column = 0; column < model.columnCount(); ++column)
      marked += model.index(row, column).data(FileModel::kFaultRole).toBool();
  EXPECT_EQ(marked, int(found.cells.size()));
}

}  // namespace
}  // namespace ovenwright::desktop
