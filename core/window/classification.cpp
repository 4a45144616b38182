#include "core/window/classification.h"

namespace ovenwright::window {

double classification_temperature_C(Classification classification, double thickness_mm, double volume_mm3) {
  if (classification == Classification::kTinLead) return thickness_mm < 2.5 && volume_mm3 < 350 ? 235 : 220;
  constexpr double kTable_C[3][3] = {{260, 260, 260}, {260, 250, 245}, {250, 245, 245}};
  const int row = thickness_mm < 1.6 ? 0 : thickness_mm <= 2.5 ? 1 : 2;
  const int column = volume_mm3 < 350 ? 0 : volume_mm3 <= 2000 ? 1 : 2;
  return kTable_C[row][column];
}

const char* classification_name(Classification classification) {
  return classification == Classification::kTinLead ? "SnPb" : "Pb-free";
}

}  // namespace ovenwright::window
