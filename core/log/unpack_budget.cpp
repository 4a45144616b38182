#include "core/log/unpack_budget.h"

#include <fmt/format.h>

namespace ovenwright::log {

Error UnpackBudget::exceeded(std::string_view what) const {
  constexpr double kMebibyte = 1 << 20;
  const auto limit = fmt::format("at most {:.0f} MiB for a file of this size", static_cast<double>(most_) / kMebibyte);
  return {ErrorCode::kParse,
          fmt::format("{} unpacks to too much, expected {}", what, limit),
          {},
          "too many unpacked bytes",
          limit};
}

}  // namespace ovenwright::log
