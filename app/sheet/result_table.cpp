#include "app/sheet/result_table.h"

#include <QCoreApplication>
#include <map>

#include "app/desktop/widgets/wording.h"

namespace ovenwright::sheet {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Sheet)
};

/// One thermocouple's row while it is filled.
struct Row {
  QList<Cell> cells;
  std::optional<judge::Verdict> worst;
  const judge::Outcome* smallest = nullptr;
};

}  // namespace

Table resultTable(const judge::Judgement& judgement, const widgets::Channels&, const widgets::LaneTable& lanes) {
  const widgets::Wording wording;
  Table table;
  Column name{Words::tr("Thermocouple"), {}, true, 150};
  table.columns << name;
  std::map<std::size_t, Row> rows;  // by track: hottest first
  qsizetype columns = 1;
  for (const auto& lane : lanes.lanes) {
    if (lane.board) continue;
    const auto& first = judgement.all(lane.marks.empty() ? 0 : lane.marks.front().outcome);
    const QString note = wording.parameterNote(first), unit = QString::fromUtf8(unit_symbol(first.value.unit));
    table.columns << Column{lane.title, note.isEmpty() ? unit : note + QStringLiteral(", ") + unit, false, 90};
    ++columns;
    for (const auto& mark : lane.marks) {
      Row& row = rows[mark.track];
      if (row.cells.isEmpty()) row.cells << Cell{mark.place, {}, false, mark.style, {}, false};
      while (row.cells.size() < columns - 1) row.cells << Cell{};
      const auto& outcome = judgement.all(mark.outcome);
      const QString half = wording.uncertainty(outcome);
      const bool bold = outcome.required && outcome.verdict != judge::Verdict::kPass;
      row.cells << Cell{
          wording.value(outcome), half.isEmpty() ? QString() : QStringLiteral("± ") + half, bold, {}, {}, false};
      if (!outcome.required) continue;
      row.worst = std::max(row.worst.value_or(judge::Verdict::kPass), outcome.verdict);
      if (outcome.margin && (!row.smallest || *outcome.margin < *row.smallest->margin)) row.smallest = &outcome;
    }
  }
  table.columns << Column{Words::tr("Smallest"), Words::tr("margin"), false, 90};
  for (auto& [track, row] : rows) {
    while (row.cells.size() < columns) row.cells << Cell{};
    Cell last;
    if (row.worst) {
      last.text = row.smallest ? wording.margin(*row.smallest) : QStringLiteral("–");
      last.sign = row.worst;
      last.bold = *row.worst != judge::Verdict::kPass;
    }
    row.cells << last;
    table.rows << row.cells;
  }
  return table;
}

}  // namespace ovenwright::sheet
