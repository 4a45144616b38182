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

/// ovenwright.predict/1: the fit, the predicted traces with their band, and with a window how they are judged.
std::string predict_json(const tune::Learned& learned, const tune::Forecast& forecast, bool judged);
/// ovenwright.tune/1; `now` is the measured run's judgement.
std::string tune_json(const tune::Learned& learned, const judge::Judgement& now, const tune::Report& report);

/// ovenwright.start/1.
std::string start_json(const tune::Start& start);

/// The same for people: the sentence first.
std::string predict_text(const tune::Learned& learned, const tune::Forecast& forecast, bool judged);
std::string tune_text(const tune::Learned& learned, const judge::Judgement& now, const tune::Report& report);
std::string start_text(const tune::Start& start);

/// time_s, then for each thermocouple its temperature and the band's half width: comma-separated, C locale.
std::string traces_csv(const tune::Forecast& forecast);

}  // namespace ovenwright::report
