#include "core/units/result.h"

namespace ovenwright {

namespace {

std::string placed(const Place& where, const std::string& message) {
  std::string out = where.file;
  if (where.line > 0) out += ":" + std::to_string(where.line);
  if (where.column > 0) out += ":" + std::to_string(where.column);
  if (!out.empty()) out += ": ";
  return out + message;
}

}  // namespace

std::string Error::text() const { return placed(where, message); }

std::string Warning::text() const { return placed(where, message); }

}  // namespace ovenwright
