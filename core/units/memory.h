#pragma once
#include <new>
#include <stdexcept>
#include <string>

#include "core/units/result.h"

namespace ovenwright {

/// What `work` makes, a Result; where memory runs out meanwhile, or more is asked for than there can be, an error kIo
/// that says so. What `work` had taken until then is free again.
template <class Work>
auto within_memory(const std::string& file, const Work& work) -> decltype(work()) {
  const auto none_left = [&file] {
    return Error{ErrorCode::kIo, "there is not enough memory for it", {file, 0, 0}, {}, {}};
  };
  try {
    return work();
  } catch (const std::bad_alloc&) {
    return none_left();
  } catch (const std::length_error&) {  // an array or a text longer than any can be
    return none_left();
  }
}

}  // namespace ovenwright
