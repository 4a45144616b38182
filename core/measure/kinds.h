#pragma once
#include "core/measure/figure.h"

/// The measures of one curve by kind; measured() chooses among them.
namespace ovenwright::measure {

Figure peak_figure(const Curve& curve);
Figure peak_time_figure(const Curve& curve, const Parameters& parameters, const Moves& moves);
Figure time_above_figure(const Curve& curve, const Parameters& parameters, const Moves& moves);
Figure excursions_figure(const Curve& curve, const Parameters& parameters);
Figure area_figure(const Curve& curve, const Parameters& parameters);
Figure time_between_figure(const Curve& curve, const Parameters& parameters, const Moves& moves);
Figure time_near_peak_figure(const Curve& curve, const Parameters& parameters, const Moves& moves);

Figure steepest_figure(const Curve& curve, const Parameters& parameters, bool fall);
Figure mean_rise_figure(const Curve& curve, const Parameters& parameters, const Moves& moves);
Figure mean_fall_figure(const Curve& curve, const Parameters& parameters, const Moves& moves);

Figure temperature_at_figure(const Curve& curve, const Parameters& parameters, const Setting& setting);
Figure exit_temperature_figure(const Curve& curve, const Setting& setting);

Figure wave_figure(const Curve& curve, const Definition& definition);

}  // namespace ovenwright::measure
