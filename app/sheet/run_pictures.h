#pragma once
#include <memory>

#include "app/desktop/document/run_view.h"
#include "app/desktop/widgets/board_table.h"
#include "app/desktop/widgets/lane_table.h"
#include "app/sheet/curve.h"
#include "app/sheet/record.h"

namespace ovenwright::sheet {

/// What is drawn of one run, its names made legible; keeps everything it needs.
struct RunPictures {
  RunPictures(const RunRecord& given, const widgets::Theme& theme, const desktop::Format& format);
  RunPictures(const RunPictures&) = delete;
  RunPictures& operator=(const RunPictures&) = delete;

  /// The board with its thermocouples; empty where nothing is known of where they sit.
  std::optional<widgets::BoardTable> board() const;
  /// The moment sentences count from, on the log's clock.
  std::optional<double> entry_s() const;

  RunRecord record;
  std::shared_ptr<const desktop::RunView> view;
  widgets::LaneTable lanes;
  CurvePicture curve;
};

}  // namespace ovenwright::sheet
