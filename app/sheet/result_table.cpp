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

void addOtherRun(Table& table, const judge::Judgement& shown, const widgets::LaneTable& lanes,
                 const judge::Judgement& other, const QString& name) {
  const widgets::Wording wording;
  // What decides the shown run: its worst verdict, and of equals the smallest margin.
  const judge::Outcome* deciding = nullptr;
  for (const auto& outcome : shown.results) {
    if (!outcome.required || outcome.trace.empty()) continue;
    const bool worse =
        !deciding || outcome.verdict > deciding->verdict ||
        (outcome.verdict == deciding->verdict && outcome.margin.value_or(0) < deciding->margin.value_or(0));
    if (worse) deciding = &outcome;
  }
  std::map<std::size_t, std::string> traces;  // by track, as the rows are
  for (const auto& lane : lanes.lanes)
    for (const auto& mark : lane.marks)
      if (!lane.board) traces.emplace(mark.track, shown.all(mark.outcome).trace);
  // One line of columns on paper: headings break, and the ± of the values stand in the lanes alone.
  constexpr qreal kMostHeading = 74;
  for (qsizetype column = 1; column < table.columns.size(); ++column) table.columns[column].most = kMostHeading;
  for (auto& row : table.rows)
    for (Cell& cell : row) cell.minor.clear();
  if (deciding)
    table.columns << Column{widgets::Wording::title(deciding->requirement_name) + u',',
                            name + QStringLiteral(", ") + QString::fromUtf8(unit_symbol(deciding->value.unit)), false,
                            kMostHeading};
  table.columns << Column{Words::tr("Smallest"), Words::tr("margin, %1", "of a run").arg(name), false, kMostHeading};
  qsizetype row = 0;
  for (const auto& [track, trace] : traces) {
    Cell value, last;
    const judge::Outcome* smallest = nullptr;
    std::optional<judge::Verdict> worst;
    for (const auto& outcome : other.results) {
      if (outcome.trace != trace) continue;
      // Of the same measure: a part's own limit is another requirement.
      if (deciding && outcome.measure == deciding->measure) {
        value.text = wording.value(outcome);
        value.bold |= outcome.required && outcome.verdict != judge::Verdict::kPass;
      }
      if (!outcome.required) continue;
      worst = std::max(worst.value_or(judge::Verdict::kPass), outcome.verdict);
      if (outcome.margin && (!smallest || *outcome.margin < *smallest->margin)) smallest = &outcome;
    }
    if (worst) {
      last.text = smallest ? wording.margin(*smallest) : QStringLiteral("–");
      last.sign = worst;
      last.bold = *worst != judge::Verdict::kPass;
    }
    if (deciding) table.rows[row] << value;
    table.rows[row++] << last;
  }
}

}  // namespace ovenwright::sheet
