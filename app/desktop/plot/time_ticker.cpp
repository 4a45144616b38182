#include "app/desktop/plot/time_ticker.h"

#include <algorithm>

namespace ovenwright::desktop {

double TimeTicker::getTickStep(const QCPRange& range) {
  const double wanted = range.size() / tickCount();
  for (const double step_s : {1.0, 2.0, 5.0, 10.0, 15.0, 30.0, 60.0, 120.0, 300.0, 600.0, 900.0, 1800.0, 3600.0}) {
    if (wanted <= 1.3 * step_s && wanted > 0.5) return step_s;
  }
  return cleanMantissa(wanted);
}

}  // namespace ovenwright::desktop
