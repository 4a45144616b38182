#pragma once
#include <vector>

#include "app/desktop/compare/compared.h"
#include "app/desktop/text/format.h"
#include "app/desktop/widgets/lane_table.h"
#include "app/sheet/compare_sheet.h"
#include "app/sheet/curve.h"
#include "app/sheet/facts.h"
#include "app/sheet/table.h"

namespace ovenwright::sheet {

struct CaptionedTable {
  QString caption;
  Table table;
};

/// What is drawn and said of a comparison, its names made legible; keeps everything it needs.
struct ComparePictures {
  ComparePictures(const ComparisonRecord& given, const widgets::Theme& theme, const desktop::Format& format);
  ComparePictures(const ComparePictures&) = delete;
  ComparePictures& operator=(const ComparePictures&) = delete;

  QStringList asides() const;  ///< what A is, what B is
  QList<Fact> facts(const QLocale& locale) const;
  QList<LogFact> logs(const QLocale& locale) const;           ///< of two runs
  QList<CaptionedTable> tables(const QLocale& locale) const;  ///< of groups: their runs and logs
  QList<Fact> notes(const QLocale& locale) const;

  ComparisonRecord record;
  desktop::Compared compared;
  widgets::LaneTable lanes;
  std::vector<CurvePicture> curves;  ///< one for each side, or one of both
  Table recipes;                     ///< setpoints and speed of both; without rows where none is known
};

}  // namespace ovenwright::sheet
