#pragma once
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/heat/predict.h"
#include "core/tune/learn.h"
#include "core/tune/start.h"
#include "core/tune/tune.h"

namespace ovenwright::report {

/// ovenwright.predict/1: the fit, the predicted traces with their band, and with windows how they are judged, as a run
/// of ovenwright.check/1 with the prediction's error beside. `log` there is the last run's, whose channels and entry the
/// prediction has; `recipe` is the one predicted.
std::string predict_json(const tune::Learned& learned, const tune::Forecast& forecast, const oven::Oven& oven,
                         const oven::Recipe& recipe, bool judged);
/// How the boards were judged as measured: the worst of them.
struct Present {
  judge::Judgement judgement;
  std::size_t board = 0;
};

/// ovenwright.tune/1.
std::string tune_json(const tune::Learned& learned, const Present& now, const tune::Report& report);

/// ovenwright.start/1.
std::string start_json(const tune::Start& start);

/// The same for people: the sentence first.
std::string predict_text(const tune::Learned& learned, const tune::Forecast& forecast, bool judged);
std::string tune_text(const tune::Learned& learned, const Present& now, const tune::Report& report);
std::string start_text(const tune::Start& start);

/// time_s, then for each thermocouple its temperature and the band's half width: comma-separated, C locale.
std::string traces_csv(const tune::Forecast& forecast);

}  // namespace ovenwright::report
