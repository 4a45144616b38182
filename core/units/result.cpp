#include "core/units/result.h"

namespace ovenwright {

std::string Error::text() const {
  std::string out = where.file;
  if (where.line > 0) out += ":" + std::to_string(where.line);
  if (where.column > 0) out += ":" + std::to_string(where.column);
  if (!out.empty()) out += ": ";
  return out + message;
}

}  // namespace ovenwright
