#pragma once
#include <algorithm>
#include <cstddef>
#include <optional>
#include <string_view>

#include "core/units/result.h"

namespace ovenwright::log {

/// How many bytes may still come out of a packed file, all nested archives and copied cells together. Asked before
/// memory is spent. Packed logs shrink to a tenth, workbooks to a fortieth at the least; what unpacks to more than 200
/// times its size is no log.
class UnpackBudget {
 public:
  UnpackBudget(std::size_t packed_bytes, std::size_t most_unpacked_bytes)
      : most_(std::min(most_unpacked_bytes, std::max(kAlwaysAllowed, packed_bytes * kMostRatio))), left_(most_) {}

  /// False, and nothing taken, where that many bytes are not left.
  bool take(std::size_t bytes) {
    if (bytes > left_) {
      refused_ = true;
      return false;
    }
    left_ -= bytes;
    return true;
  }
  std::size_t left() const { return left_; }
  /// Something was not taken.
  bool refused() const { return refused_; }
  Error exceeded(std::string_view what) const;

 private:
  static constexpr std::size_t kAlwaysAllowed = std::size_t{64} << 20;
  static constexpr std::size_t kMostRatio = 200;
  std::size_t most_, left_;
  bool refused_ = false;
};

}  // namespace ovenwright::log
