#pragma once
#include <QList>
#include <QString>
#include <optional>

#include "app/sheet/page.h"
#include "core/judge/judgement.h"

namespace ovenwright::sheet {

/// What stands in one place of a table on paper.
struct Cell {
  QString text, minor;  ///< minor: behind the text in smaller type, "± 2.1"
  bool bold = false;
  std::optional<std::size_t> marker;   ///< Theme::thermocouple(), before the text
  std::optional<judge::Verdict> sign;  ///< before the text
  bool informative = false;            ///< of the sign
};

struct Column {
  QString title, unit;
  bool left = false;  ///< aligned
  qreal most = 135;   ///< a wider text breaks into lines
};

/// A table that may be longer and wider than a page: rows go on under a repeated heading, columns that do not fit
/// beside the first one stand in a further table below.
struct Table {
  QList<Column> columns;  ///< the first one names the row and is repeated
  QList<QList<Cell>> rows;
};

/// The table as blocks, one for each row: a heading goes with its first row.
void addTable(Flow& flow, const Table& table, const widgets::Theme& theme, qreal width);
/// How high all of it is on one page.
qreal tableHeight(const Table& table, const widgets::Theme& theme, qreal width);

}  // namespace ovenwright::sheet
