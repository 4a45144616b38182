#pragma once
#include <qcustomplot.h>

namespace ovenwright::desktop {

/// Ticks of a time axis at steps that people count seconds in: 1, 2, 5, 10, 15, 30, 60, 120, 300 s and so on.
class TimeTicker : public QCPAxisTicker {
 protected:
  double getTickStep(const QCPRange& range) override;
};

}  // namespace ovenwright::desktop
