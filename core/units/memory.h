#pragma once
#include <new>
#include <string>

#include "core/units/result.h"

namespace ovenwright {

/// What `work` makes, a Result; where memory runs out meanwhile an error kIo that says so. What `work` had taken until
/// then is free again.
template <class Work>
auto within_memory(const std::string& file, const Work& work) -> decltype(work()) {
  try {
    return work();
  } catch (const std::bad_alloc&) {
    return Error{ErrorCode::kIo, "there is not enough memory for it", {file, 0, 0}, {}, {}};
  }
}

}  // namespace ovenwright
